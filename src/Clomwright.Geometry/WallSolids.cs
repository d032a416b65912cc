using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry.Curves;

namespace Clomwright.Geometry;

/// <summary>Makes the wall's two faces, and tells where they cannot be built.</summary>
internal static class WallSolids
{
    private const double SlopeMax = 1;

    public static WallSolid Of(House house, Remarks remarks)
    {
        var wall = house.Wall;
        var stemTop = Height(house.Stem.Top, "stem.top", remarks);
        var top = Height(wall.Top, "wall.top", remarks);
        if (top <= stemTop)
        {
            remarks.Error("wall.top", Message.Of("geometry.wall-top-below-stem", ("top", wall.Top), ("stem", house.Stem.Top)));
            top = stemTop;
        }

        var thickness = wall.ThicknessAtTop;
        if (thickness.Metres is not (> 0 and <= PlanCurves.SizeMax))
        {
            remarks.Error("wall.thicknessAtTop", Message.Of("geometry.size-out-of-range", ("size", thickness), ("most", Amount.Metres(PlanCurves.SizeMax))));
            thickness = Length.FromMillimetres(300);
        }

        var solid = new WallSolid
        {
            Base = stemTop,
            Top = top,
            ThicknessAtTop = thickness,
            InsideTaper = Taper(wall.InsideTaper, "wall.insideTaper", remarks),
            OutsideTaper = Taper(wall.OutsideTaper, "wall.outsideTaper", remarks),
        };
        if (solid.ThicknessAt(stemTop.Metres) > 0)
        {
            return solid;
        }

        remarks.Error("wall.thicknessAtTop", Message.Of("geometry.wall-vanishes", ("thickness", wall.ThicknessAtTop)));
        return solid with { InsideTaper = default, OutsideTaper = default };
    }

    /// <summary>Curves tighter than the wall is thick, and outside faces that run into each other.</summary>
    public static void CheckFolds(PlanCurve curve, WallSolid wall, Remarks remarks)
    {
        var outside = Math.Max(wall.OutsideOffset(wall.Base.Metres), wall.OutsideOffset(wall.Top.Metres));
        var inside = wall.InsideOffset(wall.Top.Metres);
        if (curve.ConcavityMax * outside >= 1)
        {
            remarks.Error("plan", Message.Of("geometry.hollow-tighter-than-wall", ("radius", Amount.Metres(1 / curve.ConcavityMax)), ("thickness", Amount.Metres(outside))));
        }
        else if (curve.ConcavityMax > 0 && Crossings.First(Offset(curve, outside)) is not null)
        {
            remarks.Error("plan", Message.Of("geometry.walls-run-together", ("thickness", Amount.Metres(outside))));
        }

        if (-inside * curve.ConvexityMax >= 1)
        {
            remarks.Error("wall.insideTaper", Message.Of("geometry.inside-face-folds", ("radius", Amount.Metres(1 / curve.ConvexityMax))));
        }
    }

    private static PlanPoint[] Offset(PlanCurve curve, double distance)
    {
        var points = new PlanPoint[curve.Samples.Length];
        for (var i = 0; i < points.Length; i++)
        {
            points[i] = curve.Samples[i].Offset(distance);
        }

        return points;
    }

    private static Length Height(Length height, string path, Remarks remarks)
    {
        if (Math.Abs(height.Metres) <= PlanCurves.SizeMax)
        {
            return height;
        }

        remarks.Error(path, Message.Of("geometry.too-far", ("most", Amount.Metres(PlanCurves.SizeMax))));
        return Length.Zero;
    }

    private static Slope Taper(Slope taper, string path, Remarks remarks)
    {
        if (Math.Abs(taper.RiseOverRun) <= SlopeMax)
        {
            return taper;
        }

        remarks.Error(path, Message.Of("geometry.taper-out-of-range", ("most", (Amount)new Slope(SlopeMax))));
        return default;
    }
}
