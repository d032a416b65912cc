using Clomwright.Analysis.Weather;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Drying;

/// <summary>Days in the three cases; null where that was not reached in the time looked at.</summary>
/// <param name="Fast">Everything uncertain taken the fast way.</param>
/// <param name="Middle">As likely as not.</param>
/// <param name="Slow">Everything uncertain taken the slow way.</param>
public readonly record struct Forecast(double? Fast, double? Middle, double? Slow);

/// <summary>The same wall begun on the first of a month.</summary>
/// <param name="Month">1 to 12.</param>
/// <param name="NextSunny">Days until the next lift may go on, in the bay with most sun; the soonest lift the fast way, the latest the slow way, the median in the middle.</param>
/// <param name="NextShaded">The same in the bay with least sun.</param>
/// <param name="Walls">Days from the first lift until the last is laid.</param>
/// <param name="Roof">Days from the first lift until the roof may land.</param>
/// <param name="Plaster">Days from the first lift until plaster may go on.</param>
/// <param name="Frost">Whether the nights of the month, or of the next while the last lift of the middle case is young, freeze in the mean.</param>
public sealed record StartMonth(int Month, Forecast NextSunny, Forecast NextShaded, Forecast Walls, Forecast Roof, Forecast Plaster, bool Frost);

/// <summary>The wall begun in each month of the year.</summary>
/// <param name="Sunny">The bay that gets most sun in the year.</param>
/// <param name="Shaded">The bay that gets least.</param>
/// <param name="Months">January first.</param>
/// <param name="Looked">Days looked at, from the first lift.</param>
public sealed record StartYear(DryingBay Sunny, DryingBay Shaded, Sequence<StartMonth> Months, int Looked);

/// <summary>Runs the wall from each month, with the two bays that differ most in sun; the ring waits for the later one.</summary>
internal static class StartMonths
{
    public const int Looked = 700;

    /// <summary>A year without a leap day: only the months matter.</summary>
    private const int Year = 2001;

    public static StartYear Of(HouseGeometry geometry, WeatherResult weather, Func<DryingCase, DryingNumbers> numbers, double[] heights, double[] thickness)
    {
        var bays = Bays.Of(geometry);
        var (sunny, shaded) = (bays.MaxBy(b => Milestones.Sun(b, weather))!, bays.MinBy(b => Milestones.Sun(b, weather))!);
        Sequence<DryingBay> two = [sunny, shaded];
        var months = Enumerable.Range(1, 12).ToArray().EachBesideOthers(month =>
        {
            WallDrying Run(DryingCase way) =>
                FromWeather.Simulate(numbers(way).Together, geometry.House.Lifts.Method, heights, thickness, two, weather, new DateOnly(Year, month, 1), Looked, goal: DryingGoal.Plaster);
            return Told(month, Run(DryingCase.Fast), Run(DryingCase.Middle), Run(DryingCase.Slow), heights.Length, weather, numbers(DryingCase.Middle)["drying-frost-days"]);
        }).ToSequence();
        return new(sunny, shaded, months, Looked);
    }

    private static StartMonth Told(int month, WallDrying fast, WallDrying middle, WallDrying slow, int lifts, WeatherResult weather, double young)
    {
        Forecast Next(int bay)
        {
            // The last lift waits for the bond beam, not for a lift.
            var waits = Math.Max(1, lifts - 1);
            double?[] In(WallDrying wall) => [.. wall.Lifts.Take(waits).Select(l => l.Bays[bay].FirmAfter)];
            var (a, b, c) = (In(fast), In(middle), In(slow));
            return new(a.Min(), Median(b), c.Length < waits || c.Any(x => x is null) ? null : c.Max());
        }

        double? Walls(WallDrying wall) => wall.Lifts.Count == lifts ? wall.Lifts[^1].LaidDay : null;
        var last = (int)Math.Ceiling((Walls(middle) ?? 0) + young);
        var frost = Enumerable.Range(0, last).Any(d => weather.Climate.Months[new DateOnly(Year, month, 1).AddDays(d).Month - 1].Low < 0);
        return new(
            month, Next(0), Next(1), new(Walls(fast), Walls(middle), Walls(slow)), new(fast.RoofDay, middle.RoofDay, slow.RoofDay),
            new(fast.PlasterDay, middle.PlasterDay, slow.PlasterDay), frost);
    }

    /// <summary>Null where as many as half are not reached.</summary>
    private static double? Median(double?[] values) => values.Length == 0 ? null : values.OrderBy(v => v ?? double.PositiveInfinity).ElementAt(values.Length / 2);
}
