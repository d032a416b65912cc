using Clomwright.Analysis.Comfort;
using Clomwright.Analysis.Weather;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Testing;

namespace Clomwright.Analysis.Tests.Comfort;

/// <summary>Sun through real openings against closed forms of straight rays, and what must hold of any.</summary>
public sealed class SunInRoomTests
{
    private const double Degree = Math.PI / 180;

    /// <summary>A window of 1 m by 1.2 m, its sill at 0.9 m, to the south of a round wall of 6 m inside and 0.4 m thick, its glass in the middle.</summary>
    private static House South(Angle splay = default) => Houses.Round(Length.FromMillimetres(6000)) with
    {
        Stem = new Stem(Length.FromMillimetres(400), Length.FromMillimetres(200)), Wall = new Wall(Length.FromMillimetres(2600), Length.FromMillimetres(400)),
        Openings = [new Opening { Name = "south", Kind = OpeningKind.Fixed, Along = Along.At(new Angle(180)), Width = Length.FromMillimetres(1000), Height = Length.FromMillimetres(1200), Sill = Length.FromMillimetres(900), Splay = new Splay(default, splay) }],
    };

    private static (HouseGeometry Geometry, LightShaft Shaft) Placed(House house)
    {
        var geometry = FromBuilding.Of(house);
        return (geometry, LightShaft.Of(geometry, geometry.Openings[0]));
    }

    private static OpeningSun Open(House house, EaveEdge? eave = null, params (double Bearing, double Angle)[] skyline) =>
        new(Placed(house).Shaft, eave, new Skyline([.. skyline.Select(p => (p.Bearing * Degree, p.Angle * Degree))]));

    private static SunPlace At(double elevation, double azimuth) => new(elevation * Degree, azimuth * Degree);

    // Rank analytic: glass 0.2 m behind the face. Straight on, the head of the reveal shades 0.2 tan(elevation) of 1.2 m; from aside, the jamb 0.2 tan(angle) of 1 m. 24 columns: a column either way for the jamb.
    [Theory]
    [InlineData(20, 180)]
    [InlineData(50, 180)]
    [InlineData(30, 210)]
    [InlineData(30, 150)]
    [InlineData(15, 235)]
    public void Reveal_ShadesTheGlass(double elevation, double azimuth)
    {
        var (turn, rise) = (Math.Abs(Math.Tan((azimuth - 180) * Degree)), Math.Tan(elevation * Degree) / Math.Cos((azimuth - 180) * Degree));
        Assert.Equal(Math.Max(0, 1 - .2 * turn) * Math.Max(0, 1 - .2 * rise / 1.2), Open(South()).Lit(At(elevation, azimuth)), 1.01 / 24);
    }

    // Rank property: behind the wall, under the horizon and behind a hill there is no sun; a splay lets in more from aside; the sky that is seen lies between nothing and all.
    [Fact]
    public void NoSun_WhereNoneCanBe()
    {
        var open = Open(South());
        Assert.Equal(0, open.Lit(At(30, 0)));
        Assert.Equal(0, open.Lit(At(-1, 180)));
        Assert.Equal(0, Open(South(), null, (90, 35), (270, 35)).Lit(At(30, 180)));
        Assert.True(Open(South(), null, (90, 25), (270, 25)).Lit(At(30, 180)) > 0);
        Assert.True(Open(South(new Angle(30))).Lit(At(30, 225)) > open.Lit(At(30, 225)) + 0.1);
        Assert.InRange(open.Sky, 0.3, 0.95);
        Assert.True(Open(South(new Angle(30))).Sky > open.Sky);
    }

    // Rank analytic: an eave that stands 0.8 m before the glass, 0.3 m over its head, shades what is above 0.8 tan(elevation) under its edge; low sun passes, the highest does not.
    [Fact]
    public void Eave_CutsTheHighSun()
    {
        var shaft = Placed(South()).Shaft;
        var eave = new EaveEdge(2.4, shaft.Glass + .8);
        double Lit(double elevation) => Open(South(), eave).Lit(At(elevation, 180));
        double Expected(double elevation) => Math.Clamp((Math.Min(2.1 - .2 * Math.Tan(elevation * Degree), 2.4 - .8 * Math.Tan(elevation * Degree)) - .9) / 1.2, 0, 1);
        foreach (var elevation in new[] { 10.0, 30, 45, 55, 60, 65 })
        {
            Assert.Equal(Expected(elevation), Lit(elevation), 1e-9);
        }

        Assert.Equal(0, Lit(65));
    }

    // Rank analytic: at noon the patch begins sill/tan(elevation) behind the glass and ends where the head's shade ends; its area is width times that length, less nothing: the far wall is farther. 1e-9: straight lines.
    [Fact]
    public void Patch_LiesWhereRaysFall()
    {
        var (geometry, shaft) = Placed(South());
        var elevation = 40 * Degree;
        var patch = SunPatches.Of(geometry, "south", Open(South()), new SunPlace(elevation, Math.PI))!;
        var glass = shaft.Plan(0, shaft.Glass).North;
        // The sill of the room's half of the reveal stops what falls lower than it.
        var (low, high) = (.9 + .2 * Math.Tan(elevation), 2.1 - .2 * Math.Tan(elevation));
        Assert.Equal(glass + low / Math.Tan(elevation), patch.Floor.Min(p => p.North), 1e-9);
        Assert.Equal(glass + high / Math.Tan(elevation), patch.Floor.Max(p => p.North), 1e-9);
        Assert.Equal((high - low) / Math.Tan(elevation), patch.FloorArea, 1e-9);
        Assert.Empty(patch.Wall);
        // Low sun reaches the far wall.
        var evening = SunPatches.Of(geometry, "south", Open(South()), new SunPlace(10 * Degree, Math.PI))!;
        Assert.NotEmpty(evening.Wall);
        Assert.All(evening.Wall, p => Assert.InRange(p.Up, 0, 2.1));
    }

    // Rank property: the skyline runs straight between its points, round through north.
    [Fact]
    public void Skyline_RunsBetweenItsPoints()
    {
        var line = Skyline.Of(new Site { Horizon = [new HorizonPoint(new Angle(350), new Angle(10)), new HorizonPoint(new Angle(10), new Angle(20)), new HorizonPoint(new Angle(180), new Angle(0))] });
        Assert.Equal(15 * Degree, line.At(0), 1e-9);
        Assert.Equal(20 * Degree, line.At(10 * Degree), 1e-9);
        Assert.Equal(10 * Degree, line.At(95 * Degree), 1e-9);
        Assert.Equal(0, Skyline.Of(new Site()).At(1));
    }

    // Rank analytic: the sun stands highest at noon, at 90 degrees less latitude plus declination; and the same before and after.
    [Fact]
    public void Place_IsEvenAboutNoon()
    {
        var sun = new SunInRoom(Placed(South()).Geometry, 45, null);
        Assert.Equal(Math.PI / 4 + ReferenceEvaporation.Declination(30.42 * 6 - 15), sun.Place(6, 12).Elevation, 1e-9);
        Assert.Equal(sun.Place(6, 9).Elevation, sun.Place(6, 15).Elevation, 1e-12);
        Assert.True(sun.Hours("south", 12) > 3 && sun.Hours("south", 12) < 10);
        Assert.Equal(0, sun.Hours("nowhere", 12));
    }
}
