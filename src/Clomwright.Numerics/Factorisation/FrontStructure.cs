namespace Clomwright.Numerics.Factorisation;

/// <summary>Finds which columns a front touches and where their rows lie, from what is active now: what is not active takes no room.</summary>
internal sealed class FrontStructure(ISheetMatrix matrix, EliminationTree tree)
{
    private readonly SheetShape shape = matrix.Shape;
    private readonly int[] seen = new int[matrix.Shape.Columns];
    private readonly int[] rowOf = new int[matrix.Shape.Columns];
    private readonly List<int> found = [];
    private int stamp;

    /// <summary>Renews the structure of a front whose children's are up to date, and makes room for its numbers.</summary>
    public void Renew(Front front)
    {
        stamp++;
        found.Clear();
        foreach (var column in front.Pivots)
        {
            seen[column] = stamp;
        }

        foreach (var patch in front.Patches)
        {
            if (!matrix.IsEmpty(patch))
            {
                for (var corner = 0; corner < 4; corner++)
                {
                    Find(shape.Corner(patch, corner));
                }
            }
        }

        foreach (var child in front.Children)
        {
            foreach (var column in child.Boundary)
            {
                Find(column);
            }
        }

        found.Sort((a, b) => tree.Rank[a].CompareTo(tree.Rank[b]));
        front.Boundary = [.. found];
        front.BoundaryStart = new int[found.Count];
        front.PivotDofs = Place(front.Pivots, front.PivotStart, 0);
        front.BoundaryDofs = Place(front.Boundary, front.BoundaryStart, front.PivotRows) - front.PivotRows;
        foreach (var child in front.Children)
        {
            child.ParentStart = Array.ConvertAll(child.Boundary, column => rowOf[column]);
        }

        front.Reserve();
    }

    private void Find(int column)
    {
        if (seen[column] != stamp)
        {
            seen[column] = stamp;
            if (!matrix.Active(column).IsEmpty)
            {
                found.Add(column);
            }
        }
    }

    private int Place(int[] columns, int[] start, int row)
    {
        for (var i = 0; i < columns.Length; i++)
        {
            start[i] = row;
            rowOf[columns[i]] = row;
            row += matrix.Active(columns[i]).Length;
        }

        return row;
    }
}
