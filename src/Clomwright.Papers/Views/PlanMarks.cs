using System.Globalization;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Views;

/// <summary>What is marked on the ground: pegs, the zero mark, numbered marks, the axes with their lengths, and north.</summary>
internal static class PlanMarks
{
    public static void Draw(Board board, PlanPen pen, PlanView view, SettingOut settingOut)
    {
        var curve = pen.Geometry.Curve;
        var centre = pen.At(settingOut.Centre);
        var (a, b) = (pen.At(settingOut.PegA), pen.At(settingOut.PegB));
        var frame = PaperBox.Around(a, b).With(board.Marks.Bounds()).Inset(-9);
        var taken = new Taken(frame);
        // Before the axes, whose lengths stand on clear paper.
        Zero(board, pen, centre, taken);
        var post = PostDrawing.Of(pen.Geometry);
        if (post is not null)
        {
            taken.Keep(post.FootingBox(pen).Inset(-0.5));
        }

        Axes(board, pen, view, taken);
        var outward = 1 / Math.Max((b - a).Norm, 1e-9) * (b - a);
        Peg(board, centre, "", default, taken);
        Peg(board, a, "X", -1.0 * outward, taken);
        Peg(board, b, "Y", outward, taken);
        board.Add(new Stroke(Outline.Line(a, b), new Pen(Weight.Thin, Dash.Chain)));
        taken.Keep(Outline.Line(a, b).Bounds.Inset(-0.5));
        North(board, frame, taken);
        foreach (var mark in settingOut.Marks)
        {
            taken.Keep(Outline.Circle(pen.At(mark.Point), 0.8).Bounds);
        }

        if (post is not null && taken.Place(Beside(post.FootingBox(pen), view.Book.Say(post.Name, view.Units))) is { } name)
        {
            board.Add(name);
        }

        for (var i = 0; i < settingOut.Marks.Count; i++)
        {
            var mark = settingOut.Marks[i];
            var at = pen.At(mark.Point);
            var inward = -1.0 * new PaperPoint(curve.Normal(mark.Station).East, -curve.Normal(mark.Station).North);
            board.Add(new Stroke(Outline.Line(at + 0.9 * inward, at - 0.9 * inward), new Pen(Weight.Medium)));
            var number = (i + 1).ToString(CultureInfo.InvariantCulture);
            var half = new PaperPoint(0, Styles.Small.Digits / 2);
            var along = new PaperPoint(-inward.Y, inward.X);
            var ways = Enumerable.Range(0, 8).SelectMany(n => ((double[])[0, 2.2, -2.2]).Select(aside => new Text(number, at + (2.6 + 1.2 * n) * inward + aside * along + half, Styles.Small, Anchor.Middle)));
            if (taken.Place(ways) is { } label)
            {
                // 5 and 4 beside each other would read 54.
                taken.Keep(label.Bounds.Inset(-0.7));
                board.Add(label);
            }
        }
    }

    /// <summary>Ways to name what stands in a box: under and over it, then at its sides.</summary>
    private static IEnumerable<Text> Beside(PaperBox box, string words)
    {
        var (right, half) = (Styles.SmallStrong.WidthOf(words) / 2 + 1.2, box.Width / 2);
        foreach (var aside in (double[])[half + right, -half - right, right, -right])
        {
            yield return new Text(words, new(box.Centre.X + aside, box.Bottom + 1.2 + Styles.SmallStrong.Ascent()), Styles.SmallStrong, Anchor.Middle);
            yield return new Text(words, new(box.Centre.X + aside, box.Top - 1.2 - Styles.SmallStrong.Descent()), Styles.SmallStrong, Anchor.Middle);
        }
    }

    private static void Peg(Board board, PaperPoint at, string name, PaperPoint away, Taken taken)
    {
        board.Add(new Stroke(Outline.Of(Outline.Line(at.X - 2, at.Y, at.X + 2, at.Y), Outline.Line(at.X, at.Y - 2, at.X, at.Y + 2)), new Pen(Weight.Medium)));
        board.Add(new Stroke(Outline.Circle(at, 1.2), new Pen(Weight.Thin)));
        taken.Keep(PaperBox.At(at.X - 2.2, at.Y - 2.2, 4.4, 4.4));
        if (name.Length > 0)
        {
            var label = new Text(name, at + 4.6 * away + new PaperPoint(0, Styles.Heading.Digits / 2), Styles.Heading, Anchor.Middle);
            board.Add(label);
            taken.Keep(label.Bounds);
        }
    }

