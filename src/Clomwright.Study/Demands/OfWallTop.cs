using Clomwright.Analysis.Members;
using Clomwright.Analysis.WallTop;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Rules;

namespace Clomwright.Study.Demands;

/// <summary>What the roof asks of tees, bond beam and the way sideways: each demand with its capacity, or why there is none.</summary>
internal static class OfWallTop
{
    /// <summary>Every demand of the wall top but those of headers.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="top">Its wall top.</param>
    /// <param name="missing">A load that belongs in the combinations and is not known; null when all are.</param>
    public static IEnumerable<CheckedDemand> Demands(HouseGeometry geometry, WallTopResult top, Message? missing) =>
    [
        .. top.Tees.Select(tee => Tee(FromResults.Member(tee, missing), tee, top)),
        .. geometry.Tees.Count > 0 ? [Gap(geometry)] : Array.Empty<CheckedDemand>(),
        // Laps and their places do not lean on loads.
        .. top.Beam.Select(check => FromResults.Member(check, check.Key is "bond-beam-lap" or "lap-places" ? null : missing) is var demand && check.Key == "lap-places" && demand.NotChecked is null
            ? demand with { Question = Pressed(top), Notes = [] } : demand),
        .. top.Lateral.Select(check => FromResults.Member(check, missing)),
    ];

    /// <summary>Where a lap cannot stand clear: over a header a person may accept it, over a leg's hole nobody should.</summary>
    private static Message Pressed(WallTopResult top) => Message.Of(
        "study.ask.lap-places",
        ("joints", new Argument.List(top.BeamPieces.Where(p => p.Reach < top.Beam.First(b => b.Key == "lap-places").Check.Value!.Demand.Si).Select(p => (Argument)Amount.Metres(p.To)).ToSequence())));

    private static CheckedDemand Tee(CheckedDemand demand, CheckedMember tee, WallTopResult top)
    {
        var leaning = FromResults.Leaning(demand, top, tee.Key == "tee-uplift" ? ["cob-dry"] : []);
        return tee.Key == "tee-uplift" && leaning.NotChecked is null ? leaning with { Notes = [.. leaning.Notes, DryGoverns(leaning, top)] } : leaning;
    }

    /// <summary>What the same cob holds dry and still damp: only its weight counts, so that dry governs.</summary>
    private static Message DryGoverns(CheckedDemand demand, WallTopResult top)
    {
        var damp = demand.Capacity!.Value.Si * Density("cob-wet") / Density("cob-dry");
        return Message.Of("study.demand.dry-governs", ("dry", demand.Capacity.Value), ("damp", new Amount(damp, Dimension.Force)));

        double Density(string key) => ((Argument.Quantity)top.Assumptions.First(a => a.Key == key).Value).Value.Si;
    }

    /// <summary>The widest stretch of bond beam without a tee, as the wall lets them stand.</summary>
    private static CheckedDemand Gap(HouseGeometry geometry)
    {
        var tees = geometry.Tees;
        var widest = tees.MaxBy(t => t.ToNext)!;
        var next = tees[widest.Number % tees.Count];
        Amount gap = Amount.Metres(widest.ToNext), spacing = geometry.House.Tees!.Spacing;
        return CheckedDemand.Held("tee-gap", $"tee {widest.Number} to {next.Number}", gap, spacing) with
        {
            Question = Message.Of("study.ask.tee-gap", ("from", widest.Number), ("to", next.Number), ("gap", gap), ("spacing", spacing)),
            Notes = widest.ToNext > spacing.Si ? [new Message("study.demand.tee-gap")] : [],
        };
    }
}
