using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Record.Tests;

/// <summary>What no entry may say: one clear sentence each, and exactly at the limit nothing is said.</summary>
public sealed class BadEntriesTests
{
    private static readonly DateOnly Date = new(2027, 6, 8);
    private static readonly DateTimeOffset Evening = new(2027, 6, 8, 19, 0, 0, TimeSpan.FromHours(-7));

    private static SiteEntry Entry(Seen what) => new("0123a-bcdef", Evening, "Ada", what);

    private static string? Key(SiteEntry entry) => SiteRecord.Empty.With(entry).Problem is { } problem ? Readable(problem) : null;

    /// <summary>The key of a sentence that can be said in both unit systems.</summary>
    private static string Readable(Message problem)
    {
        Assert.All(new[] { UnitSystem.Imperial, UnitSystem.Metric }, units => Assert.DoesNotContain("{", Phrasebook.English.Say(problem, units), StringComparison.Ordinal));
        return problem.Key["building.record.".Length..];
    }

    private static Seen.Day Day(double inches = 9) => new(Date) { Raised = Length.Nearest(inches * 0.0254), People = 7 };

    [Fact]
    public void A_plain_day_is_taken() => Assert.Null(Key(Entry(Day())));

    /// <summary>Property: each bound from inside and outside.</summary>
    [Fact]
    public void Bounds_are_kept()
    {
        (string Key, Seen Within, Seen Beyond)[] bounds =
        [
            ("raised", Day(72), Day(72.001)), ("raised", Day(0), Day(-0.001)),
            ("lift", Day() with { Lift = 60 }, Day() with { Lift = 61 }), ("lift", Day() with { Lift = 1 }, Day() with { Lift = 0 }),
            ("batches", Day() with { Batches = 2000 }, Day() with { Batches = 2000.5 }), ("batches", Day() with { Batches = 0 }, Day() with { Batches = double.NaN }),
            ("people", Day() with { People = 500 }, Day() with { People = 501 }), ("people", Day() with { People = 1 }, Day() with { People = -1 }),
            ("hours", Day() with { Hours = 24 }, Day() with { Hours = 24.1 }), ("by-nobody", Day(0) with { People = 0 }, Day() with { People = 0 }),
            ("more-names", Day() with { People = 1, Who = ["Ada"] }, Day() with { People = 1, Who = ["Ada", "Bo"] }),
            ("rain", Day() with { Weather = new(Length.FromMillimetres(1000), null, null) }, Day() with { Weather = new(Length.FromMillimetres(1001), null, null) }),
            ("temperature", Day() with { Weather = new(null, new Temperature(60), null) }, Day() with { Weather = new(null, new Temperature(60.1), null) }),
            ("high-below-low", Day() with { Weather = new(null, new Temperature(9), new Temperature(9)) }, Day() with { Weather = new(null, new Temperature(9), new Temperature(9.1)) }),
            ("notes", Day() with { Notes = new string('n', 2000) }, Day() with { Notes = new string('n', 2001) }), ("notes", Day() with { Notes = "x" }, Day() with { Notes = " " }),
            ("words", Day() with { Done = ["stem"] }, Day() with { Done = ["stem\nbeam"] }), ("too-many", Day() with { Done = [.. Enumerable.Repeat("a", 60)] }, Day() with { Done = [.. Enumerable.Repeat("a", 61)] }),
            ("nothing", new Seen.Day(Date) { Stopped = StoppedBy.Rain }, new Seen.Day(Date)),
            ("far-ahead", Day() with { Date = Date.AddYears(5) }, Day() with { Date = Date.AddYears(5).AddDays(1) }), ("long-ago", Day() with { Date = new(2000, 1, 1) }, Day() with { Date = new(1999, 12, 31) }),
            ("words", new Seen.Tested(Date, "leak test", "roof", "dry"), new Seen.Tested(Date, "leak test", "roof", "")),
            ("measured", new Seen.AsBuilt(Date, "door", Measured.Width, Length.FromFeet(3)), new Seen.AsBuilt(Date, "door", Measured.Width, Length.FromMillimetres(1_000_001))),
            ("words", new Seen.Delivery(Date, "sand", "4 yd3"), new Seen.Delivery(Date, "", "4 yd3")), ("words", new Seen.Issue(Date, "B", [], "crew"), new Seen.Issue(Date, "B", [], new string('x', 201))),
            ("words", Issue("B", 1), new Seen.Issue(Date, "B", [], "crew") { Drawn = [new("site", "plan", "3", "Plan\n", "0a")] }), ("too-many", Issue("B", 2000), Issue("B", 2001)),
        ];
        Assert.All(bounds, bound =>
        {
            Assert.Null(Key(Entry(bound.Within)));
            Assert.Equal(bound.Key, Key(Entry(bound.Beyond)));
        });
    }

    private static Seen.Issue Issue(string letter, int sheets) => new(Date, letter, [], "crew") { Drawn = Enumerable.Range(0, sheets).Select(i => new DrawnSheet("site", $"sheet-{i}", "3", "Sheet", "0a1b")).ToSequence() };

    /// <summary>Property: id, author and corrections.</summary>
    [Fact]
    public void Envelopes_and_corrections_are_kept()
    {
        var plain = Entry(Day());
        Assert.Equal("id", Key(plain with { Id = "abc" }));
        Assert.Equal("id", Key(plain with { Id = "Abcd-1" }));
        Assert.Equal("author", Key(plain with { Author = "\t" }));
        Assert.Equal("strikes-nothing", Key(Entry(new Seen.Struck("twice"))));
        var record = SiteRecord.Empty.With(plain).Record!;
        string? Next(SiteEntry entry) => record.With(entry).Problem is { } problem ? Readable(problem) : null;
        var other = plain with { Id = "other-1", Corrects = plain.Id };
        Assert.Null(Next(other));
        Assert.Equal("other-kind", Next(other with { What = new Seen.Delivery(Date, "sand", "4 yd3") }));
        Assert.Equal("day-twice", Next(other with { Corrects = null }));
        var issued = record.With(plain with { Id = "issue-1", What = Issue("A", 2) }).Record!;
        string? Handed(Seen what, string? corrects = null) => issued.With(plain with { Id = "issue-2", What = what, Corrects = corrects }).Problem is { } problem ? Readable(problem) : null;
        Assert.Equal("letter-twice", Handed(Issue("A", 3)));
        Assert.Null(Handed(Issue("A", 3), "issue-1"));
        Assert.Null(Handed(Issue("B", 3)));
        Assert.Null(Handed(new Seen.Issue(Date, "A", ["plan"], "the mason")));
        record = record.With(other with { What = new Seen.Struck("wrong house") }).Record!;
        Assert.Empty(record.Days);
        Assert.Equal("struck-stays", Next(other with { Id = "other-2", Corrects = "other-1" }));
        Assert.Null(Next(plain with { Id = "other-3" }));
    }

    /// <summary>Property: ids are typed without doubt, and 50 random bits of them seldom meet.</summary>
    [Fact]
    public void Ids_are_short_and_apart()
    {
        var random = new Random(7);
        var ids = Enumerable.Range(0, 5000).Select(_ =>
        {
            var bytes = new byte[SiteEntry.IdBytes];
            random.NextBytes(bytes);
            return SiteEntry.IdOf(bytes);
        }).ToList();
        Assert.All(ids, id => Assert.Matches("^[0-9a-hjkmnp-tv-z]{5}-[0-9a-hjkmnp-tv-z]{5}$", id));
        Assert.Equal(ids.Count, ids.Distinct().Count());
    }
}
