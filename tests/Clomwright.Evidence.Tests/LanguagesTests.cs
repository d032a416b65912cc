using System.Text.Json;
using System.Text.RegularExpressions;

namespace Clomwright.Evidence.Tests;

/// <summary>Every language beside English: nothing of its own, nothing lost in a sentence. Rank: property.</summary>
public sealed partial class LanguagesTests
{
    private static IEnumerable<Phrasebook> Others => Phrasebook.Languages.Where(l => l != "en").Select(Phrasebook.In);

    [Fact]
    public void Keys_OfEveryLanguage_AreThoseThatEnglishHas() =>
        Assert.All(Others, book => Assert.Empty(book.Keys.Except(Phrasebook.English.Keys)));

    /// <summary>A new word is said in English and marked until somebody has put it into every language; how many wait is said here.</summary>
    [Fact]
    public void Words_OfEveryLanguage_AreComplete() =>
        Assert.All(Others, book => Assert.True(book.Missing.Count == 0, $"{book.Language} lacks {book.Missing.Count} of {Phrasebook.English.Keys.Count}: {string.Join(", ", book.Missing.Take(20))}"));

    [Fact]
    public void Places_OfEveryPhrase_AreThoseOfTheEnglishOne()
    {
        var wrong = Others.SelectMany(book => book.Keys.Where(key => !book.Arguments(key).Order().SequenceEqual(Phrasebook.English.Arguments(key).Order()))
            .Select(key => $"{book.Language} {key}: {string.Join(", ", book.Arguments(key))}; English has {string.Join(", ", Phrasebook.English.Arguments(key))}"));
        Assert.Equal("", string.Join("\n", wrong));
    }

    /// <summary>What is typed on the command line or in a house file is typed alike in every language.</summary>
    [Fact]
    public void WhatIsTyped_IsNeverTranslated()
    {
        var english = Texts("en");
        var wrong = Others.SelectMany(book => Texts(book.Language).Where(t => english.ContainsKey(t.Key))
            .SelectMany(t => Typed().Matches(english[t.Key]).Select(m => m.Value).Distinct().Where(typed => !t.Value.Contains(typed, StringComparison.Ordinal)).Select(typed => $"{book.Language} {t.Key} lacks {typed}")));
        Assert.Equal("", string.Join("\n", wrong));
    }

    [Fact]
    public void Phrase_ThatALanguageLacks_IsSaidInEnglishAndMarked()
    {
        var english = Phrasebook.Of([new("t.cob", "{n|one batch|{n} batches}"), new("t.plain", "plain")]);
        var other = Phrasebook.Of([new("t.plain", "llano"), new("language.decimal", ",")], english);
        Assert.Equal("llano", other.Say(new Message("t.plain"), UnitSystem.Metric));
        Assert.Equal("⟨2 batches⟩", other.Say(Message.Of("t.cob", ("n", 2)), UnitSystem.Metric));
        Assert.Equal("[t.nowhere]", other.Say(new Message("t.nowhere"), UnitSystem.Metric));
        Assert.Equal(["t.cob"], other.Missing);
    }

    /// <summary>Only a point between digits is a decimal mark; a clause keeps its own.</summary>
    [Fact]
    public void Number_InALanguageWithAComma_HasIt()
    {
        var book = Phrasebook.Of([new("language.decimal", ","), new("t.a", "{a}: {clause}")]);
        Assert.Equal("250 kPa (36,3 psi): AU106.3", book.Say(Message.Of("t.a", ("a", new Amount(250_000, Dimension.Stress)), ("clause", "AU106.3")), UnitSystem.Metric));
        Assert.Equal("v. 1,5", book.Marked("v. 1.5"));
    }

    private static Dictionary<string, string> Texts(string language) => SourceText.Files(Path.Combine("data", "words", language), "*.json")
        .SelectMany(file => JsonDocument.Parse(file.Text).RootElement.EnumerateObject().Select(p => KeyValuePair.Create(p.Name, p.Value.GetString()!))).ToDictionary();

    [GeneratedRegex(@"clom [a-z]+ |--[a-z]+|\b(?:site|plan|wall|stem|trench|floor|lifts|roof|mix|crew|rules|comfort|bondBeam|tees)\.[a-zA-Z]+\b")]
    private static partial Regex Typed();
}
