using System.Globalization;
using Clomwright.Analysis;
using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Evidence;
using Clomwright.Rules;

namespace Clomwright.Study.Demands;

/// <summary>Stages of building and loading held against the timber: a frame that stands bare may fail under its soil, and the finding shows both numbers.</summary>
/// <remarks>
/// Strengths are those of the combinations, brought to the duration of the stage: snow that of snow, everything else as if it stayed for good (NDS table 2.3.2, or k_mod of EN 1995). Stages are
/// loads as they are; against timber of EN 1995 both numbers are multiplied by the partial factor of EN 1990 (<see cref="StageStates"/>).
/// </remarks>
internal static class Stages
{
    /// <summary>A state of load with its name in words.</summary>
    public readonly record struct State(string Key, Message Stage, RoofForces Forces);

    public static IEnumerable<CheckedDemand> OfReciprocal(ReciprocalResult frame)
    {
        List<State> states =
        [
            .. Known(frame.Stages), .. Steps("fromRing", frame.FromRing), .. Steps("fromEave", frame.FromEave),
        ];
        var bending = (RoofForces f) => frame.Geometry.Poles.Select(p => (Pole(p), f.BendingStress[p.Number - 1]));
        var shear = (RoofForces f) => frame.Geometry.Poles.Select(p => (Pole(p), Math.Max(f.Shear[p.Number - 1], Math.Abs(f.Governing[p.Number - 1]) * p.PitchCosine)));
        var missing = FirstMissing(frame.Stages) ?? frame.FromRing.NotChecked;
        return
        [
            Worst("stage-bending", states, bending, frame.Checks, ["pole-bending-crossing", "pole-bending-plate"], frame.Combined, missing),
            Worst("stage-shear", states, shear, frame.Checks, ["pole-shear"], frame.Combined, missing),
            .. Actions(frame.StageChecks, missing),
        ];

        static string Pole(PoleGeometry pole) => FormattableString.Invariant($"pole {pole.Number}");
    }

    public static IEnumerable<CheckedDemand> OfPlain(PlainResult plain)
    {
        List<State> states = [.. Known(plain.Stages)];
        var missing = FirstMissing(plain.Stages);
        return
        [
            Worst("stage-bending", states, f => Each(f.BendingStress), plain.Checks, ["rafter-bending"], plain.Combined, missing),
            Worst("stage-shear", states, f => Each(f.ShearStress), plain.Checks, ["rafter-shear"], plain.Combined, missing),
            .. Actions(plain.StageChecks, missing),
        ];

        IEnumerable<(string, double)> Each(Sequence<double> byLanding) => plain.Feet.Select((foot, i) => (FormattableString.Invariant($"rafter {plain.Places[i].Number}"), byLanding[foot]));
    }

    /// <summary>Stages that are known.</summary>
    public static IEnumerable<State> Known(Sequence<RoofStage> stages) =>
        stages.Where(s => s.Forces.Is).Select(s => new State(s.Key, Named(s.Key), s.Forces.Value!));

    /// <summary>Why the first stage that is not known is not; null when all are.</summary>
    public static Message? FirstMissing(Sequence<RoofStage> stages) => stages.Select(s => s.Forces.NotChecked).FirstOrDefault(why => why is not null);

    /// <summary>Bands of soil as stages.</summary>
    public static IEnumerable<State> Steps(string order, Known<LoadingOrder> laid) =>
        (laid.Value?.Steps ?? []).Select((step, i) => new State(order, Message.Of($"study.stage.{Kebab(order)}-band", ("band", i + 1), ("of", laid.Value!.Steps.Count)), step.Forces));

    /// <summary>A stage that governs a check, in words.</summary>
    public static Message Of(string sense)
    {
        var parts = sense[StageStates.Prefix.Length..].Split('/');
        return parts is [var order, var band, var of]
            ? Message.Of($"study.stage.{Kebab(order)}-band", ("band", int.Parse(band, CultureInfo.InvariantCulture)), ("of", int.Parse(of, CultureInfo.InvariantCulture)))
            : Named(parts[0]);
    }

