using Clomwright.Geometry.Cuts;

namespace Clomwright.Geometry;

/// <summary>Level sections through the cob between two openings.</summary>
/// <remarks>
/// The narrowest section is the least, over every height of the pier, of the straight distance from jamb to jamb, splays included, and at
/// the depths of a niche the distance at that depth less the niche. Where the wall turns a right angle or more between the jambs a
/// straight line would leave it, and the arc at each depth is taken instead. A round or arched hole counts at its full width at every
/// height: what is told is the cob that stands clear of both holes all the way up.
/// </remarks>
internal sealed class PierSection
{
    /// <summary>A little less than one, so that two straight walls at a right angle stay on one side of it whichever way they face.</summary>
    private const double RightAngle = Math.PI / 2 - 1e-9;

    private readonly WallFrame frame;
    private readonly PlacedOpening before;
    private readonly PlacedOpening after;
    private readonly NichePlaces.Placed[] niches;

    public PierSection(WallFrame frame, PlacedOpening before, PlacedOpening after, NichePlaces.Placed[] niches)
    {
        this.frame = frame;
        this.before = before;
        this.after = after;
        this.niches = niches;
        var low = Math.Max(frame.Base, Math.Max(before.Sill, after.Sill));
        var high = Math.Min(before.Head, after.Head);
        Heights = high > low ? new Span(low, high) : new Span(Math.Max(frame.Base, high), Math.Max(frame.Base, Math.Max(before.Sill, after.Sill)));
    }

    /// <summary>The height that both openings share; where they share none, from the lower one's head to the higher one's sill.</summary>
    public Span Heights { get; }

    /// <summary>Between the rough jambs on the curve of an offset, as stations.</summary>
    public Span RoughSpan(double offset)
    {
        if (before.Rough.Meet(1, offset) is not { } from || after.Rough.Meet(-1, offset) is not { } to)
        {
            return Piers.Between(before, after, frame.Curve);
        }

        var start = frame.Curve.Wrap(from.Station);
        return new Span(start, start + Ahead(from.Station, to.Station).Distance);
    }

    /// <summary>Arc from jamb to jamb at an offset.</summary>
    public double Arc(double offset)
    {
        if (before.Hole.Shaft.Meet(1, offset) is not { } from || after.Hole.Shaft.Meet(-1, offset) is not { } to)
        {
            return 0;
        }

        var (distance, laps) = Ahead(from.Station, to.Station);
        return distance + offset * (to.Heading + 2 * Math.PI * laps - from.Heading);
    }

    /// <summary>The narrowest section and its height. Between the candidates everything changes evenly or only widens.</summary>
    public (double Width, double Height) Narrowest() => Candidates().Select(z => (Width: At(z), Height: z)).MinBy(w => w.Width);

    private double At(double height)
    {
        var (inside, outside) = (frame.Wall.InsideOffset(height), frame.Wall.OutsideOffset(height));
        var isStraight = Turning(inside) < RightAngle;
        var least = isStraight
            ? Between(before.Hole.Shaft.JambLine(1, inside, outside), after.Hole.Shaft.JambLine(-1, inside, outside))
            : Math.Min(Arc(inside), Arc(outside));
        foreach (var depth in NicheDepths(height, inside, outside))
        {
            var whole = isStraight ? Straight(depth) : Arc(depth);
            least = Math.Min(least, whole - niches.Sum(n => Taken(n, height, depth)));
        }

        return Math.Max(0, least);
    }

    private IEnumerable<double> NicheDepths(double height, double inside, double outside)
    {
        foreach (var niche in niches)
        {
            if (niche.Box.Outline.ShareAt(height) > 0)
            {
                yield return double.IsInfinity(niche.Box.From) ? inside : outside;
                yield return double.IsInfinity(niche.Box.From) ? niche.Box.To : niche.Box.From;
            }
        }
    }

    private static double Taken(NichePlaces.Placed niche, double height, double depth) =>
        depth >= niche.Box.From && depth <= niche.Box.To ? 2 * niche.Box.HalfWidth * niche.Box.Outline.ShareAt(height) : 0;

    private double Straight(double offset) =>
        before.Hole.Shaft.Meet(1, offset) is { } from && after.Hole.Shaft.Meet(-1, offset) is { } to ? (to.Offset(offset) - from.Offset(offset)).Norm : 0;

    private double Turning(double offset)
    {
        if (before.Hole.Shaft.Meet(1, offset) is not { } from || after.Hole.Shaft.Meet(-1, offset) is not { } to)
        {
            return 0;
        }

        return Math.Abs(to.Heading + 2 * Math.PI * Ahead(from.Station, to.Station).Laps - from.Heading);
    }

    private static double Between(List<PlanPoint> a, List<PlanPoint> b)
    {
        var least = a.Count == 0 || b.Count == 0 ? 0 : double.PositiveInfinity;
        for (var i = 1; i < a.Count; i++)
        {
            for (var j = 1; j < b.Count; j++)
            {
                least = Math.Min(least, Math.Min(
                    Math.Min(ToSide(a[i - 1], b[j - 1], b[j]), ToSide(a[i], b[j - 1], b[j])),
                    Math.Min(ToSide(b[j - 1], a[i - 1], a[i]), ToSide(b[j], a[i - 1], a[i]))));
            }
        }

        return least;
    }

    private static double ToSide(PlanPoint point, PlanPoint from, PlanPoint to)
    {
        var side = to - from;
        var share = Math.Clamp((point - from).Dot(side) / Math.Max(side.Dot(side), double.Epsilon), 0, 1);
        return (point - from - share * side).Norm;
    }

    /// <summary>How far ahead one station is of another, clockwise, and the laps to add to it. A pier of no width is not a whole lap.</summary>
    private (double Distance, double Laps) Ahead(double from, double to)
    {
        var length = frame.Curve.Length;
        var laps = Math.Ceiling((from - to) / length - 1e-9);
        return (to + laps * length - from, laps);
    }

    private IEnumerable<double> Candidates()
    {
        const int Steps = 4;
        double[] heights =
        [
            before.Hole.Outline.WidestAt, after.Hole.Outline.WidestAt, .. Enumerable.Range(0, Steps + 1).Select(i => Heights.From + i * Heights.Width / Steps),
            .. niches.SelectMany(n => new[] { n.Box.Outline.Sill, n.Box.Outline.Springing, n.Box.Outline.Head }),
        ];
        return heights.Where(z => z >= Heights.From && z <= Heights.To);
    }
}
