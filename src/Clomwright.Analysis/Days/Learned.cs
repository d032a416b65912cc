using Clomwright.Evidence;

namespace Clomwright.Analysis.Days;

/// <summary>What is believed of a factor, before the log and after it: eight crews of ten lie between low and high.</summary>
/// <param name="Low">One in ten lies below.</param>
/// <param name="Middle">Half of them.</param>
/// <param name="High">One in ten lies above.</param>
/// <param name="LowBefore">Low before anything was written.</param>
/// <param name="HighBefore">High before anything was written; the middle was 1.</param>
/// <param name="Readings">Days, lifts or tasks of the log that told something.</param>
public readonly record struct LearnedFactor(double Low, double Middle, double High, double LowBefore, double HighBefore, int Readings);

/// <summary>What the site record taught a forecast.</summary>
public sealed record Learned
{
    /// <summary>The first day that the forecast draws; all before it is as written.</summary>
    public required DateOnly From { get; init; }

    /// <summary>Days written.</summary>
    public required int Days { get; init; }

    /// <summary>The last of them.</summary>
    public required DateOnly LastDay { get; init; }

    /// <summary>Height of the ring, in lifts and the part of one, in the mean.</summary>
    public required double Height { get; init; }

    /// <summary>Share of the cob that is laid, 0 to 1.</summary>
    public required double CobLaid { get; init; }

    /// <summary>Pace at the cob over the planned one.</summary>
    public required LearnedFactor Pace { get; init; }

    /// <summary>Pace above the shoulder over the planned one there.</summary>
    public required LearnedFactor PaceAbove { get; init; }

    /// <summary>How far single days lie apart: standard deviation of the logarithm.</summary>
    public required double DaySpread { get; init; }

    /// <summary>How fast the wall dries over the small model.</summary>
    public required LearnedFactor Drying { get; init; }

    /// <summary>Hours of other tasks over those planned.</summary>
    public required LearnedFactor Tasks { get; init; }
}

/// <summary>Tells it.</summary>
internal static class LearnedFrom
{
    /// <summary>A tenth of a normal distribution lies beyond so many deviations.</summary>
    private const double Tenth = 1.2816;

    public static Learned Of(DaysQuestion asked, JobLog log, Beliefs after)
    {
        var before = Beliefs.Before(asked.Numbers);
        var (pace, planned) = (after.Pace, before.Pace);
        return new()
        {
            From = asked.Crew.Start.AddDays(log.Today),
            Days = log.Days.Count,
            LastDay = asked.Crew.Start.AddDays(log.Days[^1].Day),
            Height = log.Height,
            CobLaid = asked.Amounts.Cob.Sum(l => l.Sum()) is > 0 and var all ? asked.Amounts.Cob.Select((lift, l) => Math.Clamp(log.Height - l, 0, 1) * lift.Sum()).Sum() / all : 0,
            Pace = Factor(pace.Level, pace.Spread, planned.Spread, pace.Readings),
            PaceAbove = Factor(pace.Level + pace.Above, pace.SpreadAbove, planned.SpreadAbove, pace.Readings),
            DaySpread = Math.Sqrt(pace.DayVariance),
            Drying = Factor(after.Drying.Log, after.Drying.Spread, before.Drying.Spread, after.Drying.Readings),
            Tasks = Factor(after.Tasks.Log, after.Tasks.Spread, before.Tasks.Spread, after.Tasks.Readings),
        };
    }

    private static LearnedFactor Factor(double log, double spread, double before, int readings) =>
        new(Math.Exp(log - Tenth * spread), Math.Exp(log), Math.Exp(log + Tenth * spread), Math.Exp(-Tenth * before), Math.Exp(Tenth * before), readings);
}
