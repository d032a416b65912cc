using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>Puts the parts of a reciprocal roof together.</summary>
internal static class ReciprocalRoof
{
    /// <summary>For a person to carry and lift, N: 50 lb.</summary>
    private const double Lift = 50 * UsUnits.PoundForce;

    public static ReciprocalResult Of(ReciprocalGeometry frame, SpatialEquilibrium space, RoofStages stages, RoofWeights weights, double plateAxisHeight, double settle)
    {
        var all = stages.All();
        var result = new ReciprocalResult
        {
            Geometry = frame,
            Poles = Cards(frame, weights),
            Stages = all,
            FromRing = stages.Order(fromRing: true),
            FromEave = stages.Order(fromRing: false),
            Joints = default,
            Loss = default,
            Raising = Raise(frame, stages, plateAxisHeight, settle),
        };
        var states = States(result).ToArray();
        return result with { Joints = Joints(frame, [.. space.Crossings], states), Loss = Lose(frame, states) };
    }

    /// <summary>Every state that is known, the steps of both orders of loading among them.</summary>
    private static IEnumerable<(string Key, RoofForces Forces)> States(ReciprocalResult result) =>
        result.Stages.Where(s => s.Forces.Is).Select(s => (s.Key, s.Forces.Value!))
            .Concat(result.FromRing.Value?.Steps.Select(s => ("fromRing", s.Forces)) ?? [])
            .Concat(result.FromEave.Value?.Steps.Select(s => ("fromEave", s.Forces)) ?? []);

    private static Sequence<PoleCard> Cards(ReciprocalGeometry frame, RoofWeights weights) => frame.Poles.Select((pole, i) =>
    {
        double? mass = weights.Poles.Value is { } timber ? timber.Weight.Value * weights.Green / UsUnits.Gravity * Volume(pole) : null;
        var eave = pole.EaveReach / pole.PitchCosine;
        return new PoleCard(
            pole.Number, frame.Next(i).Number, pole.Pitch, pole.Skew(frame.RingRadius), eave, eave + pole.LengthToNear, eave + pole.LengthToFar, pole.Length, pole.CutLength,
            mass, mass is { } kg ? People(kg) : null);
    }).OrderBy(c => c.Number).ToSequence();

    /// <summary>To carry and lift a pole, two at least.</summary>
    public static int People(double mass) => Math.Max(2, (int)Math.Ceiling(mass * UsUnits.Gravity / Lift));

    /// <summary>Of a pole tapering evenly, m3.</summary>
    private static double Volume(PoleGeometry pole) => Math.PI / 12 * (pole.Butt * pole.Butt + pole.Butt * pole.Tip + pole.Tip * pole.Tip) * pole.CutLength;

    private static Known<JointDemand> Joints(ReciprocalGeometry frame, Crossing[] crossings, (string Key, RoofForces Forces)[] states)
    {
        if (states.Length == 0)
        {
            return new Message("analysis.roof.no-timber");
        }

        var source = Sources.Get("timber-friction");
        var opening = states.MinBy(s => s.Forces.CrossingForce.Min());
        var least = opening.Forces.CrossingForce.Min();
        var slips = states.Select(s => (s.Key, Force: crossings.Select((c, i) => c.SlipForce(s.Forces.Governing[frame.Poles[i].Number - 1])).Max())).MaxBy(s => s.Force);
        var thrusts = states.SelectMany(s => Thrust.WithoutFriction(frame, crossings, InCarrying(frame, s.Forces.Governing))).ToArray();
        var leaning = states.Max(s => Thrust.AgainstRing(frame, InCarrying(frame, s.Forces.LoadMoment)).Max());
        return new JointDemand(
            crossings.Max(c => c.FrictionDemand), new Cited<double>(0.12, source, Tag.Measured), new Cited<double>(0.24, source, Tag.Measured),
            slips.Force, slips.Key, Math.Max(0, -least), least < 0 ? opening.Key : null,
            thrusts.Max(t => t.Force), thrusts.Max(t => t.Outward), leaning, Thrust.Hoop(leaning, frame.Poles.Min(p => p.CrossingAngle)));
    }

    private static Known<PoleLoss> Lose(ReciprocalGeometry frame, (string Key, RoofForces Forces)[] states)
    {
        if (states.Length == 0)
        {
            return new Message("analysis.roof.no-timber");
        }

        double[] near = frame.NearDistances, far = frame.FarDistances;
        var n = frame.Count;
        var (state, lost, prop) = states.SelectMany(s =>
        {
            var moment = InCarrying(frame, s.Forces.LoadMoment);
            return Enumerable.Range(0, n).Select(k => (s.Key, Lost: k, Prop: CyclicEquilibrium.ChainWithout(near, far, moment, k)[^1]));
        }).MaxBy(c => c.Prop);
        var orphan = (lost + n - 1) % n;
        return new PoleLoss(state, frame.Poles[lost].Number, frame.Poles[orphan].Number, prop, 2 * prop, prop * far[orphan]);
    }

    private static double[] InCarrying(ReciprocalGeometry frame, Sequence<double> clockwise) => [.. frame.Poles.Select(p => clockwise[p.Number - 1])];

    private static Raising Raise(ReciprocalGeometry frame, RoofStages stages, double plateAxisHeight, double settle)
    {
        var n = frame.Count;
        var first = Enumerable.Range(0, n).First(i => frame.Poles[i].Number == 1);
        var pole = frame.Poles[first];
        var order = Enumerable.Range(0, n).Select(k => frame.Poles[(first - k + n) % n].Number).ToSequence();
        var height = plateAxisHeight + pole.HeightAt(pole.Near) - pole.DiameterAt(pole.Near) / (2 * pole.PitchCosine);
        double? load = null;
        if (stages.Bare is { } bare)
        {
            var chain = CyclicEquilibrium.ChainTo(frame.NearDistances, frame.FarDistances, [.. bare.Select(l => l.PlateMoment)], first);
            load = chain[^1] * pole.Far / pole.Near;
        }

        return new Raising(order, 1, pole.Near, height, height + settle, load) { AxisHeight = plateAxisHeight };
    }
}
