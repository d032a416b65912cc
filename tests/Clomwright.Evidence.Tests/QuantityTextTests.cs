using Clomwright.Testing;

namespace Clomwright.Evidence.Tests;

public class QuantityTextTests
{
    [Theory]
    [InlineData("135 deg", 135)]
    [InlineData("135°", 135)]
    [InlineData("-7.5 deg", -7.5)]
    [InlineData("22 1/2 deg", 22.5)]
    [InlineData("0 rad", 0)]
    public void Angle_Written_IsKeptInDegrees(string text, double degrees)
    {
        Assert.True(QuantityText.TryParse(text, out Angle angle, out var problem));
        Assert.Null(problem);
        Assert.Equal(degrees, angle.Degrees);
    }

    [Fact]
    public void Angle_InRadians_IsTheSameAngle()
    {
        Assert.True(QuantityText.TryParse("1.5707963267948966 rad", out Angle angle, out _));
        // Rank: analytic, a quarter turn. One rounding of the product.
        Assert.Equal(90, angle.Degrees, 1e-13);
    }

    // Rank: analytic; each is the ratio of two written numbers, so exact to the double.
    [Theory]
    [InlineData("4 %", 0.04)]
    [InlineData("7 %", 0.07)]
    [InlineData("57 %", 0.57)]
    [InlineData("-1.5 %", -0.015)]
    [InlineData("1/2 in per ft", 1.0 / 24)]
    [InlineData("1/2 in/ft", 1.0 / 24)]
    [InlineData("1/2\" per ft", 1.0 / 24)]
    [InlineData("1/2 in per foot", 1.0 / 24)]
    [InlineData("20 mm per m", 0.02)]
    [InlineData("20 mm/m", 0.02)]
    [InlineData("1 in per 4 ft", 1.0 / 48)]
    [InlineData("4 in 12", 4.0 / 12)]
    [InlineData("4:12", 4.0 / 12)]
    [InlineData("4/12", 4.0 / 12)]
    [InlineData("2 1/2 in 12", 2.5 / 12)]
    [InlineData("1:20", 0.05)]
    [InlineData("1 in 20", 0.05)]
    [InlineData("-1:20", -0.05)]
    [InlineData("0 deg", 0)]
    public void Slope_Written_IsRiseOverRun(string text, double expected)
    {
        Assert.True(QuantityText.TryParse(text, out Slope slope, out var problem));
        Assert.Null(problem);
        Assert.Equal(expected, slope.RiseOverRun);
    }

    [Theory]
    [InlineData("")]
    [InlineData("steep")]
    [InlineData("0.04")]
    [InlineData("4")]
    [InlineData("1:0")]
    [InlineData("0:0")]
    [InlineData("90 deg")]
    [InlineData("1/2 in")]
    [InlineData("1/2 in per")]
    [InlineData("1/2 per ft")]
    [InlineData("1:2:3")]
    [InlineData("1e999 %")]
    public void Slope_Unreadable_SaysWhatIsRight(string text)
    {
        Assert.False(QuantityText.TryParse(text, out Slope slope, out var problem));
        Assert.Equal(default, slope);
        Assert.Equal("evidence.slope-unreadable", problem!.Key);
    }

    [Theory]
    [InlineData(0.04, "4 %")]
    [InlineData(0.07, "7 %")]
    [InlineData(1.0 / 24, "1/2 in per ft")]
    [InlineData(1.0 / 3, "4 in per ft")]
    [InlineData(-0.015, "-1.5 %")]
    [InlineData(0, "0 %")]
    public void Slope_Writing_IsTheShortest(double ratio, string text) => Assert.Equal(text, SlopeText.Written(new Slope(ratio)));

