using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>Soil tests, recipe, the crew's own batch, and tests of the mix.</summary>
public sealed record Mix
{
    /// <summary>What was seen of the soil.</summary>
    public SoilTests SoilTests { get; init; } = new();

    /// <summary>Parts of one batch.</summary>
    public Recipe Recipe { get; init; } = new();

    /// <summary>What the crew's batch makes, measured by the crew.</summary>
    public Batch? Batch { get; init; }

    /// <summary>Shrinkage bars.</summary>
    public Sequence<TestBar> TestBars { get; init; }

    /// <summary>Compression specimens.</summary>
    public Sequence<Prism> Prisms { get; init; }
}

/// <summary>The jar of shaken soil: settled heights.</summary>
public sealed record SoilTests
{
    /// <summary>Height of the settled sand.</summary>
    public Length? JarSand { get; init; }

    /// <summary>Height of the settled silt.</summary>
    public Length? JarSilt { get; init; }

    /// <summary>Height of the settled clay.</summary>
    public Length? JarClay { get; init; }
}

/// <summary>Parts of one batch, in buckets as filled; water and straw too. Null where not yet known.</summary>
public sealed record Recipe
{
    /// <summary>Buckets of site soil.</summary>
    public double? Soil { get; init; }

    /// <summary>Buckets of added clay.</summary>
    public double? Clay { get; init; }

    /// <summary>Buckets of sand.</summary>
    public double? Sand { get; init; }

    /// <summary>Buckets of water.</summary>
    public double? Water { get; init; }

    /// <summary>Straw in each batch.</summary>
    public Mass? Straw { get; init; }
}

/// <summary>The crew's own calibration: trial batches raised how much wall.</summary>
/// <param name="Buckets">Dry buckets in one batch.</param>
/// <param name="BucketVolume">What one bucket holds as filled.</param>
/// <param name="TrialBatches">How many batches were laid.</param>
/// <param name="RingLength">Along the inside face at the wall base.</param>
/// <param name="Raised">How much the wall rose.</param>
/// <param name="StartedAt">Height from the finished floor at which the trial began.</param>
public sealed record Batch(double Buckets, Volume BucketVolume, int TrialBatches, Length RingLength, Length Raised, Length StartedAt);

/// <summary>A shrinkage bar.</summary>
/// <param name="Length">Of the wet bar.</param>
/// <param name="Shrinkage">Total shortening when dry.</param>
public sealed record TestBar(Length Length, Length Shrinkage)
{
    /// <summary>When it was read.</summary>
    public DateOnly? Date { get; init; }
}

/// <summary>A compression specimen crushed.</summary>
/// <param name="Width">Of the loaded face.</param>
/// <param name="Depth">Of the loaded face.</param>
/// <param name="Height">In the direction of load.</param>
/// <param name="FailureLoad">At which it broke.</param>
/// <param name="CuredDays">Days of drying.</param>
/// <param name="Oven">Dried in an oven.</param>
public sealed record Prism(Length Width, Length Depth, Length Height, Force FailureLoad, int CuredDays, bool Oven = false)
{
    /// <summary>When it was crushed.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>Who crushed it.</summary>
    public string? Tester { get; init; }
}
