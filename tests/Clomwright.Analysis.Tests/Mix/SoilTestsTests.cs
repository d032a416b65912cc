using Clomwright.Analysis.Mix;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Testing;

namespace Clomwright.Analysis.Tests.Mix;

/// <summary>The jar, the triangle, the chart and the phases against values from outside the program.</summary>
public class SoilTestsTests
{
    // Independent: viscosity of water at atmospheric pressure, IAPWS 2008 (from memory): 1.3059, 1.1375, 1.0016, 0.8900, 0.7972 mPa s. 0.1 %: the older formula used here.
    [Theory]
    [InlineData(10, 1.3059)]
    [InlineData(15, 1.1375)]
    [InlineData(20, 1.0016)]
    [InlineData(25, 0.8900)]
    [InlineData(30, 0.7972)]
    public void Viscosity_IsThatOfWater(double celsius, double expected) => Near.Relative(expected, 1000 * Settling.Viscosity(celsius), 1e-3);

    // Published: ASTM D422 table 3, K for Gs 2.65: 0.01365 at 20 C and 0.01286 (25 C, from memory): D in mm = K sqrt(L in cm over T in min). 1 %: the standard's older viscosity, and g of 980.
    [Theory]
    [InlineData(20, 0.01365)]
    [InlineData(25, 0.01286)]
    public void Settling_AgreesWithTheHydrometerTable(double celsius, double k)
    {
        const double diameter = 50e-6, height = 0.1;
        var minutes = 10 / Math.Pow(0.05 / k, 2);
        Near.Relative(60 * minutes, Settling.Seconds(diameter, height, celsius, 2650), 1e-2);
    }

    // Analytic: Stokes with IAPWS viscosities and water of 1000 kg/m3, over 100 mm, s. 0.5 %: density of the water.
    [Theory]
    [InlineData(10, 63e-6, 36.6)]
    [InlineData(10, 2e-6, 10.09 * 3600)]
    [InlineData(15, 20e-6, 316)]
    [InlineData(20, 63e-6, 28.0)]
    [InlineData(20, 50e-6, 44.5)]
    [InlineData(20, 6e-6, 3092)]
    [InlineData(20, 2e-6, 7.73 * 3600)]
    [InlineData(30, 50e-6, 35.4)]
    [InlineData(30, 2e-6, 6.14 * 3600)]
    public void Settling_FollowsStokes(double celsius, double diameter, double seconds) => Near.Relative(seconds, Settling.Seconds(diameter, 0.1, celsius, 2650), 5e-3);

    // Property: time grows with the column as it is, and with the square of how small the grain is.
    [Fact]
    public void Settling_ScalesWithHeightAndSize()
    {
        Near.Relative(1.5 * Settling.Seconds(50e-6, 0.1, 20, 2650), Settling.Seconds(50e-6, 0.15, 20, 2650), 1e-12); // same arithmetic
        Near.Relative(25 * Settling.Seconds(50e-6, 0.1, 20, 2650), Settling.Seconds(10e-6, 0.1, 20, 2650), 1e-12);
    }

    // Property over all 5,151 whole triples: the rules of the Soil Survey Manual leave no gap and no overlap.
    [Fact]
    public void Triangle_HasOneClassForEveryWholeTriple()
    {
        var seen = new HashSet<string>();
        var count = 0;
        for (var sand = 0; sand <= 100; sand++)
        {
            for (var clay = 0; clay <= 100 - sand; clay++)
            {
                seen.Add(Assert.Single(Texture.Holding(sand, 100 - sand - clay, clay)));
                count++;
            }
        }

        Assert.Equal(5151, count);
        Assert.Equal(Texture.Classes.Order(StringComparer.Ordinal), seen.Order(StringComparer.Ordinal));
    }

