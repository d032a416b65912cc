namespace Clomwright.Analysis.Roof;

/// <summary>The general system for the slopes of the poles, from the gaps that their thickness keeps at the crossings.</summary>
internal static class CrossingHeights
{
    /// <summary>e: vertical gap of two axes of slopes t1 and t2 that cross in plan at angle omega and pass at the least distance delta, m.</summary>
    public static double Rise(double delta, double t1, double t2, double omega) =>
        delta * Math.Sqrt(Square(Math.Sin(omega)) + t1 * t1 + t2 * t2 - 2 * t1 * t2 * Math.Cos(omega)) / Math.Sin(omega);

    /// <summary>Slopes t_i with h_i + t_i b_i - h_(i+1) - t_(i+1) a_(i+1) = e_i(t_i, t_(i+1)); null when there are none.</summary>
    public static double[]? Solve(PoleGeometry[] poles, double[] delta, int mostIterations)
    {
        var n = poles.Length;
        var t = new double[n];
        var p = new double[n];
        var q = new double[n];
        var right = new double[n];
        for (var iteration = 0; iteration < mostIterations; iteration++)
        {
            for (var i = 0; i < n; i++)
            {
                var j = (i + 1) % n;
                var omega = poles[i].CrossingAngle;
                var root = Rise(1, t[i], t[j], omega) * Math.Sin(omega);
                var e = delta[i] * root / Math.Sin(omega);
                var slope = delta[i] / (root * Math.Sin(omega));
                p[i] = poles[i].Far - slope * (t[i] - t[j] * Math.Cos(omega));
                q[i] = -poles[j].Near - slope * (t[j] - t[i] * Math.Cos(omega));
                right[i] = e - poles[i].HeightOver(t[i], poles[i].Far) + poles[j].HeightOver(t[j], poles[j].Near);
            }

            if (CyclicStep(p, q, right) is not { } step)
            {
                return null;
            }

            double change = 0, size = 1e-3;
            for (var i = 0; i < n; i++)
            {
                t[i] += step[i];
                change = Math.Max(change, Math.Abs(step[i]));
                size = Math.Max(size, Math.Abs(t[i]));
            }

            if (!double.IsFinite(change) || size > 1e6)
            {
                return null;
            }

            // The steps shrink quadratically: after one of 1e-10 the next would be below rounding.
            if (change <= 1e-10 * size)
            {
                return t;
            }
        }

        return null;
    }

    /// <summary>x with p_i x_i + q_i x_(i+1) = r_i round the ring; null when singular.</summary>
    private static double[]? CyclicStep(double[] p, double[] q, double[] r)
    {
        var n = p.Length;
        double constant = 0, multiple = 1;
        for (var i = n - 1; i >= 0; i--)
        {
            if (p[i] == 0)
            {
                return null;
            }

            constant = (r[i] - q[i] * constant) / p[i];
            multiple = -q[i] * multiple / p[i];
        }

        if (Math.Abs(1 - multiple) < 1e-14)
        {
            return null;
        }

        var x = new double[n];
        x[0] = constant / (1 - multiple);
        for (var i = n - 1; i > 0; i--)
        {
            x[i] = (r[i] - q[i] * x[(i + 1) % n]) / p[i];
        }

        return x;
    }

    private static double HeightOver(this PoleGeometry pole, double slope, double distance) => pole.FootHeight + slope * distance;

    private static double Square(double x) => x * x;
}
