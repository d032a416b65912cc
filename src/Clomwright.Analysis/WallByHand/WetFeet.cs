using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Mix;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;
using Clomwright.Geometry;
using EarthStrength = Clomwright.Analysis.Drying.Strength;
using WallTopOf = Clomwright.Analysis.WallTop.FromRoof;

namespace Clomwright.Analysis.WallByHand;

/// <summary>The foot of each pier soaked: through all of it, in a skin from one face or both, or all of one pier lost.</summary>
/// <remarks>Strength follows the water (<see cref="Drying.Strength"/>) from what the mix was measured or assumed at; the skin counts as nothing. The soaked foot weighs as wet cob.</remarks>
internal sealed class WetFeet(HouseGeometry geometry, PierChecks piers, IReadOnlyList<WallState> states, WallNumbers numbers, DryingNumbers drying, CobStrength cob)
{
    private static readonly Source Mechanics = Sources.Get("mechanics");

    /// <summary>Water contents of the curve, over rest, as shares of the way to the liquid limit.</summary>
    private static readonly double[] Way = [0, 0.2, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1];

    private double Safety => numbers["wall-wet-safety"];

    public WetFoot Of(IReadOnlyList<Stretch> stretches)
    {
        var strength = Of(cob.Characteristic);
        var feet = stretches.Select(s => Foot(s)).ToArray();
        var checks = feet.Select((f, i) => Check(stretches[i], f, strength)).ToArray();
        var worst = Enumerable.Range(0, feet.Length).MaxBy(i => checks[i].Check.Value!.Use);
        return new WetFoot
        {
            Height = numbers["wall-wet-height"], LiquidLimit = strength.LiquidLimit, PlasticLimit = strength.PlasticLimit, Rest = strength.Equilibrium,
            Piers = feet.Select((f, i) => Told(stretches[i].Address, f, strength, Lost(feet, i))).ToSequence(),
            Worst = stretches[worst].Address,
            Curve = Way.Select(k => strength.Equilibrium + k * (strength.LiquidLimit - strength.Equilibrium)).Select(w => new WetPoint(w, strength.Compressive(w), strength.Compressive(w) / feet[worst].Pressure)).ToSequence(),
            Checks = checks.ToSequence(),
        };
    }

    /// <summary>Strength by water for a mix that has a strength when dry; where that is no more than a wet earth has, the wet earth's.</summary>
    private EarthStrength Of(double dry)
    {
        var usual = WallRun.StrengthOf(drying, WallRun.EarthOf(drying));
        return usual with { Dry = Math.Max(dry, 2 * EarthStrength.Undrained(usual.Law, 0) * 1.001) };
    }

    /// <summary>The state that presses hardest on the part of the foot that is centred under the load.</summary>
    private SoakedFoot Foot(Stretch stretch) => states.Select(s => Soaked(stretch, s)).MaxBy(f => f.Pressure)!;

    private SoakedFoot Soaked(Stretch stretch, WallState state)
    {
        var at = piers.At(stretch, "foot", state);
        var heavier = WallTopOf.WetCob - Foundation.TakeDown.CobDensity * UsUnits.Gravity;
        var low = geometry.Wall.Base.Metres;
        var more = state.Dead * heavier * at.Cut.Area * Math.Min(numbers["wall-wet-height"], geometry.Wall.Top.Metres - low);
        // Strength combinations are factored: brought back by the factor on weight.
        var factored = state.Combination.Form == LoadForm.Strength ? Math.Max(1, state.Combination.Factor(LoadKind.Dead)) : 1;
        var load = (Math.Max(0, at.Load.Total) + more) / factored;
        var width = Math.Max(1e-3, at.Cut.Width - 2 * Math.Abs(at.Told.Along));
        return new(state, at, more, factored, load, width, Math.Max(1e-3, at.Told.Reduction));
    }

    private static double? Lost(SoakedFoot[] feet, int lost)
    {
        if (feet.Length < 3)
        {
            return null;
        }

        double Use(int i) => (feet[i].Load + feet[lost].Load / 2) / (feet[i].At.Cut.Area * feet[i].Reduction);
        return Math.Max(Use((lost + 1) % feet.Length), Use((lost + feet.Length - 1) % feet.Length));
    }

