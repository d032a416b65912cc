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
        SolveRightHalf(x, m);
        SolveRightHalf(x + 4, m);
    }

    private static void SolveRightHalf(double* x, double* m)
    {
        // Column c of the result takes columns 0..c of X, so going down from the last column can overwrite in place.
        for (var c = Side - 1; c >= 0; c--)
        {
            var sum = Vector256<double>.Zero;
            for (var k = 0; k <= c; k++)
            {
                sum = Vector256.FusedMultiplyAdd(Vector256.Load(x + k * Side), Vector256.Create(m[k * Side + c]), sum);
            }

            sum.Store(x + c * Side);
        }
    }

    /// <summary>x := M x for one vector, or x := M^T x.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    [SkipLocalsInit]
    public static void Multiply(double* m, double* x, int lanes, bool transposed)
    {
        var old = stackalloc double[Side * Side];
        for (var i = 0; i < Side * lanes; i++)
        {
            old[i] = x[i];
        }

        for (var r = 0; r < Side; r++)
        {
            var (from, to) = transposed ? (r, Side - 1) : (0, r);
            for (var lane = 0; lane < lanes; lane++)
            {
                var sum = 0.0;
                for (var k = from; k <= to; k++)
                {
                    sum = Math.FusedMultiplyAdd(transposed ? m[r * Side + k] : m[k * Side + r], old[k * lanes + lane], sum);
                }

                x[r * lanes + lane] = sum;
            }
        }
    }
}
