using Clomwright.Analysis.Days;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Study;

namespace Clomwright.Papers.Sheets;

/// <summary>For the host of a course: what is on site by when and how much of it, and what the people need.</summary>
internal static class HostListSheet
{
    public static IEnumerable<Draft> Of(Scene scene)
    {
        if (scene.Set.Host is not { Value: { } host })
        {
            return [];
        }

        var say = scene.Say;
        List<Block> blocks =
        [
            new Facts(
            [
                new Fact(say.Say("host.start"), say.Say(host.Start)), new Fact(say.Say("host.site"), say.Say(host.SiteReady), say.Say("host.site-what")),
                new Fact(say.Say("host.people"), say.One(Amount.Count(host.People)), say.Say("host.people-what")), new Fact(say.Say("host.days"), say.One(Amount.Count(host.WorkDays)), say.Say("host.days-what")),
            ], Styles.Heading),
            .. scene.Strong(RoofDay.Of(scene.House), 2),
            new Heading(say.Say("host.by")) { Above = 4 },
            new Table(
                [new(say.Say("order.what")) { Grows = 1 }, new(say.Say("order.order"), Anchor.End), new(""), new(say.Say("order.came"))],
                [.. host.Lines.GroupBy(l => (l.By, l.Task, l.Needed)).SelectMany(g => Group(scene, g.Key.By, g.Key.Task, g.Key.Needed, g))]) { Above = 1.5, Pad = 0.6 },
            new Paragraph(say.Say("host.how", ("days", host.Assumptions.FirstOrDefault(a => a.Key == "host-materials-days")?.Value ?? new Amount((host.Lines.Where(l => l.Needed is not null).Select(l => l.Needed!.Value.DayNumber - l.By.DayNumber).FirstOrDefault()), Dimension.Days))), Styles.Small) { Above = 1 },
            new Heading(say.Say("host.a-day")) { Above = 4 },
            new Table(
                [new("") { Grows = 1 }, new(say.Say("host.each-day"), Anchor.End), new(say.Say("host.altogether"), Anchor.End)],
                [
                    new Row(new Cell(say.Say("host.meals")) { Tick = true }, new Cell(say.One(Amount.Count(host.Meals))), new Cell(say.One(Amount.Count(host.Meals * host.WorkDays)))),
                    new Row(new Cell(say.Say("host.drinking")) { Tick = true }, Poured(say, host.Drinking), Poured(say, host.Drinking * host.WorkDays)),
                    new Row(new Cell(say.Say("host.washing")) { Tick = true }, Poured(say, host.Washing), Poured(say, host.Washing * host.WorkDays)),
                    new Row(new Cell(say.Say("host.toilets")) { Tick = true }, new Cell(say.One(Amount.Count(host.Toilets))), new Cell("")),
                ]) { Above = 1.5, Pad = 0.6 },
            new Paragraph(say.Say("host.practice"), Styles.Small) { Above = 1 },
            new Heading(say.Say("host.also")) { Above = 4 },
            new Table([new("") { Grows = 1 }], [.. ((string[])["host.also-shelter", "host.also-room", "host.also-aid", "host.also-water", "host.also-access", "host.also-visitors"]).Select(k => new Row(new Cell(say.Say(k)) { Tick = true }))]) { Above = 1, Pad = 0.35 },
            new Cautions(say.Say("caution.title"), [say.Say("caution.forecast-only"), say.Say("caution.loads"), say.Say("caution.services")]) { Above = 4 },
        ];
        return Draft.Flow(new SheetHead("host-list", say.Say("host.title"), Clock.Forecast), scene.Portrait, blocks, say);
    }

    /// <summary>A line with the day, then what comes on it.</summary>
    private static IEnumerable<Row> Group(Scene scene, DateOnly by, string task, DateOnly? needed, IEnumerable<HostLine> lines)
    {
        var say = scene.Say;
        var (day, role) = (DayBoardSheet.Day(scene, by), new Message($"analysis.role.{task}"));
        yield return new Row(new Cell(needed is { } first ? say.Say("host.group", ("day", day), ("task", role), ("needed", DayBoardSheet.Day(scene, first))) : say.Say("host.group-before", ("day", day), ("task", role))) { Lettering = Styles.BodyStrong }) { Ruled = true };
        foreach (var order in lines.Select(l => l.Line))
        {
            Cell[] much = order.Order is not { } amount ? [new Cell(say.Say("not-checked")) { Lettering = Styles.BodyStrong }, new Cell("")]
                : order.Key is "water" or "floor-oil" && amount.Dimension == Dimension.Volume ? [new Cell(say.Poured(amount.Si, say.First)), new Cell(say.Poured(amount.Si, say.Second)) { Lettering = Styles.Small }]
                : scene.Pair(amount, Styles.Body);
            yield return new Row([new Cell(say.Say(order.What)) { Tick = true }, .. much, new Cell("..................")]);
        }
    }

    private static Cell Poured(Wording say, double cubicMetres) =>
        new(say.Poured(cubicMetres, say.First), say.Poured(cubicMetres, say.Second));
}
