using Clomwright.Building;
using Clomwright.Evidence;
using Npgsql;

namespace Clomwright.Record;

/// <summary>The site records of a school's houses in one PostgreSQL database: the same entries, seals and refusals as in a file.</summary>
/// <remarks>Entries of one house wait for each other (an advisory lock until the commit); <c>synchronous_commit</c> is on, so that an entry is acknowledged when it is on the server's disk.</remarks>
public sealed class PostgresRecord : IRecordStore
{
    private const int SecondsToWait = 5;

    /// <summary>Of the lock under which the tables are made and of those under which entries are added.</summary>
    private const int TablesLock = 0x436C6F6D, EntriesLock = 0x436C6F6E;

    private const string Tables = """
        CREATE TABLE IF NOT EXISTS clomwright_version (version integer NOT NULL);
        INSERT INTO clomwright_version SELECT 1 WHERE NOT EXISTS (SELECT 1 FROM clomwright_version);
        CREATE TABLE IF NOT EXISTS clomwright_entry (
          house text NOT NULL,
          place bigint NOT NULL,
          id text NOT NULL,
          moment text NOT NULL,
          author text NOT NULL,
          kind text NOT NULL,
          body text NOT NULL CHECK (body::json IS NOT NULL),
          corrects text,
          seal text NOT NULL,
          PRIMARY KEY (house, place),
          UNIQUE (house, id),
          UNIQUE (house, seal),
          UNIQUE (house, corrects),
          FOREIGN KEY (house, corrects) REFERENCES clomwright_entry (house, id)
        );
        CREATE OR REPLACE FUNCTION clomwright_refuse() RETURNS trigger LANGUAGE plpgsql AS
          $$ BEGIN RAISE EXCEPTION 'entries are never changed or deleted'; END $$;
        CREATE OR REPLACE TRIGGER entry_is_never_changed BEFORE UPDATE OR DELETE ON clomwright_entry FOR EACH ROW EXECUTE FUNCTION clomwright_refuse();
        CREATE OR REPLACE TRIGGER entries_are_never_emptied BEFORE TRUNCATE ON clomwright_entry FOR EACH STATEMENT EXECUTE FUNCTION clomwright_refuse();
        """;

    private readonly string connection, house;

    /// <summary>The record of a house on a server.</summary>
    /// <param name="connection">Connection string, as Npgsql reads it.</param>
    /// <param name="house">The id of the house.</param>
    public PostgresRecord(string connection, string house)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(house);
        (this.connection, this.house) = (new NpgsqlConnectionStringBuilder(connection) { Timeout = SecondsToWait, CommandTimeout = SecondsToWait, ApplicationName = "Clomwright" }.ToString(), house);
    }

    /// <inheritdoc/>
    public RecordReading Read()
    {
        try
        {
            using var open = Open();
            return !HasTables(open) ? new(SiteRecord.Empty, null) : Problem(open) is { } problem ? new(SiteRecord.Empty, problem) : Ledger.ReadingOf(Rows(open));
        }
        catch (Exception wrong) when (IsOfServer(wrong))
        {
            return new(SiteRecord.Empty, Said(wrong));
        }
    }

    /// <inheritdoc/>
    public Appended Append(SiteEntry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        try
        {
            using var open = Open();
            if (!HasTables(open))
            {
                Do(open, $"BEGIN; SELECT pg_advisory_xact_lock({TablesLock}); {Tables} COMMIT;");
            }

            if (Problem(open) is { } problem)
            {
                return new(null, false, problem);
            }

            using var work = open.BeginTransaction();
            Do(open, "SET LOCAL synchronous_commit = on");
            using (var wait = Command(open, $"SELECT pg_advisory_xact_lock({EntriesLock}, hashtext($1))", house))
            {
                wait.ExecuteNonQuery();
            }

            var rows = Rows(open);
            var (row, answer) = Ledger.Add(rows, entry);
            if (row is null)
            {
                work.Rollback();
                return answer;
            }

            using (var insert = Command(open, "INSERT INTO clomwright_entry (house, place, id, moment, author, kind, body, corrects, seal) VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9)",
                house, (long)rows.Count + 1, row.Id, row.Moment, row.Author, row.Kind, row.Body, (object?)row.Corrects ?? DBNull.Value, row.Seal))
            {
                insert.ExecuteNonQuery();
            }

            work.Commit();
            return answer;
        }
        catch (Exception wrong) when (IsOfServer(wrong))
        {
            return new(null, false, Said(wrong));
        }
    }

    private NpgsqlConnection Open()
    {
        var open = new NpgsqlConnection(connection);
        try
        {
            open.Open();
            return open;
        }
        catch
        {
            open.Dispose();
            throw;
        }
    }

    private static bool HasTables(NpgsqlConnection open)
    {
        using var command = Command(open, "SELECT to_regclass('clomwright_entry') IS NOT NULL");
        return command.ExecuteScalar() is true;
    }

    private static Message? Problem(NpgsqlConnection open)
    {
        using var command = Command(open, "SELECT max(version) FROM clomwright_version");
        return command.ExecuteScalar() is int version && version > Ledger.Version ? Message.Of("record.newer", ("path", open.Database)) : null;
    }

    private List<Row> Rows(NpgsqlConnection open)
    {
        var rows = new List<Row>();
        using var command = Command(open, "SELECT id, moment, author, kind, body, corrects, seal FROM clomwright_entry WHERE house = $1 ORDER BY place", house);
        using var reader = command.ExecuteReader();
        while (reader.Read())
        {
            rows.Add(new(reader.GetString(0), reader.GetString(1), reader.GetString(2), reader.GetString(3), reader.GetString(4), reader.IsDBNull(5) ? null : reader.GetString(5), reader.GetString(6)));
        }

        return rows;
    }

    private static void Do(NpgsqlConnection open, string what)
    {
        using var command = Command(open, what);
        command.ExecuteNonQuery();
    }

    private static NpgsqlCommand Command(NpgsqlConnection open, string what, params ReadOnlySpan<object> values)
    {
        var command = new NpgsqlCommand(what, open);
        foreach (var value in values)
        {
            command.Parameters.Add(new NpgsqlParameter { Value = value });
        }

        return command;
    }

    private static bool IsOfServer(Exception wrong) => wrong is NpgsqlException or TimeoutException or IOException or InvalidOperationException or ArgumentException;

    private Message Said(Exception wrong) => wrong is PostgresException { SqlState: PostgresErrorCodes.ReadOnlySqlTransaction or PostgresErrorCodes.InsufficientPrivilege }
        ? Message.Of("record.read-only", ("path", house))
        : Message.Of("record.no-server", ("why", OneLine.Of(wrong.Message.Split((char)10)[0])));
}
