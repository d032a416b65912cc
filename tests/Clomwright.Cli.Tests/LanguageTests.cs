using Clomwright.Evidence;

namespace Clomwright.Cli.Tests;

/// <summary>The language of a run. Rank: property.</summary>
public class LanguageTests
{
    [Fact]
    public async Task Language_ThatNobodyTranslated_IsRefusedInOneSentenceThatNamesTheOthers()
    {
        var run = await Run.Of("check", Run.Example("heron-point.house.json"), "--language", "tlh");
        Assert.Equal(2, run.Code);
        Assert.Contains("en", run.Complaints, StringComparison.Ordinal);
        Assert.Equal(1, run.Complaints.Count(c => c == '\n'));
    }

    [Fact]
    public void Language_OnTheLine_GoesBeforeThatOfTheEnvironment()
    {
        Assert.Equal("en", Language.Asked(["check", "--language=EN"], "tlh")!.Language);
        Assert.Null(Language.Asked(["check"], "tlh"));
        Assert.Equal("en", Language.Asked(["check"], null)!.Language);
        Assert.All(Phrasebook.Languages, language => Assert.Equal(language, Language.Asked(["--language", language], null)!.Language));
    }
}
