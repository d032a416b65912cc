using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;
using Clomwright.Web.Editing;

namespace Clomwright.Web.Tests.Server;

/// <summary>From what the page asks to an edit of the description. Rank: by hand.</summary>
public sealed class EditOfTests
{
    private static readonly House House = Houses.HeronPoint;

    [Fact]
    public void Move_BetweenInches_LandsOnTheNearestInch()
    {
        var moved = Apply(new Change.Move("tub-window", 2.351, 1.009));

        Assert.Equal(Along.At(Length.FromInches(93)), Opening(moved, "tub-window").Along);
        Assert.Equal(Length.FromInches(40), Opening(moved, "tub-window").Sill);
    }

    [Fact]
    public void Move_InAMetricHouse_LandsOnTheNearestCentimetre() => Assert.Equal(
        Along.At(Length.FromMillimetres(2350)),
        Opening(Apply(new Change.Move("tub-window", 2.351, null), House with { Units = UnitSystem.Metric }), "tub-window").Along);

    [Fact]
    public void Move_WithoutASill_LeavesTheSill() =>
        Assert.Equal(Opening(House, "tub-window").Sill, Opening(Apply(new Change.Move("tub-window", 2, null)), "tub-window").Sill);

    [Fact]
    public void Nudge_Fine_IsOneInchFromTheWrittenStation()
    {
        var placed = Apply(new Change.Write("door", OpeningField.Station, "9 ft 3 1/4 in"));

        Assert.Equal(Along.At(Length.FromFeet(9, 4) + new Length(Length.PerInch / 4)), Opening(Apply(new Change.Nudge("door", 1, 0, false), placed), "door").Along);
        Assert.Equal(Along.At(Length.FromFeet(8, 9) + new Length(Length.PerInch / 4)), Opening(Apply(new Change.Nudge("door", -1, 0, true), placed), "door").Along);
    }

    [Fact]
    public void Nudge_Up_LeavesTheBearingAsWritten()
    {
        var nudged = Opening(Apply(new Change.Nudge("tub-window", 0, 1, false)), "tub-window");

        Assert.Equal(Opening(House, "tub-window").Along, nudged.Along);
        Assert.Equal(Opening(House, "tub-window").Sill + Length.FromInches(1), nudged.Sill);
    }

    [Theory]
    [InlineData("7'6\"", 90)]
    [InlineData("7 ft 6 in", 90)]
    [InlineData("90", 90)]
    public void Write_AsABuilderWrites_IsUnderstood(string text, int inches) =>
        Assert.Equal(Length.FromInches(inches), Opening(Apply(new Change.Write("tub-window", OpeningField.Width, text)), "tub-window").Width);

    [Theory]
    [InlineData("2.3 m", 2300)]
    [InlineData("2300", 2300)]
    public void Write_InAMetricHouse_TakesBareMillimetres(string text, int millimetres) => Assert.Equal(
        Length.FromMillimetres(millimetres),
        Opening(Apply(new Change.Write("tub-window", OpeningField.Height, text), House with { Units = UnitSystem.Metric }), "tub-window").Height);

    [Theory]
    [InlineData("as wide as the door")]
    [InlineData("")]
    [InlineData("7 apples")]
    [InlineData("NaN")]
    public void Write_Nonsense_GivesAReason(string text)
    {
        Assert.Null(EditOf.Change(new Change.Write("door", OpeningField.Width, text), House, _ => 1, out var reason));
        Assert.NotNull(reason);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(1e300)]
    public void Move_Nowhere_GivesAReason(double station)
    {
        Assert.Null(EditOf.Change(new Change.Move("door", station, null), House, _ => 1, out var reason));
        Assert.NotNull(reason);
    }

    [Fact]
    public void AnyChange_OfAnOpeningThatIsGone_GivesAReason()
    {
        Assert.Null(EditOf.Change(new Change.Nudge("gone", 1, 0, false), House, _ => 1, out var reason));
        Assert.Equal("web.no-opening", reason?.Key);
    }

    private static House Apply(Change change, House? house = null)
    {
        var edit = EditOf.Change(change, house ?? House, _ => 2.5, out var reason);
        Assert.True(edit is not null, reason?.Key);
        return edit.Apply(house ?? House);
    }

    private static Opening Opening(House house, string name) => house.Openings.Single(o => o.Name == name);
}
