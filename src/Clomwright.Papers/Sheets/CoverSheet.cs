using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Revisions;
using Clomwright.Papers.Views;

namespace Clomwright.Papers.Sheets;

/// <summary>The first sheet: the house at a glance, the list of sheets, and what the tags of numbers mean.</summary>
internal static class CoverSheet
{
    /// <summary>The cover of a book whose other sheets are known.</summary>
    public static IEnumerable<Draft> Of(Scene scene, IReadOnlyList<SheetHead> others, int firstNumber, SetRevision? set)
    {
        var (say, g) = (scene.Say, scene.Geometry);
        var content = SheetFrame.Content(scene.Portrait);
        var wall = UnrolledWall.Of(g, new WallView(Face.Outside, (content.Width - 8) / g.Curve.OffsetLength(g.Wall.OutsideOffset(g.Wall.Base.Metres))) { Units = say.First, Measures = false, Details = false });
        var plan = PlanDrawing.Of(g, new PlanView(PlanScale(scene)) { Units = say.First });
        Row[] rows = [.. Lines(scene, others, firstNumber, set)];
        Block[] above =
        [
            new Paragraph(scene.House.Name, Lettering.Strong(6.5)),
            new Picture(wall.Marks, wall.View) { Above = 3 },
            new Beside(
                new Stack([new Picture(plan.Marks, plan.View)]),
                new Stack([Numbers(scene), .. Notes(scene)]),
                0.5) { Above = 3 },
            new Cautions(say.Say("caution.title"), [say.Say("caution.cover"), say.Say("caution.not-checked")]) { Above = 4 },
            .. RevisionBlocks.Of(scene, set, RevisionBlocks.Counted(others, firstNumber), "1"),
            new Heading(say.Say("cover.sheets")) { Above = 4 },
        ];
        Block[] below = [new Heading(say.Say("cover.tags")) { Above = 4 }, Tags(say)];

        // Large letters if one sheet holds them, else smaller ones: titles are longer in some languages.
        var head = new SheetHead("cover", say.Say("cover.title"));
        return ((Block[])[Three(Styles.Body), Four(Styles.Body), Four(Styles.Small)])
            .Select(list => Draft.Flow(head, scene.Portrait, [.. above, list, .. below], say).ToArray())
            .Aggregate((kept, next) => next.Length < kept.Length ? next : kept);

        Block Three(Lettering lettering) => new Beside(Part(3, 0, lettering), new Stack([new Beside(Part(3, 1, lettering), Part(3, 2, lettering))]), 1.0 / 3) { Above = 1.5 };
        Block Four(Lettering lettering) => new Beside(new Stack([new Beside(Part(4, 0, lettering), Part(4, 1, lettering))]), new Stack([new Beside(Part(4, 2, lettering), Part(4, 3, lettering))])) { Above = 1.5 };
        Stack Part(int of, int i, Lettering lettering)
        {
            var each = (rows.Length + of - 1) / of;
            return new([new Table([new("", Anchor.End), new("") { Grows = 1 }, new("")], [.. rows.Skip(i * each).Take(each)]) { Pad = 0.45, Lettering = lettering }]);
        }
    }

    /// <summary>Small, in three columns: it is looked up once.</summary>
    private static Beside Tags(Wording say)
    {
        string[] told = [.. Enum.GetValues<Tag>().Select(t => say.Say("cover.tag", ("tag", say.Say(t)), ("means", say.Say("cover.tag-" + t.ToString().ToLowerInvariant()))))];
        Stack Part(int i) => new([.. told.Skip(2 * i).Take(2).Select(t => new Paragraph(t, Styles.Small) { Above = 0.8 })]);
        return new Beside(Part(0), new Stack([new Beside(Part(1), Part(2))]), 1.0 / 3) { Above = 1.2 };
    }

    /// <summary>The sheets with the numbers at which they begin.</summary>
    private static IEnumerable<Row> Lines(Scene scene, IReadOnlyList<SheetHead> others, int firstNumber, SetRevision? set) => others.Select((h, i) => (Head: h, Number: i + firstNumber)).Where(s => !s.Head.GoesOn)
        .Select(s => new Row(new Cell(scene.Say.One(Amount.Count(s.Number))), new Cell(s.Head.Title), new Cell(RevisionBlocks.Letter(set, others.Skip(s.Number - firstNumber).TakeWhile((h, i) => i == 0 || h.GoesOn).Select(h => h.Key)))));

    private static double PlanScale(Scene scene)
    {
        var points = Enumerable.Range(0, 72).Select(i => scene.Geometry.Curve.At(i * scene.Geometry.Curve.Length / 72));
        var reach = PaperBox.Around(points.Select(p => new PaperPoint(p.East, p.North)));
        var eave = scene.Geometry.Wall.OutsideOffset(scene.Geometry.Wall.Base.Metres) + (scene.House.Roof?.Eave.Metres ?? 0);
        return 50 / (Math.Max(reach.Width, reach.Height) + 2 * eave);
    }

    private static Facts Numbers(Scene scene)
    {
        var (g, q) = (scene.Geometry, scene.Set.Quantities);
        return new Facts(
        [
            scene.Fact("cover.inside-area", new Area(g.Measures.InsideArea), Tag.Computed),
            scene.Fact("cover.outside-area", new Area(g.Measures.OutsideArea), Tag.Computed),
            scene.Fact("cover.net-volume", new Volume(g.Measures.NetVolume), Tag.Computed),
            q.Batches is { } b ? scene.Fact("cover.batches", Amount.Count((long)Math.Ceiling(b)), Tag.Computed) : scene.Unknown("cover.batches", "lift.no-batch"),
            scene.Fact("cover.lifts", Amount.Count(g.Lifts.Count), Tag.Given),
            scene.Fact("cover.top", g.Wall.Top, Tag.Given),
        ], Styles.Reading) { Across = 2 };
    }

    private static IEnumerable<Block> Notes(Scene scene)
    {
        if (scene.House.Notes is { Length: > 0 } notes)
        {
            yield return new Paragraph(notes, Styles.Small) { Above = 3 };
        }
    }
}
