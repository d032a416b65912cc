using Clomwright.Analysis;
using Clomwright.Analysis.Mix;
using Clomwright.Analysis.Structure;
using Clomwright.Analysis.WallByHand;
using Clomwright.Analysis.WallTrials;
using Clomwright.Evidence;
using Clomwright.Rules;

namespace Clomwright.Study.Demands;

/// <summary>What the trials of the wall's model ask: green, young under its roof, soaked, settled, pushed outward.</summary>
/// <remarks>A peak that crushes the green cob falls short. The safety of a method and of a young wall is meant for the mean pressure on a plain column: a peak that leaves less of it goes to a person.</remarks>
internal static class OfWallTrials
{
    private static readonly string[] Rules = ["wall-green", "wall-roof-day", "wall-wet-foot", "wall-settlement", "wall-thrust"];

    public static Sequence<CheckedDemand> Demands(Known<WallTrialsResult> known, Known<StructureResult> structure, WallByHandResult? hand, MixResult mix)
    {
        if (known.Value is not { } trials || structure.Value is not { } wall)
        {
            return Rules.Select(rule => CheckedDemand.Unknown(rule, "wall", known.NotChecked ?? structure.NotChecked!)).ToSequence();
        }

        return
        [
            .. trials.Lifts.Select(l => Green(trials, l)),
            trials.Roof.Value is { } young ? Young(young, wall) : CheckedDemand.Unknown("wall-roof-day", "wall", trials.Roof.NotChecked!),
            trials.Wet.Value is { } wet ? Wet(wet, hand, wall) : CheckedDemand.Unknown("wall-wet-foot", "wall", trials.Wet.NotChecked!),
            trials.Settled.Value is { } settled ? Settled(settled, wall) : CheckedDemand.Unknown("wall-settlement", "wall", trials.Settled.NotChecked!),
            trials.Pushed.Value is { } pushed ? Pushed(pushed, wall, mix) : CheckedDemand.Unknown("wall-thrust", "wall", trials.Pushed.NotChecked!),
        ];
    }

    private static CheckedDemand Green(WallTrialsResult trials, RisingLift lift) =>
        CheckedDemand.Held("wall-green", $"lift {lift.Number}", Pressure(lift.Safety * lift.Worst.Pressure), Pressure(lift.Worst.Strength)) with
        {
            Question = trials.Dryness.Forecast && lift.Worst.Margin < 1 ? null
                : Message.Of("study.ask.wall-green", ("lift", lift.Number), ("margin", Amount.Number(Math.Round(lift.Worst.Margin, 2))), ("strength", Pressure(lift.Safety * lift.Worst.Pressure)), ("height", Amount.Metres(lift.Worst.Height))),
            Notes =
            [
                new Message(trials.Dryness.Forecast ? "study.demand.green-forecast" : "study.demand.green-stated"),
                Message.Of("study.demand.green-place", ("station", Amount.Metres(lift.Worst.Station)), ("height", Amount.Metres(lift.Worst.Height)), ("safety", Amount.Number(lift.Safety)), ("base", Pressure(lift.Base.Pressure))),
            ],
        };

    private static CheckedDemand Young(YoungWall young, StructureResult wall) =>
        CheckedDemand.Held("wall-roof-day", "wall", Pressure(young.Safety * young.Worst.Pressure), Pressure(young.Worst.Strength)) with
        {
            Missing = wall.Missing,
            Question = young.Worst.Margin < 1 ? null : Message.Of(
                "study.ask.wall-roof-day", ("day", new Amount(Math.Round(young.Day), Dimension.Days)), ("margin", Amount.Number(Math.Round(young.Worst.Margin, 2))), ("safety", Amount.Number(young.Safety)), ("height", Amount.Metres(young.Worst.Height))),
            Notes =
            [
                Message.Of(
                    young.Planned ? "study.demand.roof-day-planned" : "study.demand.roof-day-forecast", ("day", new Amount(Math.Round(young.Day), Dimension.Days)), ("stage", WallWords.Case(young.Case)),
                    ("station", Amount.Metres(young.Worst.Station)), ("height", Amount.Metres(young.Worst.Height)), ("safety", Amount.Number(young.Safety)), ("weakest", Amount.Fraction(Math.Round(young.Weakest, 2)))),
            ],
        };

