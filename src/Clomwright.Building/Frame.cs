using Clomwright.Evidence;

namespace Clomwright.Building;

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
