using System.Globalization;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Study;

namespace Clomwright.Papers.Sheets;

/// <summary>What the house costs as far as anybody was asked: quantities of the orders times typed prices, lowest and highest, and by month; an empty line where nobody was asked.</summary>
internal static class CostSheet
{
    public static IEnumerable<Draft> Of(Scene scene) => Draft.Fewest([false, true], close => Of(scene, close));

    /// <param name="scene">What is told.</param>
    /// <param name="close">Amounts stand behind what they are of, not under it.</param>
    private static IEnumerable<Draft> Of(Scene scene, bool close)
    {
        var (say, house) = (scene.Say, scene.House);
        var costs = Costs.Of(house, scene.Set.Quantities);
        var head = new SheetHead("costs", say.Say("costs.title"), Clock.Forecast);
        var money = house.Currency ?? "";
        List<Row> rows = [];
        foreach (var group in costs.Lines.GroupBy(l => l.Line?.Supplier ?? "others"))
        {
            rows.Add(new Row(new Cell(say.Say("costs.of-" + group.Key)) { Lettering = Styles.BodyStrong }) { Ruled = true });
            rows.AddRange(group.Select(l => Line(scene, l, close)));
        }

        if (costs.Lines.All(l => l.Line is not null))
        {
            rows.Add(new Row(new Cell(say.Say("costs.of-others")) { Lettering = Styles.BodyStrong }) { Ruled = true });
        }

        rows.AddRange(((string[])["permits", "engineer", "tests", "windows", "tools", "food", "carriage", ""]).Select(k => new Row(new Cell(k.Length == 0 ? "" : say.Say("costs.own-" + k)), Dots.Cell(12), Dots.Cell(14), Dots.Cell(14), Dots.Cell(14))));
        var missing = costs.Lines.Count - costs.Priced;
        return Draft.Flow(head, scene.Portrait,
        [
            costs.Priced == 0
                ? new Paragraph(say.Say("costs.none"), Styles.BodyStrong)
                : new Facts(
                [
                    new Fact(say.Say("costs.low"), Money(say, costs.Low, money), say.Say("costs.of-lines", ("n", costs.Priced), ("count", costs.Lines.Count))),
                    new Fact(say.Say("costs.high"), Money(say, costs.High, money), say.Say(Tag.Computed)),
                    new Fact(say.Say("costs.without"), say.One(Amount.Count(missing)), say.Say("costs.without-note")),
                ], Styles.Reading) { Across = 3 },
            new Paragraph(say.Say("costs.note"), Styles.Body) { Above = 2 },
            new Table(
                [new(say.Say("order.what")) { Grows = 1 }, new(say.Say("costs.quantity"), Anchor.End), new(say.Say("costs.price"), Anchor.End), new(say.Say("costs.lowest"), Anchor.End), new(say.Say("costs.highest"), Anchor.End)],
                rows) { Above = 3, Pad = 0.7 },
            .. Months(scene, costs),
            new Facts([new Fact(say.Say("costs.sum"), ""), new Fact(say.Say("costs.reserve"), ""), new Fact(say.Say("costs.by"), "")], Styles.Body) { Above = 5, Across = 3 },
            new Paragraph(say.Say("costs.reserve-note"), Styles.Small) { Above = 1.5 },
        ], say);
    }

    /// <summary>When the priced orders have to be on site, month by month, and what has come together until then.</summary>
    private static IEnumerable<Block> Months(Scene scene, Costs costs)
    {
        if (costs.Priced == 0 || scene.Set.Host is not { Value: { } host })
        {
            yield break;
        }

        var (say, money) = (scene.Say, scene.House.Currency ?? "");
        List<Row> rows = [];
        var (low, high) = (0.0, 0.0);
        foreach (var month in CostMonth.Of(costs, host).Where(m => m.Lines.Count > 0 || m.Month is not null))
        {
            (low, high) = (low + month.Low, high + month.High);
            rows.Add(new Row(
                new Cell(month.Month is { } first ? say.Say("costs.month", ("month", new Message($"language.month-{first.Month}")), ("year", first.Year.ToString(CultureInfo.InvariantCulture))) : say.Say("costs.no-month")) { Lettering = Styles.BodyStrong },
                new Cell(
                    string.Join(", ", month.Lines.Select(l => l.Line is { } order ? say.Say(order.What) : l.Price!.Of)),
                    month.Unpriced > 0 ? say.Say("costs.unpriced", ("n", month.Unpriced)) : ""),
                new Cell(month.Lines.Count == 0 ? "–" : Money(say, month.Low, money)), new Cell(month.Lines.Count == 0 ? "–" : Money(say, month.High, money)),
                new Cell(Money(say, low, money)), new Cell(Money(say, high, money)) { Lettering = Styles.BodyStrong }));
        }

        yield return new Heading(say.Say("costs.months")) { Above = 5 };
        yield return new Paragraph(say.Say("costs.months-note", ("start", host.Start)), Styles.Body) { Above = 1.5 };
        yield return new Table(
            [new(say.Say("costs.month-head")), new(say.Say("costs.for")) { Grows = 1 }, new(say.Say("costs.lowest"), Anchor.End), new(say.Say("costs.highest"), Anchor.End), new(say.Say("costs.until-low"), Anchor.End), new(say.Say("costs.until-high"), Anchor.End)],
            rows) { Above = 1.5, Pad = 0.7 };
    }

    private static Row Line(Scene scene, CostLine line, bool close)
    {
        var (say, money) = (scene.Say, scene.House.Currency ?? "");
        var much = line.Line is { } order ? order.Order is { } amount ? OrderSheet.Much(say, order, amount) : say.Say("not-checked") : "";
        var what = line.Line is null ? new Cell(line.Price!.Of) : close ? new Cell(Wording.Dotted(say.Say(line.Line.What), much)) : new Cell(say.Say(line.Line.What), much);
        if (line.Price is not { } price)
        {
            return new Row(what, Dots.Cell(12), Dots.Cell(14), Dots.Cell(14), Dots.Cell(14));
        }

        var per = say.Say("costs.per-" + price.Per.ToString().ToLowerInvariant());
        var told = Wording.Dotted(price.From ?? say.Say("costs.nobody"), price.On is { } on ? say.Say(on) : say.Say("costs.undated"));
        var range = price.High is { } high && high > price.Low ? $"{Number(say, price.Low)} – {Number(say, high)}" : Number(say, price.Low);
        var quantity = line.Quantity is { } count ? new Cell(Wording.Unbroken($"{Number(say, count)} {(price.Per is PriceUnit.Each or PriceUnit.Load or PriceUnit.Bale ? "× " : "")}{per}")) : new Cell(say.Say("not-checked"), line.NotChecked is { } why ? say.Say(why) : "");
        return new Row(
            what, quantity, new Cell(Wording.Unbroken($"{range} / {per}"), told),
            line.Low is { } low ? new Cell(Money(say, low, money)) { Lettering = Styles.BodyStrong } : Dots.Cell(14),
            line.High is { } most ? new Cell(Money(say, most, money)) { Lettering = Styles.BodyStrong } : Dots.Cell(14));
    }

    private static string Number(Wording say, double value) => say.Book.Marked(value.ToString(value < 100 ? "0.##" : "0", CultureInfo.InvariantCulture));

    /// <summary>Whole units of money; a forecast has no cents.</summary>
    private static string Money(Wording say, double value, string currency) => Wording.Unbroken($"{say.Book.Marked(value.ToString("0", CultureInfo.InvariantCulture))} {currency}".TrimEnd());
}
