using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Clomwright.Numerics.Diffusion;

/// <summary>What flows into every cell of a strip, and how that changes with the state.</summary>
internal sealed class StripRates
{
    private readonly Medium medium;
    private readonly StripCells cells;
    private readonly Vector256<double>[] potential, faceShare, firstOut, lastOut, edge;
    private readonly double[] shelter;

    public StripRates(Medium medium, StripCells cells)
    {
        (this.medium, this.cells) = (medium, cells);
        Vector256<double>[] Faces() => new Vector256<double>[cells.FaceHeight.Length];
        (Rate, Slope, potential) = (cells.Stacked(), cells.Stacked(), cells.Stacked());
        (faceShare, firstOut, lastOut, FirstSlope, LastSlope) = (Faces(), Faces(), Faces(), Faces(), Faces());
        (TopSlope, BottomSlope, edge, shelter) = (new Vector256<double>[cells.Width], new Vector256<double>[cells.Width], new Vector256<double>[cells.Width], new double[cells.FaceHeight.Length * StripCells.Lanes]);
        Array.Fill(shelter, 1);
        cells.FaceHeight.CopyTo(faceShare, 0);
    }

    /// <summary>Net inflow of every cell; stacked.</summary>
    public Vector256<double>[] Rate { get; }

    /// <summary>Of the potential of every cell; stacked.</summary>
    public Vector256<double>[] Slope { get; }

    /// <summary>Of what leaves at the first face of every row.</summary>
    public Vector256<double>[] FirstSlope { get; }

    /// <summary>The same at the last face.</summary>
    public Vector256<double>[] LastSlope { get; }

    /// <summary>Of what leaves at the top, for each node; lying.</summary>
    public Vector256<double>[] TopSlope { get; }

    /// <summary>The same at the bottom.</summary>
    public Vector256<double>[] BottomSlope { get; }

    public void Shelter(int row, double factor)
    {
        shelter[row] = factor;
        faceShare.Numbers()[row] = cells.FaceHeight.Numbers()[row] * factor;
    }

    public void Shelter(StripRates other)
    {
        other.shelter.CopyTo(shelter, 0);
        other.faceShare.CopyTo(faceShare, 0);
    }

    /// <summary>Inflow into <see cref="Rate"/>, and the slopes; what leaves at the four sides.</summary>
    public Outflow Slopes(Vector256<double>[] u, int rows, in Condition c) => Of(u, rows, c, keepSlopes: true);

    /// <summary>Inflow into <see cref="Rate"/>; what leaves at the four sides. Slopes stay.</summary>
    public Outflow Of(Vector256<double>[] u, int rows, in Condition c) => Of(u, rows, c, keepSlopes: false);

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private Outflow Of(Vector256<double>[] u, int rows, in Condition c, bool keepSlopes)
    {
        for (var group = 0; group < StripCells.Fours(rows); group++)
        {
            Across(u, group, c, keepSlopes);
        }

        Upward(rows);
        double outFirst = 0, outLast = 0;
        var first = firstOut.Numbers();
        var last = lastOut.Numbers();
        for (var r = 0; r < rows; r++)
        {
            outFirst += first[r];
            outLast += last[r];
        }

        var outTop = Side(u, rows - 1, c.Top, TopSlope, keepSlopes);
        var outBottom = Side(u, 0, c.Bottom, BottomSlope, keepSlopes);
        return new(outFirst, outLast, outTop, outBottom);
    }

    /// <summary>From face to face, four rows at once.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Across(Vector256<double>[] u, int group, in Condition c, bool keepSlopes)
    {
        var (across, start, end) = (cells.Across, group * cells.Nodes, (group + 1) * cells.Nodes);
        var share = faceShare[group];
        medium.Evaluate(u[start], c.ScaleA, c.ScaleB, out var before, out var slope, out var b, out var slopeB);
        c.First.Evaluate(u[start], b, slopeB, out var gone, out var goneSlope);
        potential[start] = before;
        firstOut[group] = gone * share;
        if (keepSlopes)
        {
            Slope[start] = slope;
            FirstSlope[group] = goneSlope * share;
        }

        var inflow = -firstOut[group];
        for (var k = start + 1; k < end; k++)
        {
            medium.Evaluate(u[k], c.ScaleA, c.ScaleB, out var here, out slope, out b, out slopeB);
            potential[k] = here;
            if (keepSlopes)
            {
                Slope[k] = slope;
            }

            var flow = across[k - 1] * (before - here);
            Rate[k - 1] = inflow - flow;
            (inflow, before) = (flow, here);
        }

        c.Last.Evaluate(u[end - 1], b, slopeB, out gone, out goneSlope);
        lastOut[group] = gone * share;
        Rate[end - 1] = inflow - lastOut[group];
        if (keepSlopes)
        {
            LastSlope[group] = goneSlope * share;
        }
    }

    /// <summary>From row to row: what leaves a cell upward enters the cell in the next lane, or in the first lane of the next four.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Upward(int rows)
    {
        var (p, upward, nodes, groups) = (potential, cells.Upward, cells.Nodes, StripCells.Fours(rows));
        var lanes = Vector256.Create(0.0, 1, 2, 3);
        for (var i = 0; i < nodes; i++)
        {
            var from = 0.0;
            for (var (group, k) = (0, i); group < groups; group++, k += nodes)
            {
                var here = p[k];
                var next = Vector256.Shuffle(here, Vector256.Create(1L, 2, 3, 3));
                next = group + 1 < groups ? next.WithElement(StripCells.Lanes - 1, p[k + nodes][0]) : next;
                var up = upward[k] * (here - next);
                // Nothing goes on from the last row placed.
                up = Vector256.ConditionalSelect(Vector256.LessThan(lanes, Vector256.Create(rows - 1.0 - group * StripCells.Lanes)), up, Vector256<double>.Zero);
                var into = Vector256.Shuffle(up, Vector256.Create(0L, 0, 1, 2)).WithElement(0, from);
                Rate[k] = Rate[k] + into - up;
                from = up[StripCells.Lanes - 1];
            }
        }
    }

    /// <summary>Out through the top of the last row, or the bottom of the first.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private double Side(Vector256<double>[] u, int row, in Exchange exchange, Vector256<double>[] slopes, bool keepSlopes)
    {
        if (exchange == default)
        {
            if (keepSlopes)
            {
                Array.Clear(slopes);
            }

            return 0;
        }

        cells.Lay(u, row, edge);
        for (var w = 0; w < edge.Length; w++)
        {
            var width = cells.TopWidth[row * cells.Width + w];
            medium.Evaluate(edge[w], 0, 1, out _, out _, out var value, out var slopeB);
            exchange.Evaluate(edge[w], value, slopeB, out var flow, out var flowSlope);
            edge[w] = flow * width;
            slopes[w] = keepSlopes ? flowSlope * width : slopes[w];
        }

        var rate = Rate.Numbers();
        var gone = edge.Numbers();
        var sum = 0.0;
        for (var (i, at) = (0, cells.At(row, 0)); i < cells.Nodes; i++, at += StripCells.Lanes)
        {
            rate[at] -= gone[i];
            sum += gone[i];
        }

        return sum;
    }
}
