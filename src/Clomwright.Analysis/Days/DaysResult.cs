using Clomwright.Evidence;

namespace Clomwright.Analysis.Days;

/// <summary>Days after the first day of work on which something is done: one season in ten is done by the first, half by the second, nine in ten by the third. Null where so many seasons do not come to it in the days looked at.</summary>
/// <param name="P10">Days that one season in ten does not pass.</param>
/// <param name="P50">Half of them.</param>
/// <param name="P90">Nine in ten.</param>
public readonly record struct DayBand(int? P10, int? P50, int? P90);

/// <summary>A mark of the job and when it is reached.</summary>
/// <param name="Key">Key of a task, <see cref="DaysResult.WallTop"/> or <see cref="DaysResult.Whole"/>.</param>
/// <param name="Days">When it is done.</param>
public sealed record Milestone(string Key, DayBand Days);

/// <summary>One lift through all seasons.</summary>
/// <param name="Lift">Index, 0 at the bottom.</param>
/// <param name="Closed">Days until it is closed all round.</param>
/// <param name="Worked">Work days on it, in the mean.</param>
/// <param name="Waited">Work days on it on which half of the crew's hours or more found nothing to lay, in the mean: the wall could take no more.</param>
/// <param name="ByDrying">Share of seasons, 0 to 1, in which it waited longer for the wall than for people.</param>
public sealed record LiftForecast(int Lift, DayBand Closed, double Worked, double Waited, double ByDrying);

/// <summary>When the job would be done, through many seasons of weather, crew and drying. A forecast, not permission.</summary>
public sealed record DaysResult
{
    /// <summary>Key of the mark of the last lift.</summary>
    public const string WallTop = "wall-top";

    /// <summary>Key of the mark of the whole job.</summary>
    public const string Whole = "finish";

    /// <summary>First day of work.</summary>
    public required DateOnly Start { get; init; }

    /// <summary>How many seasons.</summary>
    public required int Seasons { get; init; }

    /// <summary>Marks of the job, in order.</summary>
    public required Sequence<Milestone> Milestones { get; init; }

    /// <summary>Lifts from the bottom.</summary>
    public required Sequence<LiftForecast> Lifts { get; init; }

    /// <summary>The whole job; what is asked of it is its last mark.</summary>
    public required DayBand Finish { get; init; }

    /// <summary>Work days lost to rain and cold before the wall's top, in the mean.</summary>
    public required double WeatherDays { get; init; }

    /// <summary>Share of seasons, 0 to 1, in which a night freezes while a lift is younger than a week.</summary>
    public required double FrostRisk { get; init; }

    /// <summary>Tasks beside the cob with their hours, those with nothing to do left out.</summary>
    public required Sequence<WorkTask> Tasks { get; init; }

    /// <summary>Hours of one person on the cob, with what is set into it, as likely as not and once practised.</summary>
    public required double CobHours { get; init; }

    /// <summary>What nobody gave.</summary>
    public required Sequence<Assumption> Assumptions { get; init; }

    /// <summary>What the site record taught; null before anything is written.</summary>
    public Learned? Learned { get; init; }

    /// <summary>The mark of a key; null where the job has none.</summary>
    public Milestone? Mark(string key) => Milestones.FirstOrDefault(m => m.Key == key);
}
