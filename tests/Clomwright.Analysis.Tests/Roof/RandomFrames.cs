using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Tests.Roof;

/// <summary>Random reciprocal frames with 3 to 40 unequal poles on an oval plate, turning either way.</summary>
internal static class RandomFrames
{
    /// <summary>Plans; a few of them cannot stand.</summary>
    public static Gen<ReciprocalPlan> IrregularPlans { get; } = Gen.Int[3, 40].SelectMany(n => Gen.Select(
        Gen.Double[2, 4], Gen.Double[0.8, 1.25], Gen.Double[10, 30], Gen.Double[0.1, 0.25], Gen.Double[-0.2, 0.2].Array[n], Gen.Double[0.85, 1.15].Array[n]).Select(
        (size, oval, degrees, thick, shift, vary) =>
        {
            var ring = UniformReciprocal.RingRadius(n, thick, degrees * Math.PI / 180)!.Value;
            var plate = size * ring / Math.Cos(Math.PI / n) + 0.5;
            var poles = new PoleOnPlan[n];
            for (var i = 0; i < n; i++)
            {
                var bearing = 2 * Math.PI * (i + shift[i]) / n;
                poles[i] = new PoleOnPlan(
                    new PlanPoint(plate * oval * Math.Sin(bearing), plate * Math.Cos(bearing)), 0.6 * vary[i], 1.1 * thick * vary[i], 0.9 * thick * vary[i], 0.05 * thick, 0, 0.2);
            }

            return new ReciprocalPlan(default, ring, Turn.Clockwise, Sequence.Create<PoleOnPlan>(poles));
        }));

    /// <summary>Frames that stand, turning either way.</summary>
    public static Gen<ReciprocalGeometry> Irregular { get; } = Gen.Select(IrregularPlans, Gen.Bool).Select((plan, clockwise) =>
        ReciprocalFrame.Of(plan with { Turn = clockwise ? Turn.Clockwise : Turn.Anticlockwise })).Where(s => s is ReciprocalShape.Frame).Select(s => ((ReciprocalShape.Frame)s).Geometry);
}
