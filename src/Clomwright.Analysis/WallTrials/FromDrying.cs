using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Mix;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Steps;
using Clomwright.Analysis.Structure;
using Clomwright.Analysis.WallTop;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Numerics.Solid;
using EarthStrength = Clomwright.Analysis.Drying.Strength;
using WallTopOf = Clomwright.Analysis.WallTop.FromRoof;

namespace Clomwright.Analysis.WallTrials;

/// <summary>The model of the whole wall beside everyday use, from how it dries.</summary>
public static class FromDrying
{
    /// <summary>How far seats are moved to see what hangs on it, m.</summary>
    public const double SeatShift = 0.05;

    /// <summary>How much heavier the roof is made, and how much weaker the cob.</summary>
    public const double RoofMore = 0.1, StrengthLess = 0.2;

    private static readonly string[] Leant = ["wall-stiffness", "wall-base-stiffness", "wall-stress-patch", "wall-wet-height", "wall-wet-safety", "wall-settlement", "wall-settlement-arc"];

    /// <summary>All trials; or why there are none.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="roof">What the roof does.</param>
    /// <param name="top">The wall top.</param>
    /// <param name="strength">Of this cob.</param>
    /// <param name="drying">The forecast; or why there is none: then a green strength is stated.</param>
    /// <param name="known">What this house's own tests tell about drying.</param>
    /// <param name="described">The finished wall as described; or why it is not known.</param>
    /// <param name="fineness">How finely; null takes the usual.</param>
    public static Known<WallTrialsResult> Of(
        HouseGeometry geometry, RoofResult roof, WallTopResult top, CobStrength strength, Known<DryingResult> drying, Sequence<KnownNumber> known, Known<StructureResult> described, WallFineness? fineness = null)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        if (described.Value is not { } usual)
        {
            return described.NotChecked!;
        }

        if (geometry.Lifts.Count == 0)
        {
            return new Message("analysis.drying.no-wall");
        }

        var dryness = WallDryness.Of(geometry, drying, known);
        var divided = fineness ?? WallFineness.Usual;
        var body = new WallBody(geometry, strength.Characteristic, divided);
        var basis = new BasisLoads(body, WallChange.None.Seats(geometry, top), roof.Wind.Value, LoadCases.Thrusts(geometry, roof));
        using var elastic = new ElasticBody(body.Model);
        var wall = new TrialWall(body, elastic, basis);
        if (new RisingWall(wall, dryness, strength.Characteristic).Of() is not { } rising)
        {
            return new Message("analysis.trials.hangs");
        }

