using System.Globalization;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Templates;

namespace Clomwright.Papers.Sheets;

/// <summary>Which templates there are, on how many tiles, and how to print and join them.</summary>
internal static class TemplatesSheet
{
    public static IEnumerable<Draft> Of(Scene scene)
    {
        var content = SheetFrame.Content(scene.Portrait);
        Tiling[] tilings = [.. TemplateBook.All(scene).Select(t => Tiling.Of(t, content))];
        // Page numbers begin after this list itself.
        var own = Of(scene, tilings, 1).Count();
        return Of(scene, tilings, own);
    }

    private static IEnumerable<Draft> Of(Scene scene, Tiling[] tilings, int own)
    {
        var say = scene.Say;
        List<Row> rows = [];
        var page = own + 1;
        foreach (var tiling in tilings)
        {
            var last = page + tiling.Tiles - 1;
            rows.Add(new Row(
            [
                new Cell(tiling.Template.Title) { Tick = true, Lettering = Styles.BodyStrong },
                new Cell(tiling.Template.Pieces == 0 ? "" : say.One(Amount.Count(tiling.Template.Pieces))),
                .. scene.Pair(Amount.Metres(tiling.Template.Width / 1000), Styles.Body),
                .. scene.Pair(Amount.Metres(tiling.Template.Height / 1000), Styles.Body),
                new Cell(say.One(Amount.Count(tiling.Tiles))),
                new Cell(page == last ? Number(page) : $"{Number(page)}–{Number(last)}") { Lettering = Styles.BodyStrong },
            ]));
            page = last + 1;
        }

        return Draft.Flow(new SheetHead("templates", say.Say("template.title")), scene.Portrait,
        [
            new Paragraph(say.Say("template.how"), Styles.Body),
            new Table([new("") { Grows = 1 }], [.. ((string[])["template.how-print", "template.how-check", "template.how-join", "template.how-wood", "template.how-name"]).Select(k => new Row(new Cell(say.Say(k)) { Tick = true }))]) { Above = 2, Pad = 0.4 },
            new Cautions(say.Say("caution.title"), [say.Say("caution.saw"), say.Say("caution.wet-wall")]) { Above = 3 },
            new Table(
                [
                    new(say.Say("template.what")) { Grows = 1 }, new(say.Say("template.times"), Anchor.End), new(say.Say("template.wide"), Anchor.End), new(""), new(say.Say("template.tall"), Anchor.End), new(""),
                    new(say.Say("template.tiles"), Anchor.End), new(say.Say("template.pages"), Anchor.End),
                ],
                rows) { Above = 4 },
        ], say);
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
