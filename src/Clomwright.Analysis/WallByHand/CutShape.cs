using Clomwright.Geometry;

namespace Clomwright.Analysis.WallByHand;

/// <summary>A piece of wall seen from above: how far a load on it may move before it tips.</summary>
internal sealed class CutShape
{
    private const int Points = 12;

    private readonly PlanPoint[] hull;

    private CutShape(PlanPoint middle, PlanPoint along, PlanPoint[] hull) => (Middle, Along, this.hull) = (middle, along, hull);

    /// <summary>Centre of its area.</summary>
    public PlanPoint Middle { get; }

    /// <summary>From one end to the other, clockwise.</summary>
    public PlanPoint Along { get; }

    /// <summary>Square to that, outward.</summary>
    public PlanPoint Across => new(-Along.North, Along.East);

    /// <summary>The piece between two stations, cut level between two offsets.</summary>
    public static CutShape Of(PlanCurve curve, double from, double to, double inside, double outside)
    {
        PlanPoint[] Arc(double offset) => [.. Enumerable.Range(0, Points + 1).Select(i => curve.At(from + (to - from) * i / Points, offset))];
        var (inner, outer) = (Arc(inside), Arc(outside));
        var chord = inner[^1] - inner[0] + (outer[^1] - outer[0]);
        var norm = Math.Max(chord.Norm, 1e-12);
        return new CutShape(Centroid([.. inner, .. outer.Reverse()]), (1 / norm) * chord, Hull([.. inner, .. outer]));
    }

    /// <summary>From the middle to the edge of what stands, one way or the other, whichever is nearer, m.</summary>
    public double Reach(PlanPoint direction) => Math.Min(Ray(direction), Ray(-1 * direction));

    private double Ray(PlanPoint direction)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i < hull.Length; i++)
        {
            PlanPoint a = hull[i] - Middle, side = hull[(i + 1) % hull.Length] - hull[i];
            var slope = direction.Cross(side);
            var distance = a.Cross(side) / slope;
            if (Math.Abs(slope) > 1e-12 && distance > 0)
            {
                least = Math.Min(least, distance);
            }
        }

        return double.IsFinite(least) ? least : 0;
    }

    private static PlanPoint Centroid(PlanPoint[] outline)
    {
        double area = 0, east = 0, north = 0;
        var origin = outline[0];
        for (var i = 0; i < outline.Length; i++)
        {
            PlanPoint a = outline[i] - origin, b = outline[(i + 1) % outline.Length] - origin;
            var cross = a.Cross(b);
            (area, east, north) = (area + cross, east + (a.East + b.East) * cross, north + (a.North + b.North) * cross);
        }

        return Math.Abs(area) > 1e-12 ? origin + new PlanPoint(east / (3 * area), north / (3 * area)) : origin;
    }

    /// <summary>Monotone chain: the corners of the smallest convex outline, anticlockwise.</summary>
    private static PlanPoint[] Hull(PlanPoint[] points)
    {
        PlanPoint[] sorted = [.. points.OrderBy(p => p.East).ThenBy(p => p.North)];
        return [.. Half(sorted), .. Half([.. sorted.Reverse()])];

        static IEnumerable<PlanPoint> Half(PlanPoint[] inOrder)
        {
            var chain = new List<PlanPoint>();
            foreach (var p in inOrder)
            {
                while (chain.Count > 1 && (chain[^1] - chain[^2]).Cross(p - chain[^1]) <= 0)
                {
                    chain.RemoveAt(chain.Count - 1);
                }

                chain.Add(p);
            }

            return chain.SkipLast(1);
        }
    }
}
