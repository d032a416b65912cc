using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Weather;
using Clomwright.Building;
using Clomwright.Numerics.Diffusion;

namespace Clomwright.Benchmarks.Drying;

/// <summary>120 days of a bay of seven lifts: the small model by the day beside the full one by the hour, lifts laid a week apart in both.</summary>
internal static class BayComparison
{
    private const int DayCount = 120;
    private const int LiftCount = 7;
    private const int Apart = 7;
    private const int Rounds = 200;

    public static int Run()
    {
        Console.WriteLine($"{Environment.ProcessorCount} processors, .NET {Environment.Version}, load {File.ReadAllText("/proc/loadavg").Trim()}");
        var climate = Climate.Find("portland-or")!;
        var weather = FromSite.Of(climate, climate.Latitude, climate.Elevation);
        var numbers = DryingNumbers.Of([]);
        double[] heights = [.. Enumerable.Repeat(0.3, LiftCount)], thickness = [.. Enumerable.Repeat(0.45, LiftCount)];
        var bay = new DryingBay("bay", 0, 1, 1);
        BayModel Fit() => BayModel.Of(numbers, LiftMethod.Tossed, heights, thickness, bay, weather, 6);
        var model = Fit();
        var day = BayDay.Of(6, weather.Day(6));
        void Small()
        {
            var wall = model.Start();
            for (var d = 0; d < DayCount; d++)
            {
                if (d % Apart == 0 && wall.Lifts < LiftCount)
                {
                    wall.Lay();
                }

                wall.Advance(day);
            }
        }

        var earth = WallRun.EarthOf(numbers);
        var faces = new Faces(numbers, earth);
        void Full()
        {
            var days = new DayPatterns([faces.Day(weather.Day(6), bay.Normal)], new int[DayCount], earth.Full * earth.DryDensity);
            var run = new BayRun(earth.Medium(), earth, WallRun.StrengthOf(numbers, earth), heights, thickness, numbers["drying-skin-depth"], numbers["drying-foot"]);
            for (var d = 0; d < DayCount; d += Apart)
            {
                if (run.Lifts < LiftCount)
                {
                    run.Lay(WallRun.LaidWater(numbers, LiftMethod.Tossed));
                }

                run.Advance(d * BayRun.Day, Math.Min(DayCount, d + Apart) * BayRun.Day, days);
            }
        }

        Say("fitted, once", Fit, Rounds / 10);
        Say("small", Small, Rounds);
        Say("full", Full, Rounds / 10);
        return 0;
    }

    private static void Say<T>(string what, Func<T> work, int rounds) => Say(what, () => { _ = work(); }, rounds);

    private static void Say(string what, Action work, int rounds)
    {
        var all = Enumerable.Range(0, 2 * rounds).Select(_ => Measure.Of(work)).Skip(rounds).ToList();
        var (median, least) = (Measure.Median(all), Measure.Least(all));
        Console.WriteLine($"{what}: {median.Wall:f3} ms wall ({least.Wall:f3}), {median.Processor:f3} ms processor ({least.Processor:f3})");
    }
}
