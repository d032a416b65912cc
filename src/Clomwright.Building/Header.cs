using Clomwright.Evidence;

namespace Clomwright.Building;

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
