namespace Clomwright.Numerics.Solid;

/// <summary>Positions of grid lines along one direction: ascending, first to last.</summary>
public static class GridLines
{
    /// <summary>Two fitted edges keep at least this share of a cell between them.</summary>
    private const double LeastGap = 0.25;

    /// <summary>Lines that divide from..to into equal cells.</summary>
    public static double[] Even(double from, double to, int cells)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(cells, 1);
        return [.. Enumerable.Range(0, cells + 1).Select(i => from + (to - from) * i / cells)];
    }

    /// <summary>
    /// Moves the nearest line onto each of the given edges; lines up to <paramref name="reach"/> cells away share the shift, fading linearly.
    /// Left unfitted is an edge outside, one nearest to an end line of an open grid, and one less than a quarter cell from another.
    /// </summary>
    /// <param name="lines">Ascending lines.</param>
    /// <param name="edges">Where lines are wanted.</param>
    /// <param name="reach">Cells over which a shift fades, at least 2.</param>
    /// <param name="isClosed">Whether the last line is the first again: then edges are taken modulo the ring, and all lines may move, the first with the last.</param>
    public static double[] Fitted(IReadOnlyList<double> lines, IEnumerable<double> edges, int reach, bool isClosed)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(reach, 2);
        var last = lines.Count - 1;
        var (start, length) = (lines[0], lines[last] - lines[0]);
        var shifts = new SortedDictionary<int, double>();
        var previous = double.NegativeInfinity;
        foreach (var edge in edges.Select(e => isClosed ? start + Modulo(e - start, length) : e).Order())
        {
            if (edge < start || edge > start + length)
            {
                continue;
            }

            var cell = CellOf(lines, edge);
            var width = lines[cell + 1] - lines[cell];
            var nearest = edge - lines[cell] <= width / 2 ? cell : cell + 1;
            if (edge - previous >= LeastGap * width && (isClosed || (nearest > 0 && nearest < last)) && !shifts.ContainsKey(nearest))
            {
                shifts.Add(nearest, edge - lines[nearest]);
                previous = edge;
            }
        }

        var anchors = Anchors(shifts, last, isClosed);
        return [.. lines.Select((line, i) => line + ShiftOf(anchors, i, reach))];
    }

    /// <summary>The cell that holds a position: the last one for its end, the nearest one for a position outside.</summary>
    public static int CellOf(IReadOnlyList<double> lines, double position)
    {
        var (low, high) = (0, lines.Count - 2);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            (low, high) = lines[middle] <= position ? (middle, high) : (low, middle - 1);
        }

        return low;
    }

    internal static double Modulo(double value, double period)
    {
        var rest = value % period;
        return rest < 0 ? rest + period : rest;
    }

    /// <summary>Lines whose shift is known, ascending: in an open grid the two ends as well, in a closed one every turn's neighbours.</summary>
    private static List<(int Line, double Shift)> Anchors(SortedDictionary<int, double> shifts, int last, bool isClosed)
    {
        if (!isClosed)
        {
            return [(0, 0), .. shifts.Select(pair => (pair.Key, pair.Value)), (last, 0)];
        }

        // The last line is the first: of two edges that claim it, one is enough.
        if (shifts.ContainsKey(0))
        {
            shifts.Remove(last);
        }

        return
        [
            .. new[] { -last, 0, last }.SelectMany(turn => shifts.Select(pair => (pair.Key + turn, pair.Value))).OrderBy(anchor => anchor.Item1),
        ];
    }

    private static double ShiftOf(List<(int Line, double Shift)> anchors, int line, int reach)
    {
        if (anchors.Count == 0)
        {
            return 0;
        }

        var left = anchors.FindLast(anchor => anchor.Line <= line);
        var right = anchors.Find(anchor => anchor.Line >= line);
        if (left.Line == right.Line)
        {
            return left.Shift;
        }

        var span = right.Line - left.Line;
        if (span <= 2 * reach)
        {
            return left.Shift + (right.Shift - left.Shift) * (line - left.Line) / span;
        }

        return left.Shift * Math.Max(0, 1 - (line - left.Line) / (double)reach) + right.Shift * Math.Max(0, 1 - (right.Line - line) / (double)reach);
    }
}
