using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Clomwright.Numerics.Frames;
using Clomwright.Numerics.Linear;

namespace Clomwright.Numerics.Solid;

/// <summary>
/// The hexahedral element with eight nodes and nine incompatible modes (Taylor, Beresford and Wilson 1976). See README.md. One object serves any
/// number of elements, one after the other.
/// </summary>
/// <remarks>
/// Nodes 0..7 are the corners; 8..10 stand for the modes 1 - xi^2, 1 - eta^2 and 1 - zeta^2, each with three components. Gradients of the modes use
/// the Jacobian at the centre, scaled by |J0|/|J|, so that a state of constant stress does no work on them: the patch test.
/// </remarks>
internal sealed unsafe class Hexahedron
{
    /// <summary>Displacements of the corners: three for each, corner after corner.</summary>
    public const int Dofs = 24;

    private const int Corners = 8;
    private const int ModeDofs = 9;
    private const int Points = Corners + 3;

    /// <summary>Three numbers of a row padded to four.</summary>
    private const int Stride = 4 * Points;

    private static readonly Vector3[][] GaussSlopes =
        [.. HexahedronShape.GaussPoints.Select(point => Enumerable.Range(0, Corners).Select(n => HexahedronShape.Slope(n, point)).ToArray())];

    private static readonly (int Row, int Along)[] Strains = [(0, 0), (3, 1), (5, 2), (1, 1), (3, 0), (4, 2), (2, 2), (4, 1), (5, 0)];

    private readonly double[] matrix = new double[3 * Points * Stride];
    private readonly double[] elasticity = new double[36];
    private readonly double[] modeFactor = new double[ModeDofs * ModeDofs];
    private readonly double[] modesOfCorners = new double[ModeDofs * Dofs];
    private readonly Vector3[] corners = new Vector3[Corners];
    private readonly Vector3[] gradients = new Vector3[Points];
    private Jacobian centre;
    private InverseJacobian centreInverse;
    private bool hasModes;
    private bool knowsModes;

    /// <summary>Forms the element with given corners and material.</summary>
    /// <param name="at">Corners in the order of <see cref="SolidGrid.CornerNode"/>.</param>
    /// <param name="material">Its axes follow s, z and t at the centre of the element.</param>
    /// <param name="cut">What is left of the cell; null for all.</param>
    /// <param name="withModes">Without the modes it is the plain element, far too stiff in bending; only for comparison.</param>
    public void Form(ReadOnlySpan<Vector3> at, ElasticMaterial material, CellCut? cut, bool withModes)
    {
        Place(at);
        hasModes = withModes;
        Elasticity.ToGlobal(material, centre.Axes, elasticity);
        Integrate(cut, []);
        knowsModes = false;
        if (hasModes)
        {
            CondenseModes();
        }
    }

    /// <summary>Takes the corners; what varies from point to point can be asked for then.</summary>
    public void Place(ReadOnlySpan<Vector3> at)
    {
        at.CopyTo(corners);
        centre = HexahedronShape.JacobianAt(corners, Vector3.Zero);
        centreInverse = centre.Inverse();
    }

    /// <summary>Unit directions at the centre of the placed element.</summary>
    public LocalAxes Axes => centre.Axes;

    /// <summary>The gradients of the corners' functions and of the three modes at a Gauss point of the placed element, good until the next call; and the volume that the point stands for.</summary>
    public ReadOnlySpan<Vector3> GradientsAt(int point, out double volume)
    {
        var jacobian = JacobianAt(GaussSlopes[point]);
        Gradients(HexahedronShape.GaussPoints[point], jacobian, GaussSlopes[point]);
        volume = Math.Abs(jacobian.Determinant);
        return gradients;
    }

    /// <summary>Forms the placed element from an elasticity (36 numbers, in space) at each of its eight Gauss points, with its modes.</summary>
    public void FormTangent(ReadOnlySpan<double> elasticities, CellCut? cut)
    {
        hasModes = true;
        knowsModes = false;
        Integrate(cut, elasticities);
        CondenseModes();
    }

    /// <summary>Copies what the condensation left: L of the modes' own stiffness (9 x 9) and W = L^-1 K_au (9 x 24).</summary>
    public void CopyModes(Span<double> l, Span<double> w)
    {
        modeFactor.CopyTo(l);
        for (var mode = 0; mode < ModeDofs; mode++)
        {
            for (var dof = 0; dof < Dofs; dof++)
            {
                w[mode * Dofs + dof] = matrix[(Dofs + mode) * Stride + 4 * (dof / 3) + dof % 3];
            }
        }
    }

