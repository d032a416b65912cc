using System.Collections.Immutable;
using Clomwright.Numerics.Factorisation;
using Clomwright.Numerics.Solid;
using static Clomwright.Numerics.Linear.Vectors;

namespace Clomwright.Numerics.Cracking;

/// <summary>
/// A body of which some materials carry little tension. Finds the displacements of least energy under a load, from those of the load before: Newton's method with the
/// tangent of the projected stress and a line search. Not for use from several threads at once; it uses several itself.
/// </summary>
[Mutable("keeps displacements and factor from one load to the next")]
public sealed class LowTensionBody : IDisposable
{
    /// <summary>Forces left over, as a share of the load, at which a state counts as in equilibrium.</summary>
    public const double Tolerance = 1e-5;

    private const int MostSteps = 60;
    private const int CellsInPart = 32;

    private readonly SolidModel model;
    private readonly ImmutableArray<LowTension?> laws;
    private readonly int threads;
    private readonly SolidStiffness pattern;
    private readonly TangentStiffness tangent;
    private readonly int[] solid;
    private readonly int[] patches;
    private readonly ThreadLocal<CellState> states = new(() => new CellState());
    private readonly double[][] l, w, y;
    private readonly CellCracks[] cracks;
    private readonly double[] modes, modeStep;
    private SheetFactor? factor;
    private SheetResponse? response;
    private double[] u;

    /// <summary>A body at rest without load.</summary>
    /// <param name="model">The model. Of materials with a law only the density counts; held nodes must be held at nothing.</param>
    /// <param name="laws">For each material its law, or null where it stays elastic.</param>
    /// <param name="threads">Threads to use.</param>
    /// <exception cref="ArgumentException">A number of laws other than that of materials, or a node held away from its place.</exception>
    public LowTensionBody(SolidModel model, ImmutableArray<LowTension?> laws, int threads = 2)
    {
        if (laws.Length != model.Materials.Length || model.Supports.Held.Any(held => held.Displacement != 0))
        {
            throw new ArgumentException("Every material needs a law or null, and every held node is held at nothing.");
        }

        (this.model, this.laws, this.threads) = (model, laws, threads);
        pattern = new SolidStiffness(model, withModes: true, threads);
        tangent = new TangentStiffness(pattern);
        solid = [.. Enumerable.Range(0, model.Cells.Count).Where(cell => model.Cells[cell].IsSolid)];
        patches = [.. Enumerable.Range(0, pattern.Shape.Patches)];
        (l, w, y) = (Rooms(CellState.Modes * CellState.Modes), Rooms(CellState.Modes * Hexahedron.Dofs), Rooms(CellState.Modes));
        (modes, modeStep) = (new double[CellState.Modes * solid.Length], new double[CellState.Modes * solid.Length]);
        cracks = new CellCracks[model.Cells.Count];
        u = new double[3 * model.Grid.Nodes];
    }

    /// <summary>The displacements reached.</summary>
    public Displacement Displacement => new([.. u]);

    /// <summary>Goes on to the equilibrium under a load, from where the body is.</summary>
    public CrackedState Solve(NodalLoad load, CancellationToken stop = default)
    {
        var forces = load.Forces.ToArray();
        ClearPassive(forces);
        var size = Math.Max(Norm(forces), double.Epsilon);
        var left = double.PositiveInfinity;
        for (var step = 0; step <= MostSteps; step++)
        {
            stop.ThrowIfCancellationRequested();
            var residual = Linearise(forces);
            left = Norm(residual) / size;
            if (left < Tolerance || step == MostSteps)
            {
                return State(step, left, left < Tolerance);
            }

            Factorise();
            if (factor!.LooseColumn is not null)
            {
                return State(step, left, false);
            }

            var du = response!.Solve(residual).ToArray();
            FollowModes(du);
            var share = Search(forces, du);
            for (var i = 0; i < u.Length; i++)
            {
                u[i] += share * du[i];
            }

            for (var i = 0; i < modes.Length; i++)
            {
                modes[i] += share * modeStep[i];
            }
        }

        return State(MostSteps, left, false);
    }

    /// <summary>Sets the body back to displacements where it has been, its modes at rest: the next load starts from there.</summary>
    public void Return(Displacement displacement)
    {
        u = displacement.Values.ToArray();
        Array.Clear(modes);
    }

    /// <summary>Gives all memory back.</summary>
    public void Dispose()
    {
        response?.Dispose();
        factor?.Dispose();
        states.Dispose();
    }

    private double[][] Rooms(int size) => [.. solid.Select(_ => new double[size])];

    private CrackedState State(int steps, double left, bool converged) =>
        new(new Displacement([.. u]), [.. cracks], steps, left, converged);

    /// <summary>The load less what cells and springs put up, with the modes eliminated; their tangents are taken on the way.</summary>
    private double[] Linearise(double[] load)
    {
        var inner = new double[u.Length];
        Each((place, state, cellU) =>
        {
            var (cell, fill) = (solid[place], model.Cells[solid[place]]);
            state.Visit(model, cell, laws[fill.Material], cellU, modes.AsSpan(CellState.Modes * place, CellState.Modes), withTangent: true);
            cracks[cell] = new CellCracks(state.Opening, state.Cracked, state.Crushed);
            state.Condense(fill.Cut, fill.Stiffness);
            tangent.Take(cell, state);
            var (cellL, cellW, cellY) = state.Condensed;
            cellL.CopyTo(l[place], 0);
            cellW.CopyTo(w[place], 0);
            cellY.CopyTo(y[place], 0);
            return state.Forces;
        }, inner);
        tangent.Springs.Clear();
        var residual = new double[u.Length];
        for (var i = 0; i < residual.Length; i++)
        {
            residual[i] = load[i] - inner[i];
        }

        foreach (var spring in model.Supports.Springs)
        {
            var dof = 3 * spring.Node + spring.Axis;
            var pull = u[dof] - spring.Settlement;
            if (!spring.PushesOnly || pull <= 0)
            {
                residual[dof] -= spring.Stiffness * pull;
                tangent.Springs[dof] += spring.Stiffness;
            }
        }

        ClearPassive(residual);
        return residual;
    }

