using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>The floor build-up, from the bottom up.</summary>
public sealed record Floor
{
    /// <summary>Layers below the finished floor.</summary>
    public Sequence<FloorLayer> Layers { get; init; }

    /// <summary>The oil that it drinks last; null where none is described.</summary>
    public FloorOil? Oil { get; init; }
}

/// <summary>What a layer of the floor is for.</summary>
public enum FloorRole
{
    /// <summary>Clean stone that lets water away and breaks its rise.</summary>
    Drain,

    /// <summary>What stops damp: a sheet.</summary>
    Damp,

    /// <summary>What keeps warmth in.</summary>
    Insulation,

    /// <summary>Earth or road base that carries.</summary>
    Base,

    /// <summary>The last earth, to walk on.</summary>
    Finish,
}

/// <summary>One layer of the floor.</summary>
/// <param name="Name">The author's name for it.</param>
/// <param name="Depth">Thickness when it is down; nothing for a sheet.</param>
/// <param name="Material">Key of a material in the data files; null where none is named.</param>
public sealed record FloorLayer(string Name, Length Depth, string? Material = null)
{
    /// <summary>What it is for; null where nobody said.</summary>
    public FloorRole? Role { get; init; }

    /// <summary>The mix of an earth layer; null where it is not yet chosen, or where it is bought.</summary>
    public PlasterParts? Parts { get; init; }
}

/// <summary>The oil of an earthen floor.</summary>
/// <param name="Material">What oil: linseed, tung.</param>
/// <param name="Coats">How many.</param>
public sealed record FloorOil(string Material, int Coats);

/// <summary>One layer of a roof build-up.</summary>
/// <param name="Name">The author's name for it.</param>
/// <param name="Depth">Thickness square to the layer.</param>
/// <param name="Material">Key of a material in the data files; null where none is named.</param>
public sealed record Layer(string Name, Length Depth, string? Material = null);
