using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>The poles of a reciprocal frame held against their timber in every combination: each check at its hardest pole, combination and pattern.</summary>
internal sealed class PoleChecks
{
    /// <summary>Tension along the grain over bending, where a table has no value for poles.</summary>
    private const double TensionShare = 0.55;

    /// <summary>Total sag over the pole's length to the far crossing.</summary>
    public const double SagLimit = 180;

    private readonly ReciprocalGeometry frame;
    private readonly Timber timber;
    private readonly Sequence<CombinedState> states;

    private PoleChecks(ReciprocalGeometry frame, Timber timber, Sequence<CombinedState> states)
    {
        this.frame = frame;
        this.timber = timber;
        this.states = states;
    }

    /// <summary>All checks of the poles, their seats and their crossings.</summary>
    public static Sequence<CheckedMember> Of(ReciprocalResult roof, Known<Timber> timber, CombinedStates combined, Building.BondBeam? beam, Building.SeatMade? seat)
    {
        string[] keys = ["pole-bending-crossing", "pole-bending-plate", "pole-foot", "pole-stub", "pole-shear", "pole-seat", "pole-crossing-bearing", "ring-sag"];
        if (timber.Value is not { } wood)
        {
            return None(timber.NotChecked!);
        }

        if (combined.States.Count == 0)
        {
            return None(combined.Missing[0]);
        }

        var checks = new PoleChecks(roof.Geometry, wood, combined.States);
        return
        [
            checks.Bending("pole-bending-crossing", [new("moment-at-near", f => f.MomentAtNear, p => p.Near, p => p.Notch)]),
            checks.Bending("pole-bending-plate", [new("moment-at-plate", f => f.MomentAtPlate, _ => 0, p => p.CutAt(0)), new("moment-at-heel", f => f.MomentAtHeel, p => p.Heel.At, p => p.Heel.Cut)]),
            checks.Foot(),
            checks.Stub(),
            checks.Shear(),
            SeatCheck.Of(SeatCheck.Places(roof.Geometry), wood, combined.States, beam, seat),
            checks.CrossingBearing(),
            combined.States.All(s => StageStates.Is(s.Sense)) ? RingSag.InStages(roof, wood) : checks.Sag(roof),
        ];

        Sequence<CheckedMember> None(Message because) => keys.Select(k => new CheckedMember(k, "poles", because)).ToSequence();
    }

    /// <summary>A place where poles are bent.</summary>
    /// <param name="Moment">Word of its moment.</param>
    /// <param name="Moments">Of every pole.</param>
    /// <param name="At">Along a pole.</param>
    /// <param name="Cut">Out of a pole there, m.</param>
    private sealed record Bent(string Moment, Func<RoofForces, Sequence<double>> Moments, Func<PoleGeometry, double> At, Func<PoleGeometry, double> Cut)
    {
        public NotchedRound Section(PoleGeometry pole) => NotchedRound.Of(pole.DiameterAt(At(pole)), Cut(pole));
    }

    /// <summary>The hardest bending at any of some places.</summary>
    private CheckedMember Bending(string key, Bent[] places)
    {
        var (state, (pole, at)) = Hardest.Of(states, [.. frame.Poles.SelectMany(p => places.Select(b => (Pole: p, At: b)))],
            (s, x) => Math.Abs(x.At.Moments(s.Forces)[x.Pole.Number - 1]) / x.At.Section(x.Pole).SectionModulus / BendingFactor(s, x.Pole.DiameterAt(x.At.At(x.Pole))));
        var moment = Math.Abs(at.Moments(state.Forces)[pole.Number - 1]);
        var d = pole.DiameterAt(at.At(pole));
        var sheet = new Worksheet(key);
        var allowed = Strength.RoundBending(sheet, timber, state.Combination, d);
        var m = Worksheet.Computed("M", at.Moment, moment, Dimension.Moment);
        var modulus = at.Section(pole).SectionModulus;
        var s = at.Cut(pole) > 0
            ? Worksheet.Computed("S", "net-section-modulus", modulus, Dimension.Volume)
            : sheet.Step("section-modulus", "S", "pi*d^3/32", modulus, Dimension.Volume, Sources.Get("mechanics"), Worksheet.Computed("d", "pole-diameter", d, Dimension.Length));
        var stress = moment / modulus;
        sheet.Step("bending-stress", "f_b", "M/S", stress, Dimension.Stress, Sources.Get("mechanics"), m, s);
        var needed = d * Math.Cbrt(stress / allowed.Value.Si);
        return Checked(key, pole, state, new Amount(stress, Dimension.Stress), allowed.Value, sheet, Amount.Metres(needed));
    }

