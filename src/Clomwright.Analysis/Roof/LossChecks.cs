using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>What holds the frame when one pole fails, as the house file describes it: a strapped ring, a doubled frame, or a post under every crossing.</summary>
/// <remarks>
/// A sudden loss counts twice. Strapped, the pole that rested on the lost one hangs in the strap and the deck beside the gap holds it sideways (<see cref="HangingFrame"/>): strap, deck and the poles left are asked. Doubled, one of a
/// pair goes from half of the load to all of it at once: 1.5 of all. On posts the orphan's end comes down on the one under its crossing.
/// </remarks>
internal static class LossChecks
{
    /// <summary>A sudden loss over a standing one.</summary>
    public const double Sudden = 2;

    /// <summary>From half of the load to all of it, suddenly: 0.5 + 2 (1 - 0.5).</summary>
    public const double SuddenOfPair = 1.5;

    /// <summary>Nail holes leave this much of a strap.</summary>
    public const double NailHoles = 0.75;

    /// <summary>Allowed tension over yield: 1/1.67.</summary>
    public const double SteelShare = 0.6;

    /// <summary>Permanent load on a post: nobody knows how long it stands after a loss.</summary>
    private static readonly Combination Permanent = new("D", LoadForm.AllowableStress, false, [new(LoadKind.Dead, 1)], Sources.Get("mechanics"));

    /// <summary>The checks of the way that is described; none where none is.</summary>
    public static Sequence<CheckedMember> Of(ReciprocalResult roof, Building.Roof.Reciprocal described, Known<Timber> timber, Building.Site site, Sequence<CombinedState> states)
    {
        if (described.IfOneFails is null)
        {
            return [];
        }

        if (roof.Loss.Value is not { } loss || timber.Value is not { } wood)
        {
            return [new("pole-loss", "poles", roof.Loss.NotChecked ?? timber.NotChecked!)];
        }

        if (states.Count == 0)
        {
            return [new("pole-loss", "poles", roof.Combined.Missing is [var missing, ..] ? missing : new Message("analysis.roof.no-timber"))];
        }

        return described.IfOneFails switch
        {
            Building.IfOneFails.Strap strap => Hanging(roof.Geometry, described, strap, wood, states),
            Building.IfOneFails.Doubled => [Doubled(roof)],
            Building.IfOneFails.Post post => [Post(roof, loss, post, wood), Footing(loss, post, site)],
            _ => [],
        };
    }

    private static Sequence<CheckedMember> Hanging(ReciprocalGeometry frame, Building.Roof.Reciprocal described, Building.IfOneFails.Strap strap, Timber wood, Sequence<CombinedState> states)
    {
        if (described.Deck is null)
        {
            return [new("pole-loss", "strap", new Message("analysis.loss.no-deck"))];
        }

        var hanging = states.SelectMany(s => Enumerable.Range(0, frame.Count).Select(k => (State: s, Left: HangingFrame.Of(frame, Moments(frame, s), k, Sudden)))).ToList();
        if (hanging.Exists(h => h.Left is null))
        {
            return [new("pole-loss", "strap", new Message("analysis.loss.strap-flat"))];
        }

        var (state, left) = hanging.MaxBy(h => h.Left!.Tension);
        var (deckState, deckLeft) = hanging.MaxBy(h => h.Left!.Tension * h.Left.Along / Strength.Factor(wood, h.State.Combination));
        return [Strap(frame, strap, state, left!), Deck(frame, described, wood, deckState, deckLeft!), PolesLeft(frame, wood, hanging.Select(h => (h.State, h.Left!)).ToList())];
    }

    /// <summary>Puts the pull of the strap down.</summary>
    private static Symbol Pull(Worksheet sheet, ReciprocalGeometry frame, HangingFrame left)
    {
        var source = Sources.Get("reciprocal-frame-statics");
        var p = Worksheet.Computed("P", "hanging-force", left.Crossing[^1] / Sudden, Dimension.Force);
        var mu = Worksheet.Computed("mu", "hanging-lift", left.Lift, Dimension.Number);
        var sudden = Worksheet.Code("k_d", "sudden-loss", Sudden, Dimension.Number, Sources.Get("dod-progressive-memory"));
        return sheet.Step("strap-tension", "T", "k_d*P/mu", left.Tension, Dimension.Force, source, sudden, p, mu);
    }

