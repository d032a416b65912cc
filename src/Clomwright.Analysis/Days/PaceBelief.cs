namespace Clomwright.Analysis.Days;

/// <summary>
/// What is believed of a crew's pace at the cob: the logarithm of a factor on the planned pace that wanders from day to day, one more above the shoulder, and how far single days lie from it.
/// A dynamic linear model of two states with an unknown variance, in conjugate form (West and Harrison 1997, Bayesian forecasting and dynamic models, 4; from memory): given what was read, the states are
/// normal and the inverse of the variance gamma.
/// </summary>
/// <param name="Level">Mean of the logarithm of the factor.</param>
/// <param name="Above">Mean of the logarithm of the further factor above the shoulder.</param>
/// <param name="LevelVariance">Of the level, in units of the variance of days.</param>
/// <param name="Covariance">Of level and further factor, in the same units.</param>
/// <param name="AboveVariance">Of the further factor, in the same units.</param>
/// <param name="DayVariance">Estimate of the variance of single days.</param>
/// <param name="Worth">How many days that estimate is worth: degrees of freedom.</param>
/// <param name="Wander">Growth of the level's variance in a day, in units of the variance of days.</param>
/// <param name="Readings">Days that told something.</param>
internal sealed record PaceBelief(
    double Level, double Above, double LevelVariance, double Covariance, double AboveVariance, double DayVariance, double Worth, double Wander, int Readings)
{
    /// <summary>What is believed before the first day.</summary>
    public static PaceBelief Before(WorkNumbers numbers)
    {
        var days = Square(numbers["work-day-spread"]);
        // Where days do not differ at all there is nothing to measure by.
        var unit = days > 0 ? days : 1;
        return new(0, 0, Square(numbers["work-cob-spread"]) / unit, 0, Square(numbers["work-above-spread"]) / unit, days, numbers["work-spread-worth"], Square(numbers["work-wander"]) / unit, 0);
    }

    /// <summary>Standard deviation of the logarithm of the factor below the shoulder.</summary>
    public double Spread => Math.Sqrt(LevelVariance * Unit);

    /// <summary>Standard deviation of the logarithm of the factor above the shoulder, both states together.</summary>
    public double SpreadAbove => Math.Sqrt(Math.Max(0, LevelVariance + 2 * Covariance + AboveVariance) * Unit);

    /// <summary>In what variances are measured.</summary>
    public double Unit => DayVariance > 0 ? DayVariance : 1;

    /// <summary>The same some days later.</summary>
    public PaceBelief Later(int days) => this with { LevelVariance = LevelVariance + Wander * days };

    /// <summary>What is believed after a day.</summary>
    /// <param name="log">Logarithm of the day's pace over the planned one.</param>
    /// <param name="share">Share of the planned hours above the shoulder, 0 to 1.</param>
    public PaceBelief After(double log, double share)
    {
        if (DayVariance <= 0)
        {
            return this;
        }

        // Of the reading with both states.
        var (withLevel, withAbove) = (LevelVariance + share * Covariance, Covariance + share * AboveVariance);
        var of = withLevel + share * withAbove + 1;
        var off = log - Level - share * Above;
        return this with
        {
            Level = Level + withLevel / of * off,
            Above = Above + withAbove / of * off,
            LevelVariance = LevelVariance - withLevel * withLevel / of,
            Covariance = Covariance - withLevel * withAbove / of,
            AboveVariance = AboveVariance - withAbove * withAbove / of,
            DayVariance = (Worth * DayVariance + off * off / of) / (Worth + 1),
            Worth = Worth + 1,
            Readings = Readings + 1,
        };
    }

    /// <summary>What is believed after a day of which only a least pace is known, since the wall ended it: mean and variance of what is left of the normal distribution above it (a Tobit filter; our approximation keeps it normal, and the variance of days as it was).</summary>
    /// <param name="log">Logarithm of the least pace over the planned one.</param>
    /// <param name="share">Share of the planned hours above the shoulder, 0 to 1.</param>
    public PaceBelief AtLeast(double log, double share)
    {
        if (DayVariance <= 0)
        {
            return this;
        }

        var (withLevel, withAbove) = (LevelVariance + share * Covariance, Covariance + share * AboveVariance);
        var of = withLevel + share * withAbove + 1;
        var spread = Math.Sqrt(of * DayVariance);
        var z = (log - Level - share * Above) / spread;
        // Mean of what lies above z, in deviations, and by how much its variance is less than 1.
        var mean = NormalDistribution.MeanAbove(z);
        var less = mean * (mean - z);
        return this with
        {
            Level = Level + withLevel / of * spread * mean,
            Above = Above + withAbove / of * spread * mean,
            LevelVariance = LevelVariance - withLevel * withLevel / of * less,
            Covariance = Covariance - withLevel * withAbove / of * less,
            AboveVariance = AboveVariance - withAbove * withAbove / of * less,
            Readings = Readings + 1,
        };
    }

    private static double Square(double x) => x * x;
}
