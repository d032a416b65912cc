using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Sheets;
using Clomwright.Study;
using Clomwright.Testing;

namespace Clomwright.Papers.Tests;

public sealed class NothingTouchesTests
{
    // Property, measured from the written PDF by an independent reader: no text touches text, and none leaves the paper's printable part; and what falls short or is not checked is named on page one of the note.
    [Theory]
    [InlineData(PaperSize.A4, 0)]
    [InlineData(PaperSize.Letter, 250)]
    public void AnySheetOfAnyHouse_WithTheLongestNames_KeepsTextApartAndInside(PaperSize paper, int first) =>
        Assert.Empty(Drawn.Faults(Houses.LongestNames, first, Counts.Of(2, 250), $"papers of random houses on {paper}", house =>
        {
            var set = Papers.Set(house, paper);
            Assert.Empty(Faults(Book.Of(set)));
            OfficeTests.NamesWhatIsOpen(set);
        }));

    // A house in which two poles end in one place over the eave: their numbers stand one beyond the other.
    [Theory]
    [InlineData(20261129, 78, PaperSize.A4)]
    [InlineData(20261129, 298, PaperSize.Letter)]
    public void NumbersOfPolesThatMeet_StandApart(uint seed, int number, PaperSize paper)
    {
        var scene = new Scene(Papers.Set(Drawn.One(Houses.LongestNames, seed, number), paper));
        Assert.Empty(Faults([.. RoofPlanSheet.Of(scene).Select((d, i) => d.Finish(i + 1, 9, scene.Imprint, scene.Say))]));
    }

    [Theory]
    [InlineData(PaperSize.A4, UnitSystem.Imperial)]
    [InlineData(PaperSize.A3, UnitSystem.Metric)]
    [InlineData(PaperSize.Letter, UnitSystem.Metric)]
    [InlineData(PaperSize.Tabloid, UnitSystem.Imperial)]
    [InlineData(PaperSize.ArchD, UnitSystem.Imperial)]
    public void TheCompleteHouse_OnEveryPaper_KeepsTextApartAndInside(PaperSize paper, UnitSystem units) =>
        Assert.Empty(Faults(Book.Of(Papers.On(paper, units))));

    // Words grow by a quarter or more in other languages: labels on drawings must still find their place.
    [Theory]
    [InlineData("es", PaperSize.Letter, UnitSystem.Imperial)]
    [InlineData("fr", PaperSize.A4, UnitSystem.Metric)]
    public void TheCompleteHouse_InEveryLanguage_KeepsTextApartAndInside(string language, PaperSize paper, UnitSystem units) =>
        Assert.Empty(Faults(Book.Of(In(language, Papers.On(paper, units)))));

    private static PaperSet In(string language, PaperSet set) => set with { Options = set.Options with { Language = language } };

    [Fact]
    public void PapersWithLettersAndChanges_KeepTextApartAndInside() => Assert.Empty(Faults(RevisionTests.Marked));

    // Twelve people with the longest names on the board of every paper: each stands once in the week, and no text touches another. Named or not, the host's list fits too.
    [Theory]
    [InlineData(PaperSize.A4)]
    [InlineData(PaperSize.A3)]
    [InlineData(PaperSize.Letter)]
    [InlineData(PaperSize.Tabloid)]
    public void ABoardOfManyNames_KeepsTextApartAndInside(PaperSize paper)
    {
        foreach (var crewed in (PaperSet[])[Crowd.Value, Papers.HeronPoint])
        {
            var scene = new Scene(crewed with { Options = crewed.Options with { Paper = paper } });
            Sheet[] sheets = [.. DayBoardSheet.Of(scene).Concat(HostListSheet.Of(scene)).Concat(WeatherDaySheet.Of(scene)).Select((d, i) => d.Finish(i + 1, 9, scene.Imprint, scene.Say))];
            Assert.Empty(Faults(sheets));
            var words = string.Concat(sheets.Where(s => s.Key.StartsWith("day-board", StringComparison.Ordinal)).SelectMany(Papers.Texts).Select(t => t.Words));
            Assert.All(crewed.House.Crew!.Members, m => Assert.Contains("W" + m.Name[^1], words, StringComparison.Ordinal));
        }
    }

    private static readonly Lazy<PaperSet> Crowd = new(() =>
    {
        var names = Enumerable.Range(0, 12).Select(i => new string('W', 30) + (char)('A' + i)).ToArray();
        var crew = Houses.HeronPoint.Crew! with { People = 12, Members = [.. names.Select((n, i) => new CrewMember(n) { Knows = i < 4 ? [.. Enum.GetValues<CrewSkill>()] : [], Cannot = i == 5 ? [CannotDo.Lift] : [] })] };
        return Papers.Set(Houses.HeronPoint with { Crew = crew }, PaperSize.A4);
    });

