using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Weather;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Testing;

namespace Clomwright.Analysis.Tests.Drying;

/// <summary>The whole ring: what must hold whatever the numbers are.</summary>
public sealed class WholeWallTests
{
    private static readonly Sequence<DryingBay> OneBay = [new("east", 0, 1, Math.PI / 2)];
    private static readonly DateOnly June = new(2027, 6, 1);

    private static WeatherResult Of(Climate climate) => FromSite.Of(climate, climate.Latitude, climate.Elevation);

    private static Climate Portland => Climate.Find("portland-or")!;

    private static WallDrying Run(Climate climate, double thickness, LiftMethod method = LiftMethod.Tossed, params AssumedNumber[] assumed) =>
        FromWeather.Simulate(DryingNumbers.Of(assumed.ToSequence()), method, [.3, .3, .3], [thickness, thickness, thickness], OneBay, Of(climate), June);

    // Rank property: a thicker wall never dries faster.
    [Theory]
    [InlineData(LiftMethod.Tossed)]
    [InlineData(LiftMethod.Forked)]
    public void AThickerWall_NeverDriesFaster(LiftMethod method)
    {
        var walls = new[] { .3, .4, .5, .65 }.Select(t => Run(Portland, t, method)).ToArray();
        for (var i = 1; i < walls.Length; i++)
        {
            Assert.True(walls[i].Lifts[^1].LaidDay >= walls[i - 1].Lifts[^1].LaidDay);
            Assert.True((walls[i].PlasterDay ?? 9999) >= (walls[i - 1].PlasterDay ?? 9999));
        }
    }

    // Rank property: a month that differs only in drier air, more wind or less rain never dries slower.
    [Fact]
    public void ADrierMonth_NeverDriesSlower()
    {
        Climate With(Func<ClimateMonth, ClimateMonth> change) => Portland with { Months = Portland.Months.Select(change).ToSequence() };
        var usual = Run(Portland, .45, LiftMethod.Forked).Lifts[^1].LaidDay;
        Assert.True(Run(With(m => m with { DewPoint = m.DewPoint - 3 }), .45, LiftMethod.Forked).Lifts[^1].LaidDay <= usual);
        Assert.True(Run(With(m => m with { Wind = m.Wind * 1.5 }), .45, LiftMethod.Forked).Lifts[^1].LaidDay <= usual);
        Assert.True(Run(With(m => m with { Rain = 0, WetDays = 0 }), .45, LiftMethod.Forked).Lifts[^1].LaidDay <= usual);
        Assert.True(Run(With(m => m with { DewPoint = m.DewPoint + 2 }), .45, LiftMethod.Forked).Lifts[^1].LaidDay >= usual);
    }

    // Rank property: water laid is water held and gone, to 1e-10, with rain, sun, covers and lifts stacked.
    [Fact]
    public void WaterLaid_IsHeldOrGone()
    {
        var numbers = DryingNumbers.Of([]);
        var earth = WallRun.EarthOf(numbers);
        var faces = new Faces(numbers, earth);
        var weather = Of(Portland);
        var days = new DayPatterns([.. Enumerable.Range(1, 12).Select(m => faces.Day(weather.Day(m), 1))], [.. Enumerable.Range(0, 60).Select(d => d / 30)], earth.Full * earth.DryDensity);
        var bay = new BayRun(earth.Medium(), earth, WallRun.StrengthOf(numbers, earth), [.3, .4, .3], [.5, .45, .4], .02, .6);
        var laid = bay.Lay(.25);
        bay.Advance(0, 10 * BayRun.Day, days);
        laid += bay.Lay(.26);
        bay.Advance(10 * BayRun.Day, 20 * BayRun.Day, days);
        laid += bay.Lay(.24);
        bay.Advance(20 * BayRun.Day, 60 * BayRun.Day, days);
        Assert.Equal(laid, bay.Held + bay.Out.Total, 1e-10 * laid);
        Assert.True(bay.Out.Total > .05 * laid);
    }

