namespace Clomwright.Numerics.Factorisation;

/// <summary>What the way up left in one front: y in the pivot rows; in the boundary rows what goes on to the parent.</summary>
internal sealed class FrontPass : IDisposable
{
    /// <summary>The rows, their lanes together.</summary>
    public NativeBlock Rows { get; } = new();

    /// <summary>The version of the front that it was computed with; -1 when it must be computed again.</summary>
    public long Version { get; set; } = -1;

    /// <summary>Gives the memory back.</summary>
    public void Dispose() => Rows.Dispose();
}

/// <summary>Forward and backward substitution in one front.</summary>
internal sealed unsafe class FrontSubstitution(ISheetMatrix matrix, int lanes, double[] load, double[] answer) : IDisposable
{
    /// <summary>Partial sums for each pivot row on the way down: four for one lane, one for each of eight lanes.</summary>
    private readonly int sums = lanes == 1 ? 4 : lanes;

    private readonly int places = matrix.DofsPerColumn;
    private readonly ThreadLocal<NativeBlock> scratch = new(() => new NativeBlock(), trackAllValues: true);

    /// <summary>y := L11^-1 (loads and children's rows); boundary rows := children's rows - L21 y.</summary>
    public void Ascend(Front front, FrontPass[] passOf)
    {
        var count = (long)front.Strips * Tiles.Side * lanes;
        var pass = passOf[front.Index].Rows;
        pass.Require(count);
        pass.Clear(count);
        var rows = pass.Start;
        for (var i = 0; i < front.Pivots.Length; i++)
        {
            Gather(load, front.Pivots[i], rows + (long)front.PivotStart[i] * lanes);
        }

        foreach (var child in front.Children)
        {
            AddChild(child, passOf[child.Index].Rows.Start + (long)child.PivotRows * lanes, rows);
        }

        for (var strip = 0; strip < front.PivotStrips; strip++)
        {
            SubtractProduct(front, strip, rows, strip * Tiles.Side);
            Multiply(front.Tile(strip, strip), rows + strip * Tiles.Side * lanes, transposed: false);
        }

        for (var strip = front.PivotStrips; strip < front.Strips; strip++)
        {
            SubtractProduct(front, strip, rows, front.PivotRows);
        }
    }

    /// <summary>x := L11^-T (y - L21^T x of the boundary), written into the answer.</summary>
    public void Descend(Front front, FrontPass[] passOf)
    {
        var pivotRows = front.PivotRows;
        var boundaryRows = front.BoundaryRows;
        var x = scratch.Value!.AtLeast((long)(pivotRows + boundaryRows) * lanes + (long)pivotRows * sums);
        var boundary = x + (long)pivotRows * lanes;
        var s = boundary + (long)boundaryRows * lanes;
        new Span<double>(s, pivotRows * sums).Clear();
        new Span<double>(passOf[front.Index].Rows.Start, pivotRows * lanes).CopyTo(new Span<double>(x, pivotRows * lanes));
        new Span<double>(boundary, boundaryRows * lanes).Clear();
        for (var i = 0; i < front.Boundary.Length; i++)
        {
            Gather(answer, front.Boundary[i], boundary + (long)(front.BoundaryStart[i] - pivotRows) * lanes);
        }

        var strip = front.PivotStrips;
        if (lanes == 1)
        {
            for (; strip + 3 < front.Strips; strip += 4)
            {
                Substitution.AddTransposedFour(s, front.Strip(strip), x + (long)strip * Tiles.Side, pivotRows);
            }
        }

        for (; strip < front.Strips; strip++)
        {
            AddTransposed(s, front.Strip(strip), x + (long)strip * Tiles.Side * lanes, pivotRows, front.Strip(strip) + (long)pivotRows * Tiles.Side);
        }

        for (strip = front.PivotStrips - 1; strip >= 0; strip--)
        {
            var row = (long)strip * Tiles.Side;
            SubtractSums(x + row * lanes, s + row * sums);
            Multiply(front.Tile(strip, strip), x + row * lanes, transposed: true);
            AddTransposed(s, front.Strip(strip), x + row * lanes, strip * Tiles.Side, front.Strip(Math.Max(0, strip - 1)));
        }

        for (var i = 0; i < front.Pivots.Length; i++)
        {
            Scatter(front.Pivots[i], x + (long)front.PivotStart[i] * lanes);
        }
    }

    /// <summary>Gives the scratch back.</summary>
    public void Dispose()
    {
        foreach (var block in scratch.Values)
        {
            block.Dispose();
        }

        scratch.Dispose();
    }

    private void SubtractProduct(Front front, int strip, double* rows, int depth)
    {
        var w = rows + (long)strip * Tiles.Side * lanes;
        if (lanes == 1)
        {
            Substitution.SubtractProduct(w, front.Strip(strip), rows, depth);
        }
        else
        {
            Tiles.Subtract(w, rows, front.Strip(strip), depth);
        }
    }

    private void AddTransposed(double* s, double* strip, double* x, int depth, double* next)
    {
        if (lanes == 1)
        {
            Substitution.AddTransposed(s, strip, x, depth, next);
        }
        else
        {
            Substitution.AddTransposedLanes(s, strip, x, depth);
        }
    }

    private void Multiply(double* tile, double* x, bool transposed)
    {
        if (lanes == 1)
        {
            DiagonalTile.Multiply(tile, x, transposed);
        }
        else
        {
            DiagonalTile.MultiplyLanes(tile, x, transposed);
        }
    }

    private void SubtractSums(double* x, double* s)
    {
        for (var i = 0; i < Tiles.Side * lanes; i++)
        {
            x[i] -= lanes == 1 ? s[4 * i] + s[4 * i + 1] + (s[4 * i + 2] + s[4 * i + 3]) : s[i];
        }
    }

    private void AddChild(Front child, double* from, double* rows)
    {
        var next = from;
        for (var i = 0; i < child.Boundary.Length; i++)
        {
            var to = rows + (long)child.ParentStart[i] * lanes;
            var count = matrix.Active(child.Boundary[i]).Length * lanes;
            for (var d = 0; d < count; d++)
            {
                to[d] += next[d];
            }

            next += count;
        }
    }

    private void Gather(double[] vector, int column, double* row)
    {
        var active = matrix.Active(column);
        if (active.Length == places)
        {
            vector.AsSpan(column * places * lanes, places * lanes).CopyTo(new Span<double>(row, places * lanes));
            return;
        }

        foreach (var place in active)
        {
            for (var lane = 0; lane < lanes; lane++)
            {
                *row++ = vector[(column * places + place) * lanes + lane];
            }
        }
    }

    private void Scatter(int column, double* row)
    {
        var active = matrix.Active(column);
        if (active.Length == places)
        {
            new Span<double>(row, places * lanes).CopyTo(answer.AsSpan(column * places * lanes));
            return;
        }

        foreach (var place in active)
        {
            for (var lane = 0; lane < lanes; lane++)
            {
                answer[(column * places + place) * lanes + lane] = *row++;
            }
        }
    }
}
