using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Anchorage;

/// <summary>A row of the table of steel dowels in earth walls (<c>data/materials/earth-dowels.json</c>), made for bolts in adobe.</summary>
/// <param name="Key">As the table prints its diameter.</param>
/// <param name="Diameter">m.</param>
/// <param name="Depth">Embedded in the earth, m.</param>
/// <param name="Shear">Allowed across it, N.</param>
public sealed record EarthDowel(string Key, double Diameter, double Depth, Cited<double> Shear)
{
    private const double Hair = 1e-9;

    /// <summary>Every row, the weakest first.</summary>
    public static Sequence<EarthDowel> All { get; } = Load();

    /// <summary>The strongest row that is no thicker and no deeper than what is there; null when the weakest is.</summary>
    /// <param name="diameter">m.</param>
    /// <param name="depth">In the earth, m.</param>
    public static EarthDowel? Within(double diameter, double depth) => All.LastOrDefault(d => d.Diameter <= diameter + Hair && d.Depth <= depth + Hair);

    private static Sequence<EarthDowel> Load()
    {
        using var document = MaterialFiles.Open("earth-dowels.json");
        return document.RootElement.GetProperty("dowels").EnumerateArray().Select(e =>
        {
            var shear = MaterialFiles.Cited(e, "shearLb");
            return new EarthDowel(
                e.GetProperty("key").GetString()!, e.GetProperty("diameterIn").GetDouble() * 0.0254, e.GetProperty("depthIn").GetDouble() * 0.0254,
                shear with { Value = shear.Value * UsUnits.PoundForce });
        }).OrderBy(d => d.Depth).ToSequence();
    }
}
