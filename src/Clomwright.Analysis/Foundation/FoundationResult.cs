using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Foundation;

/// <summary>What comes down on stem and ground, and how trench and drain lie. Numbers, never a verdict.</summary>
public sealed record FoundationResult
{
    /// <summary><c>bareWall</c>, <c>soilWet</c>, <c>soilWetSnow</c>; then the allowable-stress combinations in which one pole, and all poles together, press hardest, as <c>combined</c>.</summary>
    public required Sequence<FoundationStage> Stages { get; init; }

    /// <summary>Greatest pressure of the cob on the stem's top against what the stem is allowed.</summary>
    public required Known<FoundationCheck> Stem { get; init; }

    /// <summary>Greatest pressure under the trench against what the site's ground is allowed.</summary>
    public required Known<FoundationCheck> Ground { get; init; }

    /// <summary>How far from the middle the load comes down, as a share of the width, where cob meets stem, at the stem's foot and under the trench; capacity 1 is the whole width, and a sixth the edge of the middle third.</summary>
    public required Sequence<JointCheck> Joints { get; init; }

    /// <summary>Height above grade over width of a stem laid without mortar; null for one with mortar, or where it is not known.</summary>
    public required double? DryStem { get; init; }

    /// <summary>What the ground bears by a table, and by the formulas from its own tests, beside what is given.</summary>
    public required GroundCapacities Capacities { get; init; }

    /// <summary>Trench bottom at its shallowest against frost, both below outside grade.</summary>
    public required Known<FoundationCheck> Frost { get; init; }

    /// <summary>Depth of frost estimated from how cold the winters are: offered, never in place of the given one.</summary>
    public required Known<FrostEstimate> FrostEstimate { get; init; }

    /// <summary>How the trench falls to its outlet.</summary>
    public required Known<DrainFall> Drain { get; init; }

    /// <summary>What nobody gave.</summary>
    public required Sequence<Assumption> Assumptions { get; init; }

    /// <summary>Why a load that belongs in the heaviest state is not known; null when all are. A pressure found without it is not the greatest.</summary>
    public required Message? Missing { get; init; }

    /// <summary>The strip that presses hardest on the ground of all that are known; or why there is none.</summary>
    public Known<StripLoad> Hardest => Stages.Where(s => s.Strips.Is).Select(s => s.Strips.Value!.Hardest).MaxBy(StripLoads.Pressing) is { } strip ? strip : Stages[0].Strips.NotChecked!;

    /// <summary>How: the hardest strip of each stage, the ground, frost and the drain.</summary>
    public Sequence<Calculation> Calculations =>
    [
        .. Stages.Where(s => s.Strips.Is).SelectMany(s => s.Strips.Value!.Hardest.How.Select(c => c with { Place = $"{s.Strips.Value!.Hardest.Subject}, {s.Name}" })),
        .. Capacities.Computed.Value is { } computed ? (Sequence<Calculation>)[computed.How] : [],
        .. FrostEstimate.Value is { } frost ? (Sequence<Calculation>)[frost.How] : [],
        .. Drain.Value is { } drain ? (Sequence<Calculation>)[drain.How] : [],
    ];
}

/// <summary>One state of load.</summary>
/// <param name="Key">Permanent key.</param>
/// <param name="Strips">What comes down; or why it is not known.</param>
public sealed record FoundationStage(string Key, Known<StripLoads> Strips)
{
    /// <summary>The combination of loads, such as <c>D+S</c>; empty for a state that is none.</summary>
    public string Combination { get; init; } = "";

    /// <summary>Its pattern, as the roof keys it; empty for a state that is none.</summary>
    public string Sense { get; init; } = "";

    /// <summary>As a part of a subject.</summary>
    internal string Name => Key switch { "bareWall" => "bare wall", "soilWet" => "wet soil", "soilWetSnow" => "wet soil and snow", _ => Combination };
}

/// <summary>The wall taken all round, then under each pole.</summary>
public sealed record StripLoads(Sequence<StripLoad> Strips)
{
    /// <summary>The one that presses hardest on the ground; on the stem where there is no trench.</summary>
    public StripLoad Hardest => Strips.MaxBy(Pressing)!;

    /// <summary>What strips are ranked by.</summary>
    internal static double Pressing(StripLoad strip) => strip.GroundPressure.Value?.Value ?? strip.StemPressure.Value?.Value ?? strip.OnStem;
}

