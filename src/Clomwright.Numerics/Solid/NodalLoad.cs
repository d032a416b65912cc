using Clomwright.Numerics.Frames;
using Clomwright.Numerics.Linear;

namespace Clomwright.Numerics.Solid;

/// <summary>A force on each node of a grid; unchangeable. Loads add up and can be multiplied.</summary>
public sealed class NodalLoad
{
    private readonly double[] forces;

    /// <summary>Where forces that are not nothing begin, and how many numbers it is to the last of them: a pole presses on a few nodes of thousands.</summary>
    private readonly int first, reach;

    internal NodalLoad(double[] forces)
    {
        this.forces = forces;
        first = Math.Max(0, forces.AsSpan().IndexOfAnyExcept(0.0));
        reach = Math.Max(0, forces.AsSpan().LastIndexOfAnyExcept(0.0) + 1 - first);
    }

    /// <summary>Forces x, y, z of node after node.</summary>
    public ReadOnlySpan<double> Forces => forces;

    /// <summary>The sum of all forces.</summary>
    public Vector3 Resultant
    {
        get
        {
            var sum = Vector3.Zero;
            for (var i = 0; i < forces.Length; i += 3)
            {
                sum += new Vector3(forces[i], forces[i + 1], forces[i + 2]);
            }

            return sum;
        }
    }

    /// <summary>The force on a node.</summary>
    public Vector3 At(int node) => new(forces[3 * node], forces[3 * node + 1], forces[3 * node + 2]);

    /// <summary>Both loads together.</summary>
    public static NodalLoad operator +(NodalLoad a, NodalLoad b) => Combine(a, 1, b, 1);

    /// <summary>One load without the other.</summary>
    public static NodalLoad operator -(NodalLoad a, NodalLoad b) => Combine(a, 1, b, -1);

    /// <summary>A multiple.</summary>
    public static NodalLoad operator *(double factor, NodalLoad a) => new(Array.ConvertAll(a.forces, f => factor * f));

    /// <summary>The sum of some loads, each a number of times; those taken no times are not looked at.</summary>
    /// <param name="loads">At least one, all on one grid.</param>
    /// <param name="times">As many numbers, or fewer: the rest counts as none.</param>
    public static NodalLoad Sum(IReadOnlyList<NodalLoad> loads, ReadOnlySpan<double> times)
    {
        ArgumentOutOfRangeException.ThrowIfZero(loads.Count);
        var sum = new double[loads[0].forces.Length];
        for (var n = 0; n < Math.Min(loads.Count, times.Length); n++)
        {
            if (times[n] != 0)
            {
                var load = loads[n];
                Vectors.AddTimes(sum.AsSpan(load.first, load.reach), times[n], load.forces.AsSpan(load.first, load.reach));
            }
        }

        return new NodalLoad(sum);
    }

    /// <summary>Every node's force put through a function.</summary>
    public NodalLoad Turned(Func<Vector3, Vector3> turn)
    {
        var turned = new double[forces.Length];
        for (var node = 0; node < forces.Length / 3; node++)
        {
            var force = turn(At(node));
            (turned[3 * node], turned[3 * node + 1], turned[3 * node + 2]) = (force.X, force.Y, force.Z);
        }

        return new NodalLoad(turned);
    }

    private static NodalLoad Combine(NodalLoad a, double x, NodalLoad b, double y)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(a.forces.Length, b.forces.Length);
        var sum = new double[a.forces.Length];
        for (var i = 0; i < sum.Length; i++)
        {
            sum[i] = x * a.forces[i] + y * b.forces[i];
        }

        return new NodalLoad(sum);
    }
}
