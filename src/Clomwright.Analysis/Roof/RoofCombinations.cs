using Clomwright.Analysis.Loads;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>Sums the loads of a roof by the combinations of its edition, each pattern in its worst direction.</summary>
internal static class RoofCombinations
{
    /// <summary>E_v = 0.2 S_DS D: what an earthquake does up and down.</summary>
    private const double VerticalShake = 0.2;

    public static CombinedStates Of(
        RoofStages stages, LoadEdition? edition, LoadForm form, Known<SnowLoad> snow, Known<WindLoad> wind, double roofLive, double? shaking)
    {
        var missing = new List<Message>();
        var (wet, why) = stages.SoilWet;
        if (wet is null)
        {
            return new([], [why!]);
        }

        missing.AddRange(new[] { snow.NotChecked, wind.NotChecked }.OfType<Message>().Distinct());
        if (edition == LoadEdition.En1990 ? shaking is not 0 : edition is null || shaking is null)
        {
            missing.Add(new Message(edition == LoadEdition.En1990 ? "analysis.loads.seismic-en" : "analysis.loads.seismic-missing"));
        }

        var mechanics = Sources.Get("mechanics");
        var combinations = edition is { } known
            ? Combinations.Of(known, form)
            : [new Combination("D", LoadForm.AllowableStress, false, [new CombinationTerm(LoadKind.Dead, 1)], mechanics)];
        var gusts = wind.Value is { } w ? new Gusts(stages.Cases.Wind(w, up: true), stages.Cases.Wind(w, up: false)) : null;
        var states = new List<CombinedState>();
        foreach (var combination in combinations)
        {
            if ((combination.Factor(LoadKind.Snow) != 0 && !snow.Is) || (combination.Factor(LoadKind.Wind) != 0 && !wind.Is) || (combination.Factor(LoadKind.Earthquake) != 0 && shaking is null))
            {
                continue;
            }

            foreach (var (dead, sense) in Dead(stages, wet, combination))
            {
                states.AddRange(Patterns(stages, combination, dead, sense, snow.Value, gusts, roofLive, shaking ?? 0));
            }
        }

        return new(states.ToSequence(), missing.ToSequence());
    }

    private static IEnumerable<(PoleLoad[] Loads, string Sense)> Dead(RoofStages stages, PoleLoad[] wet, Combination combination)
    {
        if (!combination.DeadIsLeast)
        {
            yield return (wet, "even");
            yield break;
        }

        yield return (stages.DeckedDry!, "up");
        if (stages.SoilDry.Loads is { } dry)
        {
            yield return (dry, "up-dry");
        }
    }

    /// <summary>What weight that stays is multiplied by: its factor, and what an earthquake does up and down with it.</summary>
    /// <param name="combination">The combination.</param>
    /// <param name="shaking">S_DS; 0 where it is not known.</param>
    public static double DeadFactor(Combination combination, double shaking) => combination.Factor(LoadKind.Dead)
        + VerticalShake * shaking * combination.Factor(LoadKind.Earthquake) * (combination.DeadIsLeast ? -1 : 1);

    private static IEnumerable<CombinedState> Patterns(
        RoofStages stages, Combination combination, PoleLoad[] dead, string sense, SnowLoad? snow, Gusts? wind, double roofLive, double shaking)
    {
        var cases = stages.Cases;
        var sum = RoofCases.Scale(DeadFactor(combination, shaking), dead);
        if (combination.Factor(LoadKind.RoofLive) is > 0 and var live)
        {
            sum = RoofCases.Add(sum, live, cases.Even(roofLive));
        }

        if (combination.Factor(LoadKind.Rain) is > 0 and var rain)
        {
            sum = RoofCases.Add(sum, rain, cases.Ponded);
        }

        if (combination.Factor(LoadKind.Wind) is > 0 and var blow)
        {
            sum = RoofCases.Add(sum, 1, combination.DeadIsLeast ? stages.Lightest(sum, blow, wind!.Up) : stages.Worst(sum, blow, wind!.Down));
        }

        if (combination.Factor(LoadKind.Snow) is not (> 0 and var fallen))
        {
            yield return new(combination, sense, stages.ForcesOnly(sum));
            yield break;
        }

        yield return new(combination, "even", stages.ForcesOnly(RoofCases.Add(sum, fallen, cases.Even(snow!.Balanced))));
        yield return new(combination, "one-sided", stages.ForcesOnly(RoofCases.Add(sum, 1, stages.Worst(sum, fallen, stages.OneSidedSnow!))));
        yield return new(combination, "drift", stages.ForcesOnly(RoofCases.Add(sum, 1, stages.Worst(sum, fallen, stages.DriftedSnow!))));
    }

    /// <summary>Wind from every direction.</summary>
    private sealed record Gusts(IReadOnlyList<PoleLoad[]> Up, IReadOnlyList<PoleLoad[]> Down);
}
