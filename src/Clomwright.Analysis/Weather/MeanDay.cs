namespace Clomwright.Analysis.Weather;

/// <summary>The mean day of a month, hour by hour.</summary>
internal static class MeanDay
{
    private const double WarmestHour = 15;

    /// <summary>Twenty-four hours, in the sun's own time.</summary>
    /// <param name="month">The means.</param>
    /// <param name="latitude">rad.</param>
    /// <param name="elevation">m.</param>
    public static IEnumerable<WeatherHour> Of(ClimateMonth month, double latitude, double elevation)
    {
        var declination = ReferenceEvaporation.Declination(month.MiddleDay);
        var sunset = ReferenceEvaporation.SunsetAngle(latitude, declination);
        var outside = ReferenceEvaporation.Extraterrestrial(latitude, month.MiddleDay);
        var day = Math.Min(month.Sun, 0.8 * outside) * 1e6;
        var clearness = outside > 0 ? day / (outside * 1e6) : 0;
        var diffuse = day * DiffuseShare(Math.Clamp(clearness, 0.3, 0.8), sunset);
        var cloud = Sky.Clearness(day / 1e6, outside, elevation);
        var vapour = Psychrometrics.Saturation(month.DewPoint);
        for (var hour = 0; hour < 24; hour++)
        {
            var angle = (hour + 0.5 - 12) * Math.PI / 12;
            var temperature = month.Mean + (month.High - month.Low) / 2 * Math.Cos((hour + 0.5 - WarmestHour) * Math.PI / 12);
            var total = Math.Max(0, day * OfDay(angle, sunset, spread: true) / 3600);
            var sky = Math.Min(total, Math.Max(0, diffuse * OfDay(angle, sunset, spread: false) / 3600));
            var held = Sky.Held(vapour, temperature);
            yield return new(
                temperature, held, month.Wind, total - sky, sky, month.Rain / month.Days / 24,
                Sky.Loss(temperature, held, cloud), Sun.AtHourAngle(angle, declination, latitude),
                Math.Clamp(month.WetDays / month.Days, 0, 1));
        }
    }

    /// <summary>Share of a day's sun that falls in an hour about an hour angle: Collares-Pereira and Rabl 1979; without spread, Liu and Jordan 1960 for the sky's part (both from memory).</summary>
    private static double OfDay(double angle, double sunset, bool spread)
    {
        if (Math.Abs(angle) >= sunset)
        {
            return 0;
        }

        var plain = Math.PI / 24 * (Math.Cos(angle) - Math.Cos(sunset)) / (Math.Sin(sunset) - sunset * Math.Cos(sunset));
        var shift = Math.Sin(sunset - Math.PI / 3);
        return spread ? plain * (0.409 + 0.5016 * shift + (0.6609 - 0.4767 * shift) * Math.Cos(angle)) : plain;
    }

    /// <summary>Share of a month's sun that comes from the sky: Erbs, Klein, Duffie 1982 (from memory); clearness 0.3 to 0.8.</summary>
    private static double DiffuseShare(double k, double sunset) => sunset <= 81.4 * Math.PI / 180
        ? 1.391 + k * (-3.560 + k * (4.189 - 2.137 * k))
        : 1.311 + k * (-3.022 + k * (3.427 - 1.821 * k));
}
