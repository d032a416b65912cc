using System.Collections.Frozen;
using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Members;

/// <summary>One row of <c>data/materials/metal.json</c>, Pa.</summary>
/// <param name="Key">As a house file names it: <c>steel-bolt</c>.</param>
/// <param name="Ultimate">F_u.</param>
/// <param name="Yield">F_y.</param>
public sealed record Metal(string Key, Cited<double> Ultimate, Cited<double> Yield)
{
    private static readonly FrozenDictionary<string, Metal> Rows = Load();

    /// <summary>A metal by key; null when it is not known.</summary>
    public static Metal? Find(string key) => Rows.GetValueOrDefault(key);

    private static FrozenDictionary<string, Metal> Load()
    {
        using var document = MaterialFiles.Open("metal.json");
        return document.RootElement.GetProperty("metals").EnumerateArray().Select(entry =>
        {
            return new Metal(entry.GetProperty("key").GetString()!, Psi("ultimatePsi"), Psi("yieldPsi"));

            Cited<double> Psi(string name)
            {
                var cited = MaterialFiles.Cited(entry, name);
                return cited with { Value = cited.Value * UsUnits.Psi };
            }
        }).ToFrozenDictionary(m => m.Key);
    }
}
