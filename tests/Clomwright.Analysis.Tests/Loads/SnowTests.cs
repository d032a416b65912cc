using Clomwright.Analysis.Loads;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Analysis.Tests.Loads;

public sealed class SnowTests
{
    private const double Psf = 47.88025898;

    private static double Radians(double degrees) => degrees * Math.PI / 180;

    private static SnowFactors Thermal(double ct) => SnowFactors.Ones(false) with { Thermal = new(ct, Sources.Get("asce7-16-memory"), Tag.Code) };

    // Rank published: worked example of a flat roof in Lancaster PA by ASCE 7-16 (expert-openion.blogspot.com, 2021-08), p_g 30 psf, all factors 1: 21 psf = 1.0055 kPa.
    [Fact]
    public void FlatRoof_OfThePublishedExample_Is21Psf()
    {
        var snow = SnowOnRoof.Of(new GroundSnow(LoadEdition.Asce716, 30 * Psf), Radians(20), SnowFactors.Ones(false));
        Near.Relative(21 * Psf, snow.Flat, 1e-9);
        Near.Printed(1.0055, snow.Flat / 1000, 1e-4);
        Near.Relative(snow.Flat, snow.Balanced, 1e-12);
    }

    // Rank analytic: C_s of ASCE 7 commentary C7.4 (recalled) for a surface that is not slippery.
    [Theory]
    [InlineData(1.0, 35, 0.875)]
    [InlineData(1.0, 45, 0.625)]
    [InlineData(1.0, 60, 0.25)]
    [InlineData(1.2, 60, 0.40)]
    [InlineData(1.0, 30, 1)]
    [InlineData(1.1, 37.5, 1)]
    [InlineData(1.2, 45, 1)]
    [InlineData(1.0, 75, 0)]
    public void SlopeFactor_OfARoughRoof_FallsTo70Degrees(double ct, double degrees, double expected)
    {
        var snow = SnowOnRoof.Of(new GroundSnow(LoadEdition.Asce716, 1000), Radians(degrees), Thermal(ct));
        Assert.Equal(expected * snow.Flat, snow.Balanced, 1e-9 * snow.Flat);
    }

    // Rank analytic: mu_1 of EN 1991-1-3 table 5.2; kept at 0.8 behind an edge board (5.3.2, recalled). 1e-5 Pa: 8/15 is written to nine digits.
    [Theory]
    [InlineData(30, 0.8)]
    [InlineData(40, 0.533333333)]
    [InlineData(45, 0.4)]
    [InlineData(60, 0)]
    public void ShapeEn_FallsTo60Degrees(double degrees, double expected)
    {
        var ground = new GroundSnow(LoadEdition.En1990, 1500);
        Assert.Equal(expected * 1500, SnowOnRoof.Of(ground, Radians(degrees), SnowFactors.Ones(false)).Balanced, 1e-5);
        Assert.Equal(0.8 * 1500, SnowOnRoof.Of(ground, Radians(degrees), SnowFactors.Ones(true)).Balanced, 1e-9);
    }

    // Rank published: least snow on a low slope is I_s p_g up to 20 psf, and 20 I_s psf above; exactly at the limit both agree.
    [Theory]
    [InlineData(15, 15)]
    [InlineData(20, 20)]
    [InlineData(25, 20)]
    [InlineData(40, 28)]
    public void LowSlope_KeepsTheLeastSnow(double ground, double expected) =>
        Assert.Equal(expected * Psf, SnowOnRoof.Of(new GroundSnow(LoadEdition.Asce716, ground * Psf), Radians(5), SnowFactors.Ones(false)).Balanced, 1e-6);

    [Fact]
    public void Snow_OfANewerMap_IsAtStrengthLevelAndHasNoImportance()
    {
        var older = SnowOnRoof.Of(new GroundSnow(LoadEdition.Asce716, 1000), 0.4, "III", true);
        var newer = SnowOnRoof.Of(new GroundSnow(LoadEdition.Asce722, 1000), 0.4, "III", true);
        Assert.Equal(1, older.ServiceFactor);
        Assert.Equal(0.7, newer.ServiceFactor);
        Near.Relative(1.1, older.Flat / newer.Flat, 1e-12);
    }

    // Rank property: every printed equation holds, over editions, slopes and loads.
    [Fact]
    public void EveryPrintedSnowEquation_Holds() => Gen.Select(Gen.Enum<LoadEdition>(), Gen.Double[0, 4000], Gen.Double[0, 1.4], Gen.Int[0, 4].Select(k => k == 4 ? null : ((string[])["I", "II", "III", "IV"])[k]), Gen.Bool).ForAll(
        (edition, ground, slope, category, retained) =>
        {
            var snow = SnowOnRoof.Of(new GroundSnow(edition, ground), slope, category, retained);
            Printed.Holds([snow.How]);
            Printed.HaveWords(snow.Assumptions);
        });

    [Fact]
    public void SnowAndWindOfTwoEditions_AreRefused()
    {
        Assert.Equal("analysis.loads.mixed-editions", LoadEditions.Refusal(new(LoadEdition.Asce716, 1000), new(LoadEdition.Asce722, 45))!.Key);
        Assert.Null(LoadEditions.Refusal(new(LoadEdition.Asce722, 1000), new(LoadEdition.Asce722, 45)));
    }
}
