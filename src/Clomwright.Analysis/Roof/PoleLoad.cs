using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>A vertical load along one pole: between neighbouring stations it varies evenly, and points carry forces. Plan distances from the foot, inward positive, m; downward positive, N.</summary>
/// <remarks>Loads on the same stations add and scale. Each piece keeps the whole force and first moment of what it stands for, whatever the spacing of stations.</remarks>
public sealed class PoleLoad
{
    private readonly Sequence<double> stations;
    private readonly double[] start;
    private readonly double[] end;
    private readonly double[] points;

    private PoleLoad(Sequence<double> stations, double[] start, double[] end, double[] points)
    {
        this.stations = stations;
        this.start = start;
        this.end = end;
        this.points = points;
        var x = stations.AsSpan();
        for (var j = 0; j < start.Length; j++)
        {
            double x1 = x[j], x2 = x[j + 1], h = x2 - x1;
            Total += h * (start[j] + end[j]) / 2;
            PlateMoment += h * (start[j] * (2 * x1 + x2) + end[j] * (x1 + 2 * x2)) / 6;
        }

        for (var j = 0; j < points.Length; j++)
        {
            Total += points[j];
            PlateMoment += points[j] * x[j];
        }
    }

    /// <summary>Plan distances of the stations, ascending.</summary>
    public Sequence<double> Stations => stations;

    /// <summary>W: the whole load, N.</summary>
    public double Total { get; }

    /// <summary>M_o = W x: first moment about the plate, N m.</summary>
    public double PlateMoment { get; }

    /// <summary>No load.</summary>
    public static PoleLoad None(Sequence<double> stations) =>
        new(stations, new double[stations.Count - 1], new double[stations.Count - 1], new double[stations.Count]);

    /// <summary>A load varying evenly between its values at the stations, N/m of plan length.</summary>
    public static PoleLoad Line(Sequence<double> stations, Func<double, double> perMetre)
    {
        double[] values = [.. stations.Select(perMetre)];
        return new(stations, values[..^1], values[1..], new double[values.Length]);
    }

    /// <summary>A load known by the force on each piece and by that force's moment about the piece's outer end.</summary>
    public static PoleLoad Pieces(Sequence<double> stations, ReadOnlySpan<double> force, ReadOnlySpan<double> moment)
    {
        var pieces = force.Length;
        var start = new double[pieces];
        var end = new double[pieces];
        for (var j = 0; j < pieces; j++)
        {
            var h = stations[j + 1] - stations[j];
            start[j] = 4 * force[j] / h - 6 * moment[j] / (h * h);
            end[j] = 6 * moment[j] / (h * h) - 2 * force[j] / h;
        }

        return new(stations, start, end, new double[pieces + 1]);
    }

    /// <summary>This load and a force at a station.</summary>
    public PoleLoad WithPoint(int station, double force)
    {
        var copy = (double[])points.Clone();
        copy[station] += force;
        return new(stations, start, end, copy);
    }

    /// <summary>Load per metre just inside the outer end of a piece and just before its inner end, N/m.</summary>
    public (double Start, double End) Piece(int index) => (start[index], end[index]);

    /// <summary>Force at a station, N.</summary>
    public double Point(int station) => points[station];

    /// <summary>Both together; they must have the same stations.</summary>
    public static PoleLoad operator +(PoleLoad a, PoleLoad b) => a.Plus(1, b);

    /// <summary>A multiple.</summary>
    public static PoleLoad operator *(double factor, PoleLoad load) =>
        new(load.stations, Array.ConvertAll(load.start, v => factor * v), Array.ConvertAll(load.end, v => factor * v), Array.ConvertAll(load.points, v => factor * v));

    /// <summary>This load and a multiple of another on the same stations.</summary>
    public PoleLoad Plus(double factor, PoleLoad other)
    {
        if (stations != other.stations)
        {
            throw new ArgumentException("Loads add only on the same stations.", nameof(other));
        }

        return new(stations, Sum(start, other.start), Sum(end, other.end), Sum(points, other.points));

        double[] Sum(double[] a, double[] b)
        {
            var sum = new double[a.Length];
            for (var i = 0; i < sum.Length; i++)
            {
                sum[i] = a[i] + factor * b[i];
            }

            return sum;
        }
    }
}
