using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Members;

/// <summary>One timber that a bolt goes through.</summary>
/// <param name="Thickness">l: length of the bolt that bears in it, m.</param>
/// <param name="Bearing">F_e: dowel bearing strength at the angle of the load to its grain, Pa.</param>
public readonly record struct DowelMember(double Thickness, double Bearing);

/// <summary>What one bolt between two timbers carries across itself, by the way it gives way; N, before any factor of duration, wet, group or geometry.</summary>
/// <param name="MainCrushes">I_m.</param>
/// <param name="SideCrushes">I_s.</param>
/// <param name="Turns">II: the bolt turns, stiff, in both.</param>
/// <param name="BendsInSide">III_m: it bends in the side timber and turns in the main one.</param>
/// <param name="BendsInMain">III_s: it bends in the main timber and turns in the side one.</param>
/// <param name="BendsInBoth">IV.</param>
public readonly record struct DowelModes(double MainCrushes, double SideCrushes, double Turns, double BendsInSide, double BendsInMain, double BendsInBoth)
{
    /// <summary>Z of one shear plane: the least of all six.</summary>
    public double SingleShear => Math.Min(Math.Min(Math.Min(MainCrushes, SideCrushes), Math.Min(Turns, BendsInSide)), Math.Min(BendsInMain, BendsInBoth));

    /// <summary>Z of a main timber between two equal side timbers: the least of I_m, 2 I_s, 2 III_s and 2 IV.</summary>
    public double DoubleShear => Math.Min(Math.Min(MainCrushes, 2 * SideCrushes), Math.Min(2 * BendsInMain, 2 * BendsInBoth));
}

/// <summary>Bolts and steel pins of 1/4 in and thicker across timbers: the yield limits of NDS 12.3, and what goes with them. SI.</summary>
/// <remarks>
/// Each mode is the plastic equilibrium of the bolt in its holes, q = F_e D per length and M = F_yb D^3/6 where it bends, over R_d: 4 K for I, 3.6 K for II, 3.2 K for III and IV
/// with K = 1 + 0.25 angle/90 degrees of the larger angle of load to grain. Written as quadratics; they equal the k_1 to k_3 of NDS table 12.3.1A.
/// </remarks>
public static class Dowel
{
    /// <summary>The thinnest to which these reductions belong, m: 1/4 in.</summary>
    public const double DiameterMin = 0.00635;

    /// <summary>Round edge and end distances and spacing, in diameters, for the full value in softwood: NDS 12.5.1, recalled.</summary>
    public const double EndInTension = 7, Spacing = 4, EdgeAlong = 1.5, LoadedEdgeAcross = 4;

    private static readonly Source Memory = Sources.Get("nds-memory");

    /// <summary>F_yb of a common bolt or a pin cut from mild rod: 45 000 psi (NDS table I1, recalled), Pa.</summary>
    public static Cited<double> Yield { get; } = new(45_000 * UsUnits.Psi, Memory, Tag.Code);

    /// <summary>F_e along the grain: 11 200 G psi, in Pa.</summary>
    public static double BearingAlong(double gravity) => 11_200 * gravity * UsUnits.Psi;

    /// <summary>F_e across the grain: 6 100 G^1.45/sqrt(D in inches) psi, in Pa.</summary>
    public static double BearingAcross(double gravity, double diameter) => 6_100 * Math.Pow(gravity, 1.45) / Math.Sqrt(diameter / 0.0254) * UsUnits.Psi;

    /// <summary>F_e at an angle of load to grain, Hankinson, Pa.</summary>
    /// <param name="gravity">G.</param>
    /// <param name="diameter">D, m.</param>
    /// <param name="angle">Radians, 0 along the grain.</param>
    public static double Bearing(double gravity, double diameter, double angle) => Nds.AtAngle(BearingAlong(gravity), BearingAcross(gravity, diameter), angle);

    /// <summary>K of table 12.3.1B for the larger angle of load to grain in either timber, radians.</summary>
    public static double AngleFactor(double angle) => 1 + 0.25 * angle / (Math.PI / 2);

