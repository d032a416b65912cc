using Clomwright.Analysis.Days;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>Every lift by its dates: a band, what it waits for, and room for the day on which it was closed.</summary>
internal static class LiftPlanSheet
{
    public static IEnumerable<Draft> Of(Scene scene)
    {
        if (scene.Set.Days is not { Value: { Lifts.Count: > 0 } days })
        {
            return [];
        }

        var say = scene.Say;
        List<Block> blocks =
        [
            new Cautions(say.Say("caution.title"), [say.Say("caution.forecast-only"), say.Say("caution.wet-wall")]),
            new Table(
                [
                    new(say.Say("pocket.lift")), new(say.Say("pocket.to"), Anchor.End), new(""), new(say.Say("pocket.batches"), Anchor.End), new(say.Say("liftplan.early"), Anchor.End), new(say.Say("liftplan.half"), Anchor.End),
                    new(say.Say("liftplan.late"), Anchor.End), new(say.Say("liftplan.waits")) { Grows = 1 }, new(say.Say("liftplan.closed")),
                ],
                [.. days.Lifts.Reverse().Select(l => Lift(scene, days, l))]) { Above = 4, Pad = 1.1 },
            new Paragraph(say.Say("liftplan.how", ("n", days.Seasons), ("start", days.Start)), Styles.Body) { Above = 2.5 },
            new Paragraph(say.Say("days.lost", ("days", Amount.Number(Math.Round(days.WeatherDays, 1))), ("frost", Amount.Fraction(Math.Round(days.FrostRisk, 2)))), Styles.Body) { Above = 1.5 },
        ];
        return Draft.Flow(new SheetHead("lift-plan", say.Say("liftplan.title"), Clock.Forecast), scene.Portrait, blocks, say);
    }

    private static Row Lift(Scene scene, DaysResult days, LiftForecast lift)
    {
        var say = scene.Say;
        string On(int? day) => day is { } d ? DayBoardSheet.Day(scene, days.Start.AddDays(d)) : say.Say("days.later");
        var batches = scene.Set.Quantities.Lifts.FirstOrDefault(q => q.Lift == lift.Lift)?.Batches;
        return new Row(
        [
            new Cell(say.One(Amount.Count(lift.Lift + 1))) { Tick = true, Lettering = Styles.Heading },
            .. scene.Pair(scene.Geometry.Lifts[lift.Lift].Top, Styles.BodyStrong),
            new Cell(batches is { } b ? say.One(Amount.Number(Math.Round(b * 2) / 2)) : "?"),
            new Cell(On(lift.Closed.P10)), new Cell(On(lift.Closed.P50)) { Lettering = Styles.Heading }, new Cell(On(lift.Closed.P90)),
            new Cell(say.Say(lift.ByDrying > 0.5 ? "liftplan.by-drying" : "liftplan.by-people"), say.Say("liftplan.share", ("share", Amount.Fraction(Math.Round(lift.ByDrying, 2))))),
            new Cell(".................."),
        ]);
    }
}
