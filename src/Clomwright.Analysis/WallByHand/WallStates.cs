using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.WallByHand;

/// <summary>A state of load as the wall feels it.</summary>
/// <param name="Combination">Of whose factors it is made.</param>
/// <param name="Sense">Its pattern, or its stage.</param>
/// <param name="Dead">What the weight of the wall is multiplied by, the earthquake's up and down counted.</param>
/// <param name="Reactions">Of the poles on the bond beam, N, in the order of the landings; nothing for the wall alone.</param>
internal sealed record WallState(Combination Combination, string Sense, double Dead, Sequence<double> Reactions);

/// <summary>The states that press the wall, and those that leave it lightest.</summary>
/// <remarks>
/// The roof works patterns that lie on one side (snow, drift, soil, one person, wind) out for the direction that is worst for its own joints. On the wall they may lie on any side, so that in them every pole presses
/// as hard as the hardest, or as little as the least.
/// </remarks>
internal static class WallStates
{
    /// <summary>The wall before it has a roof.</summary>
    public const string Bare = StageStates.Prefix + "bareWall";

    private static readonly string[] Uneven = ["one-sided", "drift", "stage/oneSided", "stage/drift", "stage/halfSoil", "stage/workerEave", "stage/workerRing", "stage/heapEave"];

    /// <summary>Every combination in which weight presses, every stage of the roof, and the bare wall; each pole as hard as it may press.</summary>
    public static IReadOnlyList<WallState> Pressing(RoofResult roof, Site site)
    {
        var system = roof.Combined.States is [{ Combination.Form: LoadForm.Strength }, ..] ? TimberSystem.En : TimberSystem.Nds;
        var stages = roof.Reciprocal.Value is { } frame ? StageStates.Of(frame, system) : roof.Plain.Value is { } plain ? StageStates.Of(plain.Stages, system) : [];
        return
        [
            new(StageStates.Combination("bare", system), Bare, StageStates.Factor("bare", system), []),
            .. stages.Concat(roof.Combined.States.Where(s => !s.Combination.DeadIsLeast)).Select(s => Of(s, site, all => all.Max())),
        ];
    }

    /// <summary>Combinations in which the least weight stands against wind or earthquake; each pole as little as it may press.</summary>
    public static IReadOnlyList<WallState> Lightest(RoofResult roof, Site site) => [.. Light(roof, site).Select(s => Of(s, site, all => all.Min()))];

    /// <summary>The same with what they press together shared evenly by the poles: for what stands as a whole.</summary>
    public static IReadOnlyList<WallState> LightestTogether(RoofResult roof, Site site) => [.. Light(roof, site).Select(s => Of(s, site, all => all.Average()))];

    private static IEnumerable<CombinedState> Light(RoofResult roof, Site site) => roof.Combined.States
        .Where(s => s.Combination.DeadIsLeast && (s.Combination.Factor(LoadKind.Wind) > 0 || (s.Combination.Factor(LoadKind.Earthquake) > 0 && site.Loads != "en1990")));

    private static WallState Of(CombinedState state, Site site, Func<Sequence<double>, double> each)
    {
        var reactions = state.Forces.PlateReaction;
        var uneven = reactions.Count > 0 && (Uneven.Contains(state.Sense) || state.Combination.Factor(LoadKind.Wind) > 0);
        return new(state.Combination, state.Sense, RoofCombinations.DeadFactor(state.Combination, site.SeismicSds ?? 0), uneven ? Enumerable.Repeat(each(reactions), reactions.Count).ToSequence() : reactions);
    }
}
