using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>What was seen on site, in the order in which it was written. Entries are only ever added.</summary>
/// <param name="Entries">All of them, those corrected later too.</param>
public sealed record SiteRecord(Sequence<SiteEntry> Entries)
{
    /// <summary>A record in which nothing is written.</summary>
    public static SiteRecord Empty { get; } = new([]);

    /// <summary>What counts: entries that nobody corrected, those that strike others out left out; in the order written.</summary>
    public Sequence<SiteEntry> Standing
    {
        get
        {
            var corrected = Entries.Select(e => e.Corrects).OfType<string>().ToHashSet(StringComparer.Ordinal);
            return Entries.Where(e => e.What is not Seen.Struck && !corrected.Contains(e.Id)).ToSequence();
        }
    }

    /// <summary>Days of work that count, by date.</summary>
    public Sequence<Seen.Day> Days => Standing.Select(e => e.What).OfType<Seen.Day>().OrderBy(d => d.Date).ToSequence();

    /// <summary>Sets of papers that count and say what was drawn on them, in the order handed out.</summary>
    public Sequence<Seen.Issue> Issues => Standing.Select(e => e.What).OfType<Seen.Issue>().Where(i => i.Drawn.Count > 0).ToSequence();

    /// <summary>The entry that counts of a day of work; null where none does.</summary>
    public SiteEntry? DayOf(DateOnly date) => Standing.FirstOrDefault(e => e.What is Seen.Day day && day.Date == date);

    /// <summary>The entry of an id, whether it counts or not.</summary>
    public SiteEntry? Find(string id) => Entries.FirstOrDefault(e => e.Id == id);

    /// <summary>The record with one entry more.</summary>
    /// <returns>The record, itself where the very same entry is in it already, whenever it was sent; or one sentence why the entry cannot be added.</returns>
    public (SiteRecord? Record, Message? Problem) With(SiteEntry entry) =>
        Find(entry.Id) is { } there
            ? there == entry with { Moment = there.Moment } ? (this, null) : (null, Message.Of("building.record.id-taken", ("id", entry.Id)))
            : EntryChecks.Of(this, entry) is { } problem ? (null, problem) : (new SiteRecord(Entries.Plus(entry)), null);
}