    /// <summary>What its seat leaves of a pole over the middle of the bond beam, where its thrust comes in.</summary>
    private static NotchedRound AtPlate(PoleGeometry pole) => NotchedRound.Of(pole.DiameterAt(0), pole.CutAt(0));

    /// <summary>Over the bond beam the pole, as its seat leaves it, bends and is pressed along its length at once.</summary>
    private CheckedMember Foot()
    {
        var (state, pole) = Hardest.Of(states, frame.Poles, Ratio);
        var at = pole.Number - 1;
        var d = pole.DiameterAt(0);
        var (sheet, mechanics) = (new Worksheet("pole-foot"), Sources.Get("mechanics"));
        var bending = Strength.RoundBending(sheet, timber, state.Combination, d);
        var along = Strength.Adjusted(sheet, timber, state.Combination, timber.Compression, "compression-strength", "F_c");
        var net = AtPlate(pole);
        var m = Worksheet.Computed("M", "moment-at-plate", Math.Abs(state.Forces.MomentAtPlate[at]), Dimension.Moment);
        var s = Worksheet.Computed("S", "net-section-modulus", net.SectionModulus, Dimension.Volume);
        var area = Worksheet.Computed("A", "net-area", net.Area, Dimension.Area);
        var a = Worksheet.Computed("A_p", "plate-reaction", Math.Abs(state.Forces.PlateReaction[at]), Dimension.Force);
        var beta = Worksheet.Computed("beta", "pole-pitch", pole.Pitch, Dimension.Angle);
        var ratio = Ratio(state, pole);
        sheet.Step("foot-use", "use", $"M/(S*{bending.Name}) + A_p*sin(beta)/(A*{along.Name})", ratio, Dimension.Number, mechanics, m, s, bending, a, beta, area, along);
        return Checked("pole-foot", pole, state, Amount.Number(ratio), Amount.Number(1), sheet, Amount.Metres(d * Math.Cbrt(ratio)));

        double Ratio(CombinedState s, PoleGeometry p)
        {
            var left = AtPlate(p);
            return Math.Abs(s.Forces.MomentAtPlate[p.Number - 1]) / left.SectionModulus / BendingFactor(s, p.DiameterAt(0))
                + Math.Abs(s.Forces.PlateReaction[p.Number - 1]) * Math.Sin(p.Pitch) / left.Area / (timber.Compression.Value * Strength.Factor(timber, s.Combination));
        }
    }

    /// <summary>The stub between the crossings bends and is pulled along its length at once.</summary>
    private CheckedMember Stub()
    {
        var (state, pole) = Hardest.Of(states, frame.Poles, (s, p) => Ratio(s, p));
        var at = pole.Number - 1;
        var net = NotchedRound.Of(pole.DiameterAt(pole.Near), pole.Notch);
        var sheet = new Worksheet("pole-stub");
        var allowed = Strength.RoundBending(sheet, timber, state.Combination, pole.DiameterAt(pole.Near));
        var memory = Sources.Get("nds-memory");
        var m = Worksheet.Computed("M", "moment-at-near", Math.Abs(state.Forces.MomentAtNear[at]), Dimension.Moment);
        var s = Worksheet.Computed("S", "net-section-modulus", net.SectionModulus, Dimension.Volume);
        var p = Worksheet.Computed("P", "crossing-force", Math.Abs(state.Forces.Governing[at]), Dimension.Force);
        var beta = Worksheet.Computed("beta", "pole-pitch", pole.Pitch, Dimension.Angle);
        var area = Worksheet.Computed("A", "net-area", net.Area, Dimension.Area);
        var share = Worksheet.Assumed("k_t", "tension-over-bending", TensionShare, Dimension.Number, memory);
        var ratio = Ratio(state, pole);
        sheet.Step("stub-use", "use", $"M/(S*{allowed.Name}) + P*sin(beta)/(A*k_t*{allowed.Name})", ratio, Dimension.Number, memory, m, s, allowed, p, beta, area, share);
        return Checked("pole-stub", pole, state, Amount.Number(ratio), Amount.Number(1), sheet);

        double Ratio(CombinedState st, PoleGeometry g)
        {
            var section = NotchedRound.Of(g.DiameterAt(g.Near), g.Notch);
            var limit = BendingFactor(st, g.DiameterAt(g.Near));
            return Math.Abs(st.Forces.MomentAtNear[g.Number - 1]) / section.SectionModulus / limit
                + Math.Abs(st.Forces.Governing[g.Number - 1]) * Math.Sin(g.Pitch) / section.Area / (TensionShare * limit);
        }
    }

