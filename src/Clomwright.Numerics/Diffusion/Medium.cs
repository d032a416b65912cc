using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Clomwright.Numerics.Diffusion;

/// <summary>Two potentials of a state u that together drive it: flux = -(a grad A(u) + b grad B(u)), with scales a and b that may change in time.</summary>
/// <remarks>
/// Both are given by their slopes, which must not be negative, on an even grid; a slope is taken as straight between grid points and its potential is the exact
/// integral of that, so value and slope belong together to the last bit. Outside the grid slopes stay as at its ends.
/// B also is what the surroundings feel of a surface (<see cref="Exchange"/>).
/// </remarks>
public sealed class Medium
{
    private const int Used = 6, Stride = 8;
    private readonly double from;
    private readonly double spacing;
    private readonly double perSpacing;
    private readonly int intervals;
    private readonly double[] table;

    /// <summary>A medium of two slopes.</summary>
    /// <param name="slopeA">dA/du; not negative.</param>
    /// <param name="slopeB">dB/du; not negative.</param>
    /// <param name="from">Start of the grid of u; both potentials are zero there, B plus <paramref name="valueB"/>.</param>
    /// <param name="to">End of the grid.</param>
    /// <param name="intervals">Intervals of the grid.</param>
    /// <param name="valueB">B at the start.</param>
    public Medium(Func<double, double> slopeA, Func<double, double> slopeB, double from, double to, int intervals, double valueB = 0)
    {
        ArgumentNullException.ThrowIfNull(slopeA);
        ArgumentNullException.ThrowIfNull(slopeB);
        ArgumentOutOfRangeException.ThrowIfLessThan(intervals, 1);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(to, from);
        (this.from, this.intervals) = (from, intervals);
        spacing = (to - from) / intervals;
        perSpacing = 1 / spacing;
        table = new double[(intervals + 1) * Stride];
        double a = 0, b = valueB;
        var (sa, sb) = (slopeA(from), slopeB(from));
        for (var i = 0; i <= intervals; i++)
        {
            var u = from + (i + 1) * spacing;
            var (na, nb) = i < intervals ? (slopeA(u), slopeB(u)) : (sa, sb);
            if (!(sa >= 0 && sb >= 0 && na >= 0 && nb >= 0))
            {
                throw new ArgumentOutOfRangeException(nameof(slopeA), "A slope is negative or no number: such a medium has no steady state.");
            }

            var row = table.AsSpan(i * Stride, Stride);
            (row[0], row[1], row[2], row[3], row[4], row[5]) = (a, sa, (na - sa) * perSpacing, b, sb, (nb - sb) * perSpacing);
            a += (sa + na) / 2 * spacing;
            b += (sb + nb) / 2 * spacing;
            (sa, sb) = (na, nb);
        }
    }

    /// <summary>For each grid point A, its slope, the slope's slope, and the same of B.</summary>
    internal double[] Table => [.. Enumerable.Range(0, intervals + 1).SelectMany(i => table[(i * Stride)..(i * Stride + Used)])];

    /// <summary>A linear medium: A = D u, B = u.</summary>
    public static Medium Linear(double diffusivity) => new(_ => diffusivity, _ => 1, 0, 1, 1);

    /// <summary>At a state: the potential aA + bB and its slope, and B with its slope.</summary>
    public void Evaluate(double u, double scaleA, double scaleB, out double potential, out double slope, out double b, out double slopeB)
    {
        var place = (u - from) * perSpacing;
        var i = place <= 0 ? 0 : place >= intervals ? intervals : (int)place;
        var d = u - (from + i * spacing);
        var row = table.AsSpan(i * Stride, Stride);
        // Below the grid the slope stays as at its start.
        var (ca, cb) = d < 0 ? (0, 0) : (row[2], row[5]);
        b = row[3] + d * (row[4] + d * cb / 2);
        slopeB = row[4] + d * cb;
        potential = scaleA * (row[0] + d * (row[1] + d * ca / 2)) + scaleB * b;
        slope = scaleA * (row[1] + d * ca) + scaleB * slopeB;
    }

    /// <summary>The same at four states.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal void Evaluate(
        Vector256<double> u, double scaleA, double scaleB, out Vector256<double> potential, out Vector256<double> slope, out Vector256<double> b, out Vector256<double> slopeB)
    {
        var place = Vector256.Floor(Vector256.Min(Vector256.Max((u - Vector256.Create(from)) * perSpacing, Vector256<double>.Zero), Vector256.Create((double)intervals)));
        var d = u - (Vector256.Create(from) + place * spacing);
        ref var start = ref MemoryMarshal.GetArrayDataReference(table);
        // Also what is no number becomes a place on the grid.
        ref var row0 = ref Unsafe.Add(ref start, (int)place[0] * Stride);
        ref var row1 = ref Unsafe.Add(ref start, (int)place[1] * Stride);
        ref var row2 = ref Unsafe.Add(ref start, (int)place[2] * Stride);
        ref var row3 = ref Unsafe.Add(ref start, (int)place[3] * Stride);
        Vector256<double> At(int k, ref double r0, ref double r1, ref double r2, ref double r3) => Vector256.Create(Unsafe.Add(ref r0, k), Unsafe.Add(ref r1, k), Unsafe.Add(ref r2, k), Unsafe.Add(ref r3, k));
        var isBelow = Vector256.LessThan(d, Vector256<double>.Zero);
        var ca = Vector256.AndNot(At(2, ref row0, ref row1, ref row2, ref row3), isBelow);
        var cb = Vector256.AndNot(At(5, ref row0, ref row1, ref row2, ref row3), isBelow);
        var sa = At(1, ref row0, ref row1, ref row2, ref row3);
        var sb = At(4, ref row0, ref row1, ref row2, ref row3);
        b = At(3, ref row0, ref row1, ref row2, ref row3) + d * (sb + d * cb / 2);
        slopeB = sb + d * cb;
        potential = scaleA * (At(0, ref row0, ref row1, ref row2, ref row3) + d * (sa + d * ca / 2)) + scaleB * b;
        slope = scaleA * (sa + d * ca) + scaleB * slopeB;
    }

    /// <summary>B at a state.</summary>
    public double B(double u)
    {
        Evaluate(u, 0, 1, out _, out _, out var b, out _);
        return b;
    }

    /// <summary>A at a state.</summary>
    public double A(double u)
    {
        Evaluate(u, 1, 0, out var a, out _, out _, out _);
        return a;
    }
}
