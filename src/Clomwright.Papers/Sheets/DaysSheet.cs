using Clomwright.Analysis.Days;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;
using Clomwright.Study;

namespace Clomwright.Papers.Sheets;

/// <summary>When the job would be done: bars over the weeks, what each lift waits for, and the hours that it rests on.</summary>
internal static class DaysSheet
{
    public static IEnumerable<Draft> Of(Scene scene)
    {
        if (scene.Set.Days is not { Value: { } days })
        {
            return [];
        }

        var say = scene.Say;
        var rows = Rows(scene, days).ToList();
        var (far, near) = (rows.Where(r => r.Half > Far(days)).ToList(), rows.Where(r => r.Half <= Far(days)).ToList());
        List<Block> blocks =
        [
            new Facts([Fact(scene, "days.top", days, days.Mark(DaysResult.WallTop)), Fact(scene, "days.poles", days, days.Mark(WorkList.Raise)), Fact(scene, "days.finish", days, days.Mark(DaysResult.Whole))], Styles.Reading),
            new Paragraph(What(say, days), Styles.Body) { Above = 2.5 },
            .. scene.Strong(RoofDay.Of(scene.House), 1.5),
            new Cautions(say.Say("caution.title"), [say.Say("caution.forecast-only"), say.Say("caution.early-roof"), say.Say("caution.early-plaster")]) { Above = 3 },
            new Heading(say.Say("days.bars")) { Above = 4 },
            .. near.Count > 0 ? new Block[] { Chart(scene, days, near) } : [],
            .. far.Count > 0 ? new Block[] { new Paragraph(string.Join("  ", far.Select(r => say.Say("days.far", ("what", r.Name), ("early", On(say, days, r.Early)), ("late", r.Late is { } late ? On(say, days, late) : say.Say("days.later"))))), Styles.Body) { Above = 2 } } : [],
            new Paragraph(say.Say("days.bars-how"), Styles.Small) { Above = 1 },
            new Paragraph(say.Say("days.lost", ("days", Amount.Number(Math.Round(days.WeatherDays, 1))), ("frost", Amount.Fraction(Math.Round(days.FrostRisk, 2)))), Styles.Body) { Above = 2 },
            new Heading(say.Say("days.hours")) { Above = 4 },
            Hours(scene, days),
            new Heading(say.Say("days.assumed")) { Above = 4 },
            new Table(
                [new(say.Say("findings.assumed")) { Grows = 1 }, new(say.Say("findings.value"), Anchor.End), new(say.Say("findings.source"))],
                [.. days.Assumptions.Select(a => new Row(new Cell(say.Say(a.What)), new Cell(say.Say(a.Value)) { Lettering = Styles.BodyStrong }, new Cell("", say.Say(a.Source))))]) { Above = 1.5 },
        ];
        return Draft.Flow(new SheetHead("days", say.Say("days.title"), Clock.Forecast), scene.Portrait, blocks, say);
    }

    /// <summary>What the forecast rests on; whose pace was measured, by how many written days, and what they told.</summary>
    private static string What(Wording say, DaysResult days)
    {
        if (days.Learned is not { } learned)
        {
            return say.Say("days.what", ("n", days.Seasons), ("start", days.Start));
        }

        string Factor(string key, LearnedFactor f) => f.Readings == 0 ? "" : " " + say.Say(key, ("n", f.Readings), ("middle", Amount.Fraction(Math.Round(f.Middle, 2))), ("low", Amount.Fraction(Math.Round(f.Low, 2))), ("high", Amount.Fraction(Math.Round(f.High, 2))));
        var told = Factor("days.what-pace", learned.Pace) + Factor("days.what-drying", learned.Drying) + Factor("days.what-tasks", learned.Tasks);
        return say.Say("days.what-learned", ("n", days.Seasons), ("from", learned.From), ("days", learned.Days), ("last", learned.LastDay)) + (told.Length > 0 ? told : " " + say.Say("days.what-nothing"));
    }

    /// <summary>Marks much later than the roof have a line of their own: a bar of a year would leave the weeks no room.</summary>
    private static int Far(DaysResult days) => 2 * (days.Mark(WorkList.Raise)?.Days.P90 ?? days.Mark(DaysResult.WallTop)?.Days.P90 ?? int.MaxValue / 4) + 30;

    private static string On(Wording say, DaysResult days, int day) => say.Say(days.Start.AddDays(day));

    private static Fact Fact(Scene scene, string key, DaysResult days, Milestone? mark) => new(
        scene.Say.Say(key), mark?.Days.P50 is { } half ? On(scene.Say, days, half) : scene.Say.Say("days.later"),
        mark?.Days is { P10: { } early, P90: { } late } ? scene.Say.Say("days.between", ("early", On(scene.Say, days, early)), ("late", On(scene.Say, days, late))) : "");

    private static IEnumerable<DaysChart.Row> Rows(Scene scene, DaysResult days)
    {
        var say = scene.Say;
        DaysChart.Row? Row(string name, DayBand band, string note) => band is { P10: { } early, P50: { } half } ? new(name, early, half, band.P90, note) : null;
        var before = days.Milestones.TakeWhile(m => m.Key != DaysResult.WallTop).ToList();
        return before.Select(m => Row(say.Say(new Message($"analysis.task.{m.Key}")), m.Days, ""))
            .Concat(days.Lifts.Select(l => Row(say.Say("drying.lift", ("n", l.Lift + 1)), l.Closed, l.ByDrying >= 0.01 ? say.Say("days.waits", ("share", Amount.Fraction(Math.Round(l.ByDrying, 2)))) : "")))
            .Concat(days.Milestones.Skip(before.Count).Where(m => m.Key is not (DaysResult.Whole or DaysResult.WallTop)).Select(m => Row(say.Say(new Message($"analysis.task.{m.Key}")), m.Days, "")))
            .OfType<DaysChart.Row>();
    }

    private static Picture Chart(Scene scene, DaysResult days, IReadOnlyList<DaysChart.Row> rows)
    {
        var (marks, view) = DaysChart.Of(rows, days.Start, date => scene.Say.Say("days.day-month", ("day", date.Day), ("month", new Message($"language.month-{date.Month}"))), SheetFrame.Content(scene.Portrait).Width);
        return new Picture(marks, view) { Above = 2, Left = true };
    }

    private static Table Hours(Scene scene, DaysResult days)
    {
        var say = scene.Say;
        Cell Number(double hours) => new(say.One(Amount.Number(Math.Round(hours))));
        return new Table(
            [new(say.Say("days.task")) { Grows = 1 }, new(say.Say("days.person-hours"), Anchor.End), new(say.Say("days.most-people"), Anchor.End), new(say.Say("days.rest"), Anchor.End)],
            [
                new Row(new Cell(say.Say("days.cob")) { Lettering = Styles.BodyStrong }, Number(days.CobHours), new Cell("–"), new Cell("–")),
                .. days.Tasks.Select(t => new Row(
                    new Cell(say.Say(new Message($"analysis.task.{t.Key}"))) { Lettering = Styles.BodyStrong }, Number(t.Hours), Number(t.People), t.RestDays > 0 ? Number(t.RestDays) : new Cell("–"))),
            ]) { Above = 1.5, Pad = 0.7 };
    }
}
