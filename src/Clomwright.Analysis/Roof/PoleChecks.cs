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
            checks.Bending("pole-bending-crossing", f => f.MomentAtNear, p => NotchedRound.Of(p.DiameterAt(p.Near), p.Notch), p => p.DiameterAt(p.Near), notched: true),
            checks.Bending("pole-bending-plate", f => f.MomentAtPlate, p => NotchedRound.Of(p.DiameterAt(0), 0), p => p.DiameterAt(0), notched: false),
            checks.Foot(),
            checks.Stub(),
            checks.Shear(),
            SeatCheck.Of([.. roof.Geometry.Poles.Select(p => new SeatCheck.Place($"pole {p.Number}", p.Number - 1, p.DiameterAt(0)))], wood, combined.States, beam, seat),
            checks.CrossingBearing(),
            combined.States.All(s => StageStates.Is(s.Sense)) ? RingSag.InStages(roof, wood) : checks.Sag(roof),
        ];

        Sequence<CheckedMember> None(Message because) => keys.Select(k => new CheckedMember(k, "poles", because)).ToSequence();
    }

    private CheckedMember Bending(string key, Func<RoofForces, Sequence<double>> moments, Func<PoleGeometry, NotchedRound> section, Func<PoleGeometry, double> diameter, bool notched)
    {
        var (state, pole) = Hardest.Of(states, frame.Poles, (s, p) => Math.Abs(moments(s.Forces)[p.Number - 1]) / section(p).SectionModulus / BendingFactor(s, diameter(p)));
        var moment = Math.Abs(moments(state.Forces)[pole.Number - 1]);
        var d = diameter(pole);
        var sheet = new Worksheet(key);
        var allowed = Strength.RoundBending(sheet, timber, state.Combination, d);
        var m = Worksheet.Computed("M", notched ? "moment-at-near" : "moment-at-plate", moment, Dimension.Moment);
        var modulus = section(pole).SectionModulus;
        var diameterSymbol = Worksheet.Computed("d", "pole-diameter", d, Dimension.Length);
        var s = notched && pole.Notch > 0
            ? Worksheet.Computed("S", "net-section-modulus", modulus, Dimension.Volume)
            : sheet.Step("section-modulus", "S", "pi*d^3/32", modulus, Dimension.Volume, Sources.Get("mechanics"), diameterSymbol);
        var stress = moment / modulus;
        sheet.Step("bending-stress", "f_b", "M/S", stress, Dimension.Stress, Sources.Get("mechanics"), m, s);
        var needed = d * Math.Cbrt(stress / allowed.Value.Si);
        return Checked(key, pole, state, new Amount(stress, Dimension.Stress), allowed.Value, sheet, Amount.Metres(needed));
    }

    /// <summary>Over the bond beam the pole bends and is pressed along its length at once.</summary>
    private CheckedMember Foot()
    {
        var (state, pole) = Hardest.Of(states, frame.Poles, Ratio);
        var at = pole.Number - 1;
        var d = pole.DiameterAt(0);
        var (sheet, mechanics) = (new Worksheet("pole-foot"), Sources.Get("mechanics"));
        var bending = Strength.RoundBending(sheet, timber, state.Combination, d);
        var along = Strength.Adjusted(sheet, timber, state.Combination, timber.Compression, "compression-strength", "F_c");
        var m = Worksheet.Computed("M", "moment-at-plate", Math.Abs(state.Forces.MomentAtPlate[at]), Dimension.Moment);
        var a = Worksheet.Computed("A_p", "plate-reaction", Math.Abs(state.Forces.PlateReaction[at]), Dimension.Force);
        var beta = Worksheet.Computed("beta", "pole-pitch", pole.Pitch, Dimension.Angle);
        var dia = Worksheet.Computed("d", "pole-diameter-seat", d, Dimension.Length);
        var ratio = Ratio(state, pole);
        sheet.Step("foot-use", "use", $"M/(pi*d^3/32*{bending.Name}) + A_p*sin(beta)/(pi*d^2/4*{along.Name})", ratio, Dimension.Number, mechanics, m, dia, bending, a, beta, along);
        return Checked("pole-foot", pole, state, Amount.Number(ratio), Amount.Number(1), sheet, Amount.Metres(d * Math.Cbrt(ratio)));

        double Ratio(CombinedState s, PoleGeometry p)
        {
            var round = p.DiameterAt(0);
            return Math.Abs(s.Forces.MomentAtPlate[p.Number - 1]) / (Math.PI * Math.Pow(round, 3) / 32) / BendingFactor(s, round)
                + Math.Abs(s.Forces.PlateReaction[p.Number - 1]) * Math.Sin(p.Pitch) / (Math.PI / 4 * round * round) / (timber.Compression.Value * Strength.Factor(timber, s.Combination));
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

    /// <summary>Shear on the stub and at the plate; where a notch is cut, what is left carries less than its area says.</summary>
    private CheckedMember Shear()
    {
        var (state, pole) = Hardest.Of(states, frame.Poles, (s, p) => Demand(s, p) / Capacity(s, p));
        var d = Math.Min(pole.DiameterAt(pole.Near), pole.DiameterAt(pole.Far));
        var sheet = new Worksheet("pole-shear");
        var fv = Strength.Adjusted(sheet, timber, state.Combination, timber.Shear, "shear-strength", "F_v");
        var net = NotchedRound.Of(d, pole.Notch);
        var area = Worksheet.Computed("A", "net-area", net.Area, Dimension.Area);
        var capacity = Capacity(state, pole);
        var left = Worksheet.Computed("k", "depth-left", 1 - pole.Notch / d, Dimension.Number);
        var cracks = timber.System == TimberSystem.En ? Worksheet.Code("k_cr", "shear-cracks", Ec5.ShearCracks, Dimension.Number, Sources.Get("en-1995-memory")) : null;
        var equation = $"{(cracks is null ? "" : "k_cr*")}{(pole.Notch > 0 ? $"2/3*{fv.Name}*A*k^2" : $"3/4*{fv.Name}*A")}";
        Symbol[] symbols = [.. cracks is null ? (Symbol[])[] : [cracks], fv, area, .. pole.Notch > 0 ? [left] : (Symbol[])[]];
        sheet.Step("shear-capacity", "V_c", equation, capacity, Dimension.Force, Sources.Get("nds-memory"), symbols);
        return Checked("pole-shear", pole, state, new Amount(Demand(state, pole), Dimension.Force), new Amount(capacity, Dimension.Force), sheet, Amount.Metres(d * Math.Sqrt(Demand(state, pole) / capacity)));

        double Demand(CombinedState s, PoleGeometry p) => Math.Max(s.Forces.Shear[p.Number - 1], Math.Abs(s.Forces.Governing[p.Number - 1]) * p.PitchCosine);

        double Capacity(CombinedState s, PoleGeometry p)
        {
            var round = Math.Min(p.DiameterAt(p.Near), p.DiameterAt(p.Far));
            var area = NotchedRound.Of(round, p.Notch).Area;
            var strength = timber.Shear.Value * Strength.Factor(timber, s.Combination) * (timber.System == TimberSystem.En ? Ec5.ShearCracks : 1);
            return p.Notch > 0 ? Nds.NotchedShear(strength, area, 1 - p.Notch / round) : 0.75 * strength * area;
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
