using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>What to order from one supplier, with room for what came and what is left.</summary>
internal static class OrderSheet
{
    public static IEnumerable<Draft> All(Scene scene) =>
        scene.Set.Quantities.Orders.GroupBy(o => o.Supplier).SelectMany(g => Of(scene, g.Key, [.. g]));

    private static IEnumerable<Draft> Of(Scene scene, string supplier, IReadOnlyList<OrderLine> lines)
    {
        var say = scene.Say;
        var head = new SheetHead("order-" + supplier, say.Say("order.title-" + supplier));
        List<Block> blocks =
        [
            new Table(
                [
                    new(""), new(say.Say("order.what")) { Grows = 1 }, new(say.Say("order.net"), Anchor.End), new(say.Say("order.waste"), Anchor.End),
                    new(say.Say("order.order"), Anchor.End), new(say.Say("order.came"), Anchor.End), new(say.Say("order.left"), Anchor.End),
                ],
                [.. lines.Select(l => Line(scene, l))]),
            new Paragraph(say.Say("order.note"), Styles.Small),
            new Facts([.. ((string[])["order.supplier", "order.ordered-on", "order.needed-by", "order.access"]).Select(k => new Fact(say.Say(k), ""))], Styles.Body) { Above = 6 },
            new Cautions(say.Say("caution.title"), [.. Hazards(supplier).Select(h => say.Say(h))]) { Above = 6 },
        ];
        return Draft.Flow(head, scene.Portrait, blocks, say);
    }

    private static Row Line(Scene scene, OrderLine line)
    {
        var say = scene.Say;
        return new Row(
            new Cell("") { Tick = true },
            new Cell(say.Say(line.What), say.Say(line.Basis)),
            line.Net is { } net ? scene.Cell(net) : new Cell(say.Say("not-known")),
            new Cell(line.Net is null ? "" : say.One(Amount.Fraction(line.Waste))),
            line.Order is { } order ? scene.Cell(order, say.Say(line.Tag)) with { Lettering = Styles.Reading } : new Cell(say.Say("not-checked")) { Lettering = Styles.BodyStrong },
            new Cell("................"),
            new Cell("................"));
    }

    private static IEnumerable<string> Hazards(string supplier) => supplier switch
    {
        "earth" => ["caution.dust", "caution.treading", "caution.loads"],
        "stone" => ["caution.dust", "caution.stone", "caution.loads"],
        "straw" => ["caution.straw"],
        _ => ["caution.loads"],
    };
}