    /// <summary>An entry of the stiffness, between displacement i of one corner and j of another.</summary>
    public double Stiffness(int corner, int i, int other, int j) =>
        corner >= other ? matrix[(3 * corner + i) * Stride + 4 * other + j] : matrix[(3 * other + j) * Stride + 4 * corner + i];

    /// <summary>The six stresses at a reference point for each corner displacement: 6 rows of 24.</summary>
    /// <param name="reference">The point.</param>
    /// <param name="turn">Takes (xx, yy, zz, xy, yz, zx) to the directions wanted: 6 rows of 6.</param>
    /// <param name="rows">Are filled.</param>
    public void StressOperator(Vector3 reference, ReadOnlySpan<double> turn, Span<double> rows)
    {
        Gradients(reference, HexahedronShape.JacobianAt(corners, reference), null);
        Span<double> strain = stackalloc double[6 * Dofs];
        strain.Clear();
        for (var n = 0; n < Corners; n++)
        {
            for (var axis = 0; axis < 3; axis++)
            {
                foreach (var (row, along) in StrainsOf(axis))
                {
                    strain[row * Dofs + 3 * n + axis] = Component(gradients[n], along);
                }
            }
        }

        if (hasModes && !knowsModes)
        {
            FindModes();
            knowsModes = true;
        }

        for (var mode = 0; hasModes && mode < ModeDofs; mode++)
        {
            foreach (var (row, along) in StrainsOf(mode % 3))
            {
                Vectors.AddTimes(strain.Slice(row * Dofs, Dofs), Component(gradients[Corners + mode / 3], along), modesOfCorners.AsSpan(mode * Dofs, Dofs));
            }
        }

        Span<double> turned = stackalloc double[36];
        Elasticity.Multiply(turn, elasticity, turned, transposed: false);
        rows.Clear();
        for (var i = 0; i < 6; i++)
        {
            for (var k = 0; k < 6; k++)
            {
                Vectors.AddTimes(rows.Slice(i * Dofs, Dofs), turned[6 * i + k], strain.Slice(k * Dofs, Dofs));
            }
        }
    }

    /// <summary>In which strains (xx, yy, zz, xy, yz, zx) a displacement along an axis counts, each with the axis along which it changes.</summary>
    private static ReadOnlySpan<(int Row, int Along)> StrainsOf(int axis) => Strains.AsSpan(3 * axis, 3);

    private static double Component(Vector3 v, int axis) => axis switch { 0 => v.X, 1 => v.Y, _ => v.Z };

    /// <summary>Gradients in space of the corners' shape functions and of the modes at a reference point.</summary>
    private void Gradients(Vector3 reference, Jacobian jacobian, Vector3[]? slopes)
    {
        var inverse = jacobian.Inverse();
        for (var n = 0; n < Corners; n++)
        {
            gradients[n] = inverse.Gradient(slopes is null ? HexahedronShape.Slope(n, reference) : slopes[n]);
        }

        var ratio = -2 * centre.Determinant / jacobian.Determinant;
        gradients[8] = ratio * reference.X * centreInverse.Xi;
        gradients[9] = ratio * reference.Y * centreInverse.Eta;
        gradients[10] = ratio * reference.Z * centreInverse.Zeta;
    }

    /// <summary>Adds up B_a^T D B_b over the Gauss points for all pairs b &lt;= a.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Integrate(CellCut? cut, ReadOnlySpan<double> elasticities)
    {
        Array.Clear(matrix);
        var points = hasModes ? Points : Corners;
        for (var q = 0; q < 8; q++)
        {
            var jacobian = JacobianAt(GaussSlopes[q]);
            Gradients(HexahedronShape.GaussPoints[q], jacobian, GaussSlopes[q]);
            var weight = Math.Abs(jacobian.Determinant) * (cut is null ? 1 : cut.Weights[q]);
            fixed (double* first = matrix, d = elasticities.IsEmpty ? elasticity : elasticities.Slice(36 * q, 36))
            {
                for (var b = 0; b < points; b++)
                {
                    // E = weight D B_b, row by row: the stresses of the three displacements of b.
                    var (x, y, z) = (weight * gradients[b].X, weight * gradients[b].Y, weight * gradients[b].Z);
                    var e0 = StressRow(d, x, y, z);
                    var e1 = StressRow(d + 6, x, y, z);
                    var e2 = StressRow(d + 12, x, y, z);
                    var e3 = StressRow(d + 18, x, y, z);
                    var e4 = StressRow(d + 24, x, y, z);
                    var e5 = StressRow(d + 30, x, y, z);
                    for (var a = b; a < points; a++)
                    {
                        var g = gradients[a];
                        var (gx, gy, gz) = (Vector256.Create(g.X), Vector256.Create(g.Y), Vector256.Create(g.Z));
                        var row = first + 3 * a * Stride + 4 * b;
                        (Vector256.Load(row) + gx * e0 + gy * e3 + gz * e5).Store(row);
                        row += Stride;
                        (Vector256.Load(row) + gy * e1 + gx * e3 + gz * e4).Store(row);
                        row += Stride;
                        (Vector256.Load(row) + gz * e2 + gy * e4 + gx * e5).Store(row);
                    }
                }
            }
        }
    }

