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

/// <summary>Where a thing stands along the wall: exactly one of the two is given.</summary>
/// <param name="Bearing">From the plan centre.</param>
/// <param name="Station">Along the inside face at the wall base from the zero mark, clockwise seen from above.</param>
public readonly record struct Along(Angle? Bearing, Length? Station)
{
    /// <summary>By bearing from the centre.</summary>
    public static Along At(Angle bearing) => new(bearing, null);

    /// <summary>By station from the zero mark.</summary>
    public static Along At(Length station) => new(null, station);
}

/// <summary>How far the reveals open out, each side, from the frame line to a face.</summary>
/// <param name="Inside">Toward the inside face.</param>
/// <param name="Outside">Toward the outside face.</param>
public readonly record struct Splay(Angle Inside, Angle Outside);

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

    /// <summary>The timber over it; null where an arch carries.</summary>
    public Header? Header { get; init; }

    /// <summary>Escape from a sleeping room is planned through this opening.</summary>
    public bool Escape { get; init; }
}

/// <summary>The frame that stands in an opening.</summary>
/// <param name="Width">Outside width.</param>
/// <param name="Height">Outside height.</param>
/// <param name="Depth">Through the wall.</param>
/// <param name="Stock">Thickness of the frame timber.</param>
/// <param name="Gap">Left over the frame for the cob to settle; null takes the shrinkage rule.</param>
public sealed record Frame(Length Width, Length Height, Length Depth, Length Stock, Length? Gap = null)
{
    /// <summary>Distance of the frame's outside face from the outside face of the wall at sill height; null stands it in the middle of the wall.</summary>
    public Length? Setback { get; init; }

    /// <summary>Set before the wall rises round it, or after.</summary>
    public bool First { get; init; } = true;
}

/// <summary>Timbers side by side over an opening.</summary>
/// <param name="Pieces">How many.</param>
/// <param name="Width">Of one piece, across the wall.</param>
/// <param name="Depth">Upright.</param>
/// <param name="Bearing">Length resting on cob at each side.</param>
/// <param name="Material">Key of a timber.</param>
public sealed record Header(int Pieces, Length Width, Length Depth, Length Bearing, string Material = "douglas-fir-no2")
{
    /// <summary>A pad across the wall under each end.</summary>
    public bool CrossPad { get; init; }
}

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

    /// <summary>What it is for; printed in the register.</summary>
    public string? Note { get; init; }
}
