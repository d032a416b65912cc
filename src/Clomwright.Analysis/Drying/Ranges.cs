using Clomwright.Building;

namespace Clomwright.Analysis.Drying;

/// <summary>Bands over the cases.</summary>
public static class Ranges
{
    private const double Gravity = 9.80665;

    /// <summary>Height that a free lift of the mix can stand, m: 2 su over unit weight and safety, never above what is practice for the method.</summary>
    /// <param name="numbers">What is assumed in each case.</param>
    /// <param name="method">How it is laid.</param>
    public static Band HeightToday(Func<DryingCase, DryingNumbers> numbers, LiftMethod method)
    {
        ArgumentNullException.ThrowIfNull(numbers);
        double In(DryingCase way)
        {
            var n = numbers(way);
            var earth = WallRun.EarthOf(n);
            var water = WallRun.LaidWater(n, method);
            var undrained = WallRun.StrengthOf(n, earth).Compressive(water) / 2;
            return Math.Min(n["drying-cap-" + WallRun.Word(method)], Strength.FreeHeight(undrained, earth.WetDensity(water) * Gravity, n["drying-free-safety"]));
        }

        var (a, b) = (In(DryingCase.Slow), In(DryingCase.Fast));
        return new(Math.Min(a, b), Math.Max(a, b));
    }
}
