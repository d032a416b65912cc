using System.Runtime.CompilerServices;

namespace Clomwright.Numerics.Factorisation;

/// <summary>Fills a front: patches, diagonal, and the updates of its children. One for each thread, for its scratch.</summary>
internal sealed unsafe class FrontAssembly(ISheetMatrix matrix)
{
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
        var strips = child.BoundaryRows / Tiles.Side;
        if (work is null)
        {
            for (var strip = 0; strip < strips; strip++)
            {
                AddStrip(front, child, strip, ascends);
            }
        }
        else
        {
            // The longest strips first, so that threads end together.
            work.ForEach(strips, i => AddStrip(front, child, strips - 1 - i, ascends));
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void AddStrip(Front front, Front child, int strip, bool ascends)
    {
        var source = child.Update + Front.UpdateOffset(strip);
        var firstRow = strip * Tiles.Side;
        var rows = Math.Min(Tiles.Side, child.BoundaryDofs - firstRow);
        var pivotRows = front.PivotRows;
        fixed (int* map = parentRow)
        {
            for (var r = 0; r < rows; r++)
            {
                var row = map[firstRow + r];
                var from = source + r;
                var columns = firstRow + r + 1;
                if (ascends)
                {
                    // Columns go to the panel up to the first that lands on the boundary, then to the update.
                    var panel = front.Strip(row / Tiles.Side) + row % Tiles.Side;
                    var c = 0;
                    for (; c < columns && map[c] < pivotRows; c++)
                    {
                        panel[map[c] * Tiles.Side] += from[c * Tiles.Side];
                    }

                    if (c < columns)
                    {
                        var inner = row - pivotRows;
                        var update = front.Update + Front.UpdateOffset(inner / Tiles.Side) + inner % Tiles.Side - (long)pivotRows * Tiles.Side;
                        for (; c < columns; c++)
                        {
                            update[map[c] * Tiles.Side] += from[c * Tiles.Side];
                        }
                    }
                }
                else
                {
                    for (var c = 0; c < columns; c++)
                    {
                        *Entry(front, Math.Max(row, map[c]), Math.Min(row, map[c])) += from[c * Tiles.Side];
                    }
                }
            }
        }
    }

    /// <summary>The number at a row and a column not after it.</summary>
    private static double* Entry(Front front, int row, int column)
    {
        var pivotRows = front.PivotRows;
        if (column < pivotRows)
        {
            return front.Strip(row / Tiles.Side) + column * Tiles.Side + row % Tiles.Side;
        }

        var inner = row - pivotRows;
        return front.Update + Front.UpdateOffset(inner / Tiles.Side) + (column - pivotRows) * Tiles.Side + inner % Tiles.Side;
    }
}