    private static CheckedDemand Wet(SoakedWall wet, WallByHandResult? hand, StructureResult wall)
    {
        var demand = wet.Safety * wet.AtPlastic.Pressure;
        Argument Content(double? water) => water is { } w ? Amount.Fraction(Math.Round(w, 3)) : new Message("study.demand.wet-none");
        var byHand = hand?.Wet.Piers.Max(p => p.Pressure);
        return CheckedDemand.Held("wall-wet-foot", "wall", Pressure(demand), Pressure(wet.AtPlastic.Strength)) with
        {
            Missing = wall.Missing,
            Question = Message.Of("study.ask.wall-wet-foot", ("height", Amount.Metres(wet.Height)), ("safe", Content(wet.WaterAt(wet.Safety))), ("gone", Content(wet.WaterAt(1)))),
            Notes =
            [
                Message.Of("study.demand.wet-round", ("safe", Content(wet.WaterAt(wet.Safety))), ("gone", Content(wet.WaterAt(1)))),
                Message.Of("study.demand.wet-part", ("part", wet.PartAddress), ("safe", Content(wet.PartWaterAt(wet.Safety))), ("gone", Content(wet.PartWaterAt(1)))),
                .. byHand is { } pressure ? [Message.Of("study.demand.wet-hand", ("model", Pressure(wet.AtPlastic.Pressure)), ("hand", Pressure(pressure)))] : (Message[])[],
            ],
        };
    }

    /// <summary>Nobody knows how the ground will give: more than the cob is allowed goes to a person.</summary>
    private static CheckedDemand Settled(SettledWall settled, StructureResult wall) =>
        CheckedDemand.Held("wall-settlement", "wall", settled.Standing ? Pressure(settled.Edge) : Pressure(double.MaxValue), Pressure(wall.Allowed.Value)) with
        {
            Missing = wall.Missing,
            Question = Message.Of("study.ask.wall-settlement", ("depth", Amount.Metres(settled.Depth)), ("arc", Amount.Metres(settled.Arc)), ("edge", Pressure(settled.Edge)), ("tension", Pressure(settled.Tension))),
            Notes =
            [
                Message.Of(
                    "study.demand.settled", ("depth", Amount.Metres(settled.Depth)), ("arc", Amount.Metres(settled.Arc)), ("station", Amount.Metres(settled.Station)), ("before", Pressure(settled.EdgeBefore)),
                    ("tension", Pressure(settled.Tension)), ("lifted", Amount.Fraction(settled.Lifted))),
            ],
        };

    /// <summary>Pins hold crossings and a ring holds rafters: what the bare wall would feel goes to a person.</summary>
    private static CheckedDemand Pushed(PushedWall pushed, StructureResult wall, MixResult mix)
    {
        var force = new Amount(pushed.Outward, Dimension.Force);
        return CheckedDemand.Held("wall-thrust", "wall", pushed.Standing ? Pressure(pushed.Edge) : Pressure(double.MaxValue), Pressure(wall.Allowed.Value)) with
        {
            Missing = wall.Missing,
            Question = Message.Of(pushed.Slipping ? "study.ask.wall-slip" : "study.ask.wall-thrust", ("force", force), ("edge", Pressure(pushed.Edge))),
            Notes =
            [
                Message.Of(
                    pushed.Slipping ? "study.demand.pushed-slip" : "study.demand.pushed", ("force", force), ("before", Pressure(pushed.EdgeBefore)), ("tension", Pressure(pushed.Tension)), ("lifted", Amount.Fraction(pushed.Lifted))),
                Message.Of("study.demand.pushed-hand", ("turns", new Amount(pushed.Turns, Dimension.Moment)), ("holds", new Amount(pushed.Hand.Value, Dimension.Moment))),
            ],
        };
    }

    private static Amount Pressure(double pascals) => new(pascals, Dimension.Stress);
}
