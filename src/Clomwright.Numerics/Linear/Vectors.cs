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
}
