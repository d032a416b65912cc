using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Clomwright.Numerics.Factorisation;

/// <summary>Adds the update matrix of a child to the rows and columns of its parent ("extend-add").</summary>
/// <param name="front">The parent.</param>
/// <param name="child">The child.</param>
/// <param name="rowOf">The parent's row for each of the child's.</param>
/// <param name="ascends">Whether those rows ascend.</param>
internal sealed unsafe class UpdateAdder(Front front, Front child, int[] rowOf, bool ascends)
{
    private const int Side = Tiles.Side;

    /// <summary>Lane masks: eight empty lanes, eight full ones, eight empty ones.</summary>
    private static readonly long[] Lanes = [0, 0, 0, 0, 0, 0, 0, 0, -1, -1, -1, -1, -1, -1, -1, -1, 0, 0, 0, 0, 0, 0, 0, 0];

    /// <summary>
    /// Adds the child's columns from..to-1 (whole tiles). Different columns may be added at the same time: they land in different columns of the
    /// parent or, where rows and columns may trade places, number by number in different places.
    /// </summary>
    public void AddColumns(int from, int to)
    {
        for (var strip = from / Side; strip < child.BoundaryRows / Side; strip++)
        {
            var first = strip * Side;
            var rows = Math.Min(Side, child.BoundaryDofs - first);
            if (ascends)
            {
                AddWholeTiles(strip, rows, from, Math.Min(to, first));
                AddNumbers(strip, rows, Math.Max(from, first), to);
            }
            else
            {
                AddNumbers(strip, rows, from, to);
            }
        }
    }

    private void AddNumbers(int strip, int rows, int from, int to)
    {
        var first = strip * Side;
        var source = child.UpdateStrip(strip);
        for (var r = 0; r < rows; r++)
        {
            for (var c = from; c < Math.Min(to, first + r + 1); c++)
            {
                var (a, b) = (rowOf[first + r], rowOf[c]);
                *Entry(Math.Max(a, b), Math.Min(a, b)) += source[c * Side + r];
            }
        }
    }

    /// <summary>
    /// The tiles before the diagonal: rows that stay together in one strip of the parent are added eight lanes at a time, shifted to their place
    /// by an unaligned load and with the other lanes masked.
    /// </summary>
    private void AddWholeTiles(int strip, int rows, int from, int to)
    {
        var first = strip * Side;
        for (var r = 0; r < rows;)
        {
            var row = rowOf[first + r];
            var lane = row % Side;
            var count = 1;
            while (r + count < rows && lane + count < Side && rowOf[first + r + count] == row + count)
            {
                count++;
            }

            AddRun(child.UpdateStrip(strip) + r - lane, from, to, row / Side, lane, count);
            r += count;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void AddRun(double* source, int from, int to, int strip, int lane, int count)
    {
        var pivotRows = front.PivotRows;
        fixed (int* map = rowOf)
        fixed (long* lanes = Lanes)
        {
            // Lanes lane..lane+count-1 are those that two windows on the masks both show.
            var low = Vector256.Load(lanes + Side - lane) & Vector256.Load(lanes + 2 * Side - lane - count);
            var high = Vector256.Load(lanes + Side - lane + 4) & Vector256.Load(lanes + 2 * Side - lane - count + 4);
            var inPanel = from;
            while (inPanel < to && map[inPanel] < pivotRows)
            {
                inPanel++;
            }

            var panel = front.Strip(strip);
            for (var c = from; c < inPanel; c++)
            {
                AddLanes(panel + map[c] * Side, source + c * Side, low, high);
            }

            if (inPanel < to)
            {
                var update = front.UpdateStrip(strip - front.PivotStrips) - (long)pivotRows * Side;
                for (var c = inPanel; c < to; c++)
                {
                    AddLanes(update + map[c] * Side, source + c * Side, low, high);
                }
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void AddLanes(double* target, double* source, Vector256<long> low, Vector256<long> high)
    {
        (Vector256.Load(target) + (Vector256.Load(source) & low.AsDouble())).Store(target);
        (Vector256.Load(target + 4) + (Vector256.Load(source + 4) & high.AsDouble())).Store(target + 4);
    }

    /// <summary>The parent's number at a row and a column not after it.</summary>
    private double* Entry(int row, int column)
    {
        var pivotRows = front.PivotRows;
        return column < pivotRows
            ? front.Strip(row / Side) + (long)column * Side + row % Side
            : front.UpdateStrip((row - pivotRows) / Side) + (long)(column - pivotRows) * Side + row % Side;
    }
}
