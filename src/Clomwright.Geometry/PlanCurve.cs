using Clomwright.Geometry.Curves;

namespace Clomwright.Geometry;

/// <summary>A smooth closed curve, clockwise seen from above, by arc length in metres from the zero mark.</summary>
/// <remarks>
/// A curve offset outward by d everywhere has length L + 2 pi d and encloses A + L d + pi d^2 (Steiner), as long as no concave part is
/// tighter than d. Stations outside 0..<see cref="Length"/> wrap.
/// </remarks>
public abstract class PlanCurve
{
    private readonly Lazy<CurveFrame[]> samples;

    /// <summary>A curve whose shape the derived class gives.</summary>
    protected PlanCurve() => samples = new(Sampled);

    /// <summary>Arc length of the whole ring, m.</summary>
    public abstract double Length { get; }

    /// <summary>Area enclosed, m2.</summary>
    public abstract double Area { get; }

    /// <summary>The peg that bearings are sighted from.</summary>
    public abstract PlanPoint Centre { get; }

    /// <summary>Largest concave curvature, 1/m: an outward offset beyond its inverse folds. Zero for a convex curve.</summary>
    public abstract double ConcavityMax { get; }

    /// <summary>Largest curvature of a part that bulges outward, 1/m: an inward offset beyond its inverse folds.</summary>
    public abstract double ConvexityMax { get; }

    /// <summary>Whether it is a circle about the centre peg.</summary>
    public virtual bool IsRoundAboutCentre => false;

    /// <summary>Stations, ascending, at which the curvature or its slope jumps.</summary>
    internal abstract ReadOnlySpan<double> Breaks { get; }

    /// <summary>Frames all round from the zero mark, close enough together to find every crossing with a ray.</summary>
    internal ReadOnlySpan<CurveFrame> Samples => samples.Value;

    /// <summary>The point at a station.</summary>
    public PlanPoint At(double station) => FrameAt(station).Point;

    /// <summary>Unit direction of walking clockwise at a station.</summary>
    public PlanPoint Tangent(double station) => FrameAt(station).Tangent;

    /// <summary>Signed curvature, 1/m, positive where the wall bulges outward.</summary>
    public double Curvature(double station) => FrameAt(station).Curvature;

    /// <summary>Angle that the tangent turns from one station to a later one, radians; 2 pi for the whole ring.</summary>
    public double Turning(double from, double to) => FrameAt(to).Heading - FrameAt(from).Heading;

    /// <summary>Unit outward normal at a station.</summary>
    public PlanPoint Normal(double station) => FrameAt(station).Normal;

    /// <summary>The point at a station on the curve offset outward by a distance, m.</summary>
    public PlanPoint At(double station, double offset) => FrameAt(station).Offset(offset);

    /// <summary>Arc length between two stations on the curve offset outward by a distance, m.</summary>
    public double OffsetArc(double from, double to, double offset) => to - from + offset * Turning(from, to);

    /// <summary>Whole length of the curve offset outward by a distance, m.</summary>
    public double OffsetLength(double offset) => Length + 2 * Math.PI * offset;

    /// <summary>Area enclosed by the curve offset outward by a distance, m2.</summary>
    public double OffsetArea(double offset) => Area + Length * offset + Math.PI * offset * offset;

    /// <summary>The stations, ascending, at which a ray from the centre at a bearing (radians clockwise from north) meets the curve.</summary>
    public IReadOnlyList<double> StationsAt(double bearing) => StationsAt(bearing, 0);

    /// <summary>The stations, ascending, at which a ray from the centre at a bearing (radians clockwise from north) meets the curve offset outward by a distance, m.</summary>
    public IReadOnlyList<double> StationsAt(double bearing, double offset) => Rays.Stations(this, bearing, offset);

    /// <summary>The station of the foot of the normal from a point near the wall, found from a station near it; NaN where there is none.</summary>
    public double FootOf(PlanPoint point, double near) => Feet.Station(this, point, near);

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

    /// <summary>Point, tangent, curvature and heading at a station, in one evaluation.</summary>
    internal abstract CurveFrame FrameAt(double station);

    private protected virtual int SampleCount => 256;

    private CurveFrame[] Sampled()
    {
        var frames = new CurveFrame[SampleCount];
        for (var i = 0; i < frames.Length; i++)
        {
            frames[i] = FrameAt(i * Length / frames.Length);
        }

        return frames;
    }
}
