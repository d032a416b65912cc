using System.Collections.Immutable;
using Clomwright.Numerics.Solid;

namespace Clomwright.Numerics.Cracking;

/// <summary>One state of a body under its dead load and a share of a live one.</summary>
/// <param name="Factor">The share.</param>
/// <param name="Drift">Work of the live load at one over its size: how far what it pushes has moved, m.</param>
/// <param name="DriftHalved">The same with half the residual stiffness.</param>
/// <param name="Steps">Newton's steps to it.</param>
/// <param name="State">The state.</param>
public sealed record PushStep(double Factor, double Drift, double DriftHalved, int Steps, CrackedState State);

/// <summary>A body pushed until no equilibrium is found.</summary>
/// <param name="Steps">States in equilibrium, by rising factor.</param>
/// <param name="Beyond">The least factor tried at which none was found, or null where the last factor asked for was reached.</param>
public sealed record Pushover(ImmutableArray<PushStep> Steps, double? Beyond)
{
    /// <summary>Halving the residual stiffness may change the displacements by this share of their size, no more: beyond, it is the residual stiffness that carries.</summary>
    public const double LeastAgreement = 0.05;

    /// <summary>The largest factor in equilibrium; zero where not even the dead load is.</summary>
    public double Limit => Steps.IsEmpty ? 0 : Steps[^1].Factor;

    /// <summary>Raises a live load step by step; where no equilibrium is found the step is halved, down to an eighth.</summary>
    /// <param name="model">The model.</param>
    /// <param name="laws">For each material its law, or null.</param>
    /// <param name="dead">What always acts.</param>
    /// <param name="live">What is raised.</param>
    /// <param name="step">Of the factor, above zero.</param>
    /// <param name="most">The largest factor to go to.</param>
    /// <param name="threads">Threads to use.</param>
    /// <param name="told">Takes the factor of each equilibrium as it is found.</param>
    /// <param name="stop">Ends it.</param>
    public static Pushover Of(
        SolidModel model, ImmutableArray<LowTension?> laws, NodalLoad dead, NodalLoad live, double step, double most, int threads = 2, Action<double>? told = null,
        CancellationToken stop = default)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(step);
        var found = ImmutableArray.CreateBuilder<PushStep>();
        double? beyond = null;
        var (least, at) = (step / 8, 0.0);
        var body = new LowTensionBody(model, laws, threads);
        var halved = new LowTensionBody(model, [.. laws.Select(law => law is null ? null : law with { Residual = law.Residual / 2 })], threads);
        try
        {
            while (true)
            {
                var load = dead + at * live;
                var (one, other) = (body.Solve(load, stop), halved.Solve(load, stop));
                if (one.IsInEquilibrium && other.IsInEquilibrium && Apart(one, other) <= LeastAgreement)
                {
                    found.Add(new PushStep(at, Drift(live, one), Drift(live, other), one.Steps, one));
                    told?.Invoke(at);
                    if (at >= most - 1e-6 * step)
                    {
                        break;
                    }
                }
                else
                {
                    beyond = at;
                    if (found.Count == 0)
                    {
                        break;
                    }

                    // Back to where it stood: what has moved far would be long in coming back.
                    body.Return(found[^1].State.Displacement);
                    halved.Return(found[^1].State.Displacement);
                }

                while (found[^1].Factor + step >= beyond)
                {
                    step /= 2;
                }

                if (step < least)
                {
                    break;
                }

                at = Math.Min(most, found[^1].Factor + step);
            }
        }
        finally
        {
            body.Dispose();
            halved.Dispose();
        }

        return new Pushover(found.ToImmutable(), beyond);
    }

    /// <summary>How far apart two states are, as a share of the first's size.</summary>
    private static double Apart(CrackedState one, CrackedState other)
    {
        var (apart, size) = (0.0, 0.0);
        for (var i = 0; i < one.Displacement.Values.Length; i++)
        {
            var (a, b) = (one.Displacement.Values[i], other.Displacement.Values[i]);
            apart += (b - a) * (b - a);
            size += a * a;
        }

        return size > 0 ? Math.Sqrt(apart / size) : 0;
    }

    private static double Drift(NodalLoad live, CrackedState state)
    {
        var (work, size) = (0.0, 0.0);
        for (var i = 0; i < live.Forces.Length; i++)
        {
            work += live.Forces[i] * state.Displacement.Values[i];
            size += Math.Abs(live.Forces[i]);
        }

        return size > 0 ? work / size : 0;
    }
}
