using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Members;

/// <summary>A steel dowel through softwood members alike, in single or double shear: yield modes of EN 1995-1-1, 8.2.2, without rope effect. SI.</summary>
public static class DowelEn
{
    /// <summary>f_u of bolts of class 4.6, Pa.</summary>
    public const double Ultimate = 400e6;

    /// <summary>Distances of bolts along the grain, in diameters (8.5.1.1, recalled): between them, and to a loaded end, never under <see cref="EndLeast"/>.</summary>
    public const double Spacing = 5, EndInTension = 7;

    /// <summary>Least distance to a loaded end, m.</summary>
    public const double EndLeast = 0.08;

    private static readonly Source Memory = Sources.Get("en-1995-memory");

    /// <summary>rho_k = rho_mean/1.2, kg/m3 (EN 338).</summary>
    public static double Density(Timber timber) => timber.Weight.Value / UsUnits.Gravity / 1.2;

    /// <summary>n_ef = min(n, n^0.9 (a_1/(13 d))^0.25): bolts in a row along the grain that count (8.34).</summary>
    /// <param name="count">n.</param>
    /// <param name="spacing">a_1/d.</param>
    public static double Effective(int count, double spacing) => Math.Min(count, Math.Pow(count, 0.9) * Math.Pow(spacing / 13, 0.25));

    /// <summary>F_v,Rk of one of the two planes of a timber between two others alike, N.</summary>
    /// <param name="diameter">d, m.</param>
    /// <param name="side">t_1 in each outer timber, m.</param>
    /// <param name="middle">t_2 in the one between, m.</param>
    /// <param name="bearing">f_h,k, Pa.</param>
    /// <param name="ultimate">f_u of the steel, Pa.</param>
    public static double DoubleShear(double diameter, double side, double middle, double bearing, double ultimate) =>
        Math.Min(Math.Min(bearing * side * diameter, bearing * middle * diameter / 2), Math.Min(Bends(diameter, side, bearing, ultimate), BendsTwice(diameter, bearing, ultimate)));

    /// <summary>F_v,Rk, N.</summary>
    /// <param name="diameter">d, m.</param>
    /// <param name="length">In each member, m.</param>
    /// <param name="bearing">f_h,k, Pa.</param>
    /// <param name="ultimate">f_u of the steel, Pa.</param>
    public static double SingleShear(double diameter, double length, double bearing, double ultimate)
    {
        var whole = bearing * length * diameter;
        double[] modes =
        [
            whole,
            whole / 2 * (Math.Sqrt(8) - 2),
            Bends(diameter, length, bearing, ultimate),
            BendsTwice(diameter, bearing, ultimate),
        ];
        return modes.Min();
    }

    /// <summary>M_y,Rk = 0.3 f_u d^2.6 with N and mm, N m.</summary>
    public static double YieldMoment(double diameter, double ultimate) => 0.3 * ultimate / 1e6 * Math.Pow(1000 * diameter, 2.6) / 1000;

    /// <summary>f_h,90,k of a softwood: 0.082 (1 - 0.01 d) rho_k/(1.35 + 0.015 d) with mm, kg/m3 and N/mm2; Pa.</summary>
    public static double Bearing(double density, double diameter)
    {
        var mm = 1000 * diameter;
        return 0.082 * (1 - 0.01 * mm) * density / (1.35 + 0.015 * mm) * 1e6;
    }

    /// <summary>Puts the modes down and hands on F_v,Rk of the bolt: of one plane between timbers equally thick, or of both planes of a timber between two.</summary>
    /// <param name="sheet">Where the steps go.</param>
    /// <param name="diameter">d, m.</param>
    /// <param name="side">t_1, m; with one plane in both timbers.</param>
    /// <param name="middle">t_2 of the timber between two, m; null with one plane.</param>
    /// <param name="density">rho_k, kg/m3. The bolt bears across the grain everywhere, which is the least.</param>
    internal static Symbol Steps(Worksheet sheet, double diameter, double side, double? middle, double density)
    {
        var f = Bearing(density, diameter);
        Symbol d = Worksheet.Given("D", "bolt-diameter", diameter, Dimension.Length), fh = Worksheet.Code("f_h", "dowel-en-bearing", f, Dimension.Stress, Memory);
        Symbol my = Worksheet.Code("M_y", "dowel-en-moment", YieldMoment(diameter, Ultimate), Dimension.Moment, Memory), t = Worksheet.Computed("t_1", "dowel-side", side, Dimension.Length);
        var bends = Mode("dowel-en-bends", "F_3", "1.05*f_h*t_1*D/3*(sqrt(4 + 12*M_y/(f_h*D*t_1^2)) - 1)", Bends(diameter, side, f, Ultimate), fh, t, d, my);
        var twice = Mode("dowel-en-twice", "F_4", "1.15*sqrt(2*M_y*f_h*D)", BendsTwice(diameter, f, Ultimate), my, fh, d);
        if (middle is not { } between)
        {
            var turns = Mode("dowel-en-turns", "F_2", "(sqrt(8) - 2)/2*f_h*t_1*D", (Math.Sqrt(8) - 2) / 2 * f * side * diameter, fh, t, d);
            return Mode("dowel-en-holds", "F_v", "min(F_2, min(F_3, F_4))", SingleShear(diameter, side, f, Ultimate), turns, bends, twice);
        }

        var sides = Mode("dowel-en-side", "F_1", "f_h*t_1*D", f * side * diameter, fh, t, d);
        var main = Mode("dowel-en-main", "F_2", "f_h*t_2*D/2", f * between * diameter / 2, fh, Worksheet.Computed("t_2", "dowel-main", between, Dimension.Length), d);
        return Mode("dowel-en-holds", "F_v", "2*min(min(F_1, F_2), min(F_3, F_4))", 2 * DoubleShear(diameter, side, between, f, Ultimate), sides, main, bends, twice);

        Symbol Mode(string key, string symbol, string equation, double value, params ReadOnlySpan<Symbol> symbols) => sheet.Step(key, symbol, equation, value, Dimension.Force, Memory, symbols);
    }

    private static double Bends(double diameter, double length, double bearing, double ultimate) =>
        1.05 * bearing * length * diameter / 3 * (Math.Sqrt(4 + 12 * YieldMoment(diameter, ultimate) / (bearing * diameter * length * length)) - 1);

    private static double BendsTwice(double diameter, double bearing, double ultimate) => 1.15 * Math.Sqrt(2 * YieldMoment(diameter, ultimate) * bearing * diameter);
}
