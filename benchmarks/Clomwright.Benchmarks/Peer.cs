using System.Diagnostics;

namespace Clomwright.Benchmarks;

/// <summary>A process that answers a line with a line, so that several can take turns.</summary>
internal sealed class Peer : IDisposable
{
    private readonly Process process;

    public Peer(string program, IEnumerable<string> arguments, params (string Name, string Value)[] environment)
    {
        var start = new ProcessStartInfo(program, arguments) { RedirectStandardInput = true, RedirectStandardOutput = true, UseShellExecute = false };
        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        process = Process.Start(start)!;
    }

    /// <summary>The numbers that the process answers.</summary>
    public double[] Ask(string line)
    {
        process.StandardInput.WriteLine(line);
        process.StandardInput.Flush();
        var answer = process.StandardOutput.ReadLine() ?? throw new InvalidOperationException($"The peer ended before answering \"{line}\".");
        return [.. answer.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(word => double.Parse(word, System.Globalization.CultureInfo.InvariantCulture))];
    }

    public void Dispose()
    {
        process.StandardInput.Close();
        process.WaitForExit();
        process.Dispose();
    }
}
