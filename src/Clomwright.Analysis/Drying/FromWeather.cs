using Clomwright.Analysis.Weather;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Numerics.Diffusion;

namespace Clomwright.Analysis.Drying;

/// <summary>How a placed wall dries in the weather of its site.</summary>
public static class FromWeather
{
    private const int DaysLooked = 1100;

    /// <summary>Middle, fast and slow.</summary>
    private const int Runs = 3;

    /// <summary>Three runs of the whole ring, from the first lift to plaster. Total: what is missing is said.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="weather">The site's mean days.</param>
    /// <param name="known">Numbers that tests of the mix or the roof give; what the house file says comes first.</param>
    /// <param name="watch">Who waits; null where nobody does.</param>
    /// <exception cref="OperationCanceledException">The one who waited gave up.</exception>
    public static Known<DryingResult> Of(HouseGeometry geometry, Known<WeatherResult> weather, Sequence<KnownNumber> known = default, Watch? watch = null)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        if (Missing(geometry, weather) is { } why)
        {
            return why;
        }

        var start = geometry.House.Crew!.Start;
        var inputs = Inputs.Of(geometry, known);
        var bays = Bays.Of(geometry);
        var laid = 0;
        void Step(bool isLift)
        {
            watch?.Cancelled.ThrowIfCancellationRequested();
            if (isLift)
            {
                watch?.Tell?.Invoke(++laid / (Runs * (inputs.Heights.Length + 1.0)));
            }
        }