    // A deep study has the sheet of the fall, its drawings and its calculations, and the book stays in order; a quick one says in words that it was not looked for.
    [Theory]
    [InlineData(PaperSize.A4, UnitSystem.Imperial)]
    [InlineData(PaperSize.Letter, UnitSystem.Metric)]
    public void ADeepStudy_HasTheSheetOfTheFall(PaperSize paper, UnitSystem units)
    {
        // The site folder shows nothing of it.
        var book = Book.Office(Deep.Value with { Options = Deep.Value.Options with { Paper = paper, Units = units } });
        Assert.Empty(Faults(book));
        var blocks = book.Where(s => s.Key.StartsWith("collapse", StringComparison.Ordinal)).SelectMany(s => s.Marks.All()).OfType<Group>().ToArray();
        Assert.NotEmpty(blocks.Where(g => g.Id == "blocks").SelectMany(g => g.Marks.All()).OfType<Stroke>());
        Assert.NotEmpty(blocks.Where(g => g.Id == "cracks").SelectMany(g => g.Marks.All()).OfType<Stroke>());
        Assert.All(Deep.Value.Collapse!.Value.Value!.Calculations, c => Assert.Contains(book.Where(s => s.Key.StartsWith("calculations", StringComparison.Ordinal)).SelectMany(Papers.Texts), t => t.Words.Contains(Phrasebook.English.Say(c.Title, units), StringComparison.Ordinal)));
        Assert.DoesNotContain(Papers.HeronPointBook, s => s.Key == "collapse");
        Assert.All((string[])["wall-note", "wall-trials"], key => Assert.Contains(book, s => s.Key == key));
        Assert.DoesNotContain(Papers.HeronPointBook, s => s.Key == "wall-trials");
        Assert.Contains(Papers.HeronPointBook.Where(s => s.Key.StartsWith("wall-stress", StringComparison.Ordinal)).SelectMany(Papers.Texts), t => t.Words.Contains("The push at which the house falls", StringComparison.Ordinal));
    }

    private static readonly Lazy<PaperSet> Deep = new(() => FromStudy.Set(HouseStudy.Of(Houses.HeronPoint, new StudyOptions(Deep: true), Papers.Study), new PaperOptions(Papers.Date)));

    // The net itself: it must catch one line written over another, one written beside the paper, and nothing else.
    [Fact]
    public void Faults_OfASheetWithTouchingText_AreFound()
    {
        var lettering = Lettering.Tall(3);
        Text[] texts =
        [
            new("first", new PaperPoint(20, 20), lettering), new("second", new PaperPoint(24, 21), lettering),
            new("upright", new PaperPoint(60, 60), lettering, Anchor.Start, -90), new("alone", new PaperPoint(20, 80), lettering), new("outside", new PaperPoint(97, 90), lettering),
        ];
        var faults = Faults([new Sheet("bad", "bad", 100, 100, [.. texts])]);
        Assert.Equal(2, faults.Count);
        Assert.Contains("touches", faults[1], StringComparison.Ordinal);
        Assert.Contains("outside", faults[0], StringComparison.Ordinal);
    }

    internal static IReadOnlyList<string> Faults(IReadOnlyList<Sheet> sheets)
    {
        List<string> faults = [];
        var pages = TextBoxes.Of(sheets);
        for (var i = 0; i < sheets.Count; i++)
        {
            var (sheet, boxes) = (sheets[i], pages[i]);
            var printable = new PaperBox(4, 4, sheet.Width - 4, sheet.Height - 4);
            faults.AddRange(boxes.Where(b => !printable.Holds(b.Box)).Select(b => $"{sheet.Key}: \"{b.Words}\" leaves the paper at {b.Box}"));
            var sorted = boxes.OrderBy(b => b.Box.Left).ToArray();
            for (var a = 0; a < sorted.Length; a++)
            {
                for (var b = a + 1; b < sorted.Length && sorted[b].Box.Left < sorted[a].Box.Right; b++)
                {
                    if (sorted[a].Box.Overlaps(sorted[b].Box))
                    {
                        faults.Add($"{sheet.Key}: \"{sorted[a].Words}\" touches \"{sorted[b].Words}\" at {sorted[a].Box.Centre}");
                    }
                }
            }
        }

        return faults;
    }
}
