using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>What kind of thing is built in.</summary>
public enum EmbedKind
{
    /// <summary>A peg.</summary>
    Peg,

    /// <summary>A shelf growing out of the wall.</summary>
    Shelf,

    /// <summary>A bottle or bottle brick set through or in the wall.</summary>
    Bottle,

    /// <summary>A sleeve through the wall or stem.</summary>
    Sleeve,

    /// <summary>An electrical box.</summary>
    Box,

    /// <summary>A wire.</summary>
    Wire,

    /// <summary>A pipe.</summary>
    Pipe,

    /// <summary>A nailer let into the face.</summary>
    Nailer,

    /// <summary>A buried anchor.</summary>
    Deadman,

    /// <summary>A strap.</summary>
    Strap,
}

/// <summary>One thing, or a row of equal things, built in as the wall rises.</summary>
public sealed record Embed
{
    /// <summary>The author's name.</summary>
    public required string Name { get; init; }

    /// <summary>What it is.</summary>
    public required EmbedKind Kind { get; init; }

    /// <summary>Which face it is reached from.</summary>
    public Face Face { get; init; } = Face.Inside;

    /// <summary>Where the first stands.</summary>
    public required Along Along { get; init; }

    /// <summary>Height of its middle above the finished floor.</summary>
    public required Length Height { get; init; }

    /// <summary>How many in a row.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Between the middles of a row, along the inside face at the wall base, clockwise.</summary>
    public Length? Spacing { get; init; }

    /// <summary>Along the wall (a bottle's or sleeve's diameter).</summary>
    public Length? Width { get; init; }

    /// <summary>Upright size; null takes the width.</summary>
    public Length? Size { get; init; }

    /// <summary>Into the wall.</summary>
    public Length? Depth { get; init; }

    /// <summary>Goes through the whole wall.</summary>
    public bool Through { get; init; }

    /// <summary>What a strap is anchored to; null where that is not described, and for all else.</summary>
    public StrapAnchor? Anchor { get; init; }

    /// <summary>What it is for; printed in the register.</summary>
    public string? Note { get; init; }
}
