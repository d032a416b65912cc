using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Loads;

/// <summary>What an earthquake shakes of a house, worked by hand: one mass for every room that asks.</summary>
/// <remarks>
/// The cob as if it had no openings, at its standing density: headers, frames and glass hang in them, the heavier is the safer, and so the roof asks nothing of openings that move. What resists by its weight is weighed net elsewhere. Its upper half shakes with the roof at the wall top, its lower half at a quarter of its height. Through roof and bond beam goes what the roof brings and
/// half of the upper half: the faces that lie across the shaking lean on the roof, the faces along it hold themselves.
/// </remarks>
internal sealed class ShakenHouse
{
    private readonly Site site;
    private readonly double rise;

    /// <summary>Of a placed house.</summary>
    /// <param name="geometry">The house.</param>
    /// <param name="rise">Of the roof over the bond beam, m.</param>
    public ShakenHouse(HouseGeometry geometry, double rise)
    {
        (site, this.rise) = (geometry.House.Site, Math.Max(0, rise));
        Height = (geometry.Wall.Top - geometry.Wall.Base).Metres;
        Wall = geometry.Measures.GrossVolume * Cob.StandingDensity * UsUnits.Gravity;
    }

    /// <summary>Of the cob, m.</summary>
    public double Height { get; }

    /// <summary>W_w: of the cob, N.</summary>
    public double Wall { get; }

    /// <summary>Forces under a roof of a weight: at the wall top, then at a quarter of the wall's height; or why they are not known.</summary>
    public Known<SeismicLoad> Under(double roof) => Seismic.Of(site, [new SeismicLevel(roof + Wall / 2, Height), new SeismicLevel(Wall / 2, Height / 4)], Height + rise / 2);

    /// <summary>Of the force at the wall top, what goes through roof and bond beam, N.</summary>
    public double ThroughRoof(SeismicLoad load, double roof) => load.LevelForces[0] * (roof + Wall / 4) / (roof + Wall / 2);

    /// <summary>Puts that down, times the factor of a combination.</summary>
    public Symbol Steps(Worksheet sheet, SeismicLoad load, double roof, double factor, Source combination) => sheet.Step(
        "sideways-earthquake", "H", "k*F*(W_r + W_w/4)/(W_r + W_w/2)", factor * ThroughRoof(load, roof), Dimension.Force, Sources.Get("mechanics"), Worksheet.Code("k", "earthquake-factor", factor, Dimension.Number, combination),
        Worksheet.Computed("F", "earthquake-at-top", load.LevelForces[0], Dimension.Force), Worksheet.Computed("W_r", "roof-weight", roof, Dimension.Force), Worksheet.Computed("W_w", "wall-weight", Wall, Dimension.Force));
}
