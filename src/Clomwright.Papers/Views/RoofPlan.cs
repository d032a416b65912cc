using System.Globalization;
using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Views;

/// <summary>The framing of a roof from above: wall top, bond-beam line, poles with their numbers, ring and eave. North is up.</summary>
internal static class RoofPlan
{
    private const int Steps = 160;

    /// <summary>Draws it, the drawing origin at the centre of the plan's axes.</summary>
    public static (Sequence<Mark> Marks, PaperBox View) Of(HouseGeometry geometry, RoofResult roof, double paperPerMetre, Func<Message, string> say)
    {
        var pen = new PlanPen(geometry, paperPerMetre);
        var board = new Board();
        Wall(board, pen);
        if (roof.Reciprocal.Value is { } frame)
        {
            Ring(board, pen, frame.Geometry);
            Poles(board, pen, frame.Geometry.Poles, woven: true, frame.Geometry.SideBySide);
        }
        else if (roof.Plain.Value is { } plain)
        {
            var post = PostDrawing.Of(geometry);
            Poles(board, pen, plain.Places, woven: false, sideBySide: 1, pointed: post is not null);
            if (post is not null)
            {
                board.Add(post.FromAbove(pen, "roof-post", underPoles: true));
                Named(board, pen, plain.Places, post.At, say(post.Name));
            }
        }

        Landings(board, pen);
        if (roof.Flue is { } flue)
        {
            var at = pen.At(flue.Middle);
            board.Add(new Group("roof-flue",
            [
                .. flue.Clear is { } clear ? (Mark[])[new Stroke(Outline.Circle(at, clear * pen.PaperPerMetre), new Pen(Weight.Thin, Dash.Dashed))] : [],
                new Fill(Outline.Circle(at, flue.Pipe * pen.PaperPerMetre), Tone.Paper), new Stroke(Outline.Circle(at, flue.Pipe * pen.PaperPerMetre), new Pen(Weight.Heavy)),
            ]));
        }

        PlanMarks.North(board, board.Marks.Bounds().Inset(-8));
        return (board.Marks, board.Marks.Bounds().Inset(-2));
    }

    /// <summary>The name of what stands in the middle, in the first bay with room for it, with a line from there.</summary>
    private static void Named(Board board, PlanPen pen, Sequence<PoleGeometry> poles, PlanPoint middle, string words)
    {
        var (centre, inside) = (pen.At(middle), pen.Geometry.Wall.InsideOffset(pen.Geometry.Wall.Top.Metres));
        var taken = new Taken(board.Marks.Bounds());
        foreach (var pole in poles)
        {
            Keep(pen.At(pole.Foot), pen.At(pole.Foot + pole.Far * pole.Along), pole.Butt / 2 * pen.PaperPerMetre);
        }

        foreach (var point in pen.Run(0, pen.Length, inside, Steps))
        {
            taken.Keep(PaperBox.Around(point).Inset(-0.6));
        }

        var ways =
            from i in Enumerable.Range(0, poles.Count)
            let outward = -1.0 * (poles[i].Along + poles[(i + 1) % poles.Count].Along)
            where outward.Norm > 0.1
            let way = 1 / outward.Norm * new PaperPoint(outward.East, -outward.North)
            from reach in Enumerable.Range(4, 60)
            let at = centre + reach * way
            where (at - centre).Norm < poles[i].Far * pen.PaperPerMetre
            select new Text(words, at + new PaperPoint(0, Styles.Small.Digits / 2), Styles.Small, Anchor.Middle);
        if (taken.Place(ways) is { } name)
        {
            var toward = 1 / Math.Max((name.Bounds.Centre - centre).Norm, 1e-9) * (name.Bounds.Centre - centre);
            var reach = (name.Bounds.Centre - centre).Norm - Math.Min(name.Bounds.Width / 2 / Math.Max(Math.Abs(toward.X), 1e-9), name.Bounds.Height / 2 / Math.Max(Math.Abs(toward.Y), 1e-9)) - 0.4;
            board.Add(new Stroke(Outline.Line(centre, centre + Math.Max(0, reach) * toward), new Pen(Weight.Hair)));
            board.Add(name);
        }

        void Keep(PaperPoint from, PaperPoint to, double half)
        {
            var steps = (int)Math.Clamp((to - from).Norm, 2, 400);
            for (var i = 0; i <= steps; i++)
            {
                var at = from + (double)i / steps * (to - from);
                taken.Keep(PaperBox.Around(at).Inset(-half - 0.3));
            }
        }
    }

