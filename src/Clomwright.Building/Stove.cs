using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>A stove: where it stands and how far its maker wants what burns kept from it. Its flue stands with the roof.</summary>
/// <param name="Width">Across its front.</param>
/// <param name="Depth">From front to back.</param>
public sealed record Stove(Length Width, Length Depth)
{
    /// <summary>The author's name for it.</summary>
    public string? Name { get; init; }

    /// <summary>Bearing of its middle from the plan centre.</summary>
    public Angle Bearing { get; init; }

    /// <summary>Distance of its middle from the plan centre.</summary>
    public Length Distance { get; init; }

    /// <summary>The way its door faces.</summary>
    public Angle Facing { get; init; }

    /// <summary>Clearance to what burns behind it; null when it is not known.</summary>
    public Length? ClearBack { get; init; }

    /// <summary>Clearance to what burns at either side; null when it is not known.</summary>
    public Length? ClearSide { get; init; }

    /// <summary>Clearance to what burns before its door; null when it is not known.</summary>
    public Length? ClearFront { get; init; }

    /// <summary>Clearance to what burns above it; null when it is not known.</summary>
    public Length? ClearAbove { get; init; }

    /// <summary>Where the clearances come from: maker, type and sheet.</summary>
    public string? Source { get; init; }
}
