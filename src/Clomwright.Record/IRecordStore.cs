using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Record;

/// <summary>Where a site record is kept. Entries are only ever added; one that was acknowledged stays, whatever is pulled out.</summary>
public interface IRecordStore
{
    /// <summary>All that is written. Never throws for what is on the disk or the server: what is wrong is said.</summary>
    RecordReading Read();

    /// <summary>Adds an entry. When it returns without a problem the entry is on the disk itself; the same entry sent again changes nothing.</summary>
    Appended Append(SiteEntry entry);
}

/// <summary>What came of reading a record.</summary>
/// <param name="Record">Every entry that can be read, also of a record that something is wrong with.</param>
/// <param name="Problem">One sentence on what is wrong; null for a sound record. Nothing is added to a record that is not sound.</param>
public sealed record RecordReading(SiteRecord Record, Message? Problem);

/// <summary>What came of adding an entry.</summary>
/// <param name="Record">The record as it now is; null where the entry was not added.</param>
/// <param name="WasThere">Whether the very same entry had been in the record already.</param>
/// <param name="Problem">One sentence why nothing was written; null where the entry is in the record.</param>
public readonly record struct Appended(SiteRecord? Record, bool WasThere, Message? Problem);
