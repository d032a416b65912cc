using System.Globalization;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Views;

/// <summary>How a plan is drawn.</summary>
/// <param name="PaperPerMetre">Scale, mm on paper for each metre.</param>
public sealed record PlanView(double PaperPerMetre)
{
    /// <summary>Which units come first.</summary>
    public UnitSystem Units { get; init; } = UnitSystem.Imperial;

    /// <summary>The language of its numbers.</summary>
    public Phrasebook Book { get; init; } = Phrasebook.English;

    /// <summary>Pegs, marks and the lengths of the axes, for setting out; null for a key beside the unrolled wall.</summary>
    public SettingOut? SettingOut { get; init; }
}

/// <summary>The house seen from above, cut at the wall base. North is up.</summary>
public static class PlanDrawing
{
    private const int Steps = 120;

    /// <summary>Draws the plan, the drawing origin at the corner of the paper.</summary>
    public static (Sequence<Mark> Marks, PaperBox View) Of(HouseGeometry geometry, PlanView view)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        ArgumentNullException.ThrowIfNull(view);
        var pen = new PlanPen(geometry, view.PaperPerMetre);
        var board = new Board();
        Eave(board, pen);
        Stem(board, pen);
        Cob(board, pen);
        Openings(board, pen);
        Niches(board, pen);
        Landings(board, pen);
        if (PostDrawing.Of(geometry) is { } post)
        {
            board.Add(post.FromAbove(pen, "plan-post"));
        }

        if (view.SettingOut is { } settingOut)
        {
            PlanMarks.Draw(board, pen, view, settingOut);
        }

