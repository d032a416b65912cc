using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Study;
using Clomwright.Testing;

namespace Clomwright.Papers.Tests;

/// <summary>What is written in the site record stands on the papers. Rank property: the days are made up; the numbers are those that the forecast learned.</summary>
public class RecordOnPapersTests
{
    private static SiteEntry Entry(string id, Seen what) => new(id, new DateTimeOffset(2027, 6, 5, 18, 0, 0, TimeSpan.Zero), "Ada Invented", what);

    private static string Words(Sequence<Sheet> book, string key) => string.Join(" ", book.Where(s => s.Key.StartsWith(key, StringComparison.Ordinal)).SelectMany(Papers.Texts).Select(t => t.Words));

    [Fact]
    public void MeasuredPaceAndWrittenTests_StandOnTheSheets_AndNothingTouches()
    {
        SiteEntry[] written =
        [
            .. Enumerable.Range(1, 4).Select(d => Entry($"day-0000{d}", new Seen.Day(new DateOnly(2027, 6, d)) { Raised = Length.FromInches(2), People = 8 })),
            Entry("test-00001", new Seen.Tested(new DateOnly(2027, 6, 5), "leak test", "roof", "dry after two days under 2 in of water")),
        ];
        var study = HouseStudy.Of(Houses.HeronPoint, StudyOptions.Quick with { Record = new([.. written]), Today = new DateOnly(2027, 6, 5) });
        var book = Book.Of(FromStudy.Set(study, new PaperOptions(Papers.Date)) with { Days = study.Days });
        var (learned, days) = (study.Days.Value!.Learned!, Words(book, "days"));
        Assert.Equal(4, learned.Pace.Readings);
        Assert.DoesNotContain("Nobody's pace", days, StringComparison.Ordinal);
        Assert.Contains($"measured on 4 days: {Phrasebook.English.Say(Amount.Fraction(Math.Round(learned.Pace.Middle, 2)), UnitSystem.Imperial)} of the planned", days, StringComparison.Ordinal);
        var register = Words(book, "test-register");
        Assert.All((string[])["leak test: roof", "dry after two days under 2 in of water", "Ada Invented"], said => Assert.Contains(said, register, StringComparison.Ordinal));
        Assert.Empty(NothingTouchesTests.Faults([.. book.Where(s => s.Key.StartsWith("days", StringComparison.Ordinal) || s.Key.StartsWith("test-register", StringComparison.Ordinal))]));

        // Where nothing is written the sheets say so, or say nothing of it.
        var before = Papers.HeronPoint with { Days = HouseStudy.Of(Houses.HeronPoint).Days };
        Assert.Contains("Nobody's pace", Words(Book.Of(before), "days"), StringComparison.Ordinal);
        Assert.DoesNotContain("Written on site", Words(Papers.HeronPointBook, "test-register"), StringComparison.Ordinal);
    }
}
