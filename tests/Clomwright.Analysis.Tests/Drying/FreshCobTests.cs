using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Weather;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Testing;

namespace Clomwright.Analysis.Tests.Drying;

/// <summary>Cob on the day it is laid, frost while it is young, and the few dates that findings ask for.</summary>
public sealed class FreshCobTests
{
    private static DryingNumbers At(double index) => DryingNumbers.Of([new("drying-liquidity-tossed", index), new("drying-free-safety", 1)]);

    // Rank independent: 2 su/gamma of the table for LL 32, PL 18, weight 19 kN/m3 (Vardanega and Haigh 2014), computed there by hand at a wet density of 1937 kg/m3; here it is taken out. 1 %: the table's figures.
    [Theory]
    [InlineData(22, 2.27)]
    [InlineData(24, 1.36)]
    [InlineData(26, .82)]
    [InlineData(28, .49)]
    public void TheHeightItStands_IsThatOfTheTable(double percent, double height)
    {
        var numbers = At((percent / 100 - .18) / .14);
        Near.Relative(height, FreshCobs.Of(_ => numbers, LiftMethod.Tossed, []).Stands.Low!.Value * numbers["drying-dry-density"] * (1 + percent / 100) * 9.80665 / 19_000, .01);
    }

    // Rank analytic: strength over weight is the height it stands over the height of the lift; equal lifts are told together; the printed equations give the numbers again.
    [Fact]
    public void Lifts_AreTheHeightThatStandsOverTheirs()
    {
        var numbers = At(.5);
        var fresh = FreshCobs.Of(_ => numbers, LiftMethod.Tossed, [.3, .3, .25]);
        Assert.Equal([(1, 2), (3, 3)], fresh.Lifts.Select(l => (l.First, l.Last)));
        Assert.Equal(fresh.Stands.Low!.Value / .3, fresh.Lifts[0].OverWeight, 1e-12);
        Assert.Equal(Math.Min(.4572, fresh.Stands.Low.Value), fresh.Today.Low!.Value, 1e-12);
        Assert.Equal(fresh.Lifts[1].OverWeight, fresh.Calculations.Single(c => c.Key == "lift-foot" && c.Place == "lift 3").Steps[^1].Result.Value.Si, 1e-12);
        Assert.All(fresh.Calculations, c => Assert.Empty(CalculationCheck.Mismatches(c, 1e-9)));
        Printed.HaveWords(fresh.Assumptions);
    }

    // Rank published: Gauss's distribution at round numbers (Abramowitz and Stegun, table 26.1).
    [Theory]
    [InlineData(0, .5)]
    [InlineData(1, .8413447)]
    [InlineData(-1, .1586553)]
    [InlineData(2, .9772499)]
    [InlineData(-3, .0013499)]
    public void Gauss_IsThatOfTheTable(double z, double share) => Assert.Equal(share, Frost.Normal(z), 1e-6);

    // Rank published: the scatter of Rothamsted's nights from 1959 to 1999 by month (DSSAT, RORO.CLI: sd of tmin) beside the formula made for any place. It is too wide there, by up to 1.7 K: nights are called
    // colder than they are, never warmer.
    [Fact]
    public void NightsScatter_NoLessThanInEngland()
    {
        double[] low = [1, .4, 2.4, 3.7, 6.4, 9.2, 11.6, 11.4, 9.5, 6.9, 3.5, 2.2], seen = [3.6, 3.8, 3.2, 3.2, 2.9, 2.7, 2.5, 2.8, 3.4, 3.6, 3.9, 3.8];
        Assert.All(low.Zip(seen), x => Assert.InRange(Frost.Scatter(x.First) - x.Second, 0, 1.7));
    }

    // Rank analytic: half the nights of a month whose mean low is nothing; all months warm, none.
    [Fact]
    public void HalfTheNightsFreeze_WhereTheMeanLowIsNothing()
    {
        var portland = Climate.Find("portland-or")!;
        Climate With(double low) => portland with { Months = portland.Months.Select(m => m with { Low = low }).ToSequence() };
        Assert.Equal(3.5, Frost.Nights(With(0), new(2027, 1, 30), 7), 1e-6);
        Assert.InRange(Frost.Nights(With(18), new(2027, 1, 30), 7), 0, 1e-4);
        Assert.InRange(Frost.Nights(portland, new(2027, 12, 1), 7), 2, 3.5);
    }

    // Rank independent: the whole forecast, bay by bay, which shares no side with the two that are followed here. A lift and a day: sides differ from bays, nothing else does.
    [Fact]
    public void Milestones_AreThoseOfTheForecast()
    {
        var house = Houses.HeronPoint;
        var (geometry, weather) = (FromBuilding.Of(house), FromSite.Of(house.Site));
        var whole = FromWeather.Of(geometry, weather).Value!;
        var few = FromWeather.MilestonesOf(FromWeather.Question(geometry, [], DryingGoal.Plaster).Value!, weather).Value!;
        foreach (var (full, told) in new[] { (whole.Fast, few.Fast), (whole.Slow, few.Slow) })
        {
            Assert.True(told.All);
            Near.Relative(full.Lifts[^1].LaidDay, told.Laid[^1], .08);
            Near.Relative(full.RoofDay!.Value, told.Roof!.Value, .05);
            Near.Relative(full.PlasterDay ?? few.Looked, told.Plaster ?? few.Looked, .05);
        }

        var walls = FromWeather.MilestonesOf(FromWeather.Question(geometry, [], DryingGoal.Walls).Value!, weather).Value!;
        Assert.Equal(few.Slow.Laid, walls.Slow.Laid);
        Assert.Null(walls.Slow.Roof);
    }
}