    /// <summary>Every other action of the poles in every stage: what bends and shears them is a rule of its own with both numbers, bare and loaded.</summary>
    /// <remarks>What is not checked in a stage is not checked in the combinations either and said there.</remarks>
    public static IEnumerable<CheckedDemand> Actions(Sequence<CheckedMember> checks, Message? missing)
    {
        var held = checks.Where(c => c.Check.Is && Action(c.Key) is not null).ToList();
        return held.Count == 0
            ? [CheckedDemand.Unknown("stage-actions", "roof", checks.Select(c => c.Check.NotChecked).FirstOrDefault(why => why is not null) ?? missing ?? new Message("analysis.roof.no-timber"))]
            : held.Select(c => FromResults.Member(c, missing) with { Rule = "stage-actions", Subject = $"{c.Subject}, {Action(c.Key)}" });
    }

    private static string? Action(string key) => key switch
    {
        "pole-bending-plate" => "over the bond beam",
        "pole-foot" => "bent and pressed over the bond beam",
        "pole-stub" => "between its crossings",
        "pole-seat" => "on its seat",
        "pole-crossing-bearing" => "at its crossing",
        "rafter-combined" => "bent and pressed along its length",
        "ring-sag" or "rafter-sag" => "sag",
        _ => null,
    };

    /// <summary>A stage in words.</summary>
    public static Message Named(string key) => new($"study.stage.{Kebab(key)}");

    /// <summary>A figure's key as words are keyed: <c>soilWet</c> is <c>soil-wet</c>.</summary>
    private static string Kebab(string key) => string.Concat(key.Select(c => char.IsUpper(c) ? $"-{char.ToLowerInvariant(c)}" : c.ToString()));

    /// <summary>Combinations as states.</summary>
    public static IEnumerable<State> Combined(CombinedStates combined) => combined.States.Select(s =>
        new State("combined", Message.Of("study.stage.combined", ("combination", s.Combination.Key), ("sense", new Message($"study.sense.{s.Sense}"))), s.Forces));

    private static CheckedDemand Worst(
        string rule, List<State> states, Func<RoofForces, IEnumerable<(string Subject, double Value)>> demands, Sequence<CheckedMember> checks, string[] keys, CombinedStates combined, Message? missing)
    {
        var held = checks.Where(c => keys.Contains(c.Key)).ToList();
        if (held.Find(c => !c.Check.Is) is { } unknown)
        {
            return CheckedDemand.Unknown(rule, "roof", unknown.Check.NotChecked!);
        }

        if (states.Count == 0 || held.Count == 0 || combined.States.Count == 0)
        {
            return CheckedDemand.Unknown(rule, "roof", missing ?? new Message("analysis.roof.no-timber"));
        }

        var (dimension, strength) = (held[0].Check.Value!.Demand.Dimension, held.Min(c => AtOnce(c.Check.Value!, combined)));
        var system = System(combined);
        var worst = states.MaxBy(s => StageStates.Factor(s.Key, system) * Most(s.Forces) / Factor(s.Key, system));
        Amount asked = Asked(worst), capacity = new(strength * Factor(worst.Key, system), dimension);
        var bare = states.Find(s => s.Key == "bare");
        return CheckedDemand.Held(rule, demands(worst.Forces).MaxBy(d => d.Value).Subject, asked, capacity) with
        {
            Missing = missing,
            Notes =
            [
                bare.Forces is null
                    ? Message.Of("study.demand.stage", ("stage", worst.Stage), ("loaded", asked), ("capacity", capacity))
                    : Message.Of("study.demand.bare-and-loaded", ("bare", Asked(bare)), ("stage", worst.Stage), ("loaded", asked), ("capacity", capacity)),
                .. held.SelectMany(c => FromResults.Unsure(c.Check.Value!)).Distinct(),
            ],
        };

        double Most(RoofForces forces) => demands(forces).Max(d => d.Value);

        Amount Asked(State state) => new(StageStates.Factor(state.Key, system) * Most(state.Forces), dimension);
    }

    /// <summary>Whose factors the combinations are summed for.</summary>
    public static TimberSystem System(CombinedStates combined) => combined.States[0].Combination.Form == LoadForm.Strength ? TimberSystem.En : TimberSystem.Nds;

    /// <summary>Strength of a check without its factor for duration.</summary>
    public static double AtOnce(MemberCheck check, CombinedStates combined) =>
        check.Capacity.Si / Duration(combined.States.First(s => s.Combination.Key == check.Combination).Combination, System(combined));

    /// <summary>Factor for the duration of a stage.</summary>
    public static double Factor(string stage, TimberSystem system) => Duration(StageStates.Combination(stage, system), system);

    private static double Duration(Combination combination, TimberSystem system) => system == TimberSystem.En ? Ec5.Duration(combination) : Nds.Duration(combination);
}
