using Clomwright.Analysis.Weather;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Drying;

/// <summary>How far a run of the wall goes.</summary>
public enum DryingGoal
{
    /// <summary>Until the last lift is firm.</summary>
    Walls,

    /// <summary>Until the roof may land.</summary>
    Roof,

    /// <summary>Until plaster may go on.</summary>
    Plaster,
}

/// <summary>All that milestones depend on: where it is equal, they are.</summary>
/// <param name="Method">How it is laid.</param>
/// <param name="Heights">Of the lifts, m.</param>
/// <param name="Thickness">Of the wall at each lift, m.</param>
/// <param name="Start">Day of the first lift.</param>
/// <param name="Site">Whose weather.</param>
/// <param name="Assumed">What the author says.</param>
/// <param name="Known">What the rest of the house tells.</param>
/// <param name="Goal">How far it is asked.</param>
public sealed record MilestoneQuestion(
    LiftMethod Method, Sequence<double> Heights, Sequence<double> Thickness, DateOnly Start, Site Site, Sequence<AssumedNumber> Assumed, Sequence<KnownNumber> Known, DryingGoal Goal);

/// <summary>When lifts are laid, the roof may land and plaster may go on, followed only on the two sides that differ most in sun: the ring waits for the later, and no other side is later than both.</summary>
/// <param name="Start">Day of the first lift.</param>
/// <param name="Fast">Days from the first lift, everything uncertain taken the fast way.</param>
/// <param name="Slow">The slow way.</param>
/// <param name="Looked">Days looked at.</param>
public sealed record DryingMilestones(DateOnly Start, WallMilestones Fast, WallMilestones Slow, int Looked);

/// <summary>The milestones of one case; null where not reached in the days looked at, or not asked.</summary>
/// <param name="Laid">Day of each lift that was laid.</param>
/// <param name="All">Whether that is every lift.</param>
/// <param name="Roof">Day on which the roof may land.</param>
/// <param name="Plaster">Day on which plaster may go on.</param>
/// <param name="FrostNights">Nights to be expected below freezing in the young days of the lift that has most of them.</param>
public sealed record WallMilestones(Sequence<double> Laid, bool All, double? Roof, double? Plaster, double FrostNights);

/// <summary>Works them out.</summary>
internal static class Milestones
{
    public const int Looked = 1000;
    private const int Ways = 8;

    public static DryingMilestones Of(MilestoneQuestion asked, WeatherResult weather)
    {
        var sides = Enumerable.Range(0, Ways).Select(i => new DryingBay("side", 0, 1, 2 * Math.PI * i / Ways)).ToArray();
        Sequence<DryingBay> two = [sides.MaxBy(s => Sun(s, weather))!, sides.MinBy(s => Sun(s, weather))!];
        WallMilestones Run(DryingCase way)
        {
            var numbers = DryingNumbers.Of(asked.Assumed, way, asked.Known).Together;
            var wall = FromWeather.Simulate(numbers, asked.Method, [.. asked.Heights], [.. asked.Thickness], two, weather, asked.Start, Looked, goal: asked.Goal);
            var laid = wall.Lifts.Select(l => l.LaidDay).ToSequence();
            return new(laid, laid.Count == asked.Heights.Count, wall.RoofDay, wall.PlasterDay,
                laid.Max(day => Frost.Nights(weather.Climate, asked.Start.AddDays((int)day), (int)numbers["drying-frost-days"])));
        }

        return new(asked.Start, Run(DryingCase.Fast), Run(DryingCase.Slow), Looked);
    }

    /// <summary>Sun that a side gets in the mean days of the year.</summary>
    public static double Sun(DryingBay bay, WeatherResult weather)
    {
        var sum = 0.0;
        foreach (var hour in weather.Hours)
        {
            sum += hour.Upright(bay.Normal);
        }

        return sum;
    }
}
