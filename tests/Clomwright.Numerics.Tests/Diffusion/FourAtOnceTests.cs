using System.Runtime.Intrinsics;
using Clomwright.Numerics.Diffusion;
using Clomwright.Testing;

namespace Clomwright.Numerics.Tests.Diffusion;

/// <summary>What is worked four at once is what one at a time gives, to the last bit, also beyond both ends of the grid.</summary>
public sealed class FourAtOnceTests
{
    private static readonly Medium Curved = new(u => 0.02 * Math.Exp(3 * u), u => u * u, 0.1, 1.5, 37, 0.25);

    // Rank: property, of the formulas for one state, which SlabTests hold to published solutions.
    [Fact]
    public void Medium_AtFourStates_IsThatAtEach() => Gen.Double[-1, 3].Array[4].ForAll(
        u =>
        {
            Curved.Evaluate(Vector256.Create(u), 0.7, 1.3, out var potential, out var slope, out var b, out var slopeB);
            for (var lane = 0; lane < u.Length; lane++)
            {
                Curved.Evaluate(u[lane], 0.7, 1.3, out var p, out var s, out var bOne, out var sb);
                Assert.Equal((p, s, bOne, sb), (potential[lane], slope[lane], b[lane], slopeB[lane]));
            }
        },
        iter: Counts.Of(500, 50_000));

    // Rank: property.
    [Fact]
    public void Exchange_AtFourStates_IsThatAtEach() => Gen.Double[-1, 3].Array[8].ForAll(
        n =>
        {
            var exchange = new Exchange(2, 0.4, 0.5, 3, 1.2);
            exchange.Evaluate(Vector256.Create(n), Vector256.Create(n, 4), Vector256.Create(0.3), out var flow, out var slope);
            for (var lane = 0; lane < 4; lane++)
            {
                exchange.Evaluate(n[lane], n[4 + lane], 0.3, out var f, out var s);
                Assert.Equal((f, s), (flow[lane], slope[lane]));
            }
        },
        iter: Counts.Of(500, 50_000));
}
