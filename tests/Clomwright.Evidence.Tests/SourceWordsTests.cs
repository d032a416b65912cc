namespace Clomwright.Evidence.Tests;

/// <summary>What stands for a source of our own, in words.</summary>
public sealed class SourceWordsTests
{
    private const string Start = "evidence.source.";

    /// <summary>Rank: property. Words stand only for sources that there are, in every language, and in English they are the title that the sources have.</summary>
    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    [InlineData("fr")]
    public void EveryWordIsOfASource(string language)
    {
        var book = Phrasebook.In(language);
        var keys = Phrasebook.English.Keys.Where(k => k.StartsWith(Start, StringComparison.Ordinal)).ToArray();
        Assert.NotEmpty(keys);
        Assert.All(keys, key =>
        {
            var source = Sources.Get(key[Start.Length..]);
            Assert.Equal(source.Title, Phrasebook.English.Title(source));
            Assert.DoesNotContain('\u27e8', book.Title(source));
        });
    }

    /// <summary>Rank: property. Within a sentence too: the reasons of findings name what is ours in the reader's language.</summary>
    [Fact]
    public void WithinASentence_WhatIsOursIsTranslated()
    {
        var source = Sources.Get("cob-strength-memory");
        var said = Phrasebook.In("fr").Say(Message.Of("study.demand.from-memory", ("sources", new Argument.List([(Argument)source]))), UnitSystem.Metric);
        Assert.Contains("un jugement d’ingénieur", said, StringComparison.Ordinal);
    }

    /// <summary>Rank: property. A work is named as it is printed, whatever the language; how we came by it is said in the reader's.</summary>
    [Fact]
    public void AWorkKeepsItsTitle()
    {
        Assert.Equal(Sources.Get("wellerlehm").Title, Phrasebook.In("fr").Title(Sources.Get("wellerlehm")));
        Assert.Equal("NDS 2018 and Supplement, de mémoire", Phrasebook.In("fr").Title(Sources.Get("nds-memory")));
        Assert.All(Sources.All, source => Assert.Equal(source.Title, Phrasebook.English.Title(source)));
    }
}
