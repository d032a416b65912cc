using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Weather;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Numerics;
using Clomwright.Testing;

namespace Clomwright.Analysis.Tests.Drying;

/// <summary>The fast and the slow case as ends of a band; when lifts follow; when it is given up.</summary>
public sealed class CaseTests(ITestOutputHelper output)
{
    private static readonly Sequence<DryingBay> Two = [new("sun", 0, 1, Math.PI), new("shade", 1, 2, 0)];
    private static readonly double[] Low = [.. Enumerable.Repeat(.3048, 7)];

    private static WeatherResult Weather(string climate) => FromSite.Of(Climate.Find(climate)!, Climate.Find(climate)!.Latitude, Climate.Find(climate)!.Elevation);

    private static WallDrying Run(DryingNumbers numbers, string climate, LiftMethod method, double[] heights, double thickness, int most = 1000) =>
        FromWeather.Simulate(numbers, method, heights, [.. heights.Select(_ => thickness)], Two, Weather(climate), new(2027, 6, 1), most);

    // Rank property: a calculation at an end of a range says so, and what is as likely as not; one that the author wrote has no ends.
    [Fact]
    public void ANumberAtAnEndOfItsRange_SaysSo()
    {
        var slow = DryingNumbers.Of([], DryingCase.Slow);
        Assert.Equal("analysis.symbol.slow-end", slow.Symbol("c", "drying-shrink-share").What.Key);
        Assert.Contains(slow.Symbol("c", "drying-shrink-share").What.Arguments, a => a.Value is Argument.Quantity { Value.Si: 0.3 });
        Assert.Equal("analysis.assumed.drying-shrink-share", DryingNumbers.Of([]).Symbol("c", "drying-shrink-share").What.Key);
        Assert.Equal("analysis.assumed.drying-shrink-share", DryingNumbers.Of([new AssumedNumber("drying-shrink-share", 0.4)], DryingCase.Slow).Symbol("c", "drying-shrink-share").What.Key);
    }

    // Rank independent: every uncertain number drawn by itself (triangular between its ends, seeded), none of them knowing of the two runs. The band between the runs must hold most walls and not all.
    [Theory]
    [InlineData("portland-or", LiftMethod.Tossed, .3048, 7, .4)]
    [InlineData("rothamsted-gb", LiftMethod.Forked, .6, 3, .6)]
    public void WallsDrawnAtRandom_LieBetweenTheTwoRuns(string climate, LiftMethod method, double height, int lifts, double thickness)
    {
        double[] heights = [.. Enumerable.Repeat(height, lifts)];
        double[] Told(WallDrying wall) => [wall.Lifts[^1].LaidDay, wall.RoofDay ?? 9999, wall.PlasterDay ?? 9999];
        var (fast, slow) = (Told(Run(DryingNumbers.Of([], DryingCase.Fast).Together, climate, method, heights, thickness)), Told(Run(DryingNumbers.Of([], DryingCase.Slow).Together, climate, method, heights, thickness)));
        var (a, m, b) = (DryingNumbers.Of([], DryingCase.Fast), DryingNumbers.Of([]), DryingNumbers.Of([], DryingCase.Slow));
        string[] keys = [.. DryingNumbers.Keys];
        var random = new Philox(3);
        var walls = Enumerable.Range(0, Counts.Of(24, 100)).AsParallel().AsOrdered().Select(i =>
        {
            double Drawn(string key, ulong at)
            {
                var x = random.Uniform(at, (ulong)(2 * i)) + random.Uniform(at, (ulong)(2 * i + 1)) - 1;
                return m[key] + Math.Abs(x) * ((x > 0 ? a[key] : b[key]) - m[key]);
            }

            return Told(Run(DryingNumbers.Of(keys.Select((k, at) => new AssumedNumber(k, Drawn(k, (ulong)at))).ToSequence()), climate, method, heights, thickness));
        }).ToArray();
        foreach (var (what, at) in new[] { ("last lift", 0), ("roof", 1), ("plaster", 2) })
        {
            var inside = walls.Average(w => w[at] >= fast[at] && w[at] <= slow[at] ? 1.0 : 0);
            output.WriteLine($"{climate} {what}: {fast[at]:f1} to {slow[at]:f1} days, {inside:p0} of {walls.Length} inside; drawn {walls.Min(w => w[at]):f1} to {walls.Max(w => w[at]):f1}");
            Assert.InRange(inside, .8, 1);
        }
    }

