using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Rules;

internal static partial class CommonPractice
{
    /// <summary>From the middle of a pole's seat to the nearest frame edge, along the inside face: the wall's thickness at the top, and never under a least.</summary>
    private static Sequence<Ruling> PoleSeat(HouseGeometry house, Amount least)
    {
        if (house.House.Roof is null || house.Landings.Count == 0)
        {
            return [Ruling.NotChecked("roof", house.House.Roof is null ? "no-roof-described" : "landings-unknown")];
        }

        if (house.Openings.Count == 0)
        {
            return [Ruling.NotApplicable("roof", "no-openings"), .. Unplaced(house)];
        }

        var asked = house.Wall.ThicknessAtTop.Metres > least.Si ? house.Wall.ThicknessAtTop : least;
        return house.Landings.Select(landing => PoleSeat(house, landing, asked)).Concat(Unplaced(house)).ToSequence();
    }

    private static Ruling PoleSeat(HouseGeometry house, Landing landing, Amount asked)
    {
        var nearest = house.Openings.MinBy(opening => Ring.Outside(opening.Widest, landing.Station, house.Curve.Length))!;
        var away = Ring.Outside(nearest.Widest, landing.Station, house.Curve.Length);
        var one = away - NearerSeat(house, landing);
        var compared = Require.AtLeast(Exactly.Metres(away), asked);
        var verdict = compared is Verdict.Met && Require.AtLeast(Exactly.Metres(one), asked) is Verdict.FallsShort
            ? new Verdict.NeedsJudgement(Message.Of("rules.ask.pair-seat", ("middle", Amount.Metres(away)), ("one", Amount.Metres(one)), ("asked", asked)))
            : compared;
        var ruling = new Ruling(landing.Name, verdict).At(Seat(house, landing), nearest.Head, house.Wall.Top.Metres);
        return ruling.Noting(Message.Of(away < 0 ? "rules.note.seat-over" : "rules.note.seat-beside", ("opening", nearest.Opening.Name)));
    }

    /// <summary>How much nearer than its middle the nearer seat of two poles side by side lies, along the wall, m: half a pole over the cosine of the angle between pole and radius; 0 for a single pole.</summary>
    private static double NearerSeat(HouseGeometry house, Landing landing) =>
        house.House.Roof is Roof.Reciprocal { SideBySide: > 1 } roof && !landing.Secondary
            ? roof.Pole.Butt.Metres / 2 / Math.Sqrt(1 - Math.Pow(Math.Min(0.9, roof.RingRadius.Metres / (landing.Point - house.Curve.Centre).Norm), 2))
            : 0;

    /// <summary>As written; where the wall has no room for that, somebody has to judge what stands further apart.</summary>
    private static Sequence<Ruling> TeeSpacing(HouseGeometry house, Amount most) => OnTees(house, tees =>
        Require.AtMost(tees.Spacing, most) is var asked && asked is Verdict.Met && house.Tees.Where(t => t.ToNext > most.Si + 1e-6).MaxBy(t => t.ToNext) is { } widest
            ? new Verdict.NeedsJudgement(Message.Of("rules.ask.tees-apart", ("from", widest.Number), ("to", widest.Number % house.Tees.Count + 1), ("gap", Amount.Metres(widest.ToNext)), ("most", most)))
            : asked);

    private static Sequence<Ruling> TeeDepth(HouseGeometry house, Amount least) =>
        OnTees(house, tees => Require.AtLeast(tees.Depth, least));

    private static Sequence<Ruling> OnTees(HouseGeometry house, Func<Tees, Verdict> rule) => house.House switch
    {
        { Tees: { } tees } => [new Ruling("tees", rule(tees)) { Places = [.. house.Tees.Select(t => new Place(t.Station, t.Station, t.BarHeight, house.Wall.Top.Metres))] }],
        _ => [Ruling.NotChecked("tees", "no-tees-described")],
    };

    private static Sequence<Ruling> Eave(HouseGeometry house, Amount least)
    {
        if (house.House.Roof is not { } roof)
        {
            return [Ruling.NotChecked("roof", "no-roof-described")];
        }

        var wall = house.Wall.Top - (house.House.Site.Grade ?? house.Wall.Base);
        var share = Amount.Fraction((double)roof.Eave.Nanometres / wall.Nanometres);
        return
        [
            new Ruling("roof", Require.AtLeast(roof.Eave, least))
            {
                Notes = [Message.Of(house.House.Site.Grade is null ? "rules.note.eave-over-stem" : "rules.note.eave-over-grade", ("share", share), ("wall", wall))],
            },
        ];
    }

    private static Sequence<Ruling> Drip(HouseGeometry house, Amount least) => house.House.Roof switch
    {
        null => [Ruling.NotChecked("roof", "no-roof-described")],
        { Drip: { } drip } => [new Ruling("drip edge", Require.AtLeast(drip.Down, least)) { Notes = [Message.Of("rules.note.drip", ("out", drip.Out))] }],
        _ => [Ruling.NotChecked("drip edge", "drip-not-described")],
    };

    /// <summary>The stretch of wall under a pole's seat, as wide as the pole is thick.</summary>
    private static Span Seat(HouseGeometry house, Landing landing)
    {
        var half = (landing.Secondary, house.House.Roof) switch
        {
            (true, { Secondaries: { } secondaries }) => secondaries.Diameter.Metres / 2,
            (_, Building.Roof.Reciprocal roof) => roof.Pole.Butt.Metres / 2,
            (_, Building.Roof.Radial roof) => roof.Pole.Butt.Metres / 2,
            (_, Building.Roof.Shed roof) => roof.Pole.Butt.Metres / 2,
            (_, Building.Roof.Gable roof) => roof.Pole.Butt.Metres / 2,
            _ => 0,
        };
        return new Span(landing.Station - half, landing.Station + half);
    }
}
