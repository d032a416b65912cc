using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Record;

/// <summary>One entry as it is stored.</summary>
/// <param name="Id">Of the entry.</param>
/// <param name="Moment">Round-trip form of ISO 8601.</param>
/// <param name="Author">Who wrote it.</param>
/// <param name="Kind">What kind of thing was seen.</param>
/// <param name="Body">What was seen, one line of JSON.</param>
/// <param name="Corrects">Id of the entry it takes the place of.</param>
/// <param name="Seal">SHA-256 over the seal of the entry before and all that is in this one, in hexadecimal: whoever changes an entry from outside breaks every seal after it.</param>
internal sealed record Row(string Id, string Moment, string Author, string Kind, string Body, string? Corrects, string Seal);

/// <summary>What both stores do alike: entries to rows and back, and the seals that hold them together.</summary>
internal static class Ledger
{
    /// <summary>The version of what is stored.</summary>
    public const int Version = 1;

    public static Row RowOf(SiteEntry entry, Row? before)
    {
        var row = new Row(entry.Id, entry.Moment.ToString("O", CultureInfo.InvariantCulture), entry.Author, EntryText.Kind(entry.What), EntryText.Write(entry.What), entry.Corrects, "");
        return row with { Seal = SealOf(row, before) };
    }

    /// <summary>The record in some rows. Rows that cannot be understood are left out and said; the rest is kept.</summary>
    public static RecordReading ReadingOf(IReadOnlyList<Row> rows)
    {
        var entries = new List<SiteEntry>(rows.Count);
        Message? problem = null;
        for (var i = 0; i < rows.Count; i++)
        {
            if (rows[i].Seal != SealOf(rows[i], i > 0 ? rows[i - 1] : null))
            {
                problem ??= Message.Of("record.changed-outside", ("n", i + 1));
            }

            if (EntryText.Read(rows[i].Kind, rows[i].Body) is { } what
                && DateTimeOffset.TryParseExact(rows[i].Moment, "O", CultureInfo.InvariantCulture, DateTimeStyles.None, out var moment))
            {
                entries.Add(new SiteEntry(rows[i].Id, moment, rows[i].Author, what) { Corrects = rows[i].Corrects });
            }
            else
            {
                problem ??= Message.Of("record.not-understood", ("n", i + 1));
            }
        }

        return new(new SiteRecord(entries.ToSequence()), problem);
    }

    /// <summary>What adding an entry to some rows comes to: the row to write, or what to answer without writing.</summary>
    public static (Row? Write, Appended Answer) Add(IReadOnlyList<Row> rows, SiteEntry entry)
    {
        var reading = ReadingOf(rows);
        if (reading.Problem is { } unsound)
        {
            return (null, new(null, false, unsound));
        }

        var (record, problem) = reading.Record.With(entry);
        return record is null ? (null, new(null, false, problem))
            : record.Entries.Count == rows.Count ? (null, new(record, true, null))
            : (RowOf(entry, rows.Count > 0 ? rows[^1] : null), new(record, false, null));
    }

    private static string SealOf(Row row, Row? before) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(
        string.Join('\n', before?.Seal ?? "", row.Id, row.Moment, row.Author, row.Kind, row.Corrects ?? "", row.Body))));
}
