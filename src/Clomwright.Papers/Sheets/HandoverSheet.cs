using Clomwright.Analysis.Days;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Layout;
using Clomwright.Study;

namespace Clomwright.Papers.Sheets;

/// <summary>Two days without the lead: what is next, until when the next lift keys, what nobody may do, whom to call, what to write down.</summary>
internal static class HandoverSheet
{
    private static readonly string[] Never = ["higher", "soft", "dry", "props", "holes", "roof", "mix", "cover", "ground", "lee"];

    private static readonly string[] May = ["stop", "cover", "trim", "people"];

    private static readonly string[] Call = ["crack", "lean", "base", "frame", "fits", "noise", "hurt"];

    private static readonly string[] Write = ["log", "ready", "photos", "lorry", "weather"];

    public static IEnumerable<Draft> Of(Scene scene) => Of(scene.Say, scene.Set.Options.Paper, scene.House.Site.Emergency ?? new Emergency(), "handover", Next(scene));

    /// <summary>The same with nothing filled in.</summary>
    public static IEnumerable<Draft> Blank(Wording say, PaperSize paper) => Of(say, paper, new Emergency(), "handover-blank", Lines(say));

    private static IEnumerable<Draft> Of(Wording say, PaperSize paper, Emergency emergency, string key, IEnumerable<Block> next) => Draft.Flow(new SheetHead(key, say.Say("handover.title"), Clock.Forecast), paper.Portrait(),
    [
        new Facts([.. ((string[])["handover.from", "handover.until", "handover.second", "handover.reach"]).Select(k => new Fact(say.Say(k), ""))], Styles.Reading),
        new Heading(say.Say("handover.next")) { Above = 4 },
        .. next,
        new Beside(
            new Stack([new Heading(say.Say("handover.never")), Bulleted(say, "handover.never-", Never), new Heading(say.Say("handover.may")) { Above = 3 }, Bulleted(say, "handover.may-", May)]),
            new Stack([new Heading(say.Say("handover.call")), Bulleted(say, "handover.call-", Call), new Heading(say.Say("handover.write")) { Above = 3 }, Ticked(say, "handover.write-", Write)])) { Above = 4 },
        new Beside(
            new Stack([EmergencyCard.Contacts(say, emergency, 22, 22)]),
            new Stack([new Cautions(say.Say("caution.title"), [say.Say("caution.forecast-only"), say.Say("caution.wet-wall"), say.Say("caution.free-wall")])])) { Above = 3 },
    ], say);

    /// <summary>The next two days of work by the board, and the window of the lift in hand.</summary>
    private static IEnumerable<Block> Next(Scene scene)
    {
        var say = scene.Say;
        BoardDay[] days = [.. scene.Set.Board is { Value: { } board } ? board.Week(scene.Set.Options.Date).Take(2) : []];
        if (days.Length == 0)
        {
            return Lines(say);
        }

        var lift = days.Select(d => d.Day.Lift).FirstOrDefault(l => l is not null);
        return
        [
            new Table(
                [new(""), new(say.Say("board.wall")), new(say.Say("board.work")) { Grows = 1 }],
                [
                    .. days.Select(d => new Row(
                        new Cell(DayBoardSheet.Day(scene, d.Day.Date)) { Tick = true, Lettering = Styles.Reading },
                        d.Day.Lift is { } n
                            ? new Cell(say.Say("board.lift", ("n", n + 1), ("top", say.One(scene.Geometry.Lifts[n].Top))), say.Other(scene.Geometry.Lifts[n].Top)) { Lettering = Styles.BodyStrong }
                            : new Cell(say.Say(d.Day.IsStopped ? "board.stopped" : "board.no-cob")),
                        new Cell(d.Day.Works.Count == 0 ? "–" : string.Join(", ", d.Day.Works.Select(w => say.Say("board.task-hours", ("task", new Message($"analysis.role.{w.Task}")), ("hours", Amount.Number(Math.Round(w.Hours))))))))),
                ]) { Above = 1, Pad = 0.8 },
            new Paragraph(say.Say("handover.board"), Styles.Small) { Above = 1 },
            .. lift is { } at ? Window(scene, at) : [],
            .. Dates(say),
        ];
    }

    private static IEnumerable<Block> Window(Scene scene, int lift)
    {
        var say = scene.Say;
        if (scene.Set.Drying is not { Value: { } drying } || lift >= drying.Lifts.Count)
        {
            return [];
        }

        var band = drying.Lifts[lift];
        return
        [
            new Facts(
            [
                new Fact(say.Say("handover.firm-after", ("n", lift + 1)), say.Say("drying.days", ("days", say.Days(band.DaysToNext.Low, band.DaysToNext.High))), say.Say("drying.forecast")),
                new Fact(say.Say("handover.keys-after", ("n", lift + 1)), say.Say("drying.days", ("days", say.Days(band.KeysFor.Low, band.KeysFor.High))), say.Say("drying.forecast")),
            ], Styles.BodyStrong) { Above = 2.5, Across = 2 },
        ];
    }

    private static IEnumerable<Block> Lines(Wording say) =>
    [
        new Table([new("") { Grows = 1 }], [.. Enumerable.Range(0, 4).Select(_ => new Row(new Cell("") { Tick = true }))]) { Above = 1, Pad = 1.8 },
        .. Dates(say),
    ];

    /// <summary>What the lead knows when leaving.</summary>
    private static IEnumerable<Block> Dates(Wording say) =>
        [new Facts([.. ((string[])["handover.laid", "handover.firm", "handover.keys", "handover.top"]).Select(k => new Fact(say.Say(k), ""))], Styles.Reading) { Above = 2.5 }];

    private static Table Bulleted(Wording say, string prefix, string[] keys) => new([new("") { Grows = 1 }], [.. keys.Select(k => new Row(new Cell("– " + say.Say(prefix + k))))]) { Above = 0.8, Pad = 0.3 };

    private static Table Ticked(Wording say, string prefix, string[] keys) => new([new("") { Grows = 1 }], [.. keys.Select(k => new Row(new Cell(say.Say(prefix + k)) { Tick = true }))]) { Above = 0.8, Pad = 0.3 };
}
