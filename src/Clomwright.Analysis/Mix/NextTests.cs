using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Mix;

/// <summary>Chooses the next test: halving the share of sand between a mix that shrinks too much and one that does not.</summary>
/// <remarks>
/// Sand takes shrinkage away and, past what the clay can bind, strength too. So the least sand that shrinks no more than builds well is looked for between the sandiest mix
/// that shrinks more and the leanest that does not, until they are half a bucket apart; where that mix is weak, the search turns back towards less sand.
/// </remarks>
internal static class NextTests
{
    private const double Buckets = 6;
    private const int Enough = 5;

    /// <summary>One mix tried: its share of sand, its bars, its specimens.</summary>
    internal sealed record Point(double Sand, double Shrinkage, bool Cracked, double? Strength);

    public static NextTest Of(Building.Mix mix, TestRegister register, BatchParts? blend, bool jar)
    {
        var buckets = mix.Batch?.Buckets is > 0 and var n ? n : Buckets;
        var points = Points(mix, register);
        if (points.Count == 0)
        {
            return jar || mix.TestBars.Count > 0
                ? Try("first-bars", blend?.SandShare ?? 0.5, buckets, new Message("analysis.next.because-first"))
                : new NextTest("jar", null, null, null, new Message("analysis.next.jar"), new Message("analysis.next.because-jar"));
        }

        var found = Search(points, buckets);
        return found ?? Specimens(register);
    }

    /// <summary>The next share of sand; null when the search is done.</summary>
    internal static NextTest? Search(IReadOnlyList<Point> points, double buckets)
    {
        var aim = MixValues.BarLimits.First(l => l.Key == "practice").Share.Value;
        var most = MixValues.Of("sand-most").Value;
        bool Shrinks(Point p) => p.Cracked || p.Shrinkage > aim * (1 + 1e-9);
        var shrinking = points.Where(Shrinks).ToList();
        var sound = points.Where(p => !Shrinks(p)).ToList();
        var low = shrinking.Count == 0 ? (Point?)null : shrinking.MaxBy(p => p.Sand);
        if (sound.Count == 0)
        {
            return low!.Sand >= most - 0.5 / buckets
                ? new NextTest("other-soil", null, null, null, new Message("analysis.next.other-soil"), Message.Of("analysis.next.because-other-soil", ("shrinkage", Amount.Fraction(low.Shrinkage)), ("sand", Amount.Fraction(low.Sand))))
                : Try("more-sand", (low.Sand + most) / 2, buckets, Message.Of(low.Cracked ? "analysis.next.because-cracked" : "analysis.next.because-shrinks", ("shrinkage", Amount.Fraction(low.Shrinkage)), ("aim", Amount.Fraction(aim))));
        }

        var high = sound.MinBy(p => p.Sand)!;
        var floor = low is { } l && l.Sand < high.Sand ? l.Sand : 0;
        var apart = (high.Sand - floor) * buckets;
        if (high.Strength is { } weak && weak < MixValues.Of("aim-strength").Value && apart > 0.5)
        {
            return Try("less-sand", (floor + high.Sand) / 2, buckets, Message.Of("analysis.next.because-weak", ("strength", new Amount(weak, Dimension.Stress)), ("aim", new Amount(MixValues.Of("aim-strength").Value, Dimension.Stress))));
        }

        return floor > 0 && apart > 0.5 + 1e-9
            ? Try("between", (floor + high.Sand) / 2, buckets, Message.Of("analysis.next.because-between", ("low", Amount.Fraction(floor)), ("high", Amount.Fraction(high.Sand)), ("aim", Amount.Fraction(aim))))
            : null;
    }

    private static NextTest Specimens(TestRegister register)
    {
        var counted = register.Specimens.Count(s => s.Counts);
        return counted < Enough
            ? new NextTest("prisms", null, null, null, Message.Of("analysis.next.prisms", ("n", Enough - counted)), Message.Of("analysis.next.because-prisms", ("n", counted)))
            : register.Specimens.All(s => !s.FromWall)
                ? new NextTest("wall-prisms", null, null, null, new Message("analysis.next.wall-prisms"), new Message("analysis.next.because-wall-prisms"))
                : new NextTest("done", null, null, null, new Message("analysis.next.done"), new Message("analysis.next.because-done"));
    }

    /// <summary>Every mix with bars whose parts are known.</summary>
    private static List<Point> Points(Building.Mix mix, TestRegister register)
    {
        var recipes = mix.Trials.GroupBy(t => t.Name).ToDictionary(g => g.Key, g => g.First().Recipe);
        List<Point> points = [];
        foreach (var bars in register.Bars.GroupBy(b => b.Trial))
        {
            var recipe = bars.Key is null ? mix.Recipe : recipes.GetValueOrDefault(bars.Key);
            if (recipe is null || Parts.Sand(recipe) is not { } sand)
            {
                continue;
            }

            var crushed = register.Specimens.Where(s => s.Trial == bars.Key && !s.Oven).Select(s => s.AsPrism).ToList();
            points.Add(new Point(sand, bars.Average(b => b.Shrinkage), bars.Any(b => b.Cracked), crushed.Count > 0 ? crushed.Average() : null));
        }

        return points;
    }

    private static NextTest Try(string key, double sand, double buckets, Message because)
    {
        var sandBuckets = Math.Round(sand * buckets * 2) / 2;
        return new NextTest(
            key, sandBuckets / buckets, buckets - sandBuckets, sandBuckets,
            Message.Of("analysis.next.try", ("soil", Amount.Number(buckets - sandBuckets)), ("sand", Amount.Number(sandBuckets))), because);
    }
}

/// <summary>Mixes compared by their parts.</summary>
internal static class Parts
{
    private const double SharesAgree = 0.02;
    private const double StrawAgrees = 0.10;

    /// <summary>Share of sand among the dry buckets; null where the recipe does not say.</summary>
    public static double? Sand(Recipe recipe) => Dry(recipe) is { } all ? (recipe.Sand ?? 0) / all : null;

    /// <summary>Whether two recipes are one mix: shares of dry buckets to 2 in 100, straw for each bucket to a tenth.</summary>
    public static bool Same(Recipe a, Recipe b) =>
        Dry(a) is { } whole && Dry(b) is { } other
        && Near((a.Soil ?? 0) / whole, (b.Soil ?? 0) / other) && Near((a.Sand ?? 0) / whole, (b.Sand ?? 0) / other) && Near((a.Clay ?? 0) / whole, (b.Clay ?? 0) / other)
        && SameStraw((a.Straw?.Kilograms ?? 0) / whole, (b.Straw?.Kilograms ?? 0) / other);

    private static bool SameStraw(double a, double b) => Math.Abs(a - b) <= StrawAgrees * Math.Max(a, b) + 1e-12;

    private static bool Near(double a, double b) => Math.Abs(a - b) <= SharesAgree + 1e-12;

    private static double? Dry(Recipe recipe) => recipe.Soil is null && recipe.Sand is null && recipe.Clay is null ? null
        : (recipe.Soil ?? 0) + (recipe.Sand ?? 0) + (recipe.Clay ?? 0) is > 0 and var all ? all : null;
}
