using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>The timber ring on the wall top.</summary>
/// <param name="Width">Across the wall.</param>
/// <param name="Depth">Upright.</param>
/// <param name="Offset">Of its centreline from the middle of the wall top, outward positive.</param>
/// <param name="Material">Key of a timber in the data files.</param>
public sealed record BondBeam(Length Width, Length Depth, Length Offset, string Material = "douglas-fir-no2");

/// <summary>T-shaped timber anchors that hold the bond beam down.</summary>
/// <param name="Spacing">Along the bond beam.</param>
/// <param name="Depth">From the wall top to the underside of the bar.</param>
/// <param name="Bar">Length of the buried cross bar along the wall.</param>
public sealed record Tees(Length Spacing, Length Depth, Length Bar);
