using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Loads;

/// <summary>Ground that lies higher than the wall's foot and presses on its outside: at rest, sigma = K_0 gamma (z_g - z) with K_0 = 1 - sin phi (Jaky), because a cob wall must not give way until the ground is active.</summary>
/// <param name="Grade">z_g: height of the ground, m.</param>
/// <param name="Foot">Of the wall, m.</param>
/// <param name="AtRest">K_0.</param>
/// <param name="Weight">gamma, N/m3.</param>
/// <param name="Assumptions">What the site does not say of it.</param>
/// <param name="Symbols">phi and gamma as calculations print them.</param>
public sealed record SoilPressure(double Grade, double Foot, double AtRest, double Weight, Sequence<Assumption> Assumptions, Sequence<Symbol> Symbols)
{
    private const double FrictionAssumed = 0.5235987755982988, DensityAssumed = 2000;

    /// <summary>Height of ground against the wall, m.</summary>
    public double Height => Grade - Foot;

    /// <summary>Force for each metre of wall between two heights, N/m.</summary>
    public double Force(double from, double to) => AtRest * Weight * ((Grade - from) * (Grade - from) - (Grade - Math.Min(to, Grade)) * (Grade - Math.Min(to, Grade))) / 2;

    /// <summary>The ground beside a house; null where it is no higher than the wall's foot. A site without a grade is told by <see cref="Missing"/>.</summary>
    /// <param name="site">The place.</param>
    /// <param name="foot">Of the wall, m.</param>
    public static SoilPressure? Of(Site site, double foot)
    {
        if (site.Grade is not { } grade || grade.Metres <= foot)
        {
            return null;
        }

        var (friction, density) = (site.Soil?.Friction?.Radians, site.Soil?.Density?.KilogramsPerCubicMetre);
        var memory = Sources.Get("earth-pressure-memory");
        Assumption[] assumed =
        [
            .. friction is null ? [new Assumption("backfill-friction", new Message("analysis.assumed.backfill-friction"), new Amount(FrictionAssumed, Dimension.Angle), memory)] : (Assumption[])[],
            .. density is null ? [new Assumption("backfill-density", new Message("analysis.assumed.backfill-density"), new Amount(DensityAssumed, Dimension.Density), memory)] : (Assumption[])[],
        ];
        Symbol[] symbols =
        [
            friction is { } phi ? Worksheet.Given("phi", "soil-friction", phi, Dimension.Angle) : Worksheet.Assumed("phi", "soil-friction", FrictionAssumed, Dimension.Angle, memory),
            density is { } rho ? Worksheet.Given("rho_g", "soil-density", rho, Dimension.Density) : Worksheet.Assumed("rho_g", "soil-density", DensityAssumed, Dimension.Density, memory),
        ];
        return new SoilPressure(grade.Metres, foot, 1 - Math.Sin(friction ?? FrictionAssumed), (density ?? DensityAssumed) * UsUnits.Gravity, assumed.ToSequence(), symbols.ToSequence());
    }

    /// <summary>Why it is not known whether ground presses on the wall; null where it is.</summary>
    /// <param name="site">The place.</param>
    public static Message? Missing(Site site) => site.Grade is null ? new Message("analysis.foundation.no-grade") : null;
}
