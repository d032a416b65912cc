namespace Clomwright.Web.Scenes;

/// <summary>The house in the round: bodies of triangles, lines, and every word already text. m east, m north, m up; numbers in runs are 32-bit floats or whole numbers, base 64.</summary>
public sealed record RoundScene
{
    /// <summary>Of the house.</summary>
    public required string Name { get; init; }

    /// <summary>Which one it is.</summary>
    public required long Revision { get; init; }

    /// <summary>What there is to see, in a sentence.</summary>
    public required string Says { get; init; }

    /// <summary>Length of the ring along the inside at the wall base.</summary>
    public required double Ring { get; init; }

    /// <summary>Where the cob begins.</summary>
    public required double Bottom { get; init; }

    /// <summary>Where it ends.</summary>
    public required double Top { get; init; }

    /// <summary>Middle of what is seen.</summary>
    public required double[] Middle { get; init; }

    /// <summary>A ball about the middle holds all of it.</summary>
    public required double Radius { get; init; }

    /// <summary>Height of the ground outside.</summary>
    public required double Ground { get; init; }

    /// <summary>The floor: the inside of the wall at its base, corner by corner.</summary>
    public required IReadOnlyList<double[]> Floor { get; init; }

    /// <summary>Wall, stem, timbers, glass and what is built in.</summary>
    public required IReadOnlyList<RoundBody> Bodies { get; init; }

    /// <summary>Lines round the deck: ends of short straight pieces, two by two.</summary>
    public required string Deck { get; init; }

    /// <summary>Kinds of bodies that can be left out of the picture, in the order of building.</summary>
    public required IReadOnlyList<NamedKind> Kinds { get; init; }

    /// <summary>Why the sun is not known; null where it is.</summary>
    public string? NoSun { get; init; }
}

/// <summary>A kind of bodies, and what it is called.</summary>
/// <param name="Key">wall, stem, beam, headers, frames, tees, embeds or roof.</param>
/// <param name="Name">In words.</param>
public sealed record NamedKind(string Key, string Name);

/// <summary>One body.</summary>
/// <param name="Name">From the author's names; no two are the same.</param>
/// <param name="Label">In words.</param>
/// <param name="Kind">Key of its kind.</param>
/// <param name="SetAt">Height of wall at which it is set, m; null where it does not wait for the wall, or comes after it.</param>
/// <param name="Points">Three floats a corner.</param>
/// <param name="Normals">Four signed bytes a corner, in 127ths; the fourth is nothing.</param>
/// <param name="Triangles">Three whole numbers a triangle.</param>
/// <param name="Places">Of the wall two floats a corner: shares of the ring from the zero mark and of the height from the bottom; empty for all else.</param>
/// <param name="Edges">Sharp edges: ends of straight pieces, two by two.</param>
/// <param name="Joints">Lines between lifts, likewise.</param>
public sealed record RoundBody(string Name, string Label, string Kind, double? SetAt, string Points, string Normals, string Triangles, string Places, string Edges, string Joints);

/// <summary>The sun of one moment.</summary>
/// <param name="Says">In a sentence.</param>
/// <param name="Toward">Direction to the sun; null below the horizon.</param>
/// <param name="Patches">Where it falls on floor and wall: corners of triangles.</param>
/// <param name="Edges">Round the patches: ends of straight pieces, two by two.</param>
public sealed record RoundSun(string Says, double[]? Toward, string Patches, string Edges);