    // Property: what is drawn and what decides are two texts of one definition; every whole triple inside a field is of that class, and each lies in one field or on an edge.
    [Fact]
    public void Triangle_DrawnFields_AreThoseOfTheRules()
    {
        var inside = 0;
        for (var sand = 0; sand <= 100; sand++)
        {
            for (var clay = 0; clay <= 100 - sand; clay++)
            {
                foreach (var field in TextureTriangle.Fields.Where(f => Inside(f, sand / 100.0, clay / 100.0)))
                {
                    inside++;
                    Assert.Equal([field.Key], Texture.Holding(sand, 100 - sand - clay, clay));
                }
            }
        }

        // Of 5151 triples 300 lie on the rim and some hundreds on edges between fields; the rest have to be found.
        Assert.InRange(inside, 4300, 4851);
    }

    /// <summary>Inside and no nearer than 0.001 to any side, by the number of sides that a line crosses.</summary>
    private static bool Inside(TextureField field, double sand, double clay)
    {
        var (crossings, corners) = (0, field.Corners);
        for (var i = 0; i < corners.Count; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Count]);
            var (dx, dy) = (b.Sand - a.Sand, b.Clay - a.Clay);
            var t = Math.Clamp(((sand - a.Sand) * dx + (clay - a.Clay) * dy) / (dx * dx + dy * dy), 0, 1);
            if (Math.Abs(sand - a.Sand - t * dx) + Math.Abs(clay - a.Clay - t * dy) < 1e-3)
            {
                return false;
            }

