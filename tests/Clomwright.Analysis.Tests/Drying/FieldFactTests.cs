using System.Text.Json;
using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Weather;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Numerics.Diffusion;
using Clomwright.Testing;

namespace Clomwright.Analysis.Tests.Drying;

/// <summary>What builders and laboratories saw, as intervals. Rank published: each fact's own source stands in data/facts/drying.json; the default earth was chosen within published ranges with these facts in view, so they show consistency, not proof.</summary>
public sealed class FieldFactTests(ITestOutputHelper output)
{
    private const int DisagreeMost = 3;
    private const double FactorMost = 2;

    private sealed record Fact(string Id, string Method, string Climate, DateOnly Start, double Thickness, double[] Lifts, string Quantity, double Low, double High, string? Bay, Sequence<AssumedNumber> Assumed, string? Disagrees);

    private static IEnumerable<Fact> Facts()
    {
        using var document = JsonDocument.Parse(File.ReadAllText(Path.Combine(Counts.Root, "data", "facts", "drying.json")));
        foreach (var f in document.RootElement.GetProperty("facts").EnumerateArray().ToArray())
        {
            string Text(string name) => f.GetProperty(name).GetString()!;
            Assert.NotEmpty(Text("source"));
            yield return new(
                Text("id"), Text("method"), Text("climate"), DateOnly.ParseExact(Text("start"), "yyyy-MM-dd"), f.GetProperty("thickness").GetDouble(),
                [.. f.GetProperty("lifts").EnumerateArray().Select(v => v.GetDouble())], Text("quantity"), f.GetProperty("low").GetDouble(), f.GetProperty("high").GetDouble(),
                f.TryGetProperty("bay", out var bay) ? bay.GetString() : null,
                f.TryGetProperty("assumed", out var own) ? own.EnumerateObject().Select(a => new AssumedNumber(a.Name, a.Value.GetDouble())).ToSequence() : [],
                f.TryGetProperty("disagrees", out var why) ? why.GetString() : null);
        }
    }

    [Fact]
    public void TheModel_LandsInsideWhatWasSeen()
    {
        var outside = new List<string>();
        var seen = Facts().Select(fact => (Fact: fact, Value: Of(fact))).ToArray();
        foreach (var (fact, value) in seen)
        {
            var inside = value >= fact.Low && value <= fact.High;
            output.WriteLine($"{fact.Id,-10} {fact.Quantity,-10} {fact.Low,6} .. {fact.High,6}: {value,8:f2} {(inside ? "" : "OUTSIDE")}");
            if (!inside)
            {
                outside.Add(fact.Id);
                Assert.True(value >= fact.Low / FactorMost && value <= fact.High * FactorMost, $"{fact.Id}: {value:f1} is more than {FactorMost} times off {fact.Low} to {fact.High}");
                Assert.False(string.IsNullOrWhiteSpace(fact.Disagrees), $"{fact.Id}: {value:f1} lies outside {fact.Low} to {fact.High} and nothing says why");
            }
        }

        Assert.True(outside.Count <= DisagreeMost, string.Join(", ", outside));
    }

    private static double Of(Fact fact)
    {
        var numbers = DryingNumbers.Of(fact.Assumed);
        return fact.Quantity switch
        {
            "brick" => Brick(numbers, fact.Thickness),
            "crust" => Skin(numbers, fact),
            "rest" => Rest(numbers, fact),
            _ => Whole(numbers, fact),
        };
    }

