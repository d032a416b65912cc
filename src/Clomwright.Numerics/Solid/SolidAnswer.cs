using System.Collections.Immutable;
using Clomwright.Numerics.Frames;

namespace Clomwright.Numerics.Solid;

/// <summary>The displacement of every node of a grid; zero where nothing is solid.</summary>
public sealed class Displacement
{
    private readonly double[] values;

    internal Displacement(double[] values) => this.values = values;

    /// <summary>Displacements x, y, z of node after node.</summary>
    public ReadOnlySpan<double> Values => values;

    /// <summary>The same for who reads many answers at once; not to be changed.</summary>
    internal double[] Array => values;

    /// <summary>The displacement of a node.</summary>
    public Vector3 At(int node) => new(values[3 * node], values[3 * node + 1], values[3 * node + 2]);

    /// <summary>The displacement at a position.</summary>
    public Vector3 At(SolidGrid grid, double s, double z, double t)
    {
        var (cell, reference) = grid.Locate(s, z, t);
        var sum = Vector3.Zero;
        for (var corner = 0; corner < 8; corner++)
        {
            sum += HexahedronShape.Value(corner, reference) * At(grid.CornerNode(cell, corner));
        }

        return sum;
    }
}

/// <summary>How a body answers one load.</summary>
/// <param name="Load">The load.</param>
/// <param name="Displacement">The displacement of every node.</param>
/// <param name="Lifted">Numbers of the push-only springs that have let go, ascending.</param>
/// <param name="IsInEquilibrium">
/// False when no set of springs holds the body under this load: it tips or slides away, and the displacement is only the last one tried.
/// </param>
public sealed record SolidAnswer(NodalLoad Load, Displacement Displacement, ImmutableArray<int> Lifted, bool IsInEquilibrium);