    private static CheckedMember Strap(ReciprocalGeometry frame, Building.IfOneFails.Strap strap, CombinedState state, HangingFrame left)
    {
        var steel = Sources.Get("steel-memory");
        var metal = Metal.Find("steel-strap")!;
        var sheet = new Worksheet("pole-loss-strap");
        var tension = Pull(sheet, frame, left).Value.Si;
        var w = Worksheet.Given("w", "strap-width", strap.Width.Metres, Dimension.Length);
        var t = Worksheet.Given("t", "strap-thickness", strap.Thickness.Metres, Dimension.Length);
        var fy = Worksheet.Cited("F_y", "metal-yield", metal.Yield, Dimension.Stress);
        var share = Worksheet.Code("k_s", "steel-share", SteelShare, Dimension.Number, steel);
        var holes = Worksheet.Assumed("k_n", "nail-holes", NailHoles, Dimension.Number, Sources.Get("common-practice"));
        var capacity = SteelShare * metal.Yield.Value * NailHoles * w.Value.Si * t.Value.Si;
        sheet.Step("strap-capacity", "T_c", "k_s*F_y*k_n*w*t", capacity, Dimension.Force, steel, share, fy, holes, w, t);
        return new("pole-loss", "strap", new MemberCheck(state.Combination.Key, state.Sense, new Amount(tension, Dimension.Force), new Amount(capacity, Dimension.Force), sheet.Done));
    }

    /// <summary>The deck of a bay beside the gap, or its crossed straps, against what pulls along the bay.</summary>
    private static CheckedMember Deck(ReciprocalGeometry frame, Building.Roof.Reciprocal described, Timber wood, CombinedState state, HangingFrame left)
    {
        const string Subject = "deck as diaphragm";
        var sheet = new Worksheet("pole-loss-deck");
        var pull = Pull(sheet, frame, left);
        var share = Worksheet.Computed("nu", "hanging-along", left.Along, Dimension.Number);
        var asked = sheet.Step("bay-shear", "C", "nu*T", left.Along * pull.Value.Si, Dimension.Force, Sources.Get("reciprocal-frame-statics"), share, pull);
        var held = DeckFixing.Bay(sheet, DeckSpans.Round(frame.Poles, described), frame.Poles, described, wood, state.Combination);
        return held.Value is { } symbol
            ? new("pole-loss", Subject, new MemberCheck(state.Combination.Key, state.Sense, asked.Value, symbol.Value, sheet.Done))
            : new("pole-loss", Subject, held.NotChecked!);
    }

    /// <summary>The poles left bend at their near crossings by P s at most.</summary>
    private static CheckedMember PolesLeft(ReciprocalGeometry frame, Timber wood, List<(CombinedState State, HangingFrame Left)> hanging)
    {
        var (state, left, at, _) = hanging.SelectMany(h => Enumerable.Range(0, frame.Count - 1).Select(k => (h.State, h.Left, k, Use: Use(h.State, h.Left, k)))).MaxBy(x => x.Use);
        var pole = Pole(left, at);
        var net = NotchedRound.Of(pole.DiameterAt(pole.Near), pole.Notch);
        var (sheet, mechanics) = (new Worksheet("pole-loss-poles"), Sources.Get("mechanics"));
        var allowed = Strength.RoundBending(sheet, wood, state.Combination, pole.DiameterAt(pole.Near));
        var p = Worksheet.Computed("P", "crossing-after-loss", left.Crossing[at] / Sudden, Dimension.Force);
        var sudden = Worksheet.Code("k_d", "sudden-loss", Sudden, Dimension.Number, Sources.Get("dod-progressive-memory"));
        var s = Worksheet.Computed("s", "stub-length", pole.Stub, Dimension.Length);
        var modulus = Worksheet.Computed("S", "net-section-modulus", net.SectionModulus, Dimension.Volume);
        var stress = sheet.Step("bending-stress", "f_b", "k_d*P*s/S", left.Crossing[at] * pole.Stub / net.SectionModulus, Dimension.Stress, mechanics, sudden, p, s, modulus);
        return new("pole-loss", $"pole {pole.Number}, without pole {frame.Poles[left.Lost].Number}", new MemberCheck(state.Combination.Key, state.Sense, stress.Value, allowed.Value, sheet.Done,
            Amount.Metres(pole.DiameterAt(pole.Near) * Math.Cbrt(Math.Max(0, stress.Value.Si / allowed.Value.Si)))));

        PoleGeometry Pole(HangingFrame h, int k) => frame.Poles[(h.Lost + 1 + k) % frame.Count];

        double Use(CombinedState of, HangingFrame h, int k)
        {
            var g = Pole(h, k);
            var d = g.DiameterAt(g.Near);
            return h.Crossing[k] * g.Stub / NotchedRound.Of(d, g.Notch).SectionModulus
                / (wood.Bending.Value * Strength.Factor(wood, of.Combination) * (wood.System == TimberSystem.Nds ? Nds.RoundSize(d) : 1));
        }
    }

