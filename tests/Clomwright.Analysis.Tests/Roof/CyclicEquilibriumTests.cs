using Clomwright.Analysis.Roof;
using Clomwright.Testing;

namespace Clomwright.Analysis.Tests.Roof;

/// <summary>Plan equilibrium round the ring: hand-worked cases, three routes to the same numbers, and what must hold for any frame.</summary>
public sealed class CyclicEquilibriumTests
{
    private static double[] Of(int n, double value) => [.. Enumerable.Repeat(value, n)];

    // Rank analytic: w 1 N/m over 0..b, b 3 m, a 2.5 m: P = w b^2/(2 s), A = W, b/s = 6.
    [Theory]
    [InlineData(3)]
    [InlineData(8)]
    [InlineData(40)]
    public void EqualPoles_UnderALineLoad_GiveTheClosedForm(int n)
    {
        var p = CyclicEquilibrium.Forces(Of(n, 2.5), Of(n, 3), Of(n, 4.5));
        var a = CyclicEquilibrium.PlateReactions(Of(n, 3), p);
        Assert.All(p, v => Near.Relative(9, v, 1e-12));
        Assert.All(a, v => Near.Relative(3, v, 1e-12));
    }

    // Rank analytic: one pole of eight carries twice the load (c_0 3.0, W_0 6); worked with the influence numbers below.
    [Fact]
    public void OnePoleDoubled_PassesItsLoadDownTheRing()
    {
        double[] expectedP = [10.95457, 10.62881, 10.35734, 10.13112, 9.94260, 9.78550, 9.65458, 9.54548];
        double[] expectedA = [4.59091, 3.32576, 3.27147, 3.22622, 3.18852, 3.15710, 3.13092, 3.10910];
        var moment = Of(8, 4.5);
        moment[0] = 9;
        var load = Of(8, 3);
        load[0] = 6;
        var p = CyclicEquilibrium.Forces(Of(8, 2.5), Of(8, 3), moment);
        var a = CyclicEquilibrium.PlateReactions(load, p);
        for (var i = 0; i < 8; i++)
        {
            Near.Printed(expectedP[i], p[i], 1e-5);
            Near.Printed(expectedA[i], a[i], 1e-5);
        }

        Near.Relative(27, a.Sum(), 1e-14);
    }

    // Rank analytic: lambda^k/(1 - lambda^n) for lambda 5/6, n 8.
    [Fact]
    public void Influence_FadesDownTheRing()
    {
        double[] expected = [1.30305, 1.08587, 0.90489, 0.75408, 0.62840, 0.52367, 0.43639, 0.36366];
        for (var k = 0; k < 8; k++)
        {
            Near.Printed(expected[k], CyclicEquilibrium.Influence(5.0 / 6, 8, k), 1e-5);
        }
    }

    // Rank analytic: six unequal poles, worked by elimination by hand.
    [Fact]
    public void IrregularFrame_IsAsWorkedByHand()
    {
        double[] a = [2.4, 2.5, 2.6, 2.5, 2.3, 2.7], b = [3, 3.05, 3.1, 2.95, 2.9, 3.2], w = [3, 3, 4, 3, 2.5, 3.5], x = [1.4, 1.5, 1.5, 1.45, 1.4, 1.6];
        double[] expectedP = [8.4922, 8.4362, 9.0110, 9.1110, 8.4329, 8.8653], expectedA = [3.3731, 3.0560, 3.4252, 2.9000, 3.1781, 3.0676];
        double[] moment = [.. w.Zip(x, (load, arm) => load * arm)];
        var p = CyclicEquilibrium.Forces(a, b, moment);
        var plate = CyclicEquilibrium.PlateReactions(w, p);
        for (var i = 0; i < 6; i++)
        {
            Near.Printed(expectedP[i], p[i], 1e-4);
            Near.Printed(expectedA[i], plate[i], 1e-4);
        }
    }

    // Rank independent: closed form, elimination and recursion share no step. 1e-9 of the largest force: what a shallow ring (lambda near 1) leaves of 16 digits.
    [Fact]
    public void ThreeRoutes_OverRandomFramesAndLoads_Agree() => RandomRings.ForAll(
        ring =>
        {
            var closed = CyclicEquilibrium.Forces(ring.Near, ring.Far, ring.Moment);
            var eliminated = CyclicEquilibrium.ForcesByElimination(ring.Near, ring.Far, ring.Moment)!;
            var recursive = CyclicEquilibrium.ForcesByRecursion(ring.Near, ring.Far, ring.Moment);
            var size = closed.Max(Math.Abs);
            for (var i = 0; i < closed.Length; i++)
            {
                Assert.Equal(closed[i], eliminated[i], 1e-9 * size);
                Assert.Equal(closed[i], recursive[i], 1e-9 * size);
            }
        },
        iter: Counts.Of(200, 1000));

    // Rank property: whatever the ring does, the plate carries the whole load.
    [Fact]
    public void PlateReactions_OverRandomFrames_SumToTheLoad() => RandomRings.ForAll(
        ring =>
        {
            var p = CyclicEquilibrium.Forces(ring.Near, ring.Far, ring.Moment);
            var plate = CyclicEquilibrium.PlateReactions(ring.Load, p);
            Assert.Equal(ring.Load.Sum(), plate.Sum(), 1e-12 * (ring.Load.Sum(Math.Abs) + p.Sum(Math.Abs)));
        },
        iter: Counts.Of(200, 1000));

    // Rank analytic: the chain that arrives at the orphan when one of the twelve worked poles is lost; each entry c (1 - lambda^m)/(1 - lambda).
    [Fact]
    public void LosingOnePole_LeavesTheChainWorkedByHand()
    {
        double[] expected = [2.348, 4.401, 6.196, 7.766, 9.139, 10.340, 11.390, 12.309, 13.112, 13.814, 14.429];
        var frame = WorkedFrame.Geometry;
        var moment = Of(12, WorkedFrame.Load().PlateMoment / 1000);
        var chain = CyclicEquilibrium.ChainWithout(frame.NearDistances, frame.FarDistances, moment, 3);
        Assert.Equal(expected.Length, chain.Length);
        for (var i = 0; i < expected.Length; i++)
        {
            Near.Printed(expected[i], chain[i], 1e-3);
        }

        var whole = CyclicEquilibrium.Forces(frame.NearDistances, frame.FarDistances, moment)[0];
        Near.Relative(whole * (1 - Math.Pow(frame.Poles[0].Ratio, 11)), chain[^1], 1e-12);
        var propped = CyclicEquilibrium.ChainTo(frame.NearDistances, frame.FarDistances, moment, 0);
        Near.Relative(whole * (1 - Math.Pow(frame.Poles[0].Ratio, 12)), propped[^1], 1e-12);
    }

    private static readonly Gen<Ring> RandomRings = Gen.Int[3, 40].SelectMany(n => Gen.Select(
        Gen.Double[0.5, 0.99].Array[n], Gen.Double[1, 6].Array[n], Gen.Double[-5, 20].Array[n], Gen.Double[-1, 3].Array[n],
        (ratio, far, load, arm) => new Ring([.. ratio.Zip(far, (r, b) => r * b)], far, load, [.. load.Zip(arm, (w, x) => w * x)])));

    private sealed record Ring(double[] Near, double[] Far, double[] Load, double[] Moment);
}
