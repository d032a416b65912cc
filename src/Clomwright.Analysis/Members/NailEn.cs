using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Members;

/// <summary>Smooth round nails in softwood by EN 1995-1-1, 8.2.2, 8.3.1 and 8.3.2, recalled; not predrilled, without rope effect. SI.</summary>
internal static class NailEn
{
    /// <summary>Diameters that a smooth nail must reach into the timber that holds its point, and for its full pull.</summary>
    public const double ReachLeast = 8, ReachFull = 12;

    /// <summary>Share of its pull that a nail driven into green wood keeps (8.3.2(8)).</summary>
    public const double GreenPull = 2.0 / 3;

    /// <summary>f_u of nail wire (8.3.1.1), Pa.</summary>
    public const double Ultimate = 600e6;

    private static readonly Source Memory = Sources.Get("en-1995-memory");

    /// <summary>f_h,k = 0.082 rho_k d^-0.3 with kg/m3, mm and N/mm2; Pa.</summary>
    public static double Bearing(double density, double diameter) => 0.082 * density * Math.Pow(1000 * diameter, -0.3) * 1e6;

    /// <summary>f_ax,k = 20e-6 rho_k^2, Pa.</summary>
    public static double PointPull(double density) => 20 * density * density;

    /// <summary>f_head,k = 70e-6 rho_k^2, Pa.</summary>
    public static double HeadPull(double density) => 70 * density * density;

    /// <summary>F_ax,Rk of a smooth nail: at its point, or by head and shank in the board; N. Nothing under 8 d of reach.</summary>
    public static double Pull(double diameter, double reach, double board, double head, double density) =>
        Math.Min(PointPull(density) * diameter * reach * Reaching(diameter, reach), PointPull(density) * diameter * board + HeadPull(density) * head * head);

    /// <summary>t/(4 d) - 2 between 8 d and 12 d, 1 beyond.</summary>
    public static double Reaching(double diameter, double reach) => reach < ReachLeast * diameter - 1e-9 ? 0 : Math.Clamp(reach / (4 * diameter) - 2, 0, 1);

    /// <summary>F_v,Rk between two timbers of one density (8.6), N.</summary>
    /// <param name="diameter">d, m.</param>
    /// <param name="side">t_1 in the timber under the head, m.</param>
    /// <param name="point">t_2 in the other, m.</param>
    /// <param name="bearing">f_h,k, Pa.</param>
    /// <param name="moment">M_y,Rk, N m.</param>
    public static double Across(double diameter, double side, double point, double bearing, double moment)
    {
        var q = bearing * diameter;
        return Math.Min(Math.Min(Math.Min(q * side, q * point), Turns(q, side, point)), Math.Min(Math.Min(Bends(q, side, moment), Bends(q, point, moment)), 1.15 * Math.Sqrt(2 * moment * q)));
    }

    /// <summary>M_y,Rk of nail wire, N m.</summary>
    public static double Moment(double diameter) => DowelEn.YieldMoment(diameter, Ultimate);

    /// <summary>Puts the modes of one fastener down and hands on F_v,Rk, N.</summary>
    public static Symbol Steps(Worksheet sheet, string word, double diameter, double side, double point, double bearing, double moment)
    {
        var q = bearing * diameter;
        Symbol d = Worksheet.Given("D", word, diameter, Dimension.Length), fh = Worksheet.Code("f_h", "dowel-en-bearing", bearing, Dimension.Stress, Memory);
        Symbol my = Worksheet.Code("M_y", "dowel-en-moment", moment, Dimension.Moment, Memory);
        Symbol t1 = Worksheet.Computed("t_1", "dowel-side", side, Dimension.Length), t2 = Worksheet.Computed("t_2", "dowel-main", point, Dimension.Length);
        var crushes = Mode("dowel-en-crushes", "F_1", "f_h*D*min(t_1, t_2)", q * Math.Min(side, point), fh, d, t1, t2);
        var turns = Mode("dowel-en-turns", "F_2", "f_h*D*t_1/2*(sqrt(3 + 2*t_2/t_1 + 3*(t_2/t_1)^2) - 1 - t_2/t_1)", Turns(q, side, point), fh, d, t1, t2);
        var bends = Mode("dowel-en-bends", "F_3", "1.05*f_h*D*t_1/3*(sqrt(4 + 12*M_y/(f_h*D*t_1^2)) - 1)", Bends(q, side, moment), fh, d, t1, my);
        var bendsThere = Mode("dowel-en-bends-main", "F_4", "1.05*f_h*D*t_2/3*(sqrt(4 + 12*M_y/(f_h*D*t_2^2)) - 1)", Bends(q, point, moment), fh, d, t2, my);
        var twice = Mode("dowel-en-twice", "F_5", "1.15*sqrt(2*M_y*f_h*D)", 1.15 * Math.Sqrt(2 * moment * q), my, fh, d);
        return Mode("dowel-en-holds", "F_v", "min(min(F_1, F_2), min(min(F_3, F_4), F_5))", Across(diameter, side, point, bearing, moment), crushes, turns, bends, bendsThere, twice);

        Symbol Mode(string key, string symbol, string equation, double value, params ReadOnlySpan<Symbol> symbols) => sheet.Step(key, symbol, equation, value, Dimension.Force, Memory, symbols);
    }

    private static double Turns(double q, double side, double point)
    {
        var r = point / side;
        return q * side / 2 * (Math.Sqrt(3 + 2 * r + 3 * r * r) - 1 - r);
    }

    private static double Bends(double q, double length, double moment) => 1.05 * q * length / 3 * (Math.Sqrt(4 + 12 * moment / (q * length * length)) - 1);
}
