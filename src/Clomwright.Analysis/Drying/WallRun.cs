using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Drying;

/// <summary>The ring in one case: a lift is laid all round when the last bay is firm.</summary>
internal sealed class WallRun
{
    private const int LookAhead = 150;
    private const int Week = 7;
    private const double Quarter = BayRun.Day / 4;
    private readonly DryingNumbers numbers;
    private readonly Earth earth;
    private const double Hair = 1e-9;
    private readonly double[] heights, thickness, laidAt;
    private readonly double laidWater, safety, skin, cap;
    private readonly bool formed;

    public WallRun(DryingNumbers numbers, LiftMethod method, double[] heights, double[] thickness)
    {
        (this.numbers, this.heights, this.thickness) = (numbers, heights, thickness);
        laidAt = new double[heights.Length];
        earth = EarthOf(numbers);
        Strength = StrengthOf(numbers, earth);
        laidWater = LaidWater(numbers, method);
        safety = numbers["drying-safety-" + Word(method)];
        skin = numbers["drying-skin"];
        cap = numbers["drying-cap-" + Word(method)];
        formed = method == LiftMethod.Formed;
    }

    public Strength Strength { get; }

    /// <summary>Days looked at, from the first lift.</summary>
    public int Most { get; init; } = 1000;

    /// <summary>Whether it matters how long tops key.</summary>
    public bool Joints { get; init; } = true;

    /// <summary>How far the story is told.</summary>
    public DryingGoal Goal { get; init; } = DryingGoal.Plaster;

    public static string Word(LiftMethod method) => method switch { LiftMethod.Forked => "forked", LiftMethod.Formed => "formed", _ => "tossed" };

    public static Earth EarthOf(DryingNumbers numbers) => new()
    {
        DryDensity = numbers["drying-dry-density"], DiffusivityFull = numbers["drying-diffusivity"], DiffusivityFall = numbers["drying-fall"], VapourResistance = numbers["drying-vapour-resistance"],
    };

    public static Strength StrengthOf(DryingNumbers numbers, Earth earth) =>
        new(numbers["drying-liquid-limit"], numbers["drying-plastic-limit"], numbers["drying-dry-strength"], earth.AtRest(0.65));

    /// <summary>Water content at which a method lays its cob.</summary>
    public static double LaidWater(DryingNumbers numbers, LiftMethod method) =>
        numbers["drying-plastic-limit"] + numbers["drying-liquidity-" + Word(method)] * (numbers["drying-liquid-limit"] - numbers["drying-plastic-limit"]);

    /// <summary>The whole story, from the first lift to plaster.</summary>
    /// <param name="days">What surrounds each bay until the roof lands.</param>
    /// <param name="roofed">What surrounds each bay from then on.</param>
    /// <param name="restWater">Water content at rest with the air of a day.</param>
    /// <param name="step">Called before each lift, true, and before each step of waiting, false.</param>
    public WallDrying Run(IReadOnlyList<DayPatterns> days, IReadOnlyList<DayPatterns> roofed, double restWater, Action<bool>? step = null)
    {
        var medium = earth.Medium();
        BayRun New() => new(medium, earth, Strength, heights, thickness, numbers["drying-skin-depth"], numbers["drying-foot"]);
        BayRun[] bays = [.. days.Select(_ => New())];
        var scout = New();
        var water = bays.Select(_ => heights.Select(_ => new List<double>()).ToArray()).ToArray();
        var windows = new List<(double Laid, double[] Safety, double?[] Firm, double?[] Keys, double? Next)>();
        var time = 0.0;
        for (var lift = 0; lift < heights.Length; lift++)
        {
            step?.Invoke(true);
            var (laidSafety, firm, keys) = (new double[bays.Length], new double?[bays.Length], new double?[bays.Length]);
            for (var b = 0; b < bays.Length; b++)
            {
                bays[b].Lay(laidWater);
                bays[b].Shelter(lift, formed ? numbers["drying-forms"] : 1);

                laidSafety[b] = bays[b].Safety();
                scout.Take(bays[b]);
                (firm[b], keys[b]) = Look(scout, time, lift, days[b]);
            }

            var last = lift == heights.Length - 1;
            laidAt[lift] = time / BayRun.Day;
            var pace = Pace(lift);
            firm = [.. firm.Select(f => f is { } days ? Math.Max(days, pace) : f)];
            double? next = firm.Any(f => f is null) ? null : firm.Max();
            windows.Add((time / BayRun.Day, laidSafety, firm, keys, next is { } n ? time / BayRun.Day + n : null));
            if (next is null)
            {
                return Done(windows, bays, water, null, null, restWater);
            }

            var to = time + next.Value * BayRun.Day;
            Go(bays, days, time, to, water);
            time = to;
            if (formed)
            {
                foreach (var bay in bays)
                {
                    bay.Shelter(lift, 1);
                }
            }
        }

        step?.Invoke(true);
        return Goal == DryingGoal.Walls ? Done(windows, bays, water, null, null, restWater) : Finish(bays, days, roofed, time, restWater, windows, water, step);
    }

