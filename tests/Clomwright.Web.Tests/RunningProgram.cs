using System.Diagnostics;
using System.Globalization;

namespace Clomwright.Web.Tests;

/// <summary>The program itself, open on a folder, as a process of its own, which keeps what it keeps for its user in that folder where the system can be told so; ended with all it started when disposed.</summary>
public sealed class RunningProgram : IAsyncDisposable
{
    private RunningProgram(Process process, Uri address) => (Process, Address) = (process, address);

    public Process Process { get; }

    public Uri Address { get; }

    /// <summary>Starts it.</summary>
    /// <param name="folder">The folder of houses.</param>
    /// <param name="heapMost">It ends when what it still uses of the collected heap does not fit into this, bytes; null sets no limit.</param>
    /// <param name="more">More words for its line.</param>
    public static async Task<RunningProgram> On(string folder, long? heapMost = null, params IEnumerable<string> more)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true };
        foreach (var argument in (string[])[Path.Combine(AppContext.BaseDirectory, "clom.dll"), "open", folder, "--port", "0", "--no-browser", .. more])
        {
            start.ArgumentList.Add(argument);
        }

        start.Environment["XDG_DATA_HOME"] = Directory.CreateDirectory(Path.Combine(folder, "own")).FullName;
        start.Environment.Remove("CLOM_LANGUAGE");
        if (heapMost is { } most)
        {
            start.Environment["DOTNET_GCHeapHardLimit"] = most.ToString("x", CultureInfo.InvariantCulture);
        }

        var process = Process.Start(start)!;
        var said = (await process.StandardOutput.ReadLineAsync())!;
        return new RunningProgram(process, new Uri(said[said.IndexOf("http", StringComparison.Ordinal)..]));
    }

    public async ValueTask DisposeAsync()
    {
        if (!Process.HasExited)
        {
            Process.Kill(entireProcessTree: true);
            await Process.WaitForExitAsync();
        }

        Process.Dispose();
    }
}
