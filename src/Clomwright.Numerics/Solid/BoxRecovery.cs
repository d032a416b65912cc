using Clomwright.Numerics.Frames;

namespace Clomwright.Numerics.Solid;

/// <summary>Mean stresses over boxes in (s, z, t): in each cell the box's part is integrated with 2 x 2 x 2 Gauss points of its own.</summary>
internal static class BoxRecovery
{
    /// <summary>The mean over what is solid in the box; null where nothing is.</summary>
    public static MeanStress? Average(SolidModel model, Displacement displacement, GridBox box, bool withModes)
    {
        var grid = model.Grid;
        var (sum, volume) = (default(Stress), 0.0);
        var element = new Hexahedron();
        var length = grid.S[^1] - grid.S[0];
        foreach (var turn in grid.IsClosed ? [-1, 0, 1] : (ReadOnlySpan<int>)[0])
        {
            var wanted = box.Along(turn * length);
            for (var cell = 0; cell < grid.Cells; cell++)
            {
                var (i, k, j) = grid.Position(cell);
                var whole = new GridBox(grid.S[i], grid.S[i + 1], grid.Z[k], grid.Z[k + 1], grid.T[j], grid.T[j + 1]);
                var part = whole.Overlap(wanted);
                if (part.Volume > 0 && model.Cells[cell].IsSolid)
                {
                    Add(model, displacement, cell, element, withModes, Reference(whole, part), ref sum, ref volume);
                }
            }
        }

        return volume > 0 ? new MeanStress(1 / volume * sum, volume) : null;
    }

    /// <summary>The stress at a position: of the one cell that holds it, so that it jumps from cell to cell.</summary>
    public static Stress At(SolidModel model, Displacement displacement, double s, double z, double t, bool withModes)
    {
        var (cell, reference) = model.Grid.Locate(s, z, t);
        var element = new Hexahedron();
        Span<Vector3> corners = stackalloc Vector3[8];
        Span<double> rows = stackalloc double[6 * Hexahedron.Dofs];
        Span<double> u = stackalloc double[Hexahedron.Dofs];
        model.Grid.Corners(cell, corners);
        SurfaceRecovery.Corners(model.Grid, cell, displacement, u);
        element.Form(corners, model.Materials[model.Cells[cell].Material], model.Cells[cell].Cut, withModes);
        SurfaceRecovery.LocalOperator(element, corners, reference, rows);
        return StressOf(rows, u, model.Cells[cell].Stiffness);
    }

    private static Stress StressOf(ReadOnlySpan<double> rows, ReadOnlySpan<double> u, double factor)
    {
        Span<double> stress = stackalloc double[6];
        for (var c = 0; c < 6; c++)
        {
            stress[c] = factor * SurfaceRecovery.Dot(rows.Slice(c * Hexahedron.Dofs, Hexahedron.Dofs), u);
        }

        return Stress.From(stress);
    }

    private static void Add(
        SolidModel model, Displacement displacement, int cell, Hexahedron element, bool withModes, GridBox part, ref Stress sum, ref double volume)
    {
        Span<Vector3> corners = stackalloc Vector3[8];
        Span<double> rows = stackalloc double[6 * Hexahedron.Dofs];
        Span<double> u = stackalloc double[Hexahedron.Dofs];
        var fill = model.Cells[cell];
        model.Grid.Corners(cell, corners);
        SurfaceRecovery.Corners(model.Grid, cell, displacement, u);
        element.Form(corners, model.Materials[fill.Material], fill.Cut, withModes);
        foreach (var point in HexahedronShape.GaussPoints)
        {
            var at = new Vector3(
                Along(part.SFrom, part.STo, point.X), Along(part.ZFrom, part.ZTo, point.Y), Along(part.TFrom, part.TTo, point.Z));
            var weight = fill.Share * part.Volume / 8 * Math.Abs(HexahedronShape.JacobianAt(corners, at).Determinant);
            SurfaceRecovery.LocalOperator(element, corners, at, rows);
            sum += weight * StressOf(rows, u, fill.Stiffness);
            volume += weight;
        }
    }

    /// <summary>A part of a cell in its reference coordinates.</summary>
    private static GridBox Reference(in GridBox whole, in GridBox part)
    {
        static double To(double from, double to, double at) => 2 * (at - from) / (to - from) - 1;
        return new GridBox(
            To(whole.SFrom, whole.STo, part.SFrom), To(whole.SFrom, whole.STo, part.STo),
            To(whole.ZFrom, whole.ZTo, part.ZFrom), To(whole.ZFrom, whole.ZTo, part.ZTo),
            To(whole.TFrom, whole.TTo, part.TFrom), To(whole.TFrom, whole.TTo, part.TTo));
    }

    private static double Along(double from, double to, double reference) => (from + to) / 2 + (to - from) / 2 * reference;
}
