using System.Diagnostics;
using System.Globalization;
using Clomwright.Record.Logging;
using Clomwright.Testing;

namespace Clomwright.Record.Tests;

/// <summary>A program that logs days is killed at random instants: what it had acknowledged is there, and nothing half.</summary>
public sealed class KilledTests(PostgresServer server, ITestOutputHelper output)
{
    /// <summary>A new record every so many kills: the first entries, in which the file is made, are killed too.</summary>
    private const int KillsOfRecord = 5;

    [Fact]
    public void A_file_outlives_any_kill()
    {
        var folder = Directory.CreateTempSubdirectory("clom-killed-").FullName;
        try
        {
            Kill(round => ["file", Path.Combine(folder, $"{round / KillsOfRecord}.record.db")], arguments => new SqliteRecord(arguments[1]));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void A_server_outlives_any_kill()
    {
        Assert.SkipWhen(server.Missing is not null, $"skipped: {server.Missing}");
        Kill(round => ["server", server.Connection, $"house-{round / KillsOfRecord}"], arguments => new PostgresRecord(arguments[1], arguments[2]));
    }

    private void Kill(Func<int, string[]> target, Func<string[], IRecordStore> open)
    {
        var random = new Random((int)Counts.Seed);
        output.WriteLine($"Seed {Counts.Seed}.");
        var (kills, acknowledged, silent) = (Counts.Of(20, 200), 0, 0);
        for (var round = 0; round < kills; round++)
        {
            var arguments = target(round);
            var had = open(arguments).Read().Record.Entries.Count;
            // Some are killed soon after they begin, the others some entries on.
            var heard = LogUntilKilled(arguments, random.Next(3) == 0 ? random.Next(0, 400) : null, random.Next(0, 12), TimeSpan.FromMilliseconds(40 * random.NextDouble()));
            var reading = open(arguments).Read();
            Assert.True(reading.Problem is null, $"Round {round}: {reading.Problem?.Key}");
            var said = heard.Count > 0 ? heard[^1] + 1 : had;
            Assert.InRange(reading.Record.Entries.Count, said, said + 1);
            Assert.Equal(Enumerable.Range(0, reading.Record.Entries.Count).Select(LoggedDays.Day), reading.Record.Entries);
            (acknowledged, silent) = (acknowledged + heard.Count, silent + (reading.Record.Entries.Count > said ? 1 : 0));
        }

        output.WriteLine($"{kills} kills, {acknowledged} entries acknowledged and there, {silent} entries there that nobody heard of.");
        Assert.True(acknowledged > kills, "Too little was logged for the kills to say anything.");
    }

    /// <summary>Starts a program that logs, and kills it: so many milliseconds after its start, or so long after some entries.</summary>
    private static List<int> LogUntilKilled(string[] arguments, int? afterStart, int afterEntries, TimeSpan more)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "Clomwright.Record.Logging.dll"));
        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        var heard = new List<int>();
        var enough = new ManualResetEventSlim();
        var hear = Task.Run(() =>
        {
            // A line without its end was not said.
            var line = new System.Text.StringBuilder();
            for (int c; (c = process.StandardOutput.Read()) >= 0;)
            {
                if (c != '\n')
                {
                    line.Append((char)c);
                    continue;
                }

                heard.Add(int.Parse(line.ToString(), CultureInfo.InvariantCulture));
                line.Clear();
                if (heard.Count > afterEntries)
                {
                    enough.Set();
                }
            }
        });
        if (afterStart is { } milliseconds)
        {
            Thread.Sleep(milliseconds);
        }
        else
        {
            Assert.True(enough.Wait(TimeSpan.FromSeconds(60)) || process.HasExited, "Nothing was logged in a minute.");
            Thread.Sleep(more);
        }

        Assert.False(process.HasExited, $"It ended by itself: {(process.HasExited ? errors.Result : "")}");
        process.Kill();
        process.WaitForExit();
        hear.Wait();
        return heard;
    }
}
