using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Geometry.Tests;

public sealed class WallVolumeTests
{
    private static House Tapered(House house) => house with { Wall = house.Wall with { OutsideTaper = new Slope(0.05), InsideTaper = new Slope(0.02) } };

    [Fact]
    public void RoundTaperedWall_Volume_EqualsTheIntegralOfRingAreas()
    {
        // Analytic: integral of pi (R(z)^2 - r(z)^2) dz with both radii linear in z; tolerance is rounding.
        var geometry = FromBuilding.Of(Tapered(Houses.Round(Length.FromMillimetres(5000))));
        var (b, t) = (geometry.Wall.Base.Metres, geometry.Wall.Top.Metres);
        double R(double z) => 2.5 + 0.3556 + 0.02 * (t - b) + 0.05 * (t - z);
        double r(double z) => 2.5 + 0.02 * (z - b);
        double Cube(Func<double, double> radius, double slope) => Math.PI * (Math.Pow(radius(t), 3) - Math.Pow(radius(b), 3)) / (3 * slope);
        var expected = Cube(R, -0.05) - Cube(r, 0.02);
        Assert.Empty(geometry.Diagnostics);
        Assert.Equal(1, geometry.Measures.GrossVolume / expected, 1e-12);
    }

    [Fact]
    public void LiftVolumes_OfAnyPlausibleHouse_AddUpToTheWall()
    {
        // Property. Tolerance 1e-12: each volume is a sum of a few hundred terms in doubles.
        Houses.Plausible.Sample(house =>
        {
            var geometry = FromBuilding.Of(house);
            Assert.Equal(geometry.Wall.Base, geometry.Lifts[0].Bottom);
            Assert.Equal(geometry.Wall.Top, geometry.Lifts[^1].Top);
            Assert.Equal(1, geometry.Lifts.Sum(l => l.GrossVolume) / geometry.Measures.GrossVolume, 1e-12);
            Assert.Equal(1, geometry.Lifts.Sum(l => l.NetVolume) / geometry.Measures.NetVolume, 1e-12);
        }, iter: Counts.Of(40, 5000));
    }
}