    // Rank property: coarse steps and nodes do not decide. Days to the next lift move by no more than half a day, water by no more than 0.3 %, when a step may be a tenth as wrong.
    [Fact]
    public void MeansOverLongSteps_EqualMeansOfShortOnes()
    {
        var numbers = DryingNumbers.Of([]);
        var earth = WallRun.EarthOf(numbers);
        var faces = new Faces(numbers, earth);
        var weather = Of(Portland);
        var days = new DayPatterns([.. Enumerable.Range(1, 12).Select(m => faces.Day(weather.Day(m), 1))], [.. Enumerable.Range(0, 40).Select(_ => 5)], earth.Full * earth.DryDensity);
        double At(double chunk)
        {
            var bay = new BayRun(earth.Medium(), earth, WallRun.StrengthOf(numbers, earth), [.4], [.45], .02, .6);
            bay.Lay(.25);
            for (var t = 0.0; t < 30 * BayRun.Day; t += chunk)
            {
                bay.Advance(t, t + chunk, days);
            }

            return bay.Water(0);
        }

        Assert.Equal(At(600), At(10 * BayRun.Day), .003);
    }

    // Rank property: the sun side is firm no later than the shade; what makes it dry faster gives the low end; lifts are never above the practice of the method.
    [Fact]
    public void AHouse_HasBandsThatOpen()
    {
        var geometry = FromBuilding.Of(Houses.HeronPoint);
        var drying = FromWeather.Of(geometry, FromSite.Of(Houses.HeronPoint.Site)).Value!;
        Assert.Equal(geometry.Lifts.Count, drying.Lifts.Count);
        Assert.True(drying.Bays.Count >= geometry.Piers.Count);
        foreach (var lift in drying.Lifts)
        {
            Assert.NotNull(lift.DaysToNext.Low);
            Assert.True(lift.DaysToNext.High is null || lift.DaysToNext.Low <= lift.DaysToNext.High);
            Assert.InRange(lift.Settles.Low!.Value, 0, lift.Settles.High!.Value);
        }

        Assert.True(drying.HeightToday.Low > 0 && drying.HeightToday.High <= .4572 + 1e-9);
        var south = drying.Bays.Select((b, i) => (b, i)).MinBy(x => Math.Abs(x.b.Normal - Math.PI)).i;
        var north = drying.Bays.Select((b, i) => (b, i)).MinBy(x => Math.Cos(x.b.Normal) * -1).i;
        // An hour: the skin of the inside face, the same all round, decides in summer, and steps of a run differ.
        Assert.True(drying.Middle.Lifts[^1].Bays[south].FirmAfter <= drying.Middle.Lifts[^1].Bays[north].FirmAfter + 1.0 / 24,
            $"{drying.Middle.Lifts[^1].Bays[south].FirmAfter} {drying.Middle.Lifts[^1].Bays[north].FirmAfter}");
        Assert.Equal(drying.Gaps.Count, geometry.Openings.Count(o => o.Opening.Frame is not null && o.Header is not null));
        Printed.HaveWords(drying.Assumptions);
        // Rank independent: the printed equations, evaluated by themselves, give the numbers again.
        Assert.Equal(drying.HeightToday.Low!.Value, drying.Calculations.Single(c => c.Key == "height-today" && c.Place == "low end").Steps[^1].Result.Value.Si, 1e-12);
        Assert.Equal(drying.Gaps.Count(g => g.Gap.High is not null), drying.Calculations.Count(c => c.Key == "frame-gap"));
        Assert.All(drying.Calculations, c => Assert.Empty(CalculationCheck.Mismatches(c, 1e-9)));
    }

    // Rank property: what the author says holds in every case and is no assumption any more.
    [Fact]
    public void WhatTheAuthorSays_Holds()
    {
        Sequence<AssumedNumber> said = [new("drying-wind", .25)];
        Assert.All(Enum.GetValues<DryingCase>(), way => Assert.Equal(.25, DryingNumbers.Of(said, way)["drying-wind"]));
        Assert.DoesNotContain(DryingNumbers.Of(said).Assumptions, a => a.Key == "drying-wind");
        Assert.Equal(DryingNumbers.Keys.Count, DryingNumbers.Of([]).Assumptions.Count);
    }

    // Rank property: without climate or start there is no forecast, and it says why.
    [Fact]
    public void WithoutClimateOrStart_ItIsNotChecked()
    {
        var house = Houses.HeronPoint with { Site = new Site() };
        Assert.Equal("analysis.weather.no-climate", FromWeather.Of(FromBuilding.Of(house), FromSite.Of(house.Site)).NotChecked!.Key);
        house = Houses.HeronPoint with { Crew = null };
        Assert.Equal("analysis.drying.no-start", FromWeather.Of(FromBuilding.Of(house), FromSite.Of(house.Site)).NotChecked!.Key);
    }
}
