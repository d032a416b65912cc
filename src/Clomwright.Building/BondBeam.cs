using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>The timber ring on the wall top.</summary>
/// <param name="Width">Across the wall.</param>
/// <param name="Depth">Upright.</param>
/// <param name="Offset">Of its centreline from the middle of the wall top, outward positive.</param>
/// <param name="Material">Key of a timber in the data files.</param>
public sealed record BondBeam(Length Width, Length Depth, Length Offset, string Material = "douglas-fir-no2")
{
    /// <summary>How far two pieces lie over each other at a joint, each cut to half its depth; null where it is not described.</summary>
    public Length? Lap { get; init; }

    /// <summary>Diameter of the upright bolts through each lap, in one row along it; null where they are not described.</summary>
    public Length? Bolt { get; init; }

    /// <summary>Bolts in each lap.</summary>
    public int Bolts { get; init; } = 2;
}

/// <summary>T-shaped timber anchors that hold the bond beam down.</summary>
/// <param name="Spacing">Along the bond beam.</param>
/// <param name="Depth">From the wall top to the underside of the bar.</param>
/// <param name="Bar">Length of the buried cross bar along the wall.</param>
public sealed record Tees(Length Spacing, Length Depth, Length Bar)
{
    /// <summary>Side of the square timber of leg and bar; null where it is not described.</summary>
    public Length? Timber { get; init; }

    /// <summary>Diameter of the bolt that crosses bond beam and leg, and of the one that crosses leg and bar; null where they are not described.</summary>
    public Length? Bolt { get; init; }

    /// <summary>Key of the timber of leg and bar.</summary>
    public string Material { get; init; } = "douglas-fir-no2";
}
