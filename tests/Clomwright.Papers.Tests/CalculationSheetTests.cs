using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Testing;

namespace Clomwright.Papers.Tests;

public sealed class CalculationSheetTests
{
    // Property: every calculation of the study stands on these sheets with its place and the value of its last step; nothing is left out.
    [Theory]
    [InlineData(UnitSystem.Imperial)]
    [InlineData(UnitSystem.Metric)]
    public void EveryCalculation_IsPrintedWithItsResult(UnitSystem units)
    {
        var set = Papers.On(PaperSize.A4, units);
        var words = Book.Office(set).Where(s => s.Key.StartsWith("calculations", StringComparison.Ordinal)).SelectMany(s => s.Marks.All().OfType<Text>()).Select(t => t.Words).ToArray();
        var printed = Tight(string.Concat(words));
        Assert.NotEmpty(set.Calculations);
        Assert.All(set.Calculations, c =>
        {
            Assert.Contains(Tight(c.Place is { } place ? Named(place) : Phrasebook.English.Say(c.Title, units)), printed, StringComparison.Ordinal);
            Assert.Contains(Tight(Phrasebook.English.One(c.Result, units)), printed, StringComparison.Ordinal);
        });
    }

    /// <summary>Words without the spaces at which, and after whose hyphens, lines end.</summary>
    private static string Tight(string words) => string.Concat(words.Where(c => !char.IsWhiteSpace(c)));

    /// <summary>A part of the shell has its name in words; whatever else stands there is a subject.</summary>
    private static string Named(string place) => place is "roof-soaked" or "roof-dry" or "wall-damp" or "stem-lined" ? Phrasebook.English.NameOf($"papers.comfort.name.{place}", "") : Phrasebook.English.Subject(place);
}
