using Clomwright.Analysis.Days;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Study;

namespace Clomwright.Papers.Sheets;

/// <summary>The week on one board: what each day is for, how high, who does what, when the next lift may go on, and what rain changes.</summary>
internal static class DayBoardSheet
{
    public static IEnumerable<Draft> Of(Scene scene)
    {
        if (scene.Set.Board is not { } known)
        {
            return [];
        }

        var say = scene.Say;
        var paper = scene.Set.Options.Paper.Drawing()[0];
        var head = new SheetHead("day-board", say.Say("board.title"), Clock.Forecast);
        if (known.Value is not { } board || board.Week(scene.Set.Options.Date) is not { Count: > 0 } week)
        {
            return Draft.Flow(head, paper, [new Paragraph(say.Say("board.none", ("because", known.NotChecked is { } because ? say.Say(because) : say.Say("not-known"))), Styles.BodyStrong)], say);
        }

        List<Block> blocks =
        [
            new Table(
                [new("") { Grows = 0.2 }, .. week.Select(_ => new Column("") { Grows = 1 })],
                [
                    new Row([new Cell(""), .. week.Select(d => new Cell(Day(scene, d.Day.Date)) { Lettering = Styles.Reading })]),
                    Wall(scene, week), Work(scene, week), .. Who(scene, board, week),
                ]) { Pad = 1.1, Lettering = Large(scene, board) ? Styles.ReadingPlain : Styles.Body },
            new Paragraph(say.Say(board.Rota.Value is { } rota ? rota.IsSearched ? "board.how-searched" : "board.how-plain" : "board.how-unnamed"), Styles.Small) { Above = 1.5 },
            .. scene.Strong(RoofDay.Of(scene.House, week.Select(d => d.Day)), 1.5),
            .. Clashes(scene, board, week),
            new Beside(
                new Stack([new Heading(say.Say("board.ready")), new Table([new("") { Grows = 1 }], [.. ((string[])["lift.test-stick", "lift.test-thumb", "lift.test-foot", "board.rain"]).Select(k => new Row(new Cell(say.Say(k)) { Tick = true }))]) { Above = 1, Pad = 0.35 }]),
                new Stack([.. Learners(scene, board)]), 0.55) { Above = 4 },
            new Cautions(say.Say("caution.title"), [.. ((string[])["forecast-only", "wet-wall", "lifting", "treading"]).Concat(Hazards(week, scene.House.Roof is Building.Roof.Reciprocal)).Distinct().Select(k => say.Say("caution." + k))]) { Above = 4 },
        ];
        return Draft.Flow(head, paper, blocks, say);
    }

    /// <summary>Weekday, day and month; the year where it is not the one in which work begins.</summary>
    public static string Day(Scene scene, DateOnly date) => scene.Say.Say(scene.House.Crew?.Start.Year == date.Year ? "board.day" : "board.day-year", ("year", date.Year.ToString(System.Globalization.CultureInfo.InvariantCulture)), ("weekday", new Message($"papers.weekday.{(int)date.DayOfWeek}")), ("day", date.Day), ("month", new Message($"papers.month-short.{date.Month}")));

    private static Row Wall(Scene scene, Sequence<BoardDay> week) => new([
        new Cell(scene.Say.Say("board.wall")) { Lettering = Styles.Heading },
        .. week.Select(d => d.Day.Lift is { } lift
            ? new Cell(scene.Say.Say("board.lift", ("n", lift + 1), ("top", scene.Say.One(scene.Geometry.Lifts[lift].Top))), Wording.Dotted(scene.Say.Other(scene.Geometry.Lifts[lift].Top), d.Day.Closes ? scene.Say.Say("board.closes") : "")) { Lettering = Styles.Reading }
            : new Cell(scene.Say.Say(d.Day.IsStopped ? "board.stopped" : "board.no-cob"))),
    ]);

    private static Row Work(Scene scene, Sequence<BoardDay> week) => new([
        new Cell(scene.Say.Say("board.work"), scene.Say.Say("board.hours")) { Lettering = Styles.Heading },
        .. week.Select(d => new Cell(d.Day.Works.Count == 0 ? "–" : string.Join('\n', d.Day.Works.Select(w => scene.Say.Say("board.task-hours", ("task", Task(w.Task)), ("hours", Amount.Number(Math.Round(w.Hours, w.Hours < 1 ? 1 : 0)))))))),
    ]) { Ruled = true };

    /// <summary>On large paper a small crew is read from across the site.</summary>
    private static bool Large(Scene scene, CrewBoard board) => scene.Set.Options.Paper is PaperSize.A3 or PaperSize.Tabloid && (board.Rota.Value?.Asked.Members.Count ?? 0) <= 9;

    private static Message Task(string task) => new($"analysis.role.{task}");

    private static Message Role(string role) => new($"analysis.role.{role}");

