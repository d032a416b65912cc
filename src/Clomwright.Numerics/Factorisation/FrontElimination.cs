namespace Clomwright.Numerics.Factorisation;

/// <summary>Eliminates the pivots of an assembled front, tile by tile; the order of every sum is fixed by the front's size alone.</summary>
internal static unsafe class FrontElimination
{
    /// <summary>Strips of pivots that are finished together.</summary>
    private const int Block = 8;

    /// <summary>
    /// Leaves L in the panel (with the inverse of its diagonal tiles) and the Schur complement in the update. Returns the first pivot row not
    /// above <paramref name="leastPivot"/>, or -1.
    /// </summary>
    public static int Eliminate(Front front, double leastPivot, SharedWork? work)
    {
        var (pivots, strips) = (front.PivotStrips, front.Strips);
        var weak = -1;
        for (var first = 0; first < pivots; first += Block)
        {
            var (from, to) = (first, Math.Min(first + Block, pivots));
            if (from > 0)
            {
                ForEach(work, to - from, i => SolveStrip(front, from + i, from));
                ForEach(work, to - from, i => SubtractBlock(front, to - 1 - i, from));
            }

            var row = FinishBlock(front, from, to, leastPivot);
            weak = weak < 0 ? row : weak;
        }

        if (pivots > 0)
        {
            ForEach(work, strips - pivots, i => SolveStrip(front, pivots + i, pivots));
            ForEach(work, strips - pivots, i => SubtractUpdate(front, strips - pivots - 1 - i));
        }

        return weak;
    }

    /// <summary>The first tiles of one strip of L, from strips of pivots that are finished.</summary>
    private static void SolveStrip(Front front, int strip, int tiles)
    {
        var row = front.Strip(strip);
        for (var j = 0; j < tiles; j++)
        {
            var tile = row + j * Tiles.Area;
            Tiles.Subtract(tile, row, front.Strip(j), j * Tiles.Side);
            DiagonalTile.SolveRight(tile, front.Tile(j, j));
        }
    }

    /// <summary>Takes the tiles before a block out of one strip of its triangle.</summary>
    private static void SubtractBlock(Front front, int strip, int from)
    {
        for (var j = from; j <= strip; j++)
        {
            Tiles.Subtract(front.Tile(strip, j), front.Strip(strip), front.Strip(j), from * Tiles.Side);
        }
    }

    private static int FinishBlock(Front front, int from, int to, double leastPivot)
    {
        var weak = -1;
        for (var strip = from; strip < to; strip++)
        {
            for (var j = from; j < strip; j++)
            {
                var tile = front.Tile(strip, j);
                Tiles.Subtract(tile, front.Tile(strip, from), front.Tile(j, from), (j - from) * Tiles.Side);
                DiagonalTile.SolveRight(tile, front.Tile(j, j));
            }

            var diagonal = front.Tile(strip, strip);
            Tiles.Subtract(diagonal, front.Tile(strip, from), front.Tile(strip, from), (strip - from) * Tiles.Side);
            var row = DiagonalTile.Invert(diagonal, leastPivot);
            weak = weak < 0 && row >= 0 ? strip * Tiles.Side + row : weak;
        }

        return weak;
    }

    /// <summary>One strip of the Schur complement.</summary>
    private static void SubtractUpdate(Front front, int strip)
    {
        var row = front.Strip(front.PivotStrips + strip);
        var update = front.UpdateStrip(strip);
        for (var j = 0; j <= strip; j++)
        {
            Tiles.Subtract(update + j * Tiles.Area, row, front.Strip(front.PivotStrips + j), front.PivotRows);
        }
    }

    private static void ForEach(SharedWork? work, int count, Action<int> body)
    {
        if (work is not null)
        {
            work.ForEach(count, body);
            return;
        }

        for (var i = 0; i < count; i++)
        {
            body(i);
        }
    }
}
