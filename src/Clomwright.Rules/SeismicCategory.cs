using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Rules;

/// <summary>The seismic design category of a site, A to F, from its design spectral accelerations and risk category.</summary>
/// <remarks>
/// Tables 11.6-1 and 11.6-2 of ASCE/SEI 7 with its note on S1: the more severe of the two tables holds, and from S1 = 0.75 on it is E (F
/// for risk category IV). The thresholds stand in <c>data/rules/seismic-category.json</c>. Departure: the way to category A through the
/// mapped short-period acceleration is not taken, because a house file does not hold it; and the residential code's own map of
/// categories is not read. Both can only make the category milder.
/// </remarks>
public static class SeismicCategory
{
    private static readonly SeismicFile Tables = SeismicFile.Read();

    /// <summary>Where the thresholds come from.</summary>
    public static Source Source { get; } = Sources.Get(Tables.Source) with { Surety = Tables.Surety };

    /// <summary>The category's letter; null where the site does not say enough, or is described by another loading code.</summary>
    public static string? Of(Site site)
    {
        if (Table(site) is not { } table || site is not { SeismicSds: { } sds, SeismicSd1: { } sd1, SeismicS1: { } s1 } || !double.IsFinite(sds + sd1 + s1))
        {
            return null;
        }

        var letters = new[] { In(table.SdsBelow, sds, table.Beyond), In(table.Sd1Below, sd1, table.Beyond), s1 >= table.S1From ? table.S1Category : "A" };
        return letters.Max(StringComparer.Ordinal);
    }

    /// <summary>What the site has to stay below so that its category is not past a letter; null where the site does not say enough.</summary>
    internal static Sequence<Comparison>? Within(Site site, int category)
    {
        if (Of(site) is null)
        {
            return null;
        }

        var table = Table(site)!;
        Comparison[] all =
        [
            Below(site.SeismicSds!.Value, Most(table.SdsBelow, table.Beyond, category)),
            Below(site.SeismicSd1!.Value, Most(table.Sd1Below, table.Beyond, category)),
            Below(site.SeismicS1!.Value, Reaches(table.S1Category, category) ? double.PositiveInfinity : table.S1From),
        ];
        return all.Where(c => double.IsFinite(c.Limit.Si)).ToSequence();
    }

    private static Comparison Below(double provided, double limit) => new(Amount.Number(provided), ComparisonWord.LessThan, Amount.Number(limit));

    private static string In(IReadOnlyDictionary<string, double> below, double value, string beyond) =>
        below.OrderBy(row => row.Value).Where(row => value < row.Value).Select(row => row.Key).FirstOrDefault(beyond);

    private static double Most(IReadOnlyDictionary<string, double> below, string beyond, int category) =>
        Reaches(beyond, category) ? double.PositiveInfinity : below.Where(row => Reaches(row.Key, category)).Select(row => row.Value).DefaultIfEmpty(0).Max();

    /// <summary>Whether a category, counted from A = 1, takes in a letter.</summary>
    private static bool Reaches(string letter, int category) => letter[0] - 'A' < category;

    private static SeismicLine? Table(Site site) =>
        site.Loads?.StartsWith("asce7", StringComparison.Ordinal) == false ? null : Tables.RiskCategories.FirstOrDefault(t => t.Name == site.RiskCategory);
}
