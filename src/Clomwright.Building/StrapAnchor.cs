using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>What a strap that holds the bond beam or a pole down is anchored to in the cob.</summary>
/// <param name="Depth">From the wall top to the underside of the anchor.</param>
/// <param name="Bar">Length of the anchor along the wall.</param>
public sealed record StrapAnchor(Length Depth, Length Bar)
{
    /// <summary>Of the strap; null where it is not described. Its width is that of the embed.</summary>
    public Length? Thickness { get; init; }

    /// <summary>What its maker allows for the strap with its fixings at both ends; null where no such sheet is at hand.</summary>
    public Force? Pull { get; init; }
}
