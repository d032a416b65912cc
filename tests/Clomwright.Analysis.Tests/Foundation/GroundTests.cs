using Clomwright.Analysis.Anchorage;
using Clomwright.Analysis.Foundation;
using Clomwright.Testing;

namespace Clomwright.Analysis.Tests.Foundation;

/// <summary>Tees, bearing and frost against published tables and hand-worked cases.</summary>
public sealed class GroundTests
{
    private const double Degree = Math.PI / 180;

    // Rank analytic: 0.6 gamma t D (B + D tan(theta)), a body of cob with a wedge at each end, by hand: gamma 18 kN/m3, t 0.45, D 0.9, B 0.6 m, 30 degrees: V 0.45344 m3, G 8.162, allowed 4.8972 kN; straight prism G 4.374 kN.
    [Fact]
    public void Tee_WithItsWedge_HoldsAsWorkedByHand()
    {
        var tee = TeeAnchor.Allowable(18_000, 0.45, 0.9, 0.6, 30 * Degree, 4);
        Near.Printed(0.45344, tee.How.Steps[0].Result.Value.Si, 1e-5);
        Near.Printed(8.1620, tee.How.Steps[1].Result.Value.Si / 1000, 1e-4);
        Near.Printed(4.8972, tee.Value / 1000, 1e-4);
        Near.Printed(4.374, TeeAnchor.Allowable(18_000, 0.45, 0.9, 0.6, 0, 4).Value / 0.6 / 1000, 1e-3);
        Near.Printed(2.683, TeeAnchor.Allowable(17_500, 0.45, 0.6, 0.6, 30 * Degree, 4).Value / 1000, 1e-3);
        Printed.Holds([tee.How]);
    }

    // Rank property: tees close together do not count the same cob twice: never more than a full length of wall, and no jump where wedges meet.
    [Fact]
    public void CrowdedTees_ShareTheCobBetweenThem() => Gen.Select(Gen.Double[0.2, 0.6], Gen.Double[0.3, 1.2], Gen.Double[0.3, 0.9], Gen.Double[0.01, 0.7], Gen.Double[0.2, 3]).ForAll((t, d, b, theta, s) =>
    {
        var v = TeeAnchor.Volume(t, d, b, theta, s);
        Assert.True(v <= t * d * s * (1 + 1e-12) && v <= t * d * (b + d * Math.Tan(theta)) * (1 + 1e-12));
        Assert.True(v > 0);
        var meet = b + 2 * d * Math.Tan(theta);
        Near.Relative(TeeAnchor.Volume(t, d, b, theta, meet * (1 + 1e-9)), TeeAnchor.Volume(t, d, b, theta, meet * (1 - 1e-9)), 1e-6);
        Printed.Holds([TeeAnchor.Allowable(17_000, t, d, b, theta, s).How]);
    });

    // Rank published: Meyerhof and Adams, model plates 100 mm square in dense sand, K_u tan(phi) 0.92, s 1.48 to 2.92: 63, 279, 738, 1531 N. 0.5 %: the table's own rounding.
    [Theory]
    [InlineData(1, 1.48, 63)]
    [InlineData(2, 1.96, 279)]
    [InlineData(3, 2.44, 738)]
    [InlineData(4, 2.92, 1531)]
    public void BuriedPlate_OfThePublishedTests_ComesBack(double ratio, double shape, double newtons) =>
        Near.Relative(newtons, TeeAnchor.BuriedPlate(17_000, 0.1, 0.1 * ratio, 0.92, shape), 0.005);

    // Rank published: IRC 2018 table R802.11, 24 ft, 115 mph, under 5:12, 24 in spacing: 178 lb = 0.792 kN, 1.299 kN/m.
    [Fact]
    public void Uplift_OfThePublishedTable_ComesBack()
    {
        var perMetre = UpliftTable.PerMetre(24, 115, 0.3)!.Value;
        Near.Printed(1.299, perMetre / 1000, 1e-3);
        Near.Printed(0.792, perMetre * 0.6096 / 1000, 1e-3);
        Near.Printed(178, perMetre * 0.6096 / 4.4482216152605, 1e-6);
        Assert.Equal(UpliftTable.PerMetre(28, 120, 0.5), UpliftTable.PerMetre(25, 116, 0.5));
        Assert.Null(UpliftTable.PerMetre(40, 115, 0.3));
    }

