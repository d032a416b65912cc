using Clomwright.Evidence;

namespace Clomwright.Geometry;

/// <summary>The trench bottom as a drain: at its depth at the far side, from there falling both ways round to where the pipe leaves.</summary>
/// <param name="Offset">Of the middle of the trench from the inside face at the wall base, m.</param>
/// <param name="Start">Height of the bottom at the far side, m.</param>
/// <param name="Half">From the far side to where the pipe leaves, either way round, m.</param>
/// <param name="Leaves">Station where the pipe leaves, m.</param>
/// <param name="Fall">At which the bottom is laid; rise over run.</param>
public sealed record DrainLine(double Offset, double Start, double Half, double Leaves, double Fall)
{
    /// <summary>Height of the bottom where the pipe leaves, m.</summary>
    public double End => Start - Fall * Half;

    /// <summary>How much deeper than its depth the trench is on the mean, m.</summary>
    public double MeanExtra => Fall * Half / 2;

    /// <summary>The drain of a house; null where trench, grade, or both of fall and outlet are not given.</summary>
    public static DrainLine? Of(HouseGeometry geometry)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        var house = geometry.House;
        if (house.Site.Grade is not { } grade || house.Trench is not { Depth.Nanometres: > 0, Width.Nanometres: > 0 } trench)
        {
            return null;
        }

        var (inside, outside) = geometry.Stem;
        var offset = (inside + outside) / 2;
        var half = geometry.Curve.OffsetLength(offset) / 2;
        var start = grade.Metres - trench.Depth.Metres;
        var run = half + Math.Max(0, trench.OutletRun?.Metres ?? 0);
        double? spread = trench.Outlet is { } outlet ? (start - outlet.Metres) / run : null;
        var fall = trench.Fall?.RiseOverRun ?? spread;
        return fall is { } laid && half > 0 && double.IsFinite(laid) ? new DrainLine(offset, start, half, LeavesAt(geometry), laid) : null;
    }

    /// <summary>Along the middle of the trench from a station the shorter way to where the pipe leaves, m.</summary>
    public double ToPipe(PlanCurve curve, double station)
    {
        ArgumentNullException.ThrowIfNull(curve);
        var ahead = curve.Wrap(station - Leaves);
        var way = curve.OffsetArc(Leaves, Leaves + ahead, Offset);
        return Math.Max(0, Math.Min(way, 2 * Half - way));
    }

    /// <summary>The numbered points of the setting-out with the height of the trench bottom at each, clockwise from the zero mark, and the two ends of the drain among them.</summary>
    public Sequence<DrainPoint> Points(HouseGeometry geometry)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        var curve = geometry.Curve;
        var far = Far(curve);
        return SettingOuts.Points(geometry).Append(("pipe", Leaves)).Append(("far side", far)).OrderBy(p => p.Item2)
            .Select(p => (p.Item1, p.Item2, ToPipe: ToPipe(curve, p.Item2)))
            .Select(p => new DrainPoint(p.Item1, p.Item2, p.ToPipe, End + Fall * p.ToPipe)).ToSequence();
    }

    /// <summary>Station of the far side: half the trench away from where the pipe leaves.</summary>
    private double Far(PlanCurve curve)
    {
        var (low, high) = (0.0, curve.Length);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = curve.OffsetArc(Leaves, Leaves + middle, Offset) < Half ? (middle, high) : (low, middle);
        }

        return curve.Wrap(Leaves + low);
    }

    private static double LeavesAt(HouseGeometry geometry) =>
        geometry.House.Trench?.OutletBearing is { } bearing && geometry.Curve.StationsAt(bearing.Radians) is [var first, ..] ? first : 0;
}

/// <summary>The trench bottom at one point.</summary>
/// <param name="Name"><c>zero</c>, <c>point 3</c> as the setting-out numbers them, <c>pipe</c> where the pipe leaves, <c>far side</c> where the fall begins.</param>
/// <param name="Station">Along the inside face, m.</param>
/// <param name="ToPipe">Along the middle of the trench to where the pipe leaves, m.</param>
/// <param name="Height">Of the bottom against the finished floor, m.</param>
public sealed record DrainPoint(string Name, double Station, double ToPipe, double Height);
