namespace Clomwright.Numerics.Factorisation;

/// <summary>What the last renewal of a factor took.</summary>
/// <param name="Fronts">Fronts renewed.</param>
/// <param name="Operations">Multiplications and additions, pairs counted once.</param>
public readonly record struct FactorWork(int Fronts, double Operations);

/// <summary>
/// The Cholesky factor of a <see cref="ISheetMatrix"/> by nested dissection, renewed where the matrix changes. Its numbers live outside the
/// collected heap until <see cref="Dispose"/>. Not for use from several threads at once; it uses several itself.
/// </summary>
/// <remarks>A renewed factor holds the same bits as one computed from nothing with the same dissection, however it came about.</remarks>
[Mutable("the factor is renewed in place while the matrix changes under the hand; a new one would cost tens of times as much")]
public sealed class SheetFactor : IDisposable
{
    /// <summary>Pivots below this share of the matrix's largest diagonal entry are rounding noise: the matrix is (nearly) singular there.</summary>
    public const double LeastPivotShare = 1e-12;

    private readonly ISheetMatrix matrix;
    private readonly EliminationTree tree;
    private readonly FrontStructure structure;
    private readonly FrontAssembly[] assemblies;
    private readonly int threads;
    private long version;
    private int descentOf;

    /// <summary>Factorises a matrix with as many threads as stated.</summary>
    public SheetFactor(ISheetMatrix matrix, SheetDissection dissection, int threads = 2)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(threads, 1);
        this.matrix = matrix;
        this.threads = threads;
        tree = new EliminationTree(matrix.Shape, dissection);
        structure = new FrontStructure(matrix, tree);
        assemblies = [.. Enumerable.Range(0, threads).Select(_ => new FrontAssembly(matrix))];
        Renew();
    }

    /// <summary>How the sheet is cut now.</summary>
    public SheetDissection Dissection => tree.Dissection;

    /// <summary>What the last change took.</summary>
    public FactorWork LastWork { get; private set; }

    /// <summary>A column that nothing holds in place (the matrix is not positive definite there), or null.</summary>
    public int? LooseColumn { get; private set; }

    /// <summary>Numbers in the factor, without the updates kept for renewal.</summary>
    public long Entries => tree.Fronts.Sum(front => front.PanelCount);

    /// <summary>Bytes held outside the collected heap.</summary>
    public long Bytes => tree.Fronts.Sum(front => front.Bytes);

    /// <summary>The matrix that is factorised.</summary>
    internal ISheetMatrix Matrix => matrix;

    /// <summary>The fronts in the order of elimination.</summary>
    internal EliminationTree Tree => tree;

    /// <summary>All fronts shared out for the way down.</summary>
    internal WorkPlan Descent { get; private set; } = null!;

    /// <summary>Threads used.</summary>
    internal int Threads => threads;

    /// <summary>Renews the factor after the matrix has changed in some patches, or in the active places or the diagonal of some columns.</summary>
    public void Change(ReadOnlySpan<int> patches, ReadOnlySpan<int> columns)
    {
        foreach (var patch in patches)
        {
            MarkStale(tree.PatchOwner[patch]);
        }

        Span<int> around = stackalloc int[4];
        foreach (var column in columns)
        {
            // Every front that lists the column lies on the way from one of its patches to the root.
            foreach (var patch in around[..matrix.Shape.PatchesAt(column, around)])
            {
                MarkStale(tree.PatchOwner[patch]);
            }
        }

        Renew();
    }

    /// <summary>Cuts the sheet anew; sectors with the same ends as before are kept.</summary>
    public void Dissect(SheetDissection dissection)
    {
        if (dissection.Focus == Dissection.Focus && dissection.Cuts.SequenceEqual(Dissection.Cuts))
        {
            return;
        }

        tree.Arrange(dissection);
        Renew();
    }

    /// <summary>Gives all memory back.</summary>
    public void Dispose() => tree.Dispose();

    private static void MarkStale(Front? front)
    {
        for (; front is { IsStale: false }; front = front.Parent)
        {
            front.IsStale = true;
        }
    }

    private void Renew()
    {
        var stale = tree.Fronts.Where(front => front.IsStale).ToList();
        stale.ForEach(structure.Renew);
        LastWork = new FactorWork(stale.Count, stale.Sum(front => front.Operations));
        var plan = new WorkPlan(stale, front => front.Operations, threads);
        using (var work = new SharedWork(threads))
        {
            var free = new System.Collections.Concurrent.ConcurrentBag<FrontAssembly>(assemblies);
            work.ForEach(plan.Separate.Count, i =>
            {
                free.TryTake(out var assembly);
                foreach (var front in plan.Separate[i])
                {
                    Renew(front, assembly!, null);
                }

                free.Add(assembly!);
            });
            foreach (var front in plan.Together)
            {
                Renew(front, assemblies[0], work);
            }
        }

        if (descentOf != tree.Arrangement)
        {
            descentOf = tree.Arrangement;
            Descent = new WorkPlan(tree.Fronts, front => front.PanelCount, threads);
        }

        LooseColumn = tree.Fronts.FirstOrDefault(front => front.WeakColumn >= 0)?.WeakColumn;
    }

    private void Renew(Front front, FrontAssembly assembly, SharedWork? work)
    {
        assembly.Fill(front, work);
        var weak = FrontElimination.Eliminate(front, LeastPivotShare * matrix.LargestDiagonal, work);
        front.WeakColumn = weak < 0 ? -1 : front.Pivots[Math.Max(0, Array.FindLastIndex(front.PivotStart, start => start <= weak))];
        front.IsStale = false;
        front.Version = Interlocked.Increment(ref version);
    }
}
