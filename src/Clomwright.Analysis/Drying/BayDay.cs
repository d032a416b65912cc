using Clomwright.Analysis.Weather;

namespace Clomwright.Analysis.Drying;

/// <summary>The means of one day of a season, for a wall by the day.</summary>
/// <param name="Month">1 to 12.</param>
/// <param name="Temperature">Of the air, C.</param>
/// <param name="VapourPressure">Pa.</param>
/// <param name="Wind">10 m above open ground, m/s.</param>
/// <param name="Beam">Sun straight from the disc on a level square metre, W/m2.</param>
/// <param name="Diffuse">Sun from the rest of the sky, W/m2.</param>
/// <param name="LongWaveLoss">To the sky, W/m2.</param>
/// <param name="Rain">mm of the day.</param>
/// <param name="Wet">Whether it is a day under tarps.</param>
public readonly record struct BayDay(int Month, double Temperature, double VapourPressure, double Wind, double Beam, double Diffuse, double LongWaveLoss, double Rain, bool Wet)
{
    /// <summary>The means of a day's hours.</summary>
    /// <param name="month">1 to 12.</param>
    /// <param name="hours">24 of them.</param>
    public static BayDay Of(int month, ReadOnlySpan<WeatherHour> hours)
    {
        double t = 0, e = 0, v = 0, b = 0, d = 0, l = 0, r = 0, w = 0;
        foreach (ref readonly var h in hours)
        {
            (t, e, v, b, d, l, r, w) = (t + h.Temperature, e + h.VapourPressure, v + h.Wind, b + h.BeamLevel, d + h.DiffuseLevel, l + h.LongWaveLoss, r + h.Rain, w + h.WetShare);
        }

        var n = 1.0 / hours.Length;
        return new(month, t * n, e * n, v * n, b * n, d * n, l * n, r, w * n > 0.5);
    }

    /// <summary>As one hour that stands for the day.</summary>
    internal WeatherHour Hour(double wetShare) => new(Temperature, VapourPressure, Wind, Beam, Diffuse, Rain / 24, LongWaveLoss, default, wetShare);
}
