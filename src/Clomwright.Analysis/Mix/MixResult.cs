using Clomwright.Evidence;

namespace Clomwright.Analysis.Mix;

/// <summary>What the tests of soil and mix say: a recipe, the next test to make, and the strength that may be counted on. Numbers, never a verdict.</summary>
public sealed record MixResult
{
    /// <summary>The jar: when to mark it, and what its layers are; or why that is not known.</summary>
    public required Known<JarReading> Jar { get; init; }

    /// <summary>What each hand test says and what it does not.</summary>
    public required Sequence<HandReading> HandTests { get; init; }

    /// <summary>LL of the soil, water by dry mass: measured, or estimated from its clay.</summary>
    public required Settled<double> LiquidLimit { get; init; }

    /// <summary>PL of the soil, water by dry mass: measured, or estimated from its clay.</summary>
    public required Settled<double> PlasticLimit { get; init; }

    /// <summary>Clay and plasticity of the cob, by its recipe, or by the target's blend; or why they are not known.</summary>
    public required Known<CobClay> Cob { get; init; }

    /// <summary>Of cob as it dries out, kg/m3: from specimens weighed, or assumed.</summary>
    public required Settled<double> DryDensity { get; init; }

    /// <summary>Water over dry minerals as mixed, what the straw drinks not counted: from the recipe, or the target.</summary>
    public required Settled<double> MixingWater { get; init; }

    /// <summary>Grains, water and air as laid.</summary>
    public required Phases AsLaid { get; init; }

    /// <summary>The batch that the target asks for; or why it cannot be worked out.</summary>
    public required Known<BatchParts> Blend { get; init; }

    /// <summary>The batch as the recipe has it; or why it is not known.</summary>
    public required Known<BatchParts> AsWritten { get; init; }

    /// <summary>What to test next, and why.</summary>
    public required NextTest Next { get; init; }

    /// <summary>Every specimen, read.</summary>
    public required TestRegister Register { get; init; }

    /// <summary>What the cob of this house may be loaded with.</summary>
    public required CobStrength Strength { get; init; }

    /// <summary>What orders of earth and straw come to in trucks, tonnes and bales, by the key of the order's line.</summary>
    public required Sequence<Delivery> Deliveries { get; init; }

    /// <summary>Values nobody gave, used here.</summary>
    public required Sequence<Assumption> Assumptions { get; init; }

    /// <summary>How the numbers were made.</summary>
    public required Sequence<Calculation> Calculations { get; init; }

    /// <summary>Load over area of a crushed specimen, Pa; null for one that cannot be read.</summary>
    /// <param name="prism">Its place in the house file, from 0.</param>
    public Amount? StrengthOf(int prism) => Register.Specimens.FirstOrDefault(s => s.Number == prism + 1) is { } read ? new Amount(read.Strength, Dimension.Stress) : null;

    /// <summary>Why a crushed specimen says nothing of the mix in the wall, whatever its shape; null where it does.</summary>
    /// <param name="prism">Its place in the house file, from 0.</param>
    public Message? StrengthLeftOut(int prism) => Register.Specimens.FirstOrDefault(s => s.Number == prism + 1) is { } read
        ? read.LeftOut is { Key: not "analysis.left-out.shape" } because ? because : null
        : new Message("analysis.left-out.unread");

    /// <summary>Modulus of rupture of a brick, Pa; null for one that cannot be read.</summary>
    /// <param name="brick">Its place in the house file, from 0.</param>
    public Amount? RuptureOf(int brick) => Register.Ruptures.FirstOrDefault(r => r.Number == brick + 1) is { } read ? new Amount(read.Modulus.Value, Dimension.Stress) : null;

    /// <summary>Whether a brick says something of the mix in the wall: of that mix, and not dried in an oven.</summary>
    /// <param name="brick">Its place in the house file, from 0.</param>
    public bool RuptureCounts(int brick) => Register.Ruptures.Any(r => r.Number == brick + 1 && r.OfThisMix && !r.Oven);

    /// <summary>Whether a shrinkage bar is of the mix in the wall.</summary>
    /// <param name="bar">Its place in the house file, from 0.</param>
    public bool BarCounts(int bar) => Register.Bars.Any(b => b.Number == bar + 1 && b.OfThisMix);
}

/// <summary>The jar of shaken soil.</summary>
/// <param name="Times">When each size has settled in this jar; or why that is not known.</param>
/// <param name="Sand">Share of the mass.</param>
/// <param name="Silt">Share of the mass.</param>
/// <param name="Clay">Share of the mass.</param>
/// <param name="Texture">Key of its USDA class.</param>
/// <param name="ClayByVolume">Share of the settled height: what the jar shows before densities are allowed for.</param>
/// <param name="How">How the layers became masses.</param>
public sealed record JarReading(Known<SettlingTimes> Times, double Sand, double Silt, double Clay, string Texture, double ClayByVolume, Calculation How);

