using Clomwright.Building;
using Clomwright.Evidence;
using Microsoft.Data.Sqlite;

namespace Clomwright.Record;

/// <summary>A site record in one SQLite file beside the house file, made by the first entry.</summary>
/// <remarks>
/// Rollback journal, deleted at each commit, and <c>synchronous = EXTRA</c>: an entry is acknowledged when file and folder are on the disk itself. No write-ahead log, so that
/// between two entries the record is one file that can be copied, carried and sent. Triggers refuse every change and every deletion. docs/decisions/0005-site-record.md.
/// </remarks>
public sealed class SqliteRecord : IRecordStore
{
    /// <summary>"Clom", so that no other program's database is taken for a record.</summary>
    private const int ApplicationId = 0x436C6F6D;

    private const int SecondsToWait = 3;
    private const int NotADatabase = 26, Corrupt = 11, Busy = 5, Locked = 6, ReadOnly = 8, Full = 13;

    private const string Schema = """
        CREATE TABLE entry (
          place INTEGER PRIMARY KEY AUTOINCREMENT,
          id TEXT NOT NULL UNIQUE,
          moment TEXT NOT NULL,
          author TEXT NOT NULL,
          kind TEXT NOT NULL,
          body TEXT NOT NULL CHECK (json_valid(body)),
          corrects TEXT UNIQUE REFERENCES entry (id),
          seal TEXT NOT NULL UNIQUE
        ) STRICT;
        CREATE TRIGGER entry_is_never_changed BEFORE UPDATE ON entry BEGIN SELECT RAISE(ABORT, 'entries are never changed'); END;
        CREATE TRIGGER entry_is_never_deleted BEFORE DELETE ON entry BEGIN SELECT RAISE(ABORT, 'entries are never deleted'); END;
        CREATE TRIGGER entry_is_never_replaced BEFORE INSERT ON entry
          WHEN EXISTS (SELECT 1 FROM entry WHERE id = NEW.id OR place = NEW.place OR seal = NEW.seal OR corrects = NEW.corrects)
          BEGIN SELECT RAISE(ABORT, 'entries are never replaced'); END;
        """;

    private readonly string path;
    private readonly SqliteOpenMode mode;

    /// <summary>The record in a file.</summary>
    /// <param name="path">Where it is or will be.</param>
    public SqliteRecord(string path) : this(path, SqliteOpenMode.ReadWriteCreate)
    {
    }

    internal SqliteRecord(string path, SqliteOpenMode mode) => (this.path, this.mode) = (path, mode);

    /// <summary>Where the record of a house file is.</summary>
    /// <param name="house">Path of the house file.</param>
    public static string Beside(string house)
    {
        ArgumentNullException.ThrowIfNull(house);
        const string ofHouse = ".house.json";
        return (house.EndsWith(ofHouse, StringComparison.Ordinal) ? house[..^ofHouse.Length] : house) + ".record.db";
    }

    /// <inheritdoc/>
    public RecordReading Read()
    {
        if (!File.Exists(path))
        {
            return new(SiteRecord.Empty, null);
        }

        try
        {
            using var connection = Open(mode == SqliteOpenMode.ReadWriteCreate ? SqliteOpenMode.ReadWrite : mode);
            return Problem(connection) is { } problem ? new(SiteRecord.Empty, problem) : IsNew(connection) ? new(SiteRecord.Empty, null) : ReadingOf(connection);
        }
        catch (Exception wrong) when (IsOfDisk(wrong))
        {
            return new(SiteRecord.Empty, Said(wrong));
        }
    }

    /// <inheritdoc/>
    public Appended Append(SiteEntry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        // An entry that is refused makes no file.
        if (!File.Exists(path) && Ledger.Add([], entry) is (null, var refused))
        {
            return refused;
        }

        try
        {
            using var connection = Open(mode);
            if (Problem(connection) is { } problem)
            {
                return new(null, false, problem);
            }

            using var work = connection.BeginTransaction(deferred: false);
            if (IsNew(connection))
            {
                Do(connection, $"PRAGMA application_id = {ApplicationId}; PRAGMA user_version = {Ledger.Version};" + Schema);
            }

            if (Unsound(connection) is { } unsound)
            {
                return new(null, false, unsound);
            }

            var (row, answer) = Ledger.Add(Rows(connection), entry);
            if (row is not null)
            {
                Insert(connection, row);
                work.Commit();
            }
            else
            {
                work.Rollback();
            }

            return answer;
        }
        catch (Exception wrong) when (IsOfDisk(wrong))
        {
            return new(null, false, Said(wrong));
        }
    }

