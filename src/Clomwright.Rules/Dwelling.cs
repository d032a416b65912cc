using System.Collections.Frozen;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Rules;

/// <summary>
/// What makes a dwelling fit to live in: escape, light and air, headroom, doors, glass near people. The numbers stand in <c>data/rules/irc-dwelling@*.json</c>.
/// The whole inside counts as one room. What stands clear of a door or window is read where it is written; otherwise the light of its frame, or its rough size, is the most that
/// it can be: too little of that falls short, enough of it is not checked. So it is with the glass of what opens: its sash is in the light of the frame too.
/// </summary>
internal static class Dwelling
{
    /// <summary>Key of this body of rules.</summary>
    public const string Body = "irc-dwelling";

    /// <summary>Glass smaller than this, or with its top lower, is no danger however low it stands: 9 ft2 and 36 in, of the same clause.</summary>
    private static readonly double SmallPane = 9 * 0.3048 * 0.3048;
    private static readonly Length LowTop = Length.FromInches(36);

    /// <summary>Glass beside a door is a danger only where its foot stands lower: 60 in, of the same clause.</summary>
    private static readonly Length BesideDoor = Length.FromInches(60);

    /// <summary>The method of each computed rule.</summary>
    public static readonly FrozenDictionary<string, RuleMethod> Methods = new Dictionary<string, RuleMethod>
    {
        ["daylight"] = (house, least) => Share(house, least, o => o.Kind != OpeningKind.Door, whole: true),
        ["opening-to-air"] = (house, least) => Share(house, least, o => o.Kind is OpeningKind.Door or OpeningKind.Opening, whole: false),
        ["room-area"] = (house, least) => [new Ruling("house", Require.AtLeast(Near(new Area(house.Measures.InsideArea), least), least))],
        ["ceiling-height"] = CeilingHeight,
        ["glazing-low"] = GlazingLow,
        ["glazing-by-door"] = GlazingByDoor,
        ["escape-area"] = (house, least) => Escape(house, o => Clear(o, c => new Amount(c.Width.Metres * c.Height.Metres, Dimension.Area), least)),
        ["escape-height"] = (house, least) => Escape(house, o => Clear(o, c => c.Height, least)),
        ["escape-width"] = (house, least) => Escape(house, o => Clear(o, c => c.Width, least)),
        ["escape-sill"] = (house, most) => Escape(house, o => new Ruling(o.Opening.Name, Require.AtMost(o.Opening.Sill + (o.Opening.Frame?.Stock ?? Length.Zero), most)).At(o.Widest, o.Sill, o.Head)),
        ["egress-door-width"] = (house, least) => EgressDoor(house, c => c.Width, least),
        ["egress-door-height"] = (house, least) => EgressDoor(house, c => c.Height, least),
    }.ToFrozenDictionary();

    /// <summary>The lowest ceiling: under deck or poles where they leave the wall.</summary>
    private static Sequence<Ruling> CeilingHeight(HouseGeometry house, Amount least)
    {
        if (house.House.Roof is null)
        {
            return [Ruling.NotChecked("house", "no-roof-described")];
        }

        var height = house.Wall.Top + (house.House.BondBeam?.Depth ?? Length.Zero);
        return Require.AtLeast(height, least) is Verdict.Met met
            ? [new Ruling("house", met)]
            : [new Ruling("house", new Verdict.NeedsJudgement(Message.Of("rules.ask.ceiling-height", ("height", height))))];
    }

    /// <summary>Areas of openings over the floor inside.</summary>
    private static Sequence<Ruling> Share(HouseGeometry house, Amount least, Func<Opening, bool> counts, bool whole)
    {
        var openings = house.House.Openings.Where(counts).ToList();
        var floor = house.Measures.InsideArea;
        var most = openings.Sum(o => whole ? Glass(o) : Area(o, Most(o)));
        Amount asked = new Area(least.Si * floor);
        var upper = Require.AtLeast(Near(new Area(most), asked), asked);
        if (upper is Verdict.FallsShort)
        {
            return [new Ruling("house", upper)];
        }

        // Glass is known where its share is written, where it is set in the cob, and of a fixed pane, which fills the light of its frame; what opens is what is written to stand clear.
        var known = openings.Sum(o => whole ? (o.Glazed is not null || o.Kind == OpeningKind.Glass || (o.Kind == OpeningKind.Fixed && o.Frame is not null) ? Glass(o) : 0) : o.Clear is { } clear ? Area(o, clear) : 0);
        return Require.AtLeast(Near(new Area(known), asked), asked) is Verdict.Met met ? [new Ruling("house", met)]
            : [new Ruling("house", new Verdict.NotChecked(Message.Of(whole ? "rules.because.glass-unknown" : "rules.because.clear-unknown-share", ("known", (Amount)new Area(known)), ("most", (Amount)new Area(most)), ("asked", asked))))];
    }

