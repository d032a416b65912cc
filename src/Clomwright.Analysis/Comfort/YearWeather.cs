using Clomwright.Analysis.Weather;
using Clomwright.Analysis.Weather.Seasons;
using Clomwright.Evidence;
using Clomwright.Numerics;

namespace Clomwright.Analysis.Comfort;

/// <summary>Hours of whole years, drawn day by day from what is known of a climate, hour by hour as its mean days run. The same every time.</summary>
/// <param name="Days">Days in turn, from the first.</param>
/// <param name="Hours">24 for each.</param>
/// <param name="First">The first day.</param>
public sealed record YearWeather(Sequence<SeasonDay> Days, Sequence<WeatherHour> Hours, DateOnly First)
{
    private const ulong Seed = 20_260_701;

    /// <summary>A year of no name, from the first of July: a winter stands in it whole.</summary>
    public static DateOnly Begin { get; } = new(2025, 7, 1);

    /// <summary>For each hour, what its beam leaves on upright faces.</summary>
    internal Sequence<Beam> Beams { get; } = [.. Hours.Select(Beam.Of)];

    /// <summary>Mean temperature of a day, C.</summary>
    public double DayMean(int day) => Days[day].Mean;

    /// <summary>Drawn years.</summary>
    /// <param name="weather">The climate.</param>
    /// <param name="years">How many.</param>
    public static YearWeather Drawn(WeatherResult weather, int years = 1)
    {
        ArgumentNullException.ThrowIfNull(weather);
        var latitude = weather.Climate.Latitude * Math.PI / 180;
        var drawn = new SeasonWeather(DailyTable.Of(weather.Climate), latitude, new Philox(Seed));
        var days = new SeasonDay[365 * years];
        for (var y = 0; y < years; y++)
        {
            drawn.Fill(y, Begin, days.AsSpan(365 * y, 365));
        }

        return Of(weather, days);
    }

    /// <summary>Every day its month's mean day.</summary>
    public static YearWeather Mean(WeatherResult weather)
    {
        ArgumentNullException.ThrowIfNull(weather);
        var months = weather.Climate.Months;
        return new(
            Enumerable.Range(0, 365).Select(d => months[Begin.AddDays(d).Month - 1]).Select(m => new SeasonDay(m.Rain / m.Days, m.High, m.Low, m.Sun, m.DewPoint, m.Wind)).ToSequence(),
            [.. weather.From(Begin, 365)], Begin);
    }

    private static YearWeather Of(WeatherResult weather, SeasonDay[] days)
    {
        var (latitude, elevation) = (weather.Climate.Latitude * Math.PI / 180, weather.Climate.Elevation);
        return new([.. days], [.. days.SelectMany((day, i) =>
        {
            var date = Begin.AddDays(i % 365);
            return MeanDay.Of(new(date.Month, day.High, day.Low, day.DewPoint, day.Wind, day.Sun, day.Rain, day.IsWet ? 1 : 0), latitude, elevation);
        })], Begin);
    }
}