    private SqliteConnection Open(SqliteOpenMode how)
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Mode = how, Pooling = false, DefaultTimeout = SecondsToWait }.ToString());
        try
        {
            connection.Open();
            Do(connection, "PRAGMA trusted_schema = OFF; PRAGMA foreign_keys = ON; PRAGMA synchronous = EXTRA; PRAGMA fullfsync = ON;");
            return connection;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    /// <summary>A file without anything in it becomes a record with its first entry.</summary>
    private static bool IsNew(SqliteConnection connection) => Number(connection, "SELECT count(*) FROM sqlite_master") == 0 && Number(connection, "PRAGMA application_id") == 0;

    private Message? Problem(SqliteConnection connection)
    {
        if (IsNew(connection))
        {
            return null;
        }

        return Number(connection, "PRAGMA application_id") != ApplicationId ? Message.Of("record.not-ours", ("path", path))
            : Number(connection, "PRAGMA user_version") > Ledger.Version ? Message.Of("record.newer", ("path", path))
            : null;
    }

    /// <summary>What SQLite itself finds wrong in the file.</summary>
    private Message? Unsound(SqliteConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "PRAGMA integrity_check(1)";
        return command.ExecuteScalar() is "ok" ? null : Message.Of("record.damaged", ("path", path));
    }

    /// <summary>What can be read of a file, damaged or not.</summary>
    private RecordReading ReadingOf(SqliteConnection connection)
    {
        var rows = new List<Row>();
        try
        {
            var unsound = Unsound(connection);
            Rows(connection, rows);
            var reading = Ledger.ReadingOf(rows);
            return reading with { Problem = unsound ?? reading.Problem };
        }
        catch (SqliteException wrong) when (wrong.SqliteErrorCode == Corrupt)
        {
            return new(Ledger.ReadingOf(rows).Record, Message.Of("record.damaged", ("path", path)));
        }
    }

    private static List<Row> Rows(SqliteConnection connection)
    {
        var rows = new List<Row>();
        Rows(connection, rows);
        return rows;
    }

    private static void Rows(SqliteConnection connection, List<Row> rows)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT id, moment, author, kind, body, corrects, seal FROM entry ORDER BY place";
        using var reader = command.ExecuteReader();
        while (reader.Read())
        {
            rows.Add(new(reader.GetString(0), reader.GetString(1), reader.GetString(2), reader.GetString(3), reader.GetString(4), reader.IsDBNull(5) ? null : reader.GetString(5), reader.GetString(6)));
        }
    }

    private static void Insert(SqliteConnection connection, Row row)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "INSERT INTO entry (id, moment, author, kind, body, corrects, seal) VALUES ($id, $moment, $author, $kind, $body, $corrects, $seal)";
        foreach (var (name, value) in new (string, object?)[] { ("$id", row.Id), ("$moment", row.Moment), ("$author", row.Author), ("$kind", row.Kind), ("$body", row.Body), ("$corrects", row.Corrects), ("$seal", row.Seal) })
        {
            command.Parameters.AddWithValue(name, value ?? DBNull.Value);
        }

        command.ExecuteNonQuery();
    }

    private static void Do(SqliteConnection connection, string what)
    {
        using var command = connection.CreateCommand();
        command.CommandText = what;
        command.ExecuteNonQuery();
    }

    private static long Number(SqliteConnection connection, string what)
    {
        using var command = connection.CreateCommand();
        command.CommandText = what;
        return (long)command.ExecuteScalar()!;
    }

    private static bool IsOfDisk(Exception wrong) => wrong is SqliteException or IOException or UnauthorizedAccessException;

    private Message Said(Exception wrong) => wrong is SqliteException sqlite
        ? sqlite.SqliteErrorCode switch
        {
            NotADatabase => Message.Of("record.not-ours", ("path", path)),
            Corrupt => Message.Of("record.damaged", ("path", path)),
            Busy or Locked => Message.Of("record.busy", ("path", path)),
            ReadOnly => Message.Of("record.read-only", ("path", path)),
            Full => Message.Of("record.disk-full", ("path", path)),
            _ => Message.Of("record.not-reached", ("path", path), ("why", OneLine.Of(sqlite.Message))),
        }
        : Message.Of("record.not-reached", ("path", path), ("why", OneLine.Of(wrong.Message)));
}
