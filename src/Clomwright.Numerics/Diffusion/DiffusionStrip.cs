using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

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
    private readonly StripCells cells;
    private readonly StripRates rates;
    private readonly StripFactors factors;
    private readonly Vector256<double>[] state, trial, first, second;
    private double step, size;

    /// <summary>An empty strip: no row is placed yet.</summary>
    /// <param name="medium">What it is made of.</param>
    /// <param name="grid">Its nodes and rows.</param>
    public DiffusionStrip(Medium medium, StripGrid grid)
    {
        ArgumentNullException.ThrowIfNull(medium);
        ArgumentNullException.ThrowIfNull(grid);
        (Grid, cells) = (grid, new(grid));
        (rates, factors) = (new(medium, cells), new(cells));
        (state, trial, first, second) = (cells.Stacked(), cells.Stacked(), cells.Stacked(), cells.Stacked());
    }

    /// <summary>Its nodes and rows.</summary>
    public StripGrid Grid { get; }

    /// <summary>How many rows are placed.</summary>
    public int Rows { get; private set; }

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

    /// <summary>The state at a node of a placed row; rows from the bottom, nodes from the first face to the last.</summary>
    public double this[int row, int node] => state.Numbers()[cells.At(row, node)];

    /// <summary>What all placed rows hold.</summary>
    public double Held => Sum(0, Rows);

    /// <summary>The state of the placed rows, row by row from the bottom, in each from the first face to the last.</summary>
    public double[] ToArray() => [.. Enumerable.Range(0, Rows).SelectMany(row => Enumerable.Range(0, Grid.Nodes).Select(node => this[row, node]))];

    /// <summary>The mean state of a row.</summary>
    public double Mean(int row) => Sum(row, row + 1) / (Grid.Heights[row] * Grid.Thicknesses[row]);

    /// <summary>The mean state of some rows, by volume.</summary>
    public double Mean(int from, int to)
    {
        double held = 0, all = 0;
        for (var r = from; r < to; r++)
        {
            held += Sum(r, r + 1);
            all += Grid.Heights[r] * Grid.Thicknesses[r];
        }

        return held / all;
    }

    /// <summary>Places the next rows, all in one state.</summary>
    public void Place(int count, double value)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, Grid.Rows - Rows);
        var u = state.Numbers();
        for (var r = Rows; r < Rows + count; r++)
        {
            for (var i = 0; i < Grid.Nodes; i++)
            {
                u[cells.At(r, i)] = value;
            }
        }

        step = 0;
        Stand(Rows + count);
    }

    /// <summary>How much of the exchange at the two faces a row takes part in; 1 until said otherwise.</summary>
    public void Shelter(int row, double factor) => rates.Shelter(row, factor);

    /// <summary>Takes over the state of another strip of the same grid, to try what would come.</summary>
    public void Take(DiffusionStrip other)
    {
        ArgumentNullException.ThrowIfNull(other);
        ArgumentOutOfRangeException.ThrowIfNotEqual(other.state.Length, state.Length);
        other.state.CopyTo(state, 0);
        rates.Shelter(other.rates);
        (step, Out) = (other.step, other.Out);
        Stand(other.Rows);
    }

    /// <summary>Goes on from one time to another, s.</summary>
    /// <returns>Whether every step kept the tolerance; a step of a hundred-millionth of the way is kept whatever it does.</returns>
    public bool Advance<T>(double from, double to, T surroundings) where T : ISurroundings
    {
        var shortest = 1e-8 * (to - from);
        var kept = true;
        var time = from;
        while (Rows > 0 && to - time > 1e-9 * Math.Max(1, Math.Abs(to)))
        {
            var left = to - time;
            var h = Math.Min(Math.Min(step > 0 ? step : (to - from) / 64, StepMax), left);
            h = h < left && h > left / 2 ? left / 2 : h;
            var condition = surroundings.Mean(time, time + h);
            var error = Try(h, condition, out var outflow) / Tolerance;
            if (error <= 1 || h <= shortest)
            {
                kept &= error <= 1;
                trial.CopyTo(state, 0);
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

    private void Stand(int rows)
    {
        Rows = rows;
        size = Sum(cells.Volume);
    }

    /// <summary>One step of ROS2 into the trial state; what would go out; the size of the difference to first order.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private double Try(double h, in Condition condition, out Outflow outflow)
    {
        var count = StripCells.Fours(Rows) * Grid.Nodes;
        var volume = cells.Volume;
        var (rate, gh) = (rates.Rate, Gamma * h);
        var out1 = rates.Slopes(state, Rows, condition);
        factors.Factor(rates, Rows, gh);
        var more1 = factors.Solve(rate, first, rates, Rows, gh);
        for (var k = 0; k < count; k++)
        {
            trial[k] = state[k] + h * first[k];
        }

        var out2 = rates.Of(trial, Rows, condition);
        for (var k = 0; k < count; k++)
        {
            rate[k] -= 2 * volume[k] * first[k];
        }

        var more2 = factors.Solve(rate, second, rates, Rows, gh);
        for (var k = 0; k < count; k++)
        {
            trial[k] = state[k] + h * (1.5 * first[k] + 0.5 * second[k]);
            var difference = 0.5 * h * (first[k] + second[k]);
            rate[k] = volume[k] * difference * difference;
        }

        // Sum of V first = -(out1 + more1); of V second = -(out2 + more2) + 2 (out1 + more1).
        var f = h / 2;
        outflow = new(
            f * (out1.First + more1.First + out2.First + more2.First), f * (out1.Last + more1.Last + out2.Last + more2.Last),
            f * (out1.Top + more1.Top + out2.Top + more2.Top), f * (out1.Bottom + more1.Bottom + out2.Bottom + more2.Bottom));
        return Math.Sqrt(Sum(rate) / size);
    }

    private double Sum(int fromRow, int toRow)
    {
        var u = state.Numbers();
        var volume = cells.Volume.Numbers();
        double sum = 0;
        for (var r = fromRow; r < toRow; r++)
        {
            for (var i = 0; i < Grid.Nodes; i++)
            {
                sum += volume[cells.At(r, i)] * u[cells.At(r, i)];
            }
        }

        return sum;
    }

    /// <summary>Of all placed rows.</summary>
    private double Sum(Vector256<double>[] of)
    {
        var values = of.Numbers();
        double sum = 0;
        for (var r = 0; r < Rows; r++)
        {
            for (var i = 0; i < Grid.Nodes; i++)
            {
                sum += values[cells.At(r, i)];
            }
        }

        return sum;
    }
}
