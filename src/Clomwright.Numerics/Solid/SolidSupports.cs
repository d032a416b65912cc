using System.Collections.Immutable;

namespace Clomwright.Numerics.Solid;

/// <summary>A spring from a node to the ground.</summary>
/// <param name="Node">The node.</param>
/// <param name="Axis">Direction of its force: 0 x, 1 y, 2 z.</param>
/// <param name="Stiffness">Force for each unit of displacement, above zero.</param>
/// <param name="PushesOnly">Whether it lets go instead of pulling: it can push towards +axis, never hold back.</param>
/// <param name="Settlement">How far its foot has moved along the axis.</param>
public readonly record struct GroundSpring(int Node, int Axis, double Stiffness, bool PushesOnly = false, double Settlement = 0);

/// <summary>A displacement that is given.</summary>
/// <param name="Node">The node.</param>
/// <param name="Axis">0 x, 1 y, 2 z.</param>
/// <param name="Displacement">Its displacement.</param>
public readonly record struct HeldNode(int Node, int Axis, double Displacement = 0);

/// <summary>What holds a body.</summary>
public sealed class SolidSupports
{
    /// <summary>Supports of springs and held displacements; two springs on one node and axis add up, a push-only one stands alone.</summary>
    /// <exception cref="ArgumentException">A spring without stiffness, or a direction that is none.</exception>
    public SolidSupports(IEnumerable<GroundSpring> springs, IEnumerable<HeldNode> held)
    {
        Springs = [.. springs];
        Held = [.. held];
        foreach (var spring in Springs)
        {
            if (!(spring.Stiffness > 0 && double.IsFinite(spring.Stiffness + spring.Settlement)) || spring.Axis is < 0 or > 2)
            {
                throw new ArgumentException($"{spring} is no spring.");
            }
        }

        foreach (var node in Held)
        {
            if (node.Axis is < 0 or > 2 || !double.IsFinite(node.Displacement))
            {
                throw new ArgumentException($"{node} holds nothing.");
            }
        }
    }

    /// <summary>Springs to the ground.</summary>
    public ImmutableArray<GroundSpring> Springs { get; }

    /// <summary>Given displacements.</summary>
    public ImmutableArray<HeldNode> Held { get; }

    /// <summary>
    /// A bed under the lowest face of every solid cell: springs at the nodes, their stiffness the bed's modulus (force for each area and
    /// displacement) times the area that each node carries.
    /// </summary>
    /// <param name="grid">The grid.</param>
    /// <param name="cells">Only what is solid rests on the bed.</param>
    /// <param name="normal">Modulus along z.</param>
    /// <param name="tangential">Modulus along x and y.</param>
    /// <param name="pushesOnly">Whether the bed lets go where the body lifts.</param>
    public static SolidSupports Bed(SolidGrid grid, SolidCells cells, double normal, double tangential, bool pushesOnly)
    {
        var areas = new SortedDictionary<int, double>();
        Span<double> shares = stackalloc double[4];
        for (var i = 0; i < grid.Around; i++)
        {
            for (var j = 0; j < grid.Through; j++)
            {
                var cell = grid.Cell(i, 0, j);
                if (!cells[cell].IsSolid)
                {
                    continue;
                }

                var face = new CellFace(grid, cell, CellSide.Bottom);
                face.NodalAreas(shares);
                for (var n = 0; n < 4; n++)
                {
                    areas[face.Node(n)] = areas.GetValueOrDefault(face.Node(n)) + cells[cell].Share * shares[n];
                }
            }
        }

        return new SolidSupports(
            areas.SelectMany(pair => new[]
            {
                new GroundSpring(pair.Key, 0, tangential * pair.Value),
                new GroundSpring(pair.Key, 1, tangential * pair.Value),
                new GroundSpring(pair.Key, 2, normal * pair.Value, pushesOnly),
            }),
            []);
    }
}
