using Clomwright.Testing;
namespace Clomwright.Evidence.Tests;

public class AmountTextTests
{
    // Rank: analytic; each pair is one value in two systems by the published factors, rounded by hand.
    [Theory]
    [InlineData(5.3333, Dimension.Number, "5.33", "5.33")]
    [InlineData(12, Dimension.Count, "12", "12")]
    [InlineData(0.125, Dimension.Fraction, "12.5 %", "12.5 %")]
    [InlineData(2.29235, Dimension.Length, "7 ft 6 1/4 in", "2.29 m")]
    [InlineData(0.0127, Dimension.Length, "1/2 in", "13 mm")]
    [InlineData(0.0015875, Dimension.Length, "1/16 in", "1.6 mm")]
    [InlineData(0.000_05, Dimension.Length, "0.05 mm", "0.05 mm")]
    [InlineData(0.000_002, Dimension.Length, "0.002 mm", "0.002 mm")]
    [InlineData(-0.000_16, Dimension.Length, "-0.16 mm", "-0.16 mm")]
    [InlineData(1e-9, Dimension.Length, "0 in", "0 mm")]
    [InlineData(0, Dimension.Length, "0 in", "0 mm")]
    [InlineData(18.580608, Dimension.Area, "200 ft²", "18.6 m²")]
    [InlineData(0.01, Dimension.Area, "15.5 in²", "100 cm²")]
    [InlineData(5, Dimension.Volume, "6.54 yd³", "5 m³")]
    [InlineData(0.019, Dimension.Volume, "0.671 ft³", "19 L")]
    [InlineData(20, Dimension.Mass, "44.1 lb", "20 kg")]
    [InlineData(12_000, Dimension.Mass, "26500 lb", "12 t")]
    [InlineData(6227.5, Dimension.Force, "1400 lbf", "6.23 kN")]
    [InlineData(4086, Dimension.LineLoad, "280 lbf/ft", "4.09 kN/m")]
    [InlineData(413_685.4, Dimension.Stress, "60 psi", "414 kPa")]
    [InlineData(1.2e6, Dimension.Stress, "174 psi", "1.2 MPa")]
    [InlineData(957.6, Dimension.AreaLoad, "20 psf", "0.958 kPa")]
    [InlineData(1355.8, Dimension.Moment, "1000 lbf ft", "1.36 kN m")]
    [InlineData(Math.PI * 3 / 4, Dimension.Angle, "135°", "135°")]
    [InlineData(0.04, Dimension.Slope, "1/2 in per ft", "4 %")]
    [InlineData(1.0 / 3, Dimension.Slope, "4 in 12", "33.3 %")]
    [InlineData(1762, Dimension.Density, "110 lb/ft³", "1760 kg/m³")]
    [InlineData(46.9392, Dimension.Speed, "105 mph", "46.9 m/s")]
    [InlineData(20, Dimension.Temperature, "68 °F", "20 °C")]
    [InlineData(-0.1, Dimension.Temperature, "32 °F", "0 °C")]
    [InlineData(1.5, Dimension.Days, "1.5 d", "1.5 d")]
    [InlineData(21.4, Dimension.Days, "21 d", "21 d")]
    [InlineData(1800, Dimension.Time, "30 min", "30 min")]
    [InlineData(double.NaN, Dimension.Stress, "?", "?")]
    public void In_EachSystem_IsWhatCanBeRead(double si, Dimension dimension, string imperial, string metric)
    {
        Assert.Equal(imperial, AmountText.In(new(si, dimension), UnitSystem.Imperial));
        Assert.Equal(metric, AmountText.In(new(si, dimension), UnitSystem.Metric));
    }

    // By hand.
    [Theory]
    [InlineData(7.2e-14, "7 × 10⁻¹⁴")]
    [InlineData(8e-8, "8 × 10⁻⁸")]
    [InlineData(3e12, "3 × 10¹²")]
    [InlineData(4, "4")]
    [InlineData(double.NaN, "?")]
    public void Power_IsWhatPeopleWrite(double value, string text) => Assert.Equal(text, AmountText.Power(value));

    [Fact]
    public void Both_SameInBoth_IsPrintedOnce()
    {
        Assert.Equal("135°", AmountText.Both(new Angle(135), UnitSystem.Imperial));
        Assert.Equal("60 psi (414 kPa)", AmountText.Both(new Stress(413_685.4), UnitSystem.Imperial));
        Assert.Equal("414 kPa (60 psi)", AmountText.Both(new Stress(413_685.4), UnitSystem.Metric));
    }

    [Fact]
    public void PrintedWithinThreeFigures()
    {
        var dimensions = Gen.Enum<Dimension>().Where(d => Units.Of(d).Any() && d is not (Dimension.Length or Dimension.Angle or Dimension.Temperature or Dimension.Days));
        Gen.Select(dimensions, Gen.Double[-6, 9], Gen.Enum<UnitSystem>()).ForAll((dimension, power, system) =>
        {
            var si = Math.Pow(10, power);
            var text = AmountText.In(new(si, dimension), system);
            // Half a unit of the third figure, at most 0.5 % of the value.
            return QuantityText.TryParse(text, dimension, out var back, out _) && Math.Abs(back.Si - si) <= 0.00501 * si;
        });
    }

    // Rank analytic: a US gallon is 231 cubic inches, a litre a cubic decimetre.
    [Theory]
    [InlineData(2.64, "697 gal", "2640 L")]
    [InlineData(0.5, "132 gal", "500 L")]
    [InlineData(0.012, "3.17 gal", "12 L")]
    public void WhatIsPoured_IsInGallonsOrLitres(double cubicMetres, string gallons, string litres)
    {
        Assert.Equal(gallons, AmountText.Poured(new Volume(cubicMetres), UnitSystem.Imperial));
        Assert.Equal(litres, AmountText.Poured(new Volume(cubicMetres), UnitSystem.Metric));
    }
}
