namespace Clomwright.Analysis.Weather;

/// <summary>Evaporation of well-watered short grass, Allen, Pereira, Raes, Smith 1998, Crop evapotranspiration, FAO irrigation and drainage paper 56. Its symbols and units: C, kPa, MJ/(m2 d), m/s, mm/d.</summary>
public static class ReferenceEvaporation
{
    private const double SolarConstant = 0.0820;
    private const double Stefan = 4.903e-9;
    private const double Kelvin = 273.16;

    /// <summary>e0(T), equation 11, kPa.</summary>
    public static double Saturation(double t) => 0.6108 * Math.Exp(17.27 * t / (t + 237.3));

    /// <summary>Delta, equation 13, kPa/K.</summary>
    public static double Slope(double t) => 4098 * Saturation(t) / ((t + 237.3) * (t + 237.3));

    /// <summary>P, equation 7, kPa, at z m above the sea.</summary>
    public static double Pressure(double z) => 101.3 * Math.Pow((293 - 0.0065 * z) / 293, 5.26);

    /// <summary>gamma, equation 8, kPa/K.</summary>
    public static double Psychrometric(double pressure) => 0.665e-3 * pressure;

    /// <summary>u2 from a wind measured z m above ground, equation 47.</summary>
    public static double WindAtTwoMetres(double wind, double z) => wind * 4.87 / Math.Log(67.8 * z - 5.42);

    /// <summary>delta, equation 24, rad.</summary>
    public static double Declination(double day) => 0.409 * Math.Sin(2 * Math.PI / 365 * day - 1.39);

    /// <summary>dr, equation 23: inverse relative distance of the sun.</summary>
    public static double InverseDistance(double day) => 1 + 0.033 * Math.Cos(2 * Math.PI / 365 * day);

    /// <summary>omega_s, equation 25, rad; 0 in polar night, pi in polar day.</summary>
    public static double SunsetAngle(double latitude, double declination) => Math.Acos(Math.Clamp(-Math.Tan(latitude) * Math.Tan(declination), -1, 1));

    /// <summary>Ra, equation 21: sun outside the atmosphere on a level square metre in a day.</summary>
    /// <param name="latitude">rad.</param>
    /// <param name="day">Day of the year, 1 to 366.</param>
    public static double Extraterrestrial(double latitude, double day)
    {
        var delta = Declination(day);
        var sunset = SunsetAngle(latitude, delta);
        return 24 * 60 / Math.PI * SolarConstant * InverseDistance(day)
            * (sunset * Math.Sin(latitude) * Math.Sin(delta) + Math.Cos(latitude) * Math.Cos(delta) * Math.Sin(sunset));
    }

    /// <summary>N, equation 34, hours.</summary>
    public static double DaylightHours(double latitude, double day) => 24 / Math.PI * SunsetAngle(latitude, Declination(day));

    /// <summary>Rs from hours of sun, equation 35.</summary>
    public static double SunOfHours(double hours, double daylight, double extraterrestrial) => (0.25 + 0.5 * hours / daylight) * extraterrestrial;

    /// <summary>Rs from the day's range of temperature, equation 50, with k of 0.16 inland and 0.19 by the sea.</summary>
    public static double SunOfRange(double max, double min, double extraterrestrial, double k = 0.16) => Math.Min(0.75, k * Math.Sqrt(Math.Max(0, max - min))) * extraterrestrial;

    /// <summary>Rso, equation 37.</summary>
    public static double ClearSky(double z, double extraterrestrial) => (0.75 + 2e-5 * z) * extraterrestrial;

    /// <summary>Rnl, equation 39.</summary>
    public static double NetLongWave(double max, double min, double vapour, double sunShare)
    {
        double Fourth(double t) => Math.Pow(t + Kelvin, 4);
        return Stefan * (Fourth(max) + Fourth(min)) / 2 * (0.34 - 0.14 * Math.Sqrt(vapour)) * (1.35 * sunShare - 0.35);
    }

    /// <summary>ea from the highest and lowest relative humidity of the day, 0 to 1, which fall with its lowest and highest temperature, equation 17.</summary>
    public static double VapourOfHumidities(double max, double min, double humidityMax, double humidityMin) => (Saturation(min) * humidityMax + Saturation(max) * humidityMin) / 2;

    /// <summary>G of a month, equation 43: 0.07 of how much warmer the month after is than the month before.</summary>
    public static double MonthGround(double before, double after) => 0.07 * (after - before);

    /// <summary>ET0, equation 6.</summary>
    /// <param name="net">Rn.</param>
    /// <param name="ground">G.</param>
    /// <param name="mean">T.</param>
    /// <param name="wind">u2.</param>
    /// <param name="saturation">es.</param>
    /// <param name="vapour">ea.</param>
    /// <param name="pressure">P.</param>
    public static double PenmanMonteith(double net, double ground, double mean, double wind, double saturation, double vapour, double pressure)
    {
        var (slope, gamma) = (Slope(mean), Psychrometric(pressure));
        return (0.408 * slope * (net - ground) + gamma * 900 / (mean + 273) * wind * (saturation - vapour)) / (slope + gamma * (1 + 0.34 * wind));
    }

    /// <summary>ET0 of the mean day of a month, mm/d.</summary>
    /// <param name="month">The month.</param>
    /// <param name="latitude">rad.</param>
    /// <param name="elevation">m.</param>
    /// <param name="before">Mean temperature of the month before, C.</param>
    /// <param name="after">Mean temperature of the month after, C.</param>
    public static double Of(ClimateMonth month, double latitude, double elevation, double before, double after)
    {
        ArgumentNullException.ThrowIfNull(month);
        var outside = Extraterrestrial(latitude, month.MiddleDay);
        var vapour = Saturation(month.DewPoint);
        var share = Math.Min(1, month.Sun / ClearSky(elevation, outside));
        var net = 0.77 * month.Sun - NetLongWave(month.High, month.Low, vapour, share);
        return PenmanMonteith(net, MonthGround(before, after), month.Mean, WindAtTwoMetres(month.Wind, 10), (Saturation(month.High) + Saturation(month.Low)) / 2, vapour, Pressure(elevation));
    }
}
