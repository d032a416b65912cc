using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Record.Logging;

namespace Clomwright.Record.Tests;

/// <summary>What every store of a site record keeps to; the same tests run on a file and on a server.</summary>
public abstract class StoreTests
{
    /// <summary>A store in which nothing is written; a second one on the same record where a name is given again.</summary>
    protected abstract IRecordStore Store(string name);

    /// <summary>Does something to the store past us, as another program would; whether it was let.</summary>
    protected abstract bool Meddle(string name, string statement);

    private static string Said(Message? problem) => problem is null ? "" : Phrasebook.English.Say(problem, UnitSystem.Imperial);

    private static SiteEntry Added(IRecordStore store, SiteEntry entry)
    {
        var added = store.Append(entry);
        Assert.True(added.Problem is null, Said(added.Problem));
        Assert.Contains(entry, added.Record!.Entries);
        return entry;
    }

    /// <summary>Property: whatever is added is read back equal, in order, by another who opens the record.</summary>
    [Fact]
    public void What_is_written_is_read_back()
    {
        SiteEntry Other(string id, Seen what) => LoggedDays.Day(40) with { Id = id, What = what };
        var date = new DateOnly(2027, 6, 5);
        SiteEntry[] all =
        [
            LoggedDays.Day(0), LoggedDays.Day(1), LoggedDays.Day(2), LoggedDays.Day(3),
            Other("test-1", new Seen.Tested(date, "leak test", "roof", "dry after two days under 2 in of water — “fine”")),
            Other("built-1", new Seen.AsBuilt(date, "door", Measured.Width, new Length(Length.PerInch * 289 / 8))),
            Other("came-1", new Seen.Delivery(date, "clay soil", "8 yd3") { AsOrdered = false }),
            Other("issue-1", new Seen.Issue(date, "B", ["lift", "pocket"], "the crew")),
            Other("issue-2", new Seen.Issue(date, "C", [], "the crew and “the office”") { Drawn = [new("office", "plan", "A-101", "Plan and setting-out", "0a1b"), new("site", "lift-1", "17", "Lift 1 of 8", "ff00")] }),
            LoggedDays.Day(50) with { Id = "again-1", Corrects = "day-00001", What = new Seen.Day(new DateOnly(2027, 6, 2)) { Raised = Length.FromInches(9) } },
            Other("struck-1", new Seen.Struck("written for another house")) with { Corrects = "day-00002" },
        ];
        var store = Store("a");
        Assert.Equal((SiteRecord.Empty, null), (store.Read().Record, store.Read().Problem));
        foreach (var entry in all)
        {
            Added(store, entry);
        }

        var reading = Store("a").Read();
        Assert.Null(reading.Problem);
        Assert.Equal(all, reading.Record.Entries);
        Assert.Equal(all[^2].Moment.Offset, reading.Record.Entries[^2].Moment.Offset);
        Assert.Equal([0, 1, 3], reading.Record.Days.Select(d => d.Date.DayNumber - new DateOnly(2027, 6, 1).DayNumber));
        Assert.Equal(Length.FromInches(9), reading.Record.Days[1].Raised);
    }

    /// <summary>Property: the same entry sent twice is one; another under its id is refused, as is a second entry of a day, a correction of what is not there or was corrected, and nothing is written then.</summary>
    [Fact]
    public void An_entry_is_written_once()
    {
        var store = Store("b");
        var (first, second) = (Added(store, LoggedDays.Day(0)), Added(store, LoggedDays.Day(1)));
        Assert.True(store.Append(first).WasThere);
        var again = store.Append(first with { Moment = first.Moment.AddHours(9) });
        Assert.True(again.WasThere);
        Assert.Equal(first.Moment, again.Record!.Entries[0].Moment);
        void Refused(string key, SiteEntry entry) => Assert.Equal(key, store.Append(entry).Problem?.Key);
        Refused("building.record.id-taken", first with { Author = "another" });
        Refused("building.record.day-twice", first with { Id = "other-1" });
        Refused("building.record.no-such", first with { Id = "other-2", Corrects = "nobody" });
        Refused("building.record.nothing", first with { Id = "other-3", What = new Seen.Day(new DateOnly(2027, 5, 1)) });
        Added(store, second with { Id = "other-4", Corrects = second.Id });
        Refused("building.record.corrected-already", second with { Id = "other-5", Corrects = second.Id });
        Assert.Equal(3, Store("b").Read().Record.Entries.Count);
    }

    /// <summary>Property: the store itself refuses what would change, delete or replace an entry.</summary>
    [Fact]
    public void Nothing_is_changed_or_deleted()
    {
        var store = Store("c");
        Added(store, LoggedDays.Day(0));
        Added(store, LoggedDays.Day(1));
        Assert.False(Meddle("c", "UPDATE {entry} SET author = 'someone else'"));
        Assert.False(Meddle("c", "DELETE FROM {entry}"));
        Assert.Equal([LoggedDays.Day(0), LoggedDays.Day(1)], store.Read().Record.Entries);
    }

    /// <summary>Property: what is changed past the store's own refusal is seen; all entries are still shown and nothing is added.</summary>
    [Fact]
    public void Changes_from_outside_are_seen()
    {
        var store = Store("d");
        Added(store, LoggedDays.Day(0));
        Added(store, LoggedDays.Day(1));
        Assert.True(Meddle("d", "{unlock} UPDATE {entry} SET author = 'someone else' WHERE id = 'day-00000'"));
        var reading = store.Read();
        Assert.Equal("record.changed-outside", reading.Problem?.Key);
        Assert.Equal(2, reading.Record.Entries.Count);
        Assert.Equal("record.changed-outside", store.Append(LoggedDays.Day(2)).Problem?.Key);
        Assert.Equal(2, store.Read().Record.Entries.Count);
    }

    /// <summary>Property: many who write at once lose nothing and write nothing twice.</summary>
    [Fact]
    public void Many_may_write_at_once()
    {
        const int each = 12;
        var stores = Enumerable.Range(0, 4).Select(_ => Store("e")).ToArray();
        Parallel.For(0, stores.Length, new ParallelOptions { MaxDegreeOfParallelism = stores.Length }, w =>
        {
            for (var n = 0; n < each; n++)
            {
                // Two of them write the same days.
                var entry = LoggedDays.Day(w / 2 * 1000 + n);
                var added = stores[w].Append(entry);
                while (added.Problem is { Key: "record.busy" })
                {
                    added = stores[w].Append(entry);
                }

                Assert.True(added.Problem is null, Said(added.Problem));
            }
        });
        var reading = stores[0].Read();
        Assert.Null(reading.Problem);
        Assert.Equal(2 * each, reading.Record.Entries.Count);
        Assert.Equal(2 * each, reading.Record.Days.Count);
    }

    /// <summary>Property: two records never mix.</summary>
    [Fact]
    public void Records_are_apart()
    {
        Added(Store("f"), LoggedDays.Day(0));
        Assert.Empty(Store("g").Read().Record.Entries);
        Added(Store("g"), LoggedDays.Day(0));
        Assert.Single(Store("f").Read().Record.Entries);
    }
}
