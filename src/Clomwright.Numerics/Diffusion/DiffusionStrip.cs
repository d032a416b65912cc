namespace Clomwright.Numerics.Diffusion;

/// <summary>Nonlinear diffusion through a thickness and up a height, stepped implicitly with steps of its own choosing.</summary>
/// <remarks>
/// Finite volumes about nodes in the thickness and rows in the height; flux from the difference of potentials (Kirchhoff), so what leaves one cell enters the next.
/// In time the second-order Rosenbrock scheme ROS2 with approximate factors, one tridiagonal system for each row and one for each column of nodes (Verwer, Spee, Blom,
/// Hundsdorfer 1999, from memory): L-stable for gamma = 1 - 1/sqrt 2, of second order whatever the factors, so the splitting costs no order and no mass. A step keeps
/// no more than the tolerance of difference to the first-order answer, in the root of the mean square over the volume. Steps allocate nothing.
/// Rows may be added while it runs: only placed rows take part.
/// </remarks>
[Mutable("the state of a diffusion in time; belongs to one caller")]
public sealed class DiffusionStrip
{
    private const double Gamma = 1 - 0.70710678118654752440;
    private readonly Medium medium;
    private readonly int nodes;
    private readonly double[] volume, across, upward, faceHeight, topWidth, rowFactor;
    private readonly double[] state, trial, first, second, half, rate;
    private readonly double[] slope, xLower, xDiagonal, xUpper, zLower, zDiagonal, zUpper;
    private readonly double[] firstSlope, lastSlope, topSlope, bottomSlope, potential, b;
    private int rows;
    private double step;

    /// <summary>An empty strip: no row is placed yet.</summary>
    /// <param name="medium">What it is made of.</param>
    /// <param name="grid">Its nodes and rows.</param>
    public DiffusionStrip(Medium medium, StripGrid grid)
    {
        ArgumentNullException.ThrowIfNull(medium);
        ArgumentNullException.ThrowIfNull(grid);
        (this.medium, Grid, nodes) = (medium, grid, grid.Nodes);
        var all = grid.Rows * nodes;
        double[] New(int count) => new double[count];
        (volume, across, upward, state, trial, first, second, half, rate) = (New(all), New(all), New(all), New(all), New(all), New(all), New(all), New(all), New(all));
        (slope, xLower, xDiagonal, xUpper, zLower, zDiagonal, zUpper) = (New(all), New(all), New(all), New(all), New(all), New(all), New(all));
        (potential, b) = (New(all), New(all));
        (faceHeight, firstSlope, lastSlope, rowFactor) = (New(grid.Rows), New(grid.Rows), New(grid.Rows), New(grid.Rows));
        (topWidth, topSlope, bottomSlope) = (New(all), New(nodes), New(nodes));
        Array.Fill(rowFactor, 1);
        for (var r = 0; r < grid.Rows; r++)
        {
            var (height, thickness) = (grid.Heights[r], grid.Thicknesses[r]);
            faceHeight[r] = height;
            for (var i = 0; i < nodes; i++)
            {
                var at = r * nodes + i;
                topWidth[at] = thickness * grid.NodeShares[i];
                volume[at] = topWidth[at] * height;
                across[at] = i + 1 < nodes ? height / (thickness * (grid.Shares[i + 1] - grid.Shares[i])) : 0;
                upward[at] = r + 1 < grid.Rows
                    ? Math.Min(thickness, grid.Thicknesses[r + 1]) * grid.NodeShares[i] / ((height + grid.Heights[r + 1]) / 2)
                    : 0;
            }
        }
    }

    /// <summary>Its nodes and rows.</summary>
    public StripGrid Grid { get; }

    /// <summary>How many rows are placed.</summary>
    public int Rows => rows;

    /// <summary>Allowed difference of one step, in the unit of the state.</summary>
    public double Tolerance { get; set; } = 1e-6;

    /// <summary>The longest step, s.</summary>
    public double StepMax { get; set; } = double.PositiveInfinity;

    /// <summary>Steps kept so far.</summary>
    public int Steps { get; private set; }

    /// <summary>Steps tried and not kept.</summary>
    public int Rejected { get; private set; }

    /// <summary>What went out so far.</summary>
    public Outflow Out { get; private set; }

    /// <summary>The state of the placed rows, row by row from the bottom, in each from the first face to the last.</summary>
    public ReadOnlySpan<double> State => state.AsSpan(0, rows * nodes);

    /// <summary>What all placed rows hold.</summary>
    public double Held => Sum(0, rows);

    /// <summary>The mean state of a row.</summary>
    public double Mean(int row) => Sum(row, row + 1) / (Grid.Heights[row] * Grid.Thicknesses[row]);

    /// <summary>The mean state of some rows, by volume.</summary>
    public double Mean(int from, int to)
    {
        double held = 0, size = 0;
        for (var r = from; r < to; r++)
        {
            held += Sum(r, r + 1);
            size += Grid.Heights[r] * Grid.Thicknesses[r];
        }

        return held / size;
    }

