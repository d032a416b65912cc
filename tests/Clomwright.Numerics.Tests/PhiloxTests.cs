using Clomwright.Numerics;

namespace Clomwright.Numerics.Tests;

/// <summary>Random numbers by place.</summary>
public sealed class PhiloxTests
{
    // Rank published: known answers that the authors of the generator give out with it (Random123, philox 4x32-10): nothing, everything, digits of pi. Recalled; three words of 128 bits cannot be met by chance.
    [Theory]
    [InlineData(0u, 0u, 0u, 0u, 0u, 0u, 0x6627e8d5u, 0xe169c58du, 0xbc57ac4cu, 0x9b00dbd8u)]
    [InlineData(0xffffffffu, 0xffffffffu, 0xffffffffu, 0xffffffffu, 0xffffffffu, 0xffffffffu, 0x408f276du, 0x41c83b0eu, 0xa20bc7c6u, 0x6d5451fdu)]
    [InlineData(0x243f6a88u, 0x85a308d3u, 0x13198a2eu, 0x03707344u, 0xa4093822u, 0x299f31d0u, 0xd16cfe09u, 0x94fdccebu, 0x5001e420u, 0x24126ea1u)]
    public void Blocks_AreTheKnownAnswers(uint a, uint b, uint c, uint d, uint k, uint l, uint w, uint x, uint y, uint z) =>
        Assert.Equal((w, x, y, z), Philox.Block((a, b, c, d), (k, l)));

    // Rank analytic: moments of the uniform and the normal distribution; five standard errors of each for 100 000 numbers, which a right generator leaves once in a million.
    [Fact]
    public void Moments_AreThoseOfTheDistribution()
    {
        const int Count = 100_000;
        var philox = new Philox(20270601);
        double[] uniform = [.. Enumerable.Range(0, Count).Select(i => philox.Uniform(3, (ulong)i))];
        double[] normal = [.. Enumerable.Range(0, Count).Select(i => philox.Normal(4, (ulong)i))];
        var error = 5 / Math.Sqrt(Count);
        Assert.Equal(.5, uniform.Average(), error / Math.Sqrt(12));
        Assert.Equal(1.0 / 3, uniform.Average(u => u * u), error * Math.Sqrt(4.0 / 45));
        Assert.Equal(0, normal.Average(), error);
        Assert.Equal(1, normal.Average(n => n * n), error * Math.Sqrt(2));
        Assert.Equal(3, normal.Average(n => n * n * n * n), error * Math.Sqrt(96));
        Assert.All(uniform, u => Assert.InRange(u, 0, 1 - 1e-17));
        // Neighbours in place and in stream do not go together.
        Assert.Equal(0, Enumerable.Range(0, Count - 1).Average(i => normal[i] * normal[i + 1]), error);
        Assert.Equal(0, Enumerable.Range(0, Count).Average(i => normal[i] * philox.Normal(5, (ulong)i)), error);
    }
}
