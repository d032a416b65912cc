using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Clomwright.Numerics.Factorisation;
using Clomwright.Numerics.Frames;

namespace Clomwright.Numerics.Solid;

/// <summary>The stress in the middle of what is solid in every cell. There the element is at its best, and sums of them over a section give its forces.</summary>
public sealed class CellStress
{
    private readonly double[] components;

    private CellStress(double[] components) => this.components = components;

    /// <summary>The stress of a cell; null where it is empty.</summary>
    public Stress? this[int cell] => double.IsNaN(components[6 * cell]) ? null : Stress.From(components.AsSpan(6 * cell, 6));

    /// <summary>The stresses of many answers; the operator of each cell is formed once for all of them.</summary>
    /// <param name="model">The model that was solved.</param>
    /// <param name="answers">Its answers.</param>
    /// <param name="kept">Operators formed before, which are kept while their cell stays as it is; null forms them for this once.</param>
    /// <param name="threads">Threads to use.</param>
    /// <param name="withModes">Whether the cells have their incompatible modes.</param>
    internal static CellStress[] Of(SolidModel model, IReadOnlyList<SolidAnswer> answers, KeptOperators? kept, int threads, bool withModes)
    {
        const int part = 64;
        var count = model.Grid.Cells;
        var found = answers.Select(_ => new double[6 * count]).ToArray();
        var displacements = answers.Select(answer => answer.Displacement.Array).ToArray();
        using var elements = new ThreadLocal<Hexahedron>(() => new Hexahedron());
        using var work = new SharedWork(threads);
        work.ForEach((count + part - 1) / part, i =>
        {
            var rows = new double[KeptOperators.Size];
            for (var cell = part * i; cell < Math.Min(count, part * (i + 1)); cell++)
            {
                if (!model.Cells[cell].IsSolid)
                {
                    foreach (var components in found)
                    {
                        components.AsSpan(6 * cell, 6).Fill(double.NaN);
                    }

                    continue;
                }

                if (kept is null)
                {
                    KeptOperators.Form(model, cell, elements.Value!, withModes, rows);
                }

                Recover(model, displacements, cell, kept is null ? rows : kept.Of(model, cell, elements.Value!, withModes), found);
            }
        });
        return Array.ConvertAll(found, f => new CellStress(f));
    }

    /// <summary>The stresses of one cell, eight answers at a time.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Recover(SolidModel model, double[][] displacements, int cell, ReadOnlySpan<double> rows, double[][] found)
    {
        const int lanes = 8;
        Span<double> u = stackalloc double[lanes * Hexahedron.Dofs];
        Span<double> stress = stackalloc double[lanes];
        Span<int> corners = stackalloc int[4];
        for (var pair = 0; pair < 4; pair++)
        {
            // Both nodes of a thickness column follow each other.
            corners[pair] = 3 * model.Grid.CornerNode(cell, 2 * pair);
        }

        var stiffness = Vector512.Create(model.Cells[cell].Stiffness);
        for (var first = 0; first < displacements.Length; first += lanes)
        {
            var count = Math.Min(lanes, displacements.Length - first);
            for (var lane = 0; lane < count; lane++)
            {
                for (var pair = 0; pair < 4; pair++)
                {
                    var six = displacements[first + lane].AsSpan(corners[pair], 6);
                    for (var d = 0; d < 6; d++)
                    {
                        u[lanes * (6 * pair + d) + lane] = six[d];
                    }
                }
            }

            for (var c = 0; c < 6; c++)
            {
                var (even, odd) = (Vector512<double>.Zero, Vector512<double>.Zero);
                for (var d = 0; d < Hexahedron.Dofs; d += 2)
                {
                    even = Vector512.FusedMultiplyAdd(Vector512.Create(rows[c * Hexahedron.Dofs + d]), Vector512.LoadUnsafe(ref u[lanes * d]), even);
                    odd = Vector512.FusedMultiplyAdd(Vector512.Create(rows[c * Hexahedron.Dofs + d + 1]), Vector512.LoadUnsafe(ref u[lanes * (d + 1)]), odd);
                }

                (stiffness * (even + odd)).CopyTo(stress);
                for (var lane = 0; lane < count; lane++)
                {
                    found[first + lane][6 * cell + c] = stress[lane];
                }
            }
        }
    }
}

/// <summary>For every cell the operator that gives the stress in its middle, formed when first needed and kept while the cell's grid, material and cut stay.</summary>
internal sealed class KeptOperators(int cells)
{
    /// <summary>Numbers in an operator.</summary>
    public const int Size = 6 * Hexahedron.Dofs;

    private readonly Known?[] known = new Known?[cells];

    private sealed record Known(SolidGrid Grid, ElasticMaterial Material, CellCut? Cut, double[] Rows);

    /// <summary>The operator of a cell. Different cells may be asked for from several threads.</summary>
    public double[] Of(SolidModel model, int cell, Hexahedron element, bool withModes)
    {
        var fill = model.Cells[cell];
        var material = model.Materials[fill.Material];
        if (known[cell] is { } old && ReferenceEquals(old.Grid, model.Grid) && ReferenceEquals(old.Material, material) && Equals(old.Cut, fill.Cut))
        {
            return old.Rows;
        }

        var rows = new double[Size];
        Form(model, cell, element, withModes, rows);
        known[cell] = new Known(model.Grid, material, fill.Cut, rows);
        return rows;
    }

    /// <summary>Forms the operator of a cell.</summary>
    public static void Form(SolidModel model, int cell, Hexahedron element, bool withModes, Span<double> rows)
    {
        var fill = model.Cells[cell];
        Span<Vector3> corners = stackalloc Vector3[8];
        model.Grid.Corners(cell, corners);
        element.Form(corners, model.Materials[fill.Material], fill.Cut, withModes);
        SurfaceRecovery.LocalOperator(element, corners, fill.Cut?.Middle ?? Vector3.Zero, rows);
    }
}
