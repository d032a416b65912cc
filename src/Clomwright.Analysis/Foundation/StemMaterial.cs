using System.Collections.Frozen;
using Clomwright.Analysis.Loads;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Foundation;

/// <summary>What a stem is made of, from <c>data/materials/stem.json</c>.</summary>
/// <param name="Key">As a house file names it.</param>
/// <param name="Density">In the wall, joints and hollows counted, kg/m3.</param>
/// <param name="Allowable">Pressure allowed, Pa; null where none was found.</param>
/// <param name="Dry">Laid without mortar: its joints hold no tension and only its width keeps it standing.</param>
public sealed record StemMaterial(string Key, Cited<double> Density, Cited<double>? Allowable, bool Dry)
{
    private static readonly FrozenDictionary<string, StemMaterial> Known = Load();

    /// <summary>Every known material, by key.</summary>
    public static Sequence<string> Keys => Known.Keys.Order(StringComparer.Ordinal).ToSequence();

    /// <summary>The material of a key; null when it is not known.</summary>
    public static StemMaterial? Find(string key) => Known.GetValueOrDefault(key);

    private static FrozenDictionary<string, StemMaterial> Load()
    {
        using var document = MaterialFiles.Open("stem.json");
        return document.RootElement.GetProperty("stems").EnumerateArray()
            .Select(e => new StemMaterial(
                e.GetProperty("key").GetString()!, MaterialFiles.Cited(e, "density"), e.TryGetProperty("allowable", out _) ? MaterialFiles.Cited(e, "allowable") : null,
                e.TryGetProperty("dry", out var dry) && dry.GetBoolean()))
            .ToFrozenDictionary(m => m.Key, StringComparer.Ordinal);
    }
}
