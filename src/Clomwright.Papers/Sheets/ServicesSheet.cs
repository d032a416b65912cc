using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;

namespace Clomwright.Papers.Sheets;

/// <summary>Wires, pipes, sleeves, stove and flue on the plan, with what has to be kept clear of what burns; and room for where they really went.</summary>
internal static class ServicesSheet
{
    private static readonly EmbedKind[] Kinds = [EmbedKind.Sleeve, EmbedKind.Box, EmbedKind.Wire, EmbedKind.Pipe];

    public static IEnumerable<Draft> Of(Scene scene)
    {
        var say = scene.Say;
        var content = SheetFrame.Content(scene.Portrait);
        var scale = DrawingScale.Fitting(say.First, s =>
        {
            var view = Drawn(scene, s.PaperPerMetre).Bounds();
            return view.Width <= content.Width && view.Height <= 128;
        });
        var marks = Drawn(scene, scale.PaperPerMetre);
        List<Block> blocks =
        [
            new Picture(marks, marks.Bounds().Inset(-1)),
            new Paragraph(say.Say("services.signs"), Styles.Small) { Above = 2 },
            .. Stove(scene),
            .. Flue(scene),
            .. List(scene),
            new Cautions(say.Say("caution.title"), [say.Say("caution.wire"), say.Say("caution.flue"), say.Say("caution.stove-air"), say.Say("services.hot-straw")]) { Above = 4 },
        ];
        return Draft.Flow(new SheetHead("services", say.Say("services.title"), Clock.Drawing, say.Say(scale.Label)), scene.Portrait, blocks, say);
    }

    private static IEnumerable<EmbedPlace> Embeds(Scene scene) => scene.Geometry.Embeds.Where(e => Kinds.Contains(e.Embed.Kind));

    private static Sequence<Mark> Drawn(Scene scene, double paperPerMetre)
    {
        var g = scene.Geometry;
        var pen = new PlanPen(g, paperPerMetre);
        var (plan, view) = PlanDrawing.Of(g, new PlanView(paperPerMetre) { Units = scene.Say.First });
        var board = new Board();
        // Seats of poles are left out: a spot on this sheet is a wire.
        Mark[] walls = [.. plan.Where(m => m is not Group group || !group.Id.StartsWith("plan-landing", StringComparison.Ordinal))];
        board.Add(walls);
        var taken = new Taken(view.Inset(-14));
        foreach (var text in walls.All().OfType<Text>())
        {
            taken.Keep(text.Bounds.Inset(-1.2));
        }

        StoveOn(board, scene, pen, taken);
        FlueOn(board, scene, pen, taken);
        foreach (var embed in Embeds(scene))
        {
            var offset = embed.Embed.Through ? pen.Outside / 2 : embed.Embed.Face == Face.Inside ? 0 : pen.Outside;
            var at = pen.At(g.Curve.At(embed.Station, offset));
            Mark sign = embed.Embed.Kind is EmbedKind.Box or EmbedKind.Wire
                ? new Fill(Outline.Rectangle(PaperBox.At(at.X - 0.9, at.Y - 0.9, 1.8, 1.8)))
                : new Stroke(Outline.Circle(at, 1), new Pen(Weight.Heavy));
            board.Add(new Group("service-" + Ids.Embed(embed.Address), [new Fill(Outline.Circle(at, 1.7), Tone.Paper), sign]));
            taken.Keep(PaperBox.At(at.X - 1.5, at.Y - 1.5, 3, 3));
        }

        foreach (var row in Embeds(scene).GroupBy(e => e.Index))
        {
            var embed = row.First();
            var at = pen.At(g.Curve.At(embed.Station, embed.Embed.Through ? pen.Outside / 2 : embed.Embed.Face == Face.Inside ? 0 : pen.Outside));
            Named(board, taken, StripEmbeds.Number(embed), at, 2.2);
        }

        return board.Marks;
    }

    private static void StoveOn(Board board, Scene scene, PlanPen pen, Taken taken)
    {
        if (StovePlace.Of(scene.Geometry) is not { } place)
        {
            return;
        }

        var (body, zone) = (Outline.Polygon(place.Body.Select(pen.At)), Outline.Polygon(place.Zone.Select(pen.At)));
        board.Add(new Group("stove-zone", [new Hatch(zone, -45, 2.2, new Pen(Weight.Hair)), new Stroke(zone, new Pen(Weight.Heavy, Dash.Dashed))]));
        var (a, b) = (pen.At(place.Body[0]), pen.At(place.Body[3]));
        board.Add(new Group("stove", [new Fill(body, Tone.Paper), new Stroke(body, new Pen(Weight.Heavy)), new Stroke(Outline.Line(a, b), new Pen(Weight.Bold))]));
        taken.Keep(body.Bounds);
        KeepEdges(taken, [.. place.Zone.Select(pen.At)]);
        Named(board, taken, scene.Say.Say("services.stove-sign"), body.Bounds.Centre, body.Bounds.Width / 2 + 1);
    }

    /// <summary>Words keep off the border of the zone, which may lie askew.</summary>
    private static void KeepEdges(Taken taken, IReadOnlyList<PaperPoint> corners)
    {
        for (var i = 0; i < corners.Count; i++)
        {
            var (from, along) = (corners[i], corners[(i + 1) % corners.Count] - corners[i]);
            var steps = (int)Math.Ceiling(along.Norm);
            for (var n = 0; n < steps; n++)
            {
                var at = from + (double)n / steps * along;
                taken.Keep(PaperBox.At(at.X - 0.5, at.Y - 0.5, 1, 1));
            }
        }
    }

