using System.Globalization;
using Clomwright.Analysis.Days;
using Clomwright.Analysis.Drying;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Study;

namespace Clomwright.Web.Scenes;

/// <summary>A day on site as the page shows it.</summary>
public static class TodaySceneOf
{
    private static readonly string[] Tests = ["papers.lift.test-stick", "papers.lift.test-thumb", "papers.lift.test-foot", "papers.lift.test-shade"];

    /// <summary>The scene.</summary>
    /// <param name="study">The house with its site record.</param>
    /// <param name="now">The moment, by the clock of the place.</param>
    /// <param name="words">The language.</param>
    public static TodayScene Scene(HouseStudy study, DateTime now, Phrasebook words)
    {
        ArgumentNullException.ThrowIfNull(study);
        var pen = new Pen(words, study.House.Units);
        var date = DateOnly.FromDateTime(now);
        var today = SiteToday.Of(study, date, Rota.FromDays.Of);
        return new(
            study.House.Name, Iso(date), Weekday(date, pen), Made(now, words, study.House.Units),
            DayWords.Height(study, study.Options.Record) is { } height ? pen.Say(height) : "",
            InStem(study, today, Plan(today, pen), pen), today.Lift, HeightToday(study, pen), [.. Top(today, pen)], [.. study.Geometry.Lifts.Select(lift => Lift(study, lift, pen))],
            [.. Tests.Select(key => pen.Say(key))], Crew(today, pen), CrewNote(today, pen), Weather(today, pen), [.. WeatherDo(today, pen)],
            [.. Calls(study.House.Site.Emergency, pen)], [.. Told(study.House.Site.Emergency, pen)],
            [.. ((string[])["wet-wall", "lifting", "platform", "forecast-only"]).Select(c => pen.Say($"papers.caution.{c}"))], Written(study, today, pen));
    }

    /// <summary>As of when a scene holds, in words.</summary>
    /// <param name="now">The moment.</param>
    /// <param name="words">The language.</param>
    /// <param name="units">The units that come first.</param>
    public static string Made(DateTime now, Phrasebook words, UnitSystem units) =>
        new Pen(words, units).Say("web.today.made", ("date", DateOnly.FromDateTime(now)), ("time", now.ToString("HH:mm", CultureInfo.InvariantCulture)));

