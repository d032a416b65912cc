using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Mix;

/// <summary>Decides what cob may be loaded with: measured with five specimens or more of this mix, assumed otherwise.</summary>
internal static class Strengths
{
    private const int Enough = 5;

    public static (CobStrength Strength, Sequence<Assumption> Assumptions) Of(TestRegister register)
    {
        SpecimenReading[] counted = [.. register.Specimens.Where(s => s.Counts)];
        return counted.Length >= Enough ? Measured(counted) : Assumed(counted);
    }

    private static (CobStrength Strength, Sequence<Assumption> Assumptions) Measured(SpecimenReading[] counted)
    {
        var sheet = new Worksheet("cob-strength");
        double[] strengths = [.. counted.Select(s => s.AsPrism)];
        var (mean, variation, m, v) = Samples.Put(sheet, strengths);
        var least = MixValues.Or(null, "least-scatter", Dimension.Fraction);
        var divisor = MixValues.Or(null, "divisor-measured", Dimension.Number);
        var k = Fractile.Factor(strengths.Length);
        var characteristic = Math.Max(0, mean * (1 - k * Math.Max(variation, least.Value)));
        var fk = sheet.Step(
            "characteristic-strength", "f_k", "max(0,m*(1-k_n*max(V,V_0)))", characteristic, Dimension.Stress, Sources.Get("en-1990-d"), m,
            Worksheet.Code("k_n", "fractile-factor", k, Dimension.Number, Sources.Get("en-1990-d")), v!, least.Symbol("V_0", "least-scatter", Dimension.Fraction));
        var allowable = characteristic / divisor.Value;
        sheet.Step("cob-allowed", "f_a", "f_k/d", allowable, Dimension.Stress, Sources.Get("mix-judgement"), fk, divisor.Symbol("d", "strength-divisor", Dimension.Number));
        return (new CobStrength(allowable, characteristic, mean, divisor.Value, strengths.Length, Tag.Measured, Says(counted), null, sheet.Done), [.. least.Assumptions, .. divisor.Assumptions]);
    }

    /// <summary>Whose specimens, when, of which mix and how wet: what a measured strength is named by.</summary>
    private static Message Says(SpecimenReading[] counted)
    {
        var dates = counted.Select(s => s.Date).OfType<DateOnly>().Order().ToList();
        var wet = counted.Select(s => s.Moisture).OfType<double>().ToList();
        var testers = counted.Select(s => s.Tester).OfType<string>().Distinct().ToList();
        return Message.Of(
            "analysis.mix.measured-by", ("n", counted.Length), ("shape", new Message($"analysis.shape.{counted[0].Shape}")),
            ("who", testers.Count == 0 ? new Message("analysis.mix.nobody-named") : new Argument.List(testers.Select(t => (Argument)t).ToSequence())),
            ("when", dates.Count == 0 ? new Message("analysis.mix.no-date") : dates[^1]),
            ("mix", counted.Select(s => s.Trial).OfType<string>().FirstOrDefault() is { } trial ? Message.Of("analysis.mix.of-trial", ("trial", trial)) : new Message("analysis.mix.of-recipe")),
            ("wet", wet.Count == counted.Length ? Message.Of("analysis.mix.moisture", ("moisture", Amount.Fraction(wet.Average()))) : new Message("analysis.mix.no-moisture")));
    }

    private static (CobStrength Strength, Sequence<Assumption> Assumptions) Assumed(SpecimenReading[] counted)
    {
        var sheet = new Worksheet("cob-strength-assumed");
        var untested = MixValues.Of("strength-untested");
        var divisor = MixValues.Or(null, "divisor-assumed", Dimension.Number);
        var least = counted.Length > 0 ? counted.Min(s => s.AsPrism) : double.PositiveInfinity;
        var low = least < untested.Value;
        var characteristic = Math.Min(untested.Value, least);
        var f = low ? Worksheet.Computed("f_k", "least-strength", least, Dimension.Stress) : Worksheet.Assumed("f_k", "strength-untested", untested.Value, Dimension.Stress, untested.Source);
        var allowable = characteristic / divisor.Value;
        sheet.Step("cob-allowed", "f_a", "f_k/d", allowable, Dimension.Stress, Sources.Get("mix-judgement"), f, divisor.Symbol("d", "strength-divisor", Dimension.Number));
        var assumption = new Assumption("cob-bearing", new Message(low ? "analysis.assumed.cob-bearing-low" : "analysis.assumed.cob-bearing"), new Amount(allowable, Dimension.Stress), untested.Source);
        var strength = new CobStrength(
            allowable, characteristic, counted.Length > 0 ? counted.Average(s => s.AsPrism) : null, divisor.Value, counted.Length, Tag.Assumed,
            Message.Of(low ? "analysis.mix.assumed-low" : "analysis.mix.assumed-strength", ("n", counted.Length)), assumption, sheet.Done);
        return (strength, [assumption, .. divisor.Assumptions]);
    }
}
