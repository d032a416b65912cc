using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Clomwright.Numerics.Factorisation;

/// <summary>
/// Arithmetic on tiles of 8 by 8 numbers, stored column after column (the 8 rows of a column together), and on strips: 8 rows of a wider matrix,
/// stored the same way. All dense work of the factor is done by <see cref="Subtract"/>.
/// </summary>
/// <remarks>Sums run in one fixed order with fused multiply-add, so 256 and 512 bit machines and any number of threads give the same bits.</remarks>
internal static unsafe class Tiles
{
    /// <summary>Rows and columns of a tile.</summary>
    public const int Side = 8;

    /// <summary>Numbers in a tile.</summary>
    public const int Area = Side * Side;

    /// <summary>The next multiple of <see cref="Side"/>.</summary>
    public static int RoundUp(int count) => (count + Side - 1) & -Side;

    /// <summary>C := C - A B^T, where A and B are strips of <paramref name="depth"/> columns.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Subtract(double* c, double* a, double* b, int depth)
    {
        if (Vector512.IsHardwareAccelerated)
        {
            Subtract512(c, a, b, depth);
        }
        else
        {
            Subtract256(c, a, b, depth);
            Subtract256(c + 4, a + 4, b, depth);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Subtract512(double* c, double* a, double* b, int depth)
    {
        var s0 = Vector512<double>.Zero;
        Vector512<double> s1 = s0, s2 = s0, s3 = s0, s4 = s0, s5 = s0, s6 = s0, s7 = s0;
        for (var k = 0; k < depth; k++, a += Side, b += Side)
        {
            var v = Vector512.Load(a);
            s0 = Vector512.FusedMultiplyAdd(v, Vector512.Create(b[0]), s0);
            s1 = Vector512.FusedMultiplyAdd(v, Vector512.Create(b[1]), s1);
            s2 = Vector512.FusedMultiplyAdd(v, Vector512.Create(b[2]), s2);
            s3 = Vector512.FusedMultiplyAdd(v, Vector512.Create(b[3]), s3);
            s4 = Vector512.FusedMultiplyAdd(v, Vector512.Create(b[4]), s4);
            s5 = Vector512.FusedMultiplyAdd(v, Vector512.Create(b[5]), s5);
            s6 = Vector512.FusedMultiplyAdd(v, Vector512.Create(b[6]), s6);
            s7 = Vector512.FusedMultiplyAdd(v, Vector512.Create(b[7]), s7);
        }

        (Vector512.Load(c) - s0).Store(c);
        (Vector512.Load(c + 8) - s1).Store(c + 8);
        (Vector512.Load(c + 16) - s2).Store(c + 16);
        (Vector512.Load(c + 24) - s3).Store(c + 24);
        (Vector512.Load(c + 32) - s4).Store(c + 32);
        (Vector512.Load(c + 40) - s5).Store(c + 40);
        (Vector512.Load(c + 48) - s6).Store(c + 48);
        (Vector512.Load(c + 56) - s7).Store(c + 56);
    }

    /// <summary>The upper or lower four rows of a tile, for machines with sixteen registers of 256 bits.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Subtract256(double* c, double* a, double* b, int depth)
    {
        var s0 = Vector256<double>.Zero;
        Vector256<double> s1 = s0, s2 = s0, s3 = s0, s4 = s0, s5 = s0, s6 = s0, s7 = s0;
        for (var k = 0; k < depth; k++, a += Side, b += Side)
        {
            var v = Vector256.Load(a);
            s0 = Vector256.FusedMultiplyAdd(v, Vector256.Create(b[0]), s0);
            s1 = Vector256.FusedMultiplyAdd(v, Vector256.Create(b[1]), s1);
            s2 = Vector256.FusedMultiplyAdd(v, Vector256.Create(b[2]), s2);
            s3 = Vector256.FusedMultiplyAdd(v, Vector256.Create(b[3]), s3);
            s4 = Vector256.FusedMultiplyAdd(v, Vector256.Create(b[4]), s4);
            s5 = Vector256.FusedMultiplyAdd(v, Vector256.Create(b[5]), s5);
            s6 = Vector256.FusedMultiplyAdd(v, Vector256.Create(b[6]), s6);
            s7 = Vector256.FusedMultiplyAdd(v, Vector256.Create(b[7]), s7);
        }

        (Vector256.Load(c) - s0).Store(c);
        (Vector256.Load(c + 8) - s1).Store(c + 8);
        (Vector256.Load(c + 16) - s2).Store(c + 16);
        (Vector256.Load(c + 24) - s3).Store(c + 24);
        (Vector256.Load(c + 32) - s4).Store(c + 32);
        (Vector256.Load(c + 40) - s5).Store(c + 40);
        (Vector256.Load(c + 48) - s6).Store(c + 48);
        (Vector256.Load(c + 56) - s7).Store(c + 56);
    }
}