    // Rank published (N_c, N_q, printed in every table of them) and analytic (N_gamma and Terzaghi, by hand from their formulas): bearing factors at 30 degrees.
    [Fact]
    public void BearingFactors_At30Degrees_AreTheTable()
    {
        Near.Printed(30.140, Bearing.Nc(30 * Degree), 1e-3);
        Near.Printed(18.401, Bearing.Nq(30 * Degree), 1e-3);
        Near.Printed(15.668, Bearing.NgMeyerhof(30 * Degree), 1e-3);
        Near.Printed(15.070, Bearing.NgHansen(30 * Degree), 1e-3);
        Near.Printed(22.402, Bearing.NgVesic(30 * Degree), 1e-3);
        Near.Printed(37.162, Bearing.NcTerzaghi(30 * Degree), 1e-3);
        Near.Printed(22.456, Bearing.NqTerzaghi(30 * Degree), 1e-3);
        Near.Relative(Bearing.Nc(1e-6), Bearing.Nc(0), 1e-5);
    }

    // Rank published: worked example of a square footing in local shear (byjus.com), c 24 kPa, N_c' 14.8, N_gamma' 3.2, B 2 m, gamma 18, at the surface: 353.92 kPa with 2c/3.
    [Fact]
    public void Square_InLocalShear_IsThePublishedExample() =>
        Near.Printed(353.92, Bearing.Square(2.0 / 3 * 24_000, 18_000, 0, 2, 14.8, 0, 3.2) / 1000, 1e-2);

    // Rank analytic: strip, c 5 kPa, 28 degrees, gamma 18, B 0.6, D 0.9 m, Meyerhof: 427.9 kPa, a third of it 142.6.
    [Fact]
    public void Strip_IsAsWorkedByHand()
    {
        var phi = 28 * Degree;
        var q = Bearing.Strip(5_000, 18_000, 0.9, 0.6, Bearing.Nc(phi), Bearing.Nq(phi), Bearing.NgMeyerhof(phi));
        Near.Printed(427.9, q / 1000, 0.1);
        Near.Printed(142.6, q / 3000, 0.1);
    }

    // Rank analytic: N 60 kN/m on 0.6 m at e 0.05, 0.10 (exactly the middle third) and 0.15 m.
    [Theory]
    [InlineData(0.05, 150, 50, 0.6, 120)]
    [InlineData(0.10, 200, 0, 0.6, 150)]
    [InlineData(0.15, 266.667, 0, 0.45, 200)]
    public void EccentricStrip_PressesAsWorkedByHand(double e, double most, double least, double contact, double even)
    {
        var p = Bearing.Pressure(60_000, 0.6, e);
        Near.Printed(most, p.Most / 1000, 1e-2);
        Assert.Equal(least, p.Least / 1000, 1e-6);
        Near.Relative(contact, p.Contact, 1e-9);
        Near.Relative(even, Bearing.EvenPressure(60_000, 0.6, e) / 1000, 1e-9);
        Assert.Equal(double.PositiveInfinity, Bearing.Pressure(60_000, 0.6, 0.3).Most);
    }

    // Rank analytic: k 0.78 BTU/(h ft F), FI 1500 F days, n 0.75, 100 pcf at 15 %, 90 days, 45 F: Stefan 4.4159 ft, lambda 0.8938, Berggren 3.9469 ft, their product as rounded: half a unit of its third decimal.
    [Fact]
    public void Frost_IsAsWorkedByHand()
    {
        const double btu = 1055.05585262, foot = 0.3048, hour = 3600, fahrenheit = 5.0 / 9;
        const double cubic = foot * foot * foot;
        var k = 0.78 * btu / (hour * foot * fahrenheit);
        var latent = 144 * 100 * 0.15 * btu / cubic;
        var capacity = 100 * (0.17 + 0.75 * 0.15) * btu / (cubic * fahrenheit);
        var index = 1500 * fahrenheit;
        var stefan = Frost.Stefan(k, 0.75, index, latent);
        Near.Printed(4.4159, stefan / foot, 1e-4);
        Near.Printed(1.346, stefan, 1e-3);
        var lambda = Frost.Correction(Frost.FusionParameter(0.75, index, 90, capacity, latent), Frost.ThermalRatio(13 * fahrenheit, 0.75, index, 90));
        Near.Printed(0.8938, lambda, 1e-4);
        Near.Printed(3.9469, lambda * stefan / foot, 1e-3);
    }
}
