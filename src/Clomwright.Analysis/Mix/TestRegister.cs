using Clomwright.Evidence;

namespace Clomwright.Analysis.Mix;

/// <summary>Every specimen with what it reads, and what is missing.</summary>
public sealed record TestRegister
{
    /// <summary>Shrinkage bars.</summary>
    public required Sequence<BarReading> Bars { get; init; }

    /// <summary>The limits that people hold bars to, each with its origin.</summary>
    public required Sequence<BarLimit> BarLimits { get; init; }

    /// <summary>Crushed specimens.</summary>
    public required Sequence<SpecimenReading> Specimens { get; init; }

    /// <summary>Mean and scatter of those that count; or why there are none.</summary>
    public required Known<Sample> Sample { get; init; }

    /// <summary>What published rules make of them, side by side.</summary>
    public required Sequence<StrengthReading> ByRule { get; init; }

    /// <summary>Bricks broken by bending.</summary>
    public required Sequence<RuptureReading> Ruptures { get; init; }

    /// <summary>Bricks dropped.</summary>
    public required Sequence<OtherReading> Drops { get; init; }

    /// <summary>Bricks worn by water.</summary>
    public required Sequence<OtherReading> Erosions { get; init; }

    /// <summary>What is missing or odd, in the order in which it matters.</summary>
    public required Sequence<Message> Missing { get; init; }
}

/// <summary>A limit of linear shrinkage.</summary>
/// <param name="Key"><c>new-zealand</c>, <c>practice</c>, <c>model-code</c>.</param>
/// <param name="Share">Shortening over length.</param>
/// <param name="Length">Of the box it was written for, m; null where any.</param>
public sealed record BarLimit(string Key, Cited<double> Share, double? Length)
{
    /// <summary>Its name in words.</summary>
    public Message Name => new($"analysis.bar-limit.{Key}");

    /// <summary>Whether a bar is of the length that the limit was written for: to 2 %.</summary>
    public bool Fits(double length) => Length is not { } own || Math.Abs(length - own) <= 0.02 * own;
}

/// <summary>A shrinkage bar.</summary>
/// <param name="Number">In the house file, from 1.</param>
/// <param name="Trial">The trial it is of; null for the mix of the recipe.</param>
/// <param name="OfThisMix">Whether it is of the mix that the recipe has.</param>
/// <param name="Length">Wet, m.</param>
/// <param name="Shrinkage">Share of the length.</param>
/// <param name="Cracked">It cracked across.</param>
/// <param name="Date">When it was read.</param>
/// <param name="Tester">Who read it.</param>
public sealed record BarReading(int Number, string? Trial, bool OfThisMix, double Length, double Shrinkage, bool Cracked, DateOnly? Date, string? Tester);

/// <summary>A crushed specimen.</summary>
/// <param name="Number">In the house file, from 1.</param>
/// <param name="Trial">The trial it is of; null for the mix of the recipe.</param>
/// <param name="Shape"><c>prism</c>, <c>cube</c>, <c>cylinder</c>.</param>
/// <param name="Width">m; the diameter of a cylinder.</param>
/// <param name="Depth">m.</param>
/// <param name="Height">m.</param>
/// <param name="CuredDays">Days of drying.</param>
/// <param name="Oven">Dried in an oven.</param>
/// <param name="FromWall">Made of cob being laid.</param>
/// <param name="Strength">Load over area, Pa.</param>
/// <param name="AsPrism">The same for a prism twice as tall as wide, Pa.</param>
/// <param name="LeftOut">Why it does not count; null when it does.</param>
/// <param name="Date">When it was crushed.</param>
/// <param name="Tester">Who crushed it.</param>
/// <param name="Moisture">Water in it, by dry mass; null where nobody measured.</param>
public sealed record SpecimenReading(
    int Number, string? Trial, string Shape, double Width, double Depth, double Height, int CuredDays, bool Oven, bool FromWall, double Strength, double AsPrism, Message? LeftOut, DateOnly? Date, string? Tester,
    double? Moisture)
{
    /// <summary>Whether it counts.</summary>
    public bool Counts => LeftOut is null;

    /// <summary>Whether it is one of the prisms that the model code asks for, 4 by 4 by 8 in and dried without an oven.</summary>
    public bool IsOfModelCode => Counts && Shape == "prism" && Near(Width, 0.1016) && Near(Depth, 0.1016) && Near(Height, 0.2032);

    private static bool Near(double a, double b) => Math.Abs(a - b) < 1e-9;
}

/// <summary>Mean and scatter.</summary>
/// <param name="Count">n.</param>
/// <param name="Mean">Pa.</param>
/// <param name="Variation">V: standard deviation with n - 1, over the mean; 0 for one.</param>
/// <param name="Least">Pa.</param>
/// <param name="How">How.</param>
public sealed record Sample(int Count, double Mean, double Variation, double Least, Calculation How);

/// <summary>What one rule makes of a sample.</summary>
/// <param name="Key"><c>en-1990</c>, <c>nzs-4298</c>, <c>second-lowest</c>, <c>ibc-adobe</c>, <c>e080</c>.</param>
/// <param name="Value">Pa; or why there is none.</param>
/// <param name="Source">Whose rule it is.</param>
public sealed record StrengthReading(string Key, Known<Calculated<double>> Value, Source Source)
{
    /// <summary>Its name in words.</summary>
    public Message Name => new($"analysis.strength-rule.{Key}");
}

/// <summary>A brick broken by bending.</summary>
/// <param name="Number">In the house file, from 1.</param>
/// <param name="Trial">The trial it is of; null for the mix of the recipe.</param>
/// <param name="OfThisMix">Whether it is of the mix that the recipe has.</param>
/// <param name="Oven">Dried in an oven.</param>
/// <param name="Modulus">3 P L/(2 b d^2), Pa.</param>
public sealed record RuptureReading(int Number, string? Trial, bool OfThisMix, bool Oven, Calculated<double> Modulus);

/// <summary>A brick dropped or worn.</summary>
/// <param name="Number">In the house file, from 1.</param>
/// <param name="Trial">The trial it is of; null for the mix of the recipe.</param>
/// <param name="OfThisMix">Whether it is of the mix that the recipe has.</param>
/// <param name="Says">What it says.</param>
/// <param name="Source">By whose table.</param>
public sealed record OtherReading(int Number, string? Trial, bool OfThisMix, Message Says, Source Source);

/// <summary>What the cob may be loaded with.</summary>
/// <param name="Allowable">Compression, Pa: the characteristic strength over <paramref name="Divisor"/>.</param>
/// <param name="Characteristic">Pa, of a prism twice as tall as wide.</param>
/// <param name="Mean">Pa; null without a specimen that counts.</param>
/// <param name="Divisor">3 with five specimens or more of this mix, 5 where it is assumed.</param>
/// <param name="Count">Specimens that count.</param>
/// <param name="Tag">Measured or assumed.</param>
/// <param name="Why">Whose, when and how: what stands beside the number wherever it is printed.</param>
/// <param name="Assumption">What was assumed; null for a measured strength.</param>
/// <param name="How">How.</param>
public sealed record CobStrength(double Allowable, double Characteristic, double? Mean, double Divisor, int Count, Tag Tag, Message Why, Assumption? Assumption, Calculation How)
{
    /// <summary>For checks that settle on a value: measured without an assumption, or assumed with it.</summary>
    public Settled<double> Settled => new(Allowable, Assumption);
}
