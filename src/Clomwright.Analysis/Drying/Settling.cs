using Clomwright.Analysis.Steps;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Drying;

/// <summary>How far bands of the wall come down, and what gap that asks over frames.</summary>
internal sealed class Settling(HouseGeometry geometry, Func<DryingCase, DryingNumbers> numbers)
{
    private const double Gravity = 9.80665;
    private const double Grains = 2.65;
    private readonly List<Calculation> calculations = [];

    /// <summary>How each gap that was asked for came about, the slow way.</summary>
    public Sequence<Calculation> Calculations => calculations.ToSequence();

    /// <summary>What a lift comes down from laid to dry, its own weight and shrinkage, m.</summary>
    public Band Of(LiftSlice lift)
    {
        double In(DryingCase way)
        {
            var height = (lift.Top - lift.Bottom).Metres;
            var n = numbers(way);
            var water = WallRun.LaidWater(n, geometry.House.Lifts.Method);
            return height * (Linear(n, water) + Creep(n, water, height));
        }

        var (a, b) = (In(DryingCase.Fast), In(DryingCase.Slow));
        return new(Math.Min(a, b), Math.Max(a, b));
    }

    /// <summary>For every framed opening: what the lifts beside it still shrink after its header is set, and the margin.</summary>
    public Sequence<FrameGap> Gaps(WallDrying fast, WallDrying slow) => geometry.Openings.Where(o => o.Opening.Frame is not null && o.Header is not null)
        .Select(o => new FrameGap(o.Opening.Name, Ordered(Gap(o, fast, DryingCase.Fast), Gap(o, slow, DryingCase.Slow)), new(Bridged(o, fast), Bridged(o, slow)))).ToSequence();

    private static Band Ordered(double? a, double? b) => a is { } x && b is { } y ? new(Math.Min(x, y), Math.Max(x, y)) : new(a, b);

    /// <summary>The header rests on the lift whose top is nearest its underside; it may be set when that lift is firm.</summary>
    private double? Bridged(OpeningPlace opening, WallDrying wall)
    {
        var under = Under(opening);
        return under < wall.Lifts.Count && wall.Lifts[under].NextDay is { } day ? day : null;
    }

    private int Under(OpeningPlace opening) =>
        Math.Max(0, geometry.Lifts.TakeWhile(l => l.Top.Metres <= opening.Head + 0.5 * (l.Top - l.Bottom).Metres).Count() - 1);

    private double? Gap(OpeningPlace opening, WallDrying wall, DryingCase way)
    {
        var sheet = new Worksheet("frame-gap");
        if (Bridged(opening, wall) is not { } day)
        {
            return null;
        }

        var n = numbers(way);
        var sum = n["drying-gap-margin"];
        var parts = new List<Symbol> { n.Symbol("m", "drying-gap-margin") };
        foreach (var lift in geometry.Lifts)
        {
            var beside = Math.Max(0, Math.Min(lift.Top.Metres, opening.Head) - Math.Max(lift.Bottom.Metres, opening.Sill));
            if (beside > 0 && lift.Index < wall.Lifts.Count)
            {
                var laid = wall.Lifts[lift.Index];
                var age = Math.Max(0, (int)(day - laid.LaidDay));
                var water = laid.Bays.Max(b => b.Water.Count == 0 ? laid.LaidWater : b.Water[Math.Min(age, b.Water.Count - 1)]);
                var down = beside * Linear(n, water);
                sum += down;
                var i = lift.Number;
                parts.Add(sheet.Step(
                    "lift-shrinks", $"d_{i}", $"b_{i}*(1-(1-c*max(0,w_{i}-w_s)*G/(1+w_{i}*G))^(1/3))", down, Dimension.Length, Sources.Get("soil-phases"),
                    Worksheet.Computed($"b_{i}", "beside", beside, Dimension.Length), n.Symbol("c", "drying-shrink-share"), Worksheet.Computed($"w_{i}", "water-then", water, Dimension.Fraction),
                    n.Symbol("w_s", "drying-shrink-limit"), new Symbol("G", new Message("analysis.symbol.earth-grains"), Amount.Number(Grains), Tag.Assumed, Sources.Get("soil-memory"))));
            }
        }

        sheet.Step("frame-gap", "g", string.Join('+', parts.Select(p => p.Name)), sum, Dimension.Length, Sources.Get("drying-judgement"), [.. parts]);
        if (way == DryingCase.Slow)
        {
            calculations.Add(sheet.Done with { Place = opening.Opening.Name });
        }

        return sum;
    }

    private static double Linear(DryingNumbers n, double water) => new Shrinkage(Grains, n["drying-shrink-limit"], n["drying-shrink-share"]).Linear(water);

    private static double Creep(DryingNumbers n, double water, double height)
    {
        var earth = WallRun.EarthOf(n);
        return Shrinkage.Creep(earth.WetDensity(water) * Gravity * height, WallRun.StrengthOf(n, earth).Compressive(water) / 2, n["drying-stiffness"]);
    }
}
