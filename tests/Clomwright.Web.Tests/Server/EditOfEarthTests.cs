using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files;
using Clomwright.Testing;
using Clomwright.Web.Editing;

namespace Clomwright.Web.Tests.Server;

/// <summary>From a blank of the earth page to an edit of the mix. Rank: by hand and property.</summary>
public sealed class EditOfEarthTests
{
    private static readonly House Heron = Houses.HeronPoint with
    {
        Mix = Houses.HeronPoint.Mix with
        {
            Drops = [new Drop(Length.FromFeet(5), DropOutcome.Whole)],
            Blocks = [new DryingBlock(Length.FromInches(8), Length.FromInches(8), Length.FromInches(4), 2) { Weighings = [new(0, new Mass(7.4))] }],
        },
    };

    [Theory]
    [InlineData("jar.jar-sand", "1 3/4 in")]
    [InlineData("jar.jar-water", "12 C")]
    [InlineData("recipe.soil", "4")]
    [InlineData("recipe.straw", "2.5 kg")]
    [InlineData("batch.bucket-volume", "0.6 ft3")]
    [InlineData("measures.armful", "0.4 kg")]
    [InlineData("bar.1.shrinkage", "1/4 in")]
    [InlineData("bar.1.cracked", "yes")]
    [InlineData("bar.1.trial", "A")]
    [InlineData("prism.2.load", "1580 lbf")]
    [InlineData("prism.2.days", "41")]
    [InlineData("prism.2.from", "wall")]
    [InlineData("prism.2.date", "2027-05-15")]
    [InlineData("bar.1.date", "2027-05-04")]
    [InlineData("brick.0.load", "400 lbf")]
    [InlineData("brick.0.span", "9 in")]
    [InlineData("brick.0.date", "2027-05-16")]
    [InlineData("drop.0.fall", "4 ft")]
    [InlineData("drop.0.outcome", "halved")]
    [InlineData("block.0.weighings", "0 d 7.44 kg; 2 d 7.2 kg; 4.5 d 7.05 kg")]
    [InlineData("block.0.dry-mass", "6 kg")]
    public void Written_StandsInTheBlank_AsItWasWritten(string key, string text)
    {
        var changed = Apply(new Change.Enter(key, text));
        Assert.Equal(text, new EarthBlanks(changed).All.Single(blank => blank.Key == key).Text);
        Assert.Equal(text, new EarthBlanks(Read(changed)).All.Single(blank => blank.Key == key).Text);
    }

    [Fact]
    public void BareLength_IsInTheHousesOwnUnit() => Assert.Equal(Length.FromInches(2), Apply(new Change.Enter("jar.jar-silt", "2")).Mix.SoilTests.JarSilt);

    [Fact]
    public void Nothing_EmptiesABlankThatMayBeEmpty_AndIsRefusedWhereSomethingMustStand()
    {
        Assert.Null(Apply(new Change.Enter("jar.jar-column", " ")).Mix.SoilTests.JarColumn);
        Assert.Null(EditOfEarth.Change(new Change.Enter("prism.0.load", ""), Heron, out var reason));
        Assert.Equal("web.earth.needed", reason!.Key);
    }

    [Theory]
    [InlineData("jar.jar-sand", "a handful")]
    [InlineData("jar.jar-sand", "9 in")] // the layers would stand over the water
    [InlineData("prism.0.load", "1600")] // of what unit
    [InlineData("prism.0.days", "forty")]
    [InlineData("prism.0.oven", "perhaps")]
    [InlineData("bar.0.shrinkage", "25 in")] // longer than the bar
    [InlineData("bar.7.shrinkage", "1/4 in")]
    [InlineData("bar.0.date", "next week")]
    [InlineData("drop.0.outcome", "")] // what it did has to be said
    [InlineData("block.0.weighings", "Monday 7 kg")]
    [InlineData("block.0.weighings", "2 d heavy")]
    [InlineData("block.0.weighings", "4 d 7 kg; 2 d 7.1 kg")] // days fall
    [InlineData("no.such", "1")]
    public void Nonsense_IsRefusedInOneSentence(string key, string text)
    {
        Assert.Null(EditOfEarth.Change(new Change.Enter(key, text), Heron, out var reason));
        Assert.False(string.IsNullOrWhiteSpace(Phrasebook.English.Say(reason!, UnitSystem.Imperial)));
    }

    [Fact]
    public void PrismAddedOfTheSizesThatStandInTheNewRow_IsLastInTheFile_AndNoMeasurementIsFilledIn()
    {
        var fresh = new EarthBlanks(Heron).New(EarthTest.Prism).ToDictionary(blank => blank.Name, blank => blank.Text);
        Assert.Equal(("4 in", "8 in", "", ""), (fresh["width"], fresh["height"], fresh["load"], fresh["days"]));

        Assert.Null(EditOfEarth.Change(new Change.AddTest(EarthTest.Prism, fresh, "prism.new"), Heron, out var reason));
        Assert.Equal("web.earth.in-blank", reason!.Key);

        (fresh["load"], fresh["days"]) = ("1650 lbf", "42");
        var added = Apply(new Change.AddTest(EarthTest.Prism, fresh, "prism.new")).Mix.Prisms;
        Assert.Equal(6, added.Count);
        Assert.Equal((Length.FromInches(8), 42), (added[^1].Height, added[^1].CuredDays));
    }

    [Fact]
    public void BarTakenOut_IsTheOneNamed() =>
        Assert.Equal(Heron.Mix.TestBars[1], Assert.Single(Apply(new Change.RemoveTest(EarthTest.Bar, 0, "bar.0")).Mix.TestBars));

    [Fact]
    public void Written_ChangesItsOwnLineOfTheFileAndNoOther()
    {
        var before = HouseDocument.Of(Heron);
        var after = before.With(Apply(new Change.Enter("jar.jar-clay", "2 1/4 in")));
        var (old, now) = (before.Text.Split('\n'), after.Text.Split('\n'));
        Assert.Equal(old.Length, now.Length);
        var line = Assert.Single(Enumerable.Range(0, old.Length), i => old[i] != now[i]);
        Assert.Contains("jarClay", now[line], StringComparison.Ordinal);
    }

    [Fact]
    public void AnyTextInAnyBlank_IsTakenOrRefused_AndWhatIsTakenCanBeSaved() =>
        Gen.Select(Gen.Int[0, 200], Gen.OneOf(Gen.Const(""), Gen.Int[-9, 5000].Select(n => $"{n}"), Gen.Int[-9, 99].Select(n => $"{n} in"), Gen.Int[0, 99].Select(n => $"{n} %"), Gen.String)).ForAll(
            (which, text) =>
            {
                var blanks = new EarthBlanks(Heron).All.ToList();
                if (EditOfEarth.Change(new Change.Enter(blanks[which % blanks.Count].Key, text), Heron, out var reason) is { } edit)
                {
                    Assert.Equal(edit.Apply(Heron).Mix, Read(edit.Apply(Heron)).Mix);
                }
                else
                {
                    Assert.NotNull(reason);
                }
            },
            iter: Counts.Of(200, 5_000));

    private static House Read(House house) => HouseDocument.Read(HouseDocument.Of(house).ToBytes()).House!;

    private static House Apply(Change.OfBlank change)
    {
        var edit = EditOfEarth.Change(change, Heron, out var reason);
        Assert.True(edit is not null, reason?.Key);
        return edit.Apply(Heron);
    }
}
