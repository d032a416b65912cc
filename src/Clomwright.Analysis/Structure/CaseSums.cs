using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Clomwright.Analysis.Structure;

/// <summary>Sums of what the unit loads do, case by case; what cases share is summed once.</summary>
internal sealed class CaseSums(double[][] units)
{
    private double[]? shared;
    private double[]? sharedSum;

    /// <summary>The sum of a case; valid until the next one is asked for where the array is handed in.</summary>
    public void Of(WallCase one, double[] into)
    {
        if (one.Resting.Length == 0)
        {
            Array.Clear(into);
            Add(one.Coefficients, into);
            return;
        }

        if (!ReferenceEquals(shared, one.Resting))
        {
            shared = one.Resting;
            sharedSum = new double[into.Length];
            Add(shared, sharedSum);
        }

        sharedSum!.CopyTo(into, 0);
        for (var unit = 0; unit < units.Length; unit++)
        {
            var more = one.Coefficients[unit] - one.Resting[unit];
            if (more != 0)
            {
                Add(more, units[unit], into);
            }
        }
    }

    private void Add(double[] coefficients, double[] into)
    {
        for (var unit = 0; unit < units.Length; unit++)
        {
            if (coefficients[unit] != 0)
            {
                Add(coefficients[unit], units[unit], into);
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Add(double factor, double[] values, double[] into)
    {
        var from = MemoryMarshal.Cast<double, Vector<double>>(values.AsSpan());
        var to = MemoryMarshal.Cast<double, Vector<double>>(into.AsSpan());
        for (var i = 0; i < from.Length; i++)
        {
            to[i] += factor * from[i];
        }

        for (var i = from.Length * Vector<double>.Count; i < values.Length; i++)
        {
            into[i] += factor * values[i];
        }
    }
}
