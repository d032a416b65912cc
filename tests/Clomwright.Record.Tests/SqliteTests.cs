using Clomwright.Record.Logging;
using Microsoft.Data.Sqlite;

namespace Clomwright.Record.Tests;

/// <summary>A record in a file.</summary>
public sealed class SqliteTests : StoreTests, IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("clom-record-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    protected override IRecordStore Store(string name) => new SqliteRecord(At(name));

    protected override bool Meddle(string name, string statement)
    {
        try
        {
            Do(At(name), statement.Replace("{entry}", "entry", StringComparison.Ordinal).Replace("{unlock}", "DROP TRIGGER entry_is_never_changed;", StringComparison.Ordinal));
            return true;
        }
        catch (SqliteException)
        {
            return false;
        }
    }

    private string At(string name) => Path.Combine(folder, name + ".record.db");

    private static void Do(string path, string statement)
    {
        using var connection = new SqliteConnection($"Data Source={path};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = statement;
        command.ExecuteNonQuery();
    }

    /// <summary>Property: replacing, which SQLite does without asking the trigger of deletions, is refused too.</summary>
    [Fact]
    public void Nothing_is_replaced()
    {
        var store = Store("r");
        Assert.Null(store.Append(LoggedDays.Day(0)).Problem);
        Assert.False(Meddle("r", "INSERT OR REPLACE INTO entry SELECT place, id, moment, 'someone else', kind, body, corrects, seal FROM entry"));
        Assert.Equal([LoggedDays.Day(0)], store.Read().Record.Entries);
    }

    /// <summary>Bad files, one sentence each, and not a byte of them changed.</summary>
    [Fact]
    public void What_is_not_ours_is_left_alone()
    {
        File.WriteAllText(At("text"), "These are a builder's notes and no database of any kind, long enough to be looked at twice, and once more for the header's sake.");
        Do(At("other"), "CREATE TABLE pots (n INTEGER); PRAGMA application_id = 7");
        Assert.Null(Store("newer").Append(LoggedDays.Day(0)).Problem);
        Do(At("newer"), "PRAGMA user_version = 2");
        foreach (var (name, key) in new[] { ("text", "record.not-ours"), ("other", "record.not-ours"), ("newer", "record.newer") })
        {
            var before = File.ReadAllBytes(At(name));
            Assert.Equal(key, Store(name).Read().Problem?.Key);
            Assert.Equal(key, Store(name).Append(LoggedDays.Day(3)).Problem?.Key);
            Assert.Equal(before, File.ReadAllBytes(At(name)));
        }
    }

    /// <summary>Property: a page of the file overwritten is said; what can still be read is shown, and the file is left as it is.</summary>
    [Fact]
    public void Damage_is_said_and_loses_nothing_more()
    {
        for (var n = 0; n < 60; n++)
        {
            Assert.Null(Store("hurt").Append(LoggedDays.Day(n)).Problem);
        }

        var bytes = File.ReadAllBytes(At("hurt"));
        Array.Fill(bytes, (byte)0x5A, bytes.Length - 2 * 4096, 4096);
        File.WriteAllBytes(At("hurt"), bytes);
        var reading = Store("hurt").Read();
        Assert.Contains(reading.Problem?.Key, new[] { "record.damaged", "record.changed-outside" });
        Assert.All(reading.Record.Entries, entry => Assert.Contains(entry, Enumerable.Range(0, 60).Select(LoggedDays.Day)));
        Assert.NotNull(Store("hurt").Append(LoggedDays.Day(60)).Problem);
        Assert.Equal(bytes, File.ReadAllBytes(At("hurt")));
    }

    /// <summary>A record that may only be read is read; adding is refused in one sentence. One that another program holds is waited for and then said.</summary>
    [Fact]
    public void Read_only_and_busy_are_said()
    {
        Assert.Null(Store("h").Append(LoggedDays.Day(0)).Problem);
        var readOnly = new SqliteRecord(At("h"), SqliteOpenMode.ReadOnly);
        Assert.Single(readOnly.Read().Record.Entries);
        Assert.Equal("record.read-only", readOnly.Append(LoggedDays.Day(1)).Problem?.Key);
        using var holder = new SqliteConnection($"Data Source={At("h")};Pooling=False");
        holder.Open();
        using var hold = holder.BeginTransaction(deferred: false);
        Assert.Equal("record.busy", Store("h").Append(LoggedDays.Day(1)).Problem?.Key);
        Assert.Single(Store("h").Read().Record.Entries);
    }

    /// <summary>Property: what is refused makes no file, an empty file is an empty record, a folder that is not there is said.</summary>
    [Fact]
    public void Nothing_is_made_for_nothing()
    {
        Assert.NotNull(Store("n").Append(LoggedDays.Day(0) with { Author = " " }).Problem);
        Assert.False(File.Exists(At("n")));
        File.WriteAllBytes(At("z"), []);
        Assert.Null(Store("z").Read().Problem);
        Assert.Null(Store("z").Append(LoggedDays.Day(0)).Problem);
        Assert.Equal("record.not-reached", new SqliteRecord(Path.Combine(folder, "gone", "x.record.db")).Append(LoggedDays.Day(0)).Problem?.Key);
        Assert.Equal("/a/heron.record.db", SqliteRecord.Beside("/a/heron.house.json"));
    }
}