    // Rank independent: the same bay marched by quarter hours instead of six hours. A twentieth of a day: an hour or so, less than anybody goes by.
    [Theory]
    [InlineData("portland-or", .3)]
    [InlineData("albuquerque-nm", .35)]
    public void TheHourOfTheNextLift_IsNotTheStepOfTheSearch(string climate, double height)
    {
        var numbers = DryingNumbers.Of([new("drying-cap-tossed", 3)]);
        var first = Run(numbers, climate, LiftMethod.Tossed, [height, height], .4, most: 3).Lifts[0];
        var earth = WallRun.EarthOf(numbers);
        var (faces, weather) = (new Faces(numbers, earth), Weather(climate));
        for (var b = 0; b < Two.Count; b++)
        {
            var days = new DayPatterns([faces.Day(weather.Day(6), Two[b].Normal)], new int[20], earth.Full * earth.DryDensity);
            var bay = new BayRun(earth.Medium(), earth, WallRun.StrengthOf(numbers, earth), [height, height], [.4, .4], numbers["drying-skin-depth"], numbers["drying-foot"]);
            bay.Lay(WallRun.LaidWater(numbers, LiftMethod.Tossed));
            bay.Shelter(0, 1);
            var at = 0.0;
            while (bay.Ready(height, first.LaidWater, numbers["drying-safety-tossed"], numbers["drying-skin"]) < 1)
            {
                bay.Advance(at * BayRun.Day, (at + 1.0 / 96) * BayRun.Day, days);
                at += 1.0 / 96;
            }

            Assert.Equal(at, first.Bays[b].FirmAfter!.Value, .05);
        }
    }

    // Rank analytic: stiff cob that could take the next at once waits for the day when two lifts are more than the practice cap, and does not where they are not.
    [Fact]
    public void NoMoreThanTheCap_IsLaidInADay()
    {
        double[] Laid(double height) => [.. Run(DryingNumbers.Of([new("drying-liquidity-tossed", .1)]), "albuquerque-nm", LiftMethod.Tossed, [.. Enumerable.Repeat(height, 6)], .4, most: 20).Lifts.Select(l => l.LaidDay)];
        Assert.Equal([0, 1, 2, 3, 4, 5], Laid(.3048));
        Assert.Equal([0, 0, 0, 1, 1, 1], Laid(.15));
        Assert.Equal([0, 1, 2, 3, 4, 5], Laid(.5));
    }

    // Rank analytic: what nears something above nothing never gets there, what falls by a fixed amount does on a known day.
    [Fact]
    public void WhatCannotBeReached_IsGivenUp_AndNothingElse()
    {
        bool GivenUp(Func<double, double> excess, double most)
        {
            var beyond = new OutOfReach(most);
            return Enumerable.Range(0, (int)most / 7).Any(week => excess(7 * week) > 0 && beyond.Is(7 * week, excess(7 * week)));
        }

        Assert.True(GivenUp(day => 1 + Math.Pow(.5, day / 364), 2000));
        Assert.False(GivenUp(day => 1 - day / 1900, 2000));
        Assert.True(GivenUp(day => 1 - day / 2900, 2000));
        // In weather that swings with the season, the least of a year decides.
        Assert.False(GivenUp(day => 1 - day / 1900 + .2 * Math.Cos(2 * Math.PI * day / 364), 2000));
    }
}
