using System.Diagnostics;
using Clomwright.Record.Tests;

[assembly: AssemblyFixture(typeof(PostgresServer))]

namespace Clomwright.Record.Tests;

/// <summary>A PostgreSQL server of the tests' own: begun in a new folder as a user without rights, reached through a socket in that folder, stopped at the end.</summary>
public sealed class PostgresServer : IDisposable
{
    private readonly string folder = Path.Combine(Path.GetTempPath(), "clom-pg-" + Path.GetRandomFileName());
    private readonly string? programs;
    private readonly bool isRoot = Environment.UserName == "root";

    public PostgresServer()
    {
        programs = Directory.Exists("/usr/lib/postgresql")
            ? Directory.GetDirectories("/usr/lib/postgresql").OrderByDescending(d => double.TryParse(Path.GetFileName(d), out var v) ? v : 0).Select(d => Path.Combine(d, "bin")).FirstOrDefault(b => File.Exists(Path.Combine(b, "initdb")))
            : null;
        if (programs is null)
        {
            Missing = "PostgreSQL is not on this machine (Debian: apt-get install postgresql).";
            return;
        }

        try
        {
            Directory.CreateDirectory(folder);
            if (isRoot)
            {
                Run("chown", ["postgres", folder], plain: true);
            }

            Run(Path.Combine(programs, "initdb"), ["-D", $"{folder}/data", "-A", "trust", "-U", "clom", "--no-sync", "-E", "UTF8", "--locale=C.UTF-8"]);
            // Nothing in the tests pulls the plug of the machine: the server need not wait for its disk.
            Run(Path.Combine(programs, "pg_ctl"), ["-D", $"{folder}/data", "-w", "-l", $"{folder}/log", "-o", $"-c listen_addresses= -c unix_socket_directories={folder} -c fsync=off -c shared_buffers=16MB", "start"]);
            Connection = $"Host={folder};Username=clom;Database=postgres";
        }
        catch (Exception wrong) when (wrong is InvalidOperationException or IOException or System.ComponentModel.Win32Exception)
        {
            Missing = $"PostgreSQL could not be started here: {wrong.Message}";
        }
    }

    /// <summary>Why there is no server; null where there is one.</summary>
    public string? Missing { get; }

    public string Connection { get; } = "";

    public void Dispose()
    {
        if (Connection.Length > 0)
        {
            Npgsql.NpgsqlConnection.ClearAllPools();
            Run(Path.Combine(programs!, "pg_ctl"), ["-D", $"{folder}/data", "-w", "-m", "fast", "stop"]);
        }

        if (Directory.Exists(folder))
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private void Run(string program, string[] arguments, bool plain = false)
    {
        var start = new ProcessStartInfo { RedirectStandardError = true, RedirectStandardOutput = true, WorkingDirectory = "/" };
        (start.FileName, string[] all) = isRoot && !plain ? ("runuser", ["-u", "postgres", "--", program, .. arguments]) : (program, arguments);
        foreach (var argument in all)
        {
            start.ArgumentList.Add(argument);
        }

        // pg_ctl's server would inherit our pipes and keep them open: what it says goes to its log.
        start.RedirectStandardError = start.RedirectStandardOutput = !arguments.Contains("start");
        using var process = Process.Start(start)!;
        var said = start.RedirectStandardError ? process.StandardError.ReadToEndAsync() : Task.FromResult("");
        if (start.RedirectStandardOutput)
        {
            process.StandardOutput.ReadToEnd();
        }

        process.WaitForExit();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"{Path.GetFileName(program)} answered {process.ExitCode}: {said.Result.Trim()}");
        }
    }
}
