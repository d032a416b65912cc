using Clomwright.Evidence;

namespace Clomwright.Analysis.Days;

/// <summary>What a task asks of a day.</summary>
[Flags]
public enum DayNeeds
{
    /// <summary>Any day will do.</summary>
    Nothing = 0,

    /// <summary>No rain.</summary>
    Dry = 1,

    /// <summary>No cold: wet earth or lime must not freeze.</summary>
    Mild = 2,
}

/// <summary>What must have come before a task besides other tasks.</summary>
public enum WaitsFor
{
    /// <summary>Nothing.</summary>
    Nothing,

    /// <summary>Every lift laid.</summary>
    WallTop,

    /// <summary>The topmost lift firm enough to stand on.</summary>
    FirmTop,

    /// <summary>Every lift strong enough for wall and roof.</summary>
    StrongWall,

    /// <summary>A reading that says the wall is dry enough for plaster.</summary>
    DryWall,
}

/// <summary>A piece of the job beside the cob itself.</summary>
/// <param name="Key">Its name for ever.</param>
/// <param name="Hours">Of one person, as likely as not.</param>
/// <param name="People">Who can work on it at once, at most.</param>
/// <param name="Least">Who it takes at least.</param>
/// <param name="Needs">What it asks of a day.</param>
/// <param name="Waits">What must have come before.</param>
/// <param name="After">Tasks that must be done before.</param>
/// <param name="RestDays">Whole days after it in which nothing that follows begins: mortar that sets, a roof under water.</param>
public sealed record WorkTask(string Key, double Hours, int People, int Least, DayNeeds Needs, WaitsFor Waits, Sequence<string> After, int RestDays = 0)
{
    /// <summary>Whether people do it while they stand ready and nothing else waits for them.</summary>
    public bool IsAside { get; init; }
}