    /// <summary>Every mode of one bolt.</summary>
    /// <param name="diameter">D, m, at least <see cref="DiameterMin"/>.</param>
    /// <param name="main">The main timber: the thicker, or the one between two others.</param>
    /// <param name="side">The side timber.</param>
    /// <param name="yield">F_yb, Pa.</param>
    /// <param name="angle">The larger angle of load to grain, radians.</param>
    public static DowelModes Modes(double diameter, DowelMember main, DowelMember side, double yield, double angle)
    {
        if (!(diameter >= DiameterMin - 1e-9))
        {
            throw new ArgumentOutOfRangeException(nameof(diameter), diameter, "thinner fasteners have other reductions");
        }

        var k = AngleFactor(angle);
        return Modes(diameter, main, side, yield, new Reductions(4 * k, 3.6 * k, 3.2 * k));
    }

    /// <summary>R_d by mode: I, II, and III with IV.</summary>
    internal readonly record struct Reductions(double Crushes, double Turns, double Bends);

    /// <summary>Every mode of one round fastener with reductions of its own.</summary>
    internal static DowelModes Modes(double diameter, DowelMember main, DowelMember side, double yield, Reductions reduced)
    {
        double qm = main.Bearing * diameter, qs = side.Bearing * diameter, lm = main.Thickness, ls = side.Thickness;
        double m = yield * Math.Pow(diameter, 3) / 6, soft = 1 / qm + 1 / qs, half = (lm + ls) / 2;
        return new(
            qm * lm / reduced.Crushes,
            qs * ls / reduced.Crushes,
            (Math.Sqrt(half * half + soft * (qs * ls * ls + qm * lm * lm) / 4) - half) / (soft / 2) / reduced.Turns,
            (Math.Sqrt(lm * lm / 4 + (2 / qs + 1 / qm) * (m + qm * lm * lm / 4)) - lm / 2) / (1 / qs + 1 / (2 * qm)) / reduced.Bends,
            (Math.Sqrt(ls * ls / 4 + (1 / qs + 2 / qm) * (m + qs * ls * ls / 4)) - ls / 2) / (1 / (2 * qs) + 1 / qm) / reduced.Bends,
            Math.Sqrt(4 * m / soft) / reduced.Bends);
    }

    /// <summary>C_g: mean share over greatest share of bolts in one row along the load (NDS eq. 11.3-1 with gamma = 180 000 D^1.5 lb/in of timber on timber, recalled).</summary>
    /// <param name="count">n in the row.</param>
    /// <param name="diameter">D, m.</param>
    /// <param name="spacing">s, m.</param>
    /// <param name="main">E A of the main timber, N.</param>
    /// <param name="side">E A of the side timbers together, N.</param>
    public static double Group(int count, double diameter, double spacing, double main, double side)
    {
        if (count < 2)
        {
            return 1;
        }

        var u = 1 + SlipModulus(diameter) * spacing / 2 * (1 / main + 1 / side);
        var m = u - Math.Sqrt(u * u - 1);
        var stiff = Math.Min(main / side, side / main);
        var (one, two) = (Math.Pow(m, count), Math.Pow(m, 2 * count));
        return m * (1 - two) / (count * ((1 + stiff * one) * (1 + m) - 1 + two)) * (1 + stiff) / (1 - m);
    }

    /// <summary>gamma: force over slip of one bolt of timber on timber, N/m.</summary>
    public static double SlipModulus(double diameter) => 180_000 * Math.Pow(diameter / 0.0254, 1.5) * UsUnits.PoundForce / 0.0254;

    /// <summary>Puts every mode down and hands on Z of one or two shear planes.</summary>
    /// <param name="sheet">Where the steps go.</param>
    /// <param name="diameter">D, m.</param>
    /// <param name="main">The main timber.</param>
    /// <param name="side">The side timber; with two planes, each of the two.</param>
    /// <param name="angle">The larger angle of load to grain, radians.</param>
    /// <param name="planes">1 or 2.</param>
    internal static Symbol Steps(Worksheet sheet, double diameter, DowelMember main, DowelMember side, double angle, int planes)
    {
        var factor = AngleFactor(angle);
        var k = Worksheet.Code("K", "dowel-angle", factor, Dimension.Number, Memory);
        var written = new Printed("bolt-diameter", Yield, k, "(4*K)", "(3.6*K)", "(3.2*K)");
        return Steps(sheet, diameter, main, side, new Reductions(4 * factor, 3.6 * factor, 3.2 * factor), written, planes);
    }

