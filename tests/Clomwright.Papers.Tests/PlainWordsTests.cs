using System.Text.RegularExpressions;
using Clomwright.Analysis.Weather;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files;
using Clomwright.Study;
using Clomwright.Testing;

namespace Clomwright.Papers.Tests;

/// <summary>People read whole words on the sheets, no keys of the house file, options of the command line or numbers as programs write them. Rank: property, on the three examples, in English and Spanish, with <c>--long</c> in French too.</summary>
public sealed partial class PlainWordsTests
{
    [Theory]
    [InlineData("heron-point")]
    [InlineData("juniper-flat")]
    [InlineData("slate-brook")]
    public void NoSheetOfAnExample_SaysAKeyOrCutsAWord(string name)
    {
        var house = HouseDocument.Read(File.ReadAllText(Path.Combine(Counts.Root, "examples", name + ".house.json"))).House!;
        var set = FromStudy.Set(HouseStudy.Of(house), new PaperOptions(Papers.Date) { Paper = PaperOptions.Usual(house.Units) });
        var said = Phrasebook.Languages.Take(Counts.Of(2, 3)).SelectMany(language => Book.Of(set with { Options = set.Options with { Language = language } })
            .SelectMany(sheet => sheet.Texts().Where(t => IsKey(t.Words) || t.Words.Contains('…', StringComparison.Ordinal)).Select(t => $"{language} {sheet.Key}: {t.Words}")));
        Assert.Equal("", string.Join("\n", said.Distinct().Take(40)));
    }

    // By hand: what the test finds, and what it lets stand.
    [Theory]
    [InlineData("crew.roofOn does not say", true)]
    [InlineData("embeds[].anchor", true)]
    [InlineData("(site.plot)", true)]
    [InlineData("irc-cob@2021", true)]
    [InlineData("use --deep", true)]
    [InlineData("pier door|window", true)]
    [InlineData("7e-14 of them", true)]
    [InlineData("climate aberystwyth-gb", true)]
    [InlineData("earthbuilding.info, permies.com", false)]
    [InlineData("heron-point.house.json", false)]
    [InlineData("7 × 10⁻¹⁴, 2e année, 16.5 °C – 18 °C", false)]
    public void Keys_AreFound(string words, bool found) => Assert.Equal(found, IsKey(words));

    private static bool IsKey(string words) => Shape().IsMatch(words) || Climate.All.Any(c => words.Contains(c.Key, StringComparison.Ordinal));

    [GeneratedRegex("""\b[a-z]+\.[a-z]*[A-Z]|\b[a-z]+\[\]|\b(?:site|plan|wall|stem|trench|floor|lifts|roof|mix|crew|rules|comfort|tees|openings|niches|embeds|finishes)\.[a-z]|@|(?<![\w-])--[a-z]|\||\b[0-9.]+e[-+]?[0-9]|\b[a-z]{2,}[A-Z][a-z]{2,}""")]
    private static partial Regex Shape();
}
