using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Views;

/// <summary>Ground, stem, cob and bond beam of the unrolled wall.</summary>
internal static class StripBody
{
    private const double CourseHeight = 0.12;
    private const double StoneLength = 0.34;

    /// <summary>Height where the ground or floor meets the stem on the face seen, m.</summary>
    public static double Ground(WallStrip strip) =>
        strip.Face == Building.Face.Outside ? strip.Geometry.House.Site.Grade?.Metres ?? 0 : 0;

    /// <summary>The lowest height drawn, m.</summary>
    public static double Lowest(WallStrip strip) => Math.Min(Ground(strip), 0) - 0.05;

    /// <summary>The highest height drawn, m.</summary>
    public static double Highest(WallStrip strip) => strip.Geometry.Wall.Top.Metres + (strip.Geometry.House.BondBeam?.Depth.Metres ?? 0);

    public static void Draw(Board board, WallStrip strip)
    {
        var wall = strip.Geometry.Wall;
        var all = new Span(strip.From, strip.To);
        Stem(board, strip, all);
        var lines = new Board();
        foreach (var lift in strip.Geometry.Lifts.SkipLast(1))
        {
            var y = strip.Y(lift.Top.Metres);
            lines.Add(new Group(Ids.Lift(lift.Number), [new Stroke(Outline.Line(strip.Corner.X, y, strip.Right, y), new Pen(Weight.Thin, Dash.Dashed))]));
        }

        board.Add(new Group("lift-lines", lines.Marks));
        if (strip.Geometry.House.BondBeam is { } beam)
        {
            board.Add(new Group("bond-beam", [new Stroke(Outline.Rectangle(strip.Box(all, wall.Top.Metres, wall.Top.Metres + beam.Depth.Metres)), new Pen(Weight.Medium))]));
        }

        board.Add(new Group("wall", [new Stroke(Outline.Rectangle(strip.Box(all, wall.Base.Metres, wall.Top.Metres)), new Pen(Weight.Heavy))]));
        var ground = strip.Y(Ground(strip));
        board.Line(strip.Corner.X - 2, ground, strip.Right + 2, ground, Weight.Bold);
        if (Ground(strip) < 0)
        {
            board.Line(strip.Corner.X - 2, strip.Y(0), strip.Right + 2, strip.Y(0), Weight.Thin, Dash.Chain);
        }
    }

    /// <summary>Coursed stone, drawn as wide as stones are.</summary>
    private static void Stem(Board board, WallStrip strip, Span all)
    {
        var (bottom, top) = (Ground(strip), strip.Geometry.Wall.Base.Metres);
        if (top - bottom < 0.01)
        {
            return;
        }

        var courses = Math.Max(1, (int)Math.Round((top - bottom) / CourseHeight));
        var course = (top - bottom) / courses;
        List<Outline> joints = [];
        for (var c = 0; c < courses; c++)
        {
            var (low, high) = (bottom + c * course, bottom + (c + 1) * course);
            if (c > 0)
            {
                joints.Add(Outline.Line(strip.At(strip.From, low), strip.At(strip.To, low)));
            }

            var shift = c % 2 == 0 ? 0.5 : 0.13;
            for (var n = Math.Floor(strip.From / StoneLength); n * StoneLength < strip.To; n++)
            {
                // Neighbouring stones differ in length, always in the same way, so that the same house gives the same drawing.
                var arc = (n + shift + 0.17 * Math.Sin(2.4 * n + 1.7 * c)) * StoneLength;
                if (arc > strip.From + 0.02 && arc < strip.To - 0.02)
                {
                    joints.Add(Outline.Line(strip.At(arc, low), strip.At(arc, high)));
                }
            }
        }

        board.Add(new Group("stem",
        [
            new Stroke(Outline.Of(joints), new Pen(Weight.Hair)),
            new Stroke(Outline.Rectangle(strip.Box(all, bottom, top)), new Pen(Weight.Medium)),
        ]));
    }
}