    /// <summary>The frame without one pole: that pole broken, the one that rested on it hatched, a ring where it has to be held up, and what is described to hold it.</summary>
    public static (Sequence<Mark> Marks, PaperBox View) WithoutOne(HouseGeometry geometry, ReciprocalGeometry frame, PoleLoss loss, IfOneFails? way, double paperPerMetre)
    {
        var pen = new PlanPen(geometry, paperPerMetre);
        var board = new Board();
        foreach (var pole in frame.Poles.Reverse())
        {
            var whole = Corners(pen, pole, -pole.EaveReach, frame.SideBySide);
            Mark[] body = (pole.Number == loss.WorstPole, frame.SideBySide) switch
            {
                (true, 1) => [new Stroke(Outline.Polygon(whole), new Pen(Weight.Thin, Dash.Dashed))],
                // One of the two is lost: the other stays, at the same line.
                (true, _) =>
                [
                    new Stroke(Outline.Polygon(whole[3], whole[4], whole[5], whole[6]), new Pen(Weight.Thin, Dash.Dashed)),
                    new Fill(Outline.Polygon(whole[0], whole[1], whole[2], whole[3]), Tone.Paper), new Stroke(Outline.Polygon(whole[0], whole[1], whole[2], whole[3]), new Pen(Weight.Medium)),
                ],
                _ =>
                [
                    new Fill(Outline.Polygon(whole), Tone.Paper),
                    .. pole.Number == loss.Orphan ? (Mark[])[new Hatch(Outline.Polygon(whole), 45, 0.9, new Pen(Weight.Hair))] : [],
                    new Stroke(Outline.Polygon(whole), new Pen(Weight.Thin)),
                ],
            };
            board.Add(new Group($"lost-{Id(pole)}", [.. body]));
        }

        PaperPoint[] crossings = [.. frame.Poles.Select(p => pen.At(p.Foot + p.Far * p.Along))];
        var orphan = frame.Poles.First(p => p.Number == loss.Orphan);
        board.Add(new Group("way-out", way switch
        {
            IfOneFails.Strap => [new Stroke(Outline.Polygon(crossings), new Pen(Weight.Heavy))],
            IfOneFails.Post => [.. crossings.Select(c => new Fill(Outline.Circle(c, 1.1)))],
            _ => [],
        }));
        board.Add(new Group("way-prop", [new Stroke(Outline.Circle(pen.At(orphan.Foot + orphan.Far * orphan.Along), 2.2), new Pen(Weight.Medium))]));
        Numbers(board, pen, frame.Poles);
        return (board.Marks, board.Marks.Bounds().Inset(-1));
    }

    private static PaperPoint[] Corners(PlanPen pen, PoleGeometry pole, double from, int sideBySide) => [.. pole.OutlineFrom(from, sideBySide).Select(pen.At)];

    private static void Wall(Board board, PlanPen pen)
    {
        var wall = pen.Geometry.Wall;
        var top = wall.Top.Metres;
        var (inside, outside) = (wall.InsideOffset(top), wall.OutsideOffset(top));
        List<Mark> marks = [Line(inside, Weight.Thin), Line(outside, Weight.Thin)];
        if (pen.Geometry.House.BondBeam is { } beam)
        {
            marks.Add(Line((inside + outside) / 2 + beam.Offset.Metres, Weight.Hair, Dash.Chain));
        }

        if (pen.Geometry.House.Roof is { } roof)
        {
            marks.Add(Line(outside + roof.Eave.Metres, Weight.Medium, Dash.Dashed));
        }

        board.Add(new Group("roof-lines", marks.ToSequence()));

        Stroke Line(double offset, Weight weight, Dash dash = Dash.Solid) =>
            new(Outline.Polygon(pen.Run(0, pen.Length, offset, Steps).SkipLast(1)), new Pen(weight, dash));
    }

