using System.Text;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Sheets;
using Clomwright.Study;
using Clomwright.Testing;
using CsCheck;

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

    // Property: every part of the subject of a finding is ours and has words, or has a name of the author's in it; English reads as it is but what a pier stands between. The complete house and ones drawn at random.
    [Fact]
    public void EverySubject_IsSaidInEveryLanguage()
    {
        Told(Papers.HeronPoint.House, Papers.HeronPoint.Findings);
        Houses.Plausible.ForAll(house => Told(house, HouseStudy.Of(house, StudyOptions.Quick).Findings), iter: Counts.Of(8, 200), threads: 1);

        static void Told(House house, Sequence<Finding> findings)
        {
            string[] own = [.. house.Openings.Select(o => o.Name), .. house.Niches.Select(n => n.Name), .. house.Embeds.Select(e => e.Name), .. house.TestPanels.Select(t => t.Name)];
            var subjects = findings.Select(f => f.Subject).Distinct().ToArray();
            Assert.All(subjects, s => Assert.Equal(s.Replace("|", " to ", StringComparison.Ordinal), Phrasebook.English.Subject(s)));
            var english = ((string[])["es", "fr"]).Select(Phrasebook.In).SelectMany(book =>
                subjects.SelectMany(s => s.Split(", ")).Where(part => book.Subject(part) == part && !Alike.Contains(part) && !own.Any(name => part.Contains(name, StringComparison.Ordinal))).Select(part => $"{book.Language}: {part}"));
            Assert.Empty(english.Distinct());
        }
    }

    /// <summary>What two languages write alike.</summary>
    private static readonly string[] Alike = ["site", "joints", "niches", "compression"];

    // By hand: our parts are words, the author's stay; a name that only looks like ours in part is the author's.
    [Theory]
    [InlineData("pole 3 high, on its seat", "perche 3 haut, sur son assise")]
    [InlineData("pier door|south-window, free at its top", "trumeau door à south-window, libre en tête")]
    [InlineData("door/header, left", "linteau de door, gauche")]
    [InlineData("tee 8 to 9", "té 8 à 9")]
    [InlineData("lifts 1-4", "levées 1-4")]
    [InlineData("Pole 3", "Pole 3")]
    [InlineData("of-pier", "of-pier")]
    public void ASubject_KeepsTheAuthorsNames(string subject, string french) => Assert.Equal(french, Phrasebook.In("fr").Subject(subject));

    // Property over every text that any room can print: the typeface has a sign for each character.
    [Fact]
    public void Typeface_HasASignForEveryCharacterOfEveryWordsFile()
    {
        var missing = Directory.GetFiles(Path.Combine(Counts.Root, "data", "words"), "*.json", SearchOption.AllDirectories)
            .SelectMany(f => File.ReadAllText(f).EnumerateRunes())
            .Concat("— × 10⁻⁰¹²³⁴⁵⁶⁷⁸⁹".EnumerateRunes()).Where(r => r.Value >= ' ').Distinct()
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
