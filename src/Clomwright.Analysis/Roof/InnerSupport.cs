using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>What the inner ends of radial poles stand or lean on: a round post with its footing, or a sawn ring.</summary>
/// <remarks>
/// Poles share the top of a post evenly and press it across their grain. The post is a column from the finished floor to the underside of the poles. A ring of straight pieces from pole to pole is pressed along them with H/(2 sin(angle/2)) and by each pole's end across its grain.
/// </remarks>
internal static class InnerSupport
{
    /// <summary>The checks; none for poles that do not meet round a centre.</summary>
    /// <param name="layout">The rafters.</param>
    /// <param name="roof">As described.</param>
    /// <param name="known">Their timber.</param>
    /// <param name="states">Every combination and stage.</param>
    /// <param name="stages">The stages as they are, for the ground.</param>
    /// <param name="axis">Height of the pole axes over their feet from the finished floor, m.</param>
    /// <param name="site">For what the ground bears.</param>
    public static IEnumerable<CheckedMember> Of(PlainLayout layout, Building.Roof roof, Known<Timber> known, Sequence<CombinedState> states, Sequence<RoofStage> stages, double axis, Site site)
    {
        if (roof is not Building.Roof.Radial radial)
        {
            return [];
        }

        var key = radial.CentrePost ? "centre-post" : "compression-ring";
        var subject = radial.CentrePost ? "post" : "ring";
        if (known.Value is not { } timber || states.Count == 0)
        {
            return [new(key, subject, known.NotChecked ?? new Message("analysis.roof.no-timber"))];
        }

        if (radial.CentrePost)
        {
            return radial.Post is { } post ? Post(layout, post, timber, states, stages, axis, site)
                : [new(key, subject, Message.Of("analysis.post.none", ("force", new Amount(states.Max(s => s.Forces.CrossingForce.Sum()), Dimension.Force))))];
        }

        if (radial.Ring is not { } ring)
        {
            var thrust = states.Max(s => s.Forces.PlateSidewaysInSpace.Max());
            return [new(key, subject, Message.Of("analysis.ring.none", ("thrust", new Amount(thrust, Dimension.Force)), ("hoop", new Amount(Thrust.Hoop(thrust, layout.Poles.Min(p => p.CrossingAngle)), Dimension.Force))))];
        }

        return Timber.Piece(ring.Material, ring.Width.Metres, ring.Depth.Metres) is not { } wood ? [new(key, subject, Message.Of("analysis.roof.species-unknown", ("species", new Argument.Material(ring.Material))))]
            : wood.System != timber.System ? [new(key, subject, new Message("analysis.members.systems"))]
            : [Hoop(layout, ring, wood, states), Ends(layout, ring, wood, states)];
    }

    private static IEnumerable<CheckedMember> Post(PlainLayout layout, CentrePost post, Timber timber, Sequence<CombinedState> states, Sequence<RoofStage> stages, double axis, Site site)
    {
        const string Key = "centre-post";
        var d = post.Diameter.Metres;
        var length = layout.Poles.Min(p => axis + p.Slope * p.Far - p.DiameterAt(p.Far) / (2 * p.PitchCosine));
        if (Column.Slenderness(length, d) > Column.MostSlender)
        {
            yield return new(Key, "post", Message.Of("analysis.loss.slender", ("length", Amount.Metres(length)), ("least", Amount.Metres(length / Column.MostSlender / Column.SquareShare))));
        }
        else
        {
            var hardest = states.MaxBy(s => s.Forces.CrossingForce.Sum() / Column.Force(timber, s.Combination, d, length))!;
            var sheet = new Worksheet("centre-post");
            var held = Column.Capacity(sheet, timber, hardest.Combination, d, length);
            var load = Math.Max(0, hardest.Forces.CrossingForce.Sum());
            yield return new(Key, "post", new MemberCheck(hardest.Combination.Key, hardest.Sense, new Amount(load, Dimension.Force), held.Value, sheet.Done, Amount.Metres(d * Math.Pow(load / held.Value.Si, 0.25))));
        }

        yield return OnTop(layout, d, timber, states);
        yield return Footing(post, stages, site);
    }

    private static CheckedMember OnTop(PlainLayout layout, double d, Timber timber, Sequence<CombinedState> states)
    {
        var hardest = states.MaxBy(s => s.Forces.CrossingForce.Max() / (timber.System == TimberSystem.Nds ? 1 : Strength.Factor(timber, s.Combination)))!;
        var (sheet, mechanics) = (new Worksheet("centre-post-top"), Sources.Get("mechanics"));
        var at = Enumerable.Range(0, layout.Poles.Count).MaxBy(i => hardest.Forces.CrossingForce[layout.Feet[i]]);
        var p = Worksheet.Computed("P", "inner-force", Math.Max(0, hardest.Forces.CrossingForce[layout.Feet[at]]), Dimension.Force);
        var n = Worksheet.Given("n", "poles-on-post", layout.Poles.Count, Dimension.Count);
        var stress = sheet.Step("post-top-stress", "f_c", "P*n/(pi*d^2/4)", p.Value.Si * layout.Poles.Count / (Math.PI / 4 * d * d), Dimension.Stress, mechanics, p, n, Worksheet.Given("d", "column-diameter", d, Dimension.Length));
        var across = Strength.Across(sheet, timber, hardest.Combination);
        return new("centre-post", FormattableString.Invariant($"pole {layout.Poles[at].Number} on the post"), new MemberCheck(hardest.Combination.Key, hardest.Sense, stress.Value, across.Value, sheet.Done, Amount.Metres(d * Math.Sqrt(stress.Value.Si / across.Value.Si))));
    }

