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
/// <param name="Material">Key of a finish: <c>earth-plaster</c>, <c>lime-plaster</c>, <c>limewash</c>, <c>cement-plaster</c>, <c>closed-paint</c>.</param>
/// <param name="Depth">Total thickness; null where it is a wash, or where the coats say it.</param>
public sealed record Finish(Face Face, string Material, Length? Depth = null)
{
    /// <summary>Its coats from the wall outward; none where nobody has said yet.</summary>
    public Sequence<Coat> Coats { get; init; }

    /// <summary>What is fixed over timber under it; null where nothing is described.</summary>
    public Lath? Lath { get; init; }

    /// <summary>Day on which its first coat is to go on; null where nobody has said.</summary>
    public DateOnly? Start { get; init; }

    /// <summary>Whole thickness: as given, else of its coats together; null where neither says.</summary>
    public Length? Thickness => Depth ?? (Coats.Count > 0 ? Coats.Aggregate(Length.Zero, (sum, coat) => sum + coat.Depth) : null);
}

/// <summary>Which coat of a plaster.</summary>
public enum CoatRole
{
    /// <summary>Clay in water, brushed on so that the next keys.</summary>
    Slip,

    /// <summary>The first coat, scratched.</summary>
    Scratch,

    /// <summary>The coat that makes it even.</summary>
    Brown,

    /// <summary>The last coat.</summary>
    Finish,

    /// <summary>A wash or paint.</summary>
    Wash,
}

/// <summary>One coat.</summary>
/// <param name="Role">Which.</param>
/// <param name="Depth">Thickness; nothing for slip and wash.</param>
public sealed record Coat(CoatRole Role, Length Depth)
{
    /// <summary>How many times it is laid on.</summary>
    public int Passes { get; init; } = 1;

    /// <summary>Key of a finish where it differs from the plaster that it belongs to; null where it is the same.</summary>
    public string? Material { get; init; }

    /// <summary>Its mix; null where it is not yet chosen.</summary>
    public PlasterParts? Parts { get; init; }

    /// <summary>Name of the test panel whose mix it takes; null for none.</summary>
    public string? Panel { get; init; }
}

/// <summary>One batch of plaster in buckets as filled. Null where there is none of it.</summary>
public sealed record PlasterParts
{
    /// <summary>Clay soil, screened.</summary>
    public double? Clay { get; init; }

    /// <summary>Lime putty.</summary>
    public double? Lime { get; init; }

    /// <summary>Sand.</summary>
    public double? Sand { get; init; }

    /// <summary>Chopped straw.</summary>
    public double? Straw { get; init; }

    /// <summary>Fresh manure.</summary>
    public double? Manure { get; init; }

    /// <summary>Cooked flour paste.</summary>
    public double? Paste { get; init; }

    /// <summary>Water, as found by trying; null where it is added by feel.</summary>
    public double? Water { get; init; }
}

/// <summary>What holds plaster on timber.</summary>
/// <param name="Material">Reed mat, split lath, metal mesh, burlap.</param>
/// <param name="Lap">How far it reaches past the timber onto the cob, each side.</param>
public sealed record Lath(string Material, Length Lap);
