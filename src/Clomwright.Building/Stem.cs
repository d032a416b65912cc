using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>The rubble trench under the stem wall.</summary>
/// <param name="Width">Across.</param>
/// <param name="Depth">Below outside grade.</param>
/// <param name="Outlet">Height of the drain outlet against the finished floor; null if there is none yet.</param>
public sealed record Trench(Length Width, Length Depth, Length? Outlet = null);

/// <summary>The stone wall that lifts the cob off the ground.</summary>
/// <param name="Width">Across, centred under the wall base unless <see cref="InsideOffset"/> says otherwise.</param>
/// <param name="Top">Height of its top, where the cob begins.</param>
/// <param name="Material">Key of a material: <c>mortared-stone</c>, <c>dry-stone</c>, <c>broken-concrete</c>, <c>block</c>, <c>earth-bags</c>.</param>
public sealed record Stem(Length Width, Length Top, string Material = "mortared-stone")
{
    /// <summary>How far the stem's inside face stands inside the wall's inside face at the base; null centres the stem under the wall.</summary>
    public Length? InsideOffset { get; init; }

    /// <summary>A capillary break between stem and cob: its material key, or null.</summary>
    public string? DampBreak { get; init; }
}
