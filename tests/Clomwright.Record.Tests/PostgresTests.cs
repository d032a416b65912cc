using Npgsql;

namespace Clomwright.Record.Tests;

/// <summary>Records on a server.</summary>
public sealed class PostgresTests(PostgresServer server) : StoreTests
{
    private readonly string prefix = Path.GetRandomFileName();

    protected override IRecordStore Store(string name)
    {
        Assert.SkipWhen(server.Missing is not null, $"skipped: {server.Missing}");
        return new PostgresRecord(server.Connection, prefix + name);
    }

    protected override bool Meddle(string name, string statement)
    {
        using var connection = new NpgsqlConnection(server.Connection);
        connection.Open();
        var own = statement.Contains("WHERE", StringComparison.Ordinal) ? $" AND house = '{prefix + name}'" : $" WHERE house = '{prefix + name}'";
        using var command = new NpgsqlCommand(
            "BEGIN; " + statement.Replace("{entry}", "clomwright_entry", StringComparison.Ordinal)
                .Replace("{unlock}", "SET LOCAL session_replication_role = replica;", StringComparison.Ordinal) + own + "; COMMIT",
            connection);
        try
        {
            command.ExecuteNonQuery();
            return true;
        }
        catch (PostgresException)
        {
            return false;
        }
    }

    /// <summary>A server that is not there is one sentence.</summary>
    [Fact]
    public void A_silent_server_is_said()
    {
        var nobody = new PostgresRecord($"Host={Path.GetTempPath()};Port=1;Username=clom;Database=postgres", "h");
        Assert.Equal("record.no-server", nobody.Read().Problem?.Key);
        Assert.Equal("record.no-server", nobody.Append(Logging.LoggedDays.Day(0)).Problem?.Key);
    }

    /// <summary>Property: a whole table is not emptied.</summary>
    [Fact]
    public void Nothing_is_emptied()
    {
        var store = Store("t");
        Assert.Null(store.Append(Logging.LoggedDays.Day(0)).Problem);
        using var connection = new NpgsqlConnection(server.Connection);
        connection.Open();
        using var command = new NpgsqlCommand("TRUNCATE clomwright_entry", connection);
        Assert.Throws<PostgresException>(() => command.ExecuteNonQuery());
        Assert.Single(store.Read().Record.Entries);
    }
}