    private static void Ring(Board board, PlanPen pen, ReciprocalGeometry frame) =>
        board.Add(new Group("roof-ring", [new Stroke(Outline.Circle(pen.At(frame.Centre), frame.RingRadius * pen.PaperPerMetre), new Pen(Weight.Thin, Dash.Dashed))]));

    /// <summary>The last ones first, so that each lies over the one it rests on; round a ring the last is drawn again where it lies over the first.</summary>
    private static void Poles(Board board, PlanPen pen, Sequence<PoleGeometry> poles, bool woven, int sideBySide, bool pointed = false)
    {
        for (var i = poles.Count - 1; i >= 0; i--)
        {
            var corners = pointed ? [.. PostTips.Outline(poles, i).Select(pen.At)] : Corners(pen, poles[i], -poles[i].EaveReach, sideBySide);
            board.Add(new Group(Id(poles[i]), [.. Body(corners, open: false)]));
        }

        if (woven && poles.Count > 1)
        {
            board.Add(new Group("roof-last-over-first", [.. Body(Corners(pen, poles[^1], (poles[^1].Near + poles[^1].Far) / 2, sideBySide), open: true)]));
        }

        Numbers(board, pen, poles);
    }

    private static string Id(PoleGeometry pole) => string.Create(CultureInfo.InvariantCulture, $"roof-pole-{pole.Number}");

    /// <summary>A pole between its corners.</summary>
    private static Mark[] Body(PaperPoint[] corners, bool open) =>
    [
        new Fill(Outline.Polygon(corners), Tone.Paper),
        new Stroke(open ? Outline.Through(corners) : Outline.Polygon(corners), new Pen(Weight.Medium)),
    ];

    /// <summary>Each pole's number in a ring before its eave end, or further out on a line of its own where the number of another stands there.</summary>
    private static void Numbers(Board board, PlanPen pen, Sequence<PoleGeometry> poles)
    {
        const double ring = 2.9, apart = 0.5, near = 4.4, step = 1.5;
        PaperPoint Out(PoleGeometry pole, double millimetres) => pen.At(pole.Foot - (pole.EaveReach + millimetres / pen.PaperPerMetre) * pole.Along);
        var taken = new List<PaperPoint>();
        foreach (var pole in poles)
        {
            var beyond = near;
            while (taken.Any(t => (t - Out(pole, beyond)).Norm < 2 * ring + apart))
            {
                beyond += step;
            }

            if (beyond > near)
            {
                board.Add(new Stroke(Outline.Through([Out(pole, 0), Out(pole, beyond - ring)]), new Pen(Weight.Hair)));
            }

            taken.Add(Out(pole, beyond));
        }

        // Over all lines, so that none runs through a ring.
        foreach (var (pole, centre) in poles.Zip(taken))
        {
            board.Add(new Fill(Outline.Circle(centre, ring), Tone.Paper));
            board.Add(new Stroke(Outline.Circle(centre, ring), new Pen(Weight.Thin)));
            board.Say(pole.Number.ToString(CultureInfo.InvariantCulture), centre.X, centre.Y + Styles.BodyStrong.Digits / 2, Styles.BodyStrong, Anchor.Middle);
        }
    }

    private static void Landings(Board board, PlanPen pen)
    {
        foreach (var landing in pen.Geometry.Landings)
        {
            var at = pen.At(landing.Point);
            board.Add(new Group("roof-" + Ids.Landing(landing.Name), [landing.Secondary ? new Stroke(Outline.Circle(at, 0.7), new Pen(Weight.Thin)) : new Fill(Outline.Circle(at, 0.8))]));
        }
    }
}
