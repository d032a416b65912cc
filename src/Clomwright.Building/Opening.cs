using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>What an opening is.</summary>
public enum OpeningKind
{
    /// <summary>A door.</summary>
    Door,

    /// <summary>A window that does not open.</summary>
    Fixed,

    /// <summary>A window that opens.</summary>
    Opening,

    /// <summary>Glass set straight in the cob.</summary>
    Glass,
}

/// <summary>The outline of an opening, seen square on.</summary>
public enum OpeningShape
{
    /// <summary>Flat head.</summary>
    Rectangular,

    /// <summary>Arched head; <see cref="Opening.Rise"/> is the height of the arch above its springing.</summary>
    Arched,

    /// <summary>A circle or ellipse of the width and height.</summary>
    Round,
}

/// <summary>How far the reveals open out, each side, from the frame line to a face.</summary>
/// <param name="Inside">Toward the inside face.</param>
/// <param name="Outside">Toward the outside face.</param>
public readonly record struct Splay(Angle Inside, Angle Outside);

/// <summary>What is left clear of a door or window that stands fully open: a door between the face of its leaf, open square, and the stop; a window between sash and frame.</summary>
/// <param name="Width">Clear width.</param>
/// <param name="Height">Clear height.</param>
public sealed record ClearOpening(Length Width, Length Height);

/// <summary>A hole through the wall: a right prism along the outward normal at its station, of the rough size, plus splays.</summary>
public sealed record Opening
{
    /// <summary>The author's name; derived things are addressed from it.</summary>
    public required string Name { get; init; }

    /// <summary>What it is.</summary>
    public required OpeningKind Kind { get; init; }

    /// <summary>Where its middle stands.</summary>
    public required Along Along { get; init; }

    /// <summary>Rough width.</summary>
    public required Length Width { get; init; }

    /// <summary>Rough height.</summary>
    public required Length Height { get; init; }

    /// <summary>Rough sill above the finished floor.</summary>
    public required Length Sill { get; init; }

    /// <summary>Outline.</summary>
    public OpeningShape Shape { get; init; }

    /// <summary>Rise of an arched head.</summary>
    public Length? Rise { get; init; }

    /// <summary>Splayed reveals.</summary>
    public Splay Splay { get; init; }

    /// <summary>The frame, if its size is known.</summary>
    public Frame? Frame { get; init; }

    /// <summary>Key of its glazing; null takes that of the house.</summary>
    public string? Glazing { get; init; }

    /// <summary>Share of the hole in the wall, at its rough size, that is glass; null where nobody has said.</summary>
    public Share? Glazed { get; init; }

    /// <summary>The timber over it; null where an arch carries.</summary>
    public Header? Header { get; init; }

    /// <summary>Escape from a sleeping room is planned through this opening.</summary>
    public bool Escape { get; init; }

    /// <summary>The leaf of a door; null where it is not described.</summary>
    public DoorLeaf? Leaf { get; init; }

    /// <summary>What is clear when it stands fully open, by its maker or by a tape; null where nobody has said.</summary>
    public ClearOpening? Clear { get; init; }

    /// <summary>The light of its frame: what lies between the timbers of the frame; of a door, whose frame has none underfoot, down to the floor.</summary>
    /// <returns>Null where no frame is described; nothing where its timbers leave nothing.</returns>
    public ClearOpening? FrameLight() => Frame is not { } frame ? null
        : new ClearOpening(Left(frame.Width - 2 * frame.Stock), Left(frame.Height - (Kind == OpeningKind.Door ? 1 : 2) * frame.Stock));

    private static Length Left(Length length) => length < Length.Zero ? Length.Zero : length;
}
