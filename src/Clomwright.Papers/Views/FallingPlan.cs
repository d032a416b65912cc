using Clomwright.Analysis.Collapse;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Views;

/// <summary>The wall top seen from above as the wall falls: where it stood in thin lines, its uppermost blocks moved, an arrow the way that it is pushed. North is up.</summary>
internal static class FallingPlan
{
    /// <summary>How far the fastest block is moved on paper, mm.</summary>
    private const double Reach = 9;

    private const int Round = 120;

    /// <param name="geometry">The house.</param>
    /// <param name="blocks">How every block moves.</param>
    /// <param name="bearing">Towards which it is pushed, radians clockwise from north.</param>
    /// <param name="width">Of the picture, mm.</param>
    public static (IReadOnlyList<Mark> Marks, PaperBox View) Of(HouseGeometry geometry, IReadOnlyList<MovingBlock> blocks, double bearing, double width)
    {
        var (curve, top) = (geometry.Curve, geometry.Wall.Top.Metres);
        var (inside, outside) = (Ring(curve, geometry.Wall.InsideOffset(top)), Ring(curve, geometry.Wall.OutsideOffset(top)));
        var extent = PaperBox.Around(outside.Select(p => new PaperPoint(p.East, -p.North)));
        var scale = (width - 2 * Reach - 2) / extent.Width;
        PaperPoint At(PlanPoint p) => new(scale * p.East, -scale * p.North);
        var board = new Board();
        board.Add(new Stroke(Outline.Polygon(inside.Select(At)), new Pen(Weight.Thin, Dash.Dashed)));
        board.Add(new Stroke(Outline.Polygon(outside.Select(At)), new Pen(Weight.Thin, Dash.Dashed)));
        foreach (var block in blocks.Where(b => !b.Block.IsBeam && b.Block.Top > top - 1e-6))
        {
            // The top corners: begin inside, begin outside, end outside, end inside.
            var outline = Outline.Polygon(((int[])[4, 5, 7, 6]).Select(n => block.Corners[n]).Select(c => At(curve.At(c.Station, c.Offset)) + new PaperPoint(Reach * c.East, -Reach * c.North)));
            board.Add(new Fill(outline, Tone.Paper));
            if (FallingStrip.Sample(outline, block.Outward) is { } hatch)
            {
                board.Add(hatch);
            }

            board.Add(new Stroke(outline, new Pen(Weight.Medium)));
        }

        var (middle, way) = (At(curve.Centre), new PaperPoint(Math.Sin(bearing), -Math.Cos(bearing)));
        var half = Math.Min(14, 0.2 * scale * Math.Min(extent.Width, extent.Height));
        board.Add(new Arrow(middle + -half * way, middle + half * way, new Pen(Weight.Heavy), 3.4));
        var view = PaperBox.Around(outside.Select(At)).Inset(-Reach - 1);
        return (board.Marks, view);
    }

    private static PlanPoint[] Ring(PlanCurve curve, double offset) => [.. Enumerable.Range(0, Round).Select(i => curve.At(curve.Length * i / Round, offset))];
}
