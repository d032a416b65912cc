using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Clomwright.Numerics.Factorisation;
using Clomwright.Numerics.Frames;

namespace Clomwright.Numerics.Solid;

/// <summary>Stresses on the faces, by operators that are formed when first needed and kept while their cell's corners, material and cut stay.</summary>
internal sealed class SurfaceRecovery(int patches, int threads, bool withModes) : IDisposable
{
    private const int Size = 6 * Hexahedron.Dofs;
    private const int PatchesInPart = 64;

    private readonly FaceOperator?[] operators = new FaceOperator?[2 * patches];
    private readonly ThreadLocal<Hexahedron> elements = new(() => new Hexahedron());

    private sealed record FaceOperator(int Cell, SolidGrid Grid, ElasticMaterial Material, CellCut? Cut, double[] Rows);

    /// <summary>The stresses for a displacement.</summary>
    public SurfaceStress Recover(SolidModel model, Displacement displacement)
    {
        var components = new double[12 * patches];
        using var work = new SharedWork(threads);
        work.ForEach((patches + PatchesInPart - 1) / PatchesInPart, part =>
        {
            for (var patch = part * PatchesInPart; patch < Math.Min(patches, (part + 1) * PatchesInPart); patch++)
            {
                Recover(model, displacement, patch, components.AsSpan(12 * patch, 12));
            }
        });
        return new SurfaceStress(components, model.Grid.Up);
    }

    /// <summary>Lets the elements of the threads go.</summary>
    public void Dispose() => elements.Dispose();

    private void Recover(SolidModel model, Displacement displacement, int patch, Span<double> components)
    {
        var through = model.Grid.Through;
        var (first, last) = (patch * through, (patch + 1) * through - 1);
        while (first <= last && !model.Cells[first].IsSolid)
        {
            first++;
        }

        while (last > first && !model.Cells[last].IsSolid)
        {
            last--;
        }

        if (first > last)
        {
            components.Fill(double.NaN);
            return;
        }

        Recover(model, displacement, 2 * patch, first, new Vector3(0, 0, -1), components[..6]);
        Recover(model, displacement, 2 * patch + 1, last, new Vector3(0, 0, 1), components[6..]);
    }

    private void Recover(SolidModel model, Displacement displacement, int face, int cell, Vector3 reference, Span<double> components)
    {
        var rows = OperatorOf(model, face, cell, reference);
        Span<double> u = stackalloc double[Hexahedron.Dofs];
        Corners(model.Grid, cell, displacement, u);
        for (var c = 0; c < 6; c++)
        {
            components[c] = model.Cells[cell].Stiffness * Dot(rows.AsSpan(c * Hexahedron.Dofs, Hexahedron.Dofs), u);
        }
    }

    /// <summary>Displacements of a cell's corners, in the order of its degrees of freedom.</summary>
    internal static void Corners(SolidGrid grid, int cell, Displacement displacement, Span<double> u)
    {
        for (var pair = 0; pair < 4; pair++)
        {
            // Both nodes of a thickness column follow each other.
            displacement.Values.Slice(3 * grid.CornerNode(cell, 2 * pair), 6).CopyTo(u[(6 * pair)..]);
        }
    }

    /// <summary>The product of a row of an operator with the displacements of a cell.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static double Dot(ReadOnlySpan<double> row, ReadOnlySpan<double> u)
    {
        var a = MemoryMarshal.Cast<double, Vector256<double>>(row);
        var b = MemoryMarshal.Cast<double, Vector256<double>>(u);
        var sum = Vector256<double>.Zero;
        for (var i = 0; i < a.Length; i++)
        {
            sum = Vector256.FusedMultiplyAdd(a[i], b[i], sum);
        }

        return Vector256.Sum(sum);
    }

    private double[] OperatorOf(SolidModel model, int face, int cell, Vector3 reference)
    {
        var material = model.Materials[model.Cells[cell].Material];
        var cut = model.Cells[cell].Cut;
        if (operators[face] is { } old && old.Cell == cell && ReferenceEquals(old.Material, material) && Equals(old.Cut, cut)
            && IsUnmoved(old.Grid, model.Grid, cell))
        {
            return old.Rows;
        }

        Span<Vector3> corners = stackalloc Vector3[8];
        model.Grid.Corners(cell, corners);
        var rows = new double[Size];
        var element = elements.Value!;
        element.Form(corners, material, cut, withModes);
        LocalOperator(element, corners, reference, rows);
        operators[face] = new FaceOperator(cell, model.Grid, material, cut, rows);
        return rows;
    }

    /// <summary>Stress in (s, z, t) at a point of a formed element for each of its displacements.</summary>
    internal static void LocalOperator(Hexahedron element, ReadOnlySpan<Vector3> corners, Vector3 reference, Span<double> rows)
    {
        Span<double> turn = stackalloc double[36];
        Elasticity.StressToLocal(HexahedronShape.JacobianAt(corners, reference).Axes, turn);
        element.StressOperator(reference, turn, rows);
    }

    private static bool IsUnmoved(SolidGrid old, SolidGrid now, int cell)
    {
        for (var corner = 0; !ReferenceEquals(old, now) && corner < 8; corner++)
        {
            var node = now.CornerNode(cell, corner);
            if (old.Point(node) != now.Point(node))
            {
                return false;
            }
        }

        return true;
    }
}
