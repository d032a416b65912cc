using Clomwright.Analysis.Finishes;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;

namespace Clomwright.Papers.Sheets;

/// <summary>The floor from the ground up: a cut to scale, what each layer takes, how long it dries, doors against it, and the oil.</summary>
internal static class FloorSheet
{
    /// <summary>A US gallon, m3.</summary>
    private const double Gallon = 3.785411784e-3;

    private const double LabelWidth = 62;
    private const double LabelGap = 8;

    public static IEnumerable<Draft> Of(Scene scene)
    {
        if (scene.Set.Finishes?.Floor.Value is not { } floor)
        {
            return [];
        }

        var say = scene.Say;
        var content = SheetFrame.Content(scene.Portrait);
        var scale = DrawingScale.Fitting(say.First, s =>
        {
            var d = new FloorDrawing(scene.Geometry, floor, s.PaperPerMetre);
            return d.Width + LabelGap + LabelWidth <= content.Width && d.Height <= content.Height * 0.36;
        });
        var drawing = new FloorDrawing(scene.Geometry, floor, scale.PaperPerMetre);
        var board = new Board();
        Name(board, drawing.Draw(board, say), drawing.Width + LabelGap);
        List<Block> blocks =
        [
            new Picture(board.Marks, board.Marks.Bounds().Inset(-1)),
            new Facts([scene.Fact("floor.area", new Area(floor.Area), Tag.Computed), scene.Fact("floor.dig", Amount.Metres(-floor.Formation), Tag.Computed), scene.Fact("floor.stem", Amount.Metres(floor.StemOverFloor), Tag.Computed), Over(scene, floor)], Styles.Heading) { Above = 3 },
            new Cautions(say.Say("caution.title"), [.. Hazards(scene, floor).Select(h => say.Say(h))]),
            new Heading(say.Say("floor.layers")),
            Layers(scene, floor),
            new Paragraph(say.Say("floor.layers-note"), Styles.Small) { Above = 1.5 },
            .. Doors(scene, floor),
            .. Oil(scene, floor),
        ];
        return Draft.Flow(new SheetHead("floor", say.Say("floor.title"), Clock.Drawing, say.Say(scale.Label)), scene.Portrait, blocks, say);
    }

    private static void Name(Board board, IReadOnlyList<PartLabel> labels, double x)
    {
        var sorted = labels.OrderBy(l => l.At.Y).ToArray();
        var lines = sorted.Select(l => Wrapping.Lines(l.Words, Styles.Body, LabelWidth)).ToArray();
        var middles = Spreading.Apart([.. sorted.Select(l => l.At.Y)], [.. lines.Select(l => l.Count * Styles.Body.Leading + 1)], double.NegativeInfinity, double.PositiveInfinity);
        for (var i = 0; i < sorted.Length; i++)
        {
            board.Add(new Stroke(Outline.Through(sorted[i].At, new(x - 3, middles[i]), new(x - 0.8, middles[i])), new Pen(Weight.Thin)));
            board.Lines(lines[i], x, middles[i] - lines[i].Count * Styles.Body.Leading / 2, Styles.Body);
        }
    }

    private static Fact Over(Scene scene, FloorResult floor) => floor.EarthOverGrade.Value is { } over
        ? scene.Fact("floor.over-grade", Amount.Metres(over.Value), Tag.Computed)
        : new Fact(scene.Say.Say("floor.over-grade"), scene.Say.Say("not-checked"), scene.Say.Say(floor.EarthOverGrade.NotChecked!));

    private static IEnumerable<string> Hazards(Scene scene, FloorResult floor)
    {
        yield return "caution.dust";
        yield return "caution.lifting";
        if (floor.Oil is not null)
        {
            yield return "caution.rags";
            yield return "caution.oil";
        }

        if (scene.House.Floor.Layers.Any(l => l.Parts?.Lime is > 0))
        {
            yield return "caution.mortar";
        }
    }

