namespace Clomwright.Analysis.Roof;

/// <summary>How far the ring sinks as the poles bend.</summary>
/// <remarks>
/// The far end of each pole sinks with the near crossing of the next: <c>v_i = lambda_i v_(i+1) + y_i</c>, cyclic against the order of carrying, where y_i
/// is the sinking of pole i alone. For equal poles v = y b/s: up to sixteen times a simple span.
/// </remarks>
public static class RingDrop
{
    /// <summary>v_i at each near crossing, m, in the order of carrying.</summary>
    public static double[] Of(ReadOnlySpan<double> near, ReadOnlySpan<double> far, ReadOnlySpan<double> sink)
    {
        var n = near.Length;
        double around = 1, first = 0;
        for (var i = 0; i < n; i++)
        {
            first += around * sink[i];
            around *= near[i] / far[i];
        }

        var v = new double[n];
        v[0] = first / (1 - around);
        for (var i = n - 1; i > 0; i--)
        {
            v[i] = sink[i] + near[i] / far[i] * v[(i + 1) % n];
        }

        return v;
    }
}