    private static double Whole(DryingNumbers numbers, Fact fact)
    {
        var method = Enum.Parse<LiftMethod>(fact.Method, ignoreCase: true);
        Sequence<DryingBay> bays = [new("sun", 0, 1, Math.PI), new("shade", 1, 2, 0)];
        var wall = FromWeather.Simulate(numbers, method, fact.Lifts, [.. fact.Lifts.Select(_ => fact.Thickness)], bays, Mean(fact.Climate), fact.Start);
        var shade = fact.Bay == "shade";
        double Mean2(LiftDrying lift) => shade ? lift.Bays[1].FirmAfter ?? 999 : lift.Bays.Average(b => b.FirmAfter ?? 999);
        return fact.Quantity switch
        {
            "next-1" => Mean2(wall.Lifts[0]),
            "mean-next" => wall.Lifts.SkipLast(1).Average(Mean2),
            "laid-4" => wall.Lifts.Count > 3 ? wall.Lifts[3].LaidDay : 999,
            "plaster" => wall.PlasterDay ?? 9999,
            _ => throw new InvalidOperationException(fact.Quantity),
        };
    }

    private static WeatherResult Mean(string climate) => FromSite.Of(Climate.Find(climate)!, Climate.Find(climate)!.Latitude, Climate.Find(climate)!.Elevation);

    private static (BayRun Run, DayPatterns Days, Earth Earth) One(DryingNumbers numbers, Fact fact, int count)
    {
        var earth = WallRun.EarthOf(numbers);
        var weather = Mean(fact.Climate);
        var faces = new Faces(numbers, earth, roofed: fact.Quantity == "rest");
        var days = new DayPatterns(
            [.. Enumerable.Range(1, 12).Select(m => faces.Day(weather.Day(m), Math.PI / 2))], [.. Enumerable.Range(0, count).Select(d => fact.Start.AddDays(d).Month - 1)], earth.Full * earth.DryDensity);
        var run = new BayRun(earth.Medium(), earth, WallRun.StrengthOf(numbers, earth), fact.Lifts, [.. fact.Lifts.Select(_ => fact.Thickness)], 0.03, 1);
        run.Lay(WallRun.LaidWater(numbers, Enum.Parse<LiftMethod>(fact.Method, ignoreCase: true)));
        return (run, days, earth);
    }

    /// <summary>Days until the outer 30 mm are drier than plastic in the mean.</summary>
    private static double Skin(DryingNumbers numbers, Fact fact)
    {
        var (run, days, _) = One(numbers, fact, 60);
        for (var quarter = 1; quarter < 240; quarter++)
        {
            run.Advance((quarter - 1) * BayRun.Day / 4, quarter * BayRun.Day / 4, days);
            if (run.SkinWater(0) < numbers["drying-plastic-limit"])
            {
                return quarter / 4.0;
            }
        }

        return 999;
    }

    /// <summary>Days until the mean is within half a per cent of rest with the year's mean humidity.</summary>
    private static double Rest(DryingNumbers numbers, Fact fact)
    {
        var (run, days, earth) = One(numbers, fact, 4000);
        var rest = earth.AtRest(Mean(fact.Climate).Hours.Average(h => h.Humidity)) + 0.005;
        for (var day = 1; day < 4000; day++)
        {
            run.Advance((day - 1) * BayRun.Day, day * BayRun.Day, days);
            if (run.Water(0) < rest)
            {
                return day;
            }
        }

        return 9999;
    }

    /// <summary>Days until a brick that dries by its two large faces in still air is within half a per cent of rest.</summary>
    private static double Brick(DryingNumbers numbers, double thickness)
    {
        var earth = WallRun.EarthOf(numbers);
        var strip = new DiffusionStrip(earth.Medium(), StripGrid.Slab(StripGrid.Graded(24, 1.5), thickness)) { Tolerance = 0.1 };
        strip.Place(1, 0.22 * earth.DryDensity);
        var air = WetSurface.Surface(23, 0.5 * Psychrometrics.Saturation(23), WetSurface.Convection(0), 0, 4.9);
        var still = new Steady(new Condition(Earth.Fluidity(23), earth.VapourPermeability(23) * Psychrometrics.Saturation(23), air, air));
        for (var day = 1; day < 300; day++)
        {
            strip.Advance((day - 1) * BayRun.Day, day * BayRun.Day, still);
            if (strip.Mean(0) / earth.DryDensity < earth.AtRest(0.5) + 0.005)
            {
                return day;
            }
        }

        return 999;
    }
}
