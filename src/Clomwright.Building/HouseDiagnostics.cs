using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>What is wrong in a description by itself, before anything is placed or computed.</summary>
/// <remarks>
/// Paths are those of the house file: <c>openings[2].width</c>, counted from 0. Problems that need geometry (an opening wider than the
/// wall, a bearing that meets the curve twice, openings that overlap) are found there.
/// </remarks>
public static class HouseDiagnostics
{
    /// <summary>The longest name that a house, opening, niche, embed or layer may have, in characters.</summary>
    public const int NameLengthMax = Checks.NameLengthMax;

    /// <summary>What is wrong in the months that a site gives in place of a climate.</summary>
    public static Sequence<Diagnostic> OfMonths(Site site)
    {
        var checks = new Checks();
        SiteChecks.Months(site, checks);
        return checks.Found;
    }

    /// <summary>Every problem, in the order of the house file. Empty when the description is sound by itself.</summary>
    public static Sequence<Diagnostic> Of(House house)
    {
        var checks = new Checks();
        NameChecks.Of(house, checks);
        SiteChecks.Of(house, checks);
        PlotChecks.Of(house.Site.Plot, checks);
        PlanChecks.Of(house.Plan, checks);
        WallChecks.Of(house, checks);
        OpeningChecks.Of(house, checks);
        RecessChecks.Of(house, checks);
        RoofChecks.Of(house.Roof, checks);
        FinishChecks.Of(house, checks);
        ComfortChecks.Of(house, checks);
        MixChecks.Of(house, checks);
        CareChecks.Of(house, checks);
        return checks.Found;
    }
}
