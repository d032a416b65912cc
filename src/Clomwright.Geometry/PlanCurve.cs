namespace Clomwright.Geometry;

/// <summary>A smooth closed curve, clockwise seen from above, by arc length in metres from the zero mark.</summary>
/// <remarks>
/// A curve offset outward by d everywhere has length L + 2 pi d and encloses A + L d + pi d^2 (Steiner), as long as no concave part is
/// tighter than d. Stations outside 0..<see cref="Length"/> wrap.
/// </remarks>
public abstract class PlanCurve
{
    /// <summary>Arc length of the whole ring, m.</summary>
    public abstract double Length { get; }

    /// <summary>Area enclosed, m2.</summary>
    public abstract double Area { get; }

    /// <summary>The peg that bearings are sighted from.</summary>
    public abstract PlanPoint Centre { get; }

    /// <summary>Largest concave curvature, 1/m: an outward offset beyond its inverse folds. Zero for a convex curve.</summary>
    public abstract double ConcavityMax { get; }

    /// <summary>The point at a station.</summary>
    public abstract PlanPoint At(double station);

    /// <summary>Unit direction of walking clockwise at a station.</summary>
    public abstract PlanPoint Tangent(double station);

    /// <summary>Signed curvature, 1/m, positive where the wall bulges outward.</summary>
    public abstract double Curvature(double station);

    /// <summary>Angle that the tangent turns from one station to a later one, radians; 2 pi for the whole ring.</summary>
    public abstract double Turning(double from, double to);

    /// <summary>Unit outward normal at a station.</summary>
    public PlanPoint Normal(double station)
    {
        var t = Tangent(station);
        return new PlanPoint(-t.North, t.East);
    }

    /// <summary>The point at a station on the curve offset outward by a distance, m.</summary>
    public PlanPoint At(double station, double offset) => At(station) + offset * Normal(station);

    /// <summary>Arc length between two stations on the curve offset outward by a distance, m.</summary>
    public double OffsetArc(double from, double to, double offset) => to - from + offset * Turning(from, to);

    /// <summary>Whole length of the curve offset outward by a distance, m.</summary>
    public double OffsetLength(double offset) => Length + 2 * Math.PI * offset;

    /// <summary>Area enclosed by the curve offset outward by a distance, m2.</summary>
    public double OffsetArea(double offset) => Area + Length * offset + Math.PI * offset * offset;

    /// <summary>The stations, ascending, at which a ray from the centre at a bearing (radians clockwise from north) meets the curve.</summary>
    public abstract IReadOnlyList<double> StationsAt(double bearing);

    /// <summary>Bearing of a point from the centre, radians clockwise from north, 0 to 2 pi.</summary>
    public double BearingOf(PlanPoint point)
    {
        var v = point - Centre;
        var b = Math.Atan2(v.East, v.North);
        return b < 0 ? b + 2 * Math.PI : b;
    }

    /// <summary>A station brought into 0..<see cref="Length"/>.</summary>
    public double Wrap(double station)
    {
        var s = station % Length;
        return s < 0 ? s + Length : s;
    }
}