    private static Table Layers(Scene scene, FloorResult floor)
    {
        var say = scene.Say;
        return new Table(
            [
                new(""), new(say.Say("floor.layer")) { Grows = 1 }, new(say.Say("floor.top"), Anchor.End), new(say.Say("floor.lies"), Anchor.End), new(say.Say("floor.bring"), Anchor.End),
                new(say.Say("floor.batches"), Anchor.End), new(say.Say("floor.dries"), Anchor.End),
            ],
            [
                .. floor.Layers.Select(l => new Row(
                    new Cell("") { Tick = true },
                    new Cell(l.Layer.Name, Wording.Dotted(l.Layer.Role is { } role ? say.Say("floor.role-" + role.ToString().ToLowerInvariant()) : say.Say("floor.role-none"), Mixes.Say(scene, l.Parts), Mixes.From(scene, l.PartsSource))),
                    scene.Metres(l.Top),
                    l.Sheet is null ? scene.Cell(new Volume(l.Volume)) : new Cell(""),
                    l.Sheet is { } sheet ? scene.Cell(new Area(sheet)) : scene.Cell(new Volume(l.Brought), l.Trucks is { } trucks ? say.Say("floor.trucks", ("n", Amount.Number(trucks))) : ""),
                    l.Batches.Value is { } batches ? new Cell(say.One(Amount.Number(Math.Ceiling(batches.Value * 10 - 1e-9) / 10))) : new Cell(l.Ingredients.Count > 0 ? say.Say("not-known") : "–"),
                    l.Days is { } days ? new Cell(say.Say("floor.days", ("low", Amount.Count((long)days.Low)), ("high", Amount.Count((long)days.High)))) : new Cell("–"))),
            ]) { Above = 1.5 };
    }

    private static IEnumerable<Block> Doors(Scene scene, FloorResult floor)
    {
        if (floor.Doors.Count == 0)
        {
            yield break;
        }

        var say = scene.Say;
        yield return new Heading(say.Say("floor.doors"));
        yield return new Table(
            [new(""), new(say.Say("floor.door")) { Grows = 1 }, new(say.Say("floor.sill"), Anchor.End), new(say.Say("floor.clear"), Anchor.End)],
            [
                .. floor.Doors.Select(d => new Row(
                    new Cell("") { Tick = true }, new Cell(d.Name), scene.Metres(d.Sill),
                    d.Clear.Value is { } clear ? scene.Metres(clear.Value) : new Cell(say.Say("not-checked"), say.Say(d.Clear.NotChecked!)))),
            ]) { Above = 1.5 };
        yield return new Paragraph(say.Say("floor.doors-note"), Styles.Small) { Above = 1.5 };
    }

    private static IEnumerable<Block> Oil(Scene scene, FloorResult floor)
    {
        var say = scene.Say;
        if (floor.Oil is not { } volume || scene.House.Floor.Oil is not { } oil)
        {
            yield break;
        }

        yield return new Heading(say.Say("floor.oil"));
        yield return new Paragraph(say.Say("floor.oil-how", ("oil", say.NameOf("papers.floor.oil-of-" + oil.Material, oil.Material)), ("litres", Amount.Number(Math.Ceiling(volume * 1000))), ("gallons", Amount.Number(Math.Ceiling(volume / Gallon * 10) / 10)), ("coats", oil.Coats)), Styles.Body) { Above = 1.5 };
        yield return new Table(
            [new(say.Say("floor.coat")), new(say.Say("floor.coat-on")), new(say.Say("floor.coat-used")), new(say.Say("floor.coat-by")) { Grows = 1 }],
            [.. Enumerable.Range(1, Math.Min(oil.Coats, 8)).Select(n => new Row(new Cell(say.Say("floor.nth", ("n", n))) { Tick = true }, new Cell(".................."), new Cell(".................."), new Cell("..................")))]) { Above = 1.5 };
    }
}
