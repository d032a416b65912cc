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
    internal static CellStress[] Of(SolidModel model, IReadOnlyList<SolidAnswer> answers, int threads, bool withModes)
    {
        const int part = 64;
        var count = model.Grid.Cells;
        var found = answers.Select(_ => new double[6 * count]).ToArray();
        using var elements = new ThreadLocal<Hexahedron>(() => new Hexahedron());
        using var work = new SharedWork(threads);
        work.ForEach((count + part - 1) / part, i =>
        {
            var rows = new double[6 * Hexahedron.Dofs];
            for (var cell = part * i; cell < Math.Min(count, part * (i + 1)); cell++)
            {
                Recover(model, answers, cell, elements.Value!, withModes, rows, found);
            }
        });
        return Array.ConvertAll(found, f => new CellStress(f));
    }

    private static void Recover(SolidModel model, IReadOnlyList<SolidAnswer> answers, int cell, Hexahedron element, bool withModes, double[] rows, double[][] found)
    {
        var fill = model.Cells[cell];
        if (!fill.IsSolid)
        {
            foreach (var components in found)
            {
                components.AsSpan(6 * cell, 6).Fill(double.NaN);
            }

            return;
        }

        Span<Vector3> corners = stackalloc Vector3[8];
        Span<double> u = stackalloc double[Hexahedron.Dofs];
        model.Grid.Corners(cell, corners);
        element.Form(corners, model.Materials[fill.Material], fill.Cut, withModes);
        SurfaceRecovery.LocalOperator(element, corners, fill.Cut?.Middle ?? Vector3.Zero, rows);
        for (var answer = 0; answer < found.Length; answer++)
        {
            SurfaceRecovery.Corners(model.Grid, cell, answers[answer].Displacement, u);
            for (var c = 0; c < 6; c++)
            {
                found[answer][6 * cell + c] = fill.Stiffness * SurfaceRecovery.Dot(rows.AsSpan(c * Hexahedron.Dofs, Hexahedron.Dofs), u);
            }
        }
    }
}
