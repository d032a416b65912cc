using Clomwright.Cli;
using Clomwright.Testing;

namespace Clomwright.Cli.Tests;

/// <summary>One run of <c>clom</c> in this process, with what it said.</summary>
internal sealed record Run(int Code, string Results, string Complaints)
{
    public static DateOnly Today { get; } = new(2027, 5, 20);

    public static async Task<Run> Of(params string[] arguments)
    {
        using var results = new StringWriter();
        using var complaints = new StringWriter();
        var code = await CommandLine.Run(arguments, new Terminal(results, complaints, Today), CancellationToken.None);
        return new Run(code, results.ToString(), complaints.ToString());
    }

    /// <summary>The same before a person who watches it and stops it when something is said on the line of progress.</summary>
    public static async Task<(Run Run, string Progress)> Watched(Func<string, bool> stopsAt, params string[] arguments)
    {
        using var results = new StringWriter();
        using var complaints = new StringWriter();
        using var stop = new CancellationTokenSource();
        using var progress = new Watcher(said =>
        {
            if (stopsAt(said))
            {
                stop.Cancel();
            }
        });
        var code = await CommandLine.Run(arguments, new Terminal(results, complaints, Today, progress), stop.Token);
        return (new Run(code, results.ToString(), complaints.ToString()), progress.ToString());
    }

    private sealed class Watcher(Action<string> heard) : StringWriter
    {
        public override void Write(string? value)
        {
            base.Write(value);
            heard(value ?? "");
        }
    }

    public static string Example(string name) => Path.Combine(Counts.Root, "examples", name);

    public static IEnumerable<string> Examples() => Directory.GetFiles(Path.Combine(Counts.Root, "examples"), "*.house.json").Order(StringComparer.Ordinal);
}

/// <summary>A folder of this test's own, gone afterwards.</summary>
internal sealed class OwnFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("clom-").FullName;

    public string this[string name] => System.IO.Path.Combine(Path, name);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
