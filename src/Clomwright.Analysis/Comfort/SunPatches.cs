using Clomwright.Analysis.Weather;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Comfort;

/// <summary>The sun of one moment in the room, from one opening.</summary>
/// <param name="Opening">Its name.</param>
/// <param name="Floor">Outline on the finished floor, m in plan; empty where none falls there.</param>
/// <param name="Wall">Outline on the inside of the wall, unrolled; empty where none falls there.</param>
/// <param name="FloorArea">m2.</param>
/// <param name="Lit">Share of the glass that the sun reaches.</param>
public sealed record SunPatch(string Opening, Sequence<PlanPoint> Floor, Sequence<WallPoint> Wall, double FloorArea, double Lit);

/// <summary>Follows rays from the glass to the floor, or to the wall where they meet it first.</summary>
internal static class SunPatches
{
    /// <summary>The patch of an opening; null where no sun comes in.</summary>
    public static SunPatch? Of(HouseGeometry geometry, string name, OpeningSun opening, SunPlace sun)
    {
        var stripes = opening.Stripes(sun).ToArray();
        if (stripes.Length == 0)
        {
            return null;
        }

        // Horizontally away from the sun.
        var way = new PlanPoint(-Math.Sin(sun.Azimuth), -Math.Cos(sun.Azimuth));
        var fall = Math.Tan(sun.Elevation);
        var (near, far, low, high) = (new List<PlanPoint>(), new List<PlanPoint>(), new List<WallPoint>(), new List<WallPoint>());
        var area = 0.0;
        foreach (var (u, width, from, to) in stripes)
        {
            // A stripe is drawn by its two edges, so that neighbours meet.
            foreach (var edge in new[] { u - width / 2, u + width / 2 })
            {
                var start = opening.Shaft.Plan(edge, opening.Shaft.Glass);
                if (Wall(geometry.Curve, start, way) is not { } hit)
                {
                    continue;
                }

                var drop = hit.Distance * fall;
                if (from < drop)
                {
                    near.Add(start + from / fall * way);
                    far.Add(start + Math.Min(to, drop) / fall * way);
                }

                if (to > drop)
                {
                    low.Add(new WallPoint(hit.Station, Math.Max(0, from - drop)));
                    high.Add(new WallPoint(hit.Station, to - drop));
                }
            }

            if (Wall(geometry.Curve, opening.Shaft.Plan(u, opening.Shaft.Glass), way) is { } middle)
            {
                // A stripe of glass lies on the floor as wide as it is across the ray, and as long as its height over the fall.
                var across = Math.Abs(Math.Cos(sun.Azimuth - opening.Shaft.Facing)) * width;
                area += across * Math.Max(0, Math.Min(to, middle.Distance * fall) - from) / fall;
            }
        }

        return new(name, Ring(near, far), Ring(Unwrapped(low, geometry.Curve.Length), Unwrapped(high, geometry.Curve.Length)), area, opening.Lit(sun));
    }

    private static Sequence<T> Ring<T>(List<T> first, List<T> second) => first.Count < 2 ? [] : [.. first, .. second.AsEnumerable().Reverse()];

    /// <summary>Stations that do not jump where the patch crosses the zero mark.</summary>
    private static List<WallPoint> Unwrapped(List<WallPoint> points, double ring)
    {
        for (var i = 1; i < points.Count; i++)
        {
            var step = points[i].Along - points[i - 1].Along;
            points[i] = points[i] with { Along = points[i].Along - ring * Math.Round(step / ring) };
        }

        return points;
    }

    /// <summary>Where a level ray from outside the room leaves it again: the farthest crossing of the inside curve.</summary>
    private static (double Distance, double Station)? Wall(PlanCurve curve, PlanPoint start, PlanPoint way)
    {
        const int pieces = 240;
        (double, double)? best = null;
        var entered = 0;
        var before = curve.At(0) - start;
        var crossings = new List<(double Distance, double Station)>();
        for (var i = 1; i <= pieces; i++)
        {
            var after = curve.At(curve.Length * (i % pieces) / pieces) - start;
            var (a, b) = (way.Cross(before), way.Cross(after));
            if (a < 0 != b < 0)
            {
                var share = a / (a - b);
                var point = before + share * (after - before);
                if (point.Dot(way) is > 0 and var distance)
                {
                    crossings.Add((distance, curve.Length * (i - 1 + share) / pieces));
                }
            }

            before = after;
        }

        // In through the opening's mouth, then the next crossing is the wall that it meets.
        foreach (var crossing in crossings.OrderBy(c => c.Distance))
        {
            if (++entered == 2)
            {
                best = crossing;
                break;
            }
        }

        return best;
    }
}
