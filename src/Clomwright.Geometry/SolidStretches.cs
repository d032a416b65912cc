namespace Clomwright.Geometry;

/// <summary>Stretches of the ring where the middle of something may stand: all of it but what has been blocked.</summary>
internal sealed class SolidStretches(PlanCurve curve)
{
    private readonly List<(double From, double Width)> blocked = [];

    /// <summary>Takes a stretch away, its ends not included.</summary>
    public void Block(double from, double to) => blocked.Add((from, Math.Min(to - from, curve.Length)));

    /// <summary>The nearest station that is free, of equal ones the further clockwise; null when none is.</summary>
    public double? Nearest(double station)
    {
        var (on, back) = (Walk(station, 1), Walk(station, -1));
        return on is null || back is null ? null : curve.Wrap(station + (on <= back ? on.Value : -back.Value));
    }

    /// <summary>The shorter way between two stations, m.</summary>
    public double Between(double a, double b)
    {
        var ahead = curve.Wrap(a - b);
        return Math.Min(ahead, curve.Length - ahead);
    }

    /// <summary>Distance to the first free station one way; null when there is none all round.</summary>
    private double? Walk(double station, int way)
    {
        double gone = 0;
        while (gone <= curve.Length)
        {
            double step = 0;
            foreach (var (from, width) in blocked)
            {
                var inside = curve.Wrap(station + way * gone - from);
                if (inside > Tolerance && inside < width - Tolerance)
                {
                    step = Math.Max(step, way > 0 ? width - inside : inside);
                }
            }

            if (step == 0)
            {
                return gone;
            }

            gone += step;
        }

        return null;
    }

    private const double Tolerance = 1e-9;
}
