using Clomwright.Numerics.Frames;

namespace Clomwright.Numerics.Solid;

/// <summary>The six sides of a cell.</summary>
public enum CellSide
{
    /// <summary>Lowest t: the inside.</summary>
    Inside,

    /// <summary>Highest t: the outside.</summary>
    Outside,

    /// <summary>Lowest s.</summary>
    Start,

    /// <summary>Highest s.</summary>
    End,

    /// <summary>Lowest z.</summary>
    Bottom,

    /// <summary>Highest z.</summary>
    Top,
}

/// <summary>A Gauss point of one side of a cell.</summary>
/// <param name="Place">Where it lies.</param>
/// <param name="Normal">Unit normal out of the cell.</param>
/// <param name="Area">What it stands for.</param>
internal readonly record struct FacePoint(Vector3 Place, Vector3 Normal, double Area);

/// <summary>One side of a cell, over which forces are spread.</summary>
internal readonly struct CellFace
{
    private static readonly double Gauss = 1 / Math.Sqrt(3);

    /// <summary>Shape function of corner n (0..3) of a face at its Gauss point q, at 4 q + n: on every side the same.</summary>
    private static readonly double[] Shares = [.. Enumerable.Range(0, 16).Select(i => InPlane(i % 4 & 1, i / 4 & 1) * InPlane(i % 4 >> 1, i / 4 >> 1))];

    private readonly SolidGrid grid;
    private readonly int cell;
    private readonly CellSide side;
    private readonly int fixedBit;
    private readonly bool high;

    /// <summary>A side of a cell.</summary>
    public CellFace(SolidGrid grid, int cell, CellSide side)
    {
        (this.grid, this.cell, this.side) = (grid, cell, side);
        fixedBit = side switch { CellSide.Inside or CellSide.Outside => 0, CellSide.Start or CellSide.End => 1, _ => 2 };
        high = side is CellSide.Outside or CellSide.End or CellSide.Top;
    }

    /// <summary>One of the four nodes.</summary>
    public int Node(int corner) => grid.CornerNode(cell, CellCorner(corner));

    /// <summary>Integrals of the four shape functions over the area between reference coordinates, by default all of it.</summary>
    public void NodalAreas(Span<double> areas, double uFrom = -1, double uTo = 1, double vFrom = -1, double vTo = 1)
    {
        areas.Clear();
        Span<Vector3> corners = stackalloc Vector3[8];
        grid.Corners(cell, corners);
        for (var q = 0; q < 4; q++)
        {
            var at = GaussPoint(q, uFrom, uTo, vFrom, vTo);
            var area = (uTo - uFrom) * (vTo - vFrom) / 4 * AreaVector(HexahedronShape.JacobianAt(corners, at)).Norm;
            for (var n = 0; n < 4; n++)
            {
                areas[n] += area * HexahedronShape.Value(CellCorner(n), at);
            }
        }
    }

    /// <summary>The forces on the four nodes of a force for each area that depends on the place and on the unit normal out of the cell.</summary>
    /// <remarks>Of a cell that a void cuts only the part of the face counts that has something solid behind it.</remarks>
    public void NodalForces(Func<Vector3, Vector3, Vector3> traction, CellCut? cut, Span<Vector3> forces)
    {
        forces.Clear();
        var points = grid.FacePoints(cell, side);
        for (var q = 0; q < 4; q++)
        {
            var force = SolidBehind(cut, q) * points[q].Area * traction(points[q].Place, points[q].Normal);
            for (var n = 0; n < 4; n++)
            {
                forces[n] += Shares[4 * q + n] * force;
            }
        }
    }

    /// <summary>What its four nodes carry of it, or of what is left of it behind a cut as in <see cref="NodalForces"/>.</summary>
    public FaceShare[] NodalShares(CellCut? cut)
    {
        var points = grid.FacePoints(cell, side);
        var shares = new FaceShare[4];
        for (var n = 0; n < 4; n++)
        {
            var (area, outward) = (0.0, Vector3.Zero);
            for (var q = 0; q < 4; q++)
            {
                var part = Shares[4 * q + n] * SolidBehind(cut, q) * points[q].Area;
                (area, outward) = (area + part, outward + part * points[q].Normal);
            }

            shares[n] = new(Node(n), area, outward);
        }

        return shares;
    }

    /// <summary>Its four Gauss points.</summary>
    public FacePoint[] Points()
    {
        Span<Vector3> corners = stackalloc Vector3[8];
        grid.Corners(cell, corners);
        var (outward, points) = (OutwardSign(corners), new FacePoint[4]);
        for (var q = 0; q < 4; q++)
        {
            var at = GaussPoint(q, -1, 1, -1, 1);
            var area = AreaVector(HexahedronShape.JacobianAt(corners, at));
            points[q] = new(HexahedronShape.PointAt(corners, at), outward * area.Unit(), area.Norm);
        }

        return points;
    }

    private double SolidBehind(CellCut? cut, int q) => cut is null ? 1 : Math.Max(cut.Weights[Beside(q, 0)], cut.Weights[Beside(q, 1)]);

    private static double InPlane(int corner, int point) => (1 + (corner == point ? Gauss : -Gauss)) / 2;

    private Vector3 GaussPoint(int q, double uFrom, double uTo, double vFrom, double vTo) => Reference(
        (uFrom + uTo) / 2 + ((q & 1) == 0 ? -Gauss : Gauss) * (uTo - uFrom) / 2,
        (vFrom + vTo) / 2 + ((q & 2) == 0 ? -Gauss : Gauss) * (vTo - vFrom) / 2);

    /// <summary>The corner of the cell at a corner (0..3) of the face.</summary>
    private int CellCorner(int corner) => Beside(corner, high ? 1 : 0);

    /// <summary>The corner, or Gauss point, of the cell that is at a corner (0..3) of the low or the high one of two opposite faces.</summary>
    private int Beside(int corner, int side)
    {
        var low = corner & ((1 << fixedBit) - 1);
        var rest = (corner >> fixedBit) << (fixedBit + 1);
        return rest | side << fixedBit | low;
    }

    /// <summary>Reference coordinates in the cell of (u, v) on the face, the two free directions in the order t, s, z.</summary>
    private Vector3 Reference(double u, double v)
    {
        var w = high ? 1.0 : -1;
        return fixedBit switch { 0 => new Vector3(u, v, w), 1 => new Vector3(w, v, u), _ => new Vector3(v, w, u) };
    }

    private Vector3 AreaVector(Jacobian j) => fixedBit switch { 0 => j.Xi.Cross(j.Eta), 1 => j.Zeta.Cross(j.Eta), _ => j.Zeta.Cross(j.Xi) };

    private double OutwardSign(ReadOnlySpan<Vector3> corners)
    {
        var j = HexahedronShape.JacobianAt(corners, Vector3.Zero);
        var across = fixedBit switch { 0 => j.Zeta, 1 => j.Xi, _ => j.Eta };
        return AreaVector(j).Dot(across) > 0 == high ? 1 : -1;
    }
}
