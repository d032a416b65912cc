using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>The pins through the crossings, in every combination and every stage: sideways, friction not counted, and pulled where a crossing opens.</summary>
/// <remarks>
/// Sideways is P sin(psi): what would slide along the slope. The pin bears across the grain of both poles, which is the lower of its strengths. Where P is negative the pin is pulled with |P| and
/// sheared at once; the two shares add. A washer bears on each pole across the grain; a pin without nuts holds no pull.
/// </remarks>
internal sealed class PinChecks
{
    /// <summary>Angle of load to grain that is taken: square to it.</summary>
    private const double Across = Math.PI / 2;

    /// <summary>A washer nobody gave, in diameters of the pin.</summary>
    public const double WasherWidth = 3;

    /// <summary>F_t/F_u of a bolt under its allowed tension (AISC: 0.75 F_u over 2.0).</summary>
    public const double BoltShare = 0.375;

    /// <summary>EN 1993-1-8: 0.9 f_ub/1.25.</summary>
    public const double BoltShareEn = 0.72;

    /// <summary>Threads leave this much of the shank.</summary>
    public const double Threads = 0.75;

    private readonly ReciprocalGeometry frame;
    private readonly IReadOnlyList<Crossing> crossings;
    private readonly Timber timber;
    private readonly Metal metal;
    private readonly double diameter;
    private readonly double washer;

    private PinChecks(ReciprocalGeometry frame, IReadOnlyList<Crossing> crossings, Timber timber, Metal metal, Building.Pin pin)
    {
        this.frame = frame;
        this.crossings = crossings;
        this.timber = timber;
        this.metal = metal;
        diameter = pin.Diameter.Metres;
        washer = pin.Washer?.Metres ?? WasherWidth * diameter;
    }

    /// <summary><c>pin-shear</c> and <c>pin-pull</c>.</summary>
    public static Sequence<CheckedMember> Of(ReciprocalGeometry frame, IReadOnlyList<Crossing> crossings, Known<Timber> timber, Building.Roof.Reciprocal roof, Sequence<CombinedState> states)
    {
        if (timber.Value is not { } wood)
        {
            return None(timber.NotChecked!);
        }

        if (states.Count == 0)
        {
            return None(new Message("analysis.roof.no-timber"));
        }

        if (roof.Pin is not { } pin)
        {
            return None(new Message("analysis.pin.none"));
        }

        if (!(pin.Diameter.Metres >= Dowel.DiameterMin) || Metal.Find(pin.Material) is not { } metal)
        {
            return None(Message.Of("analysis.pin.unknown", ("material", pin.Material)));
        }

        var checks = new PinChecks(frame, crossings, wood, metal, pin);
        return [checks.Shear(states), checks.Pull(states)];

        static Sequence<CheckedMember> None(Message because) => [new("pin-shear", "pins sideways", because), new("pin-pull", "pins pulled", because)];
    }

    /// <summary>Assumptions of pins that are described.</summary>
    public static IEnumerable<Assumption> Assumed(Building.Roof.Reciprocal roof) => roof.Pin is { Washer: null } pin
        ? [new Assumption("pin-washer", new Message("analysis.assumed.pin-washer"), Amount.Metres(WasherWidth * pin.Diameter.Metres), Sources.Get("common-practice"))]
        : [];

    private CheckedMember Shear(Sequence<CombinedState> states)
    {
        var (state, at) = Hardest.Of(states, [.. Enumerable.Range(0, frame.Count)], (s, i) => Slip(s, i) / ShearCapacity(s, i));
        var sheet = new Worksheet("pin-shear");
        var slip = Sideways(sheet, state, at);
        var capacity = PrintShear(sheet, state, at);
        return Checked("pin-shear", at, state, slip.Value, capacity.Value, sheet, diameter * Math.Sqrt(slip.Value.Si / capacity.Value.Si));
    }

