using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>Is the ring still where it was drawn? Eight bearings at the top of each lift: what the drawing says, and room for what the tape says.</summary>
internal static class RingCheckSheet
{
    private const int Bearings = 8;

    /// <summary>Room for a number on the narrowest paper, mm.</summary>
    private const double Widest = 17;

    public static IEnumerable<Draft> Of(Scene scene) => Draft.Fewest(Styles.Tapes, numbers => Of(scene, numbers));

    private static IEnumerable<Draft> Of(Scene scene, Lettering numbers)
    {
        var say = scene.Say;
        List<Block> blocks =
        [
            new Paragraph(say.Say("ring.how"), Styles.Body),
            new Table([new("") { Grows = 1 }], [.. ((string[])["ring.read-all", "ring.read-one", "ring.read-two", "ring.read-lean"]).Select(k => new Row(new Cell(say.Say(k))))]) { Above = 1.5, Pad = 0.25 },
            new Cautions(say.Say("caution.title"), [say.Say("caution.wet-wall"), say.Say("caution.platform"), say.Say("caution.free-wall")]) { Above = 3 },
        ];
        foreach (var lift in scene.Geometry.Lifts)
        {
            blocks.Add(new Stack([new LeadIn(say.Say("ring.lift", ("n", lift.Number), ("top", lift.Top))), At(scene, lift.Top.Metres, numbers) with { Above = 0.8 }]) { Above = 3 });
        }

        return Draft.Flow(new SheetHead("ring-check", say.Say("ring.title"), Clock.Wall), scene.Portrait, blocks, say);
    }

    /// <summary>Rows of what is drawn and of what is measured, a column for each bearing.</summary>
    private static Table At(Scene scene, double height, Lettering numbers)
    {
        var say = scene.Say;
        Cell Drawn(double metres) => Of(scene, metres, numbers);
        OffsetRow[] rows = [.. OffsetTables.At(scene.Geometry, height, Bearings).Rows.GroupBy(r => Math.Round(r.Bearing, 6)).Select(g => g.First()).Take(Bearings)];
        return new Table(
            [new(""), .. rows.Select(r => new Column(say.One(Scene.Bearing(r.Bearing)), Anchor.End) { Grows = 1 })],
            [
                new Row([new Cell(say.Say("ring.inside")), .. rows.Select(r => Drawn(r.Inside))]),
                new Row([new Cell(say.Say("ring.measured")), .. rows.Select(_ => Dots.Cell(11))]),
                new Row([new Cell(say.Say("ring.outside")), .. rows.Select(r => Drawn(r.Outside))]),
                new Row([new Cell(say.Say("ring.measured")), .. rows.Select(_ => Dots.Cell(11))]),
            ]) { Pad = 0.55 };
    }

    /// <summary>What the drawing says: feet over inches where both do not fit beside each other.</summary>
    private static Cell Of(Scene scene, double metres, Lettering numbers)
    {
        var words = scene.Say.One(Amount.Metres(metres));
        return new Cell(numbers.WidthOf(words) > Widest ? words.Replace("ft\u00a0", "ft\n", StringComparison.Ordinal) : words) { Lettering = numbers };
    }
}
