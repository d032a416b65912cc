using System.Runtime.CompilerServices;

namespace Clomwright.Numerics.Factorisation;

/// <summary>Fills a front: patches, diagonal, and the updates of its children. One for each thread, for its scratch.</summary>
internal sealed unsafe class FrontAssembly(ISheetMatrix matrix)
{
    private const int ColumnsTogether = 64;

    private readonly SheetShape shape = matrix.Shape;
    private readonly int[] rowOf = new int[matrix.Shape.Columns];
    private int[] parentRow = [];

    /// <summary>Assembles the whole front.</summary>
    public void Fill(Front front, SharedWork? work)
    {
        front.Clear();
        Locate(front);
        AddPatches(front);
        AddDiagonal(front);
        foreach (var child in front.Children)
        {
            AddUpdate(front, child, work);
        }
    }

    private void Locate(Front front)
    {
        for (var i = 0; i < front.Pivots.Length; i++)
        {
            rowOf[front.Pivots[i]] = front.PivotStart[i];
        }

        for (var i = 0; i < front.Boundary.Length; i++)
        {
            rowOf[front.Boundary[i]] = front.BoundaryStart[i];
        }
    }

    private void AddPatches(Front front)
    {
        Span<int> start = stackalloc int[4];
        foreach (var patch in front.Patches)
        {
            if (matrix.IsEmpty(patch))
            {
                continue;
            }

            for (var corner = 0; corner < 4; corner++)
            {
                start[corner] = rowOf[shape.Corner(patch, corner)];
            }

            matrix.AddPatch(patch, new PatchTarget(front, start));
        }
    }

    private void AddDiagonal(Front front)
    {
        for (var i = 0; i < front.Pivots.Length; i++)
        {
            var diagonal = matrix.Diagonal(front.Pivots[i]);
            if (diagonal.IsEmpty)
            {
                continue;
            }

            var row = front.PivotStart[i];
            foreach (var place in matrix.Active(front.Pivots[i]))
            {
                front.Strip(row / Tiles.Side)[row * Tiles.Side + row % Tiles.Side] += diagonal[place];
                row++;
            }
        }
    }

    /// <summary>Rows of a child's boundary in the present front; true when they ascend.</summary>
    private bool MapRows(Front child)
    {
        if (parentRow.Length < child.BoundaryDofs)
        {
            parentRow = new int[2 * child.BoundaryDofs];
        }

        var (row, last, ascends) = (0, -1, true);
        for (var i = 0; i < child.Boundary.Length; i++)
        {
            var start = child.ParentStart[i];
            ascends &= start > last;
            last = start;
            for (var end = row + matrix.Active(child.Boundary[i]).Length; row < end; row++)
            {
                parentRow[row] = start++;
            }
        }

        return ascends;
    }

    private void AddUpdate(Front front, Front child, SharedWork? work)
    {
        var ascends = MapRows(child);
        var adder = new UpdateAdder(front, child, parentRow, ascends);
        if (work is null)
        {
            adder.AddColumns(0, child.BoundaryRows);
        }
        else
        {
            var blocks = (child.BoundaryRows + ColumnsTogether - 1) / ColumnsTogether;
            work.ForEach(blocks, i => adder.AddColumns(i * ColumnsTogether, Math.Min((i + 1) * ColumnsTogether, child.BoundaryRows)));
        }
    }
}
