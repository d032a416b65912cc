using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Geometry.Tests;

public sealed class WallVolumeTests
{
    private static House Tapered(House house) => house with { Wall = house.Wall with { OutsideTaper = new Slope(0.05), InsideTaper = new Slope(0.02) } };

    [Fact]
    public void RoundTaperedWall_Volume_EqualsTheIntegralOfRingAreasAndPappus()
    {
        // Analytic twice: integral of pi (R(z)^2 - r(z)^2) dz with both radii linear in z, and Pappus: section area times the way of its centroid.
        var geometry = FromBuilding.Of(Tapered(Houses.Round(Length.FromMillimetres(5000))));
        var (b, t) = (geometry.Wall.Base.Metres, geometry.Wall.Top.Metres);
        double R(double z) => 2.5 + 0.3556 + 0.02 * (t - b) + 0.05 * (t - z);
        double r(double z) => 2.5 + 0.02 * (z - b);
        double Cubed(Func<double, double> radius, double slope) => Math.PI * (Math.Pow(radius(t), 3) - Math.Pow(radius(b), 3)) / (3 * slope);
        (double X, double Z)[] section = [(r(b), b), (R(b), b), (R(t), t), (r(t), t)];
        double area = 0, moment = 0;
        for (var i = 0; i < 4; i++)
        {
            var (p, q) = (section[i], section[(i + 1) % 4]);
            var cross = p.X * q.Z - q.X * p.Z;
            area += cross / 2;
            moment += (p.X + q.X) * cross / 6;
        }

        Assert.Empty(geometry.Diagnostics);
        Assert.Equal(1, geometry.Measures.GrossVolume / (Cubed(R, -0.05) - Cubed(r, 0.02)), 1e-12);
        Assert.Equal(1, geometry.Measures.GrossVolume / (2 * Math.PI * moment / area * area), 1e-12);

        // Analytic: a conical face has the area pi (r1 + r2) times its slant height.
        Assert.Equal(1, geometry.Measures.InsideFaceArea / (Math.PI * (r(b) + r(t)) * Math.Sqrt(1 + 0.0004) * (t - b)), 1e-12);
        Assert.Equal(1, geometry.Measures.OutsideFaceArea / (Math.PI * (R(b) + R(t)) * Math.Sqrt(1 + 0.0025) * (t - b)), 1e-12);
        Assert.Equal(Math.PI * 6.25, geometry.Measures.InsideArea, 1e-12);
        Assert.Equal(Math.PI * R(b) * R(b), geometry.Measures.OutsideArea, 1e-12);
    }

    [Fact]
    public void OvalTaperedWall_Volume_EqualsAnIndependentIntegral()
    {
        // Independent: areas of both faces from x dy over the ellipse's own parameter (trapezoid rule, spectral for periodic functions), then
        // Simpson's rule over height. No arc length, no Steiner formula. 1e-9 is the aim; seen is rounding.
        double a = 2.4, b = 1.8;
        var geometry = FromBuilding.Of(Tapered(Houses.Oval(Length.FromMillimetres(4800), Length.FromMillimetres(3600))));
        var (z0, z1) = (geometry.Wall.Base.Metres, geometry.Wall.Top.Metres);
        double AreaAt(double offset)
        {
            const int N = 400;
            var sum = 0.0;
            for (var i = 0; i < N; i++)
            {
                var (s, c) = Math.SinCos(2 * Math.PI * i / N);
                var speed = Math.Sqrt(a * a * s * s + b * b * c * c);
                var x = a * c + offset * b * c / speed;
                var turn = a * b / (speed * speed * speed);
                var dy = b * c * (1 + offset * turn);
                sum += x * dy;
            }

            return sum * 2 * Math.PI / N;
        }

        double Ring(double z) => AreaAt(0.3556 + 0.02 * (z1 - z0) + 0.05 * (z1 - z)) - AreaAt(0.02 * (z - z0));
        const int Steps = 20;
        var volume = 0.0;
        for (var i = 0; i <= Steps; i++)
        {
            volume += (i is 0 or Steps ? 1 : i % 2 == 0 ? 2 : 4) * Ring(z0 + i * (z1 - z0) / Steps);
        }

        Assert.Equal(1, geometry.Measures.GrossVolume / (volume * (z1 - z0) / Steps / 3), 1e-11);
    }