    /// <summary>A row for each of the crew; for each kind of work, with room for names, where nobody is named.</summary>
    private static IEnumerable<Row> Who(Scene scene, CrewBoard board, Sequence<BoardDay> week)
    {
        var say = scene.Say;
        if (board.Rota.Value is { } rota && week.Any(d => d.Shift is not null))
        {
            for (var p = 0; p < rota.Asked.Members.Count; p++)
            {
                var person = p;
                var member = rota.Asked.Members[p];
                yield return new Row([new Cell(member.Name) { Lettering = Large(scene, board) ? Styles.Reading : Styles.BodyStrong }, .. week.Select(d => d.Shift is not { } shift ? new Cell("–") : member.Away.Contains(d.Day.Date) ? new Cell(say.Say("board.away")) : Place(scene, rota, person, shift))]) { Ruled = p == 0 };
            }

            yield break;
        }

        var roles = week.SelectMany(d => d.Posts.Select(post => post.Role)).Distinct().ToList();
        foreach (var (role, i) in roles.Select((r, i) => (r, i)))
        {
            yield return new Row([new Cell(say.Say(Role(role))) { Lettering = Styles.BodyStrong }, .. week.Select(d => d.Posts.FirstOrDefault(post => post.Role == role) is { } post
                ? new Cell(say.Say(post.Leads > 0 ? "board.people-led" : "board.people", ("n", post.People), ("leads", post.Leads)), "...............................") { Lettering = Styles.BodyStrong } : new Cell("–"))]) { Ruled = i == 0 };
        }
    }

    /// <summary>Both halves of the day; one line where they are alike.</summary>
    private static Cell Place(Scene scene, RotaResult rota, int person, int shift)
    {
        string Half(int n) => rota.Places.FirstOrDefault(p => p.Shift == n && p.Person == person) is { } place
            ? scene.Say.Say(place.IsLead ? "board.leads" : "board.at", ("role", Role(place.Role))) : scene.Say.Say("board.spare");
        var (before, after) = (Half(shift), Half(shift + 1));
        return new Cell(before == after ? before : before + "\n" + after);
    }

    private static IEnumerable<Block> Clashes(Scene scene, CrewBoard board, Sequence<BoardDay> week)
    {
        var clashes = board.Rota.Value?.Asked.Clashes.Where(c => week.Any(d => d.Day.Date == c.Date)).ToList() ?? [];
        return clashes.Count == 0 ? [] : [new Heading(scene.Say.Say("board.clashes")) { Above = 3 }, .. clashes.Select(c => new Paragraph(scene.Say.Say("board.clash", ("day", Day(scene, c.Date)), ("why", c.Why)), Styles.BodyStrong) { Above = 1 })];
    }

    /// <summary>Which learner meets which skill, and when first.</summary>
    private static IEnumerable<Block> Learners(Scene scene, CrewBoard board)
    {
        var say = scene.Say;
        if (board.Rota.Value is not { } rota)
        {
            yield return new Paragraph(say.Say("board.unnamed"), Styles.Body);
            yield break;
        }

        var meetings = rota.Meetings();
        var skills = meetings.Select(m => m.Aim.Skill).Distinct().Order().ToList();
        yield return new Heading(say.Say("board.learns"));
        yield return new Table(
            [new(""), .. skills.Select(s => new Column(say.Say(Skill(s)), Anchor.Middle) { Grows = 1 })],
            [
                .. meetings.Select(m => m.Aim.Person).Distinct().Select(p => new Row([new Cell(rota.Asked.Members[p].Name) { Lettering = Styles.BodyStrong }, .. skills.Select(s => meetings.FirstOrDefault(m => m.Aim == new RotaAim(p, s)) is { } met
                    ? new Cell(met.Shift is { } shift ? say.Say("days.day-month", ("day", rota.Asked.Shifts[shift].Date.Day), ("month", new Message($"papers.month-short.{rota.Asked.Shifts[shift].Date.Month}"))) : say.Say("board.not-met"))
                    : new Cell(rota.Asked.Members[p].Knows.Contains(s) ? say.Say("board.knows") : "–"))])),
            ]) { Above = 1, Pad = 0.35 };
        yield return new Paragraph(say.Say("board.learns-how"), Styles.Small) { Above = 1 };
    }

    private static Message Skill(CrewSkill skill) => new($"analysis.skill.{skill.ToString().ToLowerInvariant()}");

    private static IEnumerable<string> Hazards(Sequence<BoardDay> week, bool ring) => week.SelectMany(d => d.Day.Works).SelectMany(w => w.Task switch
    {
        "trench" => (string[])["trench", "services"],
        "rubble" or WorkList.Stem => ["stone", "mortar"],
        WorkList.Raise => [ring ? "raising" : "raising-plain", "falls"],
        "deck" or "membrane" => ["falls"],
        "soil" => ["heaps", ring ? "raising-under" : "raising-under-plain"],
        "plaster" => ["mortar"],
        _ => [],
    });
}
