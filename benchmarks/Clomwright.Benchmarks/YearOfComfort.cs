using System.Globalization;
using Clomwright.Analysis.Comfort;
using Clomwright.Analysis.Weather;
using Clomwright.Building;
using Clomwright.Study;

namespace Clomwright.Benchmarks;

/// <summary>A year of a full house, hour by hour, heated and not, sixty days before it run for its mass to settle; and everything else of its comfort with it.</summary>
/// <remarks>The reference is sorting a million numbers by the library of the platform: it says how fast the machine was in the same run.</remarks>
internal static class YearOfComfort
{
    private const int Rounds = 9;

    public static int Run()
    {
        var house = StarterHouse.Make();
        house = house with { Site = house.Site with { Climate = "portland-or" } };
        var study = HouseStudy.Of(house);
        var (geometry, roof, weather) = (study.Geometry, study.Roof, study.Weather);
        var random = new Random(7);
        var numbers = Enumerable.Range(0, 1_000_000).Select(_ => random.NextDouble()).ToArray();
        var year = FromRoof.YearOf(geometry, roof, weather.Value!, 1600);
        year();
        FromRoof.Of(geometry, roof, weather, 1600);
        var (years, all, sort) = (new List<Measure>(), new List<Measure>(), new List<Measure>());
        for (var round = 0; round < Rounds; round++)
        {
            years.Add(Measure.Of(() => year()));
            all.Add(Measure.Of(() => FromRoof.Of(geometry, roof, weather, 1600)));
            var copy = (double[])numbers.Clone();
            sort.Add(Measure.Of(() => Array.Sort(copy)));
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"a year of {geometry.House.Name}, {Rounds} rounds, medians (least); load {File.ReadAllText("/proc/loadavg").Trim()}"));
        Print("a year, heated and not, and the simple hour", years);
        Print("all of its comfort: parts, edges, weather, year, damp", all);
        Print("reference: sorting a million numbers", sort);
        return 0;
    }

    private static void Print(string what, List<Measure> measured)
    {
        var (median, least) = (Measure.Median(measured), Measure.Least(measured));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what,-60} wall {median.Wall,7:F0} ms ({least.Wall:F0}), processor {median.Processor,7:F0} ms ({least.Processor:F0})"));
    }
}
