using System.Collections.Immutable;
using Clomwright.Numerics.Factorisation;
using Clomwright.Numerics.Frames;

namespace Clomwright.Numerics.Solid;

/// <summary>
/// A body with its stiffness factorised: answers loads, and follows a model that changes cell by cell at a small part of the cost of starting
/// anew. Not for use from several threads at once; it uses several itself. Its memory is given back by <see cref="Dispose"/>.
/// </summary>
/// <remarks>However a body came to its model, its answers are those of a body made from that model and cut in the same sectors, to the last bit.</remarks>
[Mutable("owns a factor that is renewed in place")]
public sealed class ElasticBody : IDisposable
{
    private readonly SolidStiffness stiffness;
    private readonly SheetFactor factor;
    private readonly SheetResponse single;
    private readonly SurfaceRecovery surface;
    private readonly int threads;
    private readonly bool withModes;
    private readonly double[] right;
    private SheetResponse? eight;
    private double[]? together;
    private KeptOperators? operators;
    private SpringContact? contact;
    private int[] contactSprings = [];

    /// <summary>Forms and factorises a model.</summary>
    /// <param name="model">The model.</param>
    /// <param name="threads">Threads to use, one or more; the answers do not depend on it.</param>
    /// <param name="withModes">Without the incompatible modes the body is far too stiff in bending: only for comparison with other programs.</param>
    /// <exception cref="ArgumentException">A grid with folded cells, or cells and materials that do not belong to it.</exception>
    public ElasticBody(SolidModel model, int threads = 2, bool withModes = true)
    {
        Check(model);
        (this.threads, this.withModes) = (threads, withModes);
        stiffness = new SolidStiffness(model, withModes, threads);
        factor = new SheetFactor(stiffness, SheetDissection.Even(stiffness.Shape), threads);
        single = new SheetResponse(factor);
        right = new double[3 * model.Grid.Nodes];
        surface = new SurfaceRecovery(model.Grid.Columns.Patches, threads, withModes);
    }

    /// <summary>The model as it is now.</summary>
    public SolidModel Model => stiffness.Model;

    /// <summary>A thickness column that nothing holds (a part that floats, a body without supports), or null. Nothing can be solved then.</summary>
    public int? LooseColumn => factor.LooseColumn;

    /// <summary>What the last change took.</summary>
    public FactorWork LastWork => factor.LastWork;

    /// <summary>Numbers in the factor.</summary>
    public long FactorEntries => factor.Entries;

    /// <summary>Bytes held outside the collected heap.</summary>
    public long Bytes => factor.Bytes + single.Bytes + (eight?.Bytes ?? 0);

    /// <summary>Degrees of freedom that are solved for.</summary>
    public int ActiveDofs => Enumerable.Range(0, stiffness.Shape.Columns).Sum(column => stiffness.Active(column).Length);

    /// <summary>Follows a model on a grid with the same numbers of cells (its points may have moved).</summary>
    /// <exception cref="ArgumentException">Another number of cells, folded cells, or cells and materials that do not belong to the grid.</exception>
    public void Become(SolidModel model)
    {
        var (old, grid) = (Model.Grid, model.Grid);
        if ((grid.Around, grid.Up, grid.Through, grid.IsClosed) != (old.Around, old.Up, old.Through, old.IsClosed))
        {
            throw new ArgumentException("The grid has other numbers of cells.");
        }

        Check(model, isKnownGrid: ReferenceEquals(grid, old));
        var sameSprings = ReferenceEquals(Model.Supports, model.Supports);
        var (patches, columns) = stiffness.Follow(model);
        var changed = patches.Count > 0 || columns.Count > 0;
        if (changed || !sameSprings)
        {
            contact = null;
        }

        if (changed)
        {
            factor.Change([.. patches], [.. columns]);
        }
    }

    /// <summary>
    /// Prepares for changes in the cells from..to the long way: they come to lie in one sector that is eliminated last. Cheap when they do already;
    /// else what lies near is factorised anew. The margin, in cells, is how far they may still move before that happens again.
    /// </summary>
    public void FocusOn(int from, int to, int margin = 7)
    {
        var dissection = factor.Dissection.FocusedOn(stiffness.Shape, from, to + 1, margin);
        if (dissection.Focus != factor.Dissection.Focus || !ReferenceEquals(dissection.Cuts, factor.Dissection.Cuts))
        {
            factor.Dissect(dissection);
        }
    }

    /// <summary>The answer to one load. Repeated calls after small changes of body and load cost little.</summary>
    /// <exception cref="InvalidOperationException">Part of the body is held by nothing.</exception>
    public SolidAnswer Solve(NodalLoad load) => Settle([load], [SolveLinear(load, null)], (loads, released) => [SolveLinear(loads[0], released[0])])[0];

