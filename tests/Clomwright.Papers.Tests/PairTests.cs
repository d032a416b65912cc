using Clomwright.Building;
using Clomwright.Testing;

namespace Clomwright.Papers.Tests;

/// <summary>A doubled frame is counted, named and raised as pairs on every sheet that speaks of its poles. Rank property: the house is made up; the words are read from the paper itself.</summary>
public class PairTests
{
    private static string[] Words(string sheet) => [.. Papers.HeronPointBook.Where(s => s.Key.StartsWith(sheet, StringComparison.Ordinal)).SelectMany(s => s.Texts()).Select(t => t.Words)];

    [Fact]
    public void TheFramingPlan_CountsSixteen()
    {
        var words = Words("roof-plan");
        Assert.Contains("16", words);
        Assert.Contains("Pair", words);
        Assert.DoesNotContain("Pole", words);
    }

    [Fact]
    public void EveryPoleOfAPair_HasItsCard()
    {
        var cards = Words("pole-cards").Where(w => w.StartsWith("Pair ", StringComparison.Ordinal)).ToArray();
        Assert.Equal(Enumerable.Range(1, 8).SelectMany(n => (string[])[$"Pair {n}, left", $"Pair {n}, right"]), cards);
    }

    [Fact]
    public void TheRaisingOrder_SetsPairs()
    {
        var words = Words("raising");
        Assert.Contains("People, a pole", words);
        Assert.Contains("Hardest pair to lose", words);
        Assert.Contains(words, w => w.StartsWith("One, then the other beside it", StringComparison.Ordinal));
    }

    /// <summary>A frame of single poles says nothing of pairs.</summary>
    [Fact]
    public void SinglePoles_AreNoPairs()
    {
        var house = Houses.HeronPoint with { Roof = (Roof.Reciprocal)Houses.HeronPoint.Roof! with { IfOneFails = null } };
        var words = Book.Site(Papers.Set(house, PaperSize.A4)).Where(s => s.Key.StartsWith("raising", StringComparison.Ordinal) || s.Key.StartsWith("pole-cards", StringComparison.Ordinal)).SelectMany(s => s.Texts()).Select(t => t.Words);
        Assert.DoesNotContain(words, w => w.Contains("pair", StringComparison.OrdinalIgnoreCase));
    }
}
