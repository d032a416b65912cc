using System.Text;
using Clomwright.Papers.Writers;
using Clomwright.Study;
using Clomwright.Testing;
using Ical.Net;

namespace Clomwright.Papers.Tests;

/// <summary>The calendar file, read back by Ical.Net, which had no part in writing it.</summary>
public sealed class CalendarTests
{
    private static readonly DateOnly Stamp = new(2027, 5, 20);

    private static Gen<CalendarEntry> Entries { get; } =
        from first in Gen.Int[0, 700]
        from days in Gen.Int[0, 40]
        from title in Gen.String[Gen.Char["ab ,;:\\\"é°m²\n"], 0, 120]
        from words in Gen.String[Gen.Char["ab ,;:\\\"éß漢\n"], 0, 300]
        select new CalendarEntry("k", Stamp.AddDays(first), Stamp.AddDays(first + days), title, words);

    /// <summary>Independent: whatever the words, the reader gives back days, titles and words as they were; white space at either end of a text aside, which it trims.</summary>
    [Fact]
    public void Everything_is_read_back() => Entries.Array[1, 8].ForAll(drawn =>
    {
        CalendarEntry[] entries = [.. drawn.Select((e, i) => e with { Key = $"entry-{i}" })];
        var text = CalendarWriter.Write("a-house", "A house, by a brook; two\\three", entries, Stamp);
        var read = Calendar.Load(text)!;
        Assert.Equal(entries.Length, read.Events.Count);
        foreach (var (entry, i) in entries.Select((e, i) => (e, i)))
        {
            var found = read.Events.Single(e => e.Uid == $"entry-{i}@a-house.clomwright");
            Assert.False(found.Start!.HasTime);
            Assert.Equal(entry.First, found.Start.Date);
            Assert.Equal(entry.Last.AddDays(1), found.End!.Date);
            Assert.Equal(entry.Title.Trim(), (found.Summary ?? "").ReplaceLineEndings("\n").Trim());
            Assert.Equal(entry.Words.Trim(), (found.Description ?? "").ReplaceLineEndings("\n").Trim());
            Assert.Equal("TENTATIVE", found.Status);
            Assert.Equal("TRANSPARENT", found.Transparency);
        }
    }, iter: Counts.Of(100, 2_000));

    /// <summary>Published, RFC 5545 section 3.1: lines end in CRLF, and none is longer than 75 octets without it.</summary>
    [Fact]
    public void Lines_are_no_longer_than_the_standard_lets_them() => Entries.ForAll(entry =>
    {
        var text = CalendarWriter.Write("a-house", "漢字 a house", [entry], Stamp);
        Assert.DoesNotContain('\n', text.Replace("\r\n", ""));
        Assert.EndsWith("END:VCALENDAR\r\n", text, StringComparison.Ordinal);
        Assert.All(text.Split("\r\n"), line => Assert.True(Encoding.UTF8.GetByteCount(line) <= 75));
    }, iter: Counts.Of(100, 2_000));

    /// <summary>Property: every mark and lift that has a middle day stands on it and says that it is a forecast, and all that is on the order is there before it is needed.</summary>
    [Fact]
    public void A_house_has_its_marks_lifts_and_deliveries()
    {
        var study = HouseStudy.Of(Houses.HeronPoint);
        var days = study.Days.Value!;
        var entries = DaysCalendar.Of(study, days);
        Assert.All(days.Milestones.Where(m => m.Days.P50 is not null), m => Assert.Equal(days.Start.AddDays(m.Days.P50!.Value), Assert.Single(entries, e => e.Key == m.Key).First));
        Assert.All(days.Lifts, l => Assert.Single(entries, e => e.Key == $"lift-{l.Lift + 1}"));
        Assert.All(entries.Where(e => !e.Key.StartsWith("on-site", StringComparison.Ordinal)), e => Assert.Contains("not permission", e.Words, StringComparison.Ordinal));
        Assert.Equal(entries.Count, entries.Select(e => e.Key).Distinct().Count());
        Assert.All(study.Host.Value!.Lines, l => Assert.True(l.Needed is null || l.By < l.Needed));
        Assert.Equal(study.Quantities.Orders.Count, study.Host.Value!.Lines.Count);
    }
}
