namespace Clomwright.Analysis.Weather.Seasons;

/// <summary>One day of a season.</summary>
/// <param name="Rain">mm; a day is wet when it has any.</param>
/// <param name="High">Highest temperature, C.</param>
/// <param name="Low">Lowest temperature, C.</param>
/// <param name="Sun">On a level square metre, MJ.</param>
/// <param name="DewPoint">C.</param>
/// <param name="Wind">Mean wind 10 m above open ground, m/s.</param>
public readonly record struct SeasonDay(double Rain, double High, double Low, double Sun, double DewPoint, double Wind)
{
    /// <summary>Whether it rains.</summary>
    public bool IsWet => Rain > 0;

    /// <summary>Mean temperature, C.</summary>
    public double Mean => (High + Low) / 2;
}
