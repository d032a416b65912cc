namespace Clomwright.Numerics;

/// <summary>The periodic cubic spline through values at knots: twice continuously differentiable, also across the seam.</summary>
/// <remarks>
/// Written with second derivatives M at the knots and spans h: h_(i-1) M_(i-1) + 2 (h_(i-1) + h_i) M_i + h_i M_(i+1)
/// = 6 ((y_(i+1) - y_i)/h_i - (y_i - y_(i-1))/h_(i-1)), indices cyclic. The cyclic tridiagonal system is solved by one rank-one update.
/// </remarks>
public sealed class PeriodicCubicSpline
{
    private readonly double[] spans;
    private readonly double[] values;
    private readonly double[] seconds;

    /// <summary>Through <paramref name="values"/>, with <paramref name="spans"/>[i] from value i to the next, the last span leading back to the first value.</summary>
    /// <exception cref="ArgumentException">Fewer than three values, unequal counts, or a span that is not positive.</exception>
    public PeriodicCubicSpline(ReadOnlySpan<double> spans, ReadOnlySpan<double> values)
    {
        if (values.Length < 3 || spans.Length != values.Length)
        {
            throw new ArgumentException("A periodic spline needs at least three values and a span for each.", nameof(values));
        }

        foreach (var span in spans)
        {
            if (!(span > 0))
            {
                throw new ArgumentException("Every span must be positive.", nameof(spans));
            }
        }

        this.spans = spans.ToArray();
        this.values = values.ToArray();
        seconds = SecondDerivatives(this.spans, this.values);
    }

    /// <summary>How many spans there are.</summary>
    public int Count => spans.Length;

    /// <summary>Length of a span.</summary>
    public double Span(int index) => spans[index];

    /// <summary>Value, first and second derivative at a distance into a span.</summary>
    public (double Value, double First, double Second) At(int index, double distance)
    {
        var next = index + 1 == spans.Length ? 0 : index + 1;
        var h = spans[index];
        var a = values[index];
        var c = seconds[index] / 2;
        var d = (seconds[next] - seconds[index]) / (6 * h);
        var b = (values[next] - values[index]) / h - h * (2 * seconds[index] + seconds[next]) / 6;
        return (a + distance * (b + distance * (c + distance * d)), b + distance * (2 * c + 3 * d * distance), 2 * c + 6 * d * distance);
    }

    private static double[] SecondDerivatives(double[] h, double[] y)
    {
        var n = y.Length;
        double[] lower = new double[n], diagonal = new double[n], upper = new double[n], right = new double[n];
        for (var i = 0; i < n; i++)
        {
            var before = i == 0 ? n - 1 : i - 1;
            var after = i + 1 == n ? 0 : i + 1;
            lower[i] = h[before];
            upper[i] = h[i];
            diagonal[i] = 2 * (h[before] + h[i]);
            right[i] = 6 * ((y[after] - y[i]) / h[i] - (y[i] - y[before]) / h[before]);
        }

        // The corners h[n-1] are split off as a rank-one matrix u v' with u = (g, 0.., c), v = (1, 0.., c/g).
        var corner = h[n - 1];
        var g = -diagonal[0];
        diagonal[0] -= g;
        diagonal[n - 1] -= corner * corner / g;
        var u = new double[n];
        u[0] = g;
        u[n - 1] = corner;
        var x = Tridiagonal(lower, diagonal, upper, right);
        var z = Tridiagonal(lower, diagonal, upper, u);
        var factor = (x[0] + corner / g * x[n - 1]) / (1 + z[0] + corner / g * z[n - 1]);
        for (var i = 0; i < n; i++)
        {
            x[i] -= factor * z[i];
        }

        return x;
    }

    private static double[] Tridiagonal(double[] lower, double[] diagonal, double[] upper, double[] right)
    {
        var n = right.Length;
        double[] c = new double[n], x = new double[n];
        c[0] = upper[0] / diagonal[0];
        x[0] = right[0] / diagonal[0];
        for (var i = 1; i < n; i++)
        {
            var pivot = diagonal[i] - lower[i] * c[i - 1];
            c[i] = upper[i] / pivot;
            x[i] = (right[i] - lower[i] * x[i - 1]) / pivot;
        }

        for (var i = n - 2; i >= 0; i--)
        {
            x[i] -= c[i] * x[i + 1];
        }

        return x;
    }
}
