using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Testing;

namespace Clomwright.Papers.Tests;

/// <summary>What is cut into poles, as their cards say it.</summary>
public sealed class PoleSeatTests
{
    // Analytic: a pole that rises 3 in 4 straight across a beam 200 mm wide lies 0.6 of it higher over one edge than over the other, square to itself. 1 nm.
    [Fact]
    public void ALevelSeat_IsDeeperAtTheOuterEdge()
    {
        var geometry = FromBuilding.Of(Houses.Round(Length.FromMillimetres(6000)) with { Roof = PostTests.Made with { Pitch = new Slope(0.75) }, Openings = [], Niches = [], Embeds = [] });
        var cut = LevelSeat.Of(geometry, FromGeometry.Of(geometry).Plain.Value!.Places[0], 0.2, 0.025);
        Assert.Equal(0.12, cut.Full, 1e-9);
        Assert.Equal(0.085, cut.Outer, 1e-9);
        Assert.Equal(-0.035, cut.Inner, 1e-9);
    }

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
        Assert.Contains("NOT CHECKED", words, StringComparison.Ordinal);
    }
}