    private CheckedMember Pull(Sequence<CombinedState> states)
    {
        var (state, at) = Hardest.Of(states, [.. Enumerable.Range(0, frame.Count)], PullUse);
        var sheet = new Worksheet("pin-pull");
        var source = Sources.Get("steel-memory");
        var slip = Sideways(sheet, state, at);
        var shear = PrintShear(sheet, state, at);
        var d = Worksheet.Given("D", "pin-diameter", diameter, Dimension.Length);
        var european = timber.System == TimberSystem.En;
        var fu = Worksheet.Cited("F_u", "metal-ultimate", metal.Breaks(timber.System), Dimension.Stress);
        var share = Worksheet.Code("k_b", "bolt-share", european ? BoltShareEn : BoltShare, Dimension.Number, source);
        var threads = Worksheet.Code("k_n", "bolt-threads", Threads, Dimension.Number, source);
        var steel = sheet.Step("pin-steel", "T_s", "k_b*k_n*F_u*pi*D^2/4", Steel(), Dimension.Force, source, share, threads, fu, d);
        var w = Worksheet.Given("d_w", "washer-diameter", washer, Dimension.Length);
        var across = Strength.Across(sheet, timber, state.Combination);
        var wood = sheet.Step("washer-capacity", "T_w", $"{across.Name}*pi*(d_w^2 - D^2)/4", Washer(state), Dimension.Force, Sources.Get("mechanics"), across, w, d);
        var pull = Worksheet.Computed("T", "pin-pull", Tension(state, at), Dimension.Force);
        var use = PullUse(state, at);
        sheet.Step("pin-use", "use", $"T/min(T_s, T_w) + F/{shear.Name}", use, Dimension.Number, source, pull, steel, wood, slip, shear);
        var worst = Tension(state, at);
        var capacity = worst > 0 ? Math.Min(Steel(), Washer(state)) * Math.Max(0, 1 - Slip(state, at) / ShearCapacity(state, at)) : Math.Min(Steel(), Washer(state));
        return Checked("pin-pull", at, state, new Amount(worst, Dimension.Force), new Amount(capacity, Dimension.Force), sheet, diameter * Math.Sqrt(use));
    }

    /// <summary>Share of the pin used where the crossing is pulled; the share used sideways, less than any pull, where it is not.</summary>
    private double PullUse(CombinedState s, int i) => Tension(s, i) / Math.Min(Steel(), Washer(s)) + Slip(s, i) / ShearCapacity(s, i) is var use && Tension(s, i) > 0 ? use : 0;

    private double Force(CombinedState s, int i) => s.Forces.Governing[frame.Poles[i].Number - 1];

    private double Tension(CombinedState s, int i) => Math.Max(0, -Math.Min(Force(s, i), s.Forces.CrossingForce[frame.Poles[i].Number - 1]));

    private double Slip(CombinedState s, int i) => crossings[i].SlipForce(Force(s, i));

    private double Depth(int i) => Math.Min(frame.Poles[i].DiameterAt(frame.Poles[i].Far), frame.Next(i).DiameterAt(frame.Next(i).Near)) - Math.Max(frame.Poles[i].Notch, frame.Next(i).Notch);

    private double Steel() => (timber.System == TimberSystem.En ? BoltShareEn : BoltShare) * Threads * metal.Breaks(timber.System).Value * Math.PI / 4 * diameter * diameter;

    private double Washer(CombinedState s) =>
        timber.AcrossGrain.Value * (timber.System == TimberSystem.Nds ? 1 : Strength.Factor(timber, s.Combination)) * Math.PI / 4 * Math.Max(0, washer * washer - diameter * diameter);

    private double Bearing() => timber.System == TimberSystem.Nds
        ? Dowel.BearingAcross(timber.SpecificGravity!.Value, diameter)
        : DowelEn.Bearing(DowelEn.Density(timber), diameter);

