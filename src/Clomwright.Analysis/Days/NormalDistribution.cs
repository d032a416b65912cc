namespace Clomwright.Analysis.Days;

/// <summary>The standard normal distribution.</summary>
internal static class NormalDistribution
{
    /// <summary>Share below a number, to 1e-7 (Abramowitz and Stegun 1964, 26.2.17; from memory).</summary>
    public static double Below(double z)
    {
        var t = 1 / (1 + 0.2316419 * Math.Abs(z));
        var tail = Density(z) * t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        return z > 0 ? 1 - tail : tail;
    }

    /// <summary>Mean of what lies above a number: density over the share above; far out by the series of Mills' ratio.</summary>
    public static double MeanAbove(double z) => z < 4 ? Density(z) / (1 - Below(z)) : z + 1 / z - 2 / (z * z * z);

    private static double Density(double z) => Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI);
}
