using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Loads;

/// <summary>One level of a house in an earthquake.</summary>
/// <param name="Weight">w_x that shakes with it, N.</param>
/// <param name="Height">h_x above the base, m.</param>
public readonly record struct SeismicLevel(double Weight, double Height);

/// <summary>Earthquake on a house as sideways forces.</summary>
/// <param name="Coefficient">C_s.</param>
/// <param name="Weight">W: all that shakes, N.</param>
/// <param name="BaseShear">V, N.</param>
/// <param name="LevelForces">F_x of each level, N.</param>
/// <param name="How">How.</param>
/// <param name="Assumptions">What nobody gave: the response factor above all.</param>
public sealed record SeismicLoad(double Coefficient, double Weight, double BaseShear, Sequence<double> LevelForces, Calculation How, Sequence<Assumption> Assumptions)
{
    /// <summary>Twist from a mass that lies off its middle by chance: 5 % of the width across the shaking, N m.</summary>
    /// <param name="width">Across the shaking, m.</param>
    public double AccidentalTorsion(double width) => 0.05 * width * BaseShear;
}

/// <summary>Equivalent lateral force of ASCE 7 section 12.8. No code has an entry for cob: the response factor is the user's own.</summary>
public static class Seismic
{
    /// <summary>R that is taken when the user gives none: ordinary plain masonry.</summary>
    public const double UsualResponseFactor = 1.5;

    /// <summary>Earthquake square to a wall that carries, as a share of its own weight: 0.4 S_DS I_e, never under 0.1 (section 12.11.1).</summary>
    /// <param name="sds">S_DS.</param>
    /// <param name="riskCategory">Of the site.</param>
    public static double SquareToWall(double sds, string? riskCategory) => Math.Max(0.4 * sds * Importance(riskCategory), 0.1);

    /// <summary>Forces on the levels of a house, or why they are not known.</summary>
    /// <param name="site">Spectral accelerations, risk category and edition.</param>
    /// <param name="levels">Weights with wet soil and the code's share of snow.</param>
    /// <param name="height">h_n: to the roof, above the base, m.</param>
    /// <param name="responseFactor">R, from the engineer; null takes 1.5 with its assumption.</param>
    public static Known<SeismicLoad> Of(Site site, Sequence<SeismicLevel> levels, double height, double? responseFactor = null)
    {
        if (LoadEditions.Parse(site.Loads) is not { } edition)
        {
            return new Message("analysis.loads.no-edition");
        }

        if (edition == LoadEdition.En1990)
        {
            return new Message("analysis.loads.seismic-en");
        }

        if (site.SeismicSds is not { } sds || site.SeismicSd1 is not { } sd1 || site.SeismicS1 is not { } s1)
        {
            return new Message("analysis.loads.seismic-missing");
        }

        var memory = Sources.Get("asce7-16-memory");
        var settled = Settle.Or(responseFactor, Amount.Number(UsualResponseFactor), "response-factor", new Message("analysis.assumed.response-factor"), memory);
        return Of(sds, sd1, s1, Importance(site.RiskCategory), levels, height, settled);
    }

    private static SeismicLoad Of(double sds, double sd1, double s1, double importance, Sequence<SeismicLevel> levels, double height, Settled<double> response)
    {
        var source = Sources.Get("asce7-16-seismic");
        var memory = Sources.Get("asce7-16-memory");
        var sheet = new Worksheet("seismic");
        var ds = Worksheet.Given("S_DS", "seismic-sds", sds, Dimension.Number);
        var d1 = Worksheet.Given("S_D1", "seismic-sd1", sd1, Dimension.Number);
        var m1 = Worksheet.Given("S_1", "seismic-s1", s1, Dimension.Number);
        var ie = Worksheet.Code("I_e", "seismic-importance", importance, Dimension.Number, memory);
        var hn = Worksheet.Computed("h_n", "seismic-height", height, Dimension.Length);
        var r = response.Assumption is { } assumed
            ? Worksheet.Assumed("R", "seismic-response", response.Value, Dimension.Number, assumed.Source)
            : Worksheet.Given("R", "seismic-response", response.Value, Dimension.Number);

        var taValue = 0.02 * Math.Pow(height / UsUnits.Foot, 0.75);
        var ta = sheet.Step("seismic-period", "T_a", "0.02*(h_n/ft)^0.75", taValue, Dimension.Time, memory, hn, UsUnits.FootSymbol);
        var ratio = importance / response.Value;
        var plateau = sheet.Step("seismic-plateau", "C_1", "S_DS*I_e/R", sds * ratio, Dimension.Number, source, ds, ie, r);
        var falling = sheet.Step("seismic-falling", "C_2", "S_D1*I_e/(T_a*R)", sd1 * ratio / taValue, Dimension.Number, source, d1, ie, ta, r);
        var leastValue = Math.Max(0.044 * sds * importance, 0.01);
        var least = sheet.Step("seismic-least", "C_3", "max(0.044*S_DS*I_e, 0.01)", leastValue, Dimension.Number, source, ds, ie);
        if (s1 >= 0.6)
        {
            leastValue = Math.Max(leastValue, 0.5 * s1 * ratio);
            least = sheet.Step("seismic-least-near-fault", "C_4", "max(C_3, 0.5*S_1*I_e/R)", leastValue, Dimension.Number, source, least, m1, ie, r);
        }

        var csValue = Math.Max(Math.Min(sds * ratio, sd1 * ratio / taValue), leastValue);
        var cs = sheet.Step("seismic-coefficient", "C_s", $"max(min(C_1, C_2), {least.Name})", csValue, Dimension.Number, source, plateau, falling, least);
        var total = levels.Sum(l => l.Weight);
        var w = Worksheet.Computed("W", "seismic-weight", total, Dimension.Force);
        sheet.Step("seismic-base-shear", "V", "C_s*W", csValue * total, Dimension.Force, source, cs, w);
        var turning = levels.Sum(l => l.Weight * l.Height);
        var forces = levels.Select(l => turning > 0 ? csValue * total * l.Weight * l.Height / turning : 0).ToSequence();
        return new SeismicLoad(csValue, total, csValue * total, forces, sheet.Done, response.Assumptions);
    }

    /// <summary>Share of the flat-roof snow that shakes with the roof: 20 % above 30 psf (7-16), 15 % above 45 psf (7-22).</summary>
    public static double SnowShare(LoadEdition edition, double flatSnow) => edition switch
    {
        LoadEdition.Asce716 => flatSnow > 30 * UsUnits.Psf ? 0.2 : 0,
        LoadEdition.Asce722 => flatSnow > 45 * UsUnits.Psf ? 0.15 : 0,
        _ => 0.2,
    };

    /// <summary>Weight of the snow that shakes with a roof as wide as the house, N; nothing where snow is not known.</summary>
    /// <param name="snow">The snow.</param>
    /// <param name="width">Of a circle as large as the house outside, m.</param>
    public static double SnowWeight(SnowLoad? snow, double width) => snow is null ? 0 : SnowShare(snow.Edition, snow.Flat) * snow.Flat * Math.PI / 4 * width * width;

    private static double Importance(string? riskCategory) => riskCategory switch { "III" => 1.25, "IV" => 1.5, _ => 1.0 };
}
