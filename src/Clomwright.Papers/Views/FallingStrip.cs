using Clomwright.Analysis.Collapse;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Outline = Clomwright.Papers.Drawing.Outline;

namespace Clomwright.Papers.Views;

/// <summary>The unrolled wall as its blocks move when it falls: each moved along and up as far as it goes, hatched one way where it falls outward and the other way where it falls inward.</summary>
internal static class FallingStrip
{
    /// <summary>How far the fastest block is moved on paper, mm.</summary>
    public const double Reach = 5;

    /// <summary>Share of the fastest block's speed from which on a block is hatched, and how close its lines are, mm.</summary>
    public static readonly (double Share, double Spacing)[] Speeds = [(0.1, 3.2), (0.4, 1.9), (0.7, 1.0)];

    private const double OutwardAngle = -50;
    private const double InwardAngle = 50;

    public static WallDrawing Band(HouseGeometry geometry, IReadOnlyList<MovingBlock> blocks, WallView view, double from, double to)
    {
        var strip = new WallStrip(geometry, view.Face, view.PaperPerMetre, from, to, default);
        var board = new Board();
        var room = StripMeasures.Room(strip, view);
        var stem = strip.Box(new Span(from, to), StripBody.Lowest(strip) + 0.05, geometry.Wall.Base.Metres);
        if (stem.Height > 0.3)
        {
            board.Rectangle(stem, Weight.Medium);
        }

        List<Mark> moved = [];
        foreach (var block in blocks.OrderBy(Moves))
        {
            foreach (var outline in strip.Laid(Moved(geometry, block, view)))
            {
                moved.Add(new Fill(outline, Tone.Paper));
                if (Sample(outline, block.Outward) is { } hatch)
                {
                    moved.Add(hatch);
                }

                moved.Add(new Stroke(outline, new Pen(Moves(block) ? Weight.Medium : Weight.Hair)));
            }
        }

        board.Add(new Group("blocks", [.. moved], Outline.Rectangle(room)));
        for (var i = 0; i < geometry.Openings.Count; i++)
        {
            foreach (var outline in strip.Laid(Unrolled.Outline(geometry, geometry.Openings[i], view.Face)))
            {
                var box = outline.Bounds;
                board.Add(new Stroke(outline, new Pen(Weight.Thin, Dash.Dashed)));
                board.Say(Ids.Letter(i), box.Centre.X, box.Centre.Y + Styles.Heading.Digits / 2, Styles.Heading, Anchor.Middle);
            }
        }

        board.Line(room.Left, strip.Y(StripBody.Lowest(strip) + 0.05), room.Right, strip.Y(StripBody.Lowest(strip) + 0.05), Weight.Bold);
        return new WallDrawing(board.Marks, room, strip);
    }

    /// <summary>Hatching of a block that moves out of the wall (above 0) or into the house at a share of the fastest speed; null where it hardly does.</summary>
    public static Hatch? Sample(Outline area, double outward) => Speeds.LastOrDefault(s => Math.Abs(outward) >= s.Share) is { Spacing: > 0 } speed
        ? new Hatch(area, outward > 0 ? OutwardAngle : InwardAngle, speed.Spacing, new Pen(Weight.Hair))
        : null;

    private static bool Moves(MovingBlock block) => Math.Sqrt(block.Outward * block.Outward + block.Along * block.Along + block.Up * block.Up) >= Speeds[0].Share;

    /// <summary>The face of a block, moved, in stations and heights; its inside and outside corners at their middle.</summary>
    private static WallPoint[] Moved(HouseGeometry geometry, MovingBlock block, WallView view)
    {
        // Corners come as begin inside, begin outside, end inside, end outside, at the bottom and then at the top.
        return [Middle(0), Middle(2), Middle(6), Middle(4)];

        WallPoint Middle(int first)
        {
            var (a, b) = (block.Corners[first], block.Corners[first + 1]);
            var tangent = geometry.Curve.Tangent(a.Station);
            var along = ((a.East + b.East) * tangent.East + (a.North + b.North) * tangent.North) / 2;
            return new WallPoint(a.Station + Reach / view.PaperPerMetre * along, a.Height + Reach / view.PaperPerMetre * (a.Up + b.Up) / 2);
        }
    }
}
