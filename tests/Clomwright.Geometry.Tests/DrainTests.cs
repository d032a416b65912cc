using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Geometry.Tests;

/// <summary>The trench bottom point by point.</summary>
public class DrainTests
{
    // Rank analytic: a round house; the trench is a circle, so the way to the pipe is radius times angle. 1e-9 m: sums of a few doubles, and the far side found by halving.
    [Fact]
    public void RoundTrench_FallsAsTheAngleToItsPipe()
    {
        var house = Houses.Round(Length.FromMillimetres(5000)) with
        {
            Site = new Site { Grade = Length.FromMillimetres(-300) },
            Trench = new Trench(Length.FromMillimetres(700), Length.FromMillimetres(600), Length.FromMillimetres(-1100)) { Fall = new Slope(0.02), OutletBearing = new Angle(90) },
        };
        var geometry = FromBuilding.Of(house);
        var drain = DrainLine.Of(geometry)!;
        var radius = 2.5 + drain.Offset;
        Assert.Equal(Math.PI * radius, drain.Half, 1e-9);
        Assert.Equal(-0.9, drain.Start, 1e-12);
        Assert.Equal(-0.9 - 0.02 * Math.PI * radius, drain.End, 1e-9);
        foreach (var point in drain.Points(geometry))
        {
            var angle = Math.Abs(Math.IEEERemainder(point.Station / 2.5 - Math.PI / 2, 2 * Math.PI));
            Assert.Equal(radius * angle, point.ToPipe, 1e-9);
            Assert.Equal(drain.End + 0.02 * radius * angle, point.Height, 1e-9);
        }

        Assert.Equal(drain.Start, drain.Points(geometry).Single(p => p.Name == "far side").Height, 1e-9);
        Assert.Equal(drain.End, drain.Points(geometry).Single(p => p.Name == "pipe").Height, 1e-9);
    }

    // Rank property: whatever the plan, the bottom never lies over its start or under its end, and falls to the outlet where no fall is given.
    [Fact]
    public void AnyTrench_LiesBetweenItsEnds() => Houses.Plausible.ForAll(house =>
    {
        var geometry = FromBuilding.Of(house with
        {
            Site = house.Site with { Grade = Length.FromMillimetres(-250) }, Trench = new Trench(Length.FromMillimetres(900), Length.FromMillimetres(600), Length.FromMillimetres(-1200)),
        });
        var drain = DrainLine.Of(geometry)!;
        Assert.Equal(-1.2, drain.End, 1e-9);
        Assert.All(drain.Points(geometry), p => Assert.InRange(p.Height, -1.2 - 1e-9, -0.85 + 1e-9));
    }, iter: Counts.Of(30, 1000));
}