    [Theory]
    [InlineData("100 kPa", Dimension.Stress, 100_000)]
    [InlineData("0.4 MPa", Dimension.Stress, 400_000)]
    [InlineData("250 Pa", Dimension.Stress, 250)]
    [InlineData("1.0 kPa", Dimension.AreaLoad, 1000)]
    [InlineData("10 m/s", Dimension.Speed, 10)]
    [InlineData("36 km/h", Dimension.Speed, 10)]
    [InlineData("2 m3", Dimension.Volume, 2)]
    [InlineData("2 m³", Dimension.Volume, 2)]
    [InlineData("19 L", Dimension.Volume, 0.019)]
    [InlineData("5 kg", Dimension.Mass, 5)]
    [InlineData("1.5 t", Dimension.Mass, 1500)]
    [InlineData("2 kN", Dimension.Force, 2000)]
    [InlineData("2 kN/m", Dimension.LineLoad, 2000)]
    [InlineData("3 kN m", Dimension.Moment, 3000)]
    [InlineData("1750 kg/m3", Dimension.Density, 1750)]
    [InlineData("3 m2", Dimension.Area, 3)]
    [InlineData("20 C", Dimension.Temperature, 20)]
    [InlineData("-40 F", Dimension.Temperature, -40)]
    [InlineData("212 °F", Dimension.Temperature, 100)]
    [InlineData("12 %", Dimension.Fraction, 0.12)]
    [InlineData("21 days", Dimension.Days, 21)]
    [InlineData("1 day", Dimension.Days, 1)]
    [InlineData("2 h", Dimension.Time, 7200)]
    [InlineData("1.5", Dimension.Number, 1.5)]
    [InlineData("1 1/2", Dimension.Number, 1.5)]
    [InlineData("2e-3", Dimension.Number, 0.002)]
    [InlineData("4", Dimension.Count, 4)]
    [InlineData("7 ft 6 in", Dimension.Length, 2.286)]
    [InlineData("4 %", Dimension.Slope, 0.04)]
    public void Quantity_Written_IsReadInSi(string text, Dimension dimension, double si)
    {
        Assert.True(QuantityText.TryParse(text, dimension, out var value, out var problem));
        Assert.Null(problem);
        Assert.Equal(new Amount(si, dimension), value);
    }

    // Rank: published, NIST SP 811 (2008), appendix B.8, figures recalled and not re-read; each also follows from the exact foot, pound and
    // standard acceleration. Tolerance: half a unit of the last figure tabulated, none where the table marks the factor exact.
    [Theory]
    [InlineData("1 ft2", Dimension.Area, 9.290304e-2, 0)]
    [InlineData("1 in2", Dimension.Area, 6.4516e-4, 0)]
    [InlineData("1 ft3", Dimension.Volume, 2.831685e-2, 5e-9)]
    [InlineData("1 yd3", Dimension.Volume, 7.645549e-1, 5e-8)]
    [InlineData("1 gal", Dimension.Volume, 3.785412e-3, 5e-10)]
    [InlineData("1 lb", Dimension.Mass, 4.535924e-1, 5e-8)]
    [InlineData("1 oz", Dimension.Mass, 2.834952e-2, 5e-9)]
    [InlineData("1 lbf", Dimension.Force, 4.448222, 5e-7)]
    [InlineData("1 kip", Dimension.Force, 4.448222e3, 5e-4)]
    [InlineData("1 lbf/ft", Dimension.LineLoad, 1.459390e1, 5e-6)]
    [InlineData("1 psi", Dimension.Stress, 6.894757e3, 5e-4)]
    [InlineData("1 psf", Dimension.AreaLoad, 4.788026e1, 5e-6)]
    [InlineData("1 lbf ft", Dimension.Moment, 1.355818, 5e-7)]
    [InlineData("1 lbf in", Dimension.Moment, 1.129848e-1, 5e-8)]
    [InlineData("1 lb/ft3", Dimension.Density, 1.601846e1, 5e-6)]
    [InlineData("1 mph", Dimension.Speed, 4.4704e-1, 0)]
    [InlineData("1 km/h", Dimension.Speed, 2.777778e-1, 5e-8)]
    public void Factor_OfACustomaryUnit_IsThePublishedOne(string text, Dimension dimension, double published, double half)
    {
        Assert.True(QuantityText.TryParse(text, dimension, out var value, out _));
        // Beside half a figure, the last bit of a product of exact factors.
        Assert.Equal(published, value.Si, half + 2e-16 * Math.Abs(published));
    }

