using Clomwright.Evidence;
using Clomwright.Numerics.Diffusion;

namespace Clomwright.Analysis.Drying;

/// <summary>A bay through one season, a day at a time.</summary>
[Mutable("a season advances it day by day; a new one for every season")]
public sealed class BayWall
{
    private const int RowsInLift = 2;
    private const double Day = 86_400;
    private const double Crust = 0.015;
    private const double UnderCrust = 0.04;
    private const double Gravity = 9.80665;
    private const int QuartersFor = 4;
    private readonly BayModel model;
    private readonly int nodes;
    private readonly double[] state, shares, skinFirst, heights, means, potentials;
    private readonly double[] lower, diagonal, upper, right;
    private readonly double full;
    private readonly double[] rates;
    private double crust;
    private double age;

    internal BayWall(BayModel model, Func<int, double>? rate)
    {
        this.model = model;
        rates = [.. Enumerable.Range(0, model.Heights.Length).Select(lift => rate?.Invoke(lift) ?? 1)];
        nodes = model.Shares.Length;
        var rows = RowsInLift * model.Heights.Length;
        (state, means, potentials, heights) = (new double[rows * nodes], new double[rows], new double[rows * nodes], new double[rows]);
        (lower, diagonal, upper, right, shares, skinFirst) = (new double[nodes], new double[nodes], new double[nodes], new double[nodes], new double[nodes], new double[nodes]);
        for (var i = 0; i + 1 < nodes; i++)
        {
            var half = (model.Shares[i + 1] - model.Shares[i]) / 2;
            shares[i] += half;
            shares[i + 1] += half;
        }

        // The full model reads its skin over these nodes; here as much of each as lies no deeper.
        var deep = SkinShare(model);
        var reached = 0.0;
        for (var i = 0; i < nodes && reached < deep; i++)
        {
            skinFirst[i] = Math.Min(shares[i], deep - reached) / deep;
            reached += shares[i];
        }

        for (var r = 0; r < rows; r++)
        {
            heights[r] = model.Heights[r / RowsInLift] / RowsInLift;
        }

        full = model.Earth.Full * model.Earth.DryDensity;
    }

    /// <summary>Lifts laid.</summary>
    public int Lifts { get; private set; }

    /// <summary>Days since the topmost lift was laid until it may take the next; null while it may not.</summary>
    public double? FirmAfter { get; private set; }

    /// <summary>Strength over load of the weakest band under the roof, over what is asked: the roof may land from 1.</summary>
    public double RoofShare => Weakest(0, model.RoofLoad) / model.RoofSafety;

    /// <summary>Mean water content of a lift, from 0 at the bottom.</summary>
    public double Water(int lift) => (means[RowsInLift * lift] + means[RowsInLift * lift + 1]) / RowsInLift / model.Earth.DryDensity;

    /// <summary>Water content of the skin of the topmost lift, the wetter face.</summary>
    public double SkinWater
    {
        get
        {
            var row = state.AsSpan((RowsInLift * Lifts - 1) * nodes, nodes);
            double first = 0, last = 0;
            for (var i = 0; i < nodes; i++)
            {
                first += skinFirst[i] * row[i];
                last += skinFirst[i] * row[nodes - 1 - i];
            }

            return Math.Max(first, last) / model.Earth.DryDensity;
        }
    }

    /// <summary>Lays the next lift.</summary>
    public void Lay()
    {
        if (Lifts > 0)
        {
            // What was its crust is now a part of the wall.
            var top = RowsInLift * Lifts - 1;
            Add(top, (crust - means[top]) * Math.Min(1, Crust / heights[top]));
        }

        var laid = model.LaidWater * model.Earth.DryDensity;
        state.AsSpan(RowsInLift * Lifts * nodes, RowsInLift * nodes).Fill(laid);
        means.AsSpan(RowsInLift * Lifts, RowsInLift).Fill(laid);
        (crust, age, FirmAfter) = (laid, 0, null);
        Lifts++;
    }

    /// <summary>One day of weather.</summary>
    public void Advance(in BayDay day)
    {
        var condition = model.Faces.Of(day);
        var steps = age < QuartersFor ? 4 : 1;
        for (var s = 0; s < steps; s++)
        {
            var before = FirmAfter is null ? Ready() : 1;
            for (var lift = Lifts - 1; lift >= 0; lift--)
            {
                // Only the young change within a day.
                if (lift == Lifts - 1 || s == steps - 1)
                {
                    var span = rates[lift] * (lift == Lifts - 1 ? Day / steps : Day);
                    Row(RowsInLift * lift, span, condition, lift);
                    Row(RowsInLift * lift + 1, span, condition, lift);
                }
            }

            Upward(rates[Lifts - 1] * Day / steps, condition);
            age += 1.0 / steps;
            if (FirmAfter is null && Ready() is >= 1 and var now)
            {
                FirmAfter = age - (before < 1 ? (now - 1) / (now - before) : 1) / steps;
            }
        }
    }

    /// <summary>How near the topmost lift is to taking the next: 1 and more when it may.</summary>
    private double Ready()
    {
        if (Lifts == 0)
        {
            return 0;
        }

        var next = Lifts < model.Heights.Length ? model.Heights[Lifts] : 0;
        return Math.Min(model.Strength.Compressive(SkinWater) / (2 * model.Skin), Weakest(next, 0) / model.Safety);
    }