    private static Vector256<double> StressRow(double* d, double x, double y, double z) =>
        Vector256.Create(d[0] * x + d[3] * y + d[5] * z, d[1] * y + d[3] * x + d[4] * z, d[2] * z + d[4] * y + d[5] * x, 0);

    private Jacobian JacobianAt(Vector3[] slopes)
    {
        var (xi, eta, zeta) = (Vector3.Zero, Vector3.Zero, Vector3.Zero);
        for (var n = 0; n < Corners; n++)
        {
            xi += slopes[n].X * corners[n];
            eta += slopes[n].Y * corners[n];
            zeta += slopes[n].Z * corners[n];
        }

        return new Jacobian(xi, eta, zeta);
    }

    /// <summary>
    /// With K_aa = L L^T and W = L^-1 K_au, the corners' stiffness is K_uu - W^T W. W takes the place of K_au.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void CondenseModes()
    {
        fixed (double* first = matrix, l = modeFactor)
        {
            for (var i = 0; i < ModeDofs; i++)
            {
                var row = ModeRow(first, i);
                for (var j = 0; j <= i; j++)
                {
                    var sum = row[4 * (Corners + j / 3) + j % 3];
                    for (var k = 0; k < j; k++)
                    {
                        sum -= l[i * ModeDofs + k] * l[j * ModeDofs + k];
                    }

                    l[i * ModeDofs + j] = i == j ? Math.Sqrt(sum) : sum / l[j * ModeDofs + j];
                }

                for (var k = 0; k < i; k++)
                {
                    Subtract(row, l[i * ModeDofs + k], ModeRow(first, k), Corners);
                }

                var scale = Vector256.Create(1 / l[i * ModeDofs + i]);
                for (var c = 0; c < Corners; c++)
                {
                    (scale * Vector256.Load(row + 4 * c)).Store(row + 4 * c);
                }
            }

            for (var corner = 0; corner < Corners; corner++)
            {
                for (var i = 0; i < 3; i++)
                {
                    for (var k = 0; k < ModeDofs; k++)
                    {
                        var w = ModeRow(first, k);
                        Subtract(first + (3 * corner + i) * Stride, w[4 * corner + i], w, corner + 1);
                    }
                }
            }
        }
    }

    private static double* ModeRow(double* first, int mode) => first + (Dofs + mode) * Stride;

    /// <summary>row := row - factor x other, over the first corners.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Subtract(double* row, double factor, double* other, int corners)
    {
        var f = Vector256.Create(-factor);
        for (var c = 0; c < 4 * corners; c += 4)
        {
            Vector256.FusedMultiplyAdd(f, Vector256.Load(other + c), Vector256.Load(row + c)).Store(row + c);
        }
    }

    /// <summary>The modes follow the corners by alpha = -L^-T W u.</summary>
    private void FindModes()
    {
        for (var i = ModeDofs - 1; i >= 0; i--)
        {
            var row = modesOfCorners.AsSpan(i * Dofs, Dofs);
            for (var dof = 0; dof < Dofs; dof++)
            {
                row[dof] = -matrix[(Dofs + i) * Stride + 4 * (dof / 3) + dof % 3];
            }

            for (var k = i + 1; k < ModeDofs; k++)
            {
                Vectors.AddTimes(row, -modeFactor[k * ModeDofs + i], modesOfCorners.AsSpan(k * Dofs, Dofs));
            }

            var scale = 1 / modeFactor[i * ModeDofs + i];
            for (var dof = 0; dof < Dofs; dof++)
            {
                row[dof] *= scale;
            }
        }
    }
}
