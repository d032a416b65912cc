using Clomwright.Analysis.Mix;
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
                    new(say.Say("order.order"), Anchor.End), new(say.Say("order.as"), Anchor.End), new(say.Say("order.came"), Anchor.End), new(say.Say("order.left"), Anchor.End),
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
        var delivery = scene.Set.Mix?.Deliveries.FirstOrDefault(d => d.Key == line.Key);
        return new Row(
            new Cell("") { Tick = true },
            new Cell(say.Say(line.What), string.Join("; ", (delivery?.Notes.Select(n => say.Say(n)) ?? []).Prepend(say.Say(line.Basis)))),
            line.Net is { } net ? Much(scene, line, net) : new Cell(say.Say("not-known")),
            new Cell(line.Net is null ? "" : say.One(Amount.Fraction(line.Waste))),
            line.Order is { } order ? Much(scene, line, order, say.Say(line.Tag)) with { Lettering = Styles.Reading } : new Cell(say.Say("not-checked")) { Lettering = Styles.BodyStrong },
            Comes(scene, line, delivery),
            new Cell("............"),
            new Cell("............"));
    }

    /// <summary>An amount of an order in both systems, as the order sheet has it.</summary>
    public static string Much(Wording say, OrderLine line, Amount amount) =>
        IsPoured(line, amount) ? Wording.Dotted(say.Poured(amount.Si, say.First), say.Poured(amount.Si, say.Second)) : Wording.Dotted(say.One(amount), say.Other(amount));

    private static bool IsPoured(OrderLine line, Amount amount) => line.Key is "water" or "floor-oil" && amount.Dimension == Dimension.Volume;

    /// <summary>What is poured is ordered in gallons or litres.</summary>
    private static Cell Much(Scene scene, OrderLine line, Amount amount, string more = "") => IsPoured(line, amount)
        ? new Cell(scene.Say.Poured(amount.Si, scene.Say.First), Wording.Dotted(scene.Say.Poured(amount.Si, scene.Say.Second), more))
        : scene.Cell(amount, more);

    /// <summary>Trucks or bales, and what they weigh.</summary>
    private static Cell Comes(Scene scene, OrderLine line, Delivery? delivery)
    {
        var say = scene.Say;
        if (delivery?.Mass is not { } mass)
        {
            return new Cell("");
        }

        var weight = new Amount(mass, Dimension.Mass);
        if (line.Order?.Dimension == Dimension.Mass && delivery.Loads is { } bales)
        {
            return new Cell(say.Say("order.loads-" + delivery.LoadKey, ("n", bales))) { Lettering = Styles.BodyStrong };
        }

        return delivery.Loads is { } loads
            ? new Cell(say.Say("order.loads-" + delivery.LoadKey, ("n", loads)), Wording.Dotted(say.One(weight), say.Other(weight), say.Say(delivery.MassTag))) { Lettering = Styles.BodyStrong }
            : new Cell(say.One(weight), Wording.Dotted(say.Other(weight), say.Say(delivery.MassTag)));
    }

    private static IEnumerable<string> Hazards(string supplier) => supplier switch
    {
        "earth" => ["caution.dust", "caution.treading", "caution.loads"],
        "stone" => ["caution.dust", "caution.stone", "caution.loads"],
        "straw" => ["caution.straw"],
        "finishes" => ["caution.mortar", "caution.rags", "caution.loads"],
        _ => ["caution.loads"],
    };
}