    private static void Zero(Board board, PlanPen pen, PaperPoint centre, Taken taken)
    {
        var curve = pen.Geometry.Curve;
        var inside = pen.At(curve.At(0));
        var tip = pen.At(curve.At(0, pen.Outside + 2.2 / pen.PaperPerMetre));
        var back = pen.At(curve.At(0, pen.Outside + 5.4 / pen.PaperPerMetre));
        var along = new PaperPoint(curve.Tangent(0).East, -curve.Tangent(0).North);
        board.Add(new Group("plan-zero-mark",
        [
            new Stroke(Outline.Line(centre, inside), new Pen(Weight.Hair, Dash.Chain)),
            new Stroke(Outline.Line(inside, tip), new Pen(Weight.Medium)),
            new Fill(Outline.Polygon(tip, back + 1.5 * along, back - 1.5 * along)),
            new Text("0", pen.At(curve.At(0, pen.Outside + 8.2 / pen.PaperPerMetre)) + new PaperPoint(0, Styles.Heading.Digits / 2), Styles.Heading, Anchor.Middle),
        ]));
        taken.Keep(Outline.Circle(inside, 1.2).Bounds);
    }

    /// <summary>An arrow whose tail is a plumb bob: north is where it points. In the first corner of the frame with room for it, from the upper right on.</summary>
    public static void North(Board board, PaperBox frame, Taken? taken = null)
    {
        const double over = 6, tall = 18.2, aside = 4;
        PaperPoint[] corners =
        [
            new(frame.Right - aside, frame.Top + over), new(frame.Left + aside, frame.Top + over), new(frame.Right - aside, frame.Bottom - tall), new(frame.Left + aside, frame.Bottom - tall),
        ];
        PaperBox Room(PaperPoint tip) => new(tip.X - 2, tip.Y - over + 0.5, tip.X + 2, tip.Y + tall);
        var tip = taken is null ? corners[0] : corners.FirstOrDefault(c => taken.Free(Room(c)), corners[0]);
        board.Add(new Group("north",
        [
            new Arrow(new PaperPoint(tip.X, tip.Y + 15), tip, new Pen(Weight.Medium), 3.4),
            new Stroke(Outline.Circle(new PaperPoint(tip.X, tip.Y + 16.6), 1.6), new Pen(Weight.Medium)),
            new Text("N", new PaperPoint(tip.X, tip.Y - 1.4), Styles.Heading, Anchor.Middle),
        ]));
        taken?.Keep(Room(tip));
    }

    /// <summary>The inside lengths of the two axes, through the centre; a free path has none.</summary>
    private static void Axes(Board board, PlanPen pen, PlanView view, Taken taken)
    {
        if (pen.Geometry.Diagnostics.Any(d => d.Severity == Severity.Error && d.Path.StartsWith("plan", StringComparison.Ordinal)))
        {
            return;
        }

        var plan = pen.Geometry.House.Plan;
        Length? along = plan switch { Plan.Round r => r.InsideDiameter, Plan.Oval o => o.InsideLength, Plan.RoundedRectangle q => q.InsideLength, _ => null };
        Length? across = plan switch { Plan.Oval o => o.InsideWidth, Plan.RoundedRectangle q => q.InsideWidth, _ => null };
        Axis(along, plan.Bearing.Radians, "inside length", 0.27);
        Axis(across, plan.Bearing.Radians + Math.PI / 2, "inside width", 0.3);

        void Axis(Length? length, double bearing, string of, double labelAt)
        {
            if (length is not { } l)
            {
                return;
            }

            var (sin, cos) = Math.SinCos(bearing);
            var half = l.Metres / 2 * new PlanPoint(sin, cos);
            var middle = AxisMiddle(pen);
            var (from, to) = (pen.At(middle - half), pen.At(middle + half));
            if (from.X > to.X + 1e-6)
            {
                (from, to) = (to, from);
            }

            var other = view.Units == UnitSystem.Imperial ? UnitSystem.Metric : UnitSystem.Imperial;
            var (one, two) = (view.Book.Tape(l, view.Units), view.Book.Tape(l, other));
            var first = taken.Place(new[] { labelAt, 0.2, 0.36, 0.73, 0.8, 0.64 }.Select(share => new Text(one, from + share * (to - from) + new PaperPoint(0, -0.5), Styles.BodyStrong, Anchor.Middle)));
            if (first is null)
            {
                return;
            }

            var second = new Text(two, first.At + new PaperPoint(0, 1.3 + Styles.Small.Digits), Styles.Small, Anchor.Middle);
            taken.Keep(second.Bounds);
            for (var n = 0; n <= 60; n++)
            {
                var on = from + n / 60.0 * (to - from);
                taken.Keep(PaperBox.At(on.X - 0.5, on.Y - 0.5, 1, 1));
            }

            board.Add(new DimensionLine(of, from, to, first) { Second = second, Masked = true });
        }
    }

    /// <summary>Middle of the shapes that have axes: the mean of the points where the ring turns by halves is their centre of symmetry.</summary>
    private static PlanPoint AxisMiddle(PlanPen pen)
    {
        var curve = pen.Geometry.Curve;
        return 0.5 * (curve.At(0) + curve.At(curve.Length / 2));
    }
}
