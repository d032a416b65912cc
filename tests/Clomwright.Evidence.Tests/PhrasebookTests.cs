using Clomwright.Testing;
namespace Clomwright.Evidence.Tests;

public class PhrasebookTests
{
    private static readonly Phrasebook Book = Phrasebook.Of(
    [
        new("t.plain", "The wall stands."),
        new("t.width", "{name} is {width} wide"),
        new("t.count", "{n|one batch|{n} batches} of {what}"),
        new("t.outer", "Because {why}: {n|{a}|{b}}"),
        new("t.practice", "About {=50 lb|23 kg}, {=1 to 2 in|25 to 50 mm} deep"),
        new("language.list-between", ", "),
        new("language.list-last", " and "),
        new("language.list-empty", "none"),
        new("language.date", "{day} {month} {year}"),
        new("language.month-6", "June"),
        new("language.days", "{n|1 day|{n} days}"),
    ]);

    /// <summary>Rank: property. What somebody typed cannot break a sentence in two.</summary>
    [Fact]
    public void Say_TextWithALineBreak_StaysOnOneLine()
    {
        var book = Phrasebook.Of([new("test.name", "there is no {name}")]);
        Assert.Equal("there is no a\\u000ab", book.Say(Message.Of("test.name", ("name", "a\nb")), UnitSystem.Metric));
        Gen.String.ForAll(text => Assert.DoesNotContain(OneLine.Of(text), char.IsControl));
    }

    [Fact]
    public void Say_WithArguments_FillsThem()
    {
        Assert.Equal("The wall stands.", Book.Say(new Message("t.plain"), UnitSystem.Metric));
        var message = Message.Of("t.width", ("name", "door"), ("width", Length.FromFeet(3)));
        Assert.Equal("door is 3 ft (915 mm) wide", Book.Say(message, UnitSystem.Imperial));
        Assert.Equal("door is 915 mm (3 ft) wide", Book.Say(message, UnitSystem.Metric));
    }

    [Theory]
    [InlineData(UnitSystem.Imperial, "About 50 lb (23 kg), 1 to 2 in (25 to 50 mm) deep")]
    [InlineData(UnitSystem.Metric, "About 23 kg (50 lb), 25 to 50 mm (1 to 2 in) deep")]
    public void Say_MeasureInBothSystems_HasTheFirstFirst(UnitSystem first, string expected) => Assert.Equal(expected, Book.Say(new Message("t.practice"), first));

    [Theory]
    [InlineData(0, "0 batches of cob")]
    [InlineData(1, "one batch of cob")]
    [InlineData(2, "2 batches of cob")]
    public void Say_Count_ChoosesTheForm(int n, string expected) =>
        Assert.Equal(expected, Book.Say(Message.Of("t.count", ("n", n), ("what", "cob")), UnitSystem.Metric));

    [Fact]
    public void Say_Nested_SaysTheInnerMessage() =>
        Assert.Equal("Because The wall stands.: x", Book.Say(Message.Of("t.outer", ("why", new Message("t.plain")), ("n", 1), ("a", "x"), ("b", "y")), UnitSystem.Metric));

    [Fact]
    public void Say_MissingKeyOrArgument_ShowsIt()
    {
        Assert.Equal("[t.nowhere]", Book.Say(new Message("t.nowhere"), UnitSystem.Metric));
        Assert.Equal("{name} is {width} wide", Book.Say(new Message("t.width"), UnitSystem.Metric));
    }

    [Fact]
    public void Say_AuthorsBraces_AreLeftAlone() =>
        Assert.Equal("{width}|} is 12 in (305 mm) wide", Book.Say(Message.Of("t.width", ("name", "{width}|}"), ("width", Length.FromInches(12))), UnitSystem.Imperial));

    [Theory]
    [InlineData(0, "none")]
    [InlineData(1, "a")]
    [InlineData(2, "a and b")]
    [InlineData(3, "a, b and c")]
    public void Say_List_IsJoined(int count, string expected)
    {
        var items = new Argument[] { "a", "b", "c" }.Take(count).ToSequence();
        Assert.Equal(expected, Book.Say(new Argument.List(items), UnitSystem.Metric));
    }

    [Fact]
    public void Say_DateAndDays_UsesTheLanguage()
    {
        Assert.Equal("12 June 2027", Book.Say((Argument)new DateOnly(2027, 6, 12), UnitSystem.Metric));
        Assert.Equal("1 day", Book.Say(new Amount(1, Dimension.Days), UnitSystem.Metric));
        Assert.Equal("2.5 days", Book.Say(new Amount(2.5, Dimension.Days), UnitSystem.Metric));
        Assert.Equal("21 days", Book.Say(new Amount(21.4, Dimension.Days), UnitSystem.Metric));
        Assert.Equal("1 January 2027", Phrasebook.English.Say(new DateOnly(2027, 1, 1)));
    }

