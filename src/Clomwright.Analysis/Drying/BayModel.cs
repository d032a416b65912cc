using Clomwright.Analysis.Weather;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Numerics.Diffusion;

namespace Clomwright.Analysis.Drying;

/// <summary>The bays of a house, as <see cref="DryingResult.Bays"/> lists them.</summary>
public sealed record BayModels(Sequence<BayModel> All);

/// <summary>One bay of a house made small enough for a thousand seasons: nine nodes through the wall, two rows to a lift, means of days. Made and fitted from the full model.</summary>
public sealed class BayModel
{
    private const int FitDays = 16;
    private const double Least = 0.25, Most = 4;
    private const double LowShare = 0.9, LowDays = 0.5, HighShare = 1.1, HighDays = 0.75;
    private static readonly double[] Kept = [0, 0.025, 0.075, 0.2, 0.5];

    private BayModel(DryingNumbers numbers, LiftMethod method, double[] heights, double[] thickness, DailyFaces faces)
    {
        (Heights, Thickness, Faces) = (heights, thickness, faces);
        Earth = WallRun.EarthOf(numbers);
        Medium = Earth.Medium();
        Strength = WallRun.StrengthOf(numbers, Earth);
        LaidWater = WallRun.LaidWater(numbers, method);
        Safety = numbers["drying-safety-" + WallRun.Word(method)];
        Skin = numbers["drying-skin"];
        SkinDepth = numbers["drying-skin-depth"];
        Foot = numbers["drying-foot"];
        Forms = method == LiftMethod.Formed ? numbers["drying-forms"] : 1;
        RoofLoad = numbers["drying-roof-load"];
        RoofSafety = numbers["drying-roof-safety"];
        Shares = [.. Kept, .. Kept.SkipLast(1).Reverse().Select(s => 1 - s)];
    }

    internal double[] Heights { get; }

    internal double[] Thickness { get; }

    internal DailyFaces Faces { get; }

    internal Earth Earth { get; }

    internal Medium Medium { get; }

    internal Strength Strength { get; }

    internal double LaidWater { get; }

    internal double Safety { get; }

    internal double Skin { get; }

    internal double SkinDepth { get; }

    internal double Foot { get; }

    internal double Forms { get; }

    internal double RoofLoad { get; }

    internal double RoofSafety { get; }

    internal double[] Shares { get; }

    /// <summary>How much better water goes between the few nodes than the full model's law says of their distance; fitted.</summary>
    public double Conductance { get; private init; } = 1;

    /// <summary>Days as the full model would have them, from days of this one: what nine of ten random windows of weather lay inside (<c>BayTests</c>).</summary>
    public static Band Band(double days) => new(Math.Max(0, LowShare * days - LowDays), HighShare * days + HighDays);

    /// <summary>An empty bay at the start of a season.</summary>
    /// <param name="rate">How many times as fast as by its numbers water moves in a lift and leaves it, by the lift from 0; above 0. Null for once.</param>
    public BayWall Start(Func<int, double>? rate = null) => new(this, rate);

    /// <summary>A bay of a house, fitted to the full model through the mean days of a month.</summary>
    /// <param name="numbers">What is assumed.</param>
    /// <param name="method">How it is laid.</param>
    /// <param name="heights">Of the lifts, bottom up, m.</param>
    /// <param name="thickness">Of the wall at each lift, m.</param>
    /// <param name="bay">Which way it faces.</param>
    /// <param name="weather">Mean days.</param>
    /// <param name="month">Month of the fit, 1 to 12.</param>
    internal static BayModel Of(DryingNumbers numbers, LiftMethod method, double[] heights, double[] thickness, DryingBay bay, WeatherResult weather, int month)
    {
        var hourly = new Faces(numbers, WallRun.EarthOf(numbers));
        var rough = new BayModel(numbers, method, heights, thickness, new DailyFaces(hourly, weather, bay.Normal));
        var full = Full(rough, numbers, hourly.Day(Dry(weather.Day(month)), bay.Normal));
        var day = BayDay.Of(month, Dry(weather.Day(month)));
        double Misfit(double log)
        {
            var wall = rough.With(Math.Exp(log)).Start();
            wall.Lay();
            var sum = 0.0;
            for (var d = 0; d < FitDays; d++)
            {
                wall.Advance(day);
                var (mean, skin) = (wall.Water(0) - full[d].Mean, wall.SkinWater - full[d].Skin);
                sum += mean * mean + skin * skin;
            }

            return sum;
        }

        return rough.With(Math.Exp(Golden(Misfit, Math.Log(Least), Math.Log(Most))));
    }

    private BayModel With(double conductance) => new(this, conductance);

    private BayModel(BayModel other, double conductance)
    {
        (Heights, Thickness, Faces, Earth, Medium, Strength) = (other.Heights, other.Thickness, other.Faces, other.Earth, other.Medium, other.Strength);
        (LaidWater, Safety, Skin, SkinDepth, Foot, Forms) = (other.LaidWater, other.Safety, other.Skin, other.SkinDepth, other.Foot, other.Forms);
        (RoofLoad, RoofSafety, Shares, Conductance) = (other.RoofLoad, other.RoofSafety, other.Shares, conductance);
    }

    /// <summary>The same hours on a day without rain.</summary>
    private static WeatherHour[] Dry(ReadOnlySpan<WeatherHour> hours)
    {
        var dry = hours.ToArray();
        for (var h = 0; h < dry.Length; h++)
        {
            dry[h] = dry[h] with { Rain = 0, WetShare = 0 };
        }

        return dry;
    }

    private static (double Mean, double Skin)[] Full(BayModel model, DryingNumbers numbers, Condition[] hours)
    {
        var run = new BayRun(model.Medium, model.Earth, model.Strength, model.Heights, model.Thickness, model.SkinDepth, model.Foot);
        var days = new DayPatterns([hours], new int[FitDays], model.Earth.Full * model.Earth.DryDensity);
        run.Lay(model.LaidWater);
        run.Shelter(0, model.Forms);
        var seen = new (double Mean, double Skin)[FitDays];
        for (var d = 0; d < FitDays; d++)
        {
            run.Advance(d * BayRun.Day, (d + 1) * BayRun.Day, days);
            seen[d] = (run.Water(0), run.SkinWater(0));
        }

        return seen;
    }

    /// <summary>The least of a function with one valley, by golden section.</summary>
    private static double Golden(Func<double, double> f, double from, double to)
    {
        var ratio = (Math.Sqrt(5) - 1) / 2;
        var (a, b) = (to - ratio * (to - from), from + ratio * (to - from));
        var (fa, fb) = (f(a), f(b));
        for (var round = 0; round < 24; round++)
        {
            if (fa < fb)
            {
                (to, b, fb) = (b, a, fa);
                a = to - ratio * (to - from);
                fa = f(a);
            }
            else
            {
                (from, a, fa) = (a, b, fb);
                b = from + ratio * (to - from);
                fb = f(b);
            }
        }

        return (from + to) / 2;
    }
}
