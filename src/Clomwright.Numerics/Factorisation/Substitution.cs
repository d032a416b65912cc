using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace Clomwright.Numerics.Factorisation;

/// <summary>Products of strips of the factor with one vector or with eight at a time ("lanes", the eight numbers of a row together).</summary>
internal static unsafe class Substitution
{
    private const int Side = Tiles.Side;

    /// <summary>Lanes of a block of vectors.</summary>
    public const int Lanes = 8;

    /// <summary>Numbers between what is read and what is asked of memory meanwhile: the processor's own guesses end with each page.</summary>
    private const int Ahead = 256;

    /// <summary>w := w - A y for one strip A of <paramref name="depth"/> columns and one vector.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void SubtractProduct(double* w, double* a, double* y, int depth)
    {
        var (low, high) = (Vector256<double>.Zero, Vector256<double>.Zero);
        var (lowOdd, highOdd) = (low, high);
        var k = 0;
        for (; k + 1 < depth; k += 2, a += 2 * Side)
        {
            var (even, odd) = (Vector256.Create(y[k]), Vector256.Create(y[k + 1]));
            low = Vector256.FusedMultiplyAdd(Vector256.Load(a), even, low);
            high = Vector256.FusedMultiplyAdd(Vector256.Load(a + 4), even, high);
            lowOdd = Vector256.FusedMultiplyAdd(Vector256.Load(a + 8), odd, lowOdd);
            highOdd = Vector256.FusedMultiplyAdd(Vector256.Load(a + 12), odd, highOdd);
        }

        (Vector256.Load(w) - (low + lowOdd)).Store(w);
        (Vector256.Load(w + 4) - (high + highOdd)).Store(w + 4);
    }

    /// <summary>
    /// s[k] := s[k] + (products of column k of A with x, four partial sums), for one strip A and one vector. Meanwhile as many numbers from
    /// <paramref name="next"/> on are brought near.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void AddTransposed(double* s, double* a, double* x, int depth, double* next)
    {
        var (low, high) = (Vector256.Load(x), Vector256.Load(x + 4));
        for (var k = 0; k < depth; k++, a += Side, next += Side, s += 4)
        {
            Fetch(next);
            var sum = Vector256.FusedMultiplyAdd(Vector256.Load(a), low, Vector256.Load(s));
            Vector256.FusedMultiplyAdd(Vector256.Load(a + 4), high, sum).Store(s);
        }
    }

    /// <summary>As <see cref="AddTransposed"/> for four strips that lie one after the other, which saves most of the traffic with the sums.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void AddTransposedFour(double* s, double* a, double* x, int depth)
    {
        var (a0, a1) = (Vector256.Load(x), Vector256.Load(x + 4));
        var (b0, b1) = (Vector256.Load(x + 8), Vector256.Load(x + 12));
        var (c0, c1) = (Vector256.Load(x + 16), Vector256.Load(x + 20));
        var (d0, d1) = (Vector256.Load(x + 24), Vector256.Load(x + 28));
        var b = a + Side * depth;
        var c = b + Side * depth;
        var d = c + Side * depth;
        for (var k = 0; k < depth; k++, a += Side, b += Side, c += Side, d += Side, s += 4)
        {
            Fetch(a + Ahead);
            Fetch(b + Ahead);
            Fetch(c + Ahead);
            Fetch(d + Ahead);
            var sum = Vector256.FusedMultiplyAdd(Vector256.Load(a), a0, Vector256.Load(s));
            var other = Vector256.Load(c) * c0;
            sum = Vector256.FusedMultiplyAdd(Vector256.Load(a + 4), a1, sum);
            other = Vector256.FusedMultiplyAdd(Vector256.Load(c + 4), c1, other);
            sum = Vector256.FusedMultiplyAdd(Vector256.Load(b), b0, sum);
            other = Vector256.FusedMultiplyAdd(Vector256.Load(d), d0, other);
            sum = Vector256.FusedMultiplyAdd(Vector256.Load(b + 4), b1, sum);
            other = Vector256.FusedMultiplyAdd(Vector256.Load(d + 4), d1, other);
            (sum + other).Store(s);
        }
    }

    /// <summary>s[k] := s[k] + A[.,k] x for one strip A and eight lanes.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void AddTransposedLanes(double* s, double* a, double* x, int depth)
    {
        if (Vector512.IsHardwareAccelerated)
        {
            AddTransposedLanes512(s, a, x, depth);
        }
        else
        {
            AddTransposedLanes256(s, a, x, depth);
            AddTransposedLanes256(s + 4, a, x + 4, depth);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void AddTransposedLanes512(double* s, double* a, double* x, int depth)
    {
        var x0 = Vector512.Load(x);
        var x1 = Vector512.Load(x + 8);
        var x2 = Vector512.Load(x + 16);
        var x3 = Vector512.Load(x + 24);
        var x4 = Vector512.Load(x + 32);
        var x5 = Vector512.Load(x + 40);
        var x6 = Vector512.Load(x + 48);
        var x7 = Vector512.Load(x + 56);
        for (var k = 0; k < depth; k++, a += Side, s += Lanes)
        {
            Fetch(a + Ahead);
            var even = Vector512.FusedMultiplyAdd(Vector512.Create(a[0]), x0, Vector512.Load(s));
            var odd = Vector512.Create(a[1]) * x1;
            even = Vector512.FusedMultiplyAdd(Vector512.Create(a[2]), x2, even);
            odd = Vector512.FusedMultiplyAdd(Vector512.Create(a[3]), x3, odd);
            even = Vector512.FusedMultiplyAdd(Vector512.Create(a[4]), x4, even);
            odd = Vector512.FusedMultiplyAdd(Vector512.Create(a[5]), x5, odd);
            even = Vector512.FusedMultiplyAdd(Vector512.Create(a[6]), x6, even);
            odd = Vector512.FusedMultiplyAdd(Vector512.Create(a[7]), x7, odd);
            (even + odd).Store(s);
        }
    }

    /// <summary>The first or last four of the eight lanes.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void AddTransposedLanes256(double* s, double* a, double* x, int depth)
    {
        var x0 = Vector256.Load(x);
        var x1 = Vector256.Load(x + 8);
        var x2 = Vector256.Load(x + 16);
        var x3 = Vector256.Load(x + 24);
        var x4 = Vector256.Load(x + 32);
        var x5 = Vector256.Load(x + 40);
        var x6 = Vector256.Load(x + 48);
        var x7 = Vector256.Load(x + 56);
        for (var k = 0; k < depth; k++, a += Side, s += Lanes)
        {
            var even = Vector256.FusedMultiplyAdd(Vector256.Create(a[0]), x0, Vector256.Load(s));
            var odd = Vector256.Create(a[1]) * x1;
            even = Vector256.FusedMultiplyAdd(Vector256.Create(a[2]), x2, even);
            odd = Vector256.FusedMultiplyAdd(Vector256.Create(a[3]), x3, odd);
            even = Vector256.FusedMultiplyAdd(Vector256.Create(a[4]), x4, even);
            odd = Vector256.FusedMultiplyAdd(Vector256.Create(a[5]), x5, odd);
            even = Vector256.FusedMultiplyAdd(Vector256.Create(a[6]), x6, even);
            odd = Vector256.FusedMultiplyAdd(Vector256.Create(a[7]), x7, odd);
            (even + odd).Store(s);
        }
    }

    /// <summary>Asks memory for a cache line; harmless wherever it points.</summary>
    private static void Fetch(double* line)
    {
        if (Sse.IsSupported)
        {
            Sse.Prefetch0(line);
        }
    }
}
