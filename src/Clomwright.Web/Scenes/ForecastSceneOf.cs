using System.Globalization;
using Clomwright.Analysis;
using Clomwright.Analysis.Days;
using Clomwright.Evidence;
using Clomwright.Study;

namespace Clomwright.Web.Scenes;

/// <summary>The forecast of a job as the page draws it.</summary>
public static class ForecastSceneOf
{
    private const int DaysMost = 500, WeeksWritten = 6;

    /// <summary>The scene.</summary>
    /// <param name="study">The house.</param>
    /// <param name="known">Its forecast, or why there is none.</param>
    /// <param name="today">Of which week who does what is told, the first of work where it has not begun; null leaves that out.</param>
    /// <param name="words">The language.</param>
    public static ForecastScene Scene(HouseStudy study, Known<DaysResult> known, DateOnly? today, Phrasebook words)
    {
        ArgumentNullException.ThrowIfNull(study);
        var pen = new Pen(words, study.House.Units);
        if (known.Value is not { } days)
        {
            return new() { NotChecked = pen.Say(known.NotChecked!), Figures = [], Notes = [], Rows = [], Last = 0, Weeks = [], Lifts = [], Days = [], Says = [], Week = null };
        }

        var lifts = Lifts(study, days, pen);
        // The chart ends with the roof: what comes much later is in the table.
        var raised = days.Mark(WorkList.Raise)?.Days ?? days.Mark(DaysResult.WallTop)?.Days ?? days.Finish;
        var last = Math.Min(DaysMost, Math.Max(14, (raised.P90 ?? raised.P50 ?? 60) + 14));
        var stands = Math.Min(last, (raised.P50 ?? last) + 1);
        return new()
        {
            NotChecked = null, Lifts = lifts, Last = last, Rows = [.. Rows(days, pen)], Weeks = [.. Mondays(days.Start, last, pen)], Week = today is { } day ? Week(study, day, pen) : null,
            Figures = [.. new[] { (DaysResult.WallTop, "web.days.top"), (WorkList.Raise, "web.days.poles"), ("finish", "web.days.finish") }.Where(f => days.Mark(f.Item1) is not null).Select(f => new Figure(pen.Say(f.Item2), Span(days, days.Mark(f.Item1)!.Days, pen)))],
            Notes =
            [
                pen.Say("web.days.seasons", ("n", days.Seasons), ("start", days.Start)),
                .. RoofDay.Of(study.House) is { Count: > 0 } roof ? [string.Join(" ", roof.Select(pen.Say))] : Array.Empty<string>(),
                .. days.Learned is { } log ? [pen.Say("web.days.learned", ("n", log.Days), ("last", log.LastDay), ("share", Amount.Fraction(Math.Round(log.CobLaid, 2))), ("pace", Amount.Number(Math.Round(log.Pace.Middle, 2))))] : Array.Empty<string>(),
                pen.Say("web.days.lost", ("days", Amount.Number(Math.Round(days.WeatherDays, 1))), ("frost", Amount.Fraction(Math.Round(days.FrostRisk, 2)))),
                .. days.Mark("plaster") is null ? [pen.Say("web.days.no-plaster")] : Array.Empty<string>(),
            ],
            Days = [.. Enumerable.Range(0, stands + 1).Select(d => pen.Say("web.water.day", ("n", d), ("date", days.Start.AddDays(d))))],
            Says = [.. Enumerable.Range(0, stands + 1).Select(d => Says(days, lifts, d, pen))],
        };
    }

    /// <summary>Other ways and weeks in words.</summary>
    /// <param name="study">The house.</param>
    /// <param name="known">What was found, or why nothing was.</param>
    /// <param name="words">The language.</param>
    public static ChoicesScene Choices(HouseStudy study, Known<DaysChoices> known, Phrasebook words)
    {
        ArgumentNullException.ThrowIfNull(study);
        var pen = new Pen(words, study.House.Units);
        if (known.Value is not { } choices)
        {
            return new(pen.Say(known.NotChecked!), [], [], "");
        }

        var start = study.House.Crew!.Start;
        string Week(StartWeek? week, string key, string none) => week is null ? pen.Say(none) : pen.Say(
            key, ("start", week.Start), ("days", week.Roof.P90 is { } after ? new Amount(after, Dimension.Days) : new Message("web.days.later")), ("share", Amount.Fraction(Math.Round(week.FrostRisk, 2))));
        return new(
            null, [.. choices.Ways.Select(way => (IReadOnlyList<string>)[pen.Say(way.What), On(start, way.Top.P50, pen), On(start, way.Roof.P50, pen), On(start, way.Roof.P90, pen)])],
            [Week(choices.Best, "web.days.best", "web.days.best-none"), Week(choices.LastSafe, "web.days.last-safe", "web.days.last-safe-none")], pen.Say("web.days.choices-note", ("n", choices.Seasons)));
    }

    private static IEnumerable<BandRow> Rows(DaysResult days, Pen pen)
    {
        BandRow Row(string key, string name, DayBand band, bool lift) => new(
            key, name, band.P10, band.P50, band.P90, On(days.Start, band.P10, pen), On(days.Start, band.P50, pen), On(days.Start, band.P90, pen), lift);
        BandRow Mark(Milestone mark) => Row(mark.Key, pen.Say(new Message($"analysis.task.{mark.Key}")), mark.Days, false);
        var before = days.Milestones.TakeWhile(m => m.Key != DaysResult.WallTop).ToList();
        return before.Select(Mark).Concat(days.Lifts.Select(l => Row($"lift-{l.Lift + 1}", pen.Say("web.days.lift", ("n", l.Lift + 1)), l.Closed, true)))
            .Concat(days.Milestones.Skip(before.Count).Where(m => m.Key != DaysResult.WallTop).Select(Mark));
    }

