using Clomwright.Numerics.Frames;

namespace Clomwright.Numerics.RigidBlocks;

/// <summary>
/// The matrix A that takes the multiples x of all pyramid edges to the wrenches they put on the blocks, six rows a block, and its transpose. Forces are
/// counted in units of one block's weight and lengths in units of a block's size, so that all numbers are near one.
/// </summary>
internal sealed class JointForces
{
    /// <summary>Edges of the pyramid at each point.</summary>
    public const int Edges = 4;

    private readonly int[] first;
    private readonly int[] second;
    private readonly Vector3[] edges;
    private readonly Vector3[] armFirst;
    private readonly Vector3[] armSecond;

    /// <summary>The edges of all joints, with lengths divided by a scale.</summary>
    public JointForces(BlockSheet sheet, double length)
    {
        var points = sheet.Joints.Sum(joint => joint.Points.Count);
        (first, second) = (new int[points], new int[points]);
        (armFirst, armSecond) = (new Vector3[points], new Vector3[points]);
        edges = new Vector3[points * Edges];
        Rows = 6 * sheet.Shape.Columns;
        FirstPoint = new int[sheet.Joints.Count + 1];
        var p = 0;
        for (var j = 0; j < sheet.Joints.Count; j++)
        {
            var joint = sheet.Joints[j];
            var (u, v) = (joint.Strength.Friction * joint.AcrossU, joint.Strength.Friction * joint.AcrossV);
            foreach (var point in joint.Points)
            {
                (first[p], second[p]) = (joint.First, joint.Second ?? -1);
                armFirst[p] = 1 / length * (point - sheet.Blocks[joint.First]!.Centre);
                armSecond[p] = joint.Second is { } other ? 1 / length * (point - sheet.Blocks[other]!.Centre) : Vector3.Zero;
                edges[p * Edges] = joint.Normal + u;
                edges[p * Edges + 1] = joint.Normal - u;
                edges[p * Edges + 2] = joint.Normal + v;
                edges[p * Edges + 3] = joint.Normal - v;
                p++;
            }

            FirstPoint[j + 1] = p;
        }
    }

    /// <summary>Six for each place on the sheet.</summary>
    public int Rows { get; }

    /// <summary>Multiples of edges.</summary>
    public int Count => edges.Length;

    /// <summary>Where the points of each joint begin.</summary>
    public int[] FirstPoint { get; }

    /// <summary>The arm of a point about the first block, or the second.</summary>
    public Vector3 Arm(int point, bool ofFirst) => ofFirst ? armFirst[point] : armSecond[point];

    /// <summary>One edge of one point.</summary>
    public Vector3 Edge(int index) => edges[index];

    /// <summary>result := A x.</summary>
    public void Multiply(ReadOnlySpan<double> x, Span<double> result)
    {
        result.Clear();
        for (var p = 0; p < first.Length; p++)
        {
            var force = Vector3.Zero;
            for (var k = p * Edges; k < (p + 1) * Edges; k++)
            {
                force += x[k] * edges[k];
            }

            AddAt(p, force, result);
        }
    }

    /// <summary>Adds a force on the first block at a point, and its opposite on the second.</summary>
    public void AddAt(int point, Vector3 force, Span<double> result)
    {
        Add(result[(6 * first[point])..], force, armFirst[point].Cross(force));
        if (second[point] >= 0)
        {
            Add(result[(6 * second[point])..], -force, armSecond[point].Cross(-force));
        }
    }

    /// <summary>result := A' y.</summary>
    public void MultiplyTransposed(ReadOnlySpan<double> y, Span<double> result)
    {
        for (var p = 0; p < first.Length; p++)
        {
            var slip = At(y, first[p], armFirst[p]);
            slip = second[p] < 0 ? slip : slip - At(y, second[p], armSecond[p]);
            for (var k = p * Edges; k < (p + 1) * Edges; k++)
            {
                result[k] = edges[k].Dot(slip);
            }
        }
    }

    private static Vector3 At(ReadOnlySpan<double> y, int block, Vector3 arm)
    {
        var part = y.Slice(6 * block, 6);
        return new Vector3(part[0], part[1], part[2]) + new Vector3(part[3], part[4], part[5]).Cross(arm);
    }

    private static void Add(Span<double> to, Vector3 force, Vector3 moment)
    {
        to[0] += force.X;
        to[1] += force.Y;
        to[2] += force.Z;
        to[3] += moment.X;
        to[4] += moment.Y;
        to[5] += moment.Z;
    }
}
