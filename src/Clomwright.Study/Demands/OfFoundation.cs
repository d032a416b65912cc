using Clomwright.Analysis;
using Clomwright.Analysis.Foundation;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Rules;

namespace Clomwright.Study.Demands;

/// <summary>Stem, trench, ground and drain as the rules read them.</summary>
/// <remarks>Wind and earthquake on the wall are not taken down: what they add belongs to the path of sideways forces.</remarks>
internal static class OfFoundation
{
    public static IEnumerable<CheckedDemand> Demands(House house, FoundationResult foundation)
    {
        yield return Held("stem-bearing", "stem", foundation.Stem, foundation);
        yield return Ground(foundation);
        foreach (var joint in foundation.Joints)
        {
            yield return Held("middle-third", joint.Joint, joint.Check, foundation);
        }

        yield return Outlet(foundation.Drain);
        yield return foundation.Drain.Value is { } drain
            ? CheckedDemand.Measured("drain-fall", "trench", new Amount(drain.Slope, Dimension.Slope)) with { Notes = [.. new[] { drain.UnitSlip }.OfType<Message>()] }
            : CheckedDemand.Unknown("drain-fall", "trench", foundation.Drain.NotChecked!);
        yield return foundation.Frost.Value is { } frost
            ? CheckedDemand.Measured("trench-frost", "trench", house.Trench!.Depth - house.Site.FrostDepth!.Value) with { Notes = [.. Estimated(foundation)] }
            : CheckedDemand.Unknown("trench-frost", "trench", foundation.Frost.NotChecked!);
        if (foundation.DryStem is { } slender)
        {
            yield return CheckedDemand.Measured("dry-stem", "stem", Amount.Number(slender));
        }
    }

    private static IEnumerable<Message> Estimated(FoundationResult foundation) => foundation.FrostEstimate.Value is { } estimate
        ? [Message.Of("study.demand.frost-estimate", ("berggren", Amount.Metres(estimate.Berggren)), ("stefan", Amount.Metres(estimate.Stefan)))]
        : [];

    private static CheckedDemand Ground(FoundationResult foundation)
    {
        var demand = Held("ground-bearing", "trench", foundation.Ground, foundation);
        return demand with { Notes = [.. demand.Notes, .. Compared(foundation.Capacities)] };
    }

    /// <summary>The table and the formulas beside what is given.</summary>
    private static IEnumerable<Message> Compared(GroundCapacities ground)
    {
        if (ground.Presumptive.Value is { } table)
        {
            yield return Message.Of(
                ground.AboveTable ? "study.demand.above-table" : "study.demand.table",
                ("class", table.Key), ("pressure", new Amount(table.Pressure.Value, Dimension.Stress)), ("source", table.Pressure.Source));
        }

        if (ground.Computed.Value is { } computed)
        {
            yield return Message.Of("study.demand.by-formula", ("least", new Amount(computed.Least, Dimension.Stress)), ("source", Sources.Get("terzaghi-bearing")));
        }
    }

    private static CheckedDemand Held(string rule, string subject, Known<FoundationCheck> check, FoundationResult foundation) => check.Value is { } held
        ? CheckedDemand.Held(rule, subject, held.Demand, held.Capacity) with { Missing = foundation.Missing, Notes = [Governs(held), .. Unsure(held)] }
        : CheckedDemand.Unknown(rule, subject, check.NotChecked!);

    private static Message Governs(FoundationCheck check) => Message.Of(
        "study.demand.comes-down", ("strip", new Argument.Subject(check.Subject)),
        ("stage", check.Combination.Length == 0
            ? Stages.Named(check.Stage)
            : Message.Of("study.stage.combined", ("combination", check.Combination), ("sense", new Message($"study.sense.{check.Sense}")))));

    private static IEnumerable<Message> Unsure(FoundationCheck check) => check.From is { Surety: Surety.Memory } source
        ? [Message.Of("study.demand.from-memory", ("sources", new Argument.List([source.Title])))]
        : [];

    /// <summary>With the way to the outlet not measured it may fall short and is never met.</summary>
    private static CheckedDemand Outlet(Known<DrainFall> fall) => fall.Value is { } drain
        ? CheckedDemand.Held("drain-outlet", "trench", Amount.Metres(drain.Needed), Amount.Metres(Math.Max(0, drain.Available))) with
        {
            Missing = drain.Beyond is null ? new Message("study.demand.no-outlet-run") : null,
        }
        : CheckedDemand.Unknown("drain-outlet", "trench", fall.NotChecked!);
}
