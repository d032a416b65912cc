namespace Clomwright.Numerics.Factorisation;

/// <summary>All fronts of a dissected sheet in the order of elimination: sectors first, then the cuts between them, last the two cuts beside the focus.</summary>
internal sealed class EliminationTree : IDisposable
{
    private const int CutRank = 1 << 28;

    private readonly SheetShape shape;
    private readonly Dictionary<(int First, int Last), Sector> sectors = [];
    private readonly List<Front> cutFronts = [];

    /// <summary>Dissects a sheet.</summary>
    public EliminationTree(SheetShape shape, SheetDissection dissection)
    {
        this.shape = shape;
        Rank = new int[shape.Columns];
        Owner = new Front[shape.Columns];
        PatchOwner = new Front[shape.Patches];
        Arrange(dissection);
    }

    /// <summary>All fronts, children before parents.</summary>
    public List<Front> Fronts { get; } = [];

    /// <summary>The order in which a boundary lists its columns: of the elimination inside a sector, of the columns' numbers on cuts.</summary>
    public int[] Rank { get; }

    /// <summary>The front that eliminates a column.</summary>
    public Front[] Owner { get; }

    /// <summary>The front that assembles a patch: the first that eliminates one of its columns.</summary>
    public Front[] PatchOwner { get; }

    /// <summary>Changes whenever the sheet is cut anew.</summary>
    public int Arrangement { get; private set; }

    /// <summary>How the sheet is cut now.</summary>
    public SheetDissection Dissection { get; private set; } = null!;

    /// <summary>Cuts the sheet anew, keeping the fronts of every sector that has the same ends as before.</summary>
    public void Arrange(SheetDissection dissection)
    {
        dissection.Validate(shape);
        Dissection = dissection;
        Arrangement++;
        cutFronts.ForEach(front => front.Dispose());
        cutFronts.Clear();
        var wanted = Enumerable.Range(0, dissection.Sectors(shape)).Select(j => dissection.Interior(shape, j)).ToList();
        foreach (var gone in sectors.Keys.Except(wanted).ToList())
        {
            sectors.Remove(gone, out var sector);
            sector!.Dispose();
        }

        foreach (var (first, last) in wanted.Where(key => !sectors.ContainsKey(key)))
        {
            sectors.Add((first, last), new Sector(shape, first, last, Rank));
        }

        foreach (var cut in dissection.Cuts)
        {
            for (var k = 0; k < shape.Up; k++)
            {
                var column = shape.Column(cut, k);
                Rank[column] = CutRank + column;
            }
        }

        Fronts.Clear();
        Fronts.AddRange(wanted.SelectMany(key => sectors[key].Fronts));
        JoinAll(wanted);
        Fronts.AddRange(cutFronts);
        AssignOwners();
    }

    /// <summary>Gives the memory back.</summary>
    public void Dispose() => Fronts.ForEach(front => front.Dispose());

    private void JoinAll(List<(int First, int Last)> keys)
    {
        var (cuts, focus, count) = (Dissection.Cuts, Dissection.Focus, keys.Count);
        Front? Top(int sector) => sectors[keys[sector % count]].Top;
        if (shape.IsClosed)
        {
            var outside = Join(focus + 1, focus + count - 1, Top, j => cuts[j % count]);
            AddCuts([cuts[focus], cuts[(focus + 1) % count]], [outside, Top(focus)]);
            return;
        }

        var before = Join(0, focus - 1, Top, j => cuts[j - 1]);
        var after = Join(focus + 1, count - 1, Top, j => cuts[j - 1]);
        List<int> beside = [];
        if (focus > 0)
        {
            beside.Add(cuts[focus - 1]);
        }

        if (focus < cuts.Count)
        {
            beside.Add(cuts[focus]);
        }

        if (beside.Count > 0)
        {
            AddCuts(beside, [before, after, Top(focus)]);
        }
        else if (Top(focus) is { } top)
        {
            top.Parent = null;
        }
    }

    /// <summary>Joins sectors from..to two by two; <paramref name="cutBefore"/> tells the cut at the start of a sector.</summary>
    private Front? Join(int from, int to, Func<int, Front?> top, Func<int, int> cutBefore)
    {
        if (from > to)
        {
            return null;
        }

        if (from == to)
        {
            return top(from);
        }

        var middle = (from + to + 1) / 2;
        return AddCuts([cutBefore(middle)], [Join(from, middle - 1, top, cutBefore), Join(middle, to, top, cutBefore)]);
    }

    private Front AddCuts(IEnumerable<int> cuts, IEnumerable<Front?> children)
    {
        var pivots = cuts.Order().SelectMany(cut => Enumerable.Range(0, shape.Up).Select(k => shape.Column(cut, k)));
        var front = new Front([.. pivots], [.. children.OfType<Front>()]);
        foreach (var child in front.Children)
        {
            child.Parent = front;
        }

        cutFronts.Add(front);
        return front;
    }

    private void AssignOwners()
    {
        var order = new int[shape.Columns];
        for (var f = 0; f < Fronts.Count; f++)
        {
            Fronts[f].Index = f;
            Fronts[f].Patches.Clear();
            foreach (var column in Fronts[f].Pivots)
            {
                (Owner[column], order[column]) = (Fronts[f], f);
            }
        }

        for (var patch = 0; patch < shape.Patches; patch++)
        {
            var first = shape.Corner(patch, 0);
            for (var corner = 1; corner < 4; corner++)
            {
                var column = shape.Corner(patch, corner);
                first = order[column] < order[first] ? column : first;
            }

            PatchOwner[patch] = Owner[first];
            Owner[first].Patches.Add(patch);
        }
    }
}
