using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Geometry;

/// <summary>Divides the wall's height into lifts, exactly: the heights always add up to the wall.</summary>
internal static class LiftHeights
{
    private const int CountMax = 200;

    /// <summary>Boundaries from the stem's top to the wall top, ascending; fewer than two when the wall has no height.</summary>
    public static Length[] Of(LiftPlan plan, WallSolid wall, Remarks remarks)
    {
        if (wall.Top <= wall.Base)
        {
            return [wall.Base];
        }

        if (plan.Tops.Count > 0)
        {
            return ByTops(plan.Tops, wall, remarks);
        }

        if (plan.Height is { } height)
        {
            return ByHeight(height, wall, remarks);
        }

        remarks.Error("lifts", new Message("geometry.lifts-missing"));
        return [wall.Base, wall.Top];
    }

    private static Length[] ByHeight(Length height, WallSolid wall, Remarks remarks)
    {
        var rise = wall.Top - wall.Base;
        if (height.Nanometres <= 0)
        {
            remarks.Error("lifts.height", Message.Of("geometry.lift-height-not-positive", ("height", height)));
            return [wall.Base, wall.Top];
        }

        var count = rise.Nanometres / height.Nanometres + (rise.Nanometres % height.Nanometres == 0 ? 0 : 1);
        if (count > CountMax)
        {
            remarks.Error("lifts.height", Message.Of("geometry.lifts-too-many", ("height", height), ("most", CountMax)));
            return [wall.Base, wall.Top];
        }

        var heights = new Length[count + 1];
        for (var i = 0; i < count; i++)
        {
            heights[i] = wall.Base + height * i;
        }

        heights[count] = wall.Top;
        return heights;
    }

    private static Length[] ByTops(Sequence<Length> tops, WallSolid wall, Remarks remarks)
    {
        var heights = new List<Length> { wall.Base };
        for (var i = 0; i < tops.Count; i++)
        {
            if (tops[i] <= heights[^1])
            {
                remarks.Error($"lifts.tops[{i}]", Message.Of("geometry.lift-top-not-above", ("top", tops[i]), ("below", heights[^1])));
            }
            else if (tops[i] > wall.Top)
            {
                remarks.Error($"lifts.tops[{i}]", Message.Of("geometry.lift-top-above-wall", ("top", tops[i]), ("wall", wall.Top)));
            }
            else if (heights.Count <= CountMax)
            {
                heights.Add(tops[i]);
            }
        }

        if (heights[^1] < wall.Top)
        {
            remarks.Error("lifts.tops", Message.Of("geometry.lift-tops-end-below-wall", ("last", heights[^1]), ("wall", wall.Top)));
            heights.Add(wall.Top);
        }

        return [.. heights];
    }
}
