namespace Clomwright.Geometry.Curves;

/// <summary>Whether a closed polyline crosses itself.</summary>
internal static class Crossings
{
    /// <summary>The first place found where two sides that are not neighbours cross, or null.</summary>
    /// <remarks>Sides are sorted by their western ends, so that only sides whose east-west stretches overlap are compared.</remarks>
    public static PlanPoint? First(ReadOnlySpan<PlanPoint> corners)
    {
        var n = corners.Length;
        var order = new int[n];
        var west = new double[n];
        for (var i = 0; i < n; i++)
        {
            order[i] = i;
            west[i] = Math.Min(corners[i].East, corners[(i + 1) % n].East);
        }

        Array.Sort(west, order);
        for (var i = 0; i < n; i++)
        {
            var a = order[i];
            var east = Math.Max(corners[a].East, corners[(a + 1) % n].East);
            for (var j = i + 1; j < n && west[j] <= east; j++)
            {
                var b = order[j];
                var apart = Math.Abs(a - b);
                if (apart > 1 && apart < n - 1 && Meet(corners[a], corners[(a + 1) % n], corners[b], corners[(b + 1) % n]) is { } place)
                {
                    return place;
                }
            }
        }

        return null;
    }

    private static PlanPoint? Meet(PlanPoint a, PlanPoint b, PlanPoint c, PlanPoint d)
    {
        var (ab, cd) = (b - a, d - c);
        var c1 = ab.Cross(c - a);
        var c2 = ab.Cross(d - a);
        var c3 = cd.Cross(a - c);
        var c4 = cd.Cross(b - c);
        return c1 < 0 != c2 < 0 && c3 < 0 != c4 < 0 ? a + c3 / (c3 - c4) * ab : null;
    }
}
