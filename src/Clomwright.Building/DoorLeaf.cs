using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>Which way a door opens.</summary>
public enum Swing
{
    /// <summary>Into the room, over the finished floor.</summary>
    In,

    /// <summary>Out, over the step before the door.</summary>
    Out,
}

/// <summary>The leaf of a door, as far as the floor has to know it.</summary>
/// <param name="Swing">Which way it opens.</param>
/// <param name="Bottom">Height of its underside above the finished floor.</param>
public sealed record DoorLeaf(Swing Swing, Length Bottom)
{
    /// <summary>Height of the step before the door, from the finished floor; null where it is not described.</summary>
    public Length? Step { get; init; }
}
