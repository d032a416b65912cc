namespace Clomwright.Numerics.Factorisation;

/// <summary>The columns strictly between two cuts, dissected; its fronts do not depend on what lies outside, so they outlive a change of focus.</summary>
internal sealed class Sector : IDisposable
{
    private const int LeafColumns = 9;

    private readonly SheetShape shape;

    /// <summary>Dissects the inner columns first..last (last may lie beyond a closed sheet's end).</summary>
    public Sector(SheetShape shape, int first, int last, int[] rank)
    {
        this.shape = shape;
        Top = first > last ? null : Dissect(first, last, 0, shape.Up - 1);
        var next = 0;
        foreach (var front in Fronts)
        {
            foreach (var column in front.Pivots)
            {
                rank[column] = next++;
            }
        }
    }

    /// <summary>All fronts, children before parents.</summary>
    public List<Front> Fronts { get; } = [];

    /// <summary>The front that hands its update to the cuts; null when there are no inner columns.</summary>
    public Front? Top { get; }

    /// <summary>Gives the memory back.</summary>
    public void Dispose() => Fronts.ForEach(front => front.Dispose());

    private Front Dissect(int i0, int i1, int k0, int k1)
    {
        var (wide, high) = (i1 - i0 + 1, k1 - k0 + 1);
        if (wide * high <= LeafColumns || (wide <= 2 && high <= 2))
        {
            return Add(i0, i1, k0, k1);
        }

        // One line of columns across the longer side.
        if (wide >= high)
        {
            var middle = (i0 + i1) / 2;
            return Add(middle, middle, k0, k1, Dissect(i0, middle - 1, k0, k1), Dissect(middle + 1, i1, k0, k1));
        }

        var level = (k0 + k1) / 2;
        return Add(i0, i1, level, level, Dissect(i0, i1, k0, level - 1), Dissect(i0, i1, level + 1, k1));
    }

    private Front Add(int i0, int i1, int k0, int k1, params Front[] children)
    {
        var pivots = new List<int>();
        for (var i = i0; i <= i1; i++)
        {
            for (var k = k0; k <= k1; k++)
            {
                pivots.Add(shape.Column(i % shape.Around, k));
            }
        }

        var front = new Front([.. pivots], children);
        foreach (var child in children)
        {
            child.Parent = front;
        }

        Fronts.Add(front);
        return front;
    }
}
