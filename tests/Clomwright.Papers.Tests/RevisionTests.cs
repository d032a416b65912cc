using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Revisions;
using Clomwright.Papers.Writers;
using Clomwright.Testing;

namespace Clomwright.Papers.Tests;

/// <summary>Letters of revision, and what of a set is marked beside the one before.</summary>
public sealed class RevisionTests
{
    /// <summary>The complete house with one niche two degrees on: drawings change, orders and days hardly.</summary>
    private static readonly House Moved = Houses.HeronPoint with
    {
        Niches = [.. Houses.HeronPoint.Niches.Select(n => n.Name == "soap" ? n with { Along = Along.At(new Angle(338)) } : n)],
    };

    private static readonly Sequence<Sheet> First = Book.Of(Set(Houses.HeronPoint, "A"));

    private static readonly Seen.Issue A = Issue("A", First);

    // Frozen, from how letters are counted: no I, O, Q, S, X, Z, and two letters after Y. Whoever wrote a letter, by hand too, the next is past it; a struck one is not given again.
    [Fact]
    public void Letters_GoOnPastTheFurthest()
    {
        List<string> letters = [];
        var record = SiteRecord.Empty;
        for (var i = 0; i < 42; i++)
        {
            letters.Add(Letters.Next(record));
            record = new(record.Entries.Plus(Entry($"issue-{i}", new Seen.Issue(Papers.Date, letters[^1], [], "site"))));
        }

        Assert.Equal("A B C D E F G H J K L M N P R T U V W Y AA AB AC AD AE AF AG AH AJ AK AL AM AN AP AR AT AU AV AW AY BA BB", string.Join(' ', letters));
        var struck = new SiteRecord([Entry("issue-1", new Seen.Issue(Papers.Date, "C", [], "the mason")), Entry("struck-1", new Seen.Struck("spoilt")) with { Corrects = "issue-1" }]);
        Assert.Equal("D", Letters.Next(struck));
        Assert.Equal("A", Letters.Next(new([Entry("issue-1", new Seen.Issue(Papers.Date, "no. 4", [], "the mason"))])));
    }

    // Property: of a first set nothing is marked and every sheet carries its letter; of the same house again nothing is marked, and every sheet carries the letter since which it holds.
    [Fact]
    public void TheSameHouse_MarksNothing()
    {
        Assert.All(First, s => Assert.Equal((SheetState.Same, "A"), (s.Revision!.State, s.Revision.Letter)));
        var again = Book.Of(Set(Houses.HeronPoint, "B", A));
        Assert.All(again.Where(s => s.Revision is not null), s => Assert.Equal((SheetState.Same, "A"), (s.Revision!.State, s.Revision.Letter)));
        Assert.DoesNotContain(again.SelectMany(s => s.Marks.All()), m => m is Group { Id: "changed" });
        Assert.Equal(First.Select(s => (s.Key, s.Number)), again.Where(s => s.Revision is not null).Select(s => (s.Key, s.Number)));
        // A sheet that the list of changes pushes over the page is the only one that compares with nothing.
        Assert.All(again.Where(s => s.Revision is null), s => Assert.StartsWith("cover-", s.Key, StringComparison.Ordinal));
        Assert.Empty(SetRevision.Of([.. again.Select(s => s.Revision?.Drawn).OfType<DrawnSheet>()], [A], "B").TakenBack);
    }

