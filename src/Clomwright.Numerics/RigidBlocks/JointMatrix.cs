using Clomwright.Numerics.Factorisation;
using Clomwright.Numerics.Frames;

namespace Clomwright.Numerics.RigidBlocks;

/// <summary>S A D A' S for weights D of the edges: the matrix of the normal equations, with the pattern of a stiffness between neighbours. S makes its diagonal ones.</summary>
internal sealed class JointMatrix : ISheetMatrix
{
    /// <summary>Added to the ones on the diagonal, so that directions which no joint resists by the last steps do not lose their pivot.</summary>
    private const double Ridge = 1e-13;

    private static readonly short[] AllSix = [0, 1, 2, 3, 4, 5];

    private readonly BlockSheet sheet;
    private readonly JointForces forces;
    private readonly List<int>[] jointsOf;
    private readonly double[] ridge;
    private readonly double[] scale;
    private readonly Vector3[] tensor;

    /// <summary>The matrix of a sheet, without weights yet.</summary>
    public JointMatrix(BlockSheet sheet, JointForces forces)
    {
        (this.sheet, this.forces) = (sheet, forces);
        jointsOf = [.. Enumerable.Range(0, sheet.Shape.Patches).Select(_ => new List<int>())];
        for (var j = 0; j < sheet.Joints.Count; j++)
        {
            jointsOf[sheet.PatchOf[j].Patch].Add(j);
        }

        ridge = [.. Enumerable.Repeat(Ridge, 6)];
        scale = [.. Enumerable.Repeat(1.0, forces.Rows)];
        tensor = new Vector3[3 * forces.Count / JointForces.Edges];
    }

    /// <inheritdoc/>
    public SheetShape Shape => sheet.Shape;

    /// <inheritdoc/>
    public int DofsPerColumn => 6;

    /// <summary>Far below the ones on the diagonal: only a pivot lost in the ridge is taken for a mechanism.</summary>
    public double LargestDiagonal => 0.01;

    /// <summary>S: one over the root of the diagonal of A D A'.</summary>
    public ReadOnlySpan<double> Scale => scale;

    /// <inheritdoc/>
    public ReadOnlySpan<short> Active(int column) => sheet.Blocks[column] is null ? [] : AllSix;

    /// <inheritdoc/>
    public bool IsEmpty(int patch) => jointsOf[patch].Count == 0;

    /// <inheritdoc/>
    public ReadOnlySpan<double> Diagonal(int column) => ridge;

    /// <summary>Takes new weights of the edges.</summary>
    public void Weigh(ReadOnlySpan<double> weights)
    {
        var diagonal = new double[forces.Rows];
        for (var j = 0; j < sheet.Joints.Count; j++)
        {
            for (var p = forces.FirstPoint[j]; p < forces.FirstPoint[j + 1]; p++)
            {
                SetTensor(p, weights);
                AddDiagonal(diagonal.AsSpan(6 * sheet.Joints[j].First, 6), p, ofFirst: true);
                if (sheet.Joints[j].Second is { } second)
                {
                    AddDiagonal(diagonal.AsSpan(6 * second, 6), p, ofFirst: false);
                }
            }
        }

        for (var i = 0; i < diagonal.Length; i++)
        {
            scale[i] = diagonal[i] > 0 ? 1 / Math.Sqrt(diagonal[i]) : 1;
        }
    }

    /// <inheritdoc/>
    public void AddPatch(int patch, in PatchTarget target)
    {
        Span<double> block = stackalloc double[36];
        foreach (var j in jointsOf[patch])
        {
            var (_, first, second) = sheet.PatchOf[j];
            Sum(j, ofFirst: true, andFirst: true, block);
            target.Add(first, AllSix, first, AllSix, block, 1);
            if (second >= 0)
            {
                Sum(j, ofFirst: false, andFirst: false, block);
                target.Add(second, AllSix, second, AllSix, block, 1);
                Sum(j, ofFirst: true, andFirst: false, block);
                target.Add(first, AllSix, second, AllSix, block, -1);
            }
        }
    }

    /// <summary>The three columns of the sum of weight x edge x edge' at one point.</summary>
    private void SetTensor(int point, ReadOnlySpan<double> weights)
    {
        var (x, y, z) = (Vector3.Zero, Vector3.Zero, Vector3.Zero);
        for (var k = point * JointForces.Edges; k < (point + 1) * JointForces.Edges; k++)
        {
            var edge = forces.Edge(k);
            x += weights[k] * edge.X * edge;
            y += weights[k] * edge.Y * edge;
            z += weights[k] * edge.Z * edge;
        }

        (tensor[3 * point], tensor[3 * point + 1], tensor[3 * point + 2]) = (x, y, z);
    }

    /// <summary>The rows of [1; arm x] of a point: what a force along an axis puts on the block.</summary>
    private static Vector3 Row(int row, Vector3 arm) => row switch
    {
        0 => new Vector3(1, 0, 0),
        1 => new Vector3(0, 1, 0),
        2 => new Vector3(0, 0, 1),
        3 => new Vector3(0, -arm.Z, arm.Y),
        4 => new Vector3(arm.Z, 0, -arm.X),
        _ => new Vector3(-arm.Y, arm.X, 0),
    };

    private Vector3 Times(int point, Vector3 a) => a.X * tensor[3 * point] + a.Y * tensor[3 * point + 1] + a.Z * tensor[3 * point + 2];

    private void AddDiagonal(Span<double> to, int point, bool ofFirst)
    {
        for (var i = 0; i < 6; i++)
        {
            var row = Row(i, forces.Arm(point, ofFirst));
            to[i] += row.Dot(Times(point, row));
        }
    }

    /// <summary>The scaled block of one joint between two of its sides.</summary>
    private void Sum(int j, bool ofFirst, bool andFirst, Span<double> block)
    {
        block.Clear();
        for (var p = forces.FirstPoint[j]; p < forces.FirstPoint[j + 1]; p++)
        {
            for (var column = 0; column < 6; column++)
            {
                var pushed = Times(p, Row(column, forces.Arm(p, andFirst)));
                for (var row = 0; row < 6; row++)
                {
                    block[6 * row + column] += Row(row, forces.Arm(p, ofFirst)).Dot(pushed);
                }
            }
        }

        var rows = scale.AsSpan(6 * (ofFirst ? sheet.Joints[j].First : sheet.Joints[j].Second!.Value), 6);
        var columns = scale.AsSpan(6 * (andFirst ? sheet.Joints[j].First : sheet.Joints[j].Second!.Value), 6);
        for (var i = 0; i < 36; i++)
        {
            block[i] *= rows[i / 6] * columns[i % 6];
        }
    }
}