    private WetPier Told(string address, SoakedFoot foot, EarthStrength strength, double? lost)
    {
        var t = foot.At.Cut.Thickness;
        double Skin(double safety, int sign) => Math.Clamp((t - foot.Load * safety / (strength.Dry * foot.Width) - sign * 2 * Math.Abs(foot.At.Told.Across)) / 2, 0, t);
        return new WetPier(
            address, foot.Load, foot.Pressure, strength.WaterAt(foot.Pressure), strength.WaterAt(Safety * foot.Pressure), Skin(1, 1), Skin(Safety, 1), Skin(Safety, -1),
            lost is { } pressure ? strength.Dry / pressure : null);
    }

    private CheckedMember Check(Stretch stretch, SoakedFoot foot, EarthStrength strength)
    {
        var sheet = new Worksheet("wet-foot");
        var n = sheet.Step(
            "wet-load", "N", "(max(0, N_d) + N_w)/k_D", foot.Load, Dimension.Force, Mechanics, Worksheet.Computed("k_D", "dead-factor", foot.Factored, Dimension.Number), Worksheet.Computed("N_d", "pier-down", foot.At.Load.Total, Dimension.Force), Worksheet.Computed("N_w", "wet-heavier", foot.Heavier, Dimension.Force));
        Symbol area = Worksheet.Computed("A", "pier-area", foot.At.Cut.Area, Dimension.Area), phi = Worksheet.Computed("Phi", "pier-reduction", foot.Reduction, Dimension.Number);
        var pressure = sheet.Step("wet-pressure", "s", "N/(A*Phi)", foot.Pressure, Dimension.Stress, Mechanics, n, area, phi);
        var asked = sheet.Step("wet-asked", "s_F", "F*s", Safety * foot.Pressure, Dimension.Stress, Mechanics, numbers.Symbol("F", "wall-wet-safety"), pressure);
        var plastic = sheet.Step(
            "wet-strength", "f_P", "2*1700*35*Pa", strength.Compressive(strength.PlasticLimit), Dimension.Stress, Sources.Get("vardanega-haigh-2014"), Worksheet.Code("Pa", "pascal", 1, Dimension.Stress, Sources.Get("mechanics")));
        var source = cob.Assumption?.Source ?? Sources.Get("en-1990-d");
        var dry = Worksheet.Cited("f_k", "characteristic-strength", new Cited<double>(strength.Dry, source, cob.Tag), Dimension.Stress);
        var atPlastic = drying.Symbol("w_P", "drying-plastic-limit");
        _ = asked.Value.Si >= plastic.Value.Si
            ? sheet.Step(
                "wet-water", "w_F", "w_e + max(0, ln(f_k/s_F))*(w_P - w_e)/ln(f_k/f_P)", strength.WaterAt(asked.Value.Si), Dimension.Fraction, Sources.Get("drying-judgement"),
                Worksheet.Computed("w_e", "water-at-rest", strength.Equilibrium, Dimension.Fraction), dry, asked, atPlastic, plastic)
            : sheet.Step(
                "wet-water", "w_F", "w_P + (w_L - w_P)*ln(f_P/s_F)/ln(35)", strength.WaterAt(asked.Value.Si), Dimension.Fraction, Sources.Get("vardanega-haigh-2014"),
                atPlastic, drying.Symbol("w_L", "drying-liquid-limit"), plastic, asked);
        sheet.Step(
            "wet-skin", "d", "min(t, max(0, (t - N*F/(f_k*b_e) - 2*abs(e))/2))",
            Math.Clamp((foot.At.Cut.Thickness - foot.Load * Safety / (strength.Dry * foot.Width) - 2 * Math.Abs(foot.At.Told.Across)) / 2, 0, foot.At.Cut.Thickness), Dimension.Length, Mechanics,
            Worksheet.Computed("t", "pier-thickness", foot.At.Cut.Thickness, Dimension.Length), n, numbers.Symbol("F", "wall-wet-safety"),
            dry, Worksheet.Computed("b_e", "wet-width", foot.Width, Dimension.Length),
            Worksheet.Computed("e", "pier-across", foot.At.Told.Across, Dimension.Length));
        return new CheckedMember("wet-foot", stretch.Address, new MemberCheck(foot.State.Combination.Key, foot.State.Sense, asked.Value, plastic.Value, sheet.Done));
    }

    private sealed record SoakedFoot(WallState State, LoadedCut At, double Heavier, double Factored, double Load, double Width, double Reduction)
    {
        public double Pressure => Load / (At.Cut.Area * Reduction);
    }
}
