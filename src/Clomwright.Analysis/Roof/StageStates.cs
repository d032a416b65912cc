using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>Stages of building and loading as combinations, so that every check of a combination is made of every stage too.</summary>
/// <remarks>
/// Strengths are brought to the duration of the stage: snow that of snow, everything else as if it stayed for good. A stage is a load as it is; against timber of
/// EN 1995 it is multiplied by the partial factor of EN 1990, 1.5 where snow lies and 1.35 elsewhere.
/// </remarks>
public static class StageStates
{
    /// <summary>What the pattern of a stage begins with: <c>stage/soilWet</c>, <c>stage/fromRing/2/5</c> for the second band of five.</summary>
    public const string Prefix = "stage/";

    private static readonly string[] WithSnow = ["soilWetSnow", "oneSided", "drift"];

    /// <summary>Whether a state is a stage of building or loading.</summary>
    public static bool Is(string sense) => sense.StartsWith(Prefix, StringComparison.Ordinal);

    /// <summary>Every known stage of a reciprocal frame, and every step of laying the soil both ways.</summary>
    public static Sequence<CombinedState> Of(ReciprocalResult roof, TimberSystem system) =>
    [
        .. Of(roof.Stages, system),
        .. Bands("fromRing", roof.FromRing, system), .. Bands("fromEave", roof.FromEave, system),
    ];

    /// <summary>Every known stage.</summary>
    public static Sequence<CombinedState> Of(Sequence<RoofStage> stages, TimberSystem system) =>
        stages.Where(s => s.Forces.Is).Select(s => One(s.Key, s.Forces.Value!, system)).ToSequence();

    private static IEnumerable<CombinedState> Bands(string order, Known<LoadingOrder> laid, TimberSystem system) =>
        (laid.Value?.Steps ?? []).Select((step, i) => One(FormattableString.Invariant($"{order}/{i + 1}/{laid.Value!.Steps.Count}"), step.Forces, system));

    /// <summary>What a stage is multiplied by: 1, or the partial factor of EN 1990.</summary>
    public static double Factor(string key, TimberSystem system) => system != TimberSystem.En ? 1 : WithSnow.Contains(key) ? 1.5 : 1.35;

    /// <summary>A stage as a combination, by which strengths are brought to its duration.</summary>
    public static Combination Combination(string key, TimberSystem system)
    {
        var snow = WithSnow.Contains(key);
        var european = system == TimberSystem.En;
        var factor = Factor(key, system);
        Sequence<CombinationTerm> terms = snow ? [new(LoadKind.Dead, factor), new(LoadKind.Snow, factor)] : [new(LoadKind.Dead, factor)];
        return new Combination(snow ? "D + S" : "D", european ? LoadForm.Strength : LoadForm.AllowableStress, false, terms, Sources.Get(european ? "en-1990-memory" : "mechanics"));
    }

    private static CombinedState One(string key, RoofForces forces, TimberSystem system)
    {
        var factor = Factor(key, system);
        return new CombinedState(Combination(key, system), Prefix + key, factor == 1 ? forces : forces.Times(factor));
    }
}
