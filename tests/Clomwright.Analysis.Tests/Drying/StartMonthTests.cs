using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Weather;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Testing;

namespace Clomwright.Analysis.Tests.Drying;

/// <summary>The same wall begun in each month, and the cover over it.</summary>
public sealed class StartMonthTests
{
    private static bool Ordered(Forecast f) => (f.Fast ?? 9999) <= (f.Middle ?? 9999) && (f.Middle ?? 9999) <= (f.Slow ?? 9999);

    // Rank property: twelve months, cases in order, a roof after the last lift and plaster after the roof; the wet dark month is slower than the bright dry one.
    [Fact]
    public void Months_AreInOrder()
    {
        var house = Houses.HeronPoint with { Crew = null };
        var year = FromWeather.ByMonth(FromBuilding.Of(house), FromSite.Of(house.Site)).Value!;
        Assert.Equal(Enumerable.Range(1, 12), year.Months.Select(m => m.Month));
        foreach (var month in year.Months)
        {
            Assert.True(Ordered(month.NextSunny) && Ordered(month.NextShaded) && Ordered(month.Walls) && Ordered(month.Roof) && Ordered(month.Plaster), $"{month}");
            // An hour: the skin of the inside face, the same on both sides, decides in summer, and steps of a run differ.
            Assert.True((month.NextSunny.Middle ?? 9999) <= (month.NextShaded.Middle ?? 9999) + 1.0 / 24, $"{month.Month}: {month.NextSunny} {month.NextShaded}");
            Assert.True(month.Walls.Middle <= month.Roof.Middle);
        }

        Assert.True(year.Months[6].Walls.Middle < year.Months[11].Walls.Middle);
        Assert.True(Math.Cos(year.Sunny.Normal) < Math.Cos(year.Shaded.Normal));
    }

    // Rank property: without a climate no month is told.
    [Fact]
    public void WithoutClimate_NoMonthIsTold()
    {
        var house = Houses.HeronPoint with { Site = new Site() };
        Assert.Equal("analysis.weather.no-climate", FromWeather.ByMonth(FromBuilding.Of(house), FromSite.Of(house.Site)).NotChecked!.Key);
    }

    // Rank analytic: a plumb round wall. Width by hand: height 2.4, 0.3 below, 0.3 up and down over the line, 0.4 thick, 0.6 inside; run 2 pi (2 + 0.4); pull 1.2 x 1.25/2 x 20^2 over 1 m of half the width.
    [Fact]
    public void Cover_OfAPlumbRoundWall_IsCountedByHand()
    {
        var start = StarterHouse.Make();
        var house = start with
        {
            Plan = new Plan.Round(Length.FromMillimetres(4000)),
            Wall = new Wall(Length.FromMillimetres(2600), Length.FromMillimetres(400)) { InsideTaper = new Slope(0), OutsideTaper = new Slope(0) },
            Stem = start.Stem with { Top = Length.FromMillimetres(200) }, Openings = [], Niches = [], Embeds = [], Lifts = new LiftPlan { Height = Length.FromMillimetres(400) },
        };
        var cover = Cover.Of(FromBuilding.Of(house)).Value!;
        const double Width = 2.4 + .3 + .6 + .4 + .6;
        Assert.Equal(Width, cover.Whole.Width, 1e-6);
        Assert.Equal(2 * Math.PI * 2.4, cover.Run, 1e-6);
        Assert.Equal(2 * Math.PI * 2.4 * Width * 1.1, cover.Whole.Area, 1e-5);
        Assert.Equal(16, cover.TiesEachEdge);
        Assert.Equal(1.2 * 1.25 * 400 / 2 * Width / 2, cover.Pull, 1e-6);
        Assert.Equal(6, cover.Lifts.Count);
        Printed.HaveWords(cover.Assumptions);
        Printed.Holds([cover.How]);
    }
}
