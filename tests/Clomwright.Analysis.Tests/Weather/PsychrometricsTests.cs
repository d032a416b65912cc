using Clomwright.Analysis.Weather;

namespace Clomwright.Analysis.Tests.Weather;

/// <summary>Moist air against the values that the psychrolib library (MIT) tests itself with, SI.</summary>
public sealed class PsychrometricsTests
{
    // Rank independent: psychrolib. 0.03 %: the library's own tolerance.
    [Theory]
    [InlineData(-20, 103.24)]
    [InlineData(-5, 401.74)]
    [InlineData(5, 872.6)]
    [InlineData(25, 3169.7)]
    [InlineData(50, 12351.3)]
    [InlineData(100, 101418)]
    public void Saturation_IsTheTable(double celsius, double pascals)
    {
        Near.Relative(pascals, Psychrometrics.Saturation(celsius), 3e-4);
        // Rank property: the slope is that of the curve; 1e-6 for a difference over 2 mK.
        Near.Relative((Psychrometrics.Saturation(celsius + 1e-3) - Psychrometrics.Saturation(celsius - 1e-3)) / 2e-3, Psychrometrics.SaturationSlope(celsius), 1e-6);
        Assert.Equal(celsius, Psychrometrics.DewPoint(Psychrometrics.Saturation(celsius)), 1e-6);
    }

    // Rank independent: psychrolib; 3e-4 as above, the last digit printed where that is coarser.
    [Fact]
    public void MoistAir_IsTheLibrarys()
    {
        Near.Relative(0.0213603998, Psychrometrics.HumidityRatio(3169.7, 95461), 3e-4);
        Near.Relative(3169.7, Psychrometrics.VapourPressure(0.0213603998, 95461), 3e-4);
        Near.Relative(0.0192281274, Psychrometrics.HumidityRatioOfBulbs(30, 25, 95461), 3e-4);
        Near.Relative(25, Psychrometrics.WetBulb(30, 0.0192281274, 95461), 1e-3);
        Near.Relative(0.00120399820, Psychrometrics.HumidityRatioOfBulbs(-1, -5, 95461), 3e-4);
        Near.Relative(3.92667, Psychrometrics.WetBulb(7, Psychrometrics.HumidityRatio(0.61 * Psychrometrics.Saturation(7), 100_000), 100_000), 1e-3);
        Near.Relative(81316, Psychrometrics.Enthalpy(30, 0.02), 3e-4);
        Near.Relative(0.940855, Psychrometrics.Volume(30, 0.02, 95461), 3e-4);
        Near.Relative(95461, Psychrometrics.StandardPressure(500), 1e-4);
        Near.Relative(89875, Psychrometrics.StandardPressure(1000), 1e-4);
    }

    // Rank independent: psychrolib, saturated air of 25 C at sea level (0.5 %, its own tolerance); rank analytic: dew point of air of 20 C and 50 % by Magnus' formula (17.62, 243.12 C), 0.02 K between the two curves.
    [Fact]
    public void SaturatedAirAndDew_AreAsElsewhere()
    {
        Near.Relative(.020173, Psychrometrics.HumidityRatio(Psychrometrics.Saturation(25), 101_325), 5e-3);
        Assert.Equal(9.26, Psychrometrics.DewPoint(.5 * Psychrometrics.Saturation(20)), .02);
    }

    // Rank independent: wet bulbs solved elsewhere from ASHRAE's balance, at sea level, to the digits printed: 13.78 and 8.29 C. The one-line formula of Stull (2011), good to some half a kelvin, says 13.70 of the first.
    [Theory]
    [InlineData(20, .50, 13.78)]
    [InlineData(10, .80, 8.29)]
    public void WetBulb_IsSolvedAsElsewhere(double dry, double humidity, double wet) =>
        Near.Printed(wet, Psychrometrics.WetBulb(dry, Psychrometrics.HumidityRatio(humidity * Psychrometrics.Saturation(dry), 101_325), 101_325), .01);

    // Rank published: ASHRAE Fundamentals, example 1: 40 C dry, 20 C wet at sea level; read there off a chart, so two of its last digit.
    [Fact]
    public void WorkedExample_ComesBack()
    {
        var ratio = Psychrometrics.HumidityRatioOfBulbs(40, 20, 101_325);
        var vapour = Psychrometrics.VapourPressure(ratio, 101_325);
        Near.Printed(.0065, ratio, 2e-4);
        Near.Printed(.14, vapour / Psychrometrics.Saturation(40), .01);
        Near.Printed(7, Psychrometrics.DewPoint(vapour), 2);
        Near.Printed(56.7, Psychrometrics.Enthalpy(40, ratio) / 1000, .2);
        Near.Printed(.896, Psychrometrics.Volume(40, ratio, 101_325), 2e-3);
    }
}