    // Independent of the hashes: marked are exactly the sheets whose whole text as SVG differs between the two houses, printed on one day without letters.
    [Fact]
    public void AThingMoved_MarksExactlyTheSheetsThatShowIt()
    {
        var (was, now) = (Book.Of(Set(Houses.HeronPoint, null)), Book.Of(Set(Moved, null)));
        Assert.Equal(was.Select(s => s.Key), now.Select(s => s.Key));
        var differ = was.Zip(now).Where(p => SvgWriter.Write(p.First) != SvgWriter.Write(p.Second)).Select(p => p.First.Key).ToArray();
        var second = Book.Of(Set(Moved, "B", A));
        Assert.Equal(differ, second.Where(s => s.Revision is { State: SheetState.Changed }).Select(s => s.Key));
        Assert.All((string[])["cover", "plan", "unrolled-inside", "lift-4", "title-sheet"], key => Assert.Contains(key, differ));
        Assert.All((string[])["pocket-card", "foundation", "opening-door", "mix-card", "order-earth", "pole-cards"], key => Assert.DoesNotContain(key, differ));
        Assert.All(second.Where(s => s.Revision is not null), s => Assert.Equal(differ.Contains(s.Key) ? "B" : "A", s.Revision!.Letter));
        Assert.All(second.Where(s => s.Revision is not null), s => Assert.Equal(differ.Contains(s.Key), s.Texts().Any(t => t.Words == "changed since A")));
        // The one after: what changed in B holds since B, the rest since A.
        var third = Book.Of(Set(Moved, "C", A, Issue("B", second)));
        Assert.All(third.Where(s => s.Revision is not null), s => Assert.Equal((SheetState.Same, differ.Contains(s.Key) ? "B" : "A"), (s.Revision!.State, s.Revision.Letter)));
        // What to take down are the same sheets, with the letter on the copy that hangs there; a set in the record says it of itself.
        var back = Book.Of(Set(Houses.HeronPoint, "C", A, Issue("B", second)));
        var set = SetRevision.OfLast([A, Issue("B", second), Issue("C", back)])!;
        Assert.Equal(differ.Where(key => second.Any(s => s.Key == key && s.Revision is not null)), set.TakeDown.Select(s => s.Drawn.Key));
        Assert.All(set.TakeDown, s => Assert.Equal("B", s.Letter));
        Assert.All(SetRevision.OfLast([A, Issue("B", second)])!.TakeDown, s => Assert.Equal("A", s.Letter));
        Assert.Empty(SetRevision.OfLast([A])!.TakeDown);
        Assert.Equal("revision A, in set C", third.Single(s => s.Key == "pocket-card").Texts().Select(t => t.Words).Single(w => w.StartsWith("revision", StringComparison.Ordinal)));
    }

    // Property: a part that is gone leaves its sheet on the list of what to take down, and a new one is new.
    [Fact]
    public void ASheetThatIsGone_IsTakenBack_AndABackOneIsNew()
    {
        var without = Houses.HeronPoint with { Openings = [.. Houses.HeronPoint.Openings.Where(o => o.Name != "moon")] };
        var second = Book.Of(Set(without, "B", A));
        var set = SetRevision.Of([.. second.Select(s => s.Revision?.Drawn).OfType<DrawnSheet>()], [A], "B");
        Assert.Contains("opening-moon", set.TakenBack.Select(s => s.Key));
        Assert.Contains("opening-moon", set.TakeDown.Select(s => s.Drawn.Key));
        Assert.Contains(second.Where(s => s.Key.StartsWith("cover", StringComparison.Ordinal)).SelectMany(s => s.Texts()), t => t.Words.Contains("moon", StringComparison.Ordinal));
        var third = Book.Of(Set(Houses.HeronPoint, "C", A, Issue("B", second)));
        Assert.Equal(SheetState.New, third.Single(s => s.Key == "opening-moon").Revision!.State);
    }

    // Property: the day on which it is printed changes no hash, but of the board of the coming days.
    [Fact]
    public void AnotherDay_ChangesOnlyWhatShowsTheDay()
    {
        var set = Papers.HeronPoint with { Options = Papers.HeronPoint.Options with { Date = Papers.Date.AddDays(40), Revision = "B", Issued = [A] } };
        Assert.All(Book.Of(set).Where(s => s.Revision is { State: not SheetState.Same }), s => Assert.Matches("^(day-board|handover)", s.Key));
    }

    private static Seen.Issue Issue(string letter, IEnumerable<Sheet> sheets) =>
        new(Papers.Date, letter, [], "site") { Drawn = sheets.Select(s => s.Revision?.Drawn).OfType<DrawnSheet>().ToSequence() };

    private static SiteEntry Entry(string id, Seen what) => new(id, new(2027, 5, 20, 8, 0, 0, TimeSpan.Zero), "Ada", what);

    internal static PaperSet Set(House house, string? letter, params Seen.Issue[] issued)
    {
        var set = Papers.Set(house, PaperSize.A4);
        return set with { Options = set.Options with { Revision = letter, Issued = issued.ToSequence() } };
    }

    /// <summary>The papers of the house with a niche moved, marked beside those of the complete house.</summary>
    internal static Sequence<Sheet> Marked => Book.Of(Set(Moved, "B", A));
}