    [Theory]
    [InlineData("{")]
    [InlineData("}")]
    [InlineData("{}")]
    [InlineData("{a b}")]
    [InlineData("{n|one}")]
    [InlineData("{n|one|two|three}")]
    [InlineData("{n|one|two")]
    public void Phrase_ThatDoesNotFitTogether_IsRefusedWithItsKey(string text) =>
        Assert.Contains("t.key", Assert.Throws<FormatException>(() => Phrasebook.Of([new("t.key", text)])).Message, StringComparison.Ordinal);

    [Fact]
    public void Say_ExactLength_IsNotRounded()
    {
        Assert.Equal("7 ft 6 1/64 in (2.286 m)", Book.Say(new Argument.Exact(new Length(2_286_396_875)), UnitSystem.Imperial));
        Assert.Equal("2.3 m (7 ft 6 9/16 in)", Book.Say(new Argument.Exact(Length.FromMillimetres(2300)), UnitSystem.Imperial));
        Assert.Equal("12 in (305 mm)", Book.Say(new Argument.Exact(Length.FromInches(12)), UnitSystem.Metric));
    }

    [Fact]
    public void Say_Comparison_PrintsAsFinelyAsItTakesToSeeTheDifference()
    {
        var english = Phrasebook.English;
        var limit = Length.FromFeet(2);
        Assert.Equal("22 in (560 mm); at least 2 ft (610 mm) is asked", english.Say(new Comparison(Length.FromInches(22), ComparisonWord.AtLeast, limit), UnitSystem.Imperial));
        Assert.Equal("2 ft (610 mm); at least 2 ft (610 mm) is asked", english.Say(new Comparison(limit, ComparisonWord.AtLeast, limit), UnitSystem.Imperial));
        Assert.Equal("23 15/16 in (608 mm); at least 2 ft (610 mm) is asked", english.Say(new Comparison(limit - new Length(Length.PerInch * 3 / 64), ComparisonWord.AtLeast, limit), UnitSystem.Imperial));
        Assert.Equal("7.001; at most 7 is asked", english.Say(new Comparison(Amount.Number(7.0012), ComparisonWord.AtMost, Amount.Number(7)), UnitSystem.Metric));
    }

    [Fact]
    public void TwoDifferentValuesAreNeverPrintedAlike()
    {
        var dimensions = Gen.Enum<Dimension>();
        Gen.Select(dimensions, Gen.Double[0.01, 100], Gen.Double[1e-5, 1e-2]).ForAll((dimension, limit, over) =>
        {
            var comparison = new Comparison(new(limit * (1 + over), dimension), ComparisonWord.AtMost, new(limit, dimension));
            var text = Phrasebook.English.Say(comparison, UnitSystem.Imperial).Split("; at most ");
            return text[0] != text[1].Replace(" is asked", "", StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Say_Verdict_GivesTheDecidingReason()
    {
        var english = Phrasebook.English;
        Assert.Equal("met: 5; at most 7 is asked", english.Say(Require.AtMost(Amount.Number(5), Amount.Number(7)), UnitSystem.Metric));
        Assert.Equal("falls short: 8; at most 7 is asked", english.Say(Require.AtMost(Amount.Number(8), Amount.Number(7)), UnitSystem.Metric));
        Assert.Equal("NOT CHECKED: a value could not be computed", english.Say(Require.AtMost(Amount.Number(double.NaN), Amount.Number(7)), UnitSystem.Metric));
    }

    [Fact]
    public void Say_Source_SaysHowSureWeAre()
    {
        Assert.Equal("The NDS (from memory, unverified)", Phrasebook.English.Say(new Source("nds", "The NDS", Surety.Memory)));
        Assert.Equal("Common practice, no source", Phrasebook.English.Say(Sources.Get("common-practice")));
    }

    [Fact]
    public void EveryNameHasWords()
    {
        var names = Enum.GetValues<Tag>().Select(Names.Of)
            .Concat(Enum.GetValues<Surety>().Select(Names.Of))
            .Concat(Enum.GetValues<ComparisonWord>().Select(Names.Of))
            .Concat(Enum.GetValues<ClauseStatus>().Select(Names.Of));
        Assert.All(names, name => Assert.DoesNotContain('[', Phrasebook.English.Say(name, UnitSystem.Metric)));
    }
}
