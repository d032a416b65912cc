using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Members;

/// <summary>Nails and wood screws through a side timber into the side grain of a main one: NDS 12.2, 12.3 and 12.5, recalled but for what tests name. SI.</summary>
/// <remarks>
/// Under 1/4 in the wood bears alike in every direction, F_e = 16 600 G^1.84 psi, and all modes are reduced by K_D; thicker ones are bolts across the grain. A nail that reaches less than ten diameters into
/// the main timber holds in proportion, and one that reaches less than six nothing. Driven into green wood that dries, a smooth nail keeps a quarter of its pull (C_M 0.25) and every thin fastener seven tenths across itself (C_M 0.7).
/// </remarks>
internal static class Nail
{
    /// <summary>Diameters that a nail must reach into the main timber, and for its full value.</summary>
    public const double ReachLeast = 6, ReachFull = 10;

    /// <summary>C_M of wood that is green when nailed and dry later: pull of a smooth nail, and across it.</summary>
    public const double GreenPull = 0.25, GreenAcross = 0.7;

    /// <summary>Head over shank of a common nail, taken as least.</summary>
    public const double Head = 2;

    /// <summary>Root over shank of a wood screw (NDS table L3: 0.79 to 0.82).</summary>
    public const double Root = 0.79;

    /// <summary>Share of a wood screw's length that is thread.</summary>
    public const double Thread = 2.0 / 3;

    private const double Inch = 0.0254;

    private static readonly Source Memory = Sources.Get("nds-memory");

    /// <summary>F_e of fasteners under 1/4 in, Pa.</summary>
    public static double Bearing(double gravity) => 16_600 * Math.Pow(gravity, 1.84) * UsUnits.Psi;

    /// <summary>F_yb of nails and screws by diameter (table I1), Pa.</summary>
    public static Cited<double> Yield(double diameter) => new((diameter / Inch) switch
    {
        <= 0.142 => 100_000,
        <= 0.177 => 90_000,
        <= 0.236 => 80_000,
        <= 0.273 => 70_000,
        <= 0.344 => 60_000,
        _ => 45_000,
    } * UsUnits.Psi, Memory, Tag.Code);

    /// <summary>K_D: 2.2 to 0.17 in, 10 D + 0.5 with inches to 1/4 in.</summary>
    public static double Reduction(double diameter) => diameter / Inch <= 0.17 ? 2.2 : 10 * diameter / Inch + 0.5;

    /// <summary>Whether it is reckoned as a nail; thicker is a bolt across the grain.</summary>
    public static bool IsThin(double diameter) => diameter < Dowel.DiameterMin - 1e-9;

    /// <summary>Z of one fastener across itself, N, before every factor; into wood of G, through a side of given bearing strength.</summary>
    public static double Across(double diameter, double reach, double gravity, DowelMember side) =>
        Dowel.Modes(diameter, new(reach, InWood(gravity, diameter)), side, Yield(diameter).Value, Reduced(diameter)).SingleShear * Reaching(diameter, reach);

    /// <summary>Bearing strength of wood round a nail, whatever the direction, Pa.</summary>
    public static double InWood(double gravity, double diameter) => IsThin(diameter) ? Bearing(gravity) : Dowel.BearingAcross(gravity, diameter);

    /// <summary>p/10D, at most 1; nothing under 6 D.</summary>
    public static double Reaching(double diameter, double reach) => reach < ReachLeast * diameter - 1e-9 ? 0 : Math.Min(1, reach / (ReachFull * diameter));

    /// <summary>W p of a smooth nail: 1 380 G^(5/2) D pounds for each inch that it reaches, N.</summary>
    public static double Pull(double diameter, double reach, double gravity) => 1_380 * Math.Pow(gravity, 2.5) * (diameter / Inch) * (reach / Inch) * UsUnits.PoundForce;

    /// <summary>W p of a wood screw: 2 850 G^2 D pounds for each inch of thread in the wood, N.</summary>
    public static double PullOfScrew(double diameter, double thread, double gravity) => 2_850 * gravity * gravity * (diameter / Inch) * (thread / Inch) * UsUnits.PoundForce;

    /// <summary>W p of a lag screw: 1 800 G^(3/2) D^(3/4) pounds for each inch of thread in the wood, N.</summary>
    public static double PullOfLag(double diameter, double thread, double gravity) =>
        1_800 * Math.Pow(gravity, 1.5) * Math.Pow(diameter / Inch, 0.75) * (thread / Inch) * UsUnits.PoundForce;

    /// <summary>W_H: a round head drawn through a board, 690 pi D_H G^2 t pounds to a thickness of 2.5 heads (NDS 2018 12.2.5), N.</summary>
    public static double PullThrough(double head, double thickness, double gravity) =>
        690 * Math.PI * (head / Inch) * gravity * gravity * (Math.Min(thickness, 2.5 * head) / Inch) * UsUnits.PoundForce;

    /// <summary>Puts every mode of one nail down and hands on Z with its reach, N.</summary>
    public static Symbol Steps(Worksheet sheet, double diameter, double reach, double gravity, DowelMember side)
    {
        var thin = IsThin(diameter);
        var reduced = Reduced(diameter);
        var written = thin
            ? new Dowel.Printed("nail-diameter", Yield(diameter), Worksheet.Code("K_D", "nail-reduction", reduced.Bends, Dimension.Number, Memory), "K_D", "K_D", "K_D")
            : new Dowel.Printed("nail-diameter", Yield(diameter), Worksheet.Code("K", "dowel-angle", reduced.Crushes / 4, Dimension.Number, Memory), "(4*K)", "(3.6*K)", "(3.2*K)");
        var z = Dowel.Steps(sheet, diameter, new(reach, InWood(gravity, diameter)), side, reduced, written, planes: 1);
        Symbol p = Worksheet.Computed("p", "nail-reach", reach, Dimension.Length), d = Worksheet.Given("D", "nail-diameter", diameter, Dimension.Length);
        return sheet.Step("nail-across", "Z_p", "Z*min(1, p/(10*D))", z.Value.Si * Reaching(diameter, reach), Dimension.Force, Memory, z, p, d);
    }

    private static Dowel.Reductions Reduced(double diameter)
    {
        if (IsThin(diameter))
        {
            var k = Reduction(diameter);
            return new(k, k, k);
        }

        var across = Dowel.AngleFactor(Math.PI / 2);
        return new(4 * across, 3.6 * across, 3.2 * across);
    }
}
