using Clomwright.Evidence;

namespace Clomwright.Analysis.Comfort;

/// <summary>A part of the shell as the balance of the room sees it: layers cut into slices, films on both faces.</summary>
/// <param name="Key">Which part it is counted with: wall, stem, roof, floor, windows.</param>
/// <param name="Name">Of the part.</param>
/// <param name="Area">m2.</param>
/// <param name="Part">Its layers.</param>
/// <param name="Facing">Azimuth of its outward normal, rad; null where it lies level or under ground.</param>
public sealed record RoomElement(PartKind Key, string Name, double Area, BuildUp Part, double? Facing)
{
    /// <summary>Whether the outside is the ground under a floor.</summary>
    public bool IsGround => Key == PartKind.Floor;

    /// <summary>Whether it has no mass and is one resistance.</summary>
    public bool IsLight => Part.Layers.Count == 0;

    /// <summary>Resistance between the films where it is light, m2 K/W.</summary>
    public double Light { get; init; }

    /// <summary>U, W/(m2 K).</summary>
    public double Transmittance => IsLight ? 1 / (Part.Inside + Light + Part.Outside) : Part.Transmittance;

    /// <summary>Share of the sun that its outside face takes.</summary>
    public double Taken { get; init; }
}

/// <summary>What a part is counted with.</summary>
public enum PartKind
{
    /// <summary>Cob.</summary>
    Wall,

    /// <summary>Stem.</summary>
    Stem,

    /// <summary>Deck and layers, and what closes the eye.</summary>
    Roof,

    /// <summary>Floor and ground.</summary>
    Floor,

    /// <summary>Windows, doors, glass set in cob, bottles.</summary>
    Openings,

    /// <summary>Edges where parts meet.</summary>
    Edges,

    /// <summary>Air that is changed.</summary>
    Air,
}
