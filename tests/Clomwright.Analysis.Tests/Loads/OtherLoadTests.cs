using Clomwright.Analysis.Loads;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Tests.Loads;

public sealed class OtherLoadTests
{
    private const double Psf = 47.88025898, SquareFoot = 0.09290304, Foot = 0.3048;

    // Rank analytic: L_r = 20 R_1 R_2 psf, never under 12 (ASCE 7 section 4.8).
    [Theory]
    [InlineData(300, 4, 18.0)]
    [InlineData(300, 6, 16.2)]
    [InlineData(700, 12, 12.0)]
    [InlineData(200, 4, 20.0)]
    [InlineData(600, 4, 12.0)]
    [InlineData(100, 12, 12.0)]
    public void RoofLive_ByAreaAndSlope_IsAsWorkedByHand(double squareFeet, double inchesPerFoot, double expected)
    {
        var live = RoofLiveLoad.Asce(squareFeet * SquareFoot, inchesPerFoot / 12);
        Near.Relative(expected * Psf, live.Value, 1e-9);
        Printed.Holds([live.How]);
        Printed.Holds([RoofLiveLoad.En().How]);
    }

    // Rank analytic: D 2, S 1.5, W -1.2 kPa in the sums of ASCE 7-16 2.3 and 2.4 (as NYC BC 1605 prints them) and of EN 1990 (6.10), by hand. 1e-12: rounding of a short sum.
    [Fact]
    public void Combinations_OfThreeLoads_AreAsWorkedByHand()
    {
        static double Effect(LoadKind k) => k switch { LoadKind.Dead => 2, LoadKind.Snow => 1.5, LoadKind.Wind => -1.2, _ => 0 };
        Assert.Equal(3.5, Sum(LoadEdition.Asce716, LoadForm.AllowableStress, "D + S"), 1e-12);
        Assert.Equal(0.48, Sum(LoadEdition.Asce716, LoadForm.AllowableStress, "0.6D + 0.6W"), 1e-12);
        Assert.Equal(4.8, Sum(LoadEdition.Asce716, LoadForm.Strength, "1.2D + 1.6S"), 1e-12);
        Assert.Equal(0.6, Sum(LoadEdition.Asce716, LoadForm.Strength, "0.9D + W"), 1e-12);
        Assert.Equal(4.95, Sum(LoadEdition.En1990, LoadForm.Strength, "1.35D + 1.5S"), 1e-12);
        Assert.Equal(0, Sum(LoadEdition.En1990, LoadForm.Strength, "0.9D + 1.5W"), 1e-12);
        // 7-22: 1.0 S in strength form, 0.7 S every day, recalled.
        Assert.Equal(3.9, Sum(LoadEdition.Asce722, LoadForm.Strength, "1.2D + S"), 1e-12);
        Assert.Equal(3.05, Sum(LoadEdition.Asce722, LoadForm.AllowableStress, "D + 0.7S"), 1e-12);

        static double Sum(LoadEdition edition, LoadForm form, string key) => Combinations.Of(edition, form).Single(c => c.Key == key).Sum(Effect);
    }

    // Rank published: EN 1991-1-1, 3.3.2(1), as quoted on public pages: imposed loads on roofs of category H need not stand together with snow or wind; ASCE 7 names them as alternatives of each other, so no sum of any edition has two of live load, snow and rain.
    [Fact]
    public void RoofLiveLoad_StandsTogetherWithNoSnow_AndInEnWithNoWind()
    {
        foreach (var edition in Enum.GetValues<LoadEdition>())
        {
            foreach (var form in Enum.GetValues<LoadForm>())
            {
                var live = Combinations.Of(edition, form).Where(c => c.Factor(LoadKind.RoofLive) > 0).ToList();
                Assert.NotEmpty(live);
                Assert.All(live, c => Assert.Equal(0, c.Factor(LoadKind.Snow) + c.Factor(LoadKind.Rain) + (edition == LoadEdition.En1990 ? c.Factor(LoadKind.Wind) : 0)));
            }
        }
    }

    // Rank property: keys are unique, and where the dead load holds the roof down it is the least one and under its full value.
    [Fact]
    public void Combinations_HaveUniqueKeysAndHelpfulDeadLoads()
    {
        foreach (var edition in Enum.GetValues<LoadEdition>())
        {
            foreach (var form in Enum.GetValues<LoadForm>())
            {
                var all = Combinations.Of(edition, form);
                Assert.Equal(all.Count, all.Select(c => c.Key).Distinct().Count());
                Assert.All(all, c => Assert.Equal(c.Factor(LoadKind.Dead) < 1 || c.Key == "D + E", c.DeadIsLeast));
            }
        }
    }

