using Clomwright.Evidence;

namespace Clomwright.Geometry;

/// <summary>Spaces tees evenly along the bond beam from the zero mark, at most their spacing apart.</summary>
internal static class TeePlaces
{
    private const int CountMax = 500;

    public static Sequence<TeePlace> Of(WallFrame frame, Remarks remarks)
    {
        if (frame.House.Tees is not { } tees)
        {
            return [];
        }

        var beam = BeamLine.Of(frame.House, frame.Wall);
        var ring = frame.Curve.OffsetLength(beam);
        var count = Math.Ceiling(ring / tees.Spacing.Metres - 1e-9);
        if (!(tees.Spacing.Metres > 0) || !(count is >= 1 and <= CountMax))
        {
            remarks.Error("tees.spacing", Message.Of("geometry.tee-spacing", ("spacing", tees.Spacing)));
            return [];
        }

        var bar = frame.Top - tees.Depth.Metres;
        if (bar < frame.Base || tees.Depth.Metres < 0)
        {
            remarks.Error("tees.depth", Message.Of("geometry.tee-depth", ("depth", tees.Depth)));
        }

        var places = new TeePlace[(int)count];
        for (var i = 0; i < places.Length; i++)
        {
            places[i] = new TeePlace(i + 1, StationAlong(frame.Curve, beam, i * ring / count), bar, frame.LiftAt(bar));
        }

        return places.ToSequence();
    }

    /// <summary>The station whose arc along the curve of an offset is given.</summary>
    internal static double StationAlong(PlanCurve curve, double offset, double arc)
    {
        if (arc == 0)
        {
            return 0;
        }

        var station = Numerics.Roots.Newton(
            s =>
            {
                var frame = curve.FrameAt(s);
                return (s + offset * frame.Heading - arc, 1 + offset * frame.Curvature);
            },
            0, curve.Length, arc * curve.Length / curve.OffsetLength(offset), 1e-14 * curve.Length);
        return double.IsNaN(station) ? arc * curve.Length / curve.OffsetLength(offset) : station;
    }
}
