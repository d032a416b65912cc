namespace Clomwright.Analysis.Weather.Seasons;

/// <summary>What the days of one month are drawn from.</summary>
/// <remarks>Symbols of Richardson 1981 and of Richardson and Wright 1984 (ARS-8): P(W|W), P(W|D), alpha, beta, means and standard deviations of wet and dry days.</remarks>
/// <param name="Number">1 to 12.</param>
/// <param name="WetAfterWet">P(W|W): how likely a wet day follows a wet one, 0 to 1.</param>
/// <param name="WetAfterDry">P(W|D): how likely a wet day follows a dry one, 0 to 1.</param>
/// <param name="Alpha">Shape of a wet day's rain, above 0, at most 1.</param>
/// <param name="Beta">Its scale, mm.</param>
/// <param name="HighDry">Highest temperature of dry days, C.</param>
/// <param name="HighWet">Of wet days, C.</param>
/// <param name="Low">Lowest temperature, C.</param>
/// <param name="SunDry">Sun of dry days on a level square metre, MJ.</param>
/// <param name="SunWet">Of wet days, MJ.</param>
/// <param name="DewPoint">Mean dew point, C.</param>
/// <param name="Wind">Mean wind 10 m above open ground, m/s.</param>
public sealed record DailyMonth(
    int Number, double WetAfterWet, double WetAfterDry, double Alpha, double Beta, Scatter HighDry, Scatter HighWet, Scatter Low, Scatter SunDry, Scatter SunWet, double DewPoint, double Wind)
{
    /// <summary>Share of wet days in the long run, 0 to 1.</summary>
    public double WetShare => WetAfterDry / (1 + WetAfterDry - WetAfterWet);

    /// <summary>Mean rain of a wet day, mm.</summary>
    public double MeanRain => Alpha * Beta;
}

/// <summary>A mean and how far days lie from it.</summary>
/// <param name="Mean">The mean.</param>
/// <param name="Deviation">The standard deviation.</param>
public readonly record struct Scatter(double Mean, double Deviation);
