using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Drying;

/// <summary>Bands over the cases.</summary>
public static class Ranges
{
    internal const double Gravity = 9.80665;

    /// <summary>Height that a free lift of the mix can stand, m: 2 su over unit weight and safety, never above what is practice for the method.</summary>
    /// <param name="numbers">What is assumed in each case.</param>
    /// <param name="method">How it is laid.</param>
    public static Band HeightToday(Func<DryingCase, DryingNumbers> numbers, LiftMethod method) => FreshCobs.Of(numbers, method, []).Today;

    /// <summary>The height that it stands, practice not counted, with how the low and the high of it came about.</summary>
    internal static Band Stands(Func<DryingCase, DryingNumbers> numbers, LiftMethod method, out Sequence<Calculation> calculations)
    {
        ArgumentNullException.ThrowIfNull(numbers);
        var (low, high) = (Height(numbers(DryingCase.Slow), method), Height(numbers(DryingCase.Fast), method));
        if (low.Height > high.Height)
        {
            (low, high) = (high, low);
        }

        calculations = [low.How with { Place = "low end" }, high.How with { Place = "high end" }];
        return new(low.Height, high.Height);
    }

    private static (double Height, Calculation How) Height(DryingNumbers n, LiftMethod method)
    {
        var word = WallRun.Word(method);
        var sheet = new Worksheet("height-today");
        var (su, wet) = Fresh(sheet, n, method);
        var free = Strength.FreeHeight(su.Value.Si, wet.Value.Si * Gravity, n["drying-free-safety"]);
        var stands = sheet.Step(
            "free-height", "H_f", "2*s_u/(rho_w*9.80665*F)", free, Dimension.Length, Sources.Get("drying-judgement"), su, wet, n.Symbol("F", "drying-free-safety"));
        sheet.Step("height-today", "H", "min(H_c,H_f)", Math.Min(n["drying-cap-" + word], free), Dimension.Length, Sources.Get("lift-practice"), n.Symbol("H_c", "drying-cap-" + word), stands);
        return (free, sheet.Done);
    }

    /// <summary>Undrained strength and wet density on the day a lift is laid, put down step by step.</summary>
    internal static (Symbol Undrained, Symbol WetDensity) Fresh(Worksheet sheet, DryingNumbers n, LiftMethod method)
    {
        var (earth, water) = (WallRun.EarthOf(n), WallRun.LaidWater(n, method));
        var strength = WallRun.StrengthOf(n, earth);
        var undrained = strength.Compressive(water) / 2;
        var index = n.Symbol("I_L", "drying-liquidity-" + WallRun.Word(method));
        var w = sheet.Step(
            "water-laid", "w", "w_P+I_L*(w_L-w_P)", water, Dimension.Fraction, Sources.Get("soil-phases"), n.Symbol("w_P", "drying-plastic-limit"), index, n.Symbol("w_L", "drying-liquid-limit"));
        var su = index.Value.Si >= 0
            ? sheet.Step("undrained-strength", "s_u", "1700*35^(1-I_L)", undrained, Dimension.Stress, Sources.Get("vardanega-haigh-2014"), index)
            : sheet.Step(
                "undrained-strength", "s_u", "min(f_d,f_d*exp(-k*(w-w_e)))/2", undrained, Dimension.Stress, Sources.Get("drying-judgement"), n.Symbol("f_d", "drying-dry-strength"),
                Worksheet.Computed("k", "gain", strength.Gain, Dimension.Number), w, Worksheet.Computed("w_e", "water-at-rest", strength.Equilibrium, Dimension.Fraction));
        var wet = sheet.Step("wet-density", "rho_w", "rho*(1+w)", earth.WetDensity(water), Dimension.Density, Sources.Get("soil-phases"), n.Symbol("rho", "drying-dry-density"), w);
        return (su, wet);
    }
}
