using Clomwright.Evidence;

namespace Clomwright.Analysis.Foundation;

/// <summary>What comes down on stem and ground, and how trench and drain lie. Numbers, never a verdict.</summary>
public sealed record FoundationResult
{
    /// <summary><c>bareWall</c>, <c>soilWet</c>, <c>soilWetSnow</c>.</summary>
    public required Sequence<FoundationStage> Stages { get; init; }

    /// <summary>Greatest pressure of the cob on the stem's top against what the stem is allowed.</summary>
    public required Known<FoundationCheck> Stem { get; init; }

    /// <summary>Greatest pressure under the trench against what the site's ground is allowed.</summary>
    public required Known<FoundationCheck> Ground { get; init; }

    /// <summary>Trench bottom against frost, both below outside grade.</summary>
    public required Known<FoundationCheck> Frost { get; init; }

    /// <summary>How the trench falls to its outlet.</summary>
    public required Known<DrainFall> Drain { get; init; }

    /// <summary>What nobody gave.</summary>
    public required Sequence<Assumption> Assumptions { get; init; }

    /// <summary>The strip of a stage where most comes down on the ground; or why there is none.</summary>
    public Known<StripLoad> Hardest => Stages.LastOrDefault(s => s.Strips.Is) is { } stage
        ? stage.Strips.Value!.Hardest
        : Stages[0].Strips.NotChecked!;

    /// <summary>Why the heaviest stage is not known; null when it is. A pressure found without it is not the greatest.</summary>
    public Message? Missing => Stages[^1].Strips.NotChecked;

    /// <summary>How: the hardest strip of each stage, and the drain.</summary>
    public Sequence<Calculation> Calculations =>
    [
        .. Stages.Select(s => s.Strips.Value?.Hardest).OfType<StripLoad>().SelectMany(s => s.How),
        .. Drain.Value is { } drain ? (Sequence<Calculation>)[drain.How] : [],
    ];
}

/// <summary>One state of load.</summary>
/// <param name="Key">Permanent key.</param>
/// <param name="Strips">What comes down; or why it is not known.</param>
public sealed record FoundationStage(string Key, Known<StripLoads> Strips);

/// <summary>The wall taken all round, then under each pole.</summary>
public sealed record StripLoads(Sequence<StripLoad> Strips)
{
    /// <summary>The one that presses hardest on the ground; on the stem where there is no trench.</summary>
    public StripLoad Hardest => Strips.MaxBy(s => s.GroundPressure.Value?.Value ?? s.StemPressure.Value?.Value ?? s.OnStem)!;
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

    /// <summary>From the middle of the trench to where all of it comes down, outward positive, as a share of the bearing width; or why it is not known.</summary>
    public required Known<Calculated<double>> TrenchEccentricity { get; init; }

    /// <summary>Greatest pressure under the trench, Pa; or why there is none.</summary>
    public required Known<Calculated<double>> GroundPressure { get; init; }

    /// <summary>The load itself.</summary>
    public required Calculation LoadHow { get; init; }

    /// <summary>Eccentricity on the stem as a share of the contact, without sign; a sixth is the edge of the middle third.</summary>
    public double StemShare => Math.Abs(StemEccentricity) / Contact;

    /// <summary>How.</summary>
    public Sequence<Calculation> How => [LoadHow, .. new[] { StemPressure.Value?.How, GroundPressure.Value?.How }.OfType<Calculation>()];
}

/// <summary>What is asked against what is there.</summary>
/// <param name="Subject">What it is asked of.</param>
/// <param name="Stage">The state of load that governs; empty where load has no part.</param>
/// <param name="Demand">What is asked.</param>
/// <param name="Capacity">What is there; the same dimension.</param>
public sealed record FoundationCheck(string Subject, string Stage, Amount Demand, Amount Capacity)
{
    /// <summary>Demand over capacity; 1 is exactly enough.</summary>
    public double Use => Demand.Si / Capacity.Si;
}

/// <summary>The trench as a drain. It is dug to its depth at the far side and falls both ways round to the outlet.</summary>
/// <param name="Run">Half the ring along the middle of the trench, m: from the far side to the outlet. The pipe from the house to daylight comes on top.</param>
/// <param name="Available">From the trench bottom at the far side down to the outlet, m; negative where the outlet lies higher.</param>
/// <param name="Slope">Available over run.</param>
/// <param name="Needed">The least fall of practice over that run, m.</param>
/// <param name="UnitSlip">The sentence that says the fall looks like one written for each foot and laid for every ten; null where it does not.</param>
/// <param name="How">How.</param>
public sealed record DrainFall(double Run, double Available, double Slope, double Needed, Message? UnitSlip, Calculation How);
