using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Layout;

/// <summary>Pours blocks into columns of equal size: what does not fit goes on the next one, and nothing is cut.</summary>
internal static class Flow
{
    /// <summary>The blocks column by column.</summary>
    public static IReadOnlyList<IReadOnlyList<Block>> Columns(IReadOnlyList<Block> blocks, double width, double height)
    {
        List<IReadOnlyList<Block>> columns = [];
        var left = blocks;
        while (left.Count > 0)
        {
            var (column, rest) = Fill(left, width, height, whole: true);
            if (column.Count == 0)
            {
                // One thing taller than a sheet that cannot be divided: it goes alone rather than not at all.
                (column, rest) = ([left[0]], [.. left.Skip(1)]);
            }

            columns.Add(column);
            left = rest;
        }

        return columns;
    }

    /// <summary>As many blocks as fit the room, and what is left.</summary>
    public static (IReadOnlyList<Block> Column, IReadOnlyList<Block> After) Fill(IReadOnlyList<Block> blocks, double width, double room, bool whole)
    {
        List<Block> column = [];
        var y = 0.0;
        var i = 0;
        for (; i < blocks.Count; i++)
        {
            var block = blocks[i];
            var above = column.Count == 0 ? 0 : block.Above;
            var height = block.Height(width);
            if (y + above + height <= room + 1e-6)
            {
                column.Add(block);
                y += above + height;
                continue;
            }

            var (first, rest) = block.Split(width, room - y - above, whole && column.All(b => b.KeepsWithNext));
            if (first is not null)
            {
                column.Add(first);
                return (column, rest is null ? [.. blocks.Skip(i + 1)] : [rest, .. blocks.Skip(i + 1)]);
            }

            break;
        }

        var taken = column.Count;
        while (i < blocks.Count && taken > 0 && column[taken - 1].KeepsWithNext)
        {
            taken--;
        }

        // Headings alone over something that fits nowhere stay, so that every column takes something.
        taken = taken == 0 ? column.Count : taken;
        return ([.. column.Take(taken)], [.. blocks.Skip(taken)]);
    }

    /// <summary>Draws a column of blocks from a place down; returns the y below the last.</summary>
    public static double Draw(Board board, IReadOnlyList<Block> column, double x, double y, double width)
    {
        new Stack(column).Draw(board, x, y, width);
        return y + new Stack(column).Height(width);
    }
}
