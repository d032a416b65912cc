using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>How practised the crew is.</summary>
public enum Skill
{
    /// <summary>First days.</summary>
    Beginner,

    /// <summary>Some of each.</summary>
    Mixed,

    /// <summary>Practised.</summary>
    Skilled,
}

/// <summary>What is there when the crew comes.</summary>
public enum WorkBegins
{
    /// <summary>A dry stem that carries: the first lift is laid on the first day.</summary>
    Wall,

    /// <summary>A filled trench: the stem is built first.</summary>
    Stem,

    /// <summary>Ground.</summary>
    Trench,
}

/// <summary>Who builds, and when.</summary>
/// <param name="People">How many.</param>
/// <param name="Skill">How practised.</param>
/// <param name="Start">First day of work.</param>
/// <param name="DaysPerWeek">Working days in a week.</param>
/// <param name="HoursPerDay">Working hours in a day.</param>
public sealed record Crew(int People, Skill Skill, DateOnly Start, int DaysPerWeek, double HoursPerDay)
{
    /// <summary>Day on which the roof's first pole is to land on the wall; null where nobody has said.</summary>
    public DateOnly? RoofOn { get; init; }

    /// <summary>What is there on the first day.</summary>
    public WorkBegins Begins { get; init; }

    /// <summary>Who they are, where they are named.</summary>
    public Sequence<CrewMember> Members { get; init; }
}