    private double ShearCapacity(CombinedState s, int i) => Strength.Factor(timber, s.Combination) * (timber.System == TimberSystem.Nds
        ? Dowel.Modes(diameter, Member(i), Member(i), Dowel.Yield.Value, Across).SingleShear
        : DowelEn.SingleShear(diameter, Depth(i), Bearing(), metal.Breaks(timber.System).Value));

    private Symbol Sideways(Worksheet sheet, CombinedState state, int i)
    {
        var p = Worksheet.Computed("P", "crossing-force", Math.Abs(Force(state, i)), Dimension.Force);
        var psi = Worksheet.Computed("psi", "crossing-lean", crossings[i].Lean, Dimension.Angle);
        return sheet.Step("pin-slip", "F", "P*sin(psi)", Slip(state, i), Dimension.Force, Sources.Get("reciprocal-frame-statics"), p, psi);
    }

    private DowelMember Member(int i) => new(Depth(i), Bearing());

    private Symbol PrintShear(Worksheet sheet, CombinedState state, int i)
    {
        if (timber.System == TimberSystem.Nds)
        {
            var z = Dowel.Steps(sheet, diameter, Member(i), Member(i), Across, planes: 1);
            var cd = Worksheet.Code("C_D", "duration-factor", Nds.Duration(state.Combination), Dimension.Number, Sources.Get("nds-duration"));
            return sheet.Step("pin-capacity", "Z_1", "C_D*Z", ShearCapacity(state, i), Dimension.Force, Sources.Get("nds-memory"), cd, z);
        }

        var d = Worksheet.Given("D", "pin-diameter", diameter, Dimension.Length);
        var l = Worksheet.Computed("l", "pin-length", Depth(i), Dimension.Length);
        var fe = Worksheet.Computed("F_e", "pin-bearing", Bearing(), Dimension.Stress);
        return En(sheet, state, i, d, l, fe);
    }

    private Symbol En(Worksheet sheet, CombinedState state, int i, Symbol d, Symbol l, Symbol fe)
    {
        var source = Sources.Get("en-1995-memory");
        double length = Depth(i), whole = diameter * length * Bearing(), moment = DowelEn.YieldMoment(diameter, metal.Breaks(timber.System).Value);
        var m = Worksheet.Computed("M_y", "pin-yield-moment", moment, Dimension.Moment);
        var two = sheet.Step("pin-mode-two", "Z_2", "(sqrt(8) - 2)/2*F_e*l*D", whole / 2 * (Math.Sqrt(8) - 2), Dimension.Force, source, fe, l, d);
        var three = sheet.Step(
            "pin-mode-three", "Z_3", "1.05*F_e*l*D/3*(sqrt(4 + 12*M_y/(F_e*D*l^2)) - 1)", 1.05 * whole / 3 * (Math.Sqrt(4 + 12 * moment / (Bearing() * diameter * length * length)) - 1),
            Dimension.Force, source, fe, l, d, m);
        var four = sheet.Step("pin-mode-four", "Z_4", "1.15*sqrt(2*M_y*F_e*D)", 1.15 * Math.Sqrt(2 * moment * Bearing() * diameter), Dimension.Force, source, m, fe, d);
        var mod = Worksheet.Code("k_mod", "duration-en", Ec5.Duration(state.Combination), Dimension.Number, source);
        var gamma = Worksheet.Code("gamma_M", "partial-factor", Ec5.PartialFactor, Dimension.Number, Sources.Get("en-1995-examples"));
        return sheet.Step("pin-capacity", "Z", "k_mod/gamma_M*min(Z_2, min(Z_3, Z_4))", ShearCapacity(state, i), Dimension.Force, source, mod, gamma, two, three, four);
    }

    private CheckedMember Checked(string key, int at, CombinedState state, Amount demand, Amount capacity, Worksheet sheet, double needed) =>
        new(key, $"pin of pole {frame.Poles[at].Number}{(key == "pin-pull" ? ", pulled" : ", sideways")}", new MemberCheck(state.Combination.Key, state.Sense, demand, capacity, sheet.Done, Amount.Metres(needed)));
}
