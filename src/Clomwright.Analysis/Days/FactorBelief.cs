namespace Clomwright.Analysis.Days;

/// <summary>What is believed of a factor whose logarithm is normal: normal before and after a reading that is normal too.</summary>
/// <param name="Log">Mean of the logarithm.</param>
/// <param name="Spread">Standard deviation of the logarithm.</param>
/// <param name="Readings">What told something.</param>
internal sealed record FactorBelief(double Log, double Spread, int Readings)
{
    /// <summary>What is believed after a reading of the logarithm.</summary>
    /// <param name="log">The reading.</param>
    /// <param name="variance">Its variance.</param>
    public FactorBelief After(double log, double variance)
    {
        if (Spread <= 0)
        {
            return this;
        }

        var own = Spread * Spread;
        return new((Log * variance + log * own) / (own + variance), Math.Sqrt(own * variance / (own + variance)), Readings + 1);
    }

    /// <summary>What is believed after readings that no normal distribution describes: mean and deviation over a grid of the logarithm.</summary>
    /// <param name="likelihood">Logarithm of how likely the readings are, for the logarithm of the factor.</param>
    /// <param name="readings">How many they are.</param>
    public FactorBelief After(Func<double, double> likelihood, int readings)
    {
        const int half = 60;
        const double reach = 4.5;
        if (Spread <= 0 || readings == 0)
        {
            return this;
        }

        var at = new double[2 * half + 1];
        var weight = new double[at.Length];
        for (var i = 0; i < at.Length; i++)
        {
            var z = reach * (i - half) / half;
            (at[i], weight[i]) = (Log + z * Spread, likelihood(Log + z * Spread) - z * z / 2);
        }

        var (most, sum, mean, square) = (weight.Max(), 0.0, 0.0, 0.0);
        for (var i = 0; i < at.Length; i++)
        {
            var w = Math.Exp(weight[i] - most);
            (sum, mean, square) = (sum + w, mean + w * at[i], square + w * at[i] * at[i]);
        }

        mean /= sum;
        return new(mean, Math.Sqrt(Math.Max(0, square / sum - mean * mean)), Readings + readings);
    }
}
