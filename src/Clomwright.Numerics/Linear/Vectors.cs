using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Wide = System.Numerics.Vector<double>;

namespace Clomwright.Numerics.Linear;

/// <summary>Products of plain vectors, summed in the order of their entries.</summary>
internal static class Vectors
{
    /// <summary>Scalar product.</summary>
    public static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        double sum = 0;
        for (var i = 0; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }

    /// <summary>Length.</summary>
    public static double Norm(ReadOnlySpan<double> a) => Math.Sqrt(Dot(a, a));

    /// <summary>sum := sum + times x.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void AddTimes(Span<double> sum, double times, ReadOnlySpan<double> x)
    {
        var wide = MemoryMarshal.Cast<double, Wide>(sum);
        var from = MemoryMarshal.Cast<double, Wide>(x);
        for (var i = 0; i < wide.Length; i++)
        {
            wide[i] += times * from[i];
        }

        for (var i = wide.Length * Wide.Count; i < sum.Length; i++)
        {
            sum[i] += times * x[i];
        }
    }
}