        var states = new TrialStates(wall, roof, strength.Characteristic);
        var young = states.Young(dryness, geometry.House.Crew?.RoofOn is not null);
        var wet = states.Soaked(Law(geometry, known, strength.Characteristic));
        var settled = states.Settled();
        var push = OutwardPush.Of(geometry, roof, WallTopOf.DryCob);
        Known<PushedWall> pushed = push.Value is { } outward ? states.Pushed(outward) : push.NotChecked!;
        return new WallTrialsResult
        {
            Dryness = dryness, Lifts = rising.Lifts, Sags = rising.Sags, Roof = young, Wet = wet, Settled = settled, Pushed = pushed,
            Sensitivity = Sensitivity(geometry, roof, top, strength, usual, divided).ToSequence(),
            Refinement = Refinement(geometry, roof, top, strength, usual, divided).ToSequence(),
            Assumptions = [.. dryness.Assumptions, .. WallNumbers.Of(geometry.House.Assumed).Assumed(Leant)],
            Calculations =
            [
                .. rising.Lifts.Select(Green), .. young.Value is { } day ? [Roofed(day)] : (Calculation[])[], .. wet.Value is { } soaked ? [Soaked(soaked, body.Numbers)] : (Calculation[])[],
                .. pushed.Value is { } p ? [p.Hand.How] : (Calculation[])[],
            ],
        };
    }

    /// <summary>Strength by water as the hand takes it: from the mix's own when dry.</summary>
    private static EarthStrength Law(HouseGeometry geometry, Sequence<KnownNumber> known, double dry)
    {
        var numbers = DryingNumbers.Of(geometry.House.Assumed, DryingCase.Middle, known);
        var usual = WallRun.StrengthOf(numbers, WallRun.EarthOf(numbers));
        return usual with { Dry = Math.Max(dry, 2 * EarthStrength.Undrained(usual.Law, 0) * 1.001) };
    }

    private static IEnumerable<WallVariant> Sensitivity(HouseGeometry geometry, RoofResult roof, WallTopResult top, CobStrength strength, StructureResult usual, WallFineness divided)
    {
        yield return Told("described", usual, strength);
        (string Key, WallChange Change, double Strength)[] changes =
        [
            ("roof", WallChange.None with { Roof = 1 + RoofMore }, 1), ("strength", WallChange.None, 1 - StrengthLess), ("seatsOut", WallChange.None with { Shift = SeatShift }, 1),
            ("seatsIn", WallChange.None with { Shift = -SeatShift }, 1), ("headers", WallChange.None with { HeadersHold = false }, 1),
        ];
        foreach (var (key, change, share) in changes)
        {
            var weaker = strength with { Allowable = share * strength.Allowable, Characteristic = share * strength.Characteristic };
            if (FromWallTop.Of(geometry, roof, top, weaker, change, divided).Value is { } changed)
            {
                yield return Told(key, changed, weaker);
            }
        }
    }

    private static IEnumerable<WallVariant> Refinement(HouseGeometry geometry, RoofResult roof, WallTopResult top, CobStrength strength, StructureResult usual, WallFineness divided)
    {
        foreach (var (key, unknowns) in new[] { ("coarse", divided.Unknowns / 2), ("usual", 0), ("fine", 2 * divided.Unknowns) })
        {
            if ((unknowns == 0 ? usual : FromWallTop.Of(geometry, roof, top, strength, divided with { Unknowns = unknowns }).Value) is { } again)
            {
                yield return Told(key, again, strength);
            }
        }
    }

    private static WallVariant Told(string key, StructureResult wall, CobStrength strength)
    {
        var allowed = wall.Allowed.Value;
        var edge = wall.Piers.Count > 0 ? wall.Piers.MaxBy(p => p.EdgeMost) : null;
        return new WallVariant(
            key, wall.Division.Unknowns, wall.Piers.Count > 0 ? wall.Piers.Max(p => p.MeanMost) / allowed : 0, (edge?.EdgeMost ?? 0) / allowed, edge?.Address ?? "",
            wall.Landings.Count > 0 ? wall.Landings.Max(l => l.Pressure) / strength.Allowable : 0, wall.Headers.Count > 0 ? wall.Headers.Max(h => h.Pressure) / strength.Allowable : 0, wall.TensionMost);
    }

    private static Calculation Green(RisingLift lift)
    {
        var sheet = new Worksheet("green-model");
        Held(sheet, "green-model-use", lift.Safety, lift.Worst, lift.Use, "green-model-safety");
        return sheet.Done with { Place = $"lift {lift.Number}" };
    }

    private static Calculation Roofed(YoungWall day)
    {
        var sheet = new Worksheet("roof-day-model");
        Held(sheet, "roof-day-use", day.Safety, day.Worst, day.Use, "roof-day-safety");
        return sheet.Done;
    }

    private static Calculation Soaked(SoakedWall wet, WallNumbers numbers)
    {
        var sheet = new Worksheet("wet-foot-model");
        sheet.Step(
            "wet-model-use", "k", "F*s/f", wet.Safety / wet.AtPlastic.Margin, Dimension.Number, Sources.Get("mechanics"), numbers.Symbol("F", "wall-wet-safety"),
            Worksheet.Computed("s", "model-pressure", wet.AtPlastic.Pressure, Dimension.Stress), Worksheet.Computed("f", "cob-strength-there", wet.AtPlastic.Strength, Dimension.Stress));
        return sheet.Done;
    }

    private static void Held(Worksheet sheet, string step, double safety, PressedPlace place, double use, string word) => sheet.Step(
        step, "k", "F*s/f", use, Dimension.Number, Sources.Get("mechanics"), Worksheet.Assumed("F", word, safety, Dimension.Number, Sources.Get("drying-judgement")),
        Worksheet.Computed("s", "model-pressure", place.Pressure, Dimension.Stress), Worksheet.Computed("f", "cob-strength-there", place.Strength, Dimension.Stress));
}
