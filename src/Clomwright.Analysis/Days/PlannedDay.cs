using Clomwright.Evidence;

namespace Clomwright.Analysis.Days;

/// <summary>What a work day would be spent on, if it comes as planned.</summary>
/// <param name="Date">The day.</param>
/// <param name="People">Who is there.</param>
/// <param name="Hours">That each of them works.</param>
/// <param name="Works">What they work on, in the order of the job; nothing where the wall or the weather lets them do nothing.</param>
public sealed record PlannedDay(DateOnly Date, int People, double Hours, Sequence<PlannedWork> Works)
{
    /// <summary>The lift that cob is laid on, 0 at the bottom; null where none is.</summary>
    public int? Lift { get; init; }

    /// <summary>Whether that lift is closed all round by the evening.</summary>
    public bool Closes { get; init; }

    /// <summary>Whether the rain or the cold that somebody has a forecast of stops work.</summary>
    public bool IsStopped { get; init; }

    /// <summary>Hours of all that nothing was found for.</summary>
    public double Idle => Math.Max(0, People * Hours - Works.Sum(w => w.Hours));
}

/// <summary>A piece of a day's work.</summary>
/// <param name="Task">Key of a task (<see cref="WorkList"/>); <see cref="Cob"/> for the wall itself.</param>
/// <param name="Hours">Of one person.</param>
public sealed record PlannedWork(string Task, double Hours)
{
    /// <summary>The key of the wall itself.</summary>
    public const string Cob = "cob";
}

/// <summary>The job day by day if nothing is lost.</summary>
/// <param name="Days">Every work day until the job is done, or as far as it is looked at.</param>
public sealed record PlannedDaysResult(Sequence<PlannedDay> Days);