    private double Weakest(double more, double lineLoad)
    {
        var earth = model.Earth;
        var above = more * earth.WetDensity(model.LaidWater) * Gravity;
        var least = double.PositiveInfinity;
        for (var r = RowsInLift * Lifts - 1; r >= 0; r--)
        {
            var water = means[r] / earth.DryDensity;
            above += heights[r] * earth.WetDensity(water) * Gravity;
            least = Math.Min(least, model.Strength.Compressive(water) / (above + lineLoad / model.Thickness[r / RowsInLift]));
        }

        return least;
    }

    /// <summary>One implicit step of a row, linear in what changes.</summary>
    private void Row(int r, double span, in Condition c, int lift)
    {
        var u = state.AsSpan(r * nodes, nodes);
        var thick = model.Thickness[lift];
        var open = (r == 0 ? model.Foot : 1) * (lift == Lifts - 1 && FirmAfter is null ? model.Forms : 1);
        double before = 0, slopeBefore = 0, link = 0;
        for (var i = 0; i < nodes; i++)
        {
            model.Medium.Evaluate(u[i], c.ScaleA, c.ScaleB, out var potential, out var slope, out var b, out var slopeB);
            potentials[r * nodes + i] = potential;
            diagonal[i] = shares[i] * thick / span;
            right[i] = 0;
            if (i > 0)
            {
                link = model.Conductance / ((model.Shares[i] - model.Shares[i - 1]) * thick);
                var flow = link * (before - potential);
                right[i - 1] -= flow;
                right[i] += flow;
                diagonal[i - 1] += link * slopeBefore;
                upper[i - 1] = -link * slope;
                lower[i] = -link * slopeBefore;
                diagonal[i] += link * slope;
            }

            if (i == 0 || i == nodes - 1)
            {
                (i == 0 ? c.First : c.Last).Evaluate(u[i], b, slopeB, out var gone, out var slopeGone);
                right[i] -= open * gone;
                diagonal[i] += open * slopeGone;
            }

            (before, slopeBefore) = (potential, slope);
        }

        for (var i = 1; i < nodes; i++)
        {
            var factor = lower[i] / diagonal[i - 1];
            diagonal[i] -= factor * upper[i - 1];
            right[i] -= factor * right[i - 1];
        }

        double change = 0, mean = 0;
        for (var i = nodes - 1; i >= 0; i--)
        {
            change = (right[i] - (i < nodes - 1 ? upper[i] * change : 0)) / diagonal[i];
            u[i] = Math.Clamp(u[i] + change, 1e-3, full);
            mean += shares[i] * u[i];
        }

        means[r] = mean;
    }

    /// <summary>Between rows, and out through the crust.</summary>
    private void Upward(double span, in Condition c)
    {
        var rows = RowsInLift * Lifts;
        for (var r = 0; r + 1 < rows; r++)
        {
            var distance = (heights[r] + heights[r + 1]) / 2;
            for (var i = 0; i < nodes; i++)
            {
                var (at, over) = (r * nodes + i, (r + 1) * nodes + i);
                var flow = span * (potentials[at] - potentials[over]) / distance;
                Add(r, i, -flow / heights[r]);
                Add(r + 1, i, flow / heights[r + 1]);
            }
        }

        // The crust in balance over the step with what comes from below.
        var top = rows - 1;
        var start = crust;
        var below = 0.0;
        for (var i = 0; i < nodes; i++)
        {
            below += shares[i] * potentials[top * nodes + i];
        }

        var depth = Math.Min(UnderCrust, heights[top] / 2);
        for (var round = 0; round < 4; round++)
        {
            var there = Potential(crust, c, out var slope);
            var b = model.Medium.B(crust);
            var nudge = (model.Medium.B(crust + 0.01) - b) / 0.01;
            c.Top.Evaluate(crust, b, nudge, out var gone, out var slopeGone);
            var rest = Crust * (crust - start) / span - (below - there) / depth + gone;
            crust = Math.Clamp(crust - rest / (Crust / span + slope / depth + slopeGone), 1e-3, full);
        }

        Add(top, -span * (below - Potential(crust, c, out _)) / depth / heights[top]);
    }

    private double Potential(double u, in Condition c, out double slope)
    {
        model.Medium.Evaluate(u, c.ScaleA, c.ScaleB, out var potential, out slope, out _, out _);
        return potential;
    }

    private void Add(int r, double change)
    {
        for (var i = 0; i < nodes; i++)
        {
            Add(r, i, change);
        }
    }

    private void Add(int r, int i, double change)
    {
        ref var u = ref state[r * nodes + i];
        var before = u;
        u = Math.Clamp(u + change, 1e-3, full);
        means[r] += shares[i] * (u - before);
    }

    /// <summary>How deep the full model's skin reaches, as a share of the thickness.</summary>
    private static double SkinShare(BayModel model)
    {
        var nodes = BayRun.Nodes;
        var at = Math.Max(1, Array.FindIndex(nodes, s => s * model.Thickness[0] > model.SkinDepth));
        return (nodes[at] + nodes[at + 1]) / 2;
    }
}
