using Clomwright.Testing;
namespace Clomwright.Evidence.Tests;

public class LengthTests
{
    /// <summary>Rank: analytic. Held in metre doubles, 28 of these 324 walls exactly at the limit come out above it (350 mm x 6 is one).</summary>
    [Fact]
    public void Over_HeightExactlyAWholeMultipleOfThickness_IsExactlyThatMultiple()
    {
        var (walls, wrongInDoubles) = (0, 0);
        foreach (var limit in new[] { 6, 8, 10, 12 })
        {
            for (var thickness = 200; thickness <= 1000; thickness += 10)
            {
                walls++;
                var wall = Length.FromMillimetres(thickness);
                var ratio = Length.FromMillimetres(thickness * limit).Over(wall);
                Assert.Equal(limit, ratio.Si);
                Assert.IsType<Verdict.Met>(Require.AtMost(ratio, Amount.Number(limit)));
                wrongInDoubles += thickness * limit / 1000.0 / (thickness / 1000.0) > limit ? 1 : 0;
            }
        }

        Assert.Equal(324, walls);
        Assert.Equal(28, wrongInDoubles);
    }

    /// <summary>Rank: analytic. In metre doubles more than half of these sums miss.</summary>
    [Fact]
    public void Sum_OfEqualLifts_IsTheWall()
    {
        var walls = 0;
        foreach (var n in Enumerable.Range(2, 18))
        {
            for (var lift = 150; lift <= 600; lift += 10)
            {
                walls++;
                var sum = Enumerable.Repeat(Length.FromMillimetres(lift), n).Aggregate((a, b) => a + b);
                Assert.Equal(Length.FromMillimetres(n * lift), sum);
            }
        }

        Assert.Equal(828, walls);
    }

    [Fact]
    public void SixtyFourths_OfAnInch_AreExact()
    {
        Assert.Equal(0, Length.PerInch % 64);
        Assert.Equal(Length.FromInches(1), Enumerable.Repeat(new Length(Length.PerInch / 64), 64).Aggregate((a, b) => a + b));
    }

    [Fact]
    public void Metres_OfWholeMillimetres_AreTheNearestDouble()
    {
        for (var mm = 1; mm <= 10_000; mm++)
        {
            Assert.Equal(mm / 1000.0, Length.FromMillimetres(mm).Metres);
            Assert.Equal(Length.FromMillimetres(mm), Length.Nearest(mm / 1000.0));
        }
    }

    [Fact]
    public void Arithmetic_BeyondTheRange_Throws()
    {
        var longest = new Length(long.MaxValue);
        var lowest = new Length(long.MinValue);
        Assert.Throws<OverflowException>(() => longest + new Length(1));
        Assert.Throws<OverflowException>(() => lowest - new Length(1));
        Assert.Throws<OverflowException>(() => -lowest);
        Assert.Throws<OverflowException>(() => longest * 2);
        Assert.Throws<OverflowException>(() => Length.Nearest(double.NaN));
    }

    [Theory]
    [InlineData(10, 4, 12)]
    [InlineData(-10, 4, -12)]
    [InlineData(9, 4, 8)]
    [InlineData(-9, 4, -8)]
    [InlineData(8, 4, 8)]
    [InlineData(1, 3, 0)]
    [InlineData(2, 3, 3)]
    [InlineData(-2, 3, -3)]
    public void RoundedTo_Step_IsTheNearestAwayFromZeroInTheMiddle(long value, long step, long expected) =>
        Assert.Equal(expected, new Length(value).RoundedTo(new(step)).Nanometres);

    [Fact]
    public void RoundedTo_NeverMovesMoreThanHalfAStepAndLandsOnOne()
    {
        Gen.Select(Gen.Long[-1L << 60, 1L << 60], Gen.Long[1, 1L << 40]).ForAll((value, step) =>
        {
            var rounded = new Length(value).RoundedTo(new(step)).Nanometres;
            return rounded % step == 0 && Math.Abs(rounded - value) <= (step + 1) / 2;
        });
    }
}