        var extra = view.SettingOut is null ? 2 : 5;
        return (board.Marks, board.Marks.Bounds().Inset(-extra));
    }

    private static void Cob(Board board, PlanPen pen)
    {
        var openings = pen.Geometry.Openings;
        List<Outline> pieces = [];
        if (openings.Count == 0)
        {
            pieces.Add(Outline.Of(
                Outline.Polygon(pen.Run(0, pen.Length, 0, Steps).SkipLast(1)),
                Outline.Polygon(pen.Run(0, pen.Length, pen.Outside, Steps).SkipLast(1))));
        }

        for (var i = 0; i < openings.Count; i++)
        {
            var (a, b) = (openings[i], openings[(i + 1) % openings.Count]);
            pieces.Add(Outline.Polygon(
                pen.Run(a.Inside.To, Later(a.Inside.To, b.Inside.From, pen.Length), 0, Steps)
                    .Concat(pen.Run(a.Outside.To, Later(a.Outside.To, b.Outside.From, pen.Length), pen.Outside, Steps).Reverse())));
        }

        board.Add(new Group("cob",
        [
            .. pieces.Select(p => new Hatch(p, 45, 1.7, new Pen(Weight.Hair))),
            .. pieces.Select(p => new Stroke(p, new Pen(Weight.Heavy))),
        ]));
    }

    private static double Later(double from, double to, double length)
    {
        while (to <= from)
        {
            to += length;
        }

        return to;
    }

    private static void Openings(Board board, PlanPen pen)
    {
        for (var i = 0; i < pen.Geometry.Openings.Count; i++)
        {
            var place = pen.Geometry.Openings[i];
            var inner = new Board();
            foreach (var (from, to, offset) in (ReadOnlySpan<(double, double, double)>)[(place.Inside.From, place.Inside.To, 0), (place.Outside.From, place.Outside.To, pen.Outside)])
            {
                inner.Add(new Stroke(Outline.Through(pen.Run(from, to, offset, 24)), new Pen(Weight.Hair)));
            }

            if (place.Opening.Kind != OpeningKind.Door)
            {
                var (a, b) = (place.Middle + pen.Outside / 2 * place.Normal, place.Opening.Width.Metres / 2);
                var along = new PlanPoint(place.Normal.North, -place.Normal.East);
                inner.Add(new Stroke(Outline.Line(pen.At(a + b * along), pen.At(a - b * along)), new Pen(Weight.Medium)));
            }

            var letter = Ids.Letter(i);
            var centre = pen.At(place.Middle + (pen.Outside + 4.6 / pen.PaperPerMetre) * place.Normal);
            inner.Add(new Fill(Outline.Circle(centre, 2.7), Tone.Paper));
            inner.Add(new Stroke(Outline.Circle(centre, 2.7), new Pen(Weight.Thin)));
            inner.Say(letter, centre.X, centre.Y + Styles.Heading.Digits / 2, letter.Length > 1 ? Styles.BodyStrong : Styles.Heading, Anchor.Middle);
            board.Add(new Group("plan-" + Ids.Opening(place.Opening.Name), inner.Marks));
        }
    }

    private static void Niches(Board board, PlanPen pen)
    {
        foreach (var niche in pen.Geometry.Niches)
        {
            var depth = niche.Niche.Depth.Metres;
            var (face, back) = niche.Niche.Face == Face.Inside ? (0, depth) : (pen.Outside, pen.Outside - depth);
            var outline = Outline.Polygon(pen.Run(niche.Span.From, niche.Span.To, face, 12).Concat(pen.Run(niche.Span.From, niche.Span.To, back, 12).Reverse()));
            board.Add(new Group("plan-" + Ids.Niche(niche.Niche.Name), [new Fill(outline, Tone.Paper), new Stroke(outline, new Pen(Weight.Thin, Dash.Dashed))]));
        }
    }

    private static void Landings(Board board, PlanPen pen)
    {
        foreach (var landing in pen.Geometry.Landings)
        {
            var at = pen.At(landing.Point);
            Mark seat = landing.Secondary ? new Stroke(Outline.Circle(at, 0.7), new Pen(Weight.Thin)) : new Fill(Outline.Circle(at, 0.9));
            board.Add(new Group("plan-" + Ids.Landing(landing.Name), [new Fill(Outline.Circle(at, 1.5), Tone.Paper), seat]));
        }
    }

    private static void Stem(Board board, PlanPen pen)
    {
        var (inside, outside) = pen.Geometry.Stem;
        if (Math.Max(-inside, outside - pen.Outside) * pen.PaperPerMetre < 0.4)
        {
            return;
        }

        board.Add(new Group("plan-stem",
        [
            .. ((double[])[inside, outside]).Select(o =>
                new Stroke(Outline.Polygon(pen.Run(0, pen.Length, o, Steps).SkipLast(1)), new Pen(Weight.Thin, Dash.Dashed))),
        ]));
    }

    private static void Eave(Board board, PlanPen pen)
    {
        if (pen.Geometry.House.Roof is { } roof)
        {
            var offset = pen.Geometry.Wall.OutsideOffset(pen.Geometry.Wall.Top.Metres) + roof.Eave.Metres;
            board.Add(new Group("plan-eave", [new Stroke(Outline.Polygon(pen.Run(0, pen.Length, offset, Steps).SkipLast(1)), new Pen(Weight.Thin, Dash.Chain))]));
        }
    }
}

/// <summary>Puts places on the ground on paper: east to the right, north up.</summary>
internal sealed record PlanPen(HouseGeometry Geometry, double PaperPerMetre)
{
    /// <summary>Offset of the outside face at the wall base, m.</summary>
    public double Outside { get; } = Geometry.Wall.OutsideOffset(Geometry.Wall.Base.Metres);

    public double Length => Geometry.Curve.Length;

    public PaperPoint At(PlanPoint point) => new(point.East * PaperPerMetre, -point.North * PaperPerMetre);

    /// <summary>Points along the curve offset outward, both ends included.</summary>
    public IEnumerable<PaperPoint> Run(double from, double to, double offset, int steps) =>
        Enumerable.Range(0, steps + 1).Select(i => At(Geometry.Curve.At(Geometry.Curve.Wrap(from + (to - from) * i / steps), offset)));
}
