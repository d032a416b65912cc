using System.Collections.Frozen;
using System.Text.Json;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Loads;

/// <summary>What a layer of a roof weighs, from <c>data/materials/roof-layers.json</c>. Either by depth (N/m3) or as a sheet (Pa).</summary>
/// <param name="Key">As a house file names it.</param>
/// <param name="Dry">Least that may lie there.</param>
/// <param name="Saturated">Most that may lie there.</param>
/// <param name="IsSheet">The numbers are Pa for the whole sheet, whatever depth is written.</param>
public sealed record RoofMaterial(string Key, Cited<double> Dry, Cited<double> Saturated, bool IsSheet)
{
    private static readonly FrozenDictionary<string, RoofMaterial> Known = Load();

    /// <summary>Every known material, by key.</summary>
    public static Sequence<RoofMaterial> All => Known.Values.OrderBy(m => m.Key, StringComparer.Ordinal).ToSequence();

    /// <summary>The material of a key; null when it is not known.</summary>
    public static RoofMaterial? Find(string? key) => key is not null && Known.TryGetValue(key, out var material) ? material : null;

    /// <summary>The material that a layer's own name speaks of, for layers that name none; null when it speaks of none.</summary>
    public static RoofMaterial? Named(string name)
    {
        foreach (var (word, key) in Words)
        {
            if (name.Contains(word, StringComparison.OrdinalIgnoreCase))
            {
                return Find(key);
            }
        }

        return null;
    }

    /// <summary>Weight of a layer square to the roof, Pa on the roof's own surface.</summary>
    /// <param name="depth">Square to the roof, m.</param>
    /// <param name="wet">Saturated or dry.</param>
    public double Weight(double depth, bool wet) => (wet ? Saturated.Value : Dry.Value) * (IsSheet ? 1 : depth);

    private static readonly (string Word, string Key)[] Words =
    [
        ("membrane", "epdm"), ("liner", "epdm"), ("rubber", "epdm"), ("epdm", "epdm"), ("felt", "fleece"), ("fleece", "fleece"), ("cushion", "fleece"), ("carpet", "fleece"),
        ("root barrier", "fleece"), ("drain mat", "drain-mat"), ("drainage mat", "drain-mat"),
    ];

    private static FrozenDictionary<string, RoofMaterial> Load()
    {
        using var document = MaterialFiles.Open("roof-layers.json");
        return document.RootElement.GetProperty("layers").EnumerateArray().Select(Read).ToFrozenDictionary(m => m.Key, StringComparer.Ordinal);
    }

    private static RoofMaterial Read(JsonElement entry)
    {
        var sheet = entry.TryGetProperty("drySheetPa", out _);
        return new(
            entry.GetProperty("key").GetString()!, MaterialFiles.Cited(entry, sheet ? "drySheetPa" : "dryPerCubicMetre"),
            MaterialFiles.Cited(entry, sheet ? "wetSheetPa" : "wetPerCubicMetre"), sheet);
    }
}

/// <summary>The project's own tables of materials.</summary>
internal static class MaterialFiles
{
    public static JsonDocument Open(string name) =>
        JsonDocument.Parse(typeof(MaterialFiles).Assembly.GetManifestResourceStream($"materials/{name}")!);

    /// <summary>A number beside the key of its source: <c>"dryPa": [14.9, "epdm-weighed"]</c>.</summary>
    public static Cited<double> Cited(JsonElement entry, string name)
    {
        var pair = entry.GetProperty(name);
        var source = Sources.Get(pair[1].GetString()!);
        return new(pair[0].GetDouble(), source, source.Surety == Surety.Practice ? Tag.Practice : Tag.Code);
    }
}
