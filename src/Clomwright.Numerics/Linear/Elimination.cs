namespace Clomwright.Numerics.Linear;

/// <summary>A small dense square matrix factorised once (LU with row exchanges), then solved for any number of right-hand sides.</summary>
/// <remarks>
/// Golub and Van Loan, Matrix Computations, algorithm 3.4.1 (outer-product elimination with partial pivoting). Meant for up to a few
/// hundred unknowns. Rows are scaled by their largest entry when pivots are chosen, so that equations in different units do not mislead it.
/// </remarks>
public sealed class Elimination
{
    private readonly double[] lu;
    private readonly int[] rows;
    private readonly int size;

    private Elimination(double[] lu, int[] rows, int size, double pivotRatio)
    {
        this.lu = lu;
        this.rows = rows;
        this.size = size;
        PivotRatio = pivotRatio;
    }

    /// <summary>The smallest pivot over the largest, both of scaled rows: near 1e-16 the matrix is singular in double precision.</summary>
    public double PivotRatio { get; }

    /// <summary>Factorises a matrix given row by row; null when it is singular or holds a value that is not finite.</summary>
    public static Elimination? Of(ReadOnlySpan<double> matrix, int size)
    {
        if (matrix.Length != size * size)
        {
            throw new ArgumentException($"A matrix of {size} rows has {size * size} entries, not {matrix.Length}.", nameof(matrix));
        }

        var lu = matrix.ToArray();
        var rows = new int[size];
        var scale = new double[size];
        for (var i = 0; i < size; i++)
        {
            rows[i] = i;
            var row = lu.AsSpan(i * size, size);
            foreach (var v in row)
            {
                if (!double.IsFinite(v))
                {
                    return null;
                }

                scale[i] = Math.Max(scale[i], Math.Abs(v));
            }

            if (scale[i] == 0)
            {
                return null;
            }
        }

        double smallest = double.PositiveInfinity, largest = 0;
        for (var k = 0; k < size; k++)
        {
            var best = k;
            for (var i = k + 1; i < size; i++)
            {
                if (Math.Abs(lu[i * size + k]) / scale[i] > Math.Abs(lu[best * size + k]) / scale[best])
                {
                    best = i;
                }
            }

            var pivot = Math.Abs(lu[best * size + k]) / scale[best];
            if (pivot == 0 || !double.IsFinite(pivot))
            {
                return null;
            }

            smallest = Math.Min(smallest, pivot);
            largest = Math.Max(largest, pivot);
            Exchange(lu, rows, scale, size, k, best);
            for (var i = k + 1; i < size; i++)
            {
                var factor = lu[i * size + k] /= lu[k * size + k];
                if (factor != 0)
                {
                    var source = lu.AsSpan(k * size + k + 1, size - k - 1);
                    var target = lu.AsSpan(i * size + k + 1, size - k - 1);
                    for (var j = 0; j < source.Length; j++)
                    {
                        target[j] -= factor * source[j];
                    }
                }
            }
        }

        return new Elimination(lu, rows, size, smallest / largest);
    }

    /// <summary>The unknowns for one right-hand side.</summary>
    public double[] Solve(ReadOnlySpan<double> right)
    {
        var x = new double[size];
        for (var i = 0; i < size; i++)
        {
            var sum = right[rows[i]];
            for (var j = 0; j < i; j++)
            {
                sum -= lu[i * size + j] * x[j];
            }

            x[i] = sum;
        }

        for (var i = size - 1; i >= 0; i--)
        {
            var sum = x[i];
            for (var j = i + 1; j < size; j++)
            {
                sum -= lu[i * size + j] * x[j];
            }

            x[i] = sum / lu[i * size + i];
        }

        return x;
    }

    private static void Exchange(double[] lu, int[] rows, double[] scale, int size, int a, int b)
    {
        if (a == b)
        {
            return;
        }

        (rows[a], rows[b]) = (rows[b], rows[a]);
        (scale[a], scale[b]) = (scale[b], scale[a]);
        for (var j = 0; j < size; j++)
        {
            (lu[a * size + j], lu[b * size + j]) = (lu[b * size + j], lu[a * size + j]);
        }
    }
}
