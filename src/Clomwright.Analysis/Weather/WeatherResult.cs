using Clomwright.Evidence;

namespace Clomwright.Analysis.Weather;

/// <summary>One hour of weather.</summary>
/// <param name="Temperature">Of the air, C.</param>
/// <param name="VapourPressure">Pa.</param>
/// <param name="Wind">10 m above open ground, m/s.</param>
/// <param name="BeamLevel">Sun straight from the disc on a level square metre, W/m2.</param>
/// <param name="DiffuseLevel">Sun from the rest of the sky on a level square metre, W/m2.</param>
/// <param name="Rain">mm in the hour.</param>
/// <param name="LongWaveLoss">What a level surface at air temperature sends to the sky and does not get back, W/m2.</param>
/// <param name="Place">Of the sun in the middle of the hour.</param>
/// <param name="WetShare">Share of such days that have rain, 0 to 1.</param>
public readonly record struct WeatherHour(
    double Temperature, double VapourPressure, double Wind, double BeamLevel, double DiffuseLevel, double Rain, double LongWaveLoss, SunPlace Place, double WetShare = 0)
{
    /// <summary>Least sine of the sun's height by which a beam on level ground is turned upright.</summary>
    internal const double LowestSun = 0.05;

    private const double GroundReflects = 0.2;

    /// <summary>Relative humidity, 0 to 1.</summary>
    public double Humidity => VapourPressure / Psychrometrics.Saturation(Temperature);

    /// <summary>Sun on a level square metre, W/m2.</summary>
    public double Level => BeamLevel + DiffuseLevel;

    /// <summary>Sun on an upright square metre, W/m2: beam, half of an even sky, half of what the ground throws back.</summary>
    /// <param name="normal">Azimuth of the outward normal, rad.</param>
    public double Upright(double normal) =>
        BeamLevel * Math.Max(0, Place.OnUpright(normal)) / Math.Max(LowestSun, Math.Sin(Place.Elevation)) + DiffuseLevel / 2 + GroundReflects * Level / 2;
}

/// <summary>The weather of a site: the mean day of each month, hour by hour. Numbers, never a forecast.</summary>
public sealed record WeatherResult
{
    /// <summary>What it was made from.</summary>
    public required Climate Climate { get; init; }

    /// <summary>Whether the author gave the months or they are those of a climate assumed to be like it.</summary>
    public Tag Tag { get; init; } = Tag.Assumed;

    /// <summary>24 hours for each of 12 months, January first; the hour is of the sun's own time, the first from midnight.</summary>
    public required Sequence<WeatherHour> Hours { get; init; }

    /// <summary>Evaporation of short grass, mm in the mean day of each month.</summary>
    public required Sequence<double> Reference { get; init; }

    /// <summary>What nobody gave.</summary>
    public required Sequence<Assumption> Assumptions { get; init; }

    /// <summary>The mean day of a month, 1 to 12.</summary>
    public ReadOnlySpan<WeatherHour> Day(int month) => Hours.AsSpan().Slice(24 * (month - 1), 24);

    /// <summary>The hours of a stretch of days, each month's mean day repeated.</summary>
    /// <param name="start">First day.</param>
    /// <param name="days">How many.</param>
    public WeatherHour[] From(DateOnly start, int days)
    {
        var hours = new WeatherHour[24 * days];
        for (var d = 0; d < days; d++)
        {
            Day(start.AddDays(d).Month).CopyTo(hours.AsSpan(24 * d));
        }

        return hours;
    }
}
