using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Mix;

/// <summary>Mean and scatter of strengths.</summary>
internal static class Samples
{
    /// <summary>n, m, V with n - 1.</summary>
    public static Sample Of(IReadOnlyList<double> strengths)
    {
        var sheet = new Worksheet("sample");
        var (mean, variation, _, _) = Put(sheet, strengths);
        return new Sample(strengths.Count, mean, variation, strengths.Min(), sheet.Done);
    }

    /// <summary>Puts mean and coefficient of variation down; no step for the scatter of one.</summary>
    public static (double Mean, double Variation, Symbol M, Symbol? V) Put(Worksheet sheet, IReadOnlyList<double> strengths)
    {
        var source = Sources.Get("en-1990-d");
        Symbol[] f = [.. strengths.Select((s, i) => Worksheet.Computed(FormattableString.Invariant($"f_{i + 1}"), "specimen-strength", s, Dimension.Stress))];
        var mean = strengths.Average();
        var m = sheet.Step("mean-strength", "m", $"({string.Join('+', f.Select(s => s.Name))})/{f.Length}", mean, Dimension.Stress, source, f);
        if (f.Length < 2)
        {
            return (mean, 0, m, null);
        }

        var squares = strengths.Sum(s => (s - mean) * (s - mean));
        var variation = Math.Sqrt(squares / (f.Length - 1)) / mean;
        var v = sheet.Step(
            "variation", "V", $"sqrt(({string.Join('+', f.Select(s => $"({s.Name}-m)^2"))})/{f.Length - 1})/m", variation, Dimension.Fraction, source, [.. f, m]);
        return (mean, variation, m, v);
    }
}

/// <summary>Factors for a 5 % fractile from few tests.</summary>
public static class Fractile
{
    /// <summary>k_n of EN 1990 table D1, coefficient of variation unknown, n 3 or more: the printed table where it has n, else t(0.95, n - 1) sqrt(1 + 1/n), from which the table was made.</summary>
    public static double Factor(int n) => MixValues.Fractile.Exactly(n) ?? StudentT(n - 1) * Math.Sqrt(1 + 1.0 / n);

    /// <summary>The 0.95 fractile of Student's t.</summary>
    /// <param name="freedom">Degrees of freedom, 1 or more.</param>
    public static double StudentT(int freedom)
    {
        var (low, high) = (0.0, 7.0);
        for (var i = 0; i < 80; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Below(middle, freedom) < 0.95 ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    /// <summary>Share of Student's t below a value, 0 or more (Abramowitz and Stegun 26.7.3 and 26.7.4: finite sums for whole degrees of freedom).</summary>
    private static double Below(double t, int freedom)
    {
        var theta = Math.Atan(t / Math.Sqrt(freedom));
        var (sin, cos) = Math.SinCos(theta);
        var odd = freedom % 2 == 1;
        var term = odd ? cos : 1.0;
        var sum = odd && freedom == 1 ? 0 : term;
        for (var i = odd ? 3 : 2; i <= freedom - 2; i += 2)
        {
            term *= cos * cos * (i - 1) / i;
            sum += term;
        }

        var within = odd ? 2 / Math.PI * (theta + sin * sum) : sin * sum;
        return (1 + within) / 2;
    }
}

/// <summary>What published rules make of the same strengths, side by side.</summary>
internal static class StrengthRules
{
    private const int FewestEn = 3;
    private const int FewestNz = 5;
    private const int FewestFive = 5;
    private const int Six = 6;

    public static Sequence<StrengthReading> Of(IReadOnlyList<double> strengths)
    {
        var ordered = strengths.Order().ToList();
        return
        [
            new("en-1990", Needs(strengths, FewestEn) ?? En1990(strengths), Sources.Get("en-1990-d")),
            new("nzs-4298", Needs(strengths, FewestNz) ?? Nzs(strengths), Sources.Get("nzs-4297-memory")),
            new("second-lowest", Needs(strengths, FewestFive) ?? One("second-lowest", ordered[1], Sources.Get("irc-au-memory")), Sources.Get("irc-au-memory")),
            new("ibc-mean", Needs(strengths, FewestFive) ?? One("ibc-mean", strengths.Average(), Sources.Get("ibc-2109")), Sources.Get("ibc-2109")),
            new("ibc-least", Needs(strengths, FewestFive) ?? One("ibc-least", ordered[0], Sources.Get("ibc-2109")), Sources.Get("ibc-2109")),
            new("e080", Needs(strengths, Six) ?? One("e080", ordered.TakeLast(4).Average(), Sources.Get("e080-best-four")), Sources.Get("e080-best-four")),
        ];
    }

    private static Known<Calculated<double>>? Needs(IReadOnlyList<double> strengths, int least) =>
        strengths.Count >= least ? (Known<Calculated<double>>?)null : (Known<Calculated<double>>)Message.Of("analysis.mix.needs-more", ("n", strengths.Count), ("least", least));

    private static Calculated<double> En1990(IReadOnlyList<double> strengths)
    {
        var sheet = new Worksheet("strength-en-1990");
        var (mean, variation, m, v) = Samples.Put(sheet, strengths);
        var k = Fractile.Factor(strengths.Count);
        var value = mean * (1 - k * variation);
        sheet.Step("characteristic-strength", "f_k", "m*(1-k_n*V)", value, Dimension.Stress, Sources.Get("en-1990-d"), m, Worksheet.Code("k_n", "fractile-factor", k, Dimension.Number, Sources.Get("en-1990-d")), v!);
        return new Calculated<double>(value, sheet.Done);
    }

    private static Calculated<double> Nzs(IReadOnlyList<double> strengths)
    {
        var sheet = new Worksheet("strength-nzs-4298");
        var (_, variation, _, v) = Samples.Put(sheet, strengths);
        var value = (1 - 1.5 * variation) * strengths.Min();
        sheet.Step("characteristic-strength", "f_k", "(1-1.5*V)*f_l", value, Dimension.Stress, Sources.Get("nzs-4297-memory"), v!, Worksheet.Computed("f_l", "least-strength", strengths.Min(), Dimension.Stress));
        return new Calculated<double>(value, sheet.Done);
    }

    private static Calculated<double> One(string key, double value, Source source)
    {
        var sheet = new Worksheet("strength-read");
        sheet.Step($"strength-{key}", "f", "1*f_o", value, Dimension.Stress, source, Worksheet.Computed("f_o", $"strength-{key}", value, Dimension.Stress));
        return new Calculated<double>(value, sheet.Done);
    }
}
