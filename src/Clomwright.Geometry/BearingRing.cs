using Clomwright.Geometry.Curves;
using Clomwright.Numerics;

namespace Clomwright.Geometry;

/// <summary>Bearings from the centre peg all round the bond-beam line, growing with the station without a jump.</summary>
internal sealed class BearingRing
{
    private readonly PlanCurve curve;
    private readonly double offset;
    private readonly double zero;

    public BearingRing(PlanCurve curve, double offset)
    {
        this.curve = curve;
        this.offset = offset;
        zero = curve.BearingOf(curve.At(0, offset));
        SeesAllRound = true;
        foreach (var frame in curve.Samples)
        {
            // The bearing grows where the outward normal has a part along the ray.
            SeesAllRound &= (1 + offset * frame.Curvature) * frame.Normal.Dot(frame.Offset(offset) - curve.Centre) > 0;
        }
    }

    /// <summary>Whether every ray meets the line once.</summary>
    public bool SeesAllRound { get; }

    /// <summary>The bearing at a station: from the zero mark's bearing up, 2 pi more for every lap.</summary>
    public double BearingAt(double station)
    {
        var lap = Math.Floor(station / curve.Length);
        var within = station - lap * curve.Length;
        var turned = curve.BearingOf(curve.At(station, offset)) - zero;
        turned -= 2 * Math.PI * Math.Floor(turned / (2 * Math.PI));
        if (within < curve.Length / 4 && turned > Math.PI)
        {
            turned -= 2 * Math.PI;
        }
        else if (within > curve.Length * 3 / 4 && turned < Math.PI)
        {
            turned += 2 * Math.PI;
        }

        return zero + turned + 2 * Math.PI * lap;
    }

    /// <summary>The station of a bearing, within one lap from the zero mark.</summary>
    public double StationAt(double bearing)
    {
        var turned = bearing - zero;
        turned -= 2 * Math.PI * Math.Floor(turned / (2 * Math.PI));
        return Roots.Newton(
            s =>
            {
                var frame = curve.FrameAt(s);
                var away = frame.Offset(offset) - curve.Centre;
                return (BearingAt(s) - zero - turned, (1 + offset * frame.Curvature) * frame.Normal.Dot(away) / away.Dot(away));
            },
            -1e-9 * curve.Length, curve.Length * (1 + 1e-9), turned / (2 * Math.PI) * curve.Length, 1e-15 * curve.Length);
    }
}