/// <summary>Clay in the cob.</summary>
/// <param name="Clay">Share of the dry minerals.</param>
/// <param name="ClayOfSoil">Share of the dry soil: from a jar, or assumed.</param>
/// <param name="Index">Plasticity index of the cob's minerals: the activity, assumed, times the clay.</param>
public sealed record CobClay(double Clay, double ClayOfSoil, Settled<double> Index);

/// <summary>When a jar is marked.</summary>
/// <param name="Sizes">Grain by grain, the coarsest first.</param>
public sealed record SettlingTimes(Sequence<SettlingTime> Sizes)
{
    /// <summary>When the sand has settled, s.</summary>
    public double Sand => Sizes.First(s => s.Key == "usda-sand").Seconds;

    /// <summary>When the silt has settled too, s.</summary>
    public double Silt => Sizes.First(s => s.Key == "usda-silt").Seconds;
}

/// <summary>When grains of one size have all settled.</summary>
/// <param name="Key"><c>iso-sand</c> 0.063 mm, <c>usda-sand</c> 0.05 mm, <c>silt-middle</c> 0.02 mm, <c>silt-fine</c> 0.006 mm, <c>usda-silt</c> 0.002 mm.</param>
/// <param name="Diameter">m.</param>
/// <param name="Seconds">After the jar was set down.</param>
/// <param name="How">How.</param>
public sealed record SettlingTime(string Key, double Diameter, double Seconds, Calculation How);

/// <summary>A hand test.</summary>
/// <param name="Key"><c>ribbon</c>, <c>worm</c>, <c>ball</c>, <c>wash</c>.</param>
/// <param name="Sense"><c>lean</c>, <c>middling</c>, <c>rich</c>, or <c>silty</c>.</param>
/// <param name="Says">What it says.</param>
/// <param name="DoesNot">What it does not say.</param>
/// <param name="Source">Whose reading it is.</param>
public sealed record HandReading(string Key, string Sense, Message Says, Message DoesNot, Source Source);

/// <summary>One batch in what the crew carries.</summary>
/// <param name="Soil">Buckets of site soil.</param>
/// <param name="Clay">Buckets of added clay.</param>
/// <param name="Sand">Buckets of sand.</param>
/// <param name="Water">Buckets of water to add; null where the recipe does not say.</param>
/// <param name="Straw">kg; null where the recipe does not say.</param>
/// <param name="Armfuls">Of straw; null until an armful is weighed.</param>
/// <param name="Minerals">Dry soil, clay and sand, kg.</param>
/// <param name="ClayShare">Clay in the dry minerals.</param>
/// <param name="StrawShare">Straw over dry minerals; null where it is not known.</param>
/// <param name="StrawWater">What the straw drinks, kg; null where it is not known.</param>
/// <param name="SoilMass">A bucket of soil as filled, kg.</param>
/// <param name="SandMass">A bucket of sand as filled, kg.</param>
/// <param name="How">How.</param>
public sealed record BatchParts(
    double Soil, double Clay, double Sand, double? Water, double? Straw, double? Armfuls, double Minerals, double ClayShare, double? StrawShare, double? StrawWater, double SoilMass, double SandMass, Calculation How)
{
    /// <summary>Share of sand among the buckets of soil, clay and sand.</summary>
    public double SandShare => Soil + Clay + Sand > 0 ? Sand / (Soil + Clay + Sand) : 0;
}

/// <summary>The next test to make.</summary>
/// <param name="Key"><c>jar</c>, <c>first-bars</c>, <c>more-sand</c>, <c>less-sand</c>, <c>between</c>, <c>prisms</c>, <c>wall-prisms</c>, <c>batch</c>.</param>
/// <param name="SandShare">Share of sand among the dry buckets to try; null where the test is about something else.</param>
/// <param name="Soil">Buckets of soil in a trial batch as large as the crew's; null where they cannot be said.</param>
/// <param name="Sand">Buckets of sand.</param>
/// <param name="What">What to do.</param>
/// <param name="Because">Why this one.</param>
public sealed record NextTest(string Key, double? SandShare, double? Soil, double? Sand, Message What, Message Because);

/// <summary>What an order comes to at the gate.</summary>
/// <param name="Key">Of the order's line.</param>
/// <param name="Mass">kg, damp as delivered.</param>
/// <param name="MassTag">Measured with the crew's buckets, or assumed.</param>
/// <param name="Loads">Trucks or bales, whole ones; null where one is not known.</param>
/// <param name="LoadKey"><c>trucks</c> or <c>bales</c>; empty for none.</param>
/// <param name="Notes">What belongs beside it.</param>
public sealed record Delivery(string Key, double? Mass, Tag MassTag, int? Loads, string LoadKey, Sequence<Message> Notes);
