using Clomwright.Analysis.Weather.Seasons;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Days;

/// <summary>One written day of a job, in the terms of the forecast. Heights are counted in lifts: 2.25 is two whole lifts and a quarter of the third, in the mean over the ring.</summary>
/// <param name="Day">From the first day of work, 0.</param>
/// <param name="From">Height before what was raised on the day, lifts.</param>
/// <param name="To">Height after it, lifts.</param>
/// <param name="People">Who worked.</param>
/// <param name="HoursEach">Hours of each of them.</param>
/// <param name="ToldHours">Whether somebody wrote the hours; else they are those of the crew's day.</param>
/// <param name="Stopped">What ended the laying.</param>
/// <param name="Done">Tasks finished.</param>
public sealed record LoggedDay(int Day, double From, double To, int People, double HoursEach, bool ToldHours, StoppedBy Stopped, Sequence<string> Done);

/// <summary>What the site record says of a job, in the terms of the forecast: where it stands, and what there is to learn from.</summary>
public sealed record JobLog
{
    /// <summary>Part of a lift that nobody reads off a ring, half an inch of twelve: a quarter of the ring that lacks less is laid. Our choice.</summary>
    public const double Unread = 0.04;

    /// <summary>Written days, in order, none of them after <see cref="Today"/>.</summary>
    public required Sequence<LoggedDay> Days { get; init; }

    /// <summary>The first day that is still to come, from the first day of work, 0. Days before it that nobody wrote of are taken as days without work.</summary>
    public required int Today { get; init; }

    /// <summary>Weather seen: rain, warmest and coldest of the day.</summary>
    public Sequence<ForecastDay> Weather { get; init; }

    /// <summary>Height now, lifts.</summary>
    public double Height => Days.Count > 0 ? Days[^1].To : 0;

    /// <summary>Tasks finished so far.</summary>
    public IEnumerable<string> Done => Days.SelectMany(d => d.Done);

    /// <summary>The first day of a job: the crew's, or an earlier one that somebody wrote of.</summary>
    /// <param name="record">What was seen.</param>
    /// <param name="crew">Who works.</param>
    public static DateOnly StartOf(SiteRecord record, Crew crew)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(crew);
        var days = record.Days;
        return days.Count > 0 && days[0].Date < crew.Start ? days[0].Date : crew.Start;
    }

    /// <summary>The log of a job; null where nothing is written of any day.</summary>
    /// <param name="record">What was seen.</param>
    /// <param name="crew">Who works, from <see cref="StartOf"/>.</param>
    /// <param name="amounts">What there is to lay.</param>
    /// <param name="today">The day it is; the forecast begins on it, or after the last written day.</param>
    public static JobLog? Of(SiteRecord record, Crew crew, JobAmounts amounts, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(crew);
        ArgumentNullException.ThrowIfNull(amounts);
        var written = record.Days;
        if (written.Count == 0)
        {
            return null;
        }

        var (days, height) = (new List<LoggedDay>(written.Count), 0.0);
        foreach (var day in written)
        {
            var (from, to) = Rise(day, height, amounts);
            days.Add(new(
                day.Date.DayNumber - crew.Start.DayNumber, from, to, day.People ?? crew.People, day.Hours ?? crew.HoursPerDay, day.Hours is not null, day.Stopped, day.Done));
            height = to;
        }

        return new()
        {
            Days = days.ToSequence(),
            Today = Math.Max(Math.Max(0, today.DayNumber - crew.Start.DayNumber), days[^1].Day + 1),
            Weather = written.Where(d => d.Weather is { Rain: not null, High: not null, Low: not null })
                .Select(d => new ForecastDay(d.Date, d.Weather!.Rain!.Value.Metres * 1000, d.Weather.High!.Value.Celsius, d.Weather.Low!.Value.Celsius)).ToSequence(),
        };
    }

    /// <summary>Where the ring stood before and after a day. A lift that was named sets right what nobody wrote: all below it is laid, nothing above it is.</summary>
    private static (double From, double To) Rise(Seen.Day day, double height, JobAmounts amounts)
    {
        var lifts = amounts.Rises.Count;
        var rise = day.Raised?.Metres ?? 0;
        var to = Up(amounts, height, rise);
        if (day.Lift is { } lift && lift <= lifts)
        {
            to = Math.Clamp(to, lift - 1, lift);
        }

        to = day.Done.Contains(DaysResult.WallTop) ? lifts : to;
        return (Math.Min(to, Up(amounts, to, -rise)), to);
    }

    /// <summary>A height some metres above or below another one.</summary>
    private static double Up(JobAmounts amounts, double from, double metres)
    {
        var at = from;
        for (var left = Math.Abs(metres); left > 1e-9;)
        {
            var lift = metres > 0 ? (int)Math.Floor(at + 1e-9) : (int)Math.Ceiling(at - 1e-9) - 1;
            if (lift < 0 || lift >= amounts.Rises.Count)
            {
                return Math.Clamp(at, 0, amounts.Rises.Count);
            }

            var end = metres > 0 ? lift + 1 : lift;
            var step = Math.Min(left, Math.Abs(end - at) * amounts.Rises[lift]);
            at = step >= left ? at + Math.Sign(metres) * step / amounts.Rises[lift] : end;
            left -= step;
        }

        return at;
    }
}
