namespace Clomwright.Numerics.Factorisation;

/// <summary>
/// The answers of a factorised sheet to one load vector, or to eight at once. Keeps what the way up through the tree left in each front, so that
/// after a change only what changed is gone through again. Not for use from several threads at once.
/// </summary>
[Mutable("remembers the way up, front by front, from one load to the next")]
public sealed class SheetResponse : IDisposable
{
    /// <summary>Vectors that are solved together at most.</summary>
    public const int MostLanes = Substitution.Lanes;

    private readonly SheetFactor factor;
    private readonly int width;
    private readonly double[] load;
    private readonly double[] answer;
    private readonly FrontSubstitution substitution;
    private Dictionary<Front, FrontPass> passes = [];
    private FrontPass[] passOf = [];
    private int arrangement = -1;

    /// <summary>A response in one lane or in <see cref="MostLanes"/>.</summary>
    public SheetResponse(SheetFactor factor, int lanes = 1)
    {
        if (lanes is not (1 or MostLanes))
        {
            throw new ArgumentOutOfRangeException(nameof(lanes), lanes, "One lane, or eight.");
        }

        this.factor = factor;
        width = factor.Matrix.DofsPerColumn * lanes;
        load = new double[factor.Matrix.Shape.Columns * width];
        answer = new double[load.Length];
        substitution = new FrontSubstitution(factor.Matrix, lanes, load, answer);
    }

    /// <summary>Bytes held outside the collected heap.</summary>
    public long Bytes => passOf.Sum(pass => pass.Rows.Capacity * sizeof(double));

    /// <summary>
    /// Solves for a load vector over all places of all columns, the lanes of one place together. Places that are not active take no part: their
    /// load is ignored and their answer zero. The result is good until the next call.
    /// </summary>
    /// <param name="loads">The loads.</param>
    /// <param name="asked">Columns of which the answer is asked; elsewhere it is not worked out and of no use. None asks for all.</param>
    /// <exception cref="InvalidOperationException">Part of the sheet is held by nothing (<see cref="SheetFactor.LooseColumn"/>).</exception>
    public ReadOnlySpan<double> Solve(ReadOnlySpan<double> loads, ReadOnlySpan<int> asked = default)
    {
        if (factor.LooseColumn is { } loose)
        {
            throw new InvalidOperationException($"Column {loose} is held by nothing.");
        }

        ArgumentOutOfRangeException.ThrowIfNotEqual(loads.Length, load.Length);
        FollowTree();
        TakeLoads(loads);
        Array.Clear(answer);
        using var work = new SharedWork(factor.Threads);
        Ascend(work);
        Descend(work, asked.IsEmpty ? null : WayTo(asked));
        return answer;
    }

    /// <summary>Gives all memory back.</summary>
    public void Dispose()
    {
        foreach (var pass in passOf)
        {
            pass.Dispose();
        }

        substitution.Dispose();
    }

    /// <summary>After a new dissection: one pass for each front, those of fronts that are gone given back.</summary>
    private void FollowTree()
    {
        if (arrangement == factor.Tree.Arrangement)
        {
            return;
        }

        var old = passes;
        passes = [];
        passOf = new FrontPass[factor.Tree.Fronts.Count];
        foreach (var front in factor.Tree.Fronts)
        {
            old.Remove(front, out var pass);
            passes[front] = passOf[front.Index] = pass ?? new FrontPass();
        }

        foreach (var pass in old.Values)
        {
            pass.Dispose();
        }

        arrangement = factor.Tree.Arrangement;
    }

    private void TakeLoads(ReadOnlySpan<double> loads)
    {
        for (var column = 0; column < factor.Matrix.Shape.Columns; column++)
        {
            var given = loads.Slice(column * width, width);
            var kept = load.AsSpan(column * width, width);
            if (!given.SequenceEqual(kept))
            {
                given.CopyTo(kept);
                passOf[factor.Tree.Owner[column].Index].Version = -1;
            }
        }
    }

    private void Ascend(SharedWork work)
    {
        var stale = new List<Front>();
        foreach (var front in factor.Tree.Fronts)
        {
            var pass = passOf[front.Index];
            if (pass.Version != front.Version)
            {
                stale.Add(front);
                pass.Version = front.Version;
                if (front.Parent is { } parent)
                {
                    passOf[parent.Index].Version = -1;
                }
            }
        }

        var plan = new WorkPlan(stale, front => front.PanelCount, factor.Threads);
        work.ForEach(plan.Separate.Count, i => plan.Separate[i].ForEach(front => substitution.Ascend(front, passOf)));
        plan.Together.ForEach(front => substitution.Ascend(front, passOf));
    }

    /// <summary>The fronts that own the columns, and all above them.</summary>
    private HashSet<Front> WayTo(ReadOnlySpan<int> columns)
    {
        var way = new HashSet<Front>();
        foreach (var column in columns)
        {
            for (var front = factor.Tree.Owner[column]; front is not null && way.Add(front);)
            {
                front = front.Parent;
            }
        }

        return way;
    }

    private void Descend(SharedWork work, HashSet<Front>? way)
    {
        var plan = factor.Descent;
        for (var i = plan.Together.Count - 1; i >= 0; i--)
        {
            DescendInto(plan.Together[i]);
        }

        work.ForEach(plan.Separate.Count, i =>
        {
            for (var j = plan.Separate[i].Count - 1; j >= 0; j--)
            {
                DescendInto(plan.Separate[i][j]);
            }
        });

        void DescendInto(Front front)
        {
            if (way?.Contains(front) != false)
            {
                substitution.Descend(front, passOf);
            }
        }
    }
}
