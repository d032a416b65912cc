using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Weather;
using Clomwright.Numerics.Diffusion;

namespace Clomwright.Benchmarks.Drying;

/// <summary>A wall of 7 lifts in 24 bays through 120 days, no two of them alike; a lift is laid every 12 days.</summary>
internal sealed class HourlyWall
{
    public const int BayCount = 24;
    public const int DayCount = 120;
    public const int LiftCount = 7;
    public const int DaysApart = 12;
    public const double LaidWater = 0.245;
    public const double Height = 0.3;
    public const double Crust = 0.015;

    public HourlyWall()
    {
        Numbers = DryingNumbers.Of([]);
        Earth = WallRun.EarthOf(Numbers);
        Medium = Earth.Medium();
        var climate = Climate.Find("portland-or")!;
        var mean = FromSite.Of(climate, climate.Latitude, climate.Elevation).From(new DateOnly(2027, 5, 1), DayCount);
        Weather = [.. mean.Select((hour, h) => Real(hour, h / 24))];
        Grid = new(
            StripGrid.Graded(12, 1.8), [.. Enumerable.Repeat(new[] { Height / 2, Height / 2 - Crust, Crust }, LiftCount).SelectMany(r => r)],
            [.. Enumerable.Range(0, LiftCount).SelectMany(l => Enumerable.Repeat(0.5 - 0.015 * l, 3))]);
    }

    public DryingNumbers Numbers { get; }

    public Earth Earth { get; }

    public Medium Medium { get; }

    public WeatherHour[] Weather { get; }

    public StripGrid Grid { get; }

    /// <summary>What surrounds a bay in each hour.</summary>
    public Condition[][] Conditions(int bay)
    {
        var faces = new Faces(Numbers, Earth);
        return [.. Enumerable.Range(0, DayCount).Select(d => faces.Day(Weather.AsSpan(24 * d, 24), 2 * Math.PI * bay / BayCount))];
    }

    /// <summary>One bay from the first lift to the last day.</summary>
    public DiffusionStrip Simulate(Condition[][] conditions, double tolerance, double stepMax)
    {
        var days = new DayPatterns(conditions, [.. Enumerable.Range(0, DayCount)], Earth.Full * Earth.DryDensity);
        var strip = new DiffusionStrip(Medium, Grid) { Tolerance = tolerance, StepMax = stepMax };
        for (var lift = 0; lift < LiftCount; lift++)
        {
            strip.Place(3, LaidWater * Earth.DryDensity);
            var last = lift == LiftCount - 1;
            strip.Advance(lift * DaysApart * 86_400.0, (last ? DayCount : (lift + 1) * DaysApart) * 86_400.0, days);
        }

        return strip;
    }

    /// <summary>Fronts go through about every five days: warm, cool, wet, windy, cloudy.</summary>
    private static WeatherHour Real(in WeatherHour hour, int day)
    {
        var front = Math.Sin(1.27 * day) + 0.6 * Math.Sin(2.93 * day + 1);
        return hour with
        {
            Temperature = hour.Temperature + 2.5 * front, VapourPressure = Math.Min(hour.VapourPressure * (1 - 0.12 * front), 0.97 * Psychrometrics.Saturation(hour.Temperature + 2.5 * front)),
            Wind = hour.Wind * (1 + 0.3 * Math.Cos(2.1 * day)), BeamLevel = hour.BeamLevel * Math.Max(0.1, 1 + 0.5 * front), Rain = front < -0.6 ? 4 * hour.Rain : 0, WetShare = front < -0.6 ? 1 : 0,
        };
    }
}