    [Theory]
    [InlineData("steep", "evidence.quantity-unreadable")]
    [InlineData("", "evidence.quantity-unreadable")]
    [InlineData("NaN deg", "evidence.quantity-unreadable")]
    [InlineData("Infinity deg", "evidence.quantity-unreadable")]
    [InlineData("1e999 deg", "evidence.quantity-unreadable")]
    [InlineData("1/0 deg", "evidence.quantity-unreadable")]
    [InlineData("135", "evidence.quantity-unit-missing")]
    [InlineData("135 kPa", "evidence.quantity-unit-unknown")]
    [InlineData("1,5 deg", "evidence.number-comma")]
    public void Angle_Unreadable_SaysWhatIsRight(string text, string key)
    {
        Assert.False(QuantityText.TryParse(text, out Angle angle, out var problem));
        Assert.Equal(default, angle);
        Assert.Equal(key, problem!.Key);
    }

    [Fact]
    public void Quantity_TooLarge_IsSaid()
    {
        Assert.False(QuantityText.TryParse("1e308 MPa", out Stress stress, out var problem));
        Assert.Equal(default, stress);
        Assert.Equal("evidence.quantity-too-large", problem!.Key);
    }

    [Theory]
    [InlineData("2.5", Dimension.Count, "evidence.quantity-unreadable")]
    [InlineData("3 kg", Dimension.Number, "evidence.quantity-unit-unknown")]
    [InlineData("0.5", Dimension.Fraction, "evidence.quantity-unit-missing")]
    [InlineData("2 ton", Dimension.Mass, "evidence.quantity-unit-unknown")]
    public void Quantity_OfTheWrongKind_IsRefused(string text, Dimension dimension, string key)
    {
        Assert.False(QuantityText.TryParse(text, dimension, out _, out var problem));
        Assert.Equal(key, problem!.Key);
    }

    [Fact]
    public void EveryDimensionHasItsOwnExampleThatReads()
    {
        foreach (var dimension in Enum.GetValues<Dimension>())
        {
            Assert.False(QuantityText.TryParse("?", dimension, out _, out var problem));
            if (problem!.Arguments.FirstOrDefault(a => a.Name == "example")?.Value is Argument.Text example)
            {
                Assert.True(QuantityText.TryParse(example.Value, dimension, out _, out _), example.Value);
            }
        }
    }

    [Fact]
    public void EveryQuantityReadsBackToTheLastBit()
    {
        var dimensions = Gen.Enum<Dimension>().Where(d => d is not (Dimension.Length or Dimension.Count));
        var values = Gen.OneOf(Gen.Double[-1e9, 1e9], Gen.Double[-1, 1], Gen.Int[-1000, 1000].Select(n => n / 100.0));
        Gen.Select(values, dimensions).ForAll(
            (si, dimension) =>
            {
                var value = new Amount(si, dimension);
                return QuantityText.TryParse(QuantityText.Written(value), dimension, out var back, out _) && back == value
                    && Units.Of(dimension).All(u => QuantityText.TryParse(QuantityText.Written(value, u), dimension, out var b, out _) && b == value);
            },
            iter: Counts.Of(2_000, 200_000));
    }

    [Fact]
    public void EveryAngleReadsBackInDegreesToTheLastBit()
    {
        Gen.Double[-1000, 1000].ForAll(
            degrees => QuantityText.TryParse(QuantityText.Written(new Angle(degrees)), out Angle back, out _) && back.Degrees == degrees,
            iter: Counts.Of(1_000, 100_000));
    }

    [Fact]
    public void Writing_NotFinite_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => QuantityText.Written(new Stress(double.NaN)));
        Assert.Throws<ArgumentOutOfRangeException>(() => QuantityText.Written(new Angle(double.PositiveInfinity)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SlopeText.Written(new Slope(double.NaN)));
    }

    [Fact]
    public void NoTextMakesReadingThrow()
    {
        var marks = Gen.Char["0123456789 '\"./-:%°inftpermdgkPaeE"].Array[0, 24].Select(c => new string(c));
        Gen.Select(Gen.OneOf(marks, Gen.String[0, 100]), Gen.Enum<Dimension>()).ForAll(
            (text, dimension) => QuantityText.TryParse(text, dimension, out _, out var problem) == (problem is null),
            iter: Counts.Of(3_000, 500_000));
    }
}