/// <summary>What comes down on one stretch of the stem, for each metre of the stem's middle line.</summary>
public sealed record StripLoad
{
    /// <summary><c>wall</c> for the whole ring, <c>pole 3</c> for the stretch that a pole's load spreads over.</summary>
    public required string Subject { get; init; }

    /// <summary>Length that carries: the stretch less the openings that reach down to the stem, m.</summary>
    public required double Length { get; init; }

    /// <summary>Cob, N/m, with the cob over openings.</summary>
    public required double Cob { get; init; }

    /// <summary>Bond beam and roof, N/m.</summary>
    public required double Roof { get; init; }

    /// <summary>N: all on the stem's top, N/m.</summary>
    public required double OnStem { get; init; }

    /// <summary>e: from the middle of the cob's contact with the stem to where the load comes down, outward positive, m.</summary>
    public required double StemEccentricity { get; init; }

    /// <summary>Width of that contact, m.</summary>
    public required double Contact { get; init; }

    /// <summary>Greatest pressure on the stem's top, Pa; or why there is none.</summary>
    public required Known<Calculated<double>> StemPressure { get; init; }

    /// <summary>At the stem's foot, from its middle to where the load and the stem come down, as a share of its width, without sign; or why it is not known.</summary>
    public required Known<Calculated<double>> FootEccentricity { get; init; }

    /// <summary>From the middle of the trench to where all of it comes down, outward positive, as a share of the bearing width; or why it is not known.</summary>
    public required Known<Calculated<double>> TrenchEccentricity { get; init; }

    /// <summary>Greatest pressure under the trench, Pa; or why there is none.</summary>
    public required Known<Calculated<double>> GroundPressure { get; init; }

    /// <summary>The load itself.</summary>
    public required Calculation LoadHow { get; init; }

    /// <summary>Eccentricity on the stem as a share of the contact, without sign; a sixth is the edge of the middle third.</summary>
    public double StemShare => Math.Abs(StemEccentricity) / Contact;

    /// <summary>How.</summary>
    public Sequence<Calculation> How => [LoadHow, .. new[] { StemPressure.Value?.How, FootEccentricity.Value?.How, GroundPressure.Value?.How, TrenchEccentricity.Value?.How }.OfType<Calculation>()];
}

/// <summary>What is asked against what is there.</summary>
/// <param name="Subject">What it is asked of.</param>
/// <param name="Stage">The state of load that governs; empty where load has no part.</param>
/// <param name="Demand">What is asked.</param>
/// <param name="Capacity">What is there; the same dimension.</param>
public sealed record FoundationCheck(string Subject, string Stage, Amount Demand, Amount Capacity)
{
    /// <summary>The combination that governs; empty where it is a stage.</summary>
    public string Combination { get; init; } = "";

    /// <summary>Its pattern; empty where it is a stage.</summary>
    public string Sense { get; init; } = "";

    /// <summary>Where the capacity comes from, when not from the house file.</summary>
    public Source? From { get; init; }

    /// <summary>Demand over capacity; 1 is exactly enough.</summary>
    public double Use => Demand.Si / Capacity.Si;
}

/// <summary>Where the load comes down in one joint.</summary>
/// <param name="Joint"><c>cob on stem</c>, <c>stem foot</c>, <c>trench</c>.</param>
/// <param name="Check">The strip and stage where it is farthest from the middle.</param>
public sealed record JointCheck(string Joint, Known<FoundationCheck> Check);

/// <summary>The trench as a drain. It is dug to its depth at the far side and falls both ways round to where the pipe leaves.</summary>
/// <param name="Line">Where it lies, with the fall at which it is laid.</param>
/// <param name="Run">Half the ring along the middle of the trench, m: from the far side to the pipe.</param>
/// <param name="Beyond">From the trench on to the outlet, m; null where it is not given.</param>
/// <param name="Available">From the trench bottom at the far side down to the outlet, m; negative where the outlet lies higher.</param>
/// <param name="Needed">What run and pipe need at the fall at which the trench is laid, or at the least fall of practice where none is given, m.</param>
/// <param name="UnitSlip">The sentence that says the fall looks like one written for each foot and laid for every ten; null where it does not.</param>
/// <param name="How">How.</param>
public sealed record DrainFall(DrainLine Line, double Run, double? Beyond, double Available, double Needed, Message? UnitSlip, Calculation How)
{
    /// <summary>Fall at which the trench is laid.</summary>
    public double Slope => Line.Fall;

    /// <summary>The trench bottom point by point, clockwise from the zero mark.</summary>
    public required Sequence<DrainPoint> Points { get; init; }
}