            crossings += a.Clay > clay != b.Clay > clay && sand < a.Sand + (clay - a.Clay) / dy * dx ? 1 : 0;
        }

        return crossings % 2 == 1;
    }

    // Published: corners and centres that the manual's triangle shows (USDA Soil Survey Manual, figure 3-7, from memory).
    [Theory]
    [InlineData(92, 5, 3, "sand")]
    [InlineData(82, 12, 6, "loamy-sand")]
    [InlineData(65, 25, 10, "sandy-loam")]
    [InlineData(40, 40, 20, "loam")]
    [InlineData(20, 65, 15, "silt-loam")]
    [InlineData(7, 87, 6, "silt")]
    [InlineData(60, 13, 27, "sandy-clay-loam")]
    [InlineData(33, 34, 33, "clay-loam")]
    [InlineData(10, 56, 34, "silty-clay-loam")]
    [InlineData(52, 6, 42, "sandy-clay")]
    [InlineData(6, 47, 47, "silty-clay")]
    [InlineData(20, 20, 60, "clay")]
    public void Triangle_CentresAreNamed(double sand, double silt, double clay, string name) => Assert.Equal(name, Texture.Of(sand / 100, silt / 100, clay / 100));

    // Analytic: Casagrande's lines at LL 32 %: 0.73 (32 - 20) = 8.76, 0.9 (32 - 8) = 21.6.
    [Fact]
    public void PlasticityChart_HasItsLines()
    {
        Assert.Equal(0.0876, Plasticity.ALine(0.32), 1e-12);
        Assert.Equal(0.216, Plasticity.ULine(0.32), 1e-12);
        Assert.Equal("CL", Plasticity.Class(0.32, 0.14));
        Assert.Equal("ML", Plasticity.Class(0.32, 0.05));
        Assert.Equal("CL-ML", Plasticity.Class(0.22, 0.05));
        Assert.Equal("CH", Plasticity.Class(0.60, 0.35));
        Assert.Equal("MH", Plasticity.Class(0.60, 0.20));
        var ll = Plasticity.LiquidLimit(0.12);
        Assert.Equal(0.12, (Plasticity.ALine(ll) + Plasticity.ULine(ll)) / 2, 1e-12);
    }

    // Analytic: e = Gs/rho_d - 1 and so on, worked by hand to three figures.
    [Theory]
    [InlineData(0.25, 1500, 0.767, 0.434, 0.864, 1875, 375)]
    [InlineData(0.20, 1600, 0.656, 0.396, 0.808, 1920, 320)]
    [InlineData(0.28, 1450, 0.828, 0.453, 0.897, 1856, 406)]
    public void Phases_FillACubicMetre(double w, double dry, double e, double n, double s, double wet, double water)
    {
        var p = Phases.Of(w, dry, 2650);
        Near.Printed(e, p.VoidRatio, 1e-3);
        Near.Printed(n, p.Porosity, 1e-3);
        Near.Printed(s, p.Saturation, 1e-3);
        Near.Printed(wet, p.WetDensity, 1);
        Near.Printed(water, p.Water, 1);
    }

    // Analytic: 100 mm sand at 1600, 40 of silt at 1350, 60 of clay at 900 kg/m3 are 160, 54 and 54 kg/m2 of 268. The jar shows 30 % of clay, the scale 20 %.
    [Fact]
    public void Jar_TurnsHeightsIntoMasses()
    {
        var jar = Read(Soil(100, 40, 60)).Jar.Value!;
        Assert.Equal(160.0 / 268, jar.Sand, 1e-12);
        Assert.Equal(54.0 / 268, jar.Silt, 1e-12);
        Assert.Equal(54.0 / 268, jar.Clay, 1e-12);
        Assert.Equal(0.3, jar.ClayByVolume, 1e-12);
        Assert.Equal("sandy-clay-loam", jar.Texture);
        Assert.False(jar.Times.Is); // nobody said how high the water stood
    }

    // Analytic: a column of 150 mm at 20 C wants 67 s for the sand and 11.6 h for the silt, not the two minutes and the day of folklore.
    [Fact]
    public void Jar_IsMarkedAtItsOwnTimes()
    {
        var result = Read(Soil(60, 30, 30) with { JarColumn = Length.FromMillimetres(150), JarWater = new Temperature(20) });
        var times = result.Jar.Value!.Times.Value!;
        Near.Relative(67, times.Sand, 1e-2); // 1.5 times 44.5 s
        Near.Relative(11.6 * 3600, times.Silt, 1e-2);
        Assert.DoesNotContain(result.Assumptions, a => a.Key == "mix-jar-water");
        Assert.Contains(Read(Soil(60, 30, 30) with { JarColumn = Length.FromMillimetres(150) }).Assumptions, a => a.Key == "mix-jar-water");
    }

    [Fact]
    public void Limits_AreMeasuredOrEstimatedOnTheRecord()
    {
        var measured = Read(Soil(60, 30, 30) with { LiquidLimit = new Share(0.34), PlasticLimit = new Share(0.19) });
        Assert.Equal((0.34, Tag.Given), (measured.LiquidLimit.Value, measured.LiquidLimit.Tag));
        Assert.Equal((0.19, Tag.Given), (measured.PlasticLimit.Value, measured.PlasticLimit.Tag));
        var estimated = Read(Soil(60, 30, 30));
        Assert.Equal(Tag.Assumed, estimated.LiquidLimit.Tag);
        Assert.InRange(estimated.LiquidLimit.Value - estimated.PlasticLimit.Value, Plasticity.ALine(estimated.LiquidLimit.Value), Plasticity.ULine(estimated.LiquidLimit.Value));
        Assert.Contains(estimated.LiquidLimit.Assumption, estimated.Assumptions);
    }

    [Theory]
    [InlineData(40, "lean")]
    [InlineData(100, "middling")]
    [InlineData(210, "rich")]
    public void Ribbon_IsReadByItsLength(int millimetres, string sense)
    {
        var reading = Assert.Single(Read(new SoilTests { Ribbon = Length.FromMillimetres(millimetres) }).HandTests);
        Assert.Equal(("ribbon", sense), (reading.Key, reading.Sense));
        Assert.Contains(reading.DoesNot.Key, Phrasebook.English.Keys);
    }

    internal static SoilTests Soil(int sand, int silt, int clay) =>
        new() { JarSand = Length.FromMillimetres(sand), JarSilt = Length.FromMillimetres(silt), JarClay = Length.FromMillimetres(clay) };

    internal static MixResult Read(SoilTests soil) => Read(new Building.Mix { SoilTests = soil });

    internal static MixResult Read(Building.Mix mix) => FromTests.Of(mix, Quantities.Of(FromBuilding.Of(Houses.HeronPoint with { Mix = mix })));
}
