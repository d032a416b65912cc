using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Weather;
using Clomwright.Analysis.Weather.Seasons;

namespace Clomwright.Analysis.Days;

/// <summary>Turns a drawn day into what a wall feels of it.</summary>
internal static class DayWeather
{
    /// <summary>The means of a day. The sky's share of the sun is the daily one of Erbs, Klein and Duffie 1982 (from memory), its loss that of FAO-56, equation 39.</summary>
    /// <param name="date">The day.</param>
    /// <param name="day">As drawn.</param>
    /// <param name="latitude">rad.</param>
    /// <param name="elevation">m.</param>
    public static BayDay Of(DateOnly date, in SeasonDay day, double latitude, double elevation)
    {
        var outside = ReferenceEvaporation.Extraterrestrial(latitude, date.DayOfYear);
        var clearness = outside > 0 ? day.Sun / outside : 0;
        var level = day.Sun * 1e6 / 86_400;
        var diffuse = level * DiffuseShare(clearness, ReferenceEvaporation.SunsetAngle(latitude, ReferenceEvaporation.Declination(date.DayOfYear)));
        var vapour = Sky.Held(Psychrometrics.Saturation(day.DewPoint), day.Mean);
        var loss = Sky.Loss(day.Mean, vapour, Sky.Clearness(day.Sun, outside, elevation));
        return new(date.Month, day.Mean, vapour, day.Wind, level - diffuse, diffuse, loss, day.Rain, day.IsWet);
    }

    private static double DiffuseShare(double k, double sunset) => sunset <= 81.4 * Math.PI / 180
        ? k < 0.715 ? 1 + k * (-0.2727 + k * (2.4495 + k * (-11.9514 + 9.3879 * k))) : 0.143
        : k < 0.722 ? 1 + k * (0.2832 + k * (-2.5557 + 0.8448 * k)) : 0.175;
}
