using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>Soil tests, recipe, the crew's own batch, and tests of the mix.</summary>
public sealed record Mix
{
    /// <summary>What was seen of the soil.</summary>
    public SoilTests SoilTests { get; init; } = new();

    /// <summary>What the mix is to come to.</summary>
    public MixTarget Target { get; init; } = new();

    /// <summary>Parts of one batch of the mix that goes into the wall.</summary>
    public Recipe Recipe { get; init; } = new();

    /// <summary>What the crew weighed of its own buckets, armfuls and bales.</summary>
    public Measures Measures { get; init; } = new();

    /// <summary>What the crew's batch makes, measured by the crew.</summary>
    public Batch? Batch { get; init; }

    /// <summary>Mixes tried, each with its own parts, so that tests belong to one.</summary>
    public Sequence<MixTrial> Trials { get; init; }

    /// <summary>Shrinkage bars.</summary>
    public Sequence<TestBar> TestBars { get; init; }

    /// <summary>Compression specimens.</summary>
    public Sequence<Prism> Prisms { get; init; }

    /// <summary>Bricks broken by bending.</summary>
    public Sequence<Brick> Bricks { get; init; }

    /// <summary>Bricks dropped.</summary>
    public Sequence<Drop> Drops { get; init; }

    /// <summary>Bricks sprayed or dripped on.</summary>
    public Sequence<Erosion> Erosions { get; init; }

    /// <summary>Blocks weighed as they dry.</summary>
    public Sequence<DryingBlock> Blocks { get; init; }
}

/// <summary>What was seen of the site soil: the jar, limits measured in a laboratory, and tests by hand.</summary>
public sealed record SoilTests
{
    /// <summary>Height of the settled sand.</summary>
    public Length? JarSand { get; init; }

    /// <summary>Height of the settled silt.</summary>
    public Length? JarSilt { get; init; }

    /// <summary>Height of the settled clay.</summary>
    public Length? JarClay { get; init; }

    /// <summary>From the bottom of the jar to the water's surface when it was set down: how far a grain may fall.</summary>
    public Length? JarColumn { get; init; }

    /// <summary>Temperature of the water.</summary>
    public Temperature? JarWater { get; init; }

    /// <summary>Liquid limit, water by dry mass.</summary>
    public Share? LiquidLimit { get; init; }

    /// <summary>Plastic limit, water by dry mass.</summary>
    public Share? PlasticLimit { get; init; }

    /// <summary>Water in the heap of soil, by dry mass.</summary>
    public Share? Moisture { get; init; }

    /// <summary>Water in the heap of sand, by dry mass.</summary>
    public Share? SandMoisture { get; init; }

    /// <summary>Length at which a ribbon about 20 mm wide and 6 mm thick, pushed over an edge, broke off.</summary>
    public Length? Ribbon { get; init; }

    /// <summary>Length at which a worm about 30 mm thick, pushed over an edge, broke off.</summary>
    public Length? Worm { get; init; }

    /// <summary>What a moist ball of 40 mm did when it was dropped 1.5 m.</summary>
    public BallDrop? Ball { get; init; }

    /// <summary>How the soil washed off the hands.</summary>
    public HandWash? Wash { get; init; }
}

/// <summary>What a dropped ball did.</summary>
public enum BallDrop
{
    /// <summary>It flattened a little and hardly cracked.</summary>
    Flattened,

    /// <summary>It cracked and held together.</summary>
    Cracked,

    /// <summary>It fell to pieces.</summary>
    Crumbled,
}

/// <summary>How soil washes off the hands.</summary>
public enum HandWash
{
    /// <summary>At once, with grit.</summary>
    Gritty,

    /// <summary>Like flour, without much rubbing.</summary>
    Floury,

    /// <summary>Slippery, and only with rubbing.</summary>
    Sticky,
}

/// <summary>What the mix is to come to. Null where nobody said.</summary>
public sealed record MixTarget
{
    /// <summary>Clay in the dry minerals, by mass.</summary>
    public Share? Clay { get; init; }

    /// <summary>Straw over dry minerals, by mass.</summary>
    public Share? Straw { get; init; }

    /// <summary>Water over dry minerals, by mass, before what the straw drinks.</summary>
    public Share? Water { get; init; }
}

/// <summary>What the crew weighed and measured of what it carries. Null where nobody did.</summary>
public sealed record Measures
{
    /// <summary>One armful of straw.</summary>
    public Mass? Armful { get; init; }

    /// <summary>One bale of straw.</summary>
    public Mass? Bale { get; init; }

    /// <summary>A bucket of site soil as filled, without the bucket.</summary>
    public Mass? SoilBucket { get; init; }

    /// <summary>A bucket of added clay.</summary>
    public Mass? ClayBucket { get; init; }

    /// <summary>A bucket of sand.</summary>
    public Mass? SandBucket { get; init; }

    /// <summary>A bucket of water filled as far as buckets are filled: what it really holds.</summary>
    public Mass? WaterBucket { get; init; }

    /// <summary>What is written on the bucket.</summary>
    public Volume? BucketLabel { get; init; }

    /// <summary>What one truck brings.</summary>
    public Volume? Truck { get; init; }
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
