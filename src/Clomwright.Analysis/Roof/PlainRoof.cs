using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>Puts the parts of a plain roof together.</summary>
internal static class PlainRoof
{
    public static PlainResult Of(PlainLayout layout, RoofStages stages, RoofWeights weights, CombinedStates combined)
    {
        var all = stages.All();
        var states = all.Select(s => s.Forces.Value).OfType<RoofForces>().Concat(combined.States.Select(s => s.Forces)).ToArray();
        var thrust = states.Length > 0 ? states.Max(s => s.PlateSidewaysInSpace.Max()) : double.NaN;
        return new PlainResult
        {
            Kind = layout.Kind switch { PlainKind.Post => "post", PlainKind.Ring => "ring", PlainKind.Shed => "shed", _ => "gable" },
            Rafters = layout.Poles.Select(p => new RafterCard(p.Number, p.Pitch, p.Far, p.CutLength, Mass(p, weights), Mass(p, weights) is { } mass ? ReciprocalRoof.People(mass) : null)).ToSequence(),
            Places = layout.Poles,
            Stages = all,
            InnerLoad = layout.Kind switch
            {
                PlainKind.Post => states.Length > 0 ? states.Max(s => s.CrossingForce.Sum()) : double.NaN,
                PlainKind.Shed => states.Length > 0 ? states.Max(s => s.CrossingForce.Max()) : double.NaN,
                _ => 0,
            },
            Thrust = thrust,
            Hoop = layout.Kind == PlainKind.Ring ? Roof.Thrust.Hoop(thrust, layout.Poles.Min(p => p.CrossingAngle)) : 0,
            Combined = combined,
            Checks = Checks(layout, weights.Poles, combined, all),
        };
    }

    private static double? Mass(PoleGeometry pole, RoofWeights weights) => weights.Poles.Value is { } timber
        ? timber.Weight.Value * weights.Green / UsUnits.Gravity * Math.PI / 12 * (pole.Butt * pole.Butt + pole.Butt * pole.Tip + pole.Tip * pole.Tip) * pole.CutLength
        : null;

    private static Sequence<CheckedMember> Checks(PlainLayout layout, Known<Timber> known, CombinedStates combined, Sequence<RoofStage> stages)
    {
        string[] keys = ["rafter-bending", "rafter-shear", "rafter-sag"];
        if (known.Value is not { } timber || combined.States.Count == 0)
        {
            var because = known.NotChecked ?? combined.Missing[0];
            return keys.Select(k => new CheckedMember(k, "rafters", because)).ToSequence();
        }

        return
        [
            Stressed("rafter-bending", f => f.BendingStress, "bending-stress", "f_b", (sheet, c) => Strength.RoundBending(sheet, timber, c, layout.Poles.Max(p => p.Butt)), Math.Cbrt),
            Stressed("rafter-shear", f => f.ShearStress, "shear-stress", "f_v", (sheet, c) => Strength.Adjusted(sheet, timber, c, timber.Shear, "shear-strength", "F_v"), Math.Sqrt),
            Sag(layout, timber, stages),
        ];

        CheckedMember Stressed(string key, Func<RoofForces, Sequence<double>> stresses, string word, string symbol, Func<Worksheet, Combination, Symbol> allowed, Func<double, double> grow)
        {
            var state = combined.States.MaxBy(s => stresses(s.Forces).Max() / Strength.Factor(timber, s.Combination))!;
            var sheet = new Worksheet(key);
            var limit = allowed(sheet, state.Combination);
            var stress = Worksheet.Computed(symbol, word, stresses(state.Forces).Max(), Dimension.Stress);
            sheet.Step("rafter-use", "use", $"{symbol}/{limit.Name}", stress.Value.Si / limit.Value.Si, Dimension.Number, Sources.Get("mechanics"), stress, limit);
            var needed = layout.Poles.Max(p => p.Butt) * grow(stress.Value.Si / limit.Value.Si);
            return new CheckedMember(key, "rafters", new MemberCheck(state.Combination.Key, state.Sense, stress.Value, limit.Value, sheet.Done, Amount.Metres(needed)));
        }
    }

    private static CheckedMember Sag(PlainLayout layout, Timber timber, Sequence<RoofStage> stages)
    {
        Known<RoofForces> wet = stages.First(s => s.Key == "soilWet").Forces, snow = stages.First(s => s.Key == "soilWetSnow").Forces;
        if (wet.Value is not { } still || snow.Value is not { } more)
        {
            return new CheckedMember("rafter-sag", "rafters", wet.NotChecked ?? snow.NotChecked!);
        }

        var creep = timber.System == TimberSystem.Nds ? Nds.Creep(green: true) : 1 + Ec5.Creep(2, green: true);
        var source = Sources.Get("nds-memory");
        var length = layout.Poles.Max(p => p.LengthToFar);
        var sheet = new Worksheet("rafter-sag");
        var k = Worksheet.Code("K", "creep-factor", creep, Dimension.Number, source);
        var d = Worksheet.Computed("v_d", "drop-wet", still.Drop.Max(), Dimension.Length);
        var s = Worksheet.Computed("v_s", "drop-snow", more.Drop.Max() - still.Drop.Max(), Dimension.Length);
        var sag = creep * d.Value.Si + s.Value.Si;
        sheet.Step("rafter-sag", "v", "K*v_d + v_s", sag, Dimension.Length, source, k, d, s);
        return new CheckedMember("rafter-sag", "rafters", new MemberCheck("D + S", "even", Amount.Metres(sag), Amount.Metres(length / 180), sheet.Done));
    }
}
