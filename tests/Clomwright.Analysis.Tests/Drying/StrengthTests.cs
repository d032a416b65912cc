using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Weather;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Numerics.Diffusion;
using Clomwright.Testing;

namespace Clomwright.Analysis.Tests.Drying;

/// <summary>Strength from water, shrinkage, the wet surface and the material functions of EN 15026.</summary>
public sealed class StrengthTests
{
    private static readonly Strength Usual = new(0.32, 0.18, 1.2e6, 0.025);

    // Rank analytic: the published laws worked by hand for LL 32, PL 18, gamma 19 kN/m3; digits as printed in that table (one in three digits: 1 %).
    [Theory]
    [InlineData(.18, 170, 59.5, 110, 12.5, 6.26, 5.42)]
    [InlineData(.22, 45.7, 21.6, 32.8, 4.54, 2.27, 1.96)]
    [InlineData(.24, 23.7, 12.97, 17.9, 2.73, 1.36, 1.18)]
    [InlineData(.26, 12.3, 7.80, 9.80, 1.64, 0.82, 0.71)]
    [InlineData(.28, 6.36, 4.69, 5.36, 0.99, 0.49, 0.43)]
    [InlineData(.30, 3.30, 2.83, 2.93, 0.59, 0.30, 0.26)]
    [InlineData(.32, 1.71, 1.70, 1.60, 0.36, 0.18, 0.15)]
    public void UndrainedStrength_AndHeights_AreTheTable(double water, double wrothWood, double vardanegaHaigh, double whyte, double cut, double free, double layer)
    {
        var index = Usual.LiquidityIndex(water);
        Near.Relative(wrothWood, Strength.Undrained(PlasticLaw.WrothWood, index) / 1000, .01);
        Near.Relative(vardanegaHaigh, Strength.Undrained(PlasticLaw.VardanegaHaigh, index) / 1000, .01);
        Near.Relative(whyte, Strength.Undrained(PlasticLaw.Whyte, index) / 1000, .01);
        var su = Strength.Undrained(PlasticLaw.VardanegaHaigh, index);
        Assert.Equal(cut, Strength.CutHeight(su, 19_000), .0101 * cut + .005);
        Assert.Equal(free, Strength.FreeHeight(su, 19_000), .0101 * free + .005);
        Assert.Equal(layer, Strength.LayerHeight(su, 19_000), .0101 * layer + .005);
    }

    // Rank analytic: f_dry 1.2 MPa, w_eq 2.5 %, PL 18 %: k 0.149 for each per cent; 0.83, 0.39, 0.19 MPa at 5, 10, 15 %.
    [Fact]
    public void Gain_BelowThePlasticLimit_IsExponentialAndMeetsIt()
    {
        Near.Printed(.149, Usual.Gain / 100, .001);
        Near.Printed(.83, Usual.Compressive(.05) / 1e6, .01);
        Near.Printed(.39, Usual.Compressive(.10) / 1e6, .01);
        Near.Printed(.19, Usual.Compressive(.15) / 1e6, .01);
        // Rank property: continuous at the plastic limit; 1e-6 over a step of 1e-9.
        Near.Relative(Usual.Compressive(.18), Usual.Compressive(.18 - 1e-9), 1e-6);
        // Rank published (form): Touati et al. 2023: strength falls off exponentially as water rises, so its logarithm is straight.
        Assert.Equal(Math.Log(Usual.Compressive(.05)) - Math.Log(Usual.Compressive(.08)), Math.Log(Usual.Compressive(.08)) - Math.Log(Usual.Compressive(.11)), 1e-9);
    }

    // Rank property: the water at which a strength is reached is the inverse of the strength at a water, and strength never rises with water.
    [Fact]
    public void WaterForAStrength_IsTheInverse() => Gen.Double[.03, .33].ForAll(w =>
    {
        Assert.Equal(w, Usual.WaterAt(Usual.Compressive(w)), 1e-9);
        Assert.True(Usual.Compressive(w) >= Usual.Compressive(w + .001));
    });

    // Rank analytic: two lifts of 0.6 m at 18.5 kN/m3 with safety 2 ask 44 kPa: liquidity index 0.28, water 21.9 %.
    [Fact]
    public void Relift_AsWorkedByHand()
    {
        Near.Printed(.219, Usual.WaterAt(2 * 1.2 * 18_500), .001);
        Near.Printed(.28, Usual.LiquidityIndex(Usual.WaterAt(2 * 1.2 * 18_500)), .02);
    }

    // Rank analytic: w0 .25, limit .14: 17.5 % of volume, 6.2 % of length; half of it 8.8 and 3.0 %.
    [Fact]
    public void Shrinkage_AsWorkedByHand()
    {
        Near.Printed(.175, new Shrinkage(2.65, .14, 1).Volume(.25), .001);
        Near.Printed(.062, new Shrinkage(2.65, .14, 1).Linear(.25), .001);
        Near.Printed(.088, new Shrinkage(2.65, .14, .5).Volume(.25), .001);
        Near.Printed(.030, new Shrinkage(2.65, .14, .5).Linear(.25), .001);
        Assert.Equal(0, new Shrinkage(2.65, .14, 1).Volume(.10));
    }

