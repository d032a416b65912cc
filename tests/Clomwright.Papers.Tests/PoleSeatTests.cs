using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Papers.Tests;

/// <summary>What is cut into poles, as their cards say it.</summary>
public sealed class PoleSeatTests
{
    // Property: a depth that is written stands on the cards, one that is not is told as assumed.
    [Theory]
    [InlineData(2, "given")]
    [InlineData(null, "assumed")]
    public void TheDepthOfASeat_StandsOnTheCards(int? inches, string tag)
    {
        var house = Houses.HeronPoint with { Roof = Houses.HeronPoint.Roof! with { Seat = new SeatMade { Flat = inches is { } deep ? Length.FromInches(deep) : null } } };
        var words = string.Join(" ", Sheets.PoleCards.Of(new Sheets.Scene(Papers.Set(house, PaperSize.A4))).SelectMany(d => d.Finish(1, 1, new Sheets.Imprint("x", Papers.Date, null), new Sheets.Wording(UnitSystem.Imperial, Phrasebook.English)).Texts()).Select(t => t.Words)).Replace('\u00a0', ' ');
        Assert.Contains(inches is null ? "seat 1 in deep" : "seat 2 in deep", words, StringComparison.Ordinal);
        Assert.Contains("seats: " + tag, words, StringComparison.Ordinal);
        Assert.Contains("No rule says how deep one may be", words, StringComparison.Ordinal);
    }
}
