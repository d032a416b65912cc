using Clomwright.Building;

namespace Clomwright.Rules.Tests;

/// <summary>Source (published): ASCE/SEI 7, tables 11.6-1 and 11.6-2 with the note on S1, as printed by public hazard reports of the US Geological Survey.</summary>
public class SeismicCategoryTests
{
    /// <summary>Two sites of those reports: the reports print the category.</summary>
    [Theory]
    [InlineData(0.985, 0.540, "I", "D")]
    [InlineData(0.719, 0.395, "I", "D")]
    [InlineData(0.605, 0.000, "I", "D")]
    public void Category_OfAPublishedSite_IsTheOnePrinted(double sds, double sd1, string risk, string category) =>
        Assert.Equal(category, SeismicCategory.Of(Site(sds, sd1, 0.1, risk)));

    [Theory]
    [InlineData(0.166, 0.05, "II", "A")]
    [InlineData(0.167, 0.05, "II", "B")]
    [InlineData(0.329, 0.05, "II", "B")]
    [InlineData(0.33, 0.05, "II", "C")]
    [InlineData(0.499, 0.05, "III", "C")]
    [InlineData(0.5, 0.05, "II", "D")]
    [InlineData(0.1, 0.066, "II", "A")]
    [InlineData(0.1, 0.067, "II", "B")]
    [InlineData(0.1, 0.133, "II", "C")]
    [InlineData(0.1, 0.2, "II", "D")]
    [InlineData(0.2, 0.15, "II", "C")]
    [InlineData(0.166, 0.066, "IV", "A")]
    [InlineData(0.167, 0.05, "IV", "C")]
    [InlineData(0.33, 0.05, "IV", "D")]
    [InlineData(0.1, 0.067, "IV", "C")]
    [InlineData(0.1, 0.133, "IV", "D")]
    public void Category_AtEachThreshold_IsTheMoreSevereOfBothTables(double sds, double sd1, string risk, string category) =>
        Assert.Equal(category, SeismicCategory.Of(Site(sds, sd1, 0.1, risk)));

    [Theory]
    [InlineData(0.749, "II", "A")]
    [InlineData(0.75, "II", "E")]
    [InlineData(0.75, "IV", "F")]
    public void Category_WithLargeS1_IsEOrF(double s1, string risk, string category) =>
        Assert.Equal(category, SeismicCategory.Of(Site(0.1, 0.05, s1, risk)));

    [Fact]
    public void Category_WithAnythingMissing_IsNotKnown()
    {
        var site = Site(0.1, 0.05, 0.1, "II");
        Assert.Null(SeismicCategory.Of(site with { SeismicSds = null }));
        Assert.Null(SeismicCategory.Of(site with { SeismicSd1 = null }));
        Assert.Null(SeismicCategory.Of(site with { SeismicS1 = null }));
        Assert.Null(SeismicCategory.Of(site with { RiskCategory = null }));
        Assert.Null(SeismicCategory.Of(site with { RiskCategory = "V" }));
        Assert.Null(SeismicCategory.Of(site with { SeismicSds = double.NaN }));
        Assert.Null(SeismicCategory.Of(site with { Loads = "en1990" }));
    }

    private static Site Site(double sds, double sd1, double s1, string risk) =>
        new() { Loads = "asce7-16", SeismicSds = sds, SeismicSd1 = sd1, SeismicS1 = s1, RiskCategory = risk };
}
