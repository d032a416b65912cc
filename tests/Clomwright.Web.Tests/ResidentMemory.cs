using System.Diagnostics;

namespace Clomwright.Web.Tests;

/// <summary>What a program holds in memory, four times a second for as long as it is watched.</summary>
public sealed class ResidentMemory : IAsyncDisposable
{
    private const double MiB = 1024 * 1024;

    private static readonly TimeSpan Every = TimeSpan.FromMilliseconds(250);

    private readonly CancellationTokenSource stop = new();
    private readonly List<(double Second, double MiB)> seen = [];
    private readonly Task watching;

    private ResidentMemory(int process) => watching = Task.Run(() => Watch(process));

    /// <summary>The most at any moment, MiB.</summary>
    public double Most => Seen(0, double.MaxValue).Max();

    /// <summary>Watches a process from now on.</summary>
    public static ResidentMemory Of(Process process) => new(process.Id);

    /// <summary>What it holds now, MiB.</summary>
    public static double Now(Process process)
    {
        process.Refresh();
        return process.WorkingSet64 / MiB;
    }

    /// <summary>The mean between two moments, s since it is watched; MiB.</summary>
    public double Mean(double from, double to) => Seen(from, to).Average();

    /// <summary>The least since a moment, s since it is watched; MiB.</summary>
    public double Least(double from) => Seen(from, double.MaxValue).Min();

    /// <summary>A line for each stretch of so many seconds: mean, least and most.</summary>
    public IEnumerable<string> Table(double seconds)
    {
        for (var from = 0.0; Seen(from, from + seconds) is { Count: > 0 } part; from += seconds)
        {
            yield return $"{from:0} to {from + seconds:0} s: mean {part.Average():0} MiB, least {part.Min():0}, most {part.Max():0}";
        }
    }

    /// <summary>Watches no longer; what was seen stays.</summary>
    public async ValueTask DisposeAsync()
    {
        await stop.CancelAsync();
        await watching;
        stop.Dispose();
    }

    private List<double> Seen(double from, double to)
    {
        lock (seen)
        {
            return [.. seen.Where(s => s.Second >= from && s.Second < to).Select(s => s.MiB)];
        }
    }

    private async Task Watch(int id)
    {
        using var process = Process.GetProcessById(id);
        var clock = Stopwatch.StartNew();
        while (!stop.IsCancellationRequested && !process.HasExited)
        {
            lock (seen)
            {
                seen.Add((clock.Elapsed.TotalSeconds, Now(process)));
            }

            await Task.Delay(Every, stop.Token).ContinueWith(_ => { }, TaskScheduler.Default);
        }
    }
}