    // Rank analytic: phases of freshly laid cob, Gs 2.65.
    [Theory]
    [InlineData(.25, 1500, .767, .434, .864, 1875)]
    [InlineData(.20, 1600, .656, .396, .808, 1920)]
    [InlineData(.28, 1450, .828, .453, .897, 1856)]
    public void Phases_AreAsWorkedByHand(double water, double dry, double voids, double porosity, double saturation, double wet)
    {
        var earth = new Earth { DryDensity = dry, DiffusivityFull = 1e-8, VapourResistance = 8 };
        Near.Printed(voids, earth.VoidRatio, .001);
        Near.Printed(porosity, earth.Porosity, .001);
        Near.Printed(saturation, earth.Saturation(water), .002);
        Near.Printed(wet, earth.WetDensity(water), 1);
    }

    // Rank analytic: a wet wall face without radiation or with a given one, worked from h_c = 4 + 4v and Le 0.865; 1 %: the table's formula for saturation is another.
    [Theory]
    [InlineData(20, .50, 0, 0, 13.58, .90)]
    [InlineData(20, .50, 1, 0, 13.58, 1.80)]
    [InlineData(20, .50, 2, 0, 13.58, 2.69)]
    [InlineData(20, .50, 4, 0, 13.58, 4.49)]
    [InlineData(10, .80, 2, 0, 8.22, .74)]
    [InlineData(15, .70, 2, 0, 11.81, 1.34)]
    [InlineData(25, .40, 3, 0, 15.96, 5.07)]
    [InlineData(5, .90, 2, 0, 4.27, .30)]
    [InlineData(20, .50, 2, 100, 16.54, 4.97)]
    [InlineData(30, .25, 3, 150, 19.49, 11.20)]
    public void WetWall_LosesAsWorked(double air, double humidity, double wind, double radiation, double surface, double perDay)
    {
        var vapour = humidity * Psychrometrics.Saturation(air);
        var (temperature, loss) = WetSurface.Wet(air, vapour, WetSurface.Convection(wind), radiation);
        Assert.Equal(surface, temperature, .05);
        Assert.Equal(perDay, loss * 86_400, .01 * perDay + .005);
        // Rank property: the form that the wall is given is the same while it is wet; 1e-6 of rounding.
        var exchange = WetSurface.Surface(air, vapour, WetSurface.Convection(wind), radiation, 0);
        Near.Relative(loss, (exchange.P - exchange.Q) / (1 + exchange.R), 1e-6);
    }

    // Rank published: EN 15026 annex, material functions; worked digits.
    [Fact]
    public void MaterialFunctions_OfEn15026_ComeBack()
    {
        static double Held(double suction) => 146 / Math.Pow(1 + Math.Pow(8e-8 * suction, 1.6), .375);
        static double Suction(double w) => .125e8 * Math.Pow(Math.Pow(146 / w, 1 / .375) - 1, .625);
        static double Kelvin(double humidity) => -1000 * 461.5 * 293.15 * Math.Log(humidity);
        static double Conductivity(double w)
        {
            var u = w - 73;
            return Math.Exp(-39.2619 + u * (.0704 + u * (-1.742e-4 + u * (-2.7953e-6 + u * (-1.1566e-7 + u * 2.5969e-9)))));
        }

        Near.Relative(42.922, Held(Kelvin(.5)), 2e-3);
        Near.Relative(79.225, Held(Kelvin(.8)), 2e-3);
        Near.Relative(129.021, Held(Kelvin(.95)), 2e-3);
        Near.Relative(3.5654e7, Suction(73), 1e-4);
        Near.Relative(1.5812e-18, Conductivity(50), 1e-3);
        Near.Relative(8.8874e-18, Conductivity(73), 1e-3);
        Near.Relative(6.3536e-16, Conductivity(140), 1e-3);
        // Rank property: a medium made of these functions gives back the difference of their integral: K over the slope of w, so that flow is K times suction. 1e-3: 4000 straight pieces.
        var medium = new Medium(w => Conductivity(w) * Slope(w), _ => 1, 20, 140, 4000);
        static double Slope(double w) => (Suction(w - .005) - Suction(w + .005)) / .01;
        var exact = 0.0;
        for (var i = 0; i < 100_000; i++)
        {
            var w = 50 + (i + .5) * 50 / 100_000;
            exact += Conductivity(w) * Slope(w) * 50 / 100_000;
        }

        Near.Relative(exact, medium.A(100) - medium.A(50), 1e-3);
    }

    // Rank property: sorption and its inverse; default 1.5, 3 and 5 % at 50, 80 and 95 % (an estimate of ours, no source).
    [Fact]
    public void Sorption_RestsWhereSaid()
    {
        var earth = WallRun.EarthOf(DryingNumbers.Of([]));
        Near.Printed(.015, earth.AtRest(.50), .002);
        Near.Printed(.030, earth.AtRest(.80), .004);
        Near.Printed(.050, earth.AtRest(.95), .002);
        foreach (var humidity in new[] { .2, .5, .8, .95 })
        {
            Near.Relative(humidity, earth.Humidity(earth.AtRest(humidity)), 1e-9);
            // The table of straight pieces is within 1 % of the curve.
            Assert.Equal(humidity, earth.Medium().B(earth.AtRest(humidity) * earth.DryDensity), .01);
        }

        Near.Relative(1, earth.Medium().B(.2 * earth.DryDensity), 1e-9);
    }
}
