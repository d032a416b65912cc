using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>The head of a niche.</summary>
public enum NicheHead
{
    /// <summary>Flat cob.</summary>
    Flat,

    /// <summary>Arched.</summary>
    Arch,

    /// <summary>A small header.</summary>
    Header,
}

/// <summary>A recess that does not go through the wall.</summary>
public sealed record Niche
{
    /// <summary>The author's name.</summary>
    public required string Name { get; init; }

    /// <summary>Which face it is cut from.</summary>
    public Face Face { get; init; } = Face.Inside;

    /// <summary>Where its middle stands.</summary>
    public required Along Along { get; init; }

    /// <summary>Width.</summary>
    public required Length Width { get; init; }

    /// <summary>Height to the crown.</summary>
    public required Length Height { get; init; }

    /// <summary>Into the wall from the face at sill height.</summary>
    public required Length Depth { get; init; }

    /// <summary>Sill above the finished floor.</summary>
    public required Length Sill { get; init; }

    /// <summary>How its head is made.</summary>
    public NicheHead Head { get; init; } = NicheHead.Arch;
}
