using Clomwright.Numerics;

namespace Clomwright.Geometry.Curves;

/// <summary>Where rays from the centre peg meet a curve or one of its offsets.</summary>
internal static class Rays
{
    /// <summary>A nanometre: nobody writes a finer length.</summary>
    private const double NearZero = 1e-9;

    public static List<double> Stations(PlanCurve curve, double bearing, double offset)
    {
        var (sin, cos) = Math.SinCos(bearing);
        var ray = new PlanPoint(sin, cos);
        var samples = curve.Samples;
        var found = new List<double>();
        var previous = ray.Cross(samples[0].Offset(offset) - curve.Centre);
        for (var i = 1; i <= samples.Length; i++)
        {
            var point = samples[i % samples.Length].Offset(offset) - curve.Centre;
            var next = ray.Cross(point);
            if (previous < 0 != next < 0 && (ray.Dot(point) > 0 || ray.Dot(samples[i - 1].Offset(offset) - curve.Centre) > 0))
            {
                var from = (i - 1) * curve.Length / samples.Length;
                var to = i * curve.Length / samples.Length;
                var station = Refined(curve, ray, offset, from, to, previous / (previous - next));
                if (ray.Dot(curve.At(station, offset) - curve.Centre) > 0)
                {
                    found.Add(FromZero(curve.Wrap(station), curve.Length));
                }
            }

            previous = next;
        }

        found.Sort();
        return found;
    }

    /// <summary>A ray through the zero mark meets it at station 0, on whichever side of it rounding falls.</summary>
    private static double FromZero(double station, double length) => length - station < NearZero ? 0 : station;

    private static double Refined(PlanCurve curve, PlanPoint ray, double offset, double from, double to, double share)
    {
        var station = Roots.Newton(Miss, from, to, from + share * (to - from), 1e-15 * curve.Length);
        return double.IsNaN(station) ? from + share * (to - from) : station;

        (double Value, double Slope) Miss(double s)
        {
            var frame = curve.FrameAt(s);
            return (ray.Cross(frame.Offset(offset) - curve.Centre), (1 + offset * frame.Curvature) * ray.Cross(frame.Tangent));
        }
    }
}
