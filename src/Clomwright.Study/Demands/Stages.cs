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
/// Strengths are those of the combinations, brought to the duration of the stage: snow that of snow, everything else as if it stayed for good (NDS table 2.3.2). Stages are
/// loads as they are, so against timber of EN 1995, whose combinations are factored, they are not held yet.
/// </remarks>
internal static class Stages
{
    private static readonly string[] WithSnow = ["soilWetSnow", "oneSided", "drift"];

    private static readonly double ForGood = Duration(LoadKind.Dead), UnderSnow = Duration(LoadKind.Snow);

    /// <summary>A state of load with its name in words.</summary>
    public readonly record struct State(string Key, Message Stage, RoofForces Forces);

    public static IEnumerable<CheckedDemand> OfReciprocal(ReciprocalResult frame)
    {
        List<State> states =
        [
            .. Known(frame.Stages), .. Steps("fromRing", frame.FromRing), .. Steps("fromEave", frame.FromEave),
        ];
        var shear = (RoofForces f) => frame.Geometry.Poles.Max(p => Math.Max(f.Shear[p.Number - 1], Math.Abs(f.Governing[p.Number - 1]) * p.PitchCosine));
        var missing = FirstMissing(frame.Stages) ?? frame.FromRing.NotChecked;
        return
        [
            Worst("stage-bending", states, f => f.BendingStress.Max(), frame.Checks, ["pole-bending-crossing", "pole-bending-plate"], frame.Combined, missing),
            Worst("stage-shear", states, shear, frame.Checks, ["pole-shear"], frame.Combined, missing),
            .. Actions(frame, missing),
        ];
    }

    public static IEnumerable<CheckedDemand> OfPlain(PlainResult plain)
    {
        List<State> states = [.. Known(plain.Stages)];
        var missing = FirstMissing(plain.Stages);
        return
        [
            Worst("stage-bending", states, f => f.BendingStress.Max(), plain.Checks, ["rafter-bending"], plain.Combined, missing),
            Worst("stage-shear", states, f => f.ShearStress.Max(), plain.Checks, ["rafter-shear"], plain.Combined, missing),
        ];
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
    public static IEnumerable<CheckedDemand> Actions(ReciprocalResult frame, Message? missing) => frame.StageChecks
        .Where(c => c.Key is "pole-bending-plate" or "pole-foot" or "pole-stub" or "pole-seat" or "pole-crossing-bearing" or "ring-sag")
        .Select(c => FromResults.Member(c, missing) with { Rule = "stage-actions", Subject = $"{c.Subject}, {Action(c.Key)}" });

    private static string Action(string key) => key switch
    {
        "pole-bending-plate" => "over the bond beam",
        "pole-foot" => "bent and pressed over the bond beam",
        "pole-stub" => "between its crossings",
        "pole-seat" => "on its seat",
        "pole-crossing-bearing" => "at its crossing",
        _ => "sag",
    };

    /// <summary>A stage in words.</summary>
    public static Message Named(string key) => new($"study.stage.{Kebab(key)}");

    /// <summary>A figure's key as words are keyed: <c>soilWet</c> is <c>soil-wet</c>.</summary>
    private static string Kebab(string key) => string.Concat(key.Select(c => char.IsUpper(c) ? $"-{char.ToLowerInvariant(c)}" : c.ToString()));

    /// <summary>Combinations as states.</summary>
    public static IEnumerable<State> Combined(CombinedStates combined) => combined.States.Select(s =>
        new State("combined", Message.Of("study.stage.combined", ("combination", s.Combination.Key), ("sense", new Message($"study.sense.{s.Sense}"))), s.Forces));

    private static CheckedDemand Worst(
        string rule, List<State> states, Func<RoofForces, double> demand, Sequence<CheckedMember> checks, string[] keys, CombinedStates combined, Message? missing)
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

        if (combined.States[0].Combination.Form == LoadForm.Strength)
        {
            return CheckedDemand.Unknown(rule, "roof", new Message("study.demand.stages-en"));
        }

        var (dimension, strength) = (held[0].Check.Value!.Demand.Dimension, held.Min(c => AtOnce(c.Check.Value!, combined)));
        var worst = states.MaxBy(s => demand(s.Forces) / Factor(s.Key));
        Amount asked = new(demand(worst.Forces), dimension), capacity = new(strength * Factor(worst.Key), dimension);
        var bare = states.Find(s => s.Key == "bare");
        return CheckedDemand.Held(rule, "roof", asked, capacity) with
        {
            Missing = missing,
            Notes =
            [
                bare.Forces is null
                    ? Message.Of("study.demand.stage", ("stage", worst.Stage), ("loaded", asked), ("capacity", capacity))
                    : Message.Of("study.demand.bare-and-loaded", ("bare", new Amount(demand(bare.Forces), dimension)), ("stage", worst.Stage), ("loaded", asked), ("capacity", capacity)),
                .. held.SelectMany(c => FromResults.Unsure(c.Check.Value!)).Distinct(),
            ],
        };
    }

    /// <summary>Strength of a check without its factor for duration.</summary>
    public static double AtOnce(MemberCheck check, CombinedStates combined) =>
        check.Capacity.Si / Nds.Duration(combined.States.First(s => s.Combination.Key == check.Combination).Combination);

    /// <summary>Factor for the duration of a stage.</summary>
    public static double Factor(string stage) => WithSnow.Contains(stage) ? UnderSnow : ForGood;

    private static double Duration(LoadKind kind) => Nds.Duration(new Combination(kind.ToString(), LoadForm.AllowableStress, false, [new CombinationTerm(kind, 1)], Sources.Get("nds-duration")));
}
