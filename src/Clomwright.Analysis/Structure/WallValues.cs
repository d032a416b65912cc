using System.Collections.Frozen;
using Clomwright.Analysis.Loads;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Structure;

/// <summary>Numbers of <c>data/materials/structure.json</c>: what the model of the wall leans on where nobody measured it, each on the record.</summary>
internal static class WallValues
{
    private static readonly FrozenDictionary<string, Cited<double>> Values = Load();

    /// <summary>A value with its source.</summary>
    public static Cited<double> Of(string key) => Values[key];

    /// <summary>A value as an assumption.</summary>
    public static Assumption Assumed(string key, Dimension dimension) =>
        new($"wall-{key}", new Message($"analysis.assumed.wall-{key}"), new Amount(Of(key).Value, dimension), Of(key).Source);

    private static FrozenDictionary<string, Cited<double>> Load()
    {
        using var document = MaterialFiles.Open("structure.json");
        var values = document.RootElement.GetProperty("values");
        return values.EnumerateObject().ToFrozenDictionary(v => v.Name, v => MaterialFiles.Cited(values, v.Name), StringComparer.Ordinal);
    }
}
