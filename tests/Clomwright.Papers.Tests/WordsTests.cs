using System.Text;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Sheets;
using Clomwright.Testing;

namespace Clomwright.Papers.Tests;

public sealed class WordsTests
{
    // Property: a key without words shows as [key], an argument that was not given as {name}; no sheet may show either.
    [Fact]
    public void Book_OfTheCompleteHouse_HasWordsForEverything()
    {
        var bad = Papers.HeronPointBook.SelectMany(s => s.Texts().Where(t => t.Words.Contains('[') || t.Words.Contains('{')).Select(t => $"{s.Key}: {t.Words}"));
        Assert.Empty(bad);
    }

    // Property over every text that any room can print: the typeface has a sign for each character.
    [Fact]
    public void Typeface_HasASignForEveryCharacterOfEveryWordsFile()
    {
        var missing = Directory.GetFiles(Path.Combine(Counts.Root, "data", "words"), "*.json", SearchOption.AllDirectories)
            .SelectMany(f => File.ReadAllText(f).EnumerateRunes())
            .Append(new Rune('—')).Where(r => r.Value >= ' ').Distinct()
            .Where(r => !Typeface.Of(Cut.Regular).Has(r) || !Typeface.Of(Cut.Semibold).Has(r))
            .Select(r => r.ToString());
        Assert.Empty(missing);
    }

    // Independent: the widths that PDFsharp, which reads the font file with its own code, gives the same words. 0.001 em is the unit of the font file.
    [Theory]
    [InlineData("AVAToWaTe")]
    [InlineData("12 ft 7 3/4 in × 3.845 m")]
    [InlineData("Łódź 45° ÅÉÑ §")]
    public void Typeface_Advance_IsThatOfAnotherReader(string words)
    {
        var box = TextBoxes.Advance(words, new Lettering(Cut.Regular, 25.4));
        Assert.Equal(box, new Lettering(Cut.Regular, 25.4).WidthOf(words), 0.001 * 25.4 * words.Length);
    }

    [Fact]
    public void EveryPapersKey_HasWords_AndIsUsed()
    {
        var used = Directory.GetFiles(Path.Combine(Counts.Root, "src"), "*.cs", SearchOption.AllDirectories).Where(f => f.Contains("Clomwright.Papers") || f.Contains("Clomwright.Geometry")).Select(File.ReadAllText).ToArray();
        var unused = Phrasebook.English.Keys.Where(k => k.StartsWith("papers.", StringComparison.Ordinal))
            .Select(k => k["papers.".Length..])
            .Where(k => !used.Any(t => t.Contains($"\"{k}\"") || t.Contains($"\"papers.{k}\"") || Prefixes(k).Any(p => t.Contains($"\"{p}\"") || t.Contains($"\"papers.{p}\""))));
        Assert.Empty(unused);
    }

    private static IEnumerable<string> Prefixes(string key) => [key[..(key.LastIndexOf('.') + 1)], key[..(key.LastIndexOf('-') + 1)]];

    [Theory]
    [InlineData(UnitSystem.Imperial)]
    [InlineData(UnitSystem.Metric)]
    public void Wording_OfALength_ComesInBothSystems(UnitSystem first)
    {
        var say = new Wording(first, Phrasebook.English);
        var (one, other) = (say.One(Length.FromInches(30)), say.Other(Length.FromInches(30)));
        Assert.Equal(first == UnitSystem.Imperial ? ("2 ft 6 in", "760 mm") : ("760 mm", "2 ft 6 in"), (one.Replace('\u00a0', ' '), other.Replace('\u00a0', ' ')));
    }
}
