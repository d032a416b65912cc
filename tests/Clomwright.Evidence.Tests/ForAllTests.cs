using Clomwright.Testing;

namespace Clomwright.Evidence.Tests;

/// <summary>The runner of all random tests: it must be able to fail, and a run must be repeated by its seed.</summary>
public class ForAllTests
{
    private static readonly Gen<int> Numbers = Gen.Int[0, 1_000_000];

    // By hand: of numbers up to a million some are odd; the one that is named is odd and follows from the seed and its number.
    [Fact]
    public void WhatDoesNotHold_IsRefusedWithItsNumberAndSeed()
    {
        var refused = Assert.Throws<InvalidOperationException>(() => Numbers.ForAll(n => n % 2 == 0));
        var number = int.Parse(refused.Message.Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture);
        Assert.Contains($"seed {Counts.Seed} ", refused.Message, StringComparison.Ordinal);
        Assert.Equal(1, Drawn.One(Numbers, Counts.Seed, number) % 2);
    }

    // By hand: the same numbers are drawn every time, as many as asked.
    [Fact]
    public void WhatHolds_IsDrawnAsOftenAsAsked_AndAlikeEveryTime()
    {
        List<int> once = [], again = [];
        Numbers.ForAll(once.Add, iter: 50, threads: 1);
        Numbers.ForAll(again.Add, iter: 50, threads: 1);
        Assert.Equal(50, once.Count);
        Assert.Equal(once, again);
        Assert.InRange(once.Distinct().Count(), 45, 50);
    }
}
