using Clomwright.Analysis.Roof;
using Clomwright.Numerics.Frames;
using Clomwright.Testing;

namespace Clomwright.Analysis.Tests.Roof;

/// <summary>A strapped frame after the loss of a pole.</summary>
public sealed class HangingFrameTests
{
    private const double Sine = 0.30901699437494745, Cosine30 = 0.86602540378443865;

    // Rank analytic: twelve poles at 18 degrees, r_t/R_w = 0.72711/3, skew 14.027 degrees. In plan the strap makes 30 degrees with both poles: it lifts sin 18 (1 - cos 30) = 0.041402 where the deck holds square to the pole, and
    // sin 18 (1 - cos(45 -+ 14.027)/cos(15 -+ 14.027)) = 0.04403 and 0.12717 where the bay is flat; the least governs. Half of what pulls is square to the pole, times cos 18.
    [Fact]
    public void Strap_OfTwelveEqualPoles_LiftsAsTheClosedForm()
    {
        var hanging = HangingFrame.Of(WorkedFrame.Geometry, Enumerable.Repeat(7290.3, 12).ToArray(), 3, 2)!;
        Near.Relative(Sine * (1 - Cosine30), hanging.Lift, 1e-9);
        Near.Relative(0.5 * Math.Sqrt(1 - Sine * Sine), hanging.Along, 1e-9);
        Near.Relative(hanging.Crossing[^1], hanging.Tension * hanging.Lift, 1e-12);
    }

    // Rank independent: the forces at the crossings by elimination of the eleven equations, and the hanging pole in space by vectors: no moment about its foot is left square to it.
    [Fact]
    public void PolesLeft_AreInEquilibrium_InPlanAndInSpace()
    {
        var frame = WorkedFrame.Geometry;
        double[] moment = [.. Enumerable.Range(0, 12).Select(i => 5000 + 400.0 * i)];
        const int lost = 3;
        var hanging = HangingFrame.Of(frame, moment, lost, 2)!;
        double[] left = [.. Enumerable.Range(0, 11).Select(k => (lost + 1 + k) % 12).Select(i => 2 * (moment[i] + (i is 2 or 4 ? moment[lost] / 2 : 0)))];
        var near = frame.NearDistances.Take(11).ToArray();
        var far = frame.FarDistances.Take(11).ToArray();
        var direct = CyclicEquilibrium.ForcesByElimination(near, far, left)!;
        Assert.All(Enumerable.Range(0, 11), k => Near.Relative(direct[k], hanging.Crossing[k], 1e-9));

        PoleGeometry hangs = frame.Poles[2], gone = frame.Poles[lost];
        var foot = hangs.AxisAt(0);
        var along = new Vector3(hangs.Along.East, hangs.Along.North, 0);
        var square = new Vector3(0, 0, 1).Cross(along);
        var strap = hanging.Tension * new Vector3(gone.Along.East, gone.Along.North, gone.Slope).Unit();
        var deck = -strap.Dot(square) * square;
        var weight = new Vector3(0, 0, -left[10] / 1);
        var sum = (hangs.AxisAt(1) - foot).Cross(weight)
            + (hangs.AxisAt(hangs.Near) - foot).Cross(new Vector3(0, 0, -hanging.Crossing[9]))
            + (hangs.AxisAt(hangs.Far) - foot).Cross(strap + deck);
        Assert.Equal(0, sum.Norm, 1e-8 * left[10]);
        Near.Relative(hanging.Tension * hanging.Along, Math.Abs(strap.Dot(square)), 1e-9);
    }

    // Rank property: what cannot hang says so and nothing crashes; what can is pulled by more than it lifts, and by more than a prop would carry.
    [Fact]
    public void RandomFrames_HangOrSayThatTheyCannot() => RandomFrames.Irregular.ForAll(
        frame =>
        {
            double[] moment = [.. Enumerable.Range(0, frame.Count).Select(i => 1000.0 + 37 * i)];
            for (var lost = 0; lost < frame.Count; lost++)
            {
                if (HangingFrame.Of(frame, moment, lost, 1) is { } hanging)
                {
                    Assert.Equal(frame.Count - 1, hanging.Crossing.Count);
                    Assert.True(hanging.Tension > hanging.Crossing[^1]);
                    Assert.True(hanging.Crossing[^1] > CyclicEquilibrium.ChainWithout(frame.NearDistances, frame.FarDistances, moment, lost)[^1]);
                }
            }
        },
        iter: Counts.Of(60, 1_000));
}