    private static RisingLift[] Lifts(HouseStudy study, DaysResult days, Pen pen) =>
    [
        .. days.Lifts.Select(l =>
        {
            var place = study.Geometry.Lifts[l.Lift];
            var from = l.Lift > 0 ? days.Lifts[l.Lift - 1].Closed.P50 : study.FirstLift is { } first ? first.DayNumber - days.Start.DayNumber : 0;
            var drying = l.ByDrying > 0.5;
            return new RisingLift(
                (l.Lift + 1).ToString(CultureInfo.InvariantCulture), place.Bottom.Metres, place.Top.Metres, pen.Short(place.Top), from, l.Closed.P50, l.ByDrying, drying ? "drying" : "people",
                pen.Say(drying ? "web.days.by-drying" : "web.days.by-people"), pen.Short(Amount.Fraction(Math.Round(l.ByDrying, 2))), Span(days, l.Closed, pen));
        }),
    ];

    private static string Says(DaysResult days, RisingLift[] lifts, int day, Pen pen)
    {
        var closed = lifts.Count(l => l.Shown <= day);
        return closed == lifts.Length ? pen.Say(days.Mark(WorkList.Raise)?.Days.P50 <= day ? "web.days.says-raised" : "web.days.says-all", ("of", lifts.Length))
            : lifts[closed].From > day ? pen.Say("web.days.says-before", ("of", lifts.Length))
            : pen.Say("web.days.says", ("closed", closed), ("of", lifts.Length), ("lift", lifts[closed].Number), ("limit", lifts[closed].LimitText));
    }

    private static WeekView? Week(HouseStudy study, DateOnly today, Pen pen)
    {
        if (study.BoardBy(Rota.FromDays.Of).Value is not { } board || board.Week(today) is not { Count: > 0 } week)
        {
            return null;
        }

        string Role(string role) => pen.Say($"analysis.role.{role}");
        string[] days = [.. week.Select(d => pen.Say("web.days.planned", ("date", d.Day.Date), ("work", d.Day.Lift is { } lift ? pen.Say("web.days.lift", ("n", lift + 1)) : d.Day.Works.Count > 0 ? Role(d.Day.Works[0].Task) : pen.Say("web.days.nothing"))))];
        if (board.Rota.Value is not { } rota)
        {
            var roles = week.SelectMany(d => d.Posts.Select(p => p.Role)).Distinct().ToList();
            return new(days, [.. roles.Select(role => new WeekRow(Role(role), [.. week.Select(d => d.Posts.FirstOrDefault(p => p.Role == role)?.People.ToString(CultureInfo.InvariantCulture) ?? "–")]))], pen.Say("web.days.unnamed"), []);
        }

        string Half(int person, int shift) => rota.Places.FirstOrDefault(p => p.Shift == shift && p.Person == person) is { } place ? place.IsLead ? pen.Say("web.days.leads", ("role", Role(place.Role))) : Role(place.Role) : Role("spare");
        string Cell(int person, BoardDay day) => day.Shift is not { } shift ? "–" : rota.Asked.Members[person].Away.Contains(day.Day.Date) ? pen.Say("web.days.away")
            : (Half(person, shift), Half(person, shift + 1)) is var (a, b) && a == b ? a : pen.Say("web.days.halves", ("before", a), ("after", b));
        return new(
            days, [.. rota.Asked.Members.Select((m, p) => new WeekRow(m.Name, [.. week.Select(d => Cell(p, d))]))], pen.Say(rota.IsSearched ? "web.days.searched" : "web.days.plain"),
            [.. rota.Asked.Clashes.Where(c => week.Any(d => d.Day.Date == c.Date)).Select(c => pen.Say("web.days.clash", ("date", c.Date), ("why", c.Why)))]);
    }

    private static IEnumerable<DayMark> Mondays(DateOnly start, int last, Pen pen)
    {
        var monday = (8 - (int)start.DayOfWeek) % 7;
        var every = 7 * Math.Max(1, (int)Math.Ceiling(last / 7.0 / WeeksWritten));
        for (var day = monday; day <= last; day += every)
        {
            yield return new(day, Short(start.AddDays(day), pen));
        }
    }

    private static string Short(DateOnly date, Pen pen) => pen.Say("web.days.day-month", ("day", date.Day), ("month", new Message($"papers.month-short.{date.Month}")));

    private static string On(DateOnly start, int? day, Pen pen) => day is { } d ? Short(start.AddDays(d), pen) + (start.AddDays(d).Year != start.Year ? " " + start.AddDays(d).Year.ToString(CultureInfo.InvariantCulture) : "") : pen.Say("web.days.later");

    private static string Span(DaysResult days, DayBand band, Pen pen) => pen.Say("web.days.span", ("early", On(days.Start, band.P10, pen)), ("half", On(days.Start, band.P50, pen)), ("late", On(days.Start, band.P90, pen)));
}
