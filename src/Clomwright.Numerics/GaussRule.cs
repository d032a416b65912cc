namespace Clomwright.Numerics;

/// <summary>Gauss-Legendre quadrature with a fixed number of points: exact for polynomials of degree 2n - 1.</summary>
/// <remarks>Nodes are the zeros of the Legendre polynomial P_n, found by Newton's method from Tricomi's estimate; weights 2 / ((1 - x^2) P_n'(x)^2).</remarks>
public sealed class GaussRule
{
    private readonly double[] nodes;
    private readonly double[] weights;

    private GaussRule(int points)
    {
        nodes = new double[points];
        weights = new double[points];
        for (var i = 0; i < points; i++)
        {
            var x = Math.Cos(Math.PI * (points - i - 0.25) / (points + 0.5));
            double slope;
            double step;
            var rounds = 0;
            do
            {
                (var value, slope) = Legendre(points, x);
                step = value / slope;
                x -= step;
            }
            while (Math.Abs(step) > 1e-16 && ++rounds < 20);

            (_, slope) = Legendre(points, x);
            nodes[i] = x;
            weights[i] = 2 / ((1 - x * x) * slope * slope);
        }
    }

    /// <summary>Four points.</summary>
    public static GaussRule Four { get; } = new(4);

    /// <summary>Eight points.</summary>
    public static GaussRule Eight { get; } = new(8);

    /// <summary>Twelve points.</summary>
    public static GaussRule Twelve { get; } = new(12);

    /// <summary>Sixteen points.</summary>
    public static GaussRule Sixteen { get; } = new(16);

    /// <summary>Thirty-two points.</summary>
    public static GaussRule ThirtyTwo { get; } = new(32);

    /// <summary>Nodes on -1..1, ascending.</summary>
    public ReadOnlySpan<double> Nodes => nodes;

    /// <summary>Weights of the nodes; their sum is 2.</summary>
    public ReadOnlySpan<double> Weights => weights;

    /// <summary>The integral of a function from one end to another.</summary>
    public double Integrate(Func<double, double> function, double from, double to)
    {
        ArgumentNullException.ThrowIfNull(function);
        var half = (to - from) / 2;
        var middle = (to + from) / 2;
        var sum = 0.0;
        for (var i = 0; i < nodes.Length; i++)
        {
            sum += weights[i] * function(middle + half * nodes[i]);
        }

        return half * sum;
    }

    /// <summary>The integral over a stretch cut at the given places, which may lie in any order, outside it or be NaN.</summary>
    public double Integrate(Func<double, double> function, double from, double to, ReadOnlySpan<double> cuts)
    {
        Span<double> places = cuts.Length < 64 ? stackalloc double[cuts.Length + 2] : new double[cuts.Length + 2];
        var count = 0;
        var (low, high) = from <= to ? (from, to) : (to, from);
        places[count++] = low;
        foreach (var cut in cuts)
        {
            if (cut > low && cut < high)
            {
                places[count++] = cut;
            }
        }

        places[count++] = high;
        places[..count].Sort();
        var sum = 0.0;
        for (var i = 1; i < count; i++)
        {
            if (places[i] > places[i - 1])
            {
                sum += Integrate(function, places[i - 1], places[i]);
            }
        }

        return from <= to ? sum : -sum;
    }

    private static (double Value, double Slope) Legendre(int degree, double x)
    {
        double previous = 1, value = x;
        for (var k = 2; k <= degree; k++)
        {
            (previous, value) = (value, ((2 * k - 1) * x * value - (k - 1) * previous) / k);
        }

        return (value, degree * (x * value - previous) / (x * x - 1));
    }
}
