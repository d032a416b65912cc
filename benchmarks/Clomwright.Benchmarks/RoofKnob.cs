using System.Globalization;
using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Study;

namespace Clomwright.Benchmarks;

/// <summary>The full roof recomputed while a knob is turned: the ring of a complete house grows a little at every step.</summary>
/// <remarks>The reference is sorting 100 000 numbers by the library of the platform: it says how fast the machine was in the same run.</remarks>
internal static class RoofKnob
{
    private const int Warm = 60;
    private const int Steps = 200;

    public static int Run()
    {
        var house = Complete();
        var roof = new List<Measure>();
        var all = new List<Measure>();
        var sort = new List<Measure>();
        var random = new Random(7);
        var numbers = Enumerable.Range(0, 100_000).Select(_ => random.NextDouble()).ToArray();
        var earlier = HouseStudy.Of(house);
        _ = earlier.Findings;
        for (var i = 0; i < Warm + Steps; i++)
        {
            var turned = house with { Roof = ((Roof.Reciprocal)house.Roof!) with { RingRadius = new Length((long)((27 + 0.01 * (i % 100)) * Length.PerInch)) } };
            var geometry = FromBuilding.Of(turned);
            var alone = Measure.Of(() => FromGeometry.Of(geometry));
            HouseStudy? next = null;
            var whole = Measure.Of(() => _ = (next = HouseStudy.Of(turned, StudyOptions.Quick, earlier)).Findings);
            earlier = next!;
            var copy = (double[])numbers.Clone();
            var reference = Measure.Of(() => Array.Sort(copy));
            if (i >= Warm)
            {
                roof.Add(alone);
                all.Add(whole);
                sort.Add(reference);
            }
        }

        Print("roof from geometry", roof, sort);
        Print("geometry, roof, wall top and findings", all, sort);
        Print("reference: sorting 100 000 numbers", sort, sort);
        return 0;
    }

    private static void Print(string what, List<Measure> measured, List<Measure> reference)
    {
        var (median, slow) = (Measure.Median(measured), measured.Select(m => m.Processor).Order().ElementAt(measured.Count * 95 / 100));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{what,-40} wall {median.Wall,7:F2} ms, processor {median.Processor,7:F2} ms (95 %: {slow:F2}), ratio {median.Processor / Measure.Median(reference).Processor:F2}"));
    }

    private static House Complete()
    {
        var house = StarterHouse.Make();
        return house with
        {
            Site = house.Site with { Loads = "asce7-16", GroundSnow = new Stress(1200), WindSpeed = new Speed(47), Exposure = "B", SeismicSds = 0.25, SeismicSd1 = 0.12, SeismicS1 = 0.1, RiskCategory = "II", SoilBearing = new Stress(100_000) },
            Roof = ((Roof.Reciprocal)house.Roof!) with { Poles = 12, EdgeBoard = Length.FromInches(6), Secondaries = new Secondaries(1, Length.FromInches(5)) },
        };
    }
}
