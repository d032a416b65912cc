using Clomwright.Analysis.Drying;
using Clomwright.Evidence;
using Clomwright.Geometry;
using EarthStrength = Clomwright.Analysis.Drying.Strength;

namespace Clomwright.Analysis.WallTrials;

/// <summary>How strong the cob of each lift is while the wall rises: the seat that the forecast of drying fills. Without one every lift under the fresh one is taken at its plastic limit.</summary>
/// <param name="Forecast">Whether it comes from the forecast; stated otherwise.</param>
/// <param name="Bays">Stretches of wall that dry alike; one round the whole ring without a forecast.</param>
/// <param name="Stages">When each lift has just been laid, bottom up.</param>
/// <param name="Roof">On the day the roof lands; or why that is not known.</param>
/// <param name="Safety">Strength over pressure that the method asks of a fresh wall.</param>
/// <param name="RoofSafety">Strength over pressure that a young wall is asked for under its roof.</param>
/// <param name="Assumptions">What nobody gave.</param>
public sealed record WallDryness(
    bool Forecast, Sequence<Span> Bays, Sequence<DrynessStage> Stages, Known<DrynessStage> Roof, double Safety, double RoofSafety, Sequence<Assumption> Assumptions)
{
    /// <summary>From the forecast where there is one, by the mean water of each lift on the evening before: its middle case while the wall rises, because each case waits for its own lifts; its slow case on the day of the roof.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="drying">The forecast; or why there is none.</param>
    /// <param name="known">Numbers that this house's own tests tell about drying.</param>
    public static WallDryness Of(HouseGeometry geometry, Known<DryingResult> drying, Sequence<KnownNumber> known)
    {
        DryingNumbers Numbers(DryingCase way) => DryingNumbers.Of(geometry.House.Assumed, way, known);
        var middle = Numbers(DryingCase.Middle);
        var (safety, roofSafety) = (middle["drying-safety-" + WallRun.Word(geometry.House.Lifts.Method)], middle["drying-roof-safety"]);
        if (drying.Value is not { } forecast)
        {
            return Stated(geometry, middle, safety, roofSafety, drying.NotChecked!);
        }

        var (rising, law) = (forecast.Middle, Law(middle));
        var stages = Enumerable.Range(0, rising.Lifts.Count).Select(n => Stage(rising, law, n + 1, n + 1, rising.Lifts[n].LaidDay)).ToSequence();
        return new WallDryness(true, forecast.Bays.Select(b => new Span(b.From, b.To)).ToSequence(), stages, RoofStage(), safety, roofSafety, []);

        DrynessStage Stage(WallDrying wall, EarthStrength how, int number, int standing, double day) => new(
            number, day, Enumerable.Range(0, standing).Select(lift => Enumerable.Range(0, forecast.Bays.Count).Select(bay => At(wall, how, lift, bay, day)).ToSequence()).ToSequence());

        Known<DrynessStage> RoofStage()
        {
            var (slow, all) = (forecast.Slow, geometry.Lifts.Count);
            if (slow.Lifts.Count < all)
            {
                return new Message("analysis.trials.walls-not-up");
            }

            if (geometry.House.Crew?.RoofOn is { } planned)
            {
                var day = planned.DayNumber - forecast.Start.DayNumber;
                return slow.Lifts[^1].LaidDay <= day ? Stage(slow, Law(Numbers(DryingCase.Slow)), all + 1, all, day) : new Message("analysis.trials.roof-before-wall");
            }

            return slow.RoofDay is { } reached ? Stage(slow, Law(Numbers(DryingCase.Slow)), all + 1, all, reached) : new Message("analysis.trials.roof-not-reached");
        }
    }

    /// <summary>Strength by the mean water of a lift on the evening before a day; as laid where it has seen none.</summary>
    private static double At(WallDrying wall, EarthStrength law, int lift, int bay, double day)
    {
        var laid = wall.Lifts[lift];
        var water = laid.Bays[bay].Water;
        var evenings = (int)Math.Floor(day + 1e-9) - (int)Math.Floor(laid.LaidDay + 1e-9);
        return law.Compressive(evenings <= 0 || water.Count == 0 ? laid.LaidWater : water[Math.Min(evenings, water.Count) - 1]);
    }

    private static EarthStrength Law(DryingNumbers numbers) => WallRun.StrengthOf(numbers, WallRun.EarthOf(numbers));

    private static WallDryness Stated(HouseGeometry geometry, DryingNumbers numbers, double safety, double roofSafety, Message why)
    {
        var law = Law(numbers);
        var (firm, fresh) = (law.Compressive(law.PlasticLimit), law.Compressive(WallRun.LaidWater(numbers, geometry.House.Lifts.Method)));
        var stages = geometry.Lifts.Select((_, n) => new DrynessStage(n + 1, null, Enumerable.Range(0, n + 1).Select(lift => Sequence.Create<double>([lift < n ? firm : fresh])).ToSequence())).ToSequence();
        return new WallDryness(
            false, [new Span(0, geometry.Curve.Length)], stages, why, safety, roofSafety,
            [new Assumption("trials-green-strength", new Message("analysis.assumed.trials-green-strength"), new Amount(firm, Dimension.Stress), Sources.Get("vardanega-haigh-2014"))]);
    }
}

/// <summary>The strength of the cob at one moment.</summary>
/// <param name="Lift">The lift just laid, from 1; one more than there are on the day of the roof.</param>
/// <param name="Day">After the first lift; null without a forecast.</param>
/// <param name="Strength">Compressive, Pa, lift by lift from the bottom, bay by bay.</param>
public sealed record DrynessStage(int Lift, double? Day, Sequence<Sequence<double>> Strength);
