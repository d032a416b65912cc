namespace Clomwright.Analysis.Weather.Seasons;

/// <summary>How far a day's high, low and sun lie from their means, in standard deviations: x(t) = A x(t-1) + B e(t), e independent and normal.</summary>
/// <remarks>Matrices of Richardson and Wright 1984 (ARS-8), as DSSAT's Weather/WGEN.for has them: what one day keeps of the day before, and what high, low and sun share.</remarks>
/// <param name="High">Of the highest temperature.</param>
/// <param name="Low">Of the lowest.</param>
/// <param name="Sun">Of the sun.</param>
public readonly record struct Residuals(double High, double Low, double Sun)
{
    /// <summary>The next day's, from three independent normal numbers.</summary>
    public Residuals Next(double first, double second, double third) => new(
        0.567 * High + 0.086 * Low - 0.002 * Sun + 0.781 * first,
        0.253 * High + 0.504 * Low - 0.050 * Sun + 0.328 * first + 0.637 * second,
        -0.006 * High - 0.039 * Low + 0.244 * Sun + 0.238 * first - 0.341 * second + 0.873 * third);
}
