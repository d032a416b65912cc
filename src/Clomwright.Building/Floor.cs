using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>The floor build-up, from the bottom up.</summary>
public sealed record Floor
{
    /// <summary>Layers below the finished floor.</summary>
    public Sequence<Layer> Layers { get; init; }
}

/// <summary>One layer of a floor or roof build-up.</summary>
/// <param name="Name">The author's name for it.</param>
/// <param name="Depth">Thickness square to the layer.</param>
/// <param name="Material">Key of a material in the data files; null where none is named.</param>
public sealed record Layer(string Name, Length Depth, string? Material = null);