    [Fact]
    public void RoundedRectangleWall_Volume_EqualsTheClosedForm()
    {
        // Analytic: without taper, the offset of a rounded rectangle is another one.
        var geometry = FromBuilding.Of(Houses.RoundedRectangle(Length.FromMillimetres(6000), Length.FromMillimetres(4000), Length.FromMillimetres(900)));
        double Area(double d) => (6 + 2 * d) * (4 + 2 * d) - (4 - Math.PI) * (0.9 + d) * (0.9 + d);
        Assert.Equal(1, geometry.Measures.GrossVolume / ((Area(0.3556) - Area(0)) * 2.286), 1e-12);
    }

    [Fact]
    public void LiftVolumes_OfAnyPlausibleHouse_AddUpToTheWall() =>
        // Property. Tolerance 1e-12: each volume is a sum of a few hundred terms in doubles.
        Houses.Plausible.ForAll(house =>
        {
            var geometry = FromBuilding.Of(house);
            Assert.Equal(geometry.Wall.Base, geometry.Lifts[0].Bottom);
            Assert.Equal(geometry.Wall.Top, geometry.Lifts[^1].Top);
            Assert.All(Enumerable.Range(1, geometry.Lifts.Count - 1), i => Assert.Equal(geometry.Lifts[i - 1].Top, geometry.Lifts[i].Bottom));
            Assert.Equal(1, geometry.Lifts.Sum(l => l.GrossVolume) / geometry.Measures.GrossVolume, 1e-12);
            Assert.Equal(1, geometry.Lifts.Sum(l => l.NetVolume) / geometry.Measures.NetVolume, 1e-12);
            Assert.All(geometry.Lifts, l => Assert.True(l.NetVolume > 0 && l.NetVolume <= l.GrossVolume && l.LaidVolume >= l.NetVolume - 1e-12));
        }, iter: Counts.Of(60, 5000));

    [Fact]
    public void FirstLift_OnAWiderStem_FillsTheStemBeforeItIsTrimmed()
    {
        // Analytic: the ring of the stem's width over the lift's height; the stem is centred under a wall 14 in thick without taper.
        var geometry = FromBuilding.Of(Houses.Round(Length.FromMillimetres(4000)));
        var (inner, outer) = (2 - 0.0762, 2 + 0.3556 + 0.0762);
        Assert.Equal(Math.PI * (outer * outer - inner * inner) * 0.3048, geometry.Lifts[0].LaidVolume, 1e-12);
        Assert.Equal(geometry.Lifts[1].NetVolume, geometry.Lifts[1].LaidVolume);
    }

    [Fact]
    public void FirstLift_OnANarrowerStem_IsLaidAsTrimmed()
    {
        var house = Houses.Round(Length.FromMillimetres(4000));
        var geometry = FromBuilding.Of(house with { Stem = house.Stem with { Width = Length.FromInches(12) } });
        Assert.Equal(geometry.Lifts[0].NetVolume, geometry.Lifts[0].LaidVolume, 1e-13);
    }

    [Fact]
    public void FirstLift_WithADoor_LeavesTheDoorOutOfTheStemsWidthToo()
    {
        // Analytic, for a wall so wide round that it is straight: the first lift less the door's width through the stem's width.
        var house = Houses.Round(Length.FromMillimetres(900_000)) with { Openings = [Houses.Door("door", 0)] };
        var with = FromBuilding.Of(house).Lifts[0].LaidVolume;
        var without = FromBuilding.Of(house with { Openings = [] }).Lifts[0].LaidVolume;
        Assert.Equal(0.9144 * 0.508 * 0.3048, without - with, 1e-6);
    }

    [Fact]
    public void Lifts_OfEqualHeight_LeaveTheRestToTheLast()
    {
        var lifts = FromBuilding.Of(Houses.Round(Length.FromMillimetres(4000))).Lifts;
        Assert.Equal(8, lifts.Count);
        Assert.Equal(Length.FromInches(12), lifts[6].Top - lifts[6].Bottom);
        Assert.Equal(Length.FromInches(6), lifts[7].Top - lifts[7].Bottom);
        Assert.Equal(1, lifts[0].Number);
    }
}
