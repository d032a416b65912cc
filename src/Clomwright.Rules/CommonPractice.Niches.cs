using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Rules;

internal static partial class CommonPractice
{
    private static Sequence<Ruling> NicheHeadWidth(HouseGeometry house, Amount most) =>
        EachNiche(house, "no-flat-niches", place => place.Niche.Head == NicheHead.Flat
            ? new Ruling(place.Niche.Name, Require.AtMost(place.Niche.Width, most)).At(place)
            : null);

    private static Sequence<Ruling> NicheBack(HouseGeometry house, Amount least) =>
        EachNiche(house, "no-niches", place => new Ruling(place.Niche.Name, Require.AtLeast(Exactly.Metres(place.LeftBehind), least)).At(place));

    /// <summary>The gap along the wall to the nearest pole seat, and to the nearest header end that stands above the niche's sill.</summary>
    private static Sequence<Ruling> NicheUnderLoad(HouseGeometry house, Amount least)
    {
        var seats = house.Landings.Select(landing => (Name: landing.Name, Span: Seat(house, landing), Bottom: house.Wall.Top.Metres));
        var loads = seats.Concat(house.Openings.SelectMany(HeaderEnds)).ToList();
        return EachNiche(house, "no-niches", place =>
        {
            var above = loads.Where(load => load.Bottom > place.Bottom).ToList();
            if (house.Landings.Count == 0 && !above.Exists(load => Ring.Gap(place.Span, load.Span, house.Curve.Length) < least.Si))
            {
                return Ruling.NotChecked(place.Niche.Name, house.House.Roof is null ? "no-roof-described" : "landings-unknown").At(place);
            }

            var nearest = above.MinBy(load => Ring.Gap(place.Span, load.Span, house.Curve.Length));
            var gap = Ring.Gap(place.Span, nearest.Span, house.Curve.Length);
            return new Ruling(place.Niche.Name, Require.AtLeast(Exactly.Metres(gap), least)).At(place)
                .Noting(Message.Of(gap < 0 ? "rules.note.load-over" : "rules.note.load-beside", ("load", nearest.Name)));
        });
    }

    /// <summary>The narrowest of the three arcs of the pier that a niche is cut into, the niche itself not taken off.</summary>
    private static Sequence<Ruling> NichePier(HouseGeometry house, Amount least) =>
        EachNiche(house, "no-niches", place => house.Piers.FirstOrDefault(p => p.Address == place.Pier) is { } pier
            ? new Ruling(place.Niche.Name, Require.AtLeast(Exactly.Metres(Math.Min(pier.WidthInside, Math.Min(pier.WidthMiddle, pier.WidthOutside))), least)).At(place)
            : Ruling.NotApplicable(place.Niche.Name, "niche-in-no-pier").At(place));

    /// <summary>The gap along the wall to the nearest niche in the other face that shares some height.</summary>
    private static Sequence<Ruling> NicheBackToBack(HouseGeometry house, Amount least) =>
        EachNiche(house, "no-niches", place =>
        {
            var opposite = house.Niches.Where(n => n.Niche.Face != place.Niche.Face && n.Bottom < place.Top && place.Bottom < n.Top).ToList();
            if (opposite.Count == 0)
            {
                return Ruling.NotApplicable(place.Niche.Name, "no-niche-opposite").At(place);
            }

            var nearest = opposite.MinBy(n => Ring.Gap(place.Span, n.Span, house.Curve.Length))!;
            return new Ruling(place.Niche.Name, Require.AtLeast(Exactly.Metres(Ring.Gap(place.Span, nearest.Span, house.Curve.Length)), least)).At(place)
                .Noting(Message.Of("rules.note.niche-opposite", ("niche", nearest.Niche.Name)));
        });

    /// <summary>Cob between a bottle and the nearest other one, along the unrolled inside face; a row is judged by its closest pair.</summary>
    private static Sequence<Ruling> BottleCob(HouseGeometry house, Amount least)
    {
        var bottles = house.Embeds.Where(e => e.Embed.Kind == EmbedKind.Bottle).ToList();
        var rulings = bottles.GroupBy(b => b.Index).Select(row => BottleCob(house, [.. row], bottles, least)).ToSequence();
        return rulings.Count > 0 ? rulings : [Ruling.NotApplicable("wall", "no-bottles")];
    }

    private static Ruling BottleCob(HouseGeometry house, List<EmbedPlace> row, List<EmbedPlace> bottles, Amount least)
    {
        var name = row[0].Embed.Name;
        var span = new Span(row[0].Station, row[0].Station + Ring.Ahead(row[0].Station, row[^1].Station, house.Curve.Length));
        if (bottles.Count == 1)
        {
            return Ruling.NotApplicable(name, "one-bottle");
        }

        if (bottles.Any(b => b.Embed.Width is null))
        {
            return Ruling.NotChecked(name, "bottle-size-unknown").At(span, Bottom(row[0]), Top(row[0]));
        }

        var between = row.Min(a => bottles.Where(b => b != a).Min(b => Between(a, b, house.Curve.Length)));
        return new Ruling(name, Require.AtLeast(Exactly.Metres(between), least)).At(span, Bottom(row[0]), Top(row[0]));
    }

    private static double Between(EmbedPlace a, EmbedPlace b, double ring)
    {
        var along = Ring.Ahead(a.Station, b.Station, ring);
        var apart = Math.Min(along, ring - along);
        return Math.Sqrt(apart * apart + (a.Height - b.Height) * (a.Height - b.Height)) - (Width(a) + Width(b)) / 2;
    }

    private static Sequence<Ruling> EachNiche(HouseGeometry house, string noneBecause, Func<NichePlace, Ruling?> rule)
    {
        var unplaced =
            from index in Enumerable.Range(0, house.House.Niches.Count)
            where house.Niches.All(place => place.Index != index)
            select Ruling.NotChecked(house.House.Niches[index].Name, "niche-not-placed");
        var rulings = house.Niches.Select(rule).OfType<Ruling>().Concat(unplaced).ToSequence();
        return rulings.Count > 0 ? rulings : [Ruling.NotApplicable("wall", house.House.Niches.Count == 0 ? "no-niches" : noneBecause)];
    }

    /// <summary>The two stretches of wall on which a header rests.</summary>
    private static IEnumerable<(string Name, Span Span, double Bottom)> HeaderEnds(OpeningPlace place)
    {
        if (place is { Header: { } header, Opening.Header: { } described })
        {
            var bearing = described.Bearing.Metres * header.Span.Width / header.Length;
            var name = $"{place.Opening.Name}/header";
            yield return (name, new Span(header.Span.From, header.Span.From + bearing), header.Bottom);
            yield return (name, new Span(header.Span.To - bearing, header.Span.To), header.Bottom);
        }
    }

    private static Ruling At(this Ruling ruling, NichePlace place) => ruling.At(place.Span, place.Bottom, place.Top);
}
