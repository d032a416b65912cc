using System.Collections.Frozen;
using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Members;

/// <summary>One row of <c>data/materials/metal.json</c>, Pa.</summary>
/// <param name="Key">As a house file names it: <c>steel-bolt</c>.</param>
/// <param name="Ultimate">F_u.</param>
/// <param name="Yield">F_y.</param>
/// <param name="UltimateEn">f_u of the same piece by EN standards; null where none is given.</param>
public sealed record Metal(string Key, Cited<double> Ultimate, Cited<double> Yield, Cited<double>? UltimateEn)
{
    private static readonly FrozenDictionary<string, Metal> Rows = Load();

    /// <summary>Every known metal, by key.</summary>
    public static Sequence<string> Keys => Rows.Keys.Order(StringComparer.Ordinal).ToSequence();

    /// <summary>A metal by key; null when it is not known.</summary>
    public static Metal? Find(string key) => Rows.GetValueOrDefault(key);

    /// <summary>f_u in the system that a timber is checked in.</summary>
    public Cited<double> Breaks(TimberSystem system) => system == TimberSystem.En ? UltimateEn ?? Ultimate : Ultimate;

    private static FrozenDictionary<string, Metal> Load()
    {
        using var document = MaterialFiles.Open("metal.json");
        return document.RootElement.GetProperty("metals").EnumerateArray().Select(entry =>
        {
            return new Metal(entry.GetProperty("key").GetString()!, In("ultimatePsi", UsUnits.Psi), In("yieldPsi", UsUnits.Psi), entry.TryGetProperty("ultimateEnMpa", out _) ? In("ultimateEnMpa", 1e6) : null);

            Cited<double> In(string name, double unit)
            {
                var cited = MaterialFiles.Cited(entry, name);
                return cited with { Value = cited.Value * unit };
            }
        }).ToFrozenDictionary(m => m.Key);
    }
}