    private static CheckedMember Footing(CentrePost post, Sequence<RoofStage> stages, Site site)
    {
        const string Subject = "post footing";
        if (site.SoilBearing is not { } bearing)
        {
            return new("centre-post", Subject, new Message("analysis.foundation.no-bearing"));
        }

        if (stages.Where(s => s.Forces.Is).MaxBy(s => s.Forces.Value!.CrossingForce.Sum()) is not { } heaviest)
        {
            return new("centre-post", Subject, stages[0].Forces.NotChecked!);
        }

        var sheet = new Worksheet("centre-post-footing");
        var p = Worksheet.Computed("P", "post-load", Math.Max(0, heaviest.Forces.Value!.CrossingForce.Sum()), Dimension.Force);
        var b = post.Footing.Metres;
        var q = sheet.Step("footing-pressure", "q", "P/b^2", p.Value.Si / (b * b), Dimension.Stress, Sources.Get("mechanics"), p, Worksheet.Given("b", "footing-side", b, Dimension.Length));
        return new("centre-post", Subject, new MemberCheck("", StageStates.Prefix + heaviest.Key, q.Value, new Amount(bearing.Pascals, Dimension.Stress), sheet.Done, Amount.Metres(b * Math.Sqrt(q.Value.Si / bearing.Pascals))));
    }

    private static CheckedMember Hoop(PlainLayout layout, CompressionRing ring, Timber wood, Sequence<CombinedState> states)
    {
        var hardest = states.MaxBy(s => s.Forces.PlateSidewaysInSpace.Max() / Strength.Factor(wood, s.Combination))!;
        var (sheet, statics) = (new Worksheet("ring-hoop"), Sources.Get("reciprocal-frame-statics"));
        var angle = layout.Poles.Min(p => p.CrossingAngle);
        var h = Worksheet.Computed("H", "rafter-thrust", hardest.Forces.PlateSidewaysInSpace.Max(), Dimension.Force);
        var t = sheet.Step("ring-hoop-force", "N", "H/(2*sin(omega/2))", Thrust.Hoop(h.Value.Si, angle), Dimension.Force, statics, h, Worksheet.Computed("omega", "crossing-angle-least", angle, Dimension.Angle));
        var f = sheet.Step("ring-hoop-stress", "f_c", "N/(w*d)", t.Value.Si / (ring.Width.Metres * ring.Depth.Metres), Dimension.Stress, Sources.Get("mechanics"), t,
            Worksheet.Given("w", "ring-width", ring.Width.Metres, Dimension.Length), Worksheet.Given("d", "ring-depth", ring.Depth.Metres, Dimension.Length));
        var allowed = Strength.Adjusted(sheet, wood, hardest.Combination, wood.Compression, "compression-strength", "F_c");
        return new("compression-ring", "ring", new MemberCheck(hardest.Combination.Key, hardest.Sense, f.Value, allowed.Value, sheet.Done));
    }

    private static CheckedMember Ends(PlainLayout layout, CompressionRing ring, Timber wood, Sequence<CombinedState> states)
    {
        var hardest = states.MaxBy(s => s.Forces.PlateSidewaysInSpace.Max() / (wood.System == TimberSystem.Nds ? 1 : Strength.Factor(wood, s.Combination)))!;
        var (sheet, mechanics) = (new Worksheet("ring-bearing"), Sources.Get("mechanics"));
        var tip = layout.Poles.Min(p => p.DiameterAt(p.Far));
        var h = Worksheet.Computed("H", "rafter-thrust", hardest.Forces.PlateSidewaysInSpace.Max(), Dimension.Force);
        var side = Math.Min(tip, ring.Depth.Metres);
        var f = sheet.Step("ring-bearing-stress", "f_c", "H/(pi/4*min(d_p, d)*d_p)", h.Value.Si / (Math.PI / 4 * side * tip), Dimension.Stress, mechanics, h, Worksheet.Computed("d_p", "pole-diameter", tip, Dimension.Length),
            Worksheet.Given("d", "ring-depth", ring.Depth.Metres, Dimension.Length));
        var across = Strength.Across(sheet, wood, hardest.Combination);
        return new("compression-ring", "poles on the ring", new MemberCheck(hardest.Combination.Key, hardest.Sense, f.Value, across.Value, sheet.Done));
    }
}
