using System.Collections.Frozen;
using System.Text.Json;
using Clomwright.Analysis.Loads;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Mix;

/// <summary>Numbers of <c>data/materials/mix.json</c>: taken where the crew has not measured its own, each on the record.</summary>
internal static class MixValues
{
    private static readonly FrozenDictionary<string, Cited<double>> Values;

    static MixValues()
    {
        using var document = MaterialFiles.Open("mix.json");
        var root = document.RootElement;
        var values = root.GetProperty("values");
        Values = values.EnumerateObject().ToFrozenDictionary(v => v.Name, v => MaterialFiles.Cited(values, v.Name), StringComparer.Ordinal);
        BarLimits = root.GetProperty("barLimits").EnumerateArray()
            .Select(e => new BarLimit(e.GetProperty("key").GetString()!, MaterialFiles.Cited(e, "share"), e.TryGetProperty("length", out var l) ? l.GetDouble() : null)).ToSequence();
        ShapeFactors = Steps.Read(root.GetProperty("shapeFactors"), "heightOverWidth", "factor");
        Fractile = Steps.Read(root.GetProperty("fractile"), "n", "k");
        Spray = Steps.Read(root.GetProperty("spray"), "below", "index");
        Drip = Steps.Read(root.GetProperty("drip"), "below", "index");
    }

    /// <summary>The limits that people hold shrinkage bars to.</summary>
    public static Sequence<BarLimit> BarLimits { get; }

    /// <summary>Strength of a wide specimen over that of a tall one, by height over width.</summary>
    public static Steps ShapeFactors { get; }

    /// <summary>EN 1990 table D1, coefficient of variation unknown.</summary>
    public static Steps Fractile { get; }

    /// <summary>Erodibility index by depth worn in an hour, mm.</summary>
    public static Steps Spray { get; }

    /// <summary>Erodibility index by depth of the pit, mm.</summary>
    public static Steps Drip { get; }

    /// <summary>A value with its source.</summary>
    public static Cited<double> Of(string key) => Values[key];

    /// <summary>What somebody measured, or this value with its assumption.</summary>
    public static Settled<double> Or(double? given, string key, Dimension dimension) =>
        Settle.Or(given, new Amount(Of(key).Value, dimension), $"mix-{key}", new Message($"analysis.assumed.mix-{key}"), Of(key).Source);

    /// <summary>A printed symbol for a settled value: measured, or assumed with its source.</summary>
    public static Symbol Symbol(this Settled<double> settled, string symbol, string word, Dimension dimension) => new(
        symbol, new Message($"analysis.symbol.{word}"), new Amount(settled.Value, dimension), settled.Assumption is null ? Tag.Given : Tag.Assumed, settled.Assumption?.Source);
}

/// <summary>A small table of steps with its source.</summary>
/// <param name="At">Rising.</param>
/// <param name="Value">As many.</param>
/// <param name="Source">Whose table it is.</param>
internal sealed record Steps(Sequence<double> At, Sequence<double> Value, Source Source)
{
    /// <summary>Between its rows along a straight line, beyond its ends as at them.</summary>
    public double Between(double at)
    {
        if (!(at > At[0]))
        {
            return Value[0];
        }

        for (var i = 1; i < At.Count; i++)
        {
            if (at <= At[i])
            {
                return Value[i - 1] + (Value[i] - Value[i - 1]) * (at - At[i - 1]) / (At[i] - At[i - 1]);
            }
        }

        return Value[^1];
    }

    /// <summary>The value of the first row that lies above; null beyond the last.</summary>
    public double? Below(double at)
    {
        for (var i = 0; i < At.Count; i++)
        {
            if (at < At[i])
            {
                return Value[i];
            }
        }

        return null;
    }

    /// <summary>The value of a row; null where the table has none.</summary>
    public double? Exactly(double at)
    {
        for (var i = 0; i < At.Count; i++)
        {
            if (at == At[i])
            {
                return Value[i];
            }
        }

        return null;
    }

    public static Steps Read(JsonElement entry, string at, string value) => new(
        Numbers(entry, at), Numbers(entry, value), Sources.Get(entry.GetProperty("source").GetString()!));

    private static Sequence<double> Numbers(JsonElement entry, string name) => entry.GetProperty(name).EnumerateArray().Select(n => n.GetDouble()).ToSequence();
}
