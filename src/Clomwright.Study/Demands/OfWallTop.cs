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
        .. top.Tees.Concat(top.Straps).Select(hold => Held(FromResults.Member(hold, Wanting(hold, top) ?? missing), hold, top)),
        .. geometry.Tees.Count > 0 ? Gaps(geometry, top) : [],
        // Laps and their places do not lean on loads.
        .. top.Beam.Select(check => FromResults.Member(check, check.Key is "bond-beam-lap" or "lap-places" ? null : missing) is var demand && check.Key == "lap-places" && demand.NotChecked is null
            ? demand with { Question = Pressed(top), Notes = [] } : demand),
        .. top.Lateral.Select(check => FromResults.Member(check, missing)),
    ];

    /// <summary>Where a lap cannot stand clear: over a header a person may accept it, over a leg's hole nobody should.</summary>
    private static Message Pressed(WallTopResult top) => Message.Of(
        "study.ask.lap-places",
        ("joints", new Argument.List(top.BeamPieces.Where(p => p.Reach < top.Beam.First(b => b.Key == "lap-places").Check.Value!.Demand.Si).Select(p => (Argument)Amount.Metres(p.To)).ToSequence())));

    /// <summary>Without its maker's sheet nobody knows what the fixings of a strap hold: its steel may fall short and is never met.</summary>
    private static Message? Wanting(CheckedMember hold, WallTopResult top) =>
        hold.Key == "strap-pull" && top.HoldDowns.FirstOrDefault(h => h.Strap is not null && h.Subject == hold.Subject) is { Strap.Anchor.Pull: null } ? new Message("study.demand.strap-fixings") : null;

    private static CheckedDemand Held(CheckedDemand demand, CheckedMember tee, WallTopResult top)
    {
        var inCob = tee.Key is "tee-uplift" or "strap-uplift";
        var leaning = FromResults.Leaning(demand, top, inCob ? ["cob-dry"] : []);
        return inCob && leaning.NotChecked is null ? leaning with { Notes = [.. leaning.Notes, DryGoverns(leaning, top)] } : leaning;
    }

    /// <summary>What the same cob holds dry and still damp: only its weight counts, so that dry governs.</summary>
    private static Message DryGoverns(CheckedDemand demand, WallTopResult top)
    {
        var damp = demand.Capacity!.Value.Si * Density("cob-wet") / Density("cob-dry");
        return Message.Of("study.demand.dry-governs", ("dry", demand.Capacity.Value), ("damp", new Amount(damp, Dimension.Force)));

        double Density(string key) => ((Argument.Quantity)top.Assumptions.First(a => a.Key == key).Value).Value.Si;
    }

    /// <summary>
    /// The widest stretch of bond beam without a tee, as the wall lets them stand, which a person may accept over an opening; and every too wide stretch on which a pole lands with no tee within half the
    /// spacing written, which falls short.
    /// </summary>
    private static IEnumerable<CheckedDemand> Gaps(HouseGeometry geometry, WallTopResult top)
    {
        var spacing = geometry.House.Tees!.Spacing;
        var bare = geometry.Tees.Where(t => t.ToNext > spacing.Metres).Select(t => (Tee: t, Poles: Bare(geometry, t, top))).Where(g => g.Poles.Count > 0).ToList();
        return bare.Count > 0
            ? bare.Select(g => Gap(geometry, g.Tee) with { Notes = [Message.Of("study.demand.tee-bare", ("poles", new Argument.List(g.Poles)), ("half", Amount.Metres(spacing.Metres / 2))), new Message("study.demand.tee-gap")] })
            : [Widest(geometry, geometry.Tees.MaxBy(t => t.ToNext)!)];
    }

    /// <summary>Poles that land between a tee and the next one, further than half the spacing written from both and from every strap that counts.</summary>
    private static Sequence<Argument> Bare(HouseGeometry geometry, TeePlace tee, WallTopResult top)
    {
        var (curve, half) = (geometry.Curve, geometry.House.Tees!.Spacing.Metres / 2);
        var next = geometry.Tees[tee.Number % geometry.Tees.Count];
        var length = geometry.Tees.Count == 1 ? curve.Length : curve.Wrap(next.Station - tee.Station);
        return geometry.Landings.Where(l => !l.Secondary && curve.Wrap(l.Station - tee.Station) is var on && on > half && length - on > half
            && !top.HoldDowns.Any(h => h.Strap is not null && Math.Min(curve.Wrap(h.Station - l.Station), curve.Wrap(l.Station - h.Station)) <= half)).Select(l => (Argument)l.Name).ToSequence();
    }

    private static CheckedDemand Widest(HouseGeometry geometry, TeePlace tee)
    {
        Amount gap = Amount.Metres(tee.ToNext), spacing = geometry.House.Tees!.Spacing;
        return Gap(geometry, tee) with
        {
            Question = Message.Of("study.ask.tee-gap", ("from", tee.Number), ("to", tee.Number % geometry.Tees.Count + 1), ("gap", gap), ("spacing", spacing)),
            Notes = tee.ToNext > spacing.Si ? [new Message("study.demand.tee-gap"), new Message("study.demand.tee-computed")] : [],
        };
    }

    private static CheckedDemand Gap(HouseGeometry geometry, TeePlace tee) => CheckedDemand.Held(
        "tee-gap", $"tee {tee.Number} to {tee.Number % geometry.Tees.Count + 1}", Amount.Metres(tee.ToNext), geometry.House.Tees!.Spacing);
}
