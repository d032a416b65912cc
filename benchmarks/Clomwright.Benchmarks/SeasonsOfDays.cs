using System.Globalization;
using Clomwright.Analysis.Days;
using Clomwright.Building;
using Clomwright.Study;

namespace Clomwright.Benchmarks;

/// <summary>A thousand seasons of a whole job, weather, crew and drying together, on one thread and on all.</summary>
/// <remarks>The reference is sorting ten million numbers by the library of the platform: it says how fast the machine was in the same run.</remarks>
internal static class SeasonsOfDays
{
    private const int Rounds = 5;

    public static int Run()
    {
        var house = StarterHouse.Make();
        var asked = HouseStudy.Of(house with { Site = house.Site with { Climate = "portland-or" } }).DaysAsked.Value!;
        var random = new Random(7);
        var numbers = Enumerable.Range(0, 10_000_000).Select(_ => random.NextDouble()).ToArray();
        var (all, one, sort) = (new List<Measure>(), new List<Measure>(), new List<Measure>());
        FromDrying.Of(asked with { Seasons = 100 });
        for (var round = 0; round < Rounds; round++)
        {
            all.Add(Measure.Of(() => FromDrying.Of(asked with { Threads = Environment.ProcessorCount })));
            one.Add(Measure.Of(() => FromDrying.Of(asked with { Threads = 1 })));
            var copy = (double[])numbers.Clone();
            sort.Add(Measure.Of(() => Array.Sort(copy)));
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{asked.Seasons} seasons, {asked.Amounts.Cob.Count} lifts in {asked.Sectors.Count} quarters, {Rounds} rounds, medians (least); load {File.ReadAllText("/proc/loadavg").Trim()}"));
        Print($"{Environment.ProcessorCount} threads", all, sort);
        Print("1 thread", one, sort);
        Print("reference: sorting ten million numbers", sort, sort);
        return 0;
    }

    private static void Print(string what, List<Measure> measured, List<Measure> reference)
    {
        var (median, least) = (Measure.Median(measured), Measure.Least(measured));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{what,-40} wall {median.Wall,7:F0} ms ({least.Wall:F0}), processor {median.Processor,7:F0} ms ({least.Processor:F0}), ratio {median.Wall / Measure.Median(reference).Wall:F2}"));
    }
}
