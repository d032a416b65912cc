using Clomwright.Analysis.Anchorage;
using Clomwright.Analysis.Foundation;
using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.WallTop;

/// <summary>Sideways forces from the roof to the stem: roof and bond beam on the cob, cob on the stem, and the wall held against falling outward.</summary>
/// <remarks>
/// Wind pushes on half the wall and the height of the roof at the bond beam, on all of both at the stem; an earthquake shakes the roof as it stands in the combination, and the wall. The bond beam holds on
/// to the cob by the legs of its tees or by friction, whichever is more, never both. Each leg counts as a steel dowel of the adobe table, which is thinner than it. On a damp break no friction is counted:
/// keys carry it all, each pressing its face against the cob.
/// </remarks>
internal sealed class LateralPath
{
    private readonly HouseGeometry geometry;
    private readonly RoofResult roof;
    private readonly double dryCob;
    private readonly Cited<double> cobBearing;
    private readonly Source mechanics = Sources.Get("mechanics");
    private readonly Cited<double> friction = new(0.25, Sources.Get("ibc-1806"), Tag.Code);
    private readonly Sideways sideways;
    private readonly double height, width;

    private LateralPath(HouseGeometry geometry, RoofResult roof, double dryCob, Cited<double> cobBearing)
    {
        (this.geometry, this.roof, this.dryCob, this.cobBearing) = (geometry, roof, dryCob, cobBearing);
        sideways = new(geometry, roof);
        (height, width) = (sideways.Height, sideways.Width);
    }

    public static (Sequence<CheckedMember> Checks, Sequence<Assumption> Assumptions) Of(HouseGeometry geometry, RoofResult roof, double dryCob, Cited<double> cobBearing)
    {
        const string Key = "lateral-path";
        string[] subjects = ["beam on cob", "cob on stem", "wall outward"];
        if (geometry.House.Roof is null)
        {
            return ([], []);
        }

        if (Sideways.Missing(roof) is { } why)
        {
            return (subjects.Select(s => new CheckedMember(Key, s, why)).ToSequence(), []);
        }

        var path = new LateralPath(geometry, roof, dryCob, cobBearing);
        return ([path.BeamOnCob(), path.CobOnStem(), path.Outward()], path.sideways.Heaviest.Value?.Assumptions ?? []);
    }

    private CheckedMember BeamOnCob() => Hardest("beam on cob", wholeHouse: false, (state, demand) =>
    {
        var pressed = Math.Max(0, state.Forces.PlateReaction.Sum());
        var sheet = new Worksheet("beam-on-cob");
        var h = Carry(demand, sheet);
        var legs = Legs();
        var rub = sheet.Step("friction-beam", "R_f", "mu*N", friction.Value * pressed, Dimension.Force, mechanics, Friction, Worksheet.Computed("N", "roof-presses", pressed, Dimension.Force));
        var held = legs is { } one
            ? sheet.Step("beam-held", "R", "max(R_f, n*Z)", Math.Max(rub.Value.Si, geometry.Tees.Count * one.Shear.Value), Dimension.Force, mechanics, rub,
                Worksheet.Computed("n", "tees-count", geometry.Tees.Count, Dimension.Count), Worksheet.Cited("Z", "earth-dowel", one.Shear, Dimension.Force))
            : rub;
        return (h.Value, held.Value, sheet);
    });

