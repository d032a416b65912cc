using Clomwright.Numerics;

namespace Clomwright.Analysis.Weather;

/// <summary>Moist air by the equations of the ASHRAE Handbook, Fundamentals (2017), chapter 1. Temperatures in C, pressures in Pa, humidity ratio in kg of water for each kg of dry air.</summary>
public static class Psychrometrics
{
    private const double Kelvin = 273.15;
    private const double TriplePoint = 0.01;

    /// <summary>Gas constant of water vapour, J/(kg K).</summary>
    public const double VapourGas = 461.5;

    /// <summary>Pressure of saturated vapour over water, over ice below the triple point, Pa; -100 to 200 C.</summary>
    public static double Saturation(double celsius)
    {
        var t = celsius + Kelvin;
        return celsius <= TriplePoint
            ? Math.Exp(-5.6745359e3 / t + 6.3925247 + t * (-9.677843e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 - 9.484024e-13 * t))) + 4.1635019 * Math.Log(t))
            : Math.Exp(-5.8002206e3 / t + 1.3914993 + t * (-4.8640239e-2 + t * (4.1764768e-5 - 1.4452093e-8 * t)) + 6.5459673 * Math.Log(t));
    }

    /// <summary>Slope of <see cref="Saturation"/>, Pa/K.</summary>
    public static double SaturationSlope(double celsius)
    {
        var t = celsius + Kelvin;
        var log = celsius <= TriplePoint
            ? 5.6745359e3 / (t * t) - 9.677843e-3 + t * (2 * 6.2215701e-7 + t * (3 * 2.0747825e-9 - 4 * 9.484024e-13 * t)) + 4.1635019 / t
            : 5.8002206e3 / (t * t) - 4.8640239e-2 + t * (2 * 4.1764768e-5 - 3 * 1.4452093e-8 * t) + 6.5459673 / t;
        return Saturation(celsius) * log;
    }

    /// <summary>Temperature at which vapour of a pressure is saturated, C; NaN outside -60 to 100 C.</summary>
    public static double DewPoint(double vapourPressure) => Roots.Bracketed(t => Math.Log(Saturation(t) / vapourPressure), -60, 100, 1e-9);

    /// <summary>Humidity ratio of vapour of a pressure.</summary>
    public static double HumidityRatio(double vapourPressure, double pressure) => 0.621945 * vapourPressure / (pressure - vapourPressure);

    /// <summary>Vapour pressure of a humidity ratio, Pa.</summary>
    public static double VapourPressure(double humidityRatio, double pressure) => pressure * humidityRatio / (0.621945 + humidityRatio);

    /// <summary>Humidity ratio from dry and wet bulb.</summary>
    public static double HumidityRatioOfBulbs(double dry, double wet, double pressure)
    {
        var saturated = HumidityRatio(Saturation(wet), pressure);
        return wet >= 0
            ? ((2501 - 2.326 * wet) * saturated - 1.006 * (dry - wet)) / (2501 + 1.86 * dry - 4.186 * wet)
            : ((2830 - 0.24 * wet) * saturated - 1.006 * (dry - wet)) / (2830 + 1.86 * dry - 2.1 * wet);
    }

    /// <summary>Wet bulb of air, C.</summary>
    public static double WetBulb(double dry, double humidityRatio, double pressure) =>
        Roots.Bracketed(wet => HumidityRatioOfBulbs(dry, wet, pressure) - humidityRatio, DewPoint(VapourPressure(humidityRatio, pressure)) - 1, dry + 1e-9, 1e-9);

    /// <summary>Enthalpy of moist air for each kg of dry air, J/kg.</summary>
    public static double Enthalpy(double dry, double humidityRatio) => 1000 * (1.006 * dry + humidityRatio * (2501 + 1.86 * dry));

    /// <summary>Volume of moist air for each kg of dry air, m3/kg.</summary>
    public static double Volume(double dry, double humidityRatio, double pressure) => 287.042 * (dry + Kelvin) * (1 + 1.607858 * humidityRatio) / pressure;

    /// <summary>Pressure of the standard atmosphere at a height above the sea, Pa.</summary>
    public static double StandardPressure(double height) => 101_325 * Math.Pow(1 - 2.25577e-5 * height, 5.2559);
}
