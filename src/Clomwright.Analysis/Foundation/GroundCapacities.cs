using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Foundation;

/// <summary>What the ground bears, side by side. Only what is given is held against the load; the others are to compare with.</summary>
public sealed record GroundCapacities
{
    private const double Safety = 3;

    /// <summary>As the house file gives it (<c>site.soilBearing</c>), Pa; null where it does not.</summary>
    public double? Given { get; init; }

    /// <summary>Of the class of ground that the house file names, from a table; or why there is none.</summary>
    public required Known<GroundClass> Presumptive { get; init; }

    /// <summary>By the bearing formulas from friction, cohesion and density; or why there is none.</summary>
    public required Known<ComputedCapacity> Computed { get; init; }

    /// <summary>What is given is more than the table allows: somebody has to answer for it.</summary>
    public bool AboveTable => Presumptive.Value is { } table && Given > table.Pressure.Value;

    internal static GroundCapacities Of(House house) => new()
    {
        Given = house.Site.SoilBearing?.Pascals,
        Presumptive = house.Site.Soil?.Class is not { } named ? new Message("analysis.foundation.no-class")
            : GroundClass.All.FirstOrDefault(g => g.Key == named) is { } known ? known
            : Message.Of("analysis.foundation.class", ("class", named), ("known", new Argument.List(GroundClass.All.Select(g => (Argument)g.Key).ToSequence()))),
        Computed = ByFormula(house),
    };

    private static Known<ComputedCapacity> ByFormula(House house)
    {
        if (house.Site.Soil is not { Friction: { } friction, Cohesion: { } cohesion, Density: { } density })
        {
            return new Message("analysis.foundation.no-soil-test");
        }

        if (house.Trench is not { Width.Nanometres: > 0, Depth.Nanometres: > 0 } trench)
        {
            return new Message("analysis.foundation.no-trench");
        }

        var source = Sources.Get("terzaghi-bearing");
        var phi = friction.Radians;
        var weight = density.KilogramsPerCubicMetre * UsUnits.Gravity;
        var (width, depth) = (trench.Width.Metres, trench.Depth.Metres);
        var sheet = new Worksheet("ground-capacity");
        var angle = Worksheet.Given("phi", "soil-friction", phi, Dimension.Angle);
        var c = Worksheet.Given("c", "soil-cohesion", cohesion.Pascals, Dimension.Stress);
        var gamma = sheet.Step("soil-weight", "gamma", "rho_s*g", weight, Dimension.Number, Sources.Get("mechanics"), Worksheet.Given("rho_s", "soil-density", density.KilogramsPerCubicMetre, Dimension.Density), UsUnits.GravitySymbol);
        var b = Worksheet.Given("B", "trench-width", width, Dimension.Length);
        var d = Worksheet.Given("D", "trench-depth", depth, Dimension.Length);
        var nq = sheet.Step("bearing-nq", "N_q", "exp(pi*tan(phi))*tan(pi/4 + phi/2)^2", Bearing.Nq(phi), Dimension.Number, source, angle);
        var nc = phi == 0
            ? sheet.Step("bearing-nc", "N_c", "2 + pi", Bearing.Nc(0), Dimension.Number, source)
            : sheet.Step("bearing-nc", "N_c", "(N_q - 1)/tan(phi)", Bearing.Nc(phi), Dimension.Number, source, nq, angle);
        var meyerhof = sheet.Step("bearing-ng", "N_g", "(N_q - 1)*tan(1.4*phi)", Bearing.NgMeyerhof(phi), Dimension.Number, source, nq, angle);
        var ultimate = sheet.Step("bearing-ultimate", "q_u", "c*N_c + gamma*D*N_q + gamma*B*N_g/2", Strip(meyerhof.Value.Si), Dimension.Stress, source, c, nc, gamma, d, nq, b, meyerhof);
        var allowed = sheet.Step("bearing-allowed", "q_a", "q_u/3", ultimate.Value.Si / Safety, Dimension.Stress, source, ultimate);
        var terzaghi = Bearing.Strip(cohesion.Pascals, weight, depth, width, Bearing.NcTerzaghi(phi), Bearing.NqTerzaghi(phi), Bearing.NgMeyerhof(phi));
        return new ComputedCapacity(allowed.Value.Si, Strip(Bearing.NgHansen(phi)) / Safety, Strip(Bearing.NgVesic(phi)) / Safety, terzaghi / Safety, sheet.Done);

        double Strip(double ng) => Bearing.Strip(cohesion.Pascals, weight, depth, width, Bearing.Nc(phi), Bearing.Nq(phi), ng);
    }
}

/// <summary>Ultimate bearing of a strip as wide and as deep as the trench, over a factor of 3, Pa. Water in the ground and local shear are not counted.</summary>
/// <param name="Meyerhof">With N_gamma of Meyerhof.</param>
/// <param name="Hansen">With N_gamma of Hansen.</param>
/// <param name="Vesic">With N_gamma of Vesic.</param>
/// <param name="Terzaghi">With N_c and N_q of Terzaghi and N_gamma of Meyerhof.</param>
/// <param name="How">How the first was made.</param>
public sealed record ComputedCapacity(double Meyerhof, double Hansen, double Vesic, double Terzaghi, Calculation How)
{
    /// <summary>The least of them.</summary>
    public double Least => Math.Min(Math.Min(Meyerhof, Hansen), Math.Min(Vesic, Terzaghi));
}
