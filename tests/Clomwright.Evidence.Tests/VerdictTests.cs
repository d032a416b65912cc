namespace Clomwright.Evidence.Tests;

public class VerdictTests
{
    private static readonly Length Limit = Length.FromFeet(2);
    private static readonly Length Hair = new(1);

    [Fact]
    public void AtMost_AtTheLimit_IsMet()
    {
        Assert.IsType<Verdict.Met>(Require.AtMost(Limit, Limit));
        Assert.IsType<Verdict.Met>(Require.AtMost(Limit - Hair, Limit));
        Assert.IsType<Verdict.FallsShort>(Require.AtMost(Limit + Hair, Limit));
    }

    [Fact]
    public void LessThan_AtTheLimit_FallsShort()
    {
        Assert.IsType<Verdict.FallsShort>(Require.LessThan(Limit, Limit));
        Assert.IsType<Verdict.Met>(Require.LessThan(Limit - Hair, Limit));
        Assert.IsType<Verdict.FallsShort>(Require.LessThan(Limit + Hair, Limit));
    }

    [Fact]
    public void AtLeast_AtTheLimit_IsMet()
    {
        Assert.IsType<Verdict.Met>(Require.AtLeast(Limit, Limit));
        Assert.IsType<Verdict.FallsShort>(Require.AtLeast(Limit - Hair, Limit));
        Assert.IsType<Verdict.Met>(Require.AtLeast(Limit + Hair, Limit));
    }

    [Fact]
    public void MoreThan_AtTheLimit_FallsShort()
    {
        Assert.IsType<Verdict.FallsShort>(Require.MoreThan(Limit, Limit));
        Assert.IsType<Verdict.FallsShort>(Require.MoreThan(Limit - Hair, Limit));
        Assert.IsType<Verdict.Met>(Require.MoreThan(Limit + Hair, Limit));
    }

    [Fact]
    public void NotANumber_IsNeverMetAndNeverShort()
    {
        foreach (var word in Enum.GetValues<ComparisonWord>())
        {
            foreach (var comparison in new Comparison[]
            {
                new(Amount.Number(double.NaN), word, Amount.Number(1)),
                new(Amount.Number(1), word, Amount.Number(double.NaN)),
                new(Amount.Number(double.NaN), word, Amount.Number(double.NaN)),
            })
            {
                Assert.False(comparison.Holds);
                Assert.IsType<Verdict.NotChecked>(Require.All(comparison));
            }
        }
    }

    [Fact]
    public void All_OneShortAndOneUnknown_FallsShort()
    {
        var low = new Comparison(Amount.Number(1), ComparisonWord.AtLeast, Amount.Number(2));
        var unknown = new Comparison(Amount.Number(double.NaN), ComparisonWord.AtLeast, Amount.Number(2));
        var held = new Comparison(Amount.Number(3), ComparisonWord.AtLeast, Amount.Number(2));
        Assert.Equal([low, unknown, held], Assert.IsType<Verdict.FallsShort>(Require.All(held, unknown, low)).Comparisons);
        Assert.IsType<Verdict.NotChecked>(Require.All(held, unknown));
    }

    [Fact]
    public void All_Met_KeepsTheTightestFirst()
    {
        var tight = new Comparison(Amount.Number(2), ComparisonWord.AtLeast, Amount.Number(2));
        var easy = new Comparison(Amount.Number(3), ComparisonWord.AtLeast, Amount.Number(2));
        Assert.Equal([tight, easy], Assert.IsType<Verdict.Met>(Require.All(easy, tight)).Comparisons);
        Assert.Equal(0, tight.Margin);
        Assert.Equal(0.5, easy.Margin);
    }

    [Fact]
    public void Margin_LimitOfZero_IsZeroAtItAndInfiniteBeyond()
    {
        Assert.Equal(0, new Comparison(Amount.Count(0), ComparisonWord.AtMost, Amount.Count(0)).Margin);
        Assert.Equal(double.NegativeInfinity, new Comparison(Amount.Count(1), ComparisonWord.AtMost, Amount.Count(0)).Margin);
    }

    [Fact]
    public void WhatWasNotCompared_CannotBeMet()
    {
        var low = new Comparison(Amount.Number(1), ComparisonWord.AtLeast, Amount.Number(2));
        var held = new Comparison(Amount.Number(3), ComparisonWord.AtLeast, Amount.Number(2));
        Assert.Throws<ArgumentException>(() => new Verdict.Met(Sequence.Create<Comparison>([])));
        Assert.Throws<ArgumentException>(() => new Verdict.Met([held, low]));
        Assert.Throws<ArgumentException>(() => new Verdict.FallsShort([held, low]));
        Assert.Throws<ArgumentException>(() => Require.All());
        Assert.Throws<ArgumentException>(() => Require.AtLeast(Amount.Number(1), Limit));
    }

    [Fact]
    public void WithoutKeyOrSource_NothingIsMade()
    {
        var source = new Source("practice", "Common practice, no source", Surety.Practice);
        var rule = new Rule("pier-width", new Message("t"));
        var clause = new Clause("common-practice", "", "", ClauseStatus.Computed, new Message("m"), source);
        var verdict = Require.AtLeast(Limit, Limit);
        Assert.Throws<ArgumentException>(() => new Source(" ", "x", Surety.Seen));
        Assert.Throws<ArgumentException>(() => source with { Title = "" });
        Assert.Throws<ArgumentNullException>(() => new Cited<Length>(Limit, null!, Tag.Code));
        Assert.Throws<ArgumentException>(() => new Assumption("", new Message("w"), Amount.Number(1), source));
        Assert.Throws<ArgumentNullException>(() => new Assumption("a", new Message("w"), Amount.Number(1), null!));
        Assert.Throws<ArgumentException>(() => new Rule("", new Message("t")));
        Assert.Throws<ArgumentNullException>(() => clause with { Source = null! });
        Assert.Throws<ArgumentNullException>(() => new Finding(null!, clause, "pier", verdict, [], []));
        Assert.Throws<ArgumentNullException>(() => new Finding(rule, null!, "pier", verdict, [], []));
        Assert.Throws<ArgumentException>(() => new Finding(rule, clause, "", verdict, [], []));
        Assert.Throws<ArgumentException>(() => new Message(""));
        Assert.Throws<ArgumentException>(() => new Calculation("k", new Message("t"), []));
    }

    [Fact]
    public void Clause_WithAndWithoutEdition_IsAdoptedByName()
    {
        var source = new Source("s", "S", Surety.Seen);
        Assert.Equal("irc-cob@2021", new Clause("irc-cob", "2021", "AU106", ClauseStatus.Computed, new Message("m"), source).Adopted);
        Assert.Equal("common-practice", new Clause("common-practice", "", "", ClauseStatus.Computed, new Message("m"), source).Adopted);
    }
}