    private CheckedMember CobOnStem()
    {
        const string Subject = "cob on stem";
        var stem = geometry.House.Stem;
        if (stem.DampBreak is not null && stem.Keys is null)
        {
            return new("lateral-path", Subject, Message.Of("analysis.walltop.slip-plane", ("break", new Argument.Material(stem.DampBreak))));
        }

        return Hardest(Subject, wholeHouse: true, (state, demand) =>
        {
            var sheet = new Worksheet("cob-on-stem");
            var h = Carry(demand, sheet);
            if (stem.Keys is { } made)
            {
                var ring = geometry.Curve.Length - geometry.Openings.Where(o => o.Sill <= geometry.Wall.Base.Metres).Sum(o => o.Widest.Width);
                var count = Math.Floor(ring / made.Spacing.Metres + 1e-9);
                var one = cobBearing.Value * made.Height.Metres * made.Width.Metres;
                var held = sheet.Step(
                    "keys-held", "R", "n*p_a*h*w", count * one, Dimension.Force, mechanics, Worksheet.Computed("n", "keys-count", count, Dimension.Count),
                    Worksheet.Cited("p_a", "cob-allowed", cobBearing, Dimension.Stress), Worksheet.Given("h", "key-height", made.Height.Metres, Dimension.Length), Worksheet.Given("w", "key-width", made.Width.Metres, Dimension.Length));
                return (h.Value, held.Value, sheet);
            }

            var dead = state.Combination.Factor(LoadKind.Dead);
            var cob = dryCob * geometry.Measures.NetVolume;
            var pressed = Math.Max(0, dead * cob + state.Forces.PlateReaction.Sum());
            var n = sheet.Step(
                "stem-presses", "N", "k_D*G + N_r", pressed, Dimension.Force, mechanics, Worksheet.Code("k_D", "dead-factor", dead, Dimension.Number, state.Combination.Source),
                Worksheet.Computed("G", "wall-weight-dry", cob, Dimension.Force), Worksheet.Computed("N_r", "roof-presses", pressed - dead * cob, Dimension.Force));
            var rub = sheet.Step("friction-stem", "R_f", "mu*N", friction.Value * pressed, Dimension.Force, mechanics, Friction, n);
            return (h.Value, rub.Value, sheet);
        });
    }

    /// <summary>The wall held at its top against falling outward, at the tee that has most wall to hold: wind on half its height, or 0.4 S_DS k_a I W and never under 0.2 k_a I W of it.</summary>
    private CheckedMember Outward()
    {
        const string Subject = "wall outward";
        if (geometry.Tees.Count == 0)
        {
            return new("lateral-path", Subject, new Message("analysis.walltop.no-tees"));
        }

        if (Legs() is not { } leg)
        {
            return new("lateral-path", Subject, new Message("analysis.walltop.legs-small"));
        }

        var tees = geometry.Tees;
        // All of it catches the wind; only what is cob in its upper half shakes.
        var stretches = tees.Select((t, i) => Own(t, tees[(i + tees.Count - 1) % tees.Count], tees[(i + 1) % tees.Count])).ToArray();
        var european = LoadEditions.Parse(geometry.House.Site.Loads) == LoadEdition.En1990;
        var states = roof.Combined.States.Where(s => s.Combination.DeadIsLeast && !(european && s.Combination.Factor(LoadKind.Earthquake) > 0)).ToArray();
        if (states.Length == 0)
        {
            return new("lateral-path", Subject, roof.Combined.Missing.Count > 0 ? roof.Combined.Missing[0] : new Message("analysis.roof.none"));
        }

        var best = states.Select(s => (State: s, Load: PerMetre(s), Own: stretches.Max(x => s.Combination.Factor(LoadKind.Wind) > 0 ? x.All : x.Cob))).MaxBy(x => x.Load.Value.Si * x.Own);
        var sheet = best.Load.Sheet;
        var l = Worksheet.Computed("l", "tee-own-wall", best.Own, Dimension.Length);
        var h = sheet.Step("outward-on-tee", "H", "w*l", best.Load.Value.Si * best.Own, Dimension.Force, mechanics, best.Load.Symbol, l);
        return new("lateral-path", Subject, new MemberCheck(best.State.Combination.Key, best.State.Sense, h.Value, new Amount(leg.Shear.Value, Dimension.Force), sheet.Done));
    }

    /// <summary>Wall half-way to both neighbours: all of it, and without openings that reach into the upper half of the wall, m.</summary>
    private (double All, double Cob) Own(TeePlace tee, TeePlace before, TeePlace after)
    {
        var curve = geometry.Curve;
        var one = geometry.Tees.Count == 1;
        var from = tee.Station - (one ? curve.Length : curve.Wrap(tee.Station - before.Station)) / 2;
        var length = one ? curve.Length : tee.Station + curve.Wrap(after.Station - tee.Station) / 2 - from;
        var middle = geometry.Wall.Base.Metres + height / 2;
        var holes = geometry.Openings.Where(o => o.Head > middle).Sum(o =>
        {
            var begins = curve.Wrap(o.Widest.From - from);
            return Math.Max(0, Math.Min(length, begins + o.Widest.Width) - begins) + Math.Max(0, Math.Min(length, begins + o.Widest.Width - curve.Length));
        });
        var stretch = (tee.ToNext + before.ToNext) / 2 / length;
        return ((tee.ToNext + before.ToNext) / 2, Math.Max(0, length - holes) * stretch);
    }

