using Clomwright.Numerics.Frames;
using Clomwright.Numerics.Solid;

namespace Clomwright.Numerics.Cracking;

/// <summary>What one cell does at given displacements of its corners and given modes: forces, energy, and if wanted its tangent, condensed.</summary>
/// <remarks>
/// The modes a are unknowns of the cell. With r_a the force left on them, K_aa = L L' and W = L^-1 K_au, the corners' condensed force is f_u - W' y, y = L^-1 r_a, their
/// stiffness K_uu - W' W, and the modes follow a step of the corners by da = -L^-T (y + W du).
/// </remarks>
internal sealed class CellState
{
    public const int Modes = 9;
    private const int Corners = Hexahedron.Dofs / 3;
    private const int Points = Corners + 3;

    private readonly Hexahedron element = new();
    private readonly Vector3[] corners = new Vector3[Corners];
    private readonly double[] elastic = new double[36];
    private readonly double[] tangents = new double[8 * 36];
    private readonly double[] forces = new double[3 * Points];
    private readonly double[] l = new double[Modes * Modes];
    private readonly double[] w = new double[Modes * Hexahedron.Dofs];
    private readonly double[] y = new double[Modes];

    /// <summary>Energy of the cell, J.</summary>
    public double Energy { get; private set; }

    /// <summary>Forces of the corners, 24, before <see cref="Condense"/> and after it.</summary>
    public ReadOnlySpan<double> Forces => forces.AsSpan(0, Hexahedron.Dofs);

    /// <summary>Forces left on the modes, 9.</summary>
    public ReadOnlySpan<double> ModeForces => forces.AsSpan(Hexahedron.Dofs, Modes);

    /// <summary>Mean over the cell's points of the largest strain that cracks account for.</summary>
    public double Opening { get; private set; }

    /// <summary>Share of the points at the bound of tension.</summary>
    public double Cracked { get; private set; }

    /// <summary>Share of the points at the bound of pressure.</summary>
    public double Crushed { get; private set; }

    /// <summary>L, W and y of the last condensation.</summary>
    public (double[] L, double[] W, double[] Y) Condensed => (l, w, y);

    /// <summary>Goes through the points of a cell.</summary>
    /// <param name="model">The model.</param>
    /// <param name="cell">A solid cell.</param>
    /// <param name="law">Its law; null where it stays elastic.</param>
    /// <param name="u">Displacements of its corners, 24.</param>
    /// <param name="modes">Its modes, 9.</param>
    /// <param name="withTangent">Whether the tangents of the points are wanted too.</param>
    public void Visit(SolidModel model, int cell, LowTension? law, ReadOnlySpan<double> u, ReadOnlySpan<double> modes, bool withTangent)
    {
        var fill = model.Cells[cell];
        model.Grid.Corners(cell, corners);
        element.Place(corners);
        if (law is null)
        {
            Solid.Elasticity.ToGlobal(model.Materials[fill.Material], element.Axes, elastic);
        }

        Array.Clear(forces);
        (Energy, Opening, Cracked, Crushed) = (0, 0, 0, 0);
        Span<double> strain = stackalloc double[6];
        Span<double> stress = stackalloc double[6];
        for (var q = 0; q < 8; q++)
        {
            var gradients = element.GradientsAt(q, out var volume);
            volume *= fill.Stiffness * (fill.Cut is null ? 1 : fill.Cut.Weights[q]);
            Strain(gradients, u, modes, strain);
            var tangent = withTangent ? tangents.AsSpan(36 * q, 36) : [];
            Energy += volume * (law is null ? Elastic(strain, stress, tangent) : Note(law.Respond(strain, stress, tangent)));
            AddForces(gradients, stress, volume);
        }
    }

    /// <summary>Forms the tangent of the cell visited last and eliminates its modes.</summary>
    public void Condense(CellCut? cut, double factor)
    {
        for (var i = 0; factor != 1 && i < tangents.Length; i++)
        {
            tangents[i] *= factor;
        }

        element.FormTangent(tangents, cut);
        element.CopyModes(l, w);
        for (var i = 0; i < Modes; i++)
        {
            var sum = forces[Hexahedron.Dofs + i];
            for (var k = 0; k < i; k++)
            {
                sum -= l[i * Modes + k] * y[k];
            }

            y[i] = sum / l[i * Modes + i];
        }

        for (var dof = 0; dof < Hexahedron.Dofs; dof++)
        {
            for (var k = 0; k < Modes; k++)
            {
                forces[dof] -= w[k * Hexahedron.Dofs + dof] * y[k];
            }
        }
    }

    /// <summary>An entry of the condensed tangent.</summary>
    public double Stiffness(int corner, int i, int other, int j) => element.Stiffness(corner, i, other, j);

    /// <summary>The step of the modes that follows a step of the corners.</summary>
    public static void Follow(double[] l, double[] w, double[] y, ReadOnlySpan<double> du, Span<double> step)
    {
        for (var i = 0; i < Modes; i++)
        {
            var sum = y[i];
            for (var dof = 0; dof < Hexahedron.Dofs; dof++)
            {
                sum += w[i * Hexahedron.Dofs + dof] * du[dof];
            }

            step[i] = -sum;
        }

        for (var i = Modes - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < Modes; k++)
            {
                step[i] -= l[k * Modes + i] * step[k];
            }

            step[i] /= l[i * Modes + i];
        }
    }

    private double Note(PointState point)
    {
        Opening += point.Opening / 8;
        Cracked += point.Cracked > 0 ? 0.125 : 0;
        Crushed += point.Crushed > 0 ? 0.125 : 0;
        return point.Energy;
    }

    private double Elastic(ReadOnlySpan<double> strain, Span<double> stress, Span<double> tangent)
    {
        var energy = 0.0;
        for (var i = 0; i < 6; i++)
        {
            stress[i] = 0;
            for (var k = 0; k < 6; k++)
            {
                stress[i] += elastic[6 * i + k] * strain[k];
            }

            energy += stress[i] * strain[i] / 2;
        }

        if (!tangent.IsEmpty)
        {
            elastic.CopyTo(tangent);
        }

        return energy;
    }

    private static void Strain(ReadOnlySpan<Vector3> gradients, ReadOnlySpan<double> u, ReadOnlySpan<double> modes, Span<double> strain)
    {
        strain.Clear();
        for (var n = 0; n < Points; n++)
        {
            var d = n < Corners ? u.Slice(3 * n, 3) : modes.Slice(3 * (n - Corners), 3);
            var g = gradients[n];
            strain[0] += d[0] * g.X;
            strain[1] += d[1] * g.Y;
            strain[2] += d[2] * g.Z;
            strain[3] += d[0] * g.Y + d[1] * g.X;
            strain[4] += d[1] * g.Z + d[2] * g.Y;
            strain[5] += d[0] * g.Z + d[2] * g.X;
        }
    }

    private void AddForces(ReadOnlySpan<Vector3> gradients, ReadOnlySpan<double> stress, double volume)
    {
        for (var n = 0; n < Points; n++)
        {
            var g = gradients[n];
            forces[3 * n] += volume * (stress[0] * g.X + stress[3] * g.Y + stress[5] * g.Z);
            forces[3 * n + 1] += volume * (stress[3] * g.X + stress[1] * g.Y + stress[4] * g.Z);
            forces[3 * n + 2] += volume * (stress[5] * g.X + stress[4] * g.Y + stress[2] * g.Z);
        }
    }
}
