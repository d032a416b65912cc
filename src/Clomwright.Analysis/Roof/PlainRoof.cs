using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>Puts the parts of a plain roof together.</summary>
internal static class PlainRoof
{
    public static PlainResult Of(PlainLayout layout, RoofStages stages, RoofWeights weights, CombinedStates combined, Building.BondBeam? beam, Building.SeatMade? seat)
    {
        var all = stages.All();
        var states = all.Select(s => s.Forces.Value).OfType<RoofForces>().Concat(combined.States.Select(s => s.Forces)).ToArray();
        var thrust = states.Length > 0 ? states.Max(s => s.PlateSidewaysInSpace.Max()) : double.NaN;
        return new PlainResult
        {
            Kind = layout.Kind switch { PlainKind.Post => "post", PlainKind.Ring => "ring", PlainKind.Shed => "shed", _ => "gable" },
            Rafters = layout.Poles.Select(p => new RafterCard(p.Number, p.Pitch, p.Far, p.CutLength, Mass(p, weights), Mass(p, weights) is { } mass ? ReciprocalRoof.People(mass) : null)).ToSequence(),
            Places = layout.Poles,
            Feet = layout.Feet.ToSequence(),
            Ends = layout.Ends.ToSequence(),
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
            Checks = RafterChecks.Of(layout, weights.Poles, combined, all, beam, seat),
            StageChecks = combined.States.Count == 0 || weights.Poles.Value is not { } timber ? [] : RafterChecks.Of(layout, timber, new CombinedStates(StageStates.Of(all, timber.System), []), all, beam, seat),
        };
    }

    private static double? Mass(PoleGeometry pole, RoofWeights weights) => weights.Poles.Value is { } timber
        ? timber.Weight.Value * weights.Green / UsUnits.Gravity * Math.PI / 12 * (pole.Butt * pole.Butt + pole.Butt * pole.Tip + pole.Tip * pole.Tip) * pole.CutLength
        : null;
}
