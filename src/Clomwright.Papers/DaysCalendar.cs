using Clomwright.Analysis.Days;
using Clomwright.Evidence;
using Clomwright.Papers.Sheets;
using Clomwright.Papers.Writers;
using Clomwright.Study;

namespace Clomwright.Papers;

/// <summary>The days of a job for a calendar: every mark and every lift on the middle day of its band, and what has to be on site by when.</summary>
public static class DaysCalendar
{
    /// <summary>The entries, in order of their days. Each says that it is a forecast.</summary>
    /// <param name="study">Of a house whose days are known.</param>
    /// <param name="days">Its forecast.</param>
    public static Sequence<CalendarEntry> Of(HouseStudy study, DaysResult days)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(days);
        var say = new Wording(study.House.Units, Phrasebook.English);
        CalendarEntry? Entry(string key, string what, DayBand band)
        {
            if (band.P50 is not { } half)
            {
                return null;
            }

            string On(int? day) => day is { } d ? say.Say(days.Start.AddDays(d)) : say.Say("days.later");
            var date = days.Start.AddDays(half);
            return new(key, date, date, say.Say("calendar.title", ("what", what)), say.Say("calendar.band", ("early", On(band.P10)), ("half", On(half)), ("late", On(band.P90))) + "\n" + say.Say("caution.forecast-only"));
        }

        string Much(HostLine line) => line.Line.Order is { } much ? say.One(much) : say.Say("not-checked");

        var marks = days.Milestones.Select(m => Entry(m.Key, say.Say(new Message($"analysis.task.{m.Key}")), m.Days));
        var lifts = days.Lifts.Select(l => Entry($"lift-{l.Lift + 1}", say.Say("calendar.lift", ("n", l.Lift + 1), ("top", study.Geometry.Lifts[l.Lift].Top)), l.Closed));
        var host = (study.Host.Value?.Lines ?? []).Select(l => new CalendarEntry(
            $"on-site-{l.Line.Key}", l.By, l.By, say.Say("calendar.on-site", ("what", l.Line.What)),
            l.Needed is { } needed ? say.Say("calendar.on-site-words", ("amount", Much(l)), ("needed", needed)) : say.Say("calendar.on-site-before", ("amount", Much(l)))));
        // Two lines of an order may carry one key: a calendar would take the second for the first.
        var apart = host.GroupBy(e => e.Key, StringComparer.Ordinal).SelectMany(g => g.Select((e, i) => i == 0 ? e : e with { Key = FormattableString.Invariant($"{e.Key}-{i + 1}") }));
        return [.. marks.Concat(lifts).OfType<CalendarEntry>().Concat(apart).OrderBy(e => e.First).ThenBy(e => e.Key, StringComparer.Ordinal)];
    }
}