    private (Amount Value, Symbol Symbol, Worksheet Sheet) PerMetre(CombinedState state)
    {
        var sheet = new Worksheet("wall-outward");
        var hw = Worksheet.Computed("h", "wall-height", height, Dimension.Length);
        if (state.Combination.Factor(LoadKind.Wind) is > 0 and var blow)
        {
            var p = Math.Max(roof.Wind.Value!.WallIn, -roof.Wind.Value.WallOut);
            var wind = sheet.Step(
                "outward-wind", "w", "k*p*h/2", blow * p * height / 2, Dimension.LineLoad, mechanics, Worksheet.Code("k", "wind-factor", blow, Dimension.Number, state.Combination.Source),
                Worksheet.Computed("p", "wind-on-wall", p, Dimension.AreaLoad), hw);
            return (wind.Value, wind, sheet);
        }

        var memory = Sources.Get("asce7-16-memory");
        var site = geometry.House.Site;
        var sds = site.SeismicSds ?? 0;
        var thickness = (geometry.Wall.ThicknessAt(geometry.Wall.Top.Metres) + geometry.Wall.ThicknessAt(geometry.Wall.Base.Metres)) / 2;
        var half = sheet.Step(
            "outward-weight", "W", "rho*g*t*h/2", TakeDown.CobDensity * UsUnits.Gravity * thickness * height / 2, Dimension.LineLoad, mechanics,
            Worksheet.Assumed("rho", "cob-density-standing", TakeDown.CobDensity, Dimension.Density, Sources.Get("wellerlehm")), UsUnits.GravitySymbol,
            Worksheet.Computed("t", "wall-thickness-mean", thickness, Dimension.Length), hw);
        var ka = 1 + Math.Min(1, width / UsUnits.Foot / 100);
        var ie = site.RiskCategory switch { "III" => 1.25, "IV" => 1.5, _ => 1.0 };
        var factor = state.Combination.Factor(LoadKind.Earthquake);
        var quake = sheet.Step(
            "outward-earthquake", "w", "k*max(0.4*S_DS, 0.2)*k_a*I_e*W", factor * Math.Max(0.4 * sds, 0.2) * ka * ie * half.Value.Si, Dimension.LineLoad, memory,
            Worksheet.Code("k", "earthquake-factor", factor, Dimension.Number, state.Combination.Source), Worksheet.Given("S_DS", "seismic-sds", sds, Dimension.Number),
            Worksheet.Code("k_a", "anchor-factor", ka, Dimension.Number, memory), Worksheet.Code("I_e", "seismic-importance", ie, Dimension.Number, memory), half);
        return (quake.Value, quake, sheet);
    }

    /// <summary>A leg as a steel dowel no thicker and no deeper than it; null for one that the table does not reach.</summary>
    private EarthDowel? Legs() => geometry.House.Tees is { Timber: { } timber } tees && geometry.Tees.Count > 0 ? EarthDowel.Within(timber.Metres, tees.Depth.Metres) : null;

    private Symbol Friction => Worksheet.Cited("mu", "friction-earth", friction, Dimension.Number);

    private static Symbol Carry(Calculated<double> demand, Worksheet sheet)
    {
        var step = demand.How.Steps[^1];
        return sheet.Step(step.Key, step.Result.Name, step.Equation, demand.Value, Dimension.Force, step.Source, [.. step.Symbols]);
    }

    private CheckedMember Hardest(string subject, bool wholeHouse, Func<CombinedState, Calculated<double>, (Amount Demand, Amount Capacity, Worksheet Sheet)> hold)
    {
        MemberCheck? worst = null;
        Message? missing = null;
        foreach (var state in roof.Combined.States.Where(s => s.Combination.DeadIsLeast))
        {
            var force = sideways.Force(state.Combination, state.Sense, wholeHouse ? SidewaysPart.House : SidewaysPart.Beam);
            if (force.Value is not { } demand)
            {
                missing ??= force.NotChecked;
                continue;
            }

            var (asked, there, sheet) = hold(state, demand);
            var check = new MemberCheck(state.Combination.Key, state.Sense, asked, new Amount(Math.Max(there.Si, 1e-6), there.Dimension), sheet.Done);
            worst = worst is null || check.Use > worst.Use ? check : worst;
        }

        return new CheckedMember("lateral-path", subject, worst is { } found ? found : missing ?? (roof.Combined.Missing.Count > 0 ? roof.Combined.Missing[0] : new Message("analysis.roof.none")));
    }
}
