namespace Clomwright.Analysis;

/// <summary>What several rooms take of cob as it stands.</summary>
public static class Cob
{
    /// <summary>Of the wall as it stands, kg/m3: the upper of 1500 to 1800.</summary>
    public const double StandingDensity = 1800;
}
