namespace Clomwright.Numerics.Factorisation;

/// <summary>Takes the matrix of one patch into the factor.</summary>
public readonly unsafe ref struct PatchTarget
{
    private readonly Front front;
    private readonly ReadOnlySpan<int> start;

    /// <summary>A patch whose four columns begin at the given rows of a front.</summary>
    internal PatchTarget(Front front, ReadOnlySpan<int> start)
    {
        this.front = front;
        this.start = start;
    }

    /// <summary>
    /// Adds <paramref name="factor"/> times a block that couples two of the patch's columns (corners 0..3). Of the pair (a, b) and (b, a) only one
    /// is given; a block of a column with itself is given whole.
    /// </summary>
    /// <param name="a">Corner of the block's rows.</param>
    /// <param name="rows">For each row of the block its position among the active degrees of freedom of that column, or -1 for none.</param>
    /// <param name="b">Corner of the block's columns.</param>
    /// <param name="columns">Likewise for the block's columns.</param>
    /// <param name="block">The block, row after row.</param>
    /// <param name="factor">What it is multiplied by.</param>
    public void Add(int a, ReadOnlySpan<short> rows, int b, ReadOnlySpan<short> columns, ReadOnlySpan<double> block, double factor)
    {
        var (startA, startB) = (start[a], start[b]);
        if (startA >= startB)
        {
            Add(startA, rows, columns.Length, startB, columns, 1, block, factor);
        }
        else
        {
            Add(startB, columns, 1, startA, rows, columns.Length, block, factor);
        }
    }

    private void Add(
        int startRow, ReadOnlySpan<short> rows, int rowStride, int startColumn, ReadOnlySpan<short> columns, int columnStride,
        ReadOnlySpan<double> block, double factor)
    {
        var pivotRows = front.PivotRows;
        var inPanel = startColumn < pivotRows;
        var isDiagonal = startRow == startColumn;
        for (var p = 0; p < rows.Length; p++)
        {
            if (rows[p] < 0)
            {
                continue;
            }

            var row = startRow + rows[p];
            var target = inPanel ? front.Strip(row / Tiles.Side) + row % Tiles.Side : front.UpdateStrip((row - pivotRows) / Tiles.Side) + row % Tiles.Side - (long)pivotRows * Tiles.Side;
            for (var q = 0; q < columns.Length; q++)
            {
                var column = startColumn + columns[q];
                if (columns[q] >= 0 && (!isDiagonal || column <= row))
                {
                    target[(long)column * Tiles.Side] += factor * block[p * rowStride + q * columnStride];
                }
            }
        }
    }
}
