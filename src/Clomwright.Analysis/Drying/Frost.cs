using Clomwright.Analysis.Weather;

namespace Clomwright.Analysis.Drying;

/// <summary>How likely young cob is to freeze, from the mean low of the month: lows of single nights scatter round it (Gauss), the wider the colder.</summary>
public static class Frost
{
    /// <summary>Standard deviation of the lows of single nights, K: 5.2 - 0.13 T, at least 0.5 (Geng, Penning de Vries and Supit 1986, as Pickering wrote it into DSSAT).</summary>
    /// <param name="low">T: mean low of the month, C.</param>
    public static double Scatter(double low) => Math.Max(0.5, 5.2 - 0.13 * low);

    /// <summary>Share of the nights that freeze.</summary>
    /// <param name="low">Mean low of the month, C.</param>
    public static double Share(double low) => Normal(-low / Scatter(low));

    /// <summary>Nights to be expected below freezing from a day on.</summary>
    /// <param name="climate">Mean months.</param>
    /// <param name="from">The first.</param>
    /// <param name="nights">How many.</param>
    public static double Nights(Climate climate, DateOnly from, int nights)
    {
        ArgumentNullException.ThrowIfNull(climate);
        return Enumerable.Range(0, nights).Sum(d => Share(climate.Months[from.AddDays(d).Month - 1].Low));
    }

    /// <summary>Gauss's distribution, by the expansion of Abramowitz and Stegun 26.2.17: within 8e-8.</summary>
    internal static double Normal(double z)
    {
        var t = 1 / (1 + 0.2316419 * Math.Abs(z));
        var tail = Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI) * t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        return z > 0 ? 1 - tail : tail;
    }
}