    /// <summary>Shear at the crossings, and of the overhang at the outer edge of the seat; where a notch is cut, what is left carries less than its area says.</summary>
    /// <remarks>A notch at a crossing lies on the side in tension and splits what is left: (d_n/d)^2. A seat lies on the side in compression under its overhang, and what is left carries by its area.</remarks>
    private CheckedMember Shear()
    {
        var (state, at) = Hardest.Of(states, [.. frame.Poles.SelectMany(p => new[] { (Pole: p, Overhang: false), (Pole: p, Overhang: true) })], (s, x) => Demand(s, x.Pole, x.Overhang) / Capacity(s, x.Pole, x.Overhang));
        var (pole, overhang) = at;
        var d = Round(pole, overhang);
        var cut = Cut(pole, overhang);
        var sheet = new Worksheet("pole-shear");
        var fv = Strength.Adjusted(sheet, timber, state.Combination, timber.Shear, "shear-strength", "F_v");
        var area = Worksheet.Computed("A", "net-area", NotchedRound.Of(d, cut).Area, Dimension.Area);
        var (demand, capacity) = (Demand(state, pole, overhang), Capacity(state, pole, overhang));
        var cracks = timber.System == TimberSystem.En ? Worksheet.Code("k_cr", "shear-cracks", Ec5.ShearCracks, Dimension.Number, Sources.Get("en-1995-memory")) : null;
        var splits = !overhang && cut > 0 ? Worksheet.Computed("k", "depth-left", 1 - cut / d, Dimension.Number) : null;
        var equation = $"{(cracks is null ? "" : "k_cr*")}{(cut > 0 ? "2/3" : "3/4")}*{fv.Name}*A{(splits is null ? "" : "*k^2")}";
        sheet.Step("shear-capacity", "V_c", equation, capacity, Dimension.Force, Sources.Get("nds-memory"), [.. new[] { cracks, fv, area, splits }.OfType<Symbol>()]);
        return Checked("pole-shear", pole, state, new Amount(demand, Dimension.Force), new Amount(capacity, Dimension.Force), sheet, Amount.Metres(d * Math.Sqrt(demand / capacity)));

        static double Round(PoleGeometry p, bool overhang) => overhang ? p.DiameterAt(0) : Math.Min(p.DiameterAt(p.Near), p.DiameterAt(p.Far));

        static double Cut(PoleGeometry p, bool overhang) => overhang ? p.Heel.Cut : p.Notch;

        static double Demand(CombinedState s, PoleGeometry p, bool overhang) => overhang ? s.Forces.ShearOfOverhang[p.Number - 1]
            : Math.Max(s.Forces.Shear[p.Number - 1], Math.Abs(s.Forces.Governing[p.Number - 1]) * p.PitchCosine);

        double Capacity(CombinedState s, PoleGeometry p, bool overhang)
        {
            var (round, notch) = (Round(p, overhang), Cut(p, overhang));
            var area = NotchedRound.Of(round, notch).Area;
            var strength = timber.Shear.Value * Strength.Factor(timber, s.Combination) * (timber.System == TimberSystem.En ? Ec5.ShearCracks : 1);
            return !(notch > 0) ? 0.75 * strength * area
                : overhang ? 2.0 / 3 * strength * area
                : Nds.NotchedShear(strength, area, 1 - notch / round);
        }
    }