        WallDrying Run(DryingCase way) => Simulate(inputs.Numbers(way).Together, geometry.House.Lifts.Method, inputs.Heights, inputs.Thickness, bays, weather.Value!, start, step: Step);
        var (middle, fast, slow) = (Run(DryingCase.Middle), Run(DryingCase.Fast), Run(DryingCase.Slow));
        return Told(geometry, weather.Value!, inputs, bays, start, middle, fast, slow);
    }

    /// <summary>What the cob stands on the day it is laid; or why that is not known.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="known">As for the forecast.</param>
    public static Known<FreshCob> Fresh(HouseGeometry geometry, Sequence<KnownNumber> known = default)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        if (!IsLaid(geometry))
        {
            return new Message("analysis.drying.no-wall");
        }

        var inputs = Inputs.Of(geometry, known);
        return FreshCobs.Of(inputs.Numbers, geometry.House.Lifts.Method, inputs.Heights);
    }

    /// <summary>Every weighed block, read; in the order of the house file.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="known">As for the forecast.</param>
    public static Sequence<BlockReading> Blocks(HouseGeometry geometry, Sequence<KnownNumber> known = default)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        return BlockReadings.Of(geometry.House.Mix, DryingNumbers.Of(geometry.House.Assumed, DryingCase.Middle, known));
    }

    /// <summary>What is asked when milestones of a house are; or why they cannot be known.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="known">As for the forecast.</param>
    /// <param name="goal">How far.</param>
    public static Known<MilestoneQuestion> Question(HouseGeometry geometry, Sequence<KnownNumber> known, DryingGoal goal)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        if (geometry.House.Crew?.Start is not { } start)
        {
            return new Message("analysis.drying.no-start");
        }

        if (!IsLaid(geometry))
        {
            return new Message("analysis.drying.no-wall");
        }

        var inputs = Inputs.Of(geometry, known);
        return new MilestoneQuestion(
            geometry.House.Lifts.Method, inputs.Heights.ToSequence(), inputs.Thickness.ToSequence(), start, geometry.House.Site,
            geometry.House.Assumed.Where(a => a.Key.StartsWith("drying-", StringComparison.Ordinal)).ToSequence(), inputs.Known, goal);
    }

    /// <summary>When lifts are laid, the roof may land and plaster may go on: the forecast of a few dates, without its bays.</summary>
    /// <param name="asked">From <see cref="Question"/>.</param>
    /// <param name="weather">The site's mean days.</param>
    public static Known<DryingMilestones> MilestonesOf(MilestoneQuestion asked, Known<WeatherResult> weather) =>
        weather.Value is { } mean ? Milestones.Of(asked, mean) : weather.NotChecked!;

    /// <summary>The same wall begun in each month of the year; when work starts is not asked.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="weather">The site's mean days.</param>
    /// <param name="known">As for the forecast.</param>
    public static Known<StartYear> ByMonth(HouseGeometry geometry, Known<WeatherResult> weather, Sequence<KnownNumber> known = default)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        if (weather.NotChecked is { } why)
        {
            return why;
        }

        if (!IsLaid(geometry))
        {
            return new Message("analysis.drying.no-wall");
        }

        var inputs = Inputs.Of(geometry, known);
        return StartMonths.Of(geometry, weather.Value!, inputs.Numbers, inputs.Heights, inputs.Thickness);
    }

    /// <summary>What every run of a house takes.</summary>
    private sealed record Inputs(HouseGeometry Geometry, Sequence<KnownNumber> Known, Sequence<BlockReading> Blocks, double[] Heights, double[] Thickness)
    {
        public DryingNumbers Numbers(DryingCase way) => DryingNumbers.Of(Geometry.House.Assumed, way, Known);

        /// <summary>What the author says comes first, then what blocks tell, then what the rest of the house does.</summary>
        public static Inputs Of(HouseGeometry geometry, Sequence<KnownNumber> known)
        {
            var said = geometry.House.Assumed;
            var usual = DryingNumbers.Of(said, DryingCase.Middle, known);
            var blocks = BlockReadings.Of(geometry.House.Mix, usual);
            var all = BlockReadings.Diffusivity(blocks, usual) is { } measured ? known.Where(k => k.Key != measured.Key).Append(measured) : known;
            return new(
                geometry, all.Where(k => !said.Any(a => a.Key == k.Key)).ToSequence(), blocks,
                [.. geometry.Lifts.Select(l => (l.Top - l.Bottom).Metres)], [.. geometry.Lifts.Select(l => geometry.Wall.ThicknessAt((l.Bottom.Metres + l.Top.Metres) / 2))]);
        }
    }

    /// <summary>Each bay made small enough for a thousand seasons, as likely as not; or why it is not known.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="weather">The site's mean days.</param>
    /// <param name="known">Numbers that tests of the mix or the roof give.</param>
    /// <param name="bays">Stretches of the wall; those of <see cref="DryingResult.Bays"/> where none are given.</param>
    public static Known<BayModels> Reduced(HouseGeometry geometry, Known<WeatherResult> weather, Sequence<KnownNumber> known = default, Sequence<DryingBay> bays = default)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        if (Missing(geometry, weather) is { } why)
        {
            return why;
        }

        var inputs = Inputs.Of(geometry, known);
        return new BayModels((bays.Count > 0 ? bays : Bays.Of(geometry)).Select(bay =>
            BayModel.Of(inputs.Numbers(DryingCase.Middle), geometry.House.Lifts.Method, inputs.Heights, inputs.Thickness, bay, weather.Value!, geometry.House.Crew!.Start.Month)).ToSequence());
    }

    private static Message? Missing(HouseGeometry geometry, Known<WeatherResult> weather) =>
        weather.NotChecked is { } why ? why
        : geometry.House.Crew?.Start is null ? new Message("analysis.drying.no-start")
        : !IsLaid(geometry) ? new Message("analysis.drying.no-wall")
        : null;

    /// <summary>One run of a ring.</summary>
    /// <param name="numbers">What is assumed.</param>
    /// <param name="method">How it is laid.</param>
    /// <param name="heights">Of the lifts, bottom up, m.</param>
    /// <param name="thickness">Of the wall at each lift, m.</param>
    /// <param name="bays">Which ways it faces.</param>
    /// <param name="weather">Mean days.</param>
    /// <param name="start">Day of the first lift.</param>
    /// <param name="most">Days looked at.</param>
    /// <param name="step">Called before each lift, true, and before each step of waiting, false.</param>
    /// <param name="goal">How far; short of plaster, nothing is told of how long tops key.</param>
    internal static WallDrying Simulate(
        DryingNumbers numbers, LiftMethod method, double[] heights, double[] thickness, Sequence<DryingBay> bays, WeatherResult weather, DateOnly start, int most = 1000, Action<bool>? step = null,
        DryingGoal? goal = null)
    {
        var earth = WallRun.EarthOf(numbers);
        int[] months = [.. Enumerable.Range(0, DaysLooked).Select(d => start.AddDays(d).Month - 1)];
        // A wall follows the air of a year, not of a month: its middle is months behind.
        var rest = earth.AtRest(Enumerable.Range(1, 12).Average(m => Mean(weather.Day(m))));
        DayPatterns[] Around(Faces faces) =>
            [.. bays.Select(bay => new DayPatterns([.. Enumerable.Range(1, 12).Select(m => faces.Day(weather.Day(m), bay.Normal))], months, earth.Full * earth.DryDensity))];
        return new WallRun(numbers, method, heights, thickness) { Most = most, Goal = goal ?? DryingGoal.Plaster, Joints = goal is null }.Run(Around(new(numbers, earth)), [.. Around(new(numbers, earth, roofed: true)).Select(d => d.Smoothed())], rest, step);
    }

    private static bool IsLaid(HouseGeometry geometry) => geometry.Lifts.Count > 0 && geometry.Lifts.All(l => IsLaid(geometry, l));

    private static bool IsLaid(HouseGeometry geometry, LiftSlice lift) =>
        lift.Top > lift.Bottom && geometry.Wall.ThicknessAt(lift.Top.Metres) is > 0.02 and < 3 && geometry.Wall.ThicknessAt(lift.Bottom.Metres) is > 0.02 and < 3;

    private static double Mean(ReadOnlySpan<WeatherHour> day)
    {
        var sum = 0.0;
        foreach (var hour in day)
        {
            sum += hour.Humidity;
        }

        return sum / day.Length;
    }

    private static DryingResult Told(
        HouseGeometry geometry, WeatherResult weather, Inputs inputs, Sequence<DryingBay> bays, DateOnly start, WallDrying middle, WallDrying fast, WallDrying slow)
    {
        var usual = inputs.Numbers(DryingCase.Middle);
        var settling = new Settling(geometry, inputs.Numbers);
        var lifts = geometry.Lifts.Select(l => BandOf(l, fast, slow, settling, FrostAt(weather, start, middle, l.Index, usual))).ToSequence();
        var fresh = FreshCobs.Of(inputs.Numbers, geometry.House.Lifts.Method, inputs.Heights);
        var height = fresh.Today;
        var gaps = settling.Gaps(fast, slow);
        return new()
        {
            Method = geometry.House.Lifts.Method, Start = start, Bays = bays, Middle = middle, Fast = fast, Slow = slow, Lifts = lifts, HeightToday = height,
            RoofAfter = new(fast.RoofDay, slow.RoofDay), PlasterAfter = new(fast.PlasterDay, slow.PlasterDay),
            Gaps = gaps, Calculations = [.. fresh.Calculations, .. settling.Calculations],
            PracticeCap = fresh.PracticeCap,
            Joints = Joints(bays, geometry, fast, middle, slow),
            Blocks = inputs.Blocks, Known = inputs.Known,
            Diffusivity = new(inputs.Numbers(DryingCase.Fast)["drying-diffusivity"], usual["drying-diffusivity"], inputs.Numbers(DryingCase.Slow)["drying-diffusivity"]),
            Assumptions = [.. weather.Assumptions, .. usual.Assumptions.Where(a => IsUsed(a.Key, geometry.House.Lifts.Method, inputs.Blocks.Count > 0))],
            LiftWarnings = Warnings(geometry, middle, lifts, height, usual),
        };
    }

    /// <summary>Whether the forecast of a house read it: nothing of covers, of other methods, or of blocks where none is weighed.</summary>
    private static bool IsUsed(string key, LiftMethod method, bool blocks) =>
        !key.StartsWith("drying-cover-", StringComparison.Ordinal) && (blocks || !key.StartsWith("drying-block-", StringComparison.Ordinal))
        && (key != "drying-forms" || method == LiftMethod.Formed)
        && Enum.GetValues<LiftMethod>().All(other => other == method || !key.EndsWith("-" + WallRun.Word(other), StringComparison.Ordinal));

    /// <summary>Tops that no longer key when the next lift comes, in any of the cases.</summary>
    private static Sequence<DriedJoint> Joints(Sequence<DryingBay> bays, HouseGeometry geometry, WallDrying fast, WallDrying middle, WallDrying slow) =>
        geometry.Lifts.SkipLast(1).SelectMany(lift => bays.Select((bay, b) =>
        {
            bool Dries(WallDrying wall) => At(wall, lift.Index) is { } laid && laid.Bays[b].JointDried;
            return new DriedJoint(lift.Number, lift.Top.Metres, bay, Dries(fast), Dries(middle), Dries(slow));
        })).Where(j => j.Fast || j.Middle || j.Slow).ToSequence();

    private static LiftBand BandOf(LiftSlice lift, WallDrying fast, WallDrying slow, Settling settling, bool frost)
    {
        var (quick, late) = (At(fast, lift.Index), At(slow, lift.Index));
        return new(
            lift.Number, new(quick?.Latest, late?.Latest),
            new(quick?.Bays.Min(b => b.KeysUntil), late is null || late.Bays.Any(b => b.KeysUntil is null) ? null : late.Bays.Max(b => b.KeysUntil)),
            settling.Of(lift), frost);
    }

    private static LiftDrying? At(WallDrying wall, int lift) => lift < wall.Lifts.Count ? wall.Lifts[lift] : null;

    private static bool FrostAt(WeatherResult weather, DateOnly start, WallDrying wall, int lift, DryingNumbers numbers) =>
        At(wall, lift) is { } laid && Enumerable.Range(0, (int)numbers["drying-frost-days"]).Any(d => weather.Climate.Months[start.AddDays((int)laid.LaidDay + d).Month - 1].Low < 0);

    private static Sequence<LiftWarning> Warnings(HouseGeometry geometry, WallDrying wall, Sequence<LiftBand> lifts, Band height, DryingNumbers numbers)
    {
        var warnings = new List<LiftWarning>();
        var index = numbers["drying-liquidity-" + WallRun.Word(geometry.House.Lifts.Method)];
        if (index is < 0 or > 1)
        {
            warnings.Add(new(0, Message.Of("analysis.drying.mix-consistency", ("index", Amount.Number(index)))));
        }

        foreach (var lift in geometry.Lifts)
        {
            if ((lift.Top - lift.Bottom).Metres > height.Low)
            {
                warnings.Add(new(lift.Number, Message.Of("analysis.drying.lift-high", ("lift", lift.Number), ("height", lift.Top - lift.Bottom), ("low", Amount.Metres(height.Low!.Value)))));
            }

            if (At(wall, lift.Index) is { } laid)
            {
                if (laid.Bays.Min(b => b.SafetyWhenLaid) < numbers["drying-bulge"])
                {
                    warnings.Add(new(lift.Number, Message.Of("analysis.drying.bulge", ("lift", lift.Number))));
                }

                if (laid.Bays.Count(b => b.JointDried) is > 0 and var dried)
                {
                    warnings.Add(new(lift.Number, Message.Of("analysis.drying.joint-dries", ("lift", lift.Number), ("bays", dried), ("of", laid.Bays.Count))));
                }
            }

            if (lifts[lift.Index].FrostFrom)
            {
                warnings.Add(new(lift.Number, Message.Of("analysis.drying.frost", ("lift", lift.Number))));
            }
        }

        return warnings.ToSequence();
    }
}
