using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Clomwright.Numerics.Diffusion;

/// <summary>Factors of V - gamma h J of a strip across and upward, and answers with them.</summary>
internal sealed class StripFactors(StripCells cells)
{
    private readonly Vector256<double>[] xLower = cells.Stacked(), xDiagonal = cells.Stacked(), xUpper = cells.Stacked(), half = cells.Stacked();
    private readonly Vector256<double>[] zLower = cells.Lying(), zDiagonal = cells.Lying(), zUpper = cells.Lying(), lying = cells.Lying();

    /// <summary>Factors, without exchange of rows: columns are dominated by their diagonals.</summary>
    public void Factor(StripRates rates, int rows, double gh)
    {
        for (var group = 0; group < StripCells.Fours(rows); group++)
        {
            Across(rates, group, gh);
        }

        Upward(rates, rows, gh);
    }

    /// <summary>Across, then upward. Returns what the implicit parts add to the outflow of the stage.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public Outflow Solve(Vector256<double>[] right, Vector256<double>[] answer, StripRates rates, int rows, double gh)
    {
        for (var group = 0; group < StripCells.Fours(rows); group++)
        {
            SolveAcross(right, group);
        }

        SolveUpward(rows);
        double outFirst = 0, outLast = 0, outTop = 0, outBottom = 0;
        var x = half.Numbers();
        var z = lying.Numbers();
        var first = rates.FirstSlope.Numbers();
        var last = rates.LastSlope.Numbers();
        var top = rates.TopSlope.Numbers();
        var bottom = rates.BottomSlope.Numbers();
        for (var r = 0; r < rows; r++)
        {
            cells.Stack(lying.AsSpan(r * cells.Width, cells.Width), r, answer);
            outFirst += gh * first[r] * x[cells.At(r, 0)];
            outLast += gh * last[r] * x[cells.At(r, cells.Nodes - 1)];
        }

        for (var i = 0; i < cells.Nodes; i++)
        {
            outTop += gh * top[i] * z[(rows - 1) * cells.Width * StripCells.Lanes + i];
            outBottom += gh * bottom[i] * z[i];
        }

        return new(outFirst, outLast, outTop, outBottom);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Across(StripRates rates, int group, double gh)
    {
        var (volume, across, slope, start, end) = (cells.Volume, cells.Across, rates.Slope, group * cells.Nodes, (group + 1) * cells.Nodes);
        var left = Vector256<double>.Zero;
        for (var k = start; k < end; k++)
        {
            var d = volume[k] + gh * (left + across[k]) * slope[k];
            if (k == start)
            {
                d += gh * rates.FirstSlope[group];
            }

            if (k == end - 1)
            {
                d += gh * rates.LastSlope[group];
            }

            if (k > start)
            {
                xLower[k] = -gh * left * slope[k - 1] * xDiagonal[k - 1];
                d -= xLower[k] * xUpper[k - 1];
            }

            xDiagonal[k] = Vector256<double>.One / d;
            left = across[k];
            xUpper[k] = k + 1 < end ? -gh * left * slope[k + 1] : Vector256<double>.Zero;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Upward(StripRates rates, int rows, double gh)
    {
        var (volume, upward, width) = (cells.LyingVolume, cells.LyingUpward, cells.Width);
        var slope = lying;
        cells.LayRows(rates.Slope, rows, slope);
        var last = (rows - 1) * width;
        for (var k = 0; k < last + width; k++)
        {
            var (up, down) = (k < last ? upward[k] : default, k >= width ? upward[k - width] : default);
            var d = volume[k] + gh * (down + up) * slope[k];
            if (k < width)
            {
                d += gh * rates.BottomSlope[k];
            }

            if (k >= last)
            {
                d += gh * rates.TopSlope[k - last];
            }

            if (k >= width)
            {
                zLower[k] = -gh * down * slope[k - width] * zDiagonal[k - width];
                d -= zLower[k] * zUpper[k - width];
            }

            zDiagonal[k] = Vector256<double>.One / d;
            zUpper[k] = k < last ? -gh * up * slope[k + width] : default;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void SolveAcross(Vector256<double>[] right, int group)
    {
        var (start, last) = (group * cells.Nodes, (group + 1) * cells.Nodes - 1);
        var value = right[start];
        half[start] = value;
        for (var k = start + 1; k <= last; k++)
        {
            value = right[k] - xLower[k] * value;
            half[k] = value;
        }

        value *= xDiagonal[last];
        half[last] = value;
        for (var k = last - 1; k >= start; k--)
        {
            value = (half[k] - xUpper[k] * value) * xDiagonal[k];
            half[k] = value;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void SolveUpward(int rows)
    {
        var (z, volume, width) = (lying, cells.LyingVolume, cells.Width);
        cells.LayRows(half, rows, z);
        var last = (rows - 1) * width;
        for (var k = 0; k < width; k++)
        {
            z[k] = volume[k] * z[k];
        }

        for (var k = width; k < last + width; k++)
        {
            z[k] = volume[k] * z[k] - zLower[k] * z[k - width];
        }

        for (var k = last; k < last + width; k++)
        {
            z[k] *= zDiagonal[k];
        }

        for (var k = last - 1; k >= 0; k--)
        {
            z[k] = (z[k] - zUpper[k] * z[k + width]) * zDiagonal[k];
        }
    }
}
