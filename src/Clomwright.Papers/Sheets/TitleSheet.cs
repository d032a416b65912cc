using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Revisions;
using Clomwright.Papers.Views;

namespace Clomwright.Papers.Sheets;

/// <summary>The title sheet of the office set: what the house is, by which rules it was checked, and the list of sheets.</summary>
internal static class TitleSheet
{
    /// <summary>Of the width, for what stands at the left.</summary>
    private const double Share = 0.45;

    /// <summary>The title sheet of a set whose other sheets are known.</summary>
    public static IEnumerable<Draft> Of(Scene scene, IReadOnlyList<NumberedDraft> others, SetRevision? set)
    {
        var say = scene.Say;
        var paper = scene.Set.Options.Paper.Office();
        var content = SheetFrame.Content(paper);
        Stack left = new(
        [
            new Paragraph(scene.House.Name, Lettering.Strong(7)),
            new Paragraph(say.Say("title.what"), Styles.Body) { Above = 2 },
            .. Notes(scene),
            .. Drawing(scene, (content.Width - Beside.Gutter) * Share, content.Height * 0.5),
            Numbers(scene),
            new Facts([new Fact(say.Say("title.rules"), OfficeFindings.Bodies(scene), say.Say(Tag.Given))], Styles.BodyStrong) { Above = 3 },
            new Cautions(say.Say("caution.title"), [say.Say("caution.office"), say.Say("caution.not-checked")]) { Above = 4 },
        ]);
        Stack right = new([new Heading(say.Say("title.index")), Index(scene, others, set) with { Above = 1.5 }, .. InTheRound(scene, (content.Width - Beside.Gutter) * (1 - Share), content.Height * 0.45), .. RevisionBlocks.Of(scene, set, others.ToDictionary(s => s.Draft.Head.Key, s => s.Number, StringComparer.Ordinal), "G-001")]);
        return Draft.Flow(new SheetHead("title-sheet", say.Say("title.title")), paper, [new Beside(left, right, Share)], say);
    }

    private static IEnumerable<Block> Notes(Scene scene)
    {
        if (scene.House.Notes is { Length: > 0 } notes)
        {
            yield return new Paragraph(notes, Styles.Body) { Above = 2 };
        }
    }

    /// <summary>The house from above one of its corners, with where it is seen from.</summary>
    private static IEnumerable<Block> InTheRound(Scene scene, double width, double height)
    {
        var (marks, box) = RoundDrawing.Of(scene.Round, width * 0.9, height);
        if (marks.Count > 0)
        {
            yield return new Picture(marks, box) { Above = 6 };
            yield return new Paragraph(scene.Say.Say("title.round." + scene.Round.Corner) + " " + scene.Say.Say(scene.House.Roof is null ? "title.round-note-bare" : "title.round-note"), Styles.Small) { Above = 1 };
        }
    }

    /// <summary>The plan, as large as its room.</summary>
    private static IEnumerable<Block> Drawing(Scene scene, double width, double height)
    {
        var scale = DrawingScale.Fitting(scene.Say.First, s =>
        {
            var view = PlanDrawing.Of(scene.Geometry, View(s)).View;
            return view.Width <= width && view.Height <= height;
        });
        var (marks, box) = PlanDrawing.Of(scene.Geometry, View(scale));
        yield return new Picture(marks, box) { Above = 3 };
        yield return new Paragraph(scene.Say.Say("title.plan", ("scale", scene.Say.Say(scale.Label))), Styles.Small) { Above = 1 };

        PlanView View(DrawingScale s) => new(s.PaperPerMetre) { Units = scene.Say.First };
    }

    private static Facts Numbers(Scene scene)
    {
        var g = scene.Geometry;
        return new Facts(
        [
            scene.Fact("cover.inside-area", new Area(g.Measures.InsideArea), Tag.Computed),
            scene.Fact("cover.outside-area", new Area(g.Measures.OutsideArea), Tag.Computed),
            scene.Fact("cover.top", g.Wall.Top, Tag.Given),
        ], Styles.BodyStrong) { Above = 3, Across = 3 };
    }

    /// <summary>Every sheet with its number, in as many columns as it takes.</summary>
    private static Beside Index(Scene scene, IReadOnlyList<NumberedDraft> others, SetRevision? set)
    {
        Row[] rows = [.. others.GroupBy(s => First(s, others)).Select(g => new Row(new Cell(Range(g)) { Lettering = Styles.BodyStrong }, new Cell(g.First().Draft.Head.Title), new Cell(RevisionBlocks.Letter(set, g.Select(s => s.Draft.Head.Key)))))];
        var half = (rows.Length + 1) / 2;
        Stack Part(int i) => new([new Table([new(""), new("") { Grows = 1 }, new("")], [.. rows.Skip(i * half).Take(half)]) { Pad = 0.6 }]);
        return new Beside(Part(0), Part(1));
    }

    /// <summary>Number of the sheet that a sheet goes on from.</summary>
    private static string First(NumberedDraft sheet, IReadOnlyList<NumberedDraft> others) =>
        others.TakeWhile(o => o != sheet).Append(sheet).Last(o => !o.Draft.Head.GoesOn).Number;

    private static string Range(IEnumerable<NumberedDraft> sheets)
    {
        string[] numbers = [.. sheets.Select(s => s.Number)];
        return numbers.Length == 1 ? numbers[0] : $"{numbers[0]} – {numbers[^1][2..]}";
    }
}