    private static double[] Moments(ReciprocalGeometry frame, CombinedState state) => [.. frame.Poles.Select(p => state.Forces.LoadMoment[p.Number - 1])];

    private static CheckedMember Doubled(ReciprocalResult roof)
    {
        string[] keys = ["pole-bending-crossing", "pole-bending-plate", "pole-stub", "pole-shear"];
        var checks = roof.Checks.Concat(roof.StageChecks).Where(c => keys.Contains(c.Key)).ToArray();
        if (Array.Find(checks, c => !c.Check.Is) is { } unknown)
        {
            return new("pole-loss", "doubled frame", unknown.Check.NotChecked!);
        }

        if (checks.Length == 0)
        {
            return new("pole-loss", "doubled frame", new Message("analysis.roof.no-timber"));
        }

        var worst = checks.MaxBy(c => c.Check.Value!.Use)!.Check.Value!;
        var sheet = new Worksheet("pole-loss-doubled");
        var use = Worksheet.Computed("u", "share-used-alone", worst.Use, Dimension.Number);
        var sudden = Worksheet.Code("k_d", "sudden-loss-of-pair", SuddenOfPair, Dimension.Number, Sources.Get("dod-progressive-memory"));
        sheet.Step("share-used-sudden", "use", "k_d*u", SuddenOfPair * worst.Use, Dimension.Number, Sources.Get("mechanics"), sudden, use);
        return new("pole-loss", "doubled frame", new MemberCheck(worst.Combination, worst.Sense, Amount.Number(SuddenOfPair * worst.Use), Amount.Number(1), sheet.Done));
    }

    private static CheckedMember Post(ReciprocalResult roof, PoleLoss loss, Building.IfOneFails.Post post, Timber timber)
    {
        var frame = roof.Geometry;
        var length = roof.Raising.AxisHeight + frame.Poles.Max(p => p.HeightAt(p.Far) - p.DiameterAt(p.Far) / (2 * p.PitchCosine));
        if (Column.Slenderness(length, post.Diameter.Metres) > Column.MostSlender)
        {
            return new("pole-loss", "posts", Message.Of("analysis.loss.slender", ("length", Amount.Metres(length)), ("least", Amount.Metres(length / Column.MostSlender / Column.SquareShare))));
        }

        var sheet = new Worksheet("pole-loss-post");
        var prop = Worksheet.Computed("P", "prop-force", loss.PropForce, Dimension.Force);
        var sudden = Worksheet.Code("k_d", "sudden-loss", Sudden, Dimension.Number, Sources.Get("dod-progressive-memory"));
        sheet.Step("post-load", "N", "k_d*P", Sudden * loss.PropForce, Dimension.Force, Sources.Get("reciprocal-frame-statics"), sudden, prop);
        var capacity = Column.Capacity(sheet, timber, Permanent, post.Diameter.Metres, length);
        return new("pole-loss", "posts", new MemberCheck("D", StageStates.Prefix + loss.Stage, new Amount(Sudden * loss.PropForce, Dimension.Force), capacity.Value, sheet.Done,
            Amount.Metres(post.Diameter.Metres * Math.Pow(Sudden * loss.PropForce / capacity.Value.Si, 0.25))));
    }

    private static CheckedMember Footing(PoleLoss loss, Building.IfOneFails.Post post, Building.Site site)
    {
        if (site.SoilBearing is not { } bearing)
        {
            return new("pole-loss", "post footings", new Message("analysis.foundation.no-bearing"));
        }

        var sheet = new Worksheet("pole-loss-footing");
        var prop = Worksheet.Computed("P", "prop-force", loss.PropForce, Dimension.Force);
        var side = Worksheet.Given("b", "footing-side", post.Footing.Metres, Dimension.Length);
        var pressure = loss.PropForce / (post.Footing.Metres * post.Footing.Metres);
        sheet.Step("footing-pressure", "q", "P/b^2", pressure, Dimension.Stress, Sources.Get("mechanics"), prop, side);
        return new("pole-loss", "post footings", new MemberCheck("D", StageStates.Prefix + loss.Stage, new Amount(pressure, Dimension.Stress), new Amount(bearing.Pascals, Dimension.Stress), sheet.Done,
            Amount.Metres(post.Footing.Metres * Math.Sqrt(pressure / bearing.Pascals))));
    }
}
