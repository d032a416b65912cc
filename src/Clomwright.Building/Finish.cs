using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>Which face of the wall.</summary>
public enum Face
{
    /// <summary>The room side.</summary>
    Inside,

    /// <summary>The weather side.</summary>
    Outside,
}

/// <summary>A plaster or wash on a face.</summary>
/// <param name="Face">Which face.</param>
/// <param name="Material">Key of a finish: <c>earth-plaster</c>, <c>lime-plaster</c>, <c>cement-plaster</c>, <c>closed-paint</c>.</param>
/// <param name="Depth">Total thickness; null where it is a wash.</param>
public sealed record Finish(Face Face, string Material, Length? Depth = null);
