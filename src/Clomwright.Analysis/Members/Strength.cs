using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Members;

/// <summary>Adjusts a timber's values for one combination, and puts the step down.</summary>
internal static class Strength
{
    /// <summary>The factor for duration of load: C_D, or k_mod/gamma_M.</summary>
    public static double Factor(Timber timber, Combination combination) =>
        timber.System == TimberSystem.Nds ? Nds.Duration(combination) : Ec5.Duration(combination) / Ec5.PartialFactor;

    /// <summary>Allowable or design bending stress of a round.</summary>
    public static Symbol RoundBending(Worksheet sheet, Timber timber, Combination combination, double diameter)
    {
        if (timber.System == TimberSystem.En)
        {
            return Adjusted(sheet, timber, combination, timber.Bending, "bending-strength", "f_m");
        }

        var fb = Worksheet.Cited("F_b", "bending-strength", timber.Bending, Dimension.Stress);
        var size = Nds.RoundSize(diameter);
        var cf = Worksheet.Code("C_F", "size-factor", size, Dimension.Number, Sources.Get("nds-memory"));
        var cd = DurationSymbol(combination);
        return sheet.Step("bending-allowed", "F_b1", "F_b*C_D*C_F", timber.Bending.Value * cd.Value.Si * size, Dimension.Stress, Sources.Get("nds-memory"), fb, cd, cf);
    }

    /// <summary>Allowable or design value of one strength.</summary>
    public static Symbol Adjusted(Worksheet sheet, Timber timber, Combination combination, Cited<double> strength, string word, string symbol)
    {
        if (timber.System == TimberSystem.Nds)
        {
            var f = Worksheet.Cited(symbol, word, strength, Dimension.Stress);
            var cd = DurationSymbol(combination);
            return sheet.Step($"{word}-allowed", $"{symbol}1", $"{symbol}*C_D", strength.Value * cd.Value.Si, Dimension.Stress, Sources.Get("nds-duration"), f, cd);
        }

        var k = Worksheet.Cited($"{symbol}k", word, strength, Dimension.Stress);
        var mod = Worksheet.Code("k_mod", "duration-en", Ec5.Duration(combination), Dimension.Number, Sources.Get("en-1995-memory"));
        var gamma = Worksheet.Code("gamma_M", "partial-factor", Ec5.PartialFactor, Dimension.Number, Sources.Get("en-1995-examples"));
        return sheet.Step(
            $"{word}-allowed", $"{symbol}d", $"k_mod*{symbol}k/gamma_M", Ec5.Design(strength.Value, Ec5.Duration(combination)), Dimension.Stress, Sources.Get("en-1995-examples"), mod, k, gamma);
    }

    /// <summary>Allowable or design shear stress; in EN 1995 of the width that cracks leave.</summary>
    public static Symbol Shear(Worksheet sheet, Timber timber, Combination combination)
    {
        var strength = Adjusted(sheet, timber, combination, timber.Shear, "shear-strength", "F_v");
        if (timber.System == TimberSystem.Nds)
        {
            return strength;
        }

        var source = Sources.Get("en-1995-memory");
        var cracks = Worksheet.Code("k_cr", "shear-cracks", Ec5.ShearCracks, Dimension.Number, source);
        return sheet.Step("shear-cracked", "f_vcr", $"k_cr*{strength.Name}", Ec5.ShearCracks * strength.Value.Si, Dimension.Stress, source, cracks, strength);
    }

    /// <summary>Across the grain: no duration factor in the NDS, k_mod/gamma_M in EN 1995.</summary>
    public static Symbol Across(Worksheet sheet, Timber timber, Combination combination) => timber.System == TimberSystem.Nds
        ? Worksheet.Cited("F_cp", "across-strength", timber.AcrossGrain, Dimension.Stress)
        : Adjusted(sheet, timber, combination, timber.AcrossGrain, "across-strength", "f_c90");

    private static Symbol DurationSymbol(Combination combination) =>
        Worksheet.Code("C_D", "duration-factor", Nds.Duration(combination), Dimension.Number, Sources.Get("nds-duration"));
}