    // Rank analytic: ASCE 7-16 12.8, T_a = 0.02 h^0.75 (recalled) and C_s = S_DS/(R/I_e), by hand: h 9 ft, S_DS 0.5, R 1.5, W 250 kN: T_a 0.10392 s, C_s 0.33333, V 83.33 kN.
    [Fact]
    public void BaseShear_OfAPlainHouse_IsAsWorkedByHand()
    {
        var site = new Site { Loads = "asce7-16", SeismicSds = 0.5, SeismicSd1 = 0.3, SeismicS1 = 0.2, RiskCategory = "II" };
        var known = Seismic.Of(site, [new SeismicLevel(250e3, 9 * Foot)], 9 * Foot);
        var load = known.Value!;
        Near.Printed(0.10392, load.How.Steps.Single(s => s.Key == "seismic-period").Result.Value.Si, 1e-5);
        Near.Printed(0.33333, load.Coefficient, 1e-5);
        Near.Printed(83.33, load.BaseShear / 1000, 1e-2);
        Near.Relative(0.05 * 6 * load.BaseShear, load.AccidentalTorsion(6), 1e-12);
        Assert.Equal("response-factor", load.Assumptions.Single().Key);
        Assert.Empty(Seismic.Of(site, [new SeismicLevel(250e3, 9 * Foot)], 9 * Foot, 2).Value!.Assumptions);
        Printed.Holds([load.How]);
        Printed.HaveWords(load.Assumptions);
    }

    // Rank property: level forces share the base shear by weight and height (k = 1 up to 0.5 s).
    [Fact]
    public void LevelForces_ShareTheBaseShear()
    {
        var site = new Site { Loads = "asce7-22", SeismicSds = 1.0, SeismicSd1 = 0.6, SeismicS1 = 0.7, RiskCategory = "III" };
        var load = Seismic.Of(site, [new(100e3, 2), new(300e3, 1)], 3).Value!;
        Near.Relative(load.BaseShear * 200 / 500, load.LevelForces[0], 1e-12);
        Near.Relative(load.BaseShear, load.LevelForces.Sum(), 1e-12);
        Printed.Holds([load.How]);
    }

    [Fact]
    public void MissingOrForeignAccelerations_AreNotChecked()
    {
        Assert.Equal("analysis.loads.seismic-missing", Seismic.Of(new Site { Loads = "asce7-16", SeismicSds = 0.5 }, [], 3).NotChecked!.Key);
        Assert.Equal("analysis.loads.no-edition", Seismic.Of(new Site(), [], 3).NotChecked!.Key);
        Assert.Equal("analysis.loads.seismic-en", Seismic.Of(new Site { Loads = "en1990", SeismicSds = 0.5 }, [], 3).NotChecked!.Key);
    }

    // Rank published: flat-roof snow up to 30 psf need not go with an earthquake; above it, 20 % does. Exactly at the limit it need not.
    [Theory]
    [InlineData(30.0, 0)]
    [InlineData(30.001, 0.2)]
    public void SnowShare_BeginsAbove30Psf(double flat, double share) => Assert.Equal(share, Seismic.SnowShare(LoadEdition.Asce716, flat * 47.880258980335839));

    // Rank published: R. Roy, Timber Framing for the Rest of Us, appendix B, design example: 8 in of earth, 2 in of stone, 70 psf of snow, 15 psf of structure: 185 psf = 8.858 kPa.
    [Fact]
    public void EarthRoof_OfThePublishedExample_Weighs185Psf()
    {
        var earth = RoofMaterial.Find("ordinary-earth")!.Weight(8 * 0.0254, wet: true);
        var stone = RoofMaterial.Find("crushed-stone")!.Weight(2 * 0.0254, wet: true);
        var total = earth + stone + (70 + 15) * Psf;
        // 1e-4: the data file holds 18,850 N/m3 for 10 psf to the inch.
        Near.Relative(80 * Psf, earth, 1e-4);
        Near.Relative(185 * Psf, total, 1e-4);
        Near.Printed(8.858, total / 1000, 1e-3);
    }

    // Rank published: The Year of Mud, 2008-10-07: 35 by 35 ft of pond liner weighed 380 lb: 0.3102 psf = 14.85 Pa, whatever depth is written.
    [Fact]
    public void PondLiner_WeighsWhatWasWeighed()
    {
        Near.Printed(14.85, RoofMaterial.Find("epdm")!.Weight(0.001, wet: false), 1e-2);
        Near.Printed(0.3102, RoofMaterial.Find("epdm")!.Weight(0.05, wet: true) / Psf, 1e-4);
    }

    [Fact]
    public void EveryRoofMaterial_IsHeavierWetThanDry() =>
        Assert.All(RoofMaterial.All, m => Assert.True(m.Dry.Value > 0 && m.Dry.Value <= m.Saturated.Value, m.Key));
}
