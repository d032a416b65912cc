using Clomwright.Evidence;

namespace Clomwright.Analysis.Weather.Seasons;

/// <summary>Twelve months of what days are drawn from.</summary>
/// <param name="Months">January first.</param>
/// <param name="IsMeasured">Whether the chances of wet days were measured there; else they come from monthly means alone.</param>
public sealed record DailyTable(Sequence<DailyMonth> Months, bool IsMeasured)
{
    /// <summary>Wet after dry as a share of all wet days, where only those are known (Geng, Penning de Vries and Supit 1986).</summary>
    private const double WetAfterDryShare = 0.75;
    private const double MostAlpha = 0.998;
    private const double WetSunShare = 0.55;
    private const double DrySunScatter = 0.24;
    private const double WetSunScatter = 0.48;
    private const double Fahrenheit = 5.0 / 9;

    /// <summary>
    /// The table of a climate: its own chances of rain and scatter where they were measured, else by Geng and others 1986 as Pickering wrote it down. Where their shape of rain would pass 1 it is
    /// held there and the scale takes what is missing, so that the month's rain stays. Sun of wet days is 0.55 of dry ones (our estimate), scattered by 0.48 and 0.24 of its mean (Richardson and Wright 1984, from memory).
    /// </summary>
    /// <param name="climate">Monthly means.</param>
    public static DailyTable Of(Climate climate)
    {
        ArgumentNullException.ThrowIfNull(climate);
        var measured = climate.Daily;
        var months = climate.Months.Select(m => Rain(m, measured)).ToArray();
        // Geng: how much warmer dry days are hangs on the year's mean chance of rain after a dry day.
        var apart = Math.Abs(9.67 - 27.4 * months.Average(m => m.WetAfterDry)) * Fahrenheit;
        return new(climate.Months.Zip(months, (m, rain) => Month(m, rain, measured, apart)).ToSequence(), measured is not null);
    }

    private static (double WetAfterWet, double WetAfterDry, double Alpha, double Beta, double Wet) Rain(ClimateMonth month, ClimateDays? measured)
    {
        var wet = Math.Clamp(month.WetDays / month.Days, 0, 0.99);
        var rain = month.WetDays > 0 ? month.Rain / month.WetDays : 0;
        double afterDry, alpha;
        if (measured is { } days)
        {
            (afterDry, alpha) = (days.WetAfterDry[month.Number - 1], days.Alpha is { } shape ? shape[month.Number - 1] : Shape(rain));
        }
        else
        {
            (afterDry, alpha) = (WetAfterDryShare * wet, Shape(rain));
        }

        var afterWet = wet > 0 ? Math.Clamp(1 - afterDry * (1 - wet) / wet, 0, 1) : 0;
        return (afterWet, afterDry, alpha, rain / alpha, wet);
    }

    private static double Shape(double rain)
    {
        var scale = Math.Max(-2.16 + 1.83 * rain, 0.01);
        return Math.Clamp(rain / scale, 0.01, MostAlpha);
    }

    private static DailyMonth Month(ClimateMonth month, (double WetAfterWet, double WetAfterDry, double Alpha, double Beta, double Wet) rain, ClimateDays? measured, double apart)
    {
        var i = month.Number - 1;
        var (highScatter, lowScatter) = (Math.Max(5.8 - 0.09 * month.High, 0.5), Math.Max(5.2 - 0.13 * month.Low, 0.5));
        var (dry, wet) = measured?.High is { } high
            ? (new Scatter(high.Dry[i], high.DryDeviation[i]), new Scatter(high.Wet[i], high.WetDeviation[i]))
            : (new Scatter(month.High + rain.Wet * apart, highScatter), new Scatter(month.High - (1 - rain.Wet) * apart, highScatter));
        var sun = month.Sun / (1 - rain.Wet * (1 - WetSunShare));
        return new(
            month.Number, rain.WetAfterWet, rain.WetAfterDry, rain.Alpha, rain.Beta, dry, wet, new(month.Low, measured?.LowDeviation is { } low ? low[i] : lowScatter),
            new(sun, DrySunScatter * sun), new(WetSunShare * sun, WetSunScatter * WetSunShare * sun), month.DewPoint, month.Wind);
    }
}
