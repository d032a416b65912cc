using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Testing;

namespace Clomwright.Analysis.Tests.Roof;

/// <summary>Frames on any plate, frames that cannot stand, and frames that nobody would build.</summary>
public sealed class ReciprocalFrameTests
{
    private static readonly Gen<double> Odd = Gen.OneOf(Gen.Double[0.01, 5], Gen.Double[-1, 30], Gen.Const(0.0), Gen.Const(-1.0), Gen.Const(double.NaN), Gen.Const(double.PositiveInfinity), Gen.Const(1e-12), Gen.Const(1e12));

    // Rank property: no count, ring or diameter makes it crash; what stands is finite, what cannot says why.
    [Fact]
    public void AnyNumbersAtAll_GiveAFrameOrAReason() => Gen.Select(Gen.Int[0, 60], Odd, Odd, Odd, Odd, Odd, Odd).ForAll(
        drawn =>
        {
            var (n, plate, ring, butt, tip, notch, reach) = drawn;
            var poles = Enumerable.Range(0, n).Select(i => new PoleOnPlan(
                new PlanPoint(plate * Math.Sin(i * 2 * Math.PI / n), plate * (1 + 0.1 * (i % 3)) * Math.Cos(i * 2 * Math.PI / n)), reach, butt, tip, notch)).ToSequence();
            switch (ReciprocalFrame.Of(new ReciprocalPlan(default, ring, n % 2 == 0 ? Turn.Clockwise : Turn.Anticlockwise, poles)))
            {
                case ReciprocalShape.Frame frame:
                    Assert.All(frame.Geometry.Poles, p => Assert.True(double.IsFinite(p.Slope) && p.Slope > 0 && p.Near > 0 && p.Near < p.Far));
                    break;
                case ReciprocalShape.Impossible why:
                    Assert.StartsWith("analysis.reciprocal.", why.Because.Key, StringComparison.Ordinal);
                    break;
            }
        },
        iter: Counts.Of(1000, 10_000));

    // Rank independent: the least distance between consecutive axes, worked from the two lines in space, comes back as delta. 1e-9: slopes are iterated to rounding.
    [Fact]
    public void ConsecutiveAxes_OfRandomIrregularFrames_PassAtTheirSeparation() => RandomFrames.Irregular.ForAll(
        frame =>
        {
            for (var i = 0; i < frame.Count; i++)
            {
                var upper = frame.Poles[i];
                var lower = frame.Next(i);
                var n = (upper.AxisAt(1) - upper.AxisAt(0)).Cross(lower.AxisAt(1) - lower.AxisAt(0));
                Near.Relative(upper.Separation, Math.Abs((upper.AxisAt(0) - lower.AxisAt(0)).Dot(n)) / n.Norm, 1e-9);
                Assert.Equal(upper.HeightAt(upper.Far), lower.HeightAt(lower.Near) + upper.Rise, 1e-9);
                var gap = upper.AxisAt(upper.Far) - lower.AxisAt(lower.Near);
                Assert.Equal(0, Math.Sqrt(gap.X * gap.X + gap.Y * gap.Y), 1e-9);
            }
        },
        iter: Counts.Of(100, 1000));

    // Rank property: a mirrored plan with the other turn is the mirrored frame.
    [Fact]
    public void MirroredPlan_WithTheOtherTurn_HasTheSamePitches() => RandomFrames.IrregularPlans.ForAll(
        plan =>
        {
            var mirrored = plan with
            {
                Turn = Turn.Anticlockwise,
                Poles = plan.Poles.Reverse().Select(p => p with { Foot = new PlanPoint(-p.Foot.East, p.Foot.North) }).ToSequence(),
            };
            if (ReciprocalFrame.Of(plan) is ReciprocalShape.Frame { Geometry: var one })
            {
                var other = Assert.IsType<ReciprocalShape.Frame>(ReciprocalFrame.Of(mirrored)).Geometry;
                for (var i = 0; i < one.Count; i++)
                {
                    Near.Relative(one.Poles[i].Slope, other.Poles[i].Slope, 1e-9);
                }
            }
        },
        iter: Counts.Of(100, 1000));

    [Fact]
    public void RingAsWideAsTheWall_SaysSo() => Refused("analysis.reciprocal.ring-past-plate", ReciprocalPlan.Uniform(8, 3, 3.5, 3.2, 0.15));

    [Fact]
    public void TwoPoles_AreTooFew() => Refused("analysis.reciprocal.too-few", ReciprocalPlan.Uniform(2, 3, 3.5, 0.5, 0.15));

    [Fact]
    public void ThickPolesRoundASmallRing_SayHowMuchRingTheyNeed() => Refused("analysis.reciprocal.too-tight", ReciprocalPlan.Uniform(12, 3, 3.5, 0.3, 0.2));

    [Fact]
    public void ThreePolesRoundAWideRing_CrossOutsideTheWall() => Refused("analysis.reciprocal.crossing-outside", ReciprocalPlan.Uniform(3, 3, 3.5, 1.6, 0.15));

    [Fact]
    public void NotchesAsDeepAsThePoles_LeaveNothing() => Refused("analysis.reciprocal.notch", ReciprocalPlan.Uniform(12, 3, 3.5, 0.8, 0.2, 0.1));

    // Rank analytic: the frame exists just above r_t = delta/(2 sin(pi/n)) and not just below.
    [Fact]
    public void SmallestRing_IsWhereThePolesStandUpright()
    {
        var least = 0.15 / (2 * Math.Sin(Math.PI / 12));
        Assert.IsType<ReciprocalShape.Frame>(ReciprocalFrame.Of(ReciprocalPlan.Uniform(12, 5, 5, least * 1.001, 0.15)));
        Refused("analysis.reciprocal.too-tight", ReciprocalPlan.Uniform(12, 5, 5, least * 0.999, 0.15));
    }

    private static void Refused(string key, ReciprocalPlan plan) =>
        Assert.Equal(key, Assert.IsType<ReciprocalShape.Impossible>(ReciprocalFrame.Of(plan)).Because.Key);
}
