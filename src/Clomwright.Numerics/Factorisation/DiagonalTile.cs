using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Clomwright.Numerics.Factorisation;

/// <summary>The Cholesky factor of one tile, kept as its inverse so that solving with it is a product.</summary>
internal static unsafe class DiagonalTile
{
    private const int Side = Tiles.Side;

    /// <summary>
    /// Replaces a symmetric tile, of which the lower triangle is read, by M = L^-1 where L L^T is the tile. Returns the first row whose pivot is not
    /// above <paramref name="leastPivot"/>, or -1; such a row is held fast, as if by a very stiff spring.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    [SkipLocalsInit]
    public static int Invert(double* tile, double leastPivot)
    {
        var weak = -1;
        var l = stackalloc double[Tiles.Area];
        var inverse = stackalloc double[Side];
        for (var j = 0; j < Side; j++)
        {
            for (var i = j; i < Side; i++)
            {
                var sum = tile[j * Side + i];
                for (var k = 0; k < j; k++)
                {
                    sum = Math.FusedMultiplyAdd(-l[k * Side + i], l[k * Side + j], sum);
                }

                l[j * Side + i] = sum;
            }

            var pivot = l[j * Side + j];
            if (!(pivot > leastPivot))
            {
                weak = weak < 0 ? j : weak;
                pivot = double.MaxValue;
            }

            inverse[j] = 1 / Math.Sqrt(pivot);
            for (var i = j + 1; i < Side; i++)
            {
                l[j * Side + i] *= inverse[j];
            }
        }

        for (var j = 0; j < Side; j++)
        {
            var m = tile + j * Side;
            for (var i = 0; i < j; i++)
            {
                m[i] = 0;
            }

            m[j] = inverse[j];
            for (var i = j + 1; i < Side; i++)
            {
                var sum = 0.0;
                for (var k = j; k < i; k++)
                {
                    sum = Math.FusedMultiplyAdd(l[k * Side + i], m[k], sum);
                }

                m[i] = -sum * inverse[i];
            }
        }

        return weak;
    }

    /// <summary>X := X M^T: solves X L^T = X for a tile below the diagonal.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void SolveRight(double* x, double* m)
    {
        // Column c of the result takes columns 0..c of X, so going down from the last column can overwrite in place.
        for (var c = Side - 1; c >= 0; c--)
        {
            var (low, high) = (Vector256<double>.Zero, Vector256<double>.Zero);
            for (var k = 0; k <= c; k++)
            {
                var factor = Vector256.Create(m[k * Side + c]);
                low = Vector256.FusedMultiplyAdd(Vector256.Load(x + k * Side), factor, low);
                high = Vector256.FusedMultiplyAdd(Vector256.Load(x + k * Side + 4), factor, high);
            }

            low.Store(x + c * Side);
            high.Store(x + c * Side + 4);
        }
    }

    /// <summary>x := M x, or x := M^T x, for one vector.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Multiply(double* m, double* x, bool transposed)
    {
        var (low, high) = (Vector256.Load(x), Vector256.Load(x + 4));
        if (transposed)
        {
            for (var r = 0; r < Side; r++)
            {
                x[r] = Vector256.Sum(Vector256.FusedMultiplyAdd(Vector256.Load(m + r * Side + 4), high, Vector256.Load(m + r * Side) * low));
            }

            return;
        }

        var (sumLow, sumHigh) = (Vector256<double>.Zero, Vector256<double>.Zero);
        for (var k = 0; k < Side; k++)
        {
            var one = Vector256.Create(k < 4 ? low[k] : high[k - 4]);
            sumLow = Vector256.FusedMultiplyAdd(Vector256.Load(m + k * Side), one, sumLow);
            sumHigh = Vector256.FusedMultiplyAdd(Vector256.Load(m + k * Side + 4), one, sumHigh);
        }

        sumLow.Store(x);
        sumHigh.Store(x + 4);
    }

    /// <summary>x := M x, or x := M^T x, for eight vectors, the eight numbers of a row together.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    [SkipLocalsInit]
    public static void MultiplyLanes(double* m, double* x, bool transposed)
    {
        var old = stackalloc double[Tiles.Area];
        new ReadOnlySpan<double>(x, Tiles.Area).CopyTo(new Span<double>(old, Tiles.Area));
        for (var r = 0; r < Side; r++)
        {
            var (low, high) = (Vector256<double>.Zero, Vector256<double>.Zero);
            var (from, to) = transposed ? (r, Side - 1) : (0, r);
            for (var k = from; k <= to; k++)
            {
                var factor = Vector256.Create(transposed ? m[r * Side + k] : m[k * Side + r]);
                low = Vector256.FusedMultiplyAdd(factor, Vector256.Load(old + k * Side), low);
                high = Vector256.FusedMultiplyAdd(factor, Vector256.Load(old + k * Side + 4), high);
            }

            low.Store(x + r * Side);
            high.Store(x + r * Side + 4);
        }
    }
}
