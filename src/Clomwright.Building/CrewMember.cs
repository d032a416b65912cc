using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>What people on a cob site learn from each other.</summary>
public enum CrewSkill
{
    /// <summary>Making cob: soil, sand, water and straw to the recipe, by its tests.</summary>
    Mixing,

    /// <summary>Laying it so that it keys.</summary>
    Placing,

    /// <summary>Trimming and keeping the faces true.</summary>
    Trimming,

    /// <summary>Stem and other stonework.</summary>
    Stonework,

    /// <summary>Frames, headers, bond beam, deck, poles.</summary>
    Carpentry,

    /// <summary>Raising a roof's poles.</summary>
    Raising,

    /// <summary>The roof's skin and soil.</summary>
    Roofing,

    /// <summary>Plasters and floor.</summary>
    Plastering,
}

/// <summary>What somebody may not do.</summary>
public enum CannotDo
{
    /// <summary>Lift and carry: a bad back.</summary>
    Lift,

    /// <summary>Work above the shoulder, on platform, ladder or roof.</summary>
    Climb,
}

/// <summary>One of the crew.</summary>
/// <param name="Name">As it stands on the board.</param>
public sealed record CrewMember(string Name)
{
    /// <summary>What they know well enough to lead others at.</summary>
    public Sequence<CrewSkill> Knows { get; init; }

    /// <summary>What they most want to learn.</summary>
    public Sequence<CrewSkill> Wishes { get; init; }

    /// <summary>What they may not do.</summary>
    public Sequence<CannotDo> Cannot { get; init; }

    /// <summary>Days on which they are not there.</summary>
    public Sequence<DateOnly> Away { get; init; }
}
