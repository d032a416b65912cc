using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Files.Tests;

/// <summary>What somebody states of a window or a telephone is held against what it can be. Rank: by hand.</summary>
public class StatedLightTests
{
    // South window of the example: 26 by 40 in rough; its frame of 25 by 38 in, 1 1/2 in thick, leaves 22 by 35 in, which is 770/1040 = 74.04 % of the hole.
    [Theory]
    [InlineData(22, 35, null)]
    [InlineData(23, 35, "building.clear-frame-width")]
    [InlineData(22, 36, "building.clear-frame-height")]
    [InlineData(27, 35, "building.clear-width")]
    [InlineData(22, 41, "building.clear-height")]
    public void What_stands_clear_is_no_more_than_frame_or_hole_give(int width, int height, string? key) =>
        Says("south-window", o => o with { Clear = new ClearOpening(Length.FromInches(width), Length.FromInches(height)) }, key);

    // The door: frame 35 by 78 in, no timber underfoot: 32 by 76 1/2 in.
    [Theory]
    [InlineData(32, 76, null)]
    [InlineData(32, 77, "building.clear-frame-height")]
    public void A_door_has_no_timber_underfoot(int width, int height, string? key) =>
        Says("door", o => o with { Clear = new ClearOpening(Length.FromInches(width), Length.FromInches(height)) }, key);

    [Theory]
    [InlineData(0.56, null)]
    [InlineData(0.74, null)]
    [InlineData(0.80, "building.glazed-over-light")]
    [InlineData(1.2, "building.out-of-range")]
    public void Glass_stands_in_the_light_of_its_frame(double share, string? key) => Says("south-window", o => o with { Glazed = new Share(share) }, key);

    [Fact]
    public void A_telephone_number_can_be_dialled()
    {
        var house = Houses.HeronPoint;
        var emergency = house.Site.Emergency!;
        var wrong = HouseDiagnostics.Of(house with { Site = house.Site with { Emergency = emergency with { Number = "ask Ada", Contacts = [new Contact("engineer", "M. Invented", "in the book")] } } });
        Assert.Equal(["site.emergency.number", "site.emergency.contacts[0].phone"], wrong.Select(d => d.Path));
        Assert.All(wrong, d => Assert.Equal("building.phone-digits", d.What.Key));
        var (added, problem) = HousePlaces.Of(house).Add("site.emergency.contacts", new Dictionary<string, string> { ["role"] = "neighbour", ["name"] = "N. Invented", ["phone"] = "in the book" });
        Assert.Null(added);
        Assert.Equal("files.in-place", problem!.Key); // names the place that it is about
    }

    private static void Says(string name, Func<Opening, Opening> with, string? key)
    {
        var house = Houses.HeronPoint;
        Assert.Empty(HouseDiagnostics.Of(house));
        var changed = house with { Openings = [.. house.Openings.Select(o => o.Name == name ? with(o) : o)] };
        var said = HouseDiagnostics.Of(changed);
        Assert.Equal(key is null ? [] : (string[])[key], said.Select(d => d.What.Key));
        Assert.All(said, d => Assert.DoesNotContain("{", Phrasebook.English.Say(d.What, UnitSystem.Imperial), StringComparison.Ordinal));
    }
}