    /// <summary>An area within a square millimetre of a limit stands at it.</summary>
    private static Amount Near(Amount area, Amount limit) => Math.Abs(area.Si - limit.Si) <= SquareMillimetre ? limit : area;

    private const double SquareMillimetre = 1e-6;

    private static double Area(Opening opening, ClearOpening size) => size.Width.Metres * size.Height.Metres * opening.Shape switch
    {
        OpeningShape.Round => Math.PI / 4,
        OpeningShape.Arched when opening.Rise is { } rise => 1 - (1 - Math.PI / 4) * Math.Min(1, rise.Metres / size.Height.Metres),
        _ => 1,
    };

    /// <summary>The most that can be glass, m2: the share that is written, or the light of the frame, or the rough opening.</summary>
    private static double Glass(Opening opening) => opening.Glazed is { } share ? share.OfOne * Area(opening, Rough(opening)) : Area(opening, opening.FrameLight() ?? Rough(opening));

    /// <summary>The most that can be clear: the light of the frame, or the rough opening.</summary>
    private static ClearOpening Most(Opening opening) => opening.Shape == OpeningShape.Rectangular && opening.FrameLight() is { } light ? light : Rough(opening);

    private static ClearOpening Rough(Opening opening) => new(opening.Width, opening.Height);

    private static Ruling Clear(OpeningPlace place, Func<ClearOpening, Amount> read, Amount least)
    {
        var opening = place.Opening;
        if (opening.Clear is { } clear)
        {
            return At(place, Require.AtLeast(read(clear) is { Dimension: Dimension.Area } area ? Near(area, least) : read(clear), least));
        }

        var most = Require.AtLeast(read(Most(opening)), least);
        return At(place, most is Verdict.FallsShort ? most : new Verdict.NotChecked(new Message("rules.because.no-clear-opening")));
    }

    private static Ruling At(OpeningPlace place, Verdict verdict) => new Ruling(place.Opening.Name, verdict).At(place.Widest, place.Sill, place.Head);

    private static Sequence<Ruling> Escape(HouseGeometry house, Func<OpeningPlace, Ruling> rule)
    {
        var escapes = house.Openings.Where(o => o.Opening.Escape).Select(rule).ToSequence();
        return escapes.Count > 0 ? escapes : [Ruling.NotChecked("house", "no-escape-marked")];
    }

    /// <summary>One door that is wide and high enough serves; of several the widest is told.</summary>
    private static Sequence<Ruling> EgressDoor(HouseGeometry house, Func<ClearOpening, Amount> read, Amount least)
    {
        var doors = house.Openings.Where(o => o.Opening.Kind == OpeningKind.Door).ToList();
        return doors.Count == 0 ? [Ruling.NotChecked("house", "no-doors")] : [Clear(doors.MaxBy(d => (d.Opening.Clear ?? Most(d.Opening)).Width)!, read, least)];
    }

    /// <summary>Glass low enough for somebody to fall into, and large enough to hurt: a person says whether it is safety glass.</summary>
    private static Sequence<Ruling> GlazingLow(HouseGeometry house, Amount least) => EachGlass(house, place =>
    {
        var foot = place.Opening.Sill + (place.Opening.Frame?.Stock ?? Length.Zero);
        var high = Require.AtLeast(foot, least);
        var (opening, size) = (place.Opening, Most(place.Opening));
        return At(place, high is Verdict.Met || Area(opening, size) <= SmallPane || foot + size.Height <= LowTop ? Met(high, least, foot) : new Verdict.NeedsJudgement(new Message("rules.ask.safety-glass")));
    });

    private static Sequence<Ruling> GlazingByDoor(HouseGeometry house, Amount least)
    {
        var doors = house.Openings.Where(o => o.Opening.Kind == OpeningKind.Door).ToList();
        return doors.Count == 0 ? [Ruling.NotApplicable("house", "no-doors")] : EachGlass(house, place =>
        {
            var away = Exactly.Metres(doors.Min(d => Math.Min(Ring.Outside(d.Inside, place.Inside.From, house.Curve.Length), Ring.Outside(d.Inside, place.Inside.To, house.Curve.Length))));
            var far = Require.AtLeast(away, least);
            return At(place, far is Verdict.Met || place.Opening.Sill >= BesideDoor ? Met(far, least, away) : new Verdict.NeedsJudgement(new Message("rules.ask.safety-glass-door")));
        });
    }

    private static Verdict Met(Verdict compared, Amount least, Amount provided) => compared is Verdict.Met ? compared
        : new Verdict.Met(Message.Of("rules.because.glass-no-danger", ("provided", provided), ("least", least)));

    private static Sequence<Ruling> EachGlass(HouseGeometry house, Func<OpeningPlace, Ruling> rule)
    {
        var rulings = house.Openings.Where(o => o.Opening.Kind != OpeningKind.Door).Select(rule).ToSequence();
        return rulings.Count > 0 ? rulings : [Ruling.NotApplicable("house", "no-glass")];
    }
}
