using System.Numerics;
using System.Runtime.CompilerServices;

namespace Clomwright.Numerics.Conduction;

/// <summary>A symmetric positive matrix of narrow band, factorised in place (Cholesky by rows: Golub and Van Loan, Matrix Computations, section 4.3.5).</summary>
internal sealed class BandFactor
{
    private readonly double[] rows;
    private readonly int size, band;

    /// <summary>A matrix of zeros.</summary>
    /// <param name="size">Unknowns.</param>
    /// <param name="band">Most distance between two that know each other.</param>
    public BandFactor(int size, int band) => (this.size, this.band, rows) = (size, band, new double[size * (band + 1)]);

    /// <summary>Adds to an entry at or left of the diagonal.</summary>
    public void Add(int row, int column, double value) => rows[row * (band + 1) + band - (row - column)] += value;

    /// <summary>Factorises; false where the matrix is not positive.</summary>
    public bool Factorise()
    {
        var width = band + 1;
        for (var i = 0; i < size; i++)
        {
            var first = Math.Max(0, i - band);
            for (var j = first; j <= i; j++)
            {
                var from = Math.Max(first, j - band);
                var sum = rows[i * width + band - (i - j)] - Dot(rows.AsSpan(i * width + band - (i - from), j - from), rows.AsSpan(j * width + band - (j - from), j - from));
                if (j < i)
                {
                    rows[i * width + band - (i - j)] = sum / rows[j * width + band];
                }
                else if (sum > 0)
                {
                    rows[i * width + band] = Math.Sqrt(sum);
                }
                else
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>Solves in place.</summary>
    public void Solve(Span<double> right)
    {
        var width = band + 1;
        for (var i = 0; i < size; i++)
        {
            var first = Math.Max(0, i - band);
            right[i] = (right[i] - Dot(rows.AsSpan(i * width + band - (i - first), i - first), right[first..i])) / rows[i * width + band];
        }

        for (var i = size - 1; i >= 0; i--)
        {
            right[i] /= rows[i * width + band];
            for (var j = Math.Max(0, i - band); j < i; j++)
            {
                right[j] -= rows[i * width + band - (i - j)] * right[i];
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var lanes = Vector<double>.Zero;
        var i = 0;
        for (; i + Vector<double>.Count <= a.Length; i += Vector<double>.Count)
        {
            lanes += new Vector<double>(a[i..]) * new Vector<double>(b[i..]);
        }

        var sum = Vector.Sum(lanes);
        for (; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }
}