    private static void FlueOn(Board board, Scene scene, PlanPen pen, Taken taken)
    {
        if (scene.Set.Roof?.Flue is not { } flue)
        {
            return;
        }

        var at = pen.At(flue.Middle);
        List<Mark> marks = [];
        if (flue.Clear is { } clear)
        {
            marks.Add(new Stroke(Outline.Circle(at, (flue.Pipe / 2 + clear) * pen.PaperPerMetre), new Pen(Weight.Medium, Dash.Dashed)));
        }

        var pipe = Outline.Circle(at, flue.Pipe / 2 * pen.PaperPerMetre);
        marks.Add(new Stroke(pipe, new Pen(Weight.Heavy)));
        board.Add(new Group("flue", [.. marks]));
        Named(board, taken, scene.Say.Say("services.flue-sign"), at, pipe.Bounds.Width / 2 + 2.5);
    }

    /// <summary>A word or number beside a thing, where there is room for it.</summary>
    private static void Named(Board board, Taken taken, string words, PaperPoint at, double clear)
    {
        if (taken.Place(Taken.Round(words, at, Styles.Heading, clear)) is { } label)
        {
            board.Add(new Fill(Outline.Rectangle(label.Bounds.Inset(0.2)), Tone.Paper));
            board.Add(label);
        }
    }

    private static IEnumerable<Block> Stove(Scene scene)
    {
        var say = scene.Say;
        if (scene.House.Stove is not { } stove || StovePlace.Of(scene.Geometry) is not { } place)
        {
            yield return new Paragraph(say.Say("services.no-stove"), Styles.Body) { Above = 3 };
            yield break;
        }

        yield return new Heading(say.Say("services.stove", ("name", stove.Name ?? ""))) { Above = 4 };
        Row Line(string key, Length? clear, double? wall) => new(
        [
            new Cell(say.Say("services.side-" + key)) { Lettering = Styles.BodyStrong },
            .. clear is { } given ? scene.Pair(given, Styles.Reading, say.Say(Tag.Given)) : [new Cell(say.Say("services.not-given")) { Lettering = Styles.BodyStrong }, new Cell("")],
            .. wall is { } gap && double.IsFinite(gap) ? scene.Pair(Amount.Metres(gap), Styles.BodyStrong, say.Say(Tag.Computed)) : [new Cell(""), new Cell("")],
            new Cell(wall is { } near && clear is { } asked ? near < asked.Metres ? say.Say("services.wall-nearer") : say.Say("services.wall-clear") : wall is null ? "" : say.Say("not-checked")),
        ]);
        yield return new Table(
            [new(""), new(say.Say("services.clear"), Anchor.End), new(""), new(say.Say("services.to-wall"), Anchor.End), new(""), new("") { Grows = 1 }],
            [
                .. place.Sides.Select(s => Line(s.Key, s.Key switch { "front" => stove.ClearFront, "back" => stove.ClearBack, _ => stove.ClearSide }, s.ToWall)),
                Line("above", stove.ClearAbove, null),
            ]) { Above = 1, Pad = 0.5 };
        yield return new Paragraph(stove.Source is { } source ? say.Say("services.stove-source", ("source", source)) : say.Say("services.stove-no-source"), Styles.Body) { Above = 1.5 };
    }

    private static IEnumerable<Block> Flue(Scene scene)
    {
        var say = scene.Say;
        if (scene.House.Roof?.Flue is not { } flue)
        {
            yield break;
        }

        yield return new Paragraph(
            flue.Clear is { } clear ? say.Say("services.flue", ("diameter", flue.Diameter), ("clear", clear)) : say.Say("services.flue-open", ("diameter", flue.Diameter)), Styles.Body) { Above = 2 };
    }

    private static IEnumerable<Block> List(Scene scene)
    {
        var say = scene.Say;
        EmbedPlace[] all = [.. Embeds(scene)];
        yield return new Heading(say.Say("services.list")) { Above = 4 };
        if (all.Length == 0)
        {
            yield return new Paragraph(say.Say("services.none"), Styles.Body) { Above = 1 };
        }

        yield return new Table(
            [
                new(""), new(say.Say("register-set.what")) { Grows = 1 }, new(say.Say("register-set.height"), Anchor.End), new(say.Say("register-set.station"), Anchor.End),
                new(say.Say("services.route")), new(say.Say("register-set.date-by")),
            ],
            [
                .. all.Select(e => new Row(
                    new Cell(StripEmbeds.Number(e)) { Lettering = Styles.BodyStrong },
                    new Cell(e.Address, Wording.Dotted(say.Say("embed." + e.Embed.Kind.ToString().ToLowerInvariant()), say.Say("face." + (e.Embed.Through ? "through" : e.Embed.Face.ToString().ToLowerInvariant())), e.Embed.Note ?? "")),
                    scene.Metres(e.Height) with { Lettering = Styles.BodyStrong }, scene.Metres(e.Station) with { Lettering = Styles.BodyStrong }, Dots.Cell(30), Dots.Cell(12))),
                .. Enumerable.Range(0, 3).Select(_ => new Row("", Dots.Cell(24), Dots.Cell(10), Dots.Cell(10), Dots.Cell(30), Dots.Cell(12))),
            ]) { Above = 1, Pad = 0.7 };
        yield return new Paragraph(say.Say("services.list-note"), Styles.Small) { Above = 1.5 };
    }
}