    private void Factorise()
    {
        if (factor is null)
        {
            factor = new SheetFactor(tangent, SheetDissection.Even(tangent.Shape), threads);
            response = new SheetResponse(factor);
        }
        else
        {
            factor.Change(patches, []);
        }
    }

    private void FollowModes(double[] du)
    {
        Span<double> cellDu = stackalloc double[Hexahedron.Dofs];
        for (var place = 0; place < solid.Length; place++)
        {
            Corners(solid[place], du, cellDu);
            CellState.Follow(l[place], w[place], y[place], cellDu, modeStep.AsSpan(CellState.Modes * place, CellState.Modes));
        }
    }

    /// <summary>
    /// How much of the step to go: all of it unless the energy has turned up again too steeply there; else where the slope of the energy along the step, which only rises, is
    /// small, found by regula falsi.
    /// </summary>
    private double Search(double[] load, double[] du)
    {
        var start = Slope(load, du, 0);
        if (start >= 0)
        {
            return 1;
        }

        var (low, lowSlope) = (0.0, start);
        var (high, highSlope) = (1.0, Slope(load, du, 1));
        if (highSlope <= 0.5 * -start)
        {
            return 1;
        }

        for (var trial = 0; trial < 8; trial++)
        {
            var at = Math.Clamp(low - lowSlope * (high - low) / (highSlope - lowSlope), low + 0.05 * (high - low), high - 0.05 * (high - low));
            var slope = Slope(load, du, at);
            if (Math.Abs(slope) < 0.3 * -start)
            {
                return at;
            }

            (low, lowSlope, high, highSlope) = slope < 0 ? (at, slope, high, highSlope) : (low, lowSlope, at, slope);
        }

        return low > 0 ? low : high;
    }

    /// <summary>Derivative of the whole energy along the step, a share of it gone.</summary>
    private double Slope(double[] load, double[] du, double share)
    {
        var inner = new double[u.Length];
        var ofModes = new double[solid.Length];
        var here = share == 0 ? u : [.. u.Zip(du, (a, b) => a + share * b)];
        Each((place, state, cellU) =>
        {
            Span<double> moved = stackalloc double[CellState.Modes];
            var step = modeStep.AsSpan(CellState.Modes * place, CellState.Modes);
            for (var i = 0; i < moved.Length; i++)
            {
                moved[i] = modes[CellState.Modes * place + i] + share * step[i];
            }

            state.Visit(model, solid[place], laws[model.Cells[solid[place]].Material], cellU, moved, withTangent: false);
            ofModes[place] = Dot(state.ModeForces, step);
            return state.Forces;
        }, inner, here);
        var slope = ofModes.Sum();
        for (var i = 0; i < inner.Length; i++)
        {
            slope += (inner[i] - load[i]) * du[i];
        }

        foreach (var spring in model.Supports.Springs)
        {
            var dof = 3 * spring.Node + spring.Axis;
            var pull = here[dof] - spring.Settlement;
            slope += !spring.PushesOnly || pull < 0 ? spring.Stiffness * pull * du[dof] : 0;
        }

        return slope;
    }

    private delegate ReadOnlySpan<double> CellWork(int place, CellState state, ReadOnlySpan<double> cellU);

    /// <summary>Visits all solid cells, on all threads, and adds their forces up in the order of the cells.</summary>
    private void Each(CellWork visit, double[] sum, double[]? at = null)
    {
        var from = at ?? u;
        var forces = new double[Hexahedron.Dofs * solid.Length];
        using (var work = new SharedWork(threads))
        {
            work.ForEach((solid.Length + CellsInPart - 1) / CellsInPart, part =>
            {
                Span<double> cellU = stackalloc double[Hexahedron.Dofs];
                for (var place = part * CellsInPart; place < Math.Min(solid.Length, (part + 1) * CellsInPart); place++)
                {
                    Corners(solid[place], from, cellU);
                    visit(place, states.Value!, cellU).CopyTo(forces.AsSpan(Hexahedron.Dofs * place));
                }
            });
        }

        for (var place = 0; place < solid.Length; place++)
        {
            for (var pair = 0; pair < 4; pair++)
            {
                var node = model.Grid.CornerNode(solid[place], 2 * pair);
                for (var i = 0; i < 6; i++)
                {
                    sum[3 * node + i] += forces[Hexahedron.Dofs * place + 6 * pair + i];
                }
            }
        }
    }

    private void Corners(int cell, double[] from, Span<double> cellU)
    {
        for (var pair = 0; pair < 4; pair++)
        {
            from.AsSpan(3 * model.Grid.CornerNode(cell, 2 * pair), 6).CopyTo(cellU[(6 * pair)..]);
        }
    }

    private void ClearPassive(double[] forces)
    {
        for (var dof = 0; dof < forces.Length; dof++)
        {
            if (!pattern.IsActive(dof))
            {
                forces[dof] = 0;
            }
        }
    }
}
