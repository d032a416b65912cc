using System.Collections.Frozen;
using System.Text.Json;
using Clomwright.Analysis.Loads;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Finishes;

/// <summary>What makes a plaster hard.</summary>
public enum Binder
{
    /// <summary>Clay, by drying.</summary>
    Clay,

    /// <summary>Lime, by the air. Caustic until then.</summary>
    Lime,

    /// <summary>Cement or paint that closes the face.</summary>
    Sealing,

    /// <summary>Not known to the data.</summary>
    Unknown,
}

/// <summary>A coat that is usual where the author gives none.</summary>
/// <param name="Role">Which.</param>
/// <param name="Share">Of the whole thickness.</param>
/// <param name="Parts">One batch in buckets.</param>
/// <param name="Source">Whose mix.</param>
public sealed record UsualCoat(CoatRole Role, double Share, PlasterParts Parts, Source Source);

/// <summary>A plaster or wash from <c>data/materials/finishes.json</c>. Null where nothing was found.</summary>
/// <param name="Key">As a house file names it.</param>
/// <param name="Binder">What makes it hard.</param>
/// <param name="Coats">Usual coats.</param>
public sealed record PlasterMaterial(string Key, Binder Binder, Sequence<UsualCoat> Coats)
{
    private static readonly FrozenDictionary<string, PlasterMaterial> Register;
    private static readonly FrozenDictionary<string, Cited<double>> Numbers;
    private static readonly FrozenDictionary<FloorRole, UsualCoat> Floors;

    static PlasterMaterial()
    {
        using var document = MaterialFiles.Open("finishes.json");
        var root = document.RootElement;
        Register = root.GetProperty("materials").EnumerateArray().Select(Read).ToFrozenDictionary(m => m.Key, StringComparer.Ordinal);
        Numbers = root.GetProperty("numbers").EnumerateObject().ToFrozenDictionary(n => n.Name, n => MaterialFiles.Cited(root.GetProperty("numbers"), n.Name), StringComparer.Ordinal);
        Floors = root.GetProperty("floor").EnumerateArray().ToFrozenDictionary(
            e => Enum.Parse<FloorRole>(e.GetProperty("role").GetString()!, true),
            e => new UsualCoat(CoatRole.Finish, 1, Parts(e.GetProperty("parts")), Sources.Get(e.GetProperty("source").GetString()!)));
    }

    /// <summary>Whole thickness where none is given, m.</summary>
    public Cited<double>? Usual { get; init; }

    /// <summary>Water over dry mass, least and most.</summary>
    public (Cited<double> Low, Cited<double> High)? Water { get; init; }

    /// <summary>Days before the next coat, least and most.</summary>
    public (Cited<double> Low, Cited<double> High)? Days { get; init; }

    /// <summary>Weather asked: nights no colder, days no hotter, °C, for this month and so many after it.</summary>
    public (Cited<double> Coldest, Cited<double> Hottest, Cited<double> Months)? Weather { get; init; }

    /// <summary>Every known plaster and wash, by key.</summary>
    public static Sequence<string> Keys => Register.Keys.Order(StringComparer.Ordinal).ToSequence();

    /// <summary>The material of a key; one that is not known has no coats and no numbers.</summary>
    public static PlasterMaterial Find(string key) => Register.TryGetValue(key, out var known) ? known : new PlasterMaterial(key, Binder.Unknown, []);

    /// <summary>A number of the data by its key.</summary>
    public static Cited<double> Number(string key) => Numbers[key];

    /// <summary>The usual mix of an earth layer of a floor; null for layers that are no earth.</summary>
    public static UsualCoat? FloorMix(FloorRole role) => Floors.GetValueOrDefault(role);

    private static PlasterMaterial Read(JsonElement entry) => new(
        entry.GetProperty("key").GetString()!,
        Enum.Parse<Binder>(entry.GetProperty("binder").GetString()!, true),
        entry.GetProperty("coats").EnumerateArray().Select(c => new UsualCoat(
            Enum.Parse<CoatRole>(c.GetProperty("role").GetString()!, true), c.GetProperty("share").GetDouble(), Parts(c.GetProperty("parts")),
            Sources.Get(c.GetProperty("source").GetString()!))).ToSequence())
    {
        Usual = entry.TryGetProperty("usual", out _) ? MaterialFiles.Cited(entry, "usual") : null,
        Water = Pair(entry, "waterLow", "waterHigh"),
        Days = Pair(entry, "daysLow", "daysHigh"),
        Weather = Pair(entry, "coldest", "hottest") is { } air ? (air.Low, air.High, MaterialFiles.Cited(entry, "cureMonths")) : null,
    };

    private static (Cited<double> Low, Cited<double> High)? Pair(JsonElement entry, string low, string high) =>
        entry.TryGetProperty(low, out _) ? (MaterialFiles.Cited(entry, low), MaterialFiles.Cited(entry, high)) : null;

    private static PlasterParts Parts(JsonElement entry)
    {
        double? Of(string name) => entry.TryGetProperty(name, out var value) ? value.GetDouble() : null;
        return new PlasterParts { Clay = Of("clay"), Lime = Of("lime"), Sand = Of("sand"), Straw = Of("straw"), Manure = Of("manure"), Paste = Of("paste"), Water = Of("water") };
    }
}