    /// <summary>Places the next rows, all in one state.</summary>
    public void Place(int count, double value)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, Grid.Rows - rows);
        Array.Fill(state, value, rows * nodes, count * nodes);
        rows += count;
        step = 0;
    }

    /// <summary>How much of the exchange at the two faces a row takes part in; 1 until said otherwise.</summary>
    public void Shelter(int row, double factor) => rowFactor[row] = factor;

    /// <summary>Takes over the state of another strip of the same grid, to try what would come.</summary>
    public void Take(DiffusionStrip other)
    {
        ArgumentNullException.ThrowIfNull(other);
        ArgumentOutOfRangeException.ThrowIfNotEqual(other.state.Length, state.Length);
        other.state.CopyTo(state, 0);
        other.rowFactor.CopyTo(rowFactor, 0);
        (rows, step, Out) = (other.rows, other.step, other.Out);
    }

    /// <summary>Goes on from one time to another, s.</summary>
    /// <returns>Whether every step kept the tolerance; a step of a hundred-millionth of the way is kept whatever it does.</returns>
    public bool Advance<T>(double from, double to, T surroundings) where T : ISurroundings
    {
        var shortest = 1e-8 * (to - from);
        var kept = true;
        var time = from;
        while (rows > 0 && to - time > 1e-9 * Math.Max(1, Math.Abs(to)))
        {
            var left = to - time;
            var h = Math.Min(Math.Min(step > 0 ? step : (to - from) / 64, StepMax), left);
            h = h < left && h > left / 2 ? left / 2 : h;
            var condition = surroundings.Mean(time, time + h);
            var error = Try(h, condition, out var outflow) / Tolerance;
            if (error <= 1 || h <= shortest)
            {
                kept &= error <= 1;
                trial.AsSpan(0, rows * nodes).CopyTo(state);
                Out = new(Out.First + outflow.First, Out.Last + outflow.Last, Out.Top + outflow.Top, Out.Bottom + outflow.Bottom);
                time += h;
                Steps++;
                step = h * Math.Min(4, 0.85 / Math.Sqrt(Math.Max(error, 1e-6)));
            }
            else
            {
                Rejected++;
                step = h * Math.Clamp(double.IsFinite(error) ? 0.85 / Math.Sqrt(error) : 0.1, 0.1, 0.7);
            }

            step = Math.Max(step, shortest);
        }

        return kept;
    }

    /// <summary>One step of ROS2 into the trial state; what would go out; the size of the difference to first order.</summary>
    private double Try(double h, in Condition condition, out Outflow outflow)
    {
        var count = rows * nodes;
        var gh = Gamma * h;
        var out1 = Rates(state, condition, keepSlopes: true);
        Factor(gh);
        var more1 = Solve(rate, first, gh);
        for (var k = 0; k < count; k++)
        {
            trial[k] = state[k] + h * first[k];
        }

        var out2 = Rates(trial, condition, keepSlopes: false);
        for (var k = 0; k < count; k++)
        {
            rate[k] -= 2 * volume[k] * first[k];
        }

        var more2 = Solve(rate, second, gh);
        double square = 0, size = 0;
        for (var k = 0; k < count; k++)
        {
            trial[k] = state[k] + h * (1.5 * first[k] + 0.5 * second[k]);
            var difference = 0.5 * h * (first[k] + second[k]);
            square += volume[k] * difference * difference;
            size += volume[k];
        }

        // Sum of V first = -(out1 + more1); of V second = -(out2 + more2) + 2 (out1 + more1).
        var f = h / 2;
        outflow = new(
            f * (out1.First + more1.First + out2.First + more2.First), f * (out1.Last + more1.Last + out2.Last + more2.Last),
            f * (out1.Top + more1.Top + out2.Top + more2.Top), f * (out1.Bottom + more1.Bottom + out2.Bottom + more2.Bottom));
        return Math.Sqrt(square / size);
    }

    /// <summary>Net inflow of every cell into <see cref="rate"/>; what leaves at the four sides; the slopes for the factors.</summary>
    private Outflow Rates(double[] u, in Condition c, bool keepSlopes)
    {
        double outFirst = 0, outLast = 0, outTop = 0, outBottom = 0;
        for (var r = 0; r < rows; r++)
        {
            var start = r * nodes;
            double before = 0, into = 0, slopeB = 0;
            for (var k = start; k < start + nodes; k++)
            {
                medium.Evaluate(u[k], c.ScaleA, c.ScaleB, out var p, out var s, out b[k], out slopeB);
                potential[k] = p;
                if (keepSlopes)
                {
                    slope[k] = s;
                }

                if (k == start)
                {
                    c.First.Evaluate(u[k], b[k], slopeB, out var g, out var gs);
                    var size = faceHeight[r] * rowFactor[r];
                    outFirst += g * size;
                    rate[k] = -g * size;
                    firstSlope[r] = keepSlopes ? gs * size : firstSlope[r];
                }
                else
                {
                    into = across[k - 1] * (before - p);
                    rate[k - 1] -= into;
                    rate[k] = into;
                }

                before = p;
            }

            var last = start + nodes - 1;
            c.Last.Evaluate(u[last], b[last], slopeB, out var gl, out var gls);
            var face = faceHeight[r] * rowFactor[r];
            outLast += gl * face;
            rate[last] -= gl * face;
            lastSlope[r] = keepSlopes ? gls * face : lastSlope[r];
            if (r > 0)
            {
                for (var k = start; k < start + nodes; k++)
                {
                    var up = upward[k - nodes] * (potential[k - nodes] - potential[k]);
                    rate[k - nodes] -= up;
                    rate[k] += up;
                }
            }
        }

        for (var i = 0; i < nodes; i++)
        {
            outTop += Side(u, (rows - 1) * nodes + i, i, c.Top, topSlope, keepSlopes);
            outBottom += Side(u, i, i, c.Bottom, bottomSlope, keepSlopes);
        }

        return new(outFirst, outLast, outTop, outBottom);
    }

    private double Side(double[] u, int k, int i, in Exchange exchange, double[] slopes, bool keepSlopes)
    {
        if (exchange == default)
        {
            slopes[i] = keepSlopes ? 0 : slopes[i];
            return 0;
        }

        medium.Evaluate(u[k], 0, 1, out _, out _, out var value, out var slopeB);
        exchange.Evaluate(u[k], value, slopeB, out var g, out var gs);
        rate[k] -= g * topWidth[k];
        slopes[i] = keepSlopes ? gs * topWidth[k] : slopes[i];
        return g * topWidth[k];
    }

    /// <summary>Factors of V - gamma h J across and upward, without exchange of rows: columns are dominated by their diagonals.</summary>
    private void Factor(double gh)
    {
        for (var r = 0; r < rows; r++)
        {
            var start = r * nodes;
            for (var i = 0; i < nodes; i++)
            {
                var k = start + i;
                var left = i > 0 ? across[k - 1] : 0;
                var d = volume[k] + gh * (left + across[k]) * slope[k] + (i == 0 ? gh * firstSlope[r] : 0) + (i == nodes - 1 ? gh * lastSlope[r] : 0);
                if (i > 0)
                {
                    xLower[k] = -gh * left * slope[k - 1] * xDiagonal[k - 1];
                    d -= xLower[k] * xUpper[k - 1];
                }

                xDiagonal[k] = 1 / d;
                xUpper[k] = i + 1 < nodes ? -gh * across[k] * slope[k + 1] : 0;
            }
        }

        for (var r = 0; r < rows; r++)
        {
            for (var i = 0; i < nodes; i++)
            {
                var k = r * nodes + i;
                var below = r > 0 ? upward[k - nodes] : 0;
                var above = r + 1 < rows ? upward[k] : 0;
                var d = volume[k] + gh * (below + above) * slope[k] + (r == 0 ? gh * bottomSlope[i] : 0) + (r == rows - 1 ? gh * topSlope[i] : 0);
                if (r > 0)
                {
                    zLower[k] = -gh * below * slope[k - nodes] * zDiagonal[k - nodes];
                    d -= zLower[k] * zUpper[k - nodes];
                }

                zDiagonal[k] = 1 / d;
                zUpper[k] = r + 1 < rows ? -gh * above * slope[k + nodes] : 0;
            }
        }
    }

    /// <summary>Across, then upward. Returns what the implicit parts add to the outflow of the stage.</summary>
    private Outflow Solve(double[] right, double[] answer, double gh)
    {
        double outFirst = 0, outLast = 0, outTop = 0, outBottom = 0;
        for (var r = 0; r < rows; r++)
        {
            var start = r * nodes;
            var last = start + nodes - 1;
            half[start] = right[start];
            for (var k = start + 1; k <= last; k++)
            {
                half[k] = right[k] - xLower[k] * half[k - 1];
            }

            half[last] *= xDiagonal[last];
            for (var k = last - 1; k >= start; k--)
            {
                half[k] = (half[k] - xUpper[k] * half[k + 1]) * xDiagonal[k];
            }

            outFirst += gh * firstSlope[r] * half[start];
            outLast += gh * lastSlope[r] * half[last];
        }

        var count = rows * nodes;
        for (var k = 0; k < nodes; k++)
        {
            answer[k] = volume[k] * half[k];
        }

        for (var k = nodes; k < count; k++)
        {
            answer[k] = volume[k] * half[k] - zLower[k] * answer[k - nodes];
        }

        for (var k = count - nodes; k < count; k++)
        {
            answer[k] *= zDiagonal[k];
        }

        for (var k = count - nodes - 1; k >= 0; k--)
        {
            answer[k] = (answer[k] - zUpper[k] * answer[k + nodes]) * zDiagonal[k];
        }

        for (var i = 0; i < nodes; i++)
        {
            outTop += gh * topSlope[i] * answer[count - nodes + i];
            outBottom += gh * bottomSlope[i] * answer[i];
        }

        return new(outFirst, outLast, outTop, outBottom);
    }

    private double Sum(int fromRow, int toRow)
    {
        double sum = 0;
        for (var k = fromRow * nodes; k < toRow * nodes; k++)
        {
            sum += volume[k] * state[k];
        }

        return sum;
    }
}
