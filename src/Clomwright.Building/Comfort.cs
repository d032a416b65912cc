using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>How the house is lived in and what keeps it warm. Anything not given stays null and is assumed, on the record, where it is needed.</summary>
public sealed record Comfort
{
    /// <summary>People who live in it.</summary>
    public double? People { get; init; }

    /// <summary>How often in an hour the air is changed through joints and by airing, mean of the winter.</summary>
    public double? Airing { get; init; }

    /// <summary>How warm it is kept in winter.</summary>
    public Temperature? Warm { get; init; }

    /// <summary>Key of the firewood: <c>oak</c>, <c>douglas-fir</c>.</summary>
    public string? Wood { get; init; }

    /// <summary>Share of the wood's heat that the stove gives to the room.</summary>
    public Share? Stove { get; init; }

    /// <summary>Key of the glazing where an opening does not say: <c>single</c>, <c>double</c>, <c>double-coated</c>, <c>triple</c>.</summary>
    public string? Glazing { get; init; }

    /// <summary>What is set against the wall or stem to keep it warm.</summary>
    public Sequence<Lining> Linings { get; init; }

    /// <summary>Insulation let down along the edge of the floor; null for none.</summary>
    public FloorEdge? FloorEdge { get; init; }
}

/// <summary>A layer that keeps warmth in, on a stretch of wall or stem.</summary>
/// <param name="Name">The author's name for it.</param>
/// <param name="Face">Which face it is set against.</param>
/// <param name="Material">Key of its material: <c>light-earth</c>, <c>straw-bale</c>, <c>wood-fibre</c>.</param>
/// <param name="Depth">Thickness.</param>
public sealed record Lining(string Name, Face Face, string Material, Length Depth)
{
    /// <summary>Bearing from the centre peg at which it begins; null, with <see cref="To"/>, goes all round.</summary>
    public Angle? From { get; init; }

    /// <summary>Bearing at which it ends, clockwise from <see cref="From"/>.</summary>
    public Angle? To { get; init; }

    /// <summary>Height of its foot; null begins at the top of the stem.</summary>
    public Length? Bottom { get; init; }

    /// <summary>Height of its top; null goes to the top of the wall.</summary>
    public Length? Top { get; init; }
}

/// <summary>Insulation upright along the inside of the stem, from the floor down.</summary>
/// <param name="Material">Key of its material.</param>
/// <param name="Thickness">Through it.</param>
/// <param name="Depth">How far down it goes.</param>
public sealed record FloorEdge(string Material, Length Thickness, Length Depth);

/// <summary>A point of the horizon as sighted from the house.</summary>
/// <param name="Bearing">Clockwise from north.</param>
/// <param name="Angle">How high the skyline stands there above level.</param>
public sealed record HorizonPoint(Angle Bearing, Angle Angle);
