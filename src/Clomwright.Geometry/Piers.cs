using Clomwright.Evidence;
using Clomwright.Geometry.Cuts;

namespace Clomwright.Geometry;

/// <summary>The cob between neighbouring openings.</summary>
internal static class Piers
{
    /// <summary>Pairs of openings with a pier between them, clockwise. Openings one above the other stand in one group: the pier lies between the ones of neighbouring groups that come nearest.</summary>
    public static List<(PlacedOpening Before, PlacedOpening After)> Pairs(IReadOnlyList<PlacedOpening> openings, PlanCurve curve)
    {
        var groups = Groups(openings, curve);
        var pairs = new List<(PlacedOpening, PlacedOpening)>();
        for (var i = 0; i < groups.Count; i++)
        {
            var next = groups[(i + 1) % groups.Count];
            var before = groups[i].MaxBy(o => From(groups[i][0], o.Widest.To))!;
            var after = next.MinBy(o => From(next[0], o.Widest.From))!;
            pairs.Add((before, after));
        }

        return pairs;

        double From(PlacedOpening first, double station) => Math.IEEERemainder(station - first.Hole.Shaft.Middle.Station, curve.Length);
    }

    public static string Address(PlacedOpening before, PlacedOpening after) => $"pier {before.Opening.Name}|{after.Opening.Name}";

    /// <summary>The stretch of wall between the two holes where they reach widest.</summary>
    public static Span Between(PlacedOpening before, PlacedOpening after, PlanCurve curve)
    {
        var from = curve.Wrap(before.Widest.To);
        var width = curve.Wrap(after.Widest.From - before.Widest.To);
        return new Span(from, from + (width > curve.Length * (1 - 1e-9) ? 0 : width));
    }

    public static Pier Told(WallFrame frame, PlacedOpening before, PlacedOpening after, IEnumerable<NichePlaces.Placed> niches)
    {
        var address = Address(before, after);
        var within = niches.Where(n => n.Place.Pier == address).ToArray();
        var height = Math.Max(before.JambHeight(frame), after.JambHeight(frame));
        var (inside, outside) = (frame.Wall.InsideOffset(height), frame.Wall.OutsideOffset(height));
        var section = new PierSection(frame, before, after, within);
        var (narrowest, at) = section.Narrowest();
        return new Pier
        {
            Address = address,
            Before = before.Opening.Name,
            After = after.Opening.Name,
            Span = section.RoughSpan(inside),
            WidthInside = section.Arc(inside),
            WidthMiddle = section.Arc((inside + outside) / 2),
            WidthOutside = section.Arc(outside),
            Narrowest = narrowest,
            NarrowestAt = at,
            Heights = section.Heights,
            Niches = within.Select(n => n.Place.Niche.Name).ToSequence(),
        };
    }

    private static List<List<PlacedOpening>> Groups(IReadOnlyList<PlacedOpening> openings, PlanCurve curve)
    {
        var groups = new List<List<PlacedOpening>>();
        foreach (var opening in openings)
        {
            if (groups.Count > 0 && groups[^1].Exists(o => Spans.Overlap(o.Widest, opening.Widest, curve.Length)))
            {
                groups[^1].Add(opening);
            }
            else
            {
                groups.Add([opening]);
            }
        }

        if (groups.Count > 1 && groups[0].Exists(a => groups[^1].Exists(b => Spans.Overlap(a.Widest, b.Widest, curve.Length))))
        {
            groups[0].InsertRange(0, groups[^1]);
            groups.RemoveAt(groups.Count - 1);
        }

        return groups;
    }
}
