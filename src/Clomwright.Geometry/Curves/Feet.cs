namespace Clomwright.Geometry.Curves;

/// <summary>Feet of normals dropped from points near the wall on the curve.</summary>
internal static class Feet
{
    /// <summary>The station of the foot nearest to a station to start from; NaN where the search does not settle.</summary>
    public static double Station(PlanCurve curve, PlanPoint point, double near)
    {
        var station = near;
        var reach = curve.Length / 16;
        for (var round = 0; round < 60; round++)
        {
            var frame = curve.FrameAt(station);
            var away = point - frame.Point;
            var along = away.Dot(frame.Tangent);
            var stretch = 1 + frame.Curvature * away.Dot(frame.Normal);
            var step = stretch > 0.05 ? along / stretch : along;
            step = Math.Clamp(step, -reach, reach);
            station += step;
            if (Math.Abs(step) <= 1e-15 * curve.Length)
            {
                return station;
            }

            if (round > 8 && Math.Abs(step) <= 1e-13 * curve.Length)
            {
                return station;
            }
        }

        return double.NaN;
    }
}
