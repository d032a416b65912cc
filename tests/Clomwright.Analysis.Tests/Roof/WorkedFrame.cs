using Clomwright.Analysis.Roof;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Tests.Roof;

/// <summary>
/// The frame worked by hand: n 12, R_w 3.000 m, R_e 3.600 m, 0.20 m poles notched 40 mm each (delta 0.120 m), pitch 18 degrees,
/// q 4.0 kN/m2 on plan from the ring outward.
/// </summary>
internal static class WorkedFrame
{
    public const double Pressure = 4000;

    public static ReciprocalGeometry Geometry { get; } = ((ReciprocalShape.Frame)ReciprocalFrame.Of(
        ReciprocalPlan.Uniform(12, 3, 3.6, UniformReciprocal.RingRadius(12, 0.12, 18 * Math.PI / 180)!.Value, 0.2, 0.04))).Geometry;

    /// <summary>The pressure on one pole: its share at distance u from the tangent point is 2 pi u/n wide.</summary>
    public static PoleLoad Load()
    {
        var pole = Geometry.Poles[0];
        Sequence<double> stations = [-pole.EaveReach, 0, pole.Near, pole.TangentDistance, pole.Far];
        var force = new double[4];
        var moment = new double[4];
        for (var j = 0; j < 3; j++)
        {
            double h = stations[j + 1] - stations[j], w1 = At(stations[j]), w2 = At(stations[j + 1]);
            force[j] = h * (w1 + w2) / 2;
            moment[j] = h * h * (w1 + 2 * w2) / 6;
        }

        return PoleLoad.Pieces(stations, force, moment);

        double At(double x) => Pressure * 2 * Math.PI / 12 * (pole.TangentDistance - x);
    }
}