    /// <summary>How a fastener and its reductions are printed.</summary>
    internal sealed record Printed(string Diameter, Cited<double> Yield, Symbol Factor, string Crushes, string Turns, string Bends);

    /// <summary>Puts every mode of one round fastener down and hands on Z.</summary>
    internal static Symbol Steps(Worksheet sheet, double diameter, DowelMember main, DowelMember side, Reductions reduced, Printed written, int planes)
    {
        var modes = Modes(diameter, main, side, written.Yield.Value, reduced);
        Symbol d = Worksheet.Given("D", written.Diameter, diameter, Dimension.Length), fy = Worksheet.Cited("F_yb", "bolt-yield", written.Yield, Dimension.Stress);
        var k = written.Factor;
        Symbol lm = Worksheet.Computed("l_m", "dowel-main", main.Thickness, Dimension.Length), ls = Worksheet.Computed("l_s", "dowel-side", side.Thickness, Dimension.Length);
        Symbol fm = Worksheet.Code("F_em", "dowel-bearing-main", main.Bearing, Dimension.Stress, Memory), fs = Worksheet.Code("F_es", "dowel-bearing-side", side.Bearing, Dimension.Stress, Memory);
        var qm = sheet.Step("dowel-q-main", "q_m", "F_em*D", main.Bearing * diameter, Dimension.LineLoad, Memory, fm, d);
        var qs = sheet.Step("dowel-q-side", "q_s", "F_es*D", side.Bearing * diameter, Dimension.LineLoad, Memory, fs, d);
        var m = sheet.Step("dowel-moment", "M", "F_yb*D^3/6", written.Yield.Value * Math.Pow(diameter, 3) / 6, Dimension.Moment, Memory, fy, d);
        var im = Mode("dowel-i-m", "Z_Im", $"q_m*l_m/{written.Crushes}", modes.MainCrushes, qm, lm, k);
        var @is = Mode("dowel-i-s", "Z_Is", $"q_s*l_s/{written.Crushes}", modes.SideCrushes, qs, ls, k);
        var iiis = Mode("dowel-iii-s", "Z_IIIs", $"(sqrt(l_s^2/4 + (1/q_s + 2/q_m)*(M + q_s*l_s^2/4)) - l_s/2)/(1/(2*q_s) + 1/q_m)/{written.Bends}", modes.BendsInMain, ls, qs, qm, m, k);
        var iv = Mode("dowel-iv", "Z_IV", $"sqrt(4*M/(1/q_m + 1/q_s))/{written.Bends}", modes.BendsInBoth, m, qm, qs, k);
        if (planes == 2)
        {
            return Mode("dowel-z", "Z", "min(min(Z_Im, 2*Z_Is), min(2*Z_IIIs, 2*Z_IV))", modes.DoubleShear, im, @is, iiis, iv);
        }

        var ii = Mode("dowel-ii", "Z_II", $"(sqrt(((l_m + l_s)/2)^2 + (1/q_m + 1/q_s)*(q_s*l_s^2 + q_m*l_m^2)/4) - (l_m + l_s)/2)/((1/q_m + 1/q_s)/2)/{written.Turns}", modes.Turns, lm, ls, qm, qs, k);
        var iiim = Mode("dowel-iii-m", "Z_IIIm", $"(sqrt(l_m^2/4 + (2/q_s + 1/q_m)*(M + q_m*l_m^2/4)) - l_m/2)/(1/q_s + 1/(2*q_m))/{written.Bends}", modes.BendsInSide, lm, qs, qm, m, k);
        return Mode("dowel-z", "Z", "min(min(min(Z_Im, Z_Is), min(Z_II, Z_IIIm)), min(Z_IIIs, Z_IV))", modes.SingleShear, im, @is, ii, iiim, iiis, iv);

        Symbol Mode(string key, string symbol, string equation, double value, params ReadOnlySpan<Symbol> symbols) =>
            sheet.Step(key, symbol, equation, value, Dimension.Force, Memory, symbols);
    }
}
