using Clomwright.Analysis.Loads;
using Clomwright.Testing;

namespace Clomwright.Analysis.Tests.Loads;

public sealed class WindTests
{
    private const double Psf = 47.88025898, Mph = 0.44704, Foot = 0.3048;

    // Rank analytic: K_z formula of 7-16 (recalled) at 15 ft; B 0.57 is published.
    [Theory]
    [InlineData("B", 0.5747)]
    [InlineData("C", 0.8489)]
    [InlineData("D", 1.0302)]
    public void ExposureCoefficient_At15Feet_IsTheTable(string exposure, double expected)
    {
        Near.Printed(expected, WindAsce.ExposureCoefficient(LoadEdition.Asce716, exposure, 15 * Foot)!.Value, 1e-4);
        Assert.Equal(WindAsce.ExposureCoefficient(LoadEdition.Asce716, exposure, 15 * Foot), WindAsce.ExposureCoefficient(LoadEdition.Asce716, exposure, 1));
        // Both editions print the same two digits at 15 ft.
        Assert.Equal(expected, WindAsce.ExposureCoefficient(LoadEdition.Asce722, exposure, 15 * Foot)!.Value, 0.006);
    }

    // Rank published inputs: single-storey house of the ASCE wind guide, V 105 mph, K_h 0.57, K_d 0.85, K_e 1: 13.6745 psf (0.6547 kPa).
    [Fact]
    public void VelocityPressure_OfThePublishedHouse_Is13Point67Psf()
    {
        var q = WindAsce.VelocityPressure(new BasicWind(LoadEdition.Asce716, 105 * Mph), 0.57, 0);
        Near.Printed(13.6745, q.Value / Psf, 1e-4);
        Near.Printed(0.6547, q.Value / 1000, 1e-4);
        Printed.Holds([q.How]);
    }

    // Rank analytic on published coefficients (fig. 27.3-1): 115 mph, K_h 0.57, 20 degrees, h/L up to 0.25.
    [Fact]
    public void Suction_At20Degrees_IsAsWorkedByHand()
    {
        var q = WindAsce.VelocityPressure(new BasicWind(LoadEdition.Asce716, 115 * Mph), 0.57, 0);
        Near.Printed(16.403, q.Value / Psf, 1e-3);
        var load = WindAsce.Of(LoadEdition.Asce716, q, new WindShape(3, Math.PI / 9, 12, 0));
        Near.Printed(-7.135, load.WindwardUp / Psf, 1e-3);
        Near.Printed(-11.318, load.LeewardUp / Psf, 1e-3);
        Near.Printed(-15.337, load.EaveUp / Psf, 1e-3);
        Near.Relative(q.Value * (0.85 * 0.2 + 0.18), load.WindwardDown, 1e-9);
        Printed.Holds(load.How);
        Printed.HaveWords(load.Assumptions);
    }

    // Rank published: the rows of fig. 27.3-1 that were read, windward least and most, leeward.
    [Theory]
    [InlineData(15, 0.25, -0.5, 0.0, -0.5)]
    [InlineData(20, 0.25, -0.3, 0.2, -0.6)]
    [InlineData(25, 0.25, -0.2, 0.3, -0.6)]
    [InlineData(15, 0.5, -0.7, -0.18, -0.5)]
    [InlineData(20, 0.5, -0.4, 0.0, -0.6)]
    [InlineData(20, 1.0, -0.7, -0.18, -0.6)]
    [InlineData(17.5, 0.25, -0.4, 0.1, -0.55)]
    [InlineData(20, 0.375, -0.35, 0.1, -0.6)]
    public void RoofCoefficients_AreTheFigure(double degrees, double ratio, double least, double most, double lee)
    {
        var c = WindAsce.RoofCoefficients(degrees * Math.PI / 180, ratio);
        Assert.Equal(least, c.WindwardLeast, 1e-9);
        Assert.Equal(most, c.WindwardMost, 1e-9);
        Assert.Equal(lee, c.Leeward, 1e-9);
    }

    // Rank published: worked example of EN 1991-1-4 (scribd.com 797462041), v_b 22 m/s, terrain III, z 7.02 m. Its mean speed to a whole last digit: it prints 14.939 where its own c_r 0.67907 times 22 is 14.9395.
    [Fact]
    public void PeakPressureEn_OfThePublishedExample_Is449Pascal()
    {
        var q = WindEn.PeakPressure(22, "III", 7.02)!;
        Near.Printed(449.2, q.Value, 0.1);
        Near.Printed(0.67907, q.How.Steps.Single(s => s.Key == "wind-roughness-factor").Result.Value.Si, 1e-5);
        Near.Printed(0.31718, q.How.Steps.Single(s => s.Key == "wind-turbulence").Result.Value.Si, 1e-5);
        Near.Printed(14.939, q.How.Steps.Single(s => s.Key == "wind-mean-speed").Result.Value.Si, 2e-3);
        Printed.Holds([q.How]);
    }

    // Rank published: Steel Buildings in Europe, v_b 26, terrain III, z 8: c_r 0.706 with k_r rounded to 0.215, which is worth 0.25 %.
    [Fact]
    public void RoughnessEn_OfTheSecondPublishedExample_Is0Point706() =>
        Near.Relative(0.706, WindEn.PeakPressure(26, "III", 8)!.How.Steps.Single(s => s.Key == "wind-roughness-factor").Result.Value.Si, 2.5e-3);

    // Rank analytic: EN 1991-1-4, 4.3 to 4.5, by hand: v_b 24, terrain II (z_0 0.05), z 4 m.
    [Fact]
    public void PeakPressureEn_InOpenLand_IsAsWorkedByHand()
    {
        var q = WindEn.PeakPressure(24, "II", 4)!;
        double Of(string key) => q.How.Steps.Single(s => s.Key == key).Result.Value.Si;
        Near.Printed(0.83259, Of("wind-roughness-factor"), 1e-5);
        Near.Printed(19.982, Of("wind-mean-speed"), 1e-3);
        Near.Printed(0.22820, Of("wind-turbulence"), 1e-5);
        Near.Printed(648.2, q.Value, 0.1);
        Near.Printed(1.8005, q.Value / (0.5 * 1.25 * 24 * 24), 1e-4);
    }

    [Fact]
    public void UnknownExposure_IsNotChecked()
    {
        Assert.Equal("analysis.loads.exposure-unknown", WindOnHouse.Of(new(LoadEdition.Asce716, 45), null, new(3, 0.3, 6, 0)).NotChecked!.Key);
        Assert.Equal("analysis.loads.exposure-unknown", WindOnHouse.Of(new(LoadEdition.En1990, 25), "B", new(3, 0.3, 6, 0)).NotChecked!.Key);
    }

    // Rank property: every printed equation holds, over editions, exposures and shapes.
    [Fact]
    public void EveryPrintedWindEquation_Holds() => Gen.Select(Gen.Enum<LoadEdition>(), Gen.Double[20, 70], Gen.Double[2, 12], Gen.Double[0, 1.3], Gen.Double[4, 15]).ForAll(
        (edition, speed, height, slope, width) =>
        {
            var wind = WindOnHouse.Of(new(edition, speed), edition == LoadEdition.En1990 ? "II" : "C", new(height, slope, width, 250));
            Assert.True(wind.Is);
            Printed.Holds(wind.Value!.How);
            Assert.True(wind.Value.EaveUp < wind.Value.WindwardDown);
        });
}
