using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Members;

/// <summary>A round column, held at both ends so that they cannot move sideways, its ends free to turn.</summary>
internal static class Column
{
    /// <summary>l_e/d beyond which no column is designed (NDS 3.7.1.4), on the square of equal area.</summary>
    public const double MostSlender = 50;

    /// <summary>Side of the square of the same area over the diameter of a round.</summary>
    public static double SquareShare { get; } = Math.Sqrt(Math.PI) / 2;

    /// <summary>l_e/d of a round on the square of equal area.</summary>
    public static double Slenderness(double length, double diameter) => length / (SquareShare * diameter);

    /// <summary>Force that a round column carries, with the steps that lead there, N.</summary>
    public static Symbol Capacity(Worksheet sheet, Timber timber, Combination combination, double diameter, double length)
    {
        var d = Worksheet.Given("d", "column-diameter", diameter, Dimension.Length);
        var l = Worksheet.Computed("l", "column-length", length, Dimension.Length);
        var area = sheet.Step("column-area", "A", "pi*d^2/4", Math.PI * diameter * diameter / 4, Dimension.Area, Sources.Get("mechanics"), d);
        var strength = Strength.Adjusted(sheet, timber, combination, timber.Compression, "compression-strength", "F_c");
        return timber.System == TimberSystem.Nds ? Nds(sheet, timber, strength, area, d, l) : En(sheet, timber, strength, area, d, l);
    }

    /// <summary>The same force without the steps, N.</summary>
    public static double Force(Timber timber, Combination combination, double diameter, double length)
    {
        var squash = timber.Compression.Value * Strength.Factor(timber, combination);
        return squash * Share(timber, squash, diameter, length) * Math.PI / 4 * diameter * diameter;
    }

    /// <summary>F_cE on the square of equal area (NDS 3.7.1), Pa.</summary>
    public static double Euler(Timber timber, double diameter, double length)
    {
        var slender = Slenderness(length, diameter);
        return 0.822 * timber.LeastModulus.Value / (slender * slender);
    }

    /// <summary>C_P or k_c.</summary>
    private static double Share(Timber timber, double squash, double diameter, double length)
    {
        if (timber.System == TimberSystem.Nds)
        {
            return Members.Nds.ColumnStability(Euler(timber, diameter, length) / squash, 0.85);
        }

        var relative = 4 * length / diameter / Math.PI * Math.Sqrt(timber.Compression.Value / timber.LeastModulus.Value);
        var half = 0.5 * (1 + 0.2 * (relative - 0.3) + relative * relative);
        return Math.Min(1, 1 / (half + Math.Sqrt(half * half - relative * relative)));
    }

    private static Symbol Nds(Worksheet sheet, Timber timber, Symbol strength, Symbol area, Symbol d, Symbol l)
    {
        var source = Sources.Get("nds-memory");
        var modulus = Worksheet.Cited("E_min", "least-modulus", timber.LeastModulus, Dimension.Stress);
        var euler = Euler(timber, d.Value.Si, l.Value.Si);
        var fce = sheet.Step("column-euler", "F_cE", "0.822*E_min/(l/(sqrt(pi)/2*d))^2", euler, Dimension.Stress, source, modulus, l, d);
        var share = Share(timber, strength.Value.Si, d.Value.Si, l.Value.Si);
        var name = strength.Name;
        var cp = sheet.Step(
            "column-stability", "C_P", $"(1 + F_cE/{name})/1.7 - sqrt(((1 + F_cE/{name})/1.7)^2 - F_cE/{name}/0.85)", share, Dimension.Number, source, fce, strength);
        return sheet.Step("column-capacity", "N_c", $"{name}*C_P*A", strength.Value.Si * share * area.Value.Si, Dimension.Force, source, strength, cp, area);
    }

    private static Symbol En(Worksheet sheet, Timber timber, Symbol strength, Symbol area, Symbol d, Symbol l)
    {
        var source = Sources.Get("en-1995-memory");
        var fc = Worksheet.Cited("f_c0k", "compression-strength", timber.Compression, Dimension.Stress);
        var modulus = Worksheet.Cited("E_005", "least-modulus", timber.LeastModulus, Dimension.Stress);
        var relative = 4 * l.Value.Si / d.Value.Si / Math.PI * Math.Sqrt(timber.Compression.Value / timber.LeastModulus.Value);
        var lambda = sheet.Step("column-relative", "lambda", "4*l/d/pi*sqrt(f_c0k/E_005)", relative, Dimension.Number, source, l, d, fc, modulus);
        var half = 0.5 * (1 + 0.2 * (relative - 0.3) + relative * relative);
        var k = sheet.Step("column-k", "k", "0.5*(1 + 0.2*(lambda - 0.3) + lambda^2)", half, Dimension.Number, source, lambda);
        var share = Share(timber, strength.Value.Si, d.Value.Si, l.Value.Si);
        var kc = sheet.Step("column-stability", "k_c", "min(1, 1/(k + sqrt(k^2 - lambda^2)))", share, Dimension.Number, source, k, lambda);
        return sheet.Step("column-capacity", "N_c", $"{strength.Name}*k_c*A", strength.Value.Si * share * area.Value.Si, Dimension.Force, source, strength, kc, area);
    }
}
