namespace Clomwright.Geometry;

/// <summary>One side of a stove. Distances in m.</summary>
/// <param name="Key"><c>front</c>, <c>right</c>, <c>back</c>, <c>left</c>; right and left as seen by the stove looking out of its door.</param>
/// <param name="Clear">Clearance to what burns, as typed; null when it is not known.</param>
/// <param name="ToWall">From the side to the inside face of the wall at its base, the shortest over the stove's width square to that side; infinite where nothing stands before it.</param>
public sealed record StoveSide(string Key, double? Clear, double ToWall);

/// <summary>A stove in its place, seen from above.</summary>
/// <param name="Body">Its corners: front right, back right, back left, front left.</param>
/// <param name="Zone">The same corners moved out by the clearances; a side without one stays where it is.</param>
/// <param name="Sides">Front, right, back and left.</param>
public sealed record StovePlace(Evidence.Sequence<PlanPoint> Body, Evidence.Sequence<PlanPoint> Zone, Evidence.Sequence<StoveSide> Sides)
{
    /// <summary>Points of the inside face that the distance to it is looked for among; a step of a small house is under 1 cm.</summary>
    private const int Points = 2400;

    /// <summary>The stove of a house; null where it has none.</summary>
    public static StovePlace? Of(HouseGeometry geometry)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        if (geometry.House.Stove is not { } stove)
        {
            return null;
        }

        var (east, north) = Math.SinCos(stove.Bearing.Radians);
        var middle = geometry.Curve.Centre + stove.Distance.Metres * new PlanPoint(east, north);
        var (sin, cos) = Math.SinCos(stove.Facing.Radians);
        var (front, right) = (new PlanPoint(sin, cos), new PlanPoint(cos, -sin));
        var (across, deep) = (stove.Width.Metres / 2, stove.Depth.Metres / 2);
        var wall = Enumerable.Range(0, Points).Select(i => geometry.Curve.At(i * geometry.Curve.Length / Points) - middle).ToArray();
        StoveSide[] sides =
        [
            Side("front", stove.ClearFront?.Metres, front, deep, across), Side("right", stove.ClearSide?.Metres, right, across, deep),
            Side("back", stove.ClearBack?.Metres, -1 * front, deep, across), Side("left", stove.ClearSide?.Metres, -1 * right, across, deep),
        ];
        double[] clear = [.. sides.Select(s => s.Clear ?? 0)];
        Evidence.Sequence<PlanPoint> Corners(double ahead, double toRight, double behind, double toLeft) =>
        [
            middle + (deep + ahead) * front + (across + toRight) * right, middle - (deep + behind) * front + (across + toRight) * right,
            middle - (deep + behind) * front - (across + toLeft) * right, middle + (deep + ahead) * front - (across + toLeft) * right,
        ];
        return new StovePlace(Corners(0, 0, 0, 0), Corners(clear[0], clear[1], clear[2], clear[3]), [.. sides]);

        StoveSide Side(string key, double? given, PlanPoint outward, double half, double wide)
        {
            var along = new PlanPoint(-outward.North, outward.East);
            return new StoveSide(key, given, Ahead(wall, outward, along, wide) - half);
        }
    }

    /// <summary>Least distance ahead of the middle to a closed line of points, over a width to either side; where the line crosses the edge of that width it is taken straight between two points.</summary>
    private static double Ahead(PlanPoint[] wall, PlanPoint outward, PlanPoint along, double wide)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i < wall.Length; i++)
        {
            var (p, q) = (wall[i], wall[(i + 1) % wall.Length]);
            var (a, b) = (p.Dot(along), q.Dot(along));
            if (Math.Abs(a) <= wide && p.Dot(outward) > 0)
            {
                least = Math.Min(least, p.Dot(outward));
            }

            foreach (var edge in (double[])[-wide, wide])
            {
                if (a < edge != b < edge)
                {
                    var at = p.Dot(outward) + (edge - a) / (b - a) * (q - p).Dot(outward);
                    least = at > 0 ? Math.Min(least, at) : least;
                }
            }
        }

        return least;
    }
}