    /// <summary>The answers to many loads, eight at a time.</summary>
    /// <param name="loads">The loads.</param>
    /// <param name="stop">Asked before every eight.</param>
    /// <exception cref="InvalidOperationException">Part of the body is held by nothing.</exception>
    /// <exception cref="OperationCanceledException">Who asked gave up.</exception>
    public ImmutableArray<SolidAnswer> Solve(IReadOnlyList<NodalLoad> loads, CancellationToken stop = default)
    {
        var answers = ImmutableArray.CreateBuilder<SolidAnswer>(loads.Count);
        foreach (var block in loads.Chunk(SheetResponse.MostLanes))
        {
            stop.ThrowIfCancellationRequested();
            var solved = SolveTogether(block.Length, lane => RightSide(block[lane], null));
            answers.AddRange(Settle(block, Array.ConvertAll(solved, Completed), (loads, released) => Array.ConvertAll(SolveTogether(loads.Length, lane => RightSide(loads[lane], released[lane])), Completed)));
        }

        return answers.ToImmutable();
    }

    /// <summary>The stresses at the middle of every cell's inner and outer face.</summary>
    public SurfaceStress SurfaceStress(SolidAnswer answer) => surface.Recover(Model, answer.Displacement);

    /// <summary>The stresses in the middle of every cell, for each of many answers.</summary>
    /// <param name="answers">The answers.</param>
    /// <param name="again">Whether the same is asked after every change: what is formed for cells that stay is then kept, about 1.2 kB for each.</param>
    public ImmutableArray<CellStress> CellStresses(IReadOnlyList<SolidAnswer> answers, bool again = false) =>
        [.. CellStress.Of(Model, answers, again ? operators ??= new KeptOperators(Model.Grid.Cells) : null, threads, withModes)];

    /// <summary>The mean stress over a box, over what is solid in it; null where nothing is.</summary>
    public MeanStress? Average(SolidAnswer answer, GridBox box) => BoxRecovery.Average(Model, answer.Displacement, box, withModes);

    /// <summary>The stress at a position, unaveraged: at a corner of a void it only tells how fine the grid is.</summary>
    internal Stress StressAt(SolidAnswer answer, double s, double z, double t) =>
        BoxRecovery.At(Model, answer.Displacement, s, z, t, withModes);

    /// <summary>How well an answer balances its load.</summary>
    public SolidBalance Balance(SolidAnswer answer) => SolidBalance.Of(stiffness, answer);

    /// <summary>The force and moment passed on across a level by the cells from..to-1 the long way.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="from">First cell the long way.</param>
    /// <param name="to">One beyond the last cell; may lie beyond the end of a closed grid.</param>
    /// <param name="level">The level: 0 under the lowest cells, Up over the highest.</param>
    /// <param name="about">Point about which the moment is taken.</param>
    public SectionForce Across(SolidAnswer answer, int from, int to, int level, Vector3 about) =>
        SectionForce.Of(stiffness, answer, from, to, level, about);

    /// <summary>Gives all memory back.</summary>
    public void Dispose()
    {
        single.Dispose();
        eight?.Dispose();
        surface.Dispose();
        factor.Dispose();
    }

    private static void Check(SolidModel model, bool isKnownGrid = false)
    {
        if (model.Cells.Count != model.Grid.Cells)
        {
            throw new ArgumentException($"The grid has {model.Grid.Cells} cells, {model.Cells.Count} are filled.");
        }

        foreach (var fill in model.Cells.Fills)
        {
            if (fill.Material >= model.Materials.Length)
            {
                throw new ArgumentException($"There is no material {fill.Material}.");
            }
        }

        var nodes = model.Supports.Springs.Select(spring => spring.Node).Concat(model.Supports.Held.Select(held => held.Node));
        if (nodes.Any(node => node < 0 || node >= model.Grid.Nodes))
        {
            throw new ArgumentException("A support stands on no node.");
        }

        if (!isKnownGrid && model.Grid.FoldedCells() is [var folded, ..])
        {
            throw new ArgumentException($"Cell {folded} at {model.Grid.Position(folded)} is folded or flat.");
        }
    }

