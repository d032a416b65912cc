using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Weather;
using Clomwright.Building;
using Clomwright.Numerics;
using Clomwright.Numerics.Diffusion;
using Clomwright.Testing;

namespace Clomwright.Analysis.Tests.Drying;

/// <summary>The small model of a bay against the full one.</summary>
public sealed class BayTests(ITestOutputHelper output)
{
    private const int DaysLong = 90;

    /// <summary>A stretch of weather that no month's mean has: each day warmer or colder, drier, windier, brighter, wet or not, with a memory of two or three days.</summary>
    private static WeatherHour[][] Window(WeatherResult weather, int month, ulong stream, int length = DaysLong)
    {
        var random = new Philox(56);
        const double memory = .65;
        double warm = 0, damp = 0, light = 0;
        return [.. Enumerable.Range(0, length).Select(d =>
        {
            var at = (ulong)(8 * d);
            var fresh = Math.Sqrt(1 - memory * memory);
            warm = memory * warm + fresh * random.Normal(stream, at);
            damp = memory * damp + fresh * random.Normal(stream, at + 1);
            light = memory * light + fresh * random.Normal(stream, at + 2);
            var wind = Math.Exp(.4 * random.Normal(stream, at + 3) - .08);
            var mean = weather.Day(month).ToArray();
            var wet = random.Uniform(stream, at + 4) < mean[0].WetShare;
            var sun = Math.Clamp(1 + .3 * light - (wet ? .3 : 0), .15, 1.4);
            return mean.Select(h =>
            {
                var t = h.Temperature + 3 * warm;
                var e = Math.Min(.98 * Psychrometrics.Saturation(t), h.VapourPressure * Math.Exp(.15 * damp));
                return h with
                {
                    Temperature = t, VapourPressure = e, Wind = h.Wind * wind, BeamLevel = h.BeamLevel * sun * sun, DiffuseLevel = h.DiffuseLevel,
                    LongWaveLoss = h.LongWaveLoss * Math.Min(1.2, sun), WetShare = wet ? 1 : 0, Rain = wet ? h.Rain / Math.Max(.05, mean[0].WetShare) : 0,
                };
            }).ToArray();
        })];
    }

    private static (double Next, double? Roof)? Full(DryingNumbers numbers, LiftMethod method, double[] heights, double[] thickness, double normal, WeatherHour[][] window, int lifts)
    {
        var earth = WallRun.EarthOf(numbers);
        var faces = new Faces(numbers, earth);
        var days = new DayPatterns([.. window.Select(d => faces.Day(d, normal))], [.. Enumerable.Range(0, window.Length)], earth.Full * earth.DryDensity);
        var run = new BayRun(earth.Medium(), earth, WallRun.StrengthOf(numbers, earth), heights, thickness, numbers["drying-skin-depth"], numbers["drying-foot"]);
        var (time, laid) = (0.0, WallRun.LaidWater(numbers, method));
        for (var lift = 0; lift < lifts; lift++)
        {
            run.Lay(laid);
            run.Shelter(lift, method == LiftMethod.Formed ? numbers["drying-forms"] : 1);
            double? firm = null;
            for (var quarter = 1; firm is null; quarter++)
            {
                if (time + quarter / 4.0 > window.Length)
                {
                    return null;
                }

                run.Advance((time + (quarter - 1) / 4.0) * BayRun.Day, (time + quarter / 4.0) * BayRun.Day, days);
                firm = run.Ready(lift + 1 < heights.Length ? heights[lift + 1] : 0, laid, numbers["drying-safety-" + WallRun.Word(method)], numbers["drying-skin"]) >= 1 ? quarter / 4.0 : null;
            }

            run.Shelter(lift, 1);
            // The next comes with a day.
            var whole = Math.Ceiling(firm.Value);
            if (lift == lifts - 1)
            {
                time += firm.Value;
                for (var at = Math.Ceiling(time); at < window.Length; at++)
                {
                    run.Advance(time * BayRun.Day, at * BayRun.Day, days);
                    time = at;
                    if (run.Safety(lineLoad: numbers["drying-roof-load"]) >= numbers["drying-roof-safety"])
                    {
                        return (firm.Value, at);
                    }
                }

                return (firm.Value, null);
            }

            if (time + whole > window.Length)
            {
                return null;
            }

            run.Advance((time + firm.Value) * BayRun.Day, (time + whole) * BayRun.Day, days);
            time += whole;
        }

        return null;
    }

    private static (double Next, double? Roof)? Small(BayModel model, int month, WeatherHour[][] window, int lifts)
    {
        var wall = model.Start();
        wall.Lay();
        double? next = null;
        for (var d = 0; d < window.Length; d++)
        {
            wall.Advance(BayDay.Of(month, window[d]));
            if (wall.FirmAfter is { } firm)
            {
                if (wall.Lifts < lifts)
                {
                    wall.Lay();
                }
                else if (wall.RoofShare >= 1)
                {
                    return (firm, d + 1);
                }
                else
                {
                    next = firm;
                }
            }
        }

        return next is { } n ? (n, null) : null;
    }