    /// <summary>Pole on pole across the grain: bare rounds touch in a point, so a saddle is needed.</summary>
    private CheckedMember CrossingBearing()
    {
        var (state, pole) = Hardest.Of(states, frame.Poles, (s, p) => Math.Abs(s.Forces.Governing[p.Number - 1]) * Math.Sin(p.CrossingAngle) / AcrossFactor(s));
        var force = Math.Abs(state.Forces.Governing[pole.Number - 1]);
        var d = Math.Min(pole.DiameterAt(pole.Far), frame.Poles.Min(p => p.DiameterAt(p.Near)));
        var across = timber.AcrossGrain.Value * AcrossFactor(state);
        var square = force * Math.Sin(pole.CrossingAngle) / (4 * across);
        var saddle = square < d * d / 4 ? d / 2 - Math.Sqrt(d * d / 4 - square) : d / 2;
        if (pole.Notch <= 0)
        {
            return new CheckedMember("pole-crossing-bearing", $"pole {pole.Number}", Message.Of("analysis.members.crossing-bare", ("pole", pole.Number), ("saddle", Amount.Metres(saddle))));
        }

        var sheet = new Worksheet("pole-crossing-bearing");
        var mechanics = Sources.Get("mechanics");
        var dia = Worksheet.Computed("d", "pole-diameter", d, Dimension.Length);
        var n = Worksheet.Given("n", "notch-depth", pole.Notch, Dimension.Length);
        var omega = Worksheet.Computed("omega", "crossing-angle", pole.CrossingAngle, Dimension.Angle);
        var areaValue = 4 * (d * pole.Notch - pole.Notch * pole.Notch) / Math.Sin(pole.CrossingAngle);
        var area = sheet.Step("crossing-area", "A", "4*(d*n - n^2)/sin(omega)", areaValue, Dimension.Area, mechanics, dia, n, omega);
        var strength = Strength.Across(sheet, timber, state.Combination);
        sheet.Step("crossing-capacity", "R", $"A*{strength.Name}", areaValue * strength.Value.Si, Dimension.Force, mechanics, area, strength);
        return Checked("pole-crossing-bearing", pole, state, new Amount(force, Dimension.Force), new Amount(areaValue * strength.Value.Si, Dimension.Force), sheet, Amount.Metres(saddle));
    }

    /// <summary>Sag of the ring in time: green poles creep, so what stays on counts twice.</summary>
    private CheckedMember Sag(ReciprocalResult roof)
    {
        if (roof.Stage("soilWet").Value is not { } wet)
        {
            return new CheckedMember("ring-sag", "ring", roof.Stage("soilWet").NotChecked!);
        }

        if (roof.Stage("soilWetSnow").Value is not { } snow)
        {
            return new CheckedMember("ring-sag", "ring", roof.Stage("soilWetSnow").NotChecked!);
        }

        var creep = timber.System == TimberSystem.Nds ? Nds.Creep(green: true) : 1 + Ec5.Creep(2, green: true);
        var pole = frame.Poles.MaxBy(p => (creep * wet.Drop[p.Number - 1] + snow.Drop[p.Number - 1] - wet.Drop[p.Number - 1]) / p.LengthToFar)!;
        var source = Sources.Get("nds-memory");
        var sheet = new Worksheet("ring-sag");
        var k = Worksheet.Code("K", "creep-factor", creep, Dimension.Number, source);
        var d = Worksheet.Computed("v_d", "drop-wet", wet.Drop[pole.Number - 1], Dimension.Length);
        var s = Worksheet.Computed("v_s", "drop-snow", snow.Drop[pole.Number - 1] - wet.Drop[pole.Number - 1], Dimension.Length);
        var sag = creep * d.Value.Si + s.Value.Si;
        sheet.Step("ring-sag", "v", "K*v_d + v_s", sag, Dimension.Length, source, k, d, s);
        var length = Worksheet.Computed("L", "pole-length-far", pole.LengthToFar, Dimension.Length);
        var limit = Worksheet.Code("k_L", "sag-limit", SagLimit, Dimension.Number, source);
        sheet.Step("ring-sag-limit", "v_max", "L/k_L", pole.LengthToFar / SagLimit, Dimension.Length, source, length, limit);
        return new CheckedMember("ring-sag", $"pole {pole.Number}", new MemberCheck("D + S", "even", Amount.Metres(sag), Amount.Metres(pole.LengthToFar / SagLimit), sheet.Done));
    }

    private double BendingFactor(CombinedState state, double diameter) =>
        timber.Bending.Value * Strength.Factor(timber, state.Combination) * (timber.System == TimberSystem.Nds ? Nds.RoundSize(diameter) : 1);

    private double AcrossFactor(CombinedState state) => timber.System == TimberSystem.Nds ? 1 : Strength.Factor(timber, state.Combination);

    private static CheckedMember Checked(string key, PoleGeometry pole, CombinedState state, Amount demand, Amount capacity, Worksheet sheet, Amount? needed = null) =>
        new(key, $"pole {pole.Number}", new MemberCheck(state.Combination.Key, state.Sense, demand, capacity, sheet.Done, needed));
}
