using Clomwright.Analysis.Roof;
using Clomwright.Numerics.Frames;
using Clomwright.Testing;

namespace Clomwright.Analysis.Tests.Roof;

/// <summary>The frame in space by the general solver against its exact equilibrium.</summary>
public sealed class SpatialFrameTests
{
    private static readonly Elasticity Wood = new(10e9, 0.65e9);

    // Rank independent: stiffness method with beams against three moment equations a pole; they share the geometry only.
    // 1e-6 of the largest force is what is promised; 5e-9 was seen: a pole's roll is far softer than its bending, and that costs digits.
    [Fact]
    public void GeneralSolver_OverRandomFrames_AgreesWithExactEquilibrium() => RandomFrames.Irregular.SelectMany(frame => Gen.Double[-500, 4000].Array[3 * frame.Count].Select(v => (frame, v))).ForAll(
        (frame, v) =>
        {
            var loads = frame.Poles.Select((p, i) => PoleLoad.Line([-p.EaveReach, 0, p.Near, p.TangentDistance, p.Far], x => v[3 * i] + v[3 * i + 1] * (p.TangentDistance - x)).WithPoint(3, v[3 * i + 2])).ToArray();
            double[] total = [.. loads.Select(l => l.Total)], moment = [.. loads.Select(l => l.PlateMoment)];
            var exact = SpatialEquilibrium.Of(frame)!.Solve(total, moment);
            var solved = SpatialFrame.Solve(frame, loads, Wood)!;
            var size = exact.Crossing.Max(f => f.Norm);
            for (var i = 0; i < frame.Count; i++)
            {
                Assert.Equal(0, (exact.Crossing[i] - solved.Crossing[i]).Norm, 1e-6 * size);
                Assert.Equal(0, (exact.Plate[i] - solved.Plate[i]).Norm, 1e-6 * size);
            }

            Assert.Equal(total.Sum(), exact.Plate.Sum(f => f.Z), 1e-9 * size);
        },
        iter: Counts.Of(100, 1000));
}