    // Rank independent: the full model, which knows nothing of the small one's nodes, days and fit. 200 windows: month, place, face, thickness, method and each day's weather drawn by a seeded stream.
    // The band that the small model says must hold nine of ten, and be no wider than it has to be.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void DaysToNext_InRandomWeather(bool formed)
    {
        var random = new Philox(7);
        var climates = Climate.All;
        List<(double Full, double Small)> next = [], roof = [];
        var windows = formed ? Counts.Of(40, 200) : Counts.Of(60, 200);
        var lost = 0;
        for (var n = 0; n < windows; n++)
        {
            double Draw(ulong what) => random.Uniform(what, (ulong)n);
            var climate = climates[(int)(climates.Count * Draw(0))];
            var month = 4 + (int)(6 * Draw(1));
            // Formed walls wait for weeks: one or two lifts, in windows twice as long.
            var method = formed ? LiftMethod.Formed : Draw(2) < .5 ? LiftMethod.Tossed : LiftMethod.Forked;
            double[] thickness = [.. Enumerable.Repeat(.35 + .25 * Draw(3), 4)];
            double[] heights = [.. Enumerable.Repeat(method == LiftMethod.Formed ? .5 + .3 * Draw(4) : method == LiftMethod.Forked ? .45 + .15 * Draw(4) : .25 + .15 * Draw(4), 4)];
            var normal = 2 * Math.PI * Draw(5);
            var lifts = 1 + (int)((formed ? 2 : 3) * Draw(6));
            var numbers = DryingNumbers.Of([]);
            var weather = FromSite.Of(climate, climate.Latitude, climate.Elevation);
            var window = Window(weather, month, (ulong)n, formed ? 2 * DaysLong : DaysLong);
            var full = Full(numbers, method, heights, thickness, normal, window, lifts);
            var small = Small(BayModel.Of(numbers, method, heights, thickness, new("bay", 0, 1, normal), weather, month), month, window, lifts);
            if (full is null || small is null)
            {
                lost++;
                continue;
            }

            next.Add((full.Value.Next, small.Value.Next));
            if (full.Value.Roof is { } whole && small.Value.Roof is { } less)
            {
                roof.Add((whole, less));
            }
        }

        double Inside(List<(double Full, double Small)> seen) => seen.Average(s => BayModel.Band(s.Small) is var band && s.Full >= band.Low && s.Full <= band.High ? 1.0 : 0);
        foreach (var (what, seen) in new[] { ("next lift", next), ("roof", roof) })
        {
            var wrong = seen.Select(s => s.Small - s.Full).Order().ToArray();
            output.WriteLine($"{what}: {seen.Count} windows, mean {seen.Average(s => s.Full):f1} d, bias {wrong.Average():f2} d, rms {Math.Sqrt(wrong.Average(x => x * x)):f2} d, "
                + $"5 % {wrong[wrong.Length / 20]:f2}, 95 % {wrong[^(wrong.Length / 20 + 1)]:f2} d, inside the band {Inside(seen):p0}");
        }

        // Fewer than one in twenty are reached by one model only or by none in the time looked at.
        Assert.True(lost <= windows / 20, $"{lost} lost");
        // No wider than it has to be shows only in many windows. Formed walls' roofs lie outside a little more often (88 % of 200 inside), as the README says; of 40 windows a standard deviation is 5 %.
        Assert.InRange(Inside(next), .9, Counts.Long ? .99 : 1);
        Assert.InRange(Inside(roof), !formed ? .9 : Counts.Long ? .85 : .78, 1);
    }

    // Rank property: as for the full model, a thicker wall never dries faster, a drier day never slower; a house has as many small bays as bays.
    [Fact]
    public void ThickerAndWetter_NeverFaster()
    {
        var climate = Climate.Find("portland-or")!;
        var weather = FromSite.Of(climate, climate.Latitude, climate.Elevation);
        var day = BayDay.Of(6, weather.Day(6)) with { Wet = false };
        double After(double thickness, BayDay each)
        {
            var wall = BayModel.Of(DryingNumbers.Of([]), LiftMethod.Forked, [.5, .5], [thickness, thickness], new("bay", 0, 1, 1), weather, 6).Start();
            wall.Lay();
            for (var d = 0; d < DaysLong && wall.FirmAfter is null; d++)
            {
                wall.Advance(each);
            }

            return wall.FirmAfter ?? DaysLong;
        }

        Assert.True(After(.35, day) < After(.45, day) && After(.45, day) < After(.6, day));
        Assert.True(After(.45, day with { VapourPressure = .8 * day.VapourPressure }) < After(.45, day));
        Assert.True(After(.45, day with { Wet = true }) > After(.45, day));
        var geometry = Geometry.FromBuilding.Of(Houses.HeronPoint);
        var models = FromWeather.Reduced(geometry, FromSite.Of(Houses.HeronPoint.Site)).Value!;
        Assert.Equal(Bays.Of(geometry).Count, models.All.Count);
        Assert.All(models.All, m => Assert.InRange(m.Conductance, .5, 2));
    }
}
