using Clomwright.Evidence;
using Clomwright.Numerics;

namespace Clomwright.Analysis.Weather.Seasons;

/// <summary>A day of which somebody has a forecast: it takes the place of what is drawn.</summary>
/// <param name="Date">The day.</param>
/// <param name="Rain">mm.</param>
/// <param name="High">C.</param>
/// <param name="Low">C.</param>
public sealed record ForecastDay(DateOnly Date, double Rain, double High, double Low)
{
    /// <summary>Mean wind, m/s; drawn where nobody foretells it.</summary>
    public double? Wind { get; init; }

    /// <summary>Sun on a level square metre, MJ; drawn where nobody foretells it.</summary>
    public double? Sun { get; init; }

    /// <summary>A drawn day with what is foretold in its place; no dew point above the mean of the day.</summary>
    public SeasonDay Over(SeasonDay drawn)
    {
        var (high, low) = (High, Math.Min(Low, High));
        return drawn with { Rain = Rain, High = high, Low = low, Wind = Wind ?? drawn.Wind, Sun = Sun ?? drawn.Sun, DewPoint = Math.Min(drawn.DewPoint, (high + low) / 2) };
    }
}

/// <summary>
/// Daily weather drawn from a table, after Richardson 1981: a chain of wet and dry days, gamma-distributed rain, high, low and sun by their residuals; dew point and wind beside them.
/// The same seed, season and day give the same numbers, whatever is asked first and on however many threads: two plans meet the same weather.
/// </summary>
/// <param name="Table">What days are drawn from.</param>
/// <param name="Latitude">rad.</param>
/// <param name="Draws">Random numbers by place.</param>
public sealed record SeasonWeather(DailyTable Table, double Latitude, Philox Draws)
{
    /// <summary>Days drawn before the first, so that nothing is left of how they began.</summary>
    private const int RunUp = 30;

    private const int PlacesOfDay = 96, WetPlace = 0, FirstResidual = 1, DewPlace = 4, WindPlace = 5, AmountPlace = 6, ShapePlace = 8;
    private const double DewKept = 0.6, DewScatter = 1.5, WetDew = 2;
    private const double LeastSun = 0.16, MostSun = 0.8;

    /// <summary>Consecutive days of one season.</summary>
    /// <param name="season">Which season, from 0.</param>
    /// <param name="first">First day.</param>
    /// <param name="days">Takes the days.</param>
    /// <param name="known">Days with a forecast.</param>
    public void Fill(int season, DateOnly first, Span<SeasonDay> days, Sequence<ForecastDay> known = default)
    {
        var walk = From(season, first, known);
        for (var d = 0; d < days.Length; d++)
        {
            days[d] = walk();
        }
    }

    /// <summary>One season day by day: every call gives the next.</summary>
    /// <param name="season">Which season, from 0.</param>
    /// <param name="first">First day.</param>
    /// <param name="known">Days with a forecast.</param>
    public Func<SeasonDay> From(int season, DateOnly first, Sequence<ForecastDay> known = default)
    {
        var stream = (ulong)season;
        var (date, wet, residuals, dew) = (first.AddDays(-RunUp), false, default(Residuals), 0.0);
        SeasonDay Next()
        {
            var month = Table.Months[date.Month - 1];
            var place = (ulong)date.DayNumber * PlacesOfDay;
            wet = Draws.Uniform(stream, place + WetPlace) < Chance(month, date, wet);
            residuals = residuals.Next(Draws.Normal(stream, place + FirstResidual), Draws.Normal(stream, place + FirstResidual + 1), Draws.Normal(stream, place + FirstResidual + 2));
            dew = DewKept * dew + Math.Sqrt(1 - DewKept * DewKept) * Draws.Normal(stream, place + DewPlace);
            var said = date < first ? null : known.FirstOrDefault(k => k.Date == date);
            wet = said is null ? wet : said.Rain > 0;
            var day = Day(month, date, wet, residuals, dew, stream, place);
            date = date.AddDays(1);
            return said is null ? day : said.Over(day);
        }

        for (var d = 0; d < RunUp; d++)
        {
            Next();
        }

        return Next;
    }

    /// <summary>How likely a day is wet. On the first of a month so that the month begins with its own share of wet days: else it would be pulled towards the month before.</summary>
    private double Chance(DailyMonth month, DateOnly date, bool wetBefore)
    {
        if (date.Day > 1)
        {
            return wetBefore ? month.WetAfterWet : month.WetAfterDry;
        }

        var kept = month.WetAfterWet - month.WetAfterDry;
        var afterDry = month.WetShare - kept * Table.Months[(date.Month + 10) % 12].WetShare;
        return Math.Clamp(wetBefore ? afterDry + kept : afterDry, 0, 1);
    }

    private SeasonDay Day(DailyMonth month, DateOnly date, bool wet, Residuals x, double dew, ulong stream, ulong place)
    {
        var (highOf, sunOf) = wet ? (month.HighWet, month.SunWet) : (month.HighDry, month.SunDry);
        var (high, low) = (highOf.Mean + highOf.Deviation * x.High, month.Low.Mean + month.Low.Deviation * x.Low);
        (high, low) = (Math.Max(high, low), Math.Min(high, low));
        var outside = ReferenceEvaporation.Extraterrestrial(Latitude, date.DayOfYear);
        var sun = Math.Clamp(sunOf.Mean + sunOf.Deviation * x.Sun, LeastSun * outside, MostSun * outside);
        // Wet days are damper, and warm nights too; the month keeps its mean.
        var damp = WetDew * (wet ? 1 - month.WetShare : -month.WetShare) + DewScatter * dew + month.Low.Deviation * x.Low / 2;
        var point = Math.Min(month.DewPoint + damp, (high + low) / 2);
        var wind = month.Wind * 2 / Math.Sqrt(Math.PI) * Math.Sqrt(-Math.Log(1 - Draws.Uniform(stream, place + WindPlace)));
        return new(wet ? Rain(month, stream, place) : 0, high, low, sun, point, wind);
    }

    /// <summary>A gamma-distributed amount of shape alpha at most 1, by Joehnk 1964.</summary>
    private double Rain(DailyMonth month, ulong stream, ulong place)
    {
        var share = month.Alpha / (1 + month.Alpha);
        for (var p = (ulong)ShapePlace; p + 1 < PlacesOfDay; p += 2)
        {
            var s1 = Math.Pow(1 - Draws.Uniform(stream, place + p), 1 / month.Alpha);
            var s2 = Math.Pow(1 - Draws.Uniform(stream, place + p + 1), 1 / (1 - month.Alpha));
            if (s1 + s2 <= 1)
            {
                share = s1 / (s1 + s2);
                break;
            }
        }

        return Math.Max(1e-6, -month.Beta * share * Math.Log(1 - Draws.Uniform(stream, place + AmountPlace)));
    }
}
