using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Rules;

internal static partial class CommonPractice
{
    /// <summary>Cob between two openings, at its narrowest, less bottles and sleeves that go through.</summary>
    private static Sequence<Ruling> PierWidth(HouseGeometry house, Amount least)
    {
        var rulings = house.Piers.Select(pier => PierWidth(house, pier, least)).Concat(Unplaced(house)).ToSequence();
        return rulings.Count > 0 ? rulings : [Ruling.NotApplicable("wall", "no-openings")];
    }

    private static Ruling PierWidth(HouseGeometry house, Pier pier, Amount least)
    {
        var through = Through(house, pier);
        if (through.Any(e => e.Embed.Width is null))
        {
            return Ruling.NotChecked(pier.Address, "through-size-unknown").At(pier.Span, pier.Heights.From, pier.Heights.To);
        }

        var voids = through.Select(e => Bottom(e)).Select(level => through.Where(e => Bottom(e) <= level && level < Top(e)).Sum(Width)).DefaultIfEmpty(0).Max();
        var ruling = new Ruling(pier.Address, Require.AtLeast(Exactly.Metres(pier.Narrowest - voids), least)).At(pier.Span, pier.Heights.From, pier.Heights.To);
        return voids > 0 ? ruling.Noting(Message.Of("rules.note.voids", ("voids", Amount.Metres(voids)))) : ruling;
    }

    private static Sequence<Ruling> OpeningWidth(HouseGeometry house, Amount most) =>
        EachOpening(house, "no-openings", place => new Ruling(place.Opening.Name, Require.AtMost(place.Opening.Width, most)).At(place));

    /// <summary>Widths of all openings, placed or not, against a share of the inside face's length.</summary>
    private static Sequence<Ruling> OpeningShare(HouseGeometry house, Amount share)
    {
        if (house.House.Openings.Count == 0)
        {
            return [Ruling.NotApplicable("wall", "no-openings")];
        }

        var widths = house.House.Openings.Aggregate(Length.Zero, (sum, opening) => sum + opening.Width);
        var places = house.Openings.Select(o => new Place(o.Widest.From, o.Widest.To, o.Sill, o.Head)).ToSequence();
        return [new Ruling("wall", Require.AtMost(widths, Exactly.Metres(house.Curve.Length * share.Si))) { Places = places }];
    }

    /// <summary>From an opening's edge to the middle of the nearest corner, along the inside face.</summary>
    private static Sequence<Ruling> OpeningCorner(HouseGeometry house, Amount least)
    {
        var corners = Corners.Of(house);
        return corners.Count == 0
            ? [Ruling.NotApplicable("wall", "no-corners")]
            : EachOpening(house, "no-openings", place =>
            {
                var nearest = corners.Min(corner => Ring.Outside(place.Widest, corner, house.Curve.Length));
                return new Ruling(place.Opening.Name, Require.AtLeast(Exactly.Metres(nearest), least)).At(place);
            });
    }

    private static Sequence<Ruling> HeaderBearing(HouseGeometry house, Amount least) =>
        Bearing(house, least, "no-plain-headers", header => header is null or { CrossPad: false });

    private static Sequence<Ruling> HeaderBearingOnPad(HouseGeometry house, Amount least) =>
        Bearing(house, least, "no-cross-pads", header => header is { CrossPad: true });

    /// <summary>Length of each header that rests on cob at each side, with or without a pad under it.</summary>
    public static Sequence<Ruling> AnyHeaderBearing(HouseGeometry house, Amount least) => Bearing(house, least, "no-headers", _ => true);

    private static Sequence<Ruling> Bearing(HouseGeometry house, Amount least, string noneBecause, Func<Header?, bool> about) =>
        EachOpening(house, noneBecause, place => place.Opening.Header switch
        {
            var header when !about(header) => null,
            { } header => new Ruling($"{place.Opening.Name}/header", Require.AtLeast(header.Bearing, least)).AtHeader(place),
            null => NeedsHeader(place.Opening) ? Ruling.NotChecked($"{place.Opening.Name}/header", "no-header-described").At(place) : null,
        });

    /// <summary>Pieces side by side against the thickness of the wall at the underside of the header.</summary>
    private static Sequence<Ruling> HeaderThickness(HouseGeometry house, Amount share) =>
        EachOpening(house, "no-headers", place => place switch
        {
            { Header: { } header } => new Ruling(
                $"{place.Opening.Name}/header",
                Require.AtLeast(Exactly.Metres(header.TotalWidth), Exactly.Metres(share.Si * header.WallThickness))).AtHeader(place),
            { Opening: { Header: null } opening } when NeedsHeader(opening) => Ruling.NotChecked($"{opening.Name}/header", "no-header-described").At(place),
            _ => null,
        });

    /// <summary>From the top of the header, or the crown where there is none, to the top of the wall.</summary>
    private static Sequence<Ruling> CobOverHead(HouseGeometry house, Amount least) =>
        EachOpening(house, "no-openings", place =>
        {
            var top = place.Header?.Top ?? place.Head;
            return new Ruling(place.Opening.Name, Require.AtLeast(Exactly.Metres(house.Wall.Top.Metres - top), least)).At(place.Widest, top, house.Wall.Top.Metres);
        });

    private static bool NeedsHeader(Opening opening) => opening.Shape == OpeningShape.Rectangular;

    private static Ruling AtHeader(this Ruling ruling, OpeningPlace place) =>
        place.Header is { } header ? ruling.At(header.Span, header.Bottom, header.Top) : ruling.At(place);

    /// <summary>Bottles and sleeves that go through the cob of a pier.</summary>
    private static List<EmbedPlace> Through(HouseGeometry house, Pier pier) =>
    [
        .. house.Embeds.Where(e => e.Embed.Through && e.Lift >= 0 && Ring.Holds(pier.Span, e.Station, house.Curve.Length)
            && Top(e) > pier.Heights.From && Bottom(e) < pier.Heights.To),
    ];

    private static double Width(EmbedPlace embed) => (embed.Embed.Width ?? Length.Zero).Metres;

    private static double Top(EmbedPlace embed) => embed.Height + (embed.Embed.Size ?? embed.Embed.Width ?? Length.Zero).Metres / 2;

    private static double Bottom(EmbedPlace embed) => embed.Height - (embed.Embed.Size ?? embed.Embed.Width ?? Length.Zero).Metres / 2;
}
