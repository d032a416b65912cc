using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Views;

/// <summary>Trench, stem, drain and what goes through the stem, from above. North is up.</summary>
internal static class FoundationPlan
{
    private const int Steps = 160;

    /// <summary>Draws it, the drawing origin at the origin of the plan.</summary>
    public static (Board Board, PaperBox View) Of(HouseGeometry geometry, double paperPerMetre, Func<Message, string> say)
    {
        var pen = new PlanPen(geometry, paperPerMetre);
        var board = new Board();
        var (inside, outside) = geometry.Stem;
        if (geometry.House.Trench is { } trench)
        {
            var (middle, half) = ((inside + outside) / 2, trench.Width.Metres / 2);
            board.Add(new Group("trench", [Ring(middle - half, Weight.Medium, Dash.Dashed), Ring(middle + half, Weight.Medium, Dash.Dashed), Ring(middle, Weight.Hair, Dash.Chain)]));
            Drain(board, pen, trench, middle);
        }

        var area = Outline.Of(Polygon(inside), Polygon(outside));
        board.Add(new Group("stem", [new Hatch(area, -45, 1.6, new Pen(Weight.Hair)), Ring(inside, Weight.Heavy, Dash.Solid), Ring(outside, Weight.Heavy, Dash.Solid)]));
        board.Add(new Group("wall-lines", [Ring(0, Weight.Thin, Dash.Dotted), Ring(pen.Outside, Weight.Thin, Dash.Dotted)]));
        var through = geometry.Embeds.Where(e => e.Embed.Kind is EmbedKind.Sleeve or EmbedKind.Pipe && e.Height < geometry.Wall.Base.Metres).OrderBy(e => e.Station).ToArray();
        for (var i = 0; i < through.Length; i++)
        {
            var (a, b) = (pen.At(geometry.Curve.At(through[i].Station, inside)), pen.At(geometry.Curve.At(through[i].Station, outside)));
            var out1 = pen.At(geometry.Curve.At(through[i].Station, outside) + 5 / paperPerMetre * geometry.Curve.Normal(through[i].Station));
            board.Add(new Group(Ids.Embed(through[i].Address), [new Stroke(Outline.Line(a, b), new Pen(Weight.Bold)), new Stroke(Outline.Line(b, out1), new Pen(Weight.Hair)), new Fill(Outline.Circle(out1, 2.4), Tone.Paper), new Stroke(Outline.Circle(out1, 2.4), new Pen(Weight.Thin))]));
            board.Say((i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture), out1.X, out1.Y + Styles.SmallStrong.Digits / 2, Styles.SmallStrong, Anchor.Middle);
        }

        if (PostDrawing.Of(geometry) is { } post)
        {
            var box = post.FootingBox(pen);
            board.Add(post.FromAbove(pen, "post"));
            board.Say(say(post.Name), box.Centre.X, box.Bottom + 1.2 + Styles.Small.Ascent(), Styles.Small, Anchor.Middle);
            if (post.Made is { } made)
            {
                board.Say(say(Message.Of("papers.post.footing", ("side", made.Footing))), box.Centre.X, box.Bottom + 1.2 + Styles.Small.Leading + Styles.Small.Ascent(), Styles.Small, Anchor.Middle);
            }
        }

        PlanMarks.North(board, board.Marks.Bounds().Inset(-8));
        return (board, board.Marks.Bounds().Inset(-2));

        Outline Polygon(double offset) => Outline.Polygon(pen.Run(0, pen.Length, offset, Steps).SkipLast(1));
        Stroke Ring(double offset, Weight weight, Dash dash) => new(Polygon(offset), new Pen(weight, dash));
    }

    private static void Drain(Board board, PlanPen pen, Trench trench, double middle)
    {
        if (trench.Outlet is null)
        {
            return;
        }

        var curve = pen.Geometry.Curve;
        var station = trench.OutletBearing is { } bearing && curve.StationsAt(Math.IEEERemainder(bearing.Radians, 2 * Math.PI)) is [var first, ..] ? first : 0;
        var from = curve.At(station, middle);
        var run = Math.Min(trench.OutletRun?.Metres ?? 1.2, 1.6);
        board.Add(new Group("drain-outlet", [new Arrow(pen.At(from), pen.At(from + run * curve.Normal(station)), new Pen(Weight.Medium, Dash.Chain))]));
    }
}
