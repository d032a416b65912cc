using System.Collections.Immutable;
using Clomwright.Numerics.Factorisation;
using Clomwright.Numerics.Frames;

namespace Clomwright.Numerics.Solid;

/// <summary>
/// A body divided by three families of lines: s the long way (it may close on itself), z up, t through the thickness. Eight nodes make a
/// hexahedral cell; only the nodes' places matter to the elements, so any smooth plan costs the same.
/// </summary>
/// <remarks>
/// Node (i, k, j) has number (i (Up+1) + k) (Through+1) + j: the nodes of one thickness column follow each other. Cell (i, k, j) has number
/// (i Up + k) Through + j. In a closed grid node i = Around is node 0, and the s lines still run to the full length of the ring.
/// </remarks>
public sealed class SolidGrid
{
    private readonly Vector3[] points;
    private readonly Lazy<double[]> gaussVolumes;
    private readonly Lazy<FacePoint[]> insidePoints, outsidePoints;
    private readonly int[] firstCorners;

    private SolidGrid(ImmutableArray<double> s, ImmutableArray<double> z, ImmutableArray<double> t, bool closed, Vector3[] points)
    {
        (S, Z, T, IsClosed, this.points) = (s, z, t, closed, points);
        Columns = new SheetShape(closed ? Around : Around + 1, Up + 1, closed);
        gaussVolumes = new Lazy<double[]>(MeasureVolumes);
        (insidePoints, outsidePoints) = (new(() => MeasureFaces(CellSide.Inside)), new(() => MeasureFaces(CellSide.Outside)));
        firstCorners = new int[Cells];
        for (var cell = 0; cell < firstCorners.Length; cell++)
        {
            var (i, k, j) = Position(cell);
            firstCorners[cell] = Node(i, k, j);
        }
    }

    /// <summary>Lines the long way; in a closed grid the last is the first again, one ring length on.</summary>
    public ImmutableArray<double> S { get; }

    /// <summary>Lines up.</summary>
    public ImmutableArray<double> Z { get; }

    /// <summary>Lines through the thickness.</summary>
    public ImmutableArray<double> T { get; }

    /// <summary>Whether the long way closes on itself.</summary>
    public bool IsClosed { get; }

    /// <summary>Cells the long way.</summary>
    public int Around => S.Length - 1;

    /// <summary>Cells up.</summary>
    public int Up => Z.Length - 1;

    /// <summary>Cells through the thickness.</summary>
    public int Through => T.Length - 1;

    /// <summary>Number of nodes.</summary>
    public int Nodes => points.Length;

    /// <summary>Number of cells.</summary>
    public int Cells => Around * Up * Through;

    /// <summary>The sheet of thickness columns.</summary>
    public SheetShape Columns { get; }

    /// <summary>Divides a body: <paramref name="at"/> gives the point at (s, z, t). In a closed grid the last s line is the first, a ring length on.</summary>
    /// <exception cref="ArgumentException">Lines that do not ascend, or too few.</exception>
    public static SolidGrid Map(
        IReadOnlyList<double> s, IReadOnlyList<double> z, IReadOnlyList<double> t, bool closed, Func<double, double, double, Vector3> at)
    {
        foreach (var (lines, name) in new[] { (s, nameof(s)), (z, nameof(z)), (t, nameof(t)) })
        {
            if (lines.Count < 2 || lines.Zip(lines.Skip(1)).Any(pair => !(pair.First < pair.Second)))
            {
                throw new ArgumentException("Grid lines must ascend, at least two of them.", name);
            }
        }

        var points = new List<Vector3>();
        foreach (var sLine in closed ? s.Take(s.Count - 1) : s)
        {
            foreach (var zLine in z)
            {
                points.AddRange(t.Select(tLine => at(sLine, zLine, tLine)));
            }
        }

        return new SolidGrid([.. s], [.. z], [.. t], closed, [.. points]);
    }

    /// <summary>Number of a node; in a closed grid i wraps.</summary>
    public int Node(int i, int k, int j) => ((IsClosed ? (i % Around + Around) % Around : i) * (Up + 1) + k) * (Through + 1) + j;

    /// <summary>Number of a cell; in a closed grid i wraps.</summary>
    public int Cell(int i, int k, int j) => ((IsClosed ? (i % Around + Around) % Around : i) * Up + k) * Through + j;

