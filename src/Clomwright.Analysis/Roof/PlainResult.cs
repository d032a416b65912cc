using Clomwright.Analysis.Members;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>A radial, shed or gable roof in every state. Lists run by landing, clockwise.</summary>
public sealed record PlainResult
{
    /// <summary>How it stands: <c>post</c>, <c>ring</c>, <c>shed</c> or <c>gable</c>.</summary>
    public required string Kind { get; init; }

    /// <summary>One a rafter.</summary>
    public required Sequence<RafterCard> Rafters { get; init; }

    /// <summary>Where each rafter lies, in the same order: its foot on the bond beam, its far crossing the inner support.</summary>
    public required Sequence<PoleGeometry> Places { get; init; }

    /// <summary>Place of the landing that each rafter's foot stands on, in the lists by landing; in the same order.</summary>
    public required Sequence<int> Feet { get; init; }

    /// <summary>Place of the landing that its upper end sits on, -1 where it sits on none; in the same order.</summary>
    public required Sequence<int> Ends { get; init; }

    /// <summary>States of load, keyed as those of a reciprocal frame.</summary>
    public required Sequence<RoofStage> Stages { get; init; }

    /// <summary>Most the post, or the high wall for each rafter, carries in any state, N; 0 where legs lean on each other.</summary>
    public required double InnerLoad { get; init; }

    /// <summary>Most outward push of one rafter on the plate in any state, N: what ties or a bond beam in tension must hold.</summary>
    public required double Thrust { get; init; }

    /// <summary>Hoop force of that push round a ring and in the bond beam, N; 0 for other kinds.</summary>
    public required double Hoop { get; init; }

    /// <summary>All combinations of loads.</summary>
    public required CombinedStates Combined { get; init; }

    /// <summary>The rafters, each check at its hardest.</summary>
    public required Sequence<CheckedMember> Checks { get; init; }

    /// <summary>The same checks in every stage of building and loading; the pattern of each names the stage (<see cref="StageStates"/>).</summary>
    public Sequence<CheckedMember> StageChecks { get; init; }

    /// <summary>The state of a key.</summary>
    public Known<RoofForces> Stage(string key) => Stages.First(s => s.Key == key).Forces;
}

/// <summary>One rafter for the crew.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Pitch">Radians.</param>
/// <param name="Span">From the bond beam to the inner support, in plan, m.</param>
/// <param name="Length">From the eave to its upper end, along it, m.</param>
/// <param name="Mass">When green, kg; null when the timber is not known.</param>
/// <param name="People">To carry and lift it; null when its mass is not known.</param>
public sealed record RafterCard(int Number, double Pitch, double Span, double Length, double? Mass, int? People);
