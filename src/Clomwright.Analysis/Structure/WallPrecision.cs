namespace Clomwright.Analysis.Structure;

/// <summary>How far twice and three times as many unknowns moved the usual answer in the example houses, rounded up: a share of each number. Measured, and held by a test; no bound.</summary>
public static class WallPrecision
{
    /// <summary>Mean of a pier.</summary>
    public const double Mean = 0.04;

    /// <summary>Edge of a pier.</summary>
    public const double Edge = 0.08;

    /// <summary>Under a pole.</summary>
    public const double UnderPole = 0.07;

    /// <summary>Most tension.</summary>
    public const double Tension = 0.12;
}