    /// <summary>Where a cell stands.</summary>
    public (int I, int K, int J) Position(int cell)
    {
        var (stack, j) = Math.DivRem(cell, Through);
        var (i, k) = Math.DivRem(stack, Up);
        return (i, k, j);
    }

    /// <summary>A node's place.</summary>
    public Vector3 Point(int node) => points[node];

    /// <summary>The same grid with its points moved.</summary>
    public SolidGrid Moved(Func<Vector3, Vector3> move) => new(S, Z, T, IsClosed, Array.ConvertAll(points, p => move(p)));

    /// <summary>The node at one of a cell's eight corners: bit 0 is t, bit 1 s, bit 2 z.</summary>
    public int CornerNode(int cell, int corner)
    {
        var node = firstCorners[cell] + ((corner >> 1 & 1) * (Up + 1) + (corner >> 2)) * (Through + 1) + (corner & 1);
        return node < points.Length ? node : node - points.Length;
    }

    /// <summary>The points of a cell's corners, in the order of <see cref="CornerNode"/>.</summary>
    public void Corners(int cell, Span<Vector3> corners)
    {
        for (var pair = 0; pair < 4; pair++)
        {
            // Both nodes of a thickness column follow each other.
            var node = CornerNode(cell, 2 * pair);
            (corners[2 * pair], corners[2 * pair + 1]) = (points[node], points[node + 1]);
        }
    }

    /// <summary>Volume of a cell, or of what is left of it.</summary>
    public double Volume(int cell, CellCut? cut = null)
    {
        var (sum, volumes) = (0.0, GaussVolumes(cell).ToArray());
        for (var q = 0; q < 8; q++)
        {
            sum += (cut is null ? 1 : cut.Weights[q]) * volumes[q];
        }

        return sum;
    }

    /// <summary>The volumes that the Gauss points of a cell stand for.</summary>
    internal ReadOnlySpan<double> GaussVolumes(int cell) => gaussVolumes.Value.AsSpan(8 * cell, 8);

    /// <summary>The four Gauss points of a side of a cell. Those of the wall's two faces are measured once.</summary>
    internal ReadOnlySpan<FacePoint> FacePoints(int cell, CellSide side) => side switch
    {
        CellSide.Inside => insidePoints.Value.AsSpan(4 * cell, 4),
        CellSide.Outside => outsidePoints.Value.AsSpan(4 * cell, 4),
        _ => new CellFace(this, cell, side).Points(),
    };

    /// <summary>Cells that are folded over or flat, so that no element can be made of them.</summary>
    public IReadOnlyList<int> FoldedCells()
    {
        var corners = new Vector3[8];
        return
        [
            .. Enumerable.Range(0, Cells).Where(cell =>
            {
                Corners(cell, corners);
                return !HexahedronShape.IsSound(corners);
            }),
        ];
    }

    /// <summary>The cell that holds a position and the reference coordinates (-1..1) in it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The position is outside the lines.</exception>
    public (int Cell, Vector3 Reference) Locate(double s, double z, double t)
    {
        if (IsClosed)
        {
            s = S[0] + GridLines.Modulo(s - S[0], S[^1] - S[0]);
        }

        var (i, xi) = Within(S, s, nameof(s));
        var (k, eta) = Within(Z, z, nameof(z));
        var (j, zeta) = Within(T, t, nameof(t));
        return (Cell(i, k, j), new Vector3(xi, eta, zeta));
    }

    private static (int Cell, double Reference) Within(ImmutableArray<double> lines, double position, string name)
    {
        var slack = 1e-9 * (lines[^1] - lines[0]);
        if (!(position >= lines[0] - slack && position <= lines[^1] + slack))
        {
            throw new ArgumentOutOfRangeException(name, position, $"Outside the lines {lines[0]} to {lines[^1]}.");
        }

        var cell = GridLines.CellOf(lines, position);
        return (cell, 2 * (position - lines[cell]) / (lines[cell + 1] - lines[cell]) - 1);
    }

    private FacePoint[] MeasureFaces(CellSide side) => [.. Enumerable.Range(0, Cells).SelectMany(cell => new CellFace(this, cell, side).Points())];

    private double[] MeasureVolumes()
    {
        var volumes = new double[8 * Cells];
        var corners = new Vector3[8];
        for (var cell = 0; cell < Cells; cell++)
        {
            Corners(cell, corners);
            HexahedronShape.GaussVolumes(corners, volumes.AsSpan(8 * cell, 8));
        }

        return volumes;
    }
}
