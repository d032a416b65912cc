using Clomwright.Analysis;
using Clomwright.Analysis.Days;
using Clomwright.Analysis.Drying;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Study;

/// <summary>When the next cob may go on a lift, by the forecast: days after it was laid, and days of the calendar where it is known when that was. A forecast, not permission.</summary>
/// <param name="Lift">Its number, from 1.</param>
/// <param name="Firm">From the first side in the fast case to the last in the slow one, days; null ends were not reached in the time looked at.</param>
/// <param name="Keys">For how long its top keys: the first side to dry in the fast case, the last in the slow one, days.</param>
/// <param name="LaidOn">When its top was laid, as written; null where nobody wrote it.</param>
public sealed record TopWindow(int Lift, Band Firm, Band Keys, DateOnly? LaidOn)
{
    /// <summary>The first day on which a side may be firm enough; whole days begun are counted whole.</summary>
    public DateOnly? FirmSoonest => After(Firm.Low, Math.Ceiling);

    /// <summary>The day on which the slowest side is.</summary>
    public DateOnly? FirmLatest => After(Firm.High, Math.Ceiling);

    /// <summary>The last day on which the top still keys everywhere.</summary>
    public DateOnly? KeysUntil => After(Keys.Low, Math.Floor);

    private DateOnly? After(double? days, Func<double, double> whole) => LaidOn is { } laid && days is { } d ? laid.AddDays((int)whole(d)) : null;
}

/// <summary>What somebody on site has to know of one day: put together from what is computed elsewhere.</summary>
public sealed record SiteToday
{
    /// <summary>The day.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>Who does what on the first work day that is planned from then on; or why that is not known.</summary>
    public required Known<CrewBoard> Board { get; init; }

    /// <summary>That work day; null where none is planned.</summary>
    public required BoardDay? Day { get; init; }

    /// <summary>The lift that cob goes on next, 0 at the bottom; null where the wall is up or nobody can tell.</summary>
    public required int? Lift { get; init; }

    /// <summary>When cob may go on the top that is there now; null where nothing is laid, or where that is not known.</summary>
    public required TopWindow? Top { get; init; }

    /// <summary>What a weather service foretells of the day, as somebody typed it in; null where nobody did.</summary>
    public required SiteDay? Forecast { get; init; }

    /// <summary>What is written of the day; null for nothing.</summary>
    public required SiteEntry? Written { get; init; }

    /// <summary>Air at which the ground and a wet top may freeze on a clear night, degrees Celsius: common practice, no source.</summary>
    private const double GroundFrostAir = 3;

    /// <summary>Whether rain is foretold; true where nobody wrote a forecast.</summary>
    public bool MayRain => Forecast is not { } day || day.Rain > Length.Zero;

    /// <summary>Whether the night may freeze what is young; true where nobody wrote a forecast.</summary>
    public bool MayFreeze => Forecast is not { } day || day.Low.Celsius <= GroundFrostAir;

    /// <summary>The day at a house.</summary>
    /// <param name="study">Of the house, with its site record.</param>
    /// <param name="date">The day.</param>
    /// <param name="planner">Puts named people to their work; the plain plan where none is given.</param>
    public static SiteToday Of(HouseStudy study, DateOnly date, Func<RotaQuestion, RotaResult>? planner = null)
    {
        ArgumentNullException.ThrowIfNull(study);
        var board = study.BoardBy(planner);
        var coming = board.Value?.Days.Where(d => d.Day.Date >= date).ToList() ?? [];
        return new()
        {
            Date = date,
            Board = board,
            Day = coming.Count > 0 ? coming[0] : null,
            Lift = coming.Select(d => d.Day.Lift).FirstOrDefault(lift => lift is not null),
            Top = TopOf(study),
            Forecast = study.House.Site.Forecast.FirstOrDefault(d => d.Date == date),
            Written = study.Options.Record.DayOf(date),
        };
    }

    /// <summary>The window of a lift; null where drying is not known or the lift was never laid in the time looked at.</summary>
    /// <param name="study">Of the house.</param>
    /// <param name="lift">Its index, 0 at the bottom.</param>
    /// <param name="laidOn">When it was laid, where that is known.</param>
    public static TopWindow? WindowOf(HouseStudy study, int lift, DateOnly? laidOn = null)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.Drying.Value is { } drying && lift >= 0 && lift < drying.Lifts.Count
            ? new(lift + 1, drying.Lifts[lift].DaysToNext, drying.Lifts[lift].KeysFor, laidOn) : null;
    }

    private static TopWindow? TopOf(HouseStudy study)
    {
        var laid = study.Options.Record.Days.Where(d => d.Raised > Length.Zero).Select(d => (DateOnly?)d.Date).LastOrDefault();
        return laid is not null && study.DaysAsked.Value?.Log is { Height: > 0 } log ? WindowOf(study, (int)Math.Ceiling(log.Height - JobLog.Unread) - 1, laid) : null;
    }
}
