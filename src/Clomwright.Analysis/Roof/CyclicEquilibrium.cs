using Clomwright.Numerics.Linear;

namespace Clomwright.Analysis.Roof;

/// <summary>Forces in a reciprocal frame in plan: each pole turns about its foot, carries the one before at a_i and rests on the next at b_i.</summary>
/// <remarks>
/// Moments about the plate: <c>P_i b_i = M_i + P_(i-1) a_i</c>, where M_i = W_i x_i is the first moment of the pole's own load and P_i the upward
/// force on it at its far crossing. With c_i = M_i/b_i and lambda_i = a_i/b_i that is <c>P_i = c_i + lambda_i P_(i-1)</c>, indices cyclic. It has exactly one solution
/// as long as every a_i is less than b_i. A negative P_i means that the crossing opens and the pin there is in tension.
/// Three routes to the same numbers are kept because a mistake here kills; tests hold them equal to 1e-9.
/// </remarks>
public static class CyclicEquilibrium
{
    /// <summary>P_i by the closed form <c>P_i = sum over k of lambda_i lambda_(i-1) ... lambda_(i-k+1) c_(i-k) / (1 - product of all lambda)</c>.</summary>
    /// <param name="near">a_i in the order of carrying, m.</param>
    /// <param name="far">b_i in the order of carrying, m.</param>
    /// <param name="moment">M_i in the order of carrying, N m.</param>
    /// <returns>P_i in N.</returns>
    public static double[] Forces(ReadOnlySpan<double> near, ReadOnlySpan<double> far, ReadOnlySpan<double> moment)
    {
        var n = near.Length;
        double around = 1, first = 0;
        for (var k = 0; k < n; k++)
        {
            // Going back from pole 0: pole n-k carries into pole 0 with the product of the ratios between them.
            var i = (n - k) % n;
            first += around * moment[i] / far[i];
            around *= near[i] / far[i];
        }

        var p = new double[n];
        p[0] = first / (1 - around);
        for (var i = 1; i < n; i++)
        {
            p[i] = (moment[i] + near[i] * p[i - 1]) / far[i];
        }

        return p;
    }

    /// <summary>P_i by general elimination of the n equations.</summary>
    public static double[]? ForcesByElimination(ReadOnlySpan<double> near, ReadOnlySpan<double> far, ReadOnlySpan<double> moment)
    {
        var n = near.Length;
        var matrix = new double[n * n];
        for (var i = 0; i < n; i++)
        {
            matrix[i * n + i] += far[i];
            matrix[i * n + (i + n - 1) % n] -= near[i];
        }

        return Elimination.Of(matrix, n)?.Solve(moment);
    }

    /// <summary>P_i by passing the load on round the ring, again and again, until nothing changes.</summary>
    public static double[] ForcesByRecursion(ReadOnlySpan<double> near, ReadOnlySpan<double> far, ReadOnlySpan<double> moment)
    {
        var n = near.Length;
        var p = new double[n];
        for (var round = 0; round < 100_000; round++)
        {
            double change = 0, size = 0;
            for (var i = 0; i < n; i++)
            {
                var next = (moment[i] + near[i] * p[(i + n - 1) % n]) / far[i];
                change = Math.Max(change, Math.Abs(next - p[i]));
                size = Math.Max(size, Math.Abs(next));
                p[i] = next;
            }

            if (change <= 1e-15 * size)
            {
                break;
            }
        }

        return p;
    }

    /// <summary>A_i = W_i + P_(i-1) - P_i: vertical force of the plate on each pole, N. Their sum is the whole load.</summary>
    public static double[] PlateReactions(ReadOnlySpan<double> load, ReadOnlySpan<double> crossing)
    {
        var n = load.Length;
        var a = new double[n];
        for (var i = 0; i < n; i++)
        {
            a[i] = load[i] + crossing[(i + n - 1) % n] - crossing[i];
        }

        return a;
    }

    /// <summary>Share of a unit c on one pole that reaches the pole k further on, equal poles: lambda^k / (1 - lambda^n).</summary>
    public static double Influence(double ratio, int count, int further) => Math.Pow(ratio, further) / (1 - Math.Pow(ratio, count));

    /// <summary>
    /// Forces passed on when one pole is gone: those of the poles after it, in turn, each at its far crossing. The last of them is the pole that rested on the
    /// lost one, and its force is what a prop there must carry. Without it that pole falls, then the one that rested on it, and so on round the ring.
    /// </summary>
    /// <param name="near">a_i in the order of carrying, m.</param>
    /// <param name="far">b_i in the order of carrying, m.</param>
    /// <param name="moment">M_i in the order of carrying, N m.</param>
    /// <param name="lost">Place of the lost pole in the order of carrying.</param>
    public static double[] ChainWithout(ReadOnlySpan<double> near, ReadOnlySpan<double> far, ReadOnlySpan<double> moment, int lost) =>
        Chain(near, far, moment, (lost + 1) % near.Length, near.Length - 1);

    /// <summary>Forces at the far crossings when one pole stands on a prop at its own far crossing instead of on its neighbour; the last is the load on that prop.</summary>
    /// <param name="near">a_i in the order of carrying, m.</param>
    /// <param name="far">b_i in the order of carrying, m.</param>
    /// <param name="moment">M_i in the order of carrying, N m.</param>
    /// <param name="propped">Place of the propped pole in the order of carrying.</param>
    public static double[] ChainTo(ReadOnlySpan<double> near, ReadOnlySpan<double> far, ReadOnlySpan<double> moment, int propped) =>
        Chain(near, far, moment, (propped + 1) % near.Length, near.Length);

    private static double[] Chain(ReadOnlySpan<double> near, ReadOnlySpan<double> far, ReadOnlySpan<double> moment, int first, int count)
    {
        var n = near.Length;
        var chain = new double[count];
        double passed = 0;
        for (var k = 0; k < count; k++)
        {
            var i = (first + k) % n;
            chain[k] = passed = (moment[i] + near[i] * passed) / far[i];
        }

        return chain;
    }
}
