using Clomwright.Analysis;
using Clomwright.Analysis.Collapse;
using Clomwright.Evidence;
using Clomwright.Rules;

namespace Clomwright.Study.Demands;

/// <summary>The push at which the house falls against the one that an earthquake asks for.</summary>
internal static class OfCollapse
{
    private const string Rule = "wall-collapse";

    public static CheckedDemand Demand(Known<CollapseResult> known)
    {
        if (known.Value is not { } collapse)
        {
            return CheckedDemand.Unknown(Rule, "wall", known.NotChecked!);
        }

        Message[] notes = [Blocks(collapse), Beam(collapse), Trend(collapse), Cracking(collapse), new Message("study.demand.collapse-means")];
        return collapse.Earthquake.Value is { } earthquake
            ? CheckedDemand.Held(Rule, "wall", Share(earthquake.Coefficient), Share(collapse.Least)) with { Notes = [.. notes, .. earthquake.Assumptions.Select(a => Message.Of("study.demand.assumed", ("what", a.What), ("source", a.Source)))] }
            : CheckedDemand.Unknown(Rule, "wall", collapse.Earthquake.NotChecked!) with { Notes = notes.ToSequence() };
    }

    private static Message Blocks(CollapseResult collapse) => Message.Of(
        "study.demand.collapse-weakest", ("factor", Share(collapse.Weakest.Factor)), ("bearing", new Amount(collapse.Weakest.Bearing, Dimension.Angle)),
        ("most", Share(collapse.Directions.Max(d => d.Factor))), ("directions", collapse.Directions.Count));

    private static Message Beam(CollapseResult collapse) => collapse.WithoutBeam.Value is { } without
        ? Message.Of("study.demand.collapse-without-beam", ("factor", Share(without.Factor)))
        : collapse.WithoutBeam.NotChecked!;

    private static Message Trend(CollapseResult collapse) => Message.Of(
        "study.demand.collapse-trend", ("trend", new Argument.List([.. collapse.Trend.Select(t => (Argument)Message.Of("study.demand.collapse-size", ("blocks", t.Blocks), ("factor", Share(t.Factor))))])));

    private static Message Cracking(CollapseResult collapse) => collapse.Cracked.Beyond is { } beyond
        ? Message.Of("study.demand.collapse-cracking", ("limit", Share(collapse.Cracked.Limit)), ("beyond", Share(beyond)))
        : Message.Of("study.demand.collapse-cracking-stands", ("limit", Share(collapse.Cracked.Limit)));

    private static Amount Share(double value) => Amount.Fraction(value);
}