    private static string Iso(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Weekday(DateOnly date, Pen pen) => pen.Say("web.today.date", ("weekday", new Message($"papers.weekday.{(int)date.DayOfWeek}")), ("date", date));

    private static string Plan(SiteToday today, Pen pen)
    {
        if (today.Day is not { Day: var day })
        {
            return pen.Say("web.today.plan-none", ("because", today.Board.NotChecked ?? new Message("web.today.plan-done")));
        }

        var works = new Argument.List(day.Works.Select(w => (Argument)(w.Task == PlannedWork.Cob && day.Lift is { } lift ? Message.Of("web.days.lift", ("n", lift + 1)) : new Message($"analysis.role.{w.Task}"))).ToSequence());
        var work = day.IsStopped ? pen.Say("web.today.plan-stopped") : day.Works.Count == 0 ? pen.Say("web.days.nothing") : pen.Say("web.today.plan-works", ("works", works));
        return day.Date == today.Date ? pen.Say("web.today.plan-today", ("work", work)) : pen.Say("web.today.plan-later", ("date", day.Date), ("work", work));
    }

    /// <summary>With what is built into the stem where that is worked on.</summary>
    private static string InStem(HouseStudy study, SiteToday today, string plan, Pen pen) =>
        today.Day is { Day: var day } && day.Works.Any(w => w.Task == WorkList.Stem) && SetInList.OfStem(study.Geometry) is { Count: > 0 } items
            ? $"{plan} {pen.Say("web.today.in-stem", ("items", new Argument.List(items.Select(i => (Argument)Message.Of("web.today.in-stem-at", ("what", i.What), ("height", Amount.Metres(i.Height)))).ToSequence())))}"
            : plan;

    private static string HeightToday(HouseStudy study, Pen pen) => study.Drying is { Value: { } drying }
        ? drying.HeightToday is { Low: { } low, High: { } high }
            ? pen.Short(low) == pen.Short(high) ? pen.Say("web.today.stands-one", ("high", Amount.Metres(high)), ("cap", Amount.Metres(drying.PracticeCap)))
            : pen.Say("web.today.stands", ("low", Amount.Metres(low)), ("high", Amount.Metres(high)), ("cap", Amount.Metres(drying.PracticeCap)))
            : pen.Say("web.today.stands-unknown", ("because", new Message("web.today.not-reached")))
        : pen.Say("web.today.stands-unknown", ("because", study.Drying.NotChecked!));

    private static IEnumerable<string> Top(SiteToday today, Pen pen)
    {
        if (today.Top is not { LaidOn: { } laid } top)
        {
            yield break;
        }

        yield return pen.Say("web.today.top-laid", ("lift", top.Lift), ("date", laid));
        yield return top is { FirmSoonest: { } soonest, FirmLatest: { } latest } ? pen.Say("web.today.top-firm", ("soonest", soonest), ("latest", latest))
            : pen.Say("web.today.top-firm-open", ("days", Days(top.Firm, pen)));
        yield return top.KeysUntil is { } keys ? pen.Say(keys < today.Date ? "web.today.top-keyed" : "web.today.top-keys", ("date", keys)) : pen.Say("web.today.top-keys-open", ("days", Days(top.Keys, pen)));
    }

    private static string Days(Band band, Pen pen) => (band.Low, band.High) switch
    {
        ({ } low, { } high) => pen.Say("web.today.days", ("low", Amount.Number(Math.Round(low, 1))), ("high", Amount.Number(Math.Round(high, 1)))),
        ({ } low, null) => pen.Say("web.today.days-open", ("low", Amount.Number(Math.Round(low, 1)))),
        _ => pen.Say("web.today.not-reached"),
    };

    private static TodayLift Lift(HouseStudy study, LiftSlice lift, Pen pen)
    {
        var counted = study.Quantities.Lifts.FirstOrDefault(q => q.Lift == lift.Index);
        return new(
            pen.Say("web.today.lift", ("n", lift.Number), ("of", study.Geometry.Lifts.Count)), pen.Short(lift.Top), pen.Other(lift.Top),
            pen.Say("web.today.lift-from", ("bottom", lift.Bottom), ("rise", lift.Top - lift.Bottom)),
            counted?.Batches is { } batches ? pen.Say("web.today.batches", ("n", Amount.Number(Math.Round(batches * 2) / 2))) : pen.Say("web.today.batches-unknown"),
            counted?.RisePerBatch is { } rise ? pen.Say("web.today.batches-each", ("rise", Amount.Metres(rise))) : "",
            lift.Index == 0 ? pen.Say("web.today.below-stem") : SiteToday.WindowOf(study, lift.Index - 1) is { } window
                ? pen.Say("web.today.below", ("lift", lift.Number - 1), ("firm", Days(window.Firm, pen)), ("keys", Days(window.Keys, pen)))
                : pen.Say("web.today.below-unknown", ("because", study.Drying.NotChecked ?? new Message("web.today.not-reached"))),
            [.. SetInList.Of(study.Geometry, lift).Select(item => new TodaySetIn(item.Key, pen.Say(item.What), pen.Short(item.Height), pen.Short(item.Station)))]);
    }

    private static TodayCrew? Crew(SiteToday today, Pen pen)
    {
        if (today is not { Board.Value: { } board, Day: { } day })
        {
            return null;
        }

        string Role(string role) => pen.Say($"analysis.role.{role}");
        if (board.Rota.Value is not { } rota || day.Shift is not { } shift)
        {
            return new([], [.. day.Posts.Select(post => pen.Say("web.today.post", ("role", Role(post.Role)), ("n", post.People)))]);
        }

        string Half(int person, int n) => rota.Places.FirstOrDefault(p => p.Shift == n && p.Person == person) is { } place
            ? place.IsLead ? pen.Say("web.days.leads", ("role", Role(place.Role))) : Role(place.Role) : Role("spare");
        return new([.. rota.Asked.Members.Select((m, p) => m.Away.Contains(day.Day.Date)
            ? new TodayPerson(m.Name, pen.Say("web.days.away"), pen.Say("web.days.away")) : new TodayPerson(m.Name, Half(p, shift), Half(p, shift + 1)))], []);
    }

    private static string CrewNote(SiteToday today, Pen pen) => today switch
    {
        { Board.Value: { } board, Day: { Shift: not null } } => pen.Say(board.Rota.Value!.IsSearched ? "web.days.searched" : "web.days.plain"),
        { Board.Value: not null, Day: not null } => pen.Say("web.days.unnamed"),
        _ => "",
    };

    private static string Weather(SiteToday today, Pen pen) => today.Forecast is { } day
        ? pen.Say("web.today.weather", ("rain", day.Rain), ("high", day.High.Amount), ("low", day.Low.Amount)) : pen.Say("web.today.weather-none");

    /// <summary>Rain and frost as the day's forecast has them; all of it to keep in mind where nobody wrote one.</summary>
    private static IEnumerable<string> WeatherDo(SiteToday today, Pen pen)
    {
        if (today.MayRain)
        {
            yield return pen.Say("papers.weather.rain-stop");
            yield return pen.Say("papers.weather.rain-top");
        }

        if (today.MayFreeze)
        {
            yield return pen.Say("papers.weather.frost-stop");
        }
    }

    /// <summary>The number for help first, then those who may have to be called.</summary>
    private static IEnumerable<TodayCall> Calls(Emergency? emergency, Pen pen)
    {
        if (emergency?.Number is { } number)
        {
            yield return new(pen.Say("web.today.call-help"), number, Dialled(number), "");
        }

        foreach (var contact in emergency?.Contacts ?? [])
        {
            yield return new(contact.Name, contact.Phone, Dialled(contact.Phone), contact.Role);
        }
    }

    /// <summary>What the caller says and does, and what nobody wrote.</summary>
    private static IEnumerable<string> Told(Emergency? emergency, Pen pen)
    {
        if (emergency?.Number is null)
        {
            yield return pen.Say("web.today.call-none");
        }

        foreach (var (key, text) in new[] { ("address", emergency?.Address), ("way", emergency?.Way), ("meet", emergency?.Meet), ("hospital", emergency?.Hospital) })
        {
            if (text is not null)
            {
                yield return pen.Say($"web.today.call.{key}", ("text", OneLine.Of(text)));
            }
        }
    }

    /// <summary>Digits and a leading plus: what a <c>tel:</c> address (RFC 3966) takes.</summary>
    private static string Dialled(string number) => new([.. number.Where((c, i) => char.IsAsciiDigit(c) || (c == '+' && i == 0))]);

    private static TodayWritten? Written(HouseStudy study, SiteToday today, Pen pen) => today.Written is { What: Seen.Day day } entry
        ? new(entry.Id, pen.Say(DayWords.Of(day)), day.Raised is { } raised ? LengthText.Written(raised, study.House.Units) : "", day.People?.ToString(CultureInfo.InvariantCulture) ?? "",
            day.Batches?.ToString(CultureInfo.InvariantCulture) ?? "", day.Notes ?? "") : null;
}
