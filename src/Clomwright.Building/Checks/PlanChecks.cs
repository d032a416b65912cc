using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>The inside face in plan.</summary>
internal static class PlanChecks
{
    private const int PointsLeast = 4;

    public static void Of(Plan plan, Checks checks)
    {
        checks.Bearing("plan.bearing", plan.Bearing);
        checks.Bearing("plan.zeroBearing", plan.ZeroBearing);
        if (plan.Centre is { } centre)
        {
            Position("plan.centre", centre, checks);
        }

        switch (plan)
        {
            case Plan.Round(var diameter):
                checks.Size("plan.insideDiameter", diameter, Limits.Plan);
                break;
            case Plan.Oval(var length, var width):
                Sides(length, width, checks);
                break;
            case Plan.RoundedRectangle(var length, var width, var radius):
                if (Sides(length, width, checks) && checks.Size("plan.cornerRadius", radius, Limits.Plan) && 2 * radius > width)
                {
                    checks.Error("plan.cornerRadius", "building.corner-radius", ("radius", new Argument.Exact(radius)), ("width", new Argument.Exact(width)));
                }

                break;
            case Plan.Path(var points):
                Points(points, checks);
                break;
        }
    }

    private static bool Sides(Length length, Length width, Checks checks)
    {
        var sizes = checks.Size("plan.insideLength", length, Limits.Plan) & checks.Size("plan.insideWidth", width, Limits.Plan);
        if (sizes && width > length)
        {
            checks.Error("plan.insideWidth", "building.width-over-length", ("width", new Argument.Exact(width)), ("length", new Argument.Exact(length)));
            return false;
        }

        return sizes;
    }

    private static void Points(Sequence<PlanPosition> points, Checks checks)
    {
        checks.Count("plan.points", points.Count, PointsLeast, Limits.Items);
        for (var i = 0; i < points.Count; i++)
        {
            Position($"plan.points[{i}]", points[i], checks);
            if (points.Count > 1 && points[i] == points[(i + 1) % points.Count])
            {
                checks.Error($"plan.points[{i}]", "building.points-equal", ("next", (i + 1) % points.Count));
            }
        }
    }

    private static void Position(string path, PlanPosition position, Checks checks)
    {
        foreach (var part in (ReadOnlySpan<Length>)[position.East, position.North])
        {
            if (!checks.NotBelow(path, part, -4 * Limits.Plan) || !checks.NotAbove(path, part, 4 * Limits.Plan))
            {
                return;
            }
        }
    }
}
