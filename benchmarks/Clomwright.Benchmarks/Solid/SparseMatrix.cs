using Clomwright.Numerics.Frames;
using Clomwright.Numerics.Solid;

namespace Clomwright.Benchmarks.Solid;

/// <summary>The lower half of a body's stiffness by columns, assembled cell by cell and without the factor's own code, for the peers.</summary>
internal static class SparseMatrix
{
    /// <summary>Writes number of rows and entries, column starts, rows (all 64 bit), values and one right side.</summary>
    public static void Write(string path, SolidModel model, NodalLoad load)
    {
        var grid = model.Grid;
        var number = Numbered(model);
        var columns = new List<(int Row, double Value)>[number.Max() + 1];
        for (var c = 0; c < columns.Length; c++)
        {
            columns[c] = [];
        }

        foreach (var spring in model.Supports.Springs.Where(spring => number[3 * spring.Node + spring.Axis] >= 0))
        {
            var dof = number[3 * spring.Node + spring.Axis];
            columns[dof].Add((dof, spring.Stiffness));
        }

        var element = new Hexahedron();
        var corners = new Vector3[8];
        for (var cell = 0; cell < grid.Cells; cell++)
        {
            var fill = model.Cells[cell];
            if (!fill.IsSolid)
            {
                continue;
            }

            grid.Corners(cell, corners);
            element.Form(corners, model.Materials[fill.Material], fill.Cut, withModes: true);
            for (var p = 0; p < 24; p++)
            {
                for (var q = 0; q < 24; q++)
                {
                    var (row, column) = (number[3 * grid.CornerNode(cell, p / 3) + p % 3], number[3 * grid.CornerNode(cell, q / 3) + q % 3]);
                    if (row >= column)
                    {
                        columns[column].Add((row, fill.Stiffness * element.Stiffness(p / 3, p % 3, q / 3, q % 3)));
                    }
                }
            }
        }

        using var writer = new BinaryWriter(File.Create(path));
        var merged = columns.Select(column => column.GroupBy(entry => entry.Row).Select(group => (Row: group.Key, Value: group.Sum(entry => entry.Value)))
            .OrderBy(entry => entry.Row).ToArray()).ToArray();
        writer.Write((long)merged.Length);
        writer.Write(merged.Sum(column => (long)column.Length));
        long start = 0;
        writer.Write(start);
        foreach (var column in merged)
        {
            writer.Write(start += column.Length);
        }

        Array.ForEach(merged, column => Array.ForEach(column, entry => writer.Write((long)entry.Row)));
        Array.ForEach(merged, column => Array.ForEach(column, entry => writer.Write(entry.Value)));
        for (var dof = 0; dof < number.Length; dof++)
        {
            if (number[dof] >= 0)
            {
                writer.Write(load.Forces[dof]);
            }
        }
    }

    /// <summary>The row of every degree of freedom of solid cells; -1 for the others.</summary>
    public static int[] Numbered(SolidModel model)
    {
        var number = new int[3 * model.Grid.Nodes];
        Array.Fill(number, -1);
        for (var cell = 0; cell < model.Grid.Cells; cell++)
        {
            for (var corner = 0; model.Cells[cell].IsSolid && corner < 8; corner++)
            {
                number.AsSpan(3 * model.Grid.CornerNode(cell, corner), 3).Clear();
            }
        }

        var next = 0;
        for (var dof = 0; dof < number.Length; dof++)
        {
            number[dof] = number[dof] == 0 ? next++ : -1;
        }

        return number;
    }
}
