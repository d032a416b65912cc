using System.Globalization;
using System.Runtime.InteropServices;

namespace Clomwright.Benchmarks;

/// <summary>Wall clock and processor time of a piece of work, milliseconds. Processor time counts all threads, and only this process.</summary>
internal readonly partial record struct Measure(double Wall, double Processor)
{
    private const int ProcessClock = 2;
    private const int MonotonicClock = 1;

    public static Measure Of(Action work)
    {
        var (wall, processor) = (Clock(MonotonicClock), Clock(ProcessClock));
        work();
        return new Measure(Clock(MonotonicClock) - wall, Clock(ProcessClock) - processor);
    }

    public static double Median(IEnumerable<double> values)
    {
        var sorted = values.Order().ToArray();
        return sorted.Length == 0 ? double.NaN : (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
    }

    public static Measure Median(IReadOnlyCollection<Measure> all) => new(Median(all.Select(m => m.Wall)), Median(all.Select(m => m.Processor)));

    public static Measure Least(IReadOnlyCollection<Measure> all) => new(all.Min(m => m.Wall), all.Min(m => m.Processor));

    /// <summary>The largest memory this process has had, bytes.</summary>
    public static long PeakMemory() => File.ReadLines("/proc/self/status")
        .Where(line => line.StartsWith("VmHWM", StringComparison.Ordinal))
        .Select(line => 1024 * long.Parse(line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[1], CultureInfo.InvariantCulture))
        .First();

    private static double Clock(int clock)
    {
        _ = ClockGetTime(clock, out var time);
        return time.Seconds * 1e3 + time.Nanoseconds / 1e6;
    }

    [LibraryImport("libc", EntryPoint = "clock_gettime")]
    private static partial int ClockGetTime(int clock, out TimeSpec time);

    private struct TimeSpec
    {
        public long Seconds;
        public long Nanoseconds;
    }
}