    /// <summary>Days until the topmost lift may take the next, and until its top no longer keys, if nothing is laid on it. Looked at every six hours, straight between.</summary>
    private (double? Firm, double? Keys) Look(BayRun bay, double start, int lift, DayPatterns days)
    {
        var plastic = numbers["drying-plastic-limit"];
        var next = lift + 1 < heights.Length ? heights[lift + 1] : 0;
        var (ready, damp) = (bay.Ready(next, laidWater, safety, skin), bay.CrustWater);
        (double? Firm, double? Keys) seen = (ready >= 1 ? 0 : null, damp < plastic ? 0 : null);
        for (var quarter = 1; quarter <= 4 * LookAhead && (seen.Firm is null || (seen.Keys is null && Joints)); quarter++)
        {
            bay.Advance(start + (quarter - 1) * Quarter, start + quarter * Quarter, days);
            var (readyNow, dampNow) = (bay.Ready(next, laidWater, safety, skin), bay.CrustWater);
            seen.Firm ??= readyNow >= 1 ? (quarter - 1 + (1 - ready) / (readyNow - ready)) / 4 : null;
            seen.Keys ??= dampNow < plastic ? (quarter - 1 + (damp - plastic) / (damp - dampNow)) / 4 : null;
            (ready, damp) = (readyNow, dampNow);
            if (seen.Firm is { } firm && quarter >= 4 * Math.Max(30, 2 * firm))
            {
                break;
            }
        }

        return seen;
    }

    /// <summary>Days that hands wait, however firm the cob: no more than the practice cap is laid in one day.</summary>
    private double Pace(int lift)
    {
        if (lift + 1 >= heights.Length)
        {
            return 0;
        }

        // The lifts below that were laid within a day count with the next.
        var (sum, from) = (heights[lift + 1], lift);
        while (from >= 0 && sum + heights[from] <= cap + Hair)
        {
            sum += heights[from--];
        }

        return from < 0 ? 0 : Math.Max(0, laidAt[from] + 1 - laidAt[lift]);
    }

    private static void Go(BayRun[] bays, IReadOnlyList<DayPatterns> days, double from, double to, List<double>[][] water)
    {
        for (var b = 0; b < bays.Length; b++)
        {
            var time = from;
            while (time < to)
            {
                var evening = (Math.Floor(time / BayRun.Day + 1e-9) + 1) * BayRun.Day;
                var until = Math.Min(evening, to);
                bays[b].Advance(time, until, days[b]);
                time = until;
                if (time == evening)
                {
                    for (var l = 0; l < bays[b].Lifts; l++)
                    {
                        water[b][l].Add(bays[b].Water(l));
                    }
                }
            }
        }
    }

    private WallDrying Finish(
        BayRun[] bays, IReadOnlyList<DayPatterns> days, IReadOnlyList<DayPatterns> roofed, double time, double restWater, List<(double, double[], double?[], double?[], double?)> windows, List<double>[][] water,
        Action<bool>? step)
    {
        double? roof = null, plaster = null;
        var beyond = new OutOfReach(Most);
        var (load, roofSafety, above) = (numbers["drying-roof-load"], numbers["drying-roof-safety"], numbers["drying-plaster"]);
        for (var day = (int)(time / BayRun.Day); day < Most; day = (int)Math.Round(time / BayRun.Day))
        {
            step?.Invoke(false);
            roof ??= bays.All(b => b.Safety(lineLoad: load) >= roofSafety) ? time / BayRun.Day : null;
            var rest = restWater + above;
            plaster ??= bays.All(b => Enumerable.Range(0, b.Lifts).All(l => b.Water(l) <= rest)) ? time / BayRun.Day : null;
            if (roof is not null && (plaster is not null || Goal == DryingGoal.Roof || beyond.Is(time / BayRun.Day, bays.Max(b => Enumerable.Range(0, b.Lifts).Max(b.Water)) - rest)))
            {
                break;
            }

            // Under a roof it goes on slowly: a week at a time, and no picture needs its days.
            var to = (day + (roof is null ? 1 : Week)) * BayRun.Day;
            if (roof is null)
            {
                Go(bays, days, time, to, water);
            }
            else
            {
                for (var b = 0; b < bays.Length; b++)
                {
                    bays[b].Advance(time, to, roofed[b]);
                }
            }

            time = to;
        }

        return Done(windows, bays, water, roof, plaster, restWater);
    }

    private WallDrying Done(
        List<(double Laid, double[] Safety, double?[] Firm, double?[] Keys, double? Next)> windows, BayRun[] bays, List<double>[][] water, double? roof, double? plaster,
        double restWater) =>
        new(windows.Select((w, lift) => new LiftDrying(
            lift + 1, w.Laid, laidWater,
            Enumerable.Range(0, bays.Length).Select(b => new BayLift(
                w.Firm[b], w.Keys[b], w.Safety[b], w.Keys[b] is { } k && w.Next is { } n && lift + 1 < heights.Length && n - w.Laid > k, water[b][lift].ToSequence())
                {
                    DryAfter = DryAfter(water[b][lift], w.Laid, restWater),
                }).ToSequence(),
            w.Next)).ToSequence(), roof, plaster);

    /// <summary>Days until the mean is as near to rest as plaster asks; null while it was not in the days kept. Water is of evenings.</summary>
    private double? DryAfter(List<double> water, double laid, double restWater)
    {
        var first = (int)Math.Floor(laid + 1e-9) + 1;
        var at = Enumerable.Range(0, water.Count).Where(i => water[i] <= restWater + numbers["drying-plaster"]).Select(i => (int?)i).FirstOrDefault();
        return at is { } i ? first + i - laid : null;
    }
}