    /// <summary>Load, feet of the springs, and what the given displacements call up; with extra forces on push-only springs. Good until the next is asked for.</summary>
    private double[] RightSide(NodalLoad load, double[]? released)
    {
        load.Forces.CopyTo(right);
        foreach (var spring in Model.Supports.Springs)
        {
            right[3 * spring.Node + spring.Axis] += spring.Stiffness * spring.Settlement;
        }

        if (Model.Supports.Held.Any(held => held.Displacement != 0))
        {
            var given = new double[right.Length];
            foreach (var held in Model.Supports.Held)
            {
                given[3 * held.Node + held.Axis] = held.Displacement;
            }

            var forces = new double[right.Length];
            stiffness.AddInternalForces(given, forces);
            for (var i = 0; i < right.Length; i++)
            {
                right[i] -= forces[i];
            }
        }

        for (var i = 0; released is not null && i < contactSprings.Length; i++)
        {
            var spring = Model.Supports.Springs[contactSprings[i]];
            right[3 * spring.Node + spring.Axis] += released[i];
        }

        return right;
    }

    private double[] SolveLinear(NodalLoad load, double[]? released) => Completed(single.Solve(RightSide(load, released)).ToArray());

    private double[] Completed(double[] displacement)
    {
        foreach (var held in Model.Supports.Held)
        {
            displacement[3 * held.Node + held.Axis] = held.Displacement;
        }

        return displacement;
    }

    /// <summary>Solves for some right sides at once, each asked for in its turn.</summary>
    private double[][] SolveTogether(int count, Func<int, double[]> rightOf)
    {
        const int lanes = SheetResponse.MostLanes;
        eight ??= new SheetResponse(factor, lanes);
        together ??= new double[right.Length * lanes];
        Array.Clear(together);
        for (var lane = 0; lane < count; lane++)
        {
            var one = rightOf(lane);
            for (var i = 0; i < one.Length; i++)
            {
                together[i * lanes + lane] = one[i];
            }
        }

        var answers = eight.Solve(together);
        var apart = new double[count][];
        for (var lane = 0; lane < count; lane++)
        {
            apart[lane] = new double[right.Length];
            for (var i = 0; i < right.Length; i++)
            {
                apart[lane][i] = answers[i * lanes + lane];
            }
        }

        return apart;
    }

    /// <summary>Lets push-only springs go where they would pull; those loads for which some do are solved again together.</summary>
    private SolidAnswer[] Settle(NodalLoad[] loads, double[][] linear, Func<NodalLoad[], double[][], double[][]> again)
    {
        if (contact is null)
        {
            var springs = Model.Supports.Springs;
            contactSprings = [.. Enumerable.Range(0, springs.Length).Where(i => springs[i].PushesOnly && stiffness.IsActive(DofOf(i)))];
            contact = new SpringContact([.. contactSprings.Select(i => springs[i])], Compliance);
        }

        var released = Array.ConvertAll(linear, u => contactSprings.Length == 0 ? [] : contact.Release(Array.ConvertAll(contactSprings, i => u[DofOf(i)] - Model.Supports.Springs[i].Settlement)));
        int[] lifting = [.. Enumerable.Range(0, loads.Length).Where(n => released[n]?.Any(q => q != 0) == true)];
        var answers = loads.Select((load, n) => new SolidAnswer(load, new Displacement(linear[n]), [], released[n] is not null)).ToArray();
        if (lifting.Length > 0)
        {
            var solved = again(Array.ConvertAll(lifting, n => loads[n]), Array.ConvertAll(lifting, n => released[n]!));
            for (var i = 0; i < lifting.Length; i++)
            {
                var q = released[lifting[i]]!;
                answers[lifting[i]] = new SolidAnswer(loads[lifting[i]], new Displacement(solved[i]), [.. contactSprings.Where((_, spring) => q[spring] != 0)], true);
            }
        }

        return answers;
    }

    /// <summary>How all push-only springs' nodes move under 1 N on each of some: the body is followed down to its foot only.</summary>
    private double[][] Compliance(IReadOnlyList<int> wanted)
    {
        const int lanes = SheetResponse.MostLanes;
        eight ??= new SheetResponse(factor, lanes);
        together ??= new double[right.Length * lanes];
        var dofs = Array.ConvertAll(contactSprings, DofOf);
        int[] foot = [.. dofs.Select(dof => dof / stiffness.DofsPerColumn).Distinct()];
        var found = new List<double[]>(wanted.Count);
        foreach (var block in wanted.Chunk(lanes))
        {
            Array.Clear(together);
            for (var lane = 0; lane < block.Length; lane++)
            {
                together[dofs[block[lane]] * lanes + lane] = 1;
            }

            var answers = eight.Solve(together, foot);
            for (var lane = 0; lane < block.Length; lane++)
            {
                var moved = new double[dofs.Length];
                for (var i = 0; i < moved.Length; i++)
                {
                    moved[i] = answers[dofs[i] * lanes + lane];
                }

                found.Add(moved);
            }
        }

        return [.. found];
    }

    private int DofOf(int spring) => 3 * Model.Supports.Springs[spring].Node + Model.Supports.Springs[spring].Axis;
}
