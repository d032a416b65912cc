using Clomwright.Numerics.Factorisation;

namespace Clomwright.Numerics.Solid;

/// <summary>The stiffness matrix of a body on its sheet of thickness columns: what follows the model as it changes, and what has changed.</summary>
internal sealed class SolidStiffness : ISheetMatrix
{
    private readonly int through;
    private readonly int threads;
    private readonly CellMatrices matrices;
    private readonly short[][] active;
    private readonly short[][] position;
    private readonly double[] diagonal;
    private readonly bool[] held;
    private double largestDiagonal;

    /// <summary>The matrix of a model.</summary>
    public SolidStiffness(SolidModel model, bool withModes, int threads)
    {
        Model = model;
        this.threads = threads;
        through = model.Grid.Through;
        Shape = model.Grid.Columns;
        DofsPerColumn = 3 * (through + 1);
        matrices = new CellMatrices(Shape.Patches, through, withModes);
        active = new short[Shape.Columns][];
        position = new short[Shape.Columns][];
        diagonal = new double[Shape.Columns * DofsPerColumn];
        held = new bool[diagonal.Length];
        TakeSupports(model.Supports);
        matrices.Form(model, [.. Enumerable.Range(0, Shape.Patches)], threads);
        for (var column = 0; column < Shape.Columns; column++)
        {
            Activate(column);
        }

        FindLargestDiagonal();
    }

    /// <summary>The model as it is now.</summary>
    public SolidModel Model { get; private set; }

    /// <inheritdoc/>
    public SheetShape Shape { get; }

    /// <inheritdoc/>
    public int DofsPerColumn { get; }

    /// <inheritdoc/>
    public double LargestDiagonal => largestDiagonal;

    /// <inheritdoc/>
    public ReadOnlySpan<short> Active(int column) => active[column];

    /// <inheritdoc/>
    public ReadOnlySpan<double> Diagonal(int column) => diagonal.AsSpan(column * DofsPerColumn, DofsPerColumn);

    /// <summary>Whether a degree of freedom (3 node + axis) belongs to a solid cell and is free.</summary>
    public bool IsActive(int dof) => position[dof / DofsPerColumn][dof % DofsPerColumn] >= 0;

    /// <inheritdoc/>
    public bool IsEmpty(int patch)
    {
        foreach (var fill in Model.Cells.Fills.Slice(patch * through, through))
        {
            if (fill.IsSolid)
            {
                return false;
            }
        }

        return true;
    }

    /// <inheritdoc/>
    public void AddPatch(int patch, in PatchTarget target)
    {
        for (var j = 0; j < through; j++)
        {
            var cell = patch * through + j;
            var fill = Model.Cells[cell];
            if (!fill.IsSolid)
            {
                continue;
            }

            for (var a = 0; a < 4; a++)
            {
                var rows = Positions(patch, a, j);
                for (var b = 0; b <= a; b++)
                {
                    target.Add(a, rows, b, Positions(patch, b, j), matrices.Block(cell, a, b), fill.Stiffness);
                }
            }
        }
    }

    /// <summary>Follows a model on a grid with the same numbers of cells. Returns the patches and the columns whose part of the matrix is another.</summary>
    public (List<int> Patches, List<int> Columns) Follow(SolidModel model)
    {
        var old = Model;
        Model = model;
        var patches = new List<int>();
        for (var patch = 0; patch < Shape.Patches; patch++)
        {
            if (FollowPatch(old, patch))
            {
                patches.Add(patch);
            }
        }

        matrices.Form(model, patches, threads);
        var columns = ReferenceEquals(old.Supports, model.Supports) ? new HashSet<int>() : TakeSupports(model.Supports);
        foreach (var column in patches.SelectMany(patch => Enumerable.Range(0, 4).Select(corner => Shape.Corner(patch, corner))).Concat(columns).Distinct().ToList())
        {
            if (Activate(column))
            {
                columns.Add(column);
            }
        }

        FindLargestDiagonal();
        return (patches, [.. columns]);
    }

    /// <summary>Adds the forces that the cells put up against displacements, for all cells or some of them.</summary>
    public void AddInternalForces(ReadOnlySpan<double> displacement, Span<double> forces, Func<int, bool>? ofCell = null)
    {
        for (var cell = 0; cell < Model.Cells.Count; cell++)
        {
            if (Model.Cells[cell].IsSolid && ofCell?.Invoke(cell) != false)
            {
                AddInternalForces(cell, displacement, forces);
            }
        }
    }

    private void AddInternalForces(int cell, ReadOnlySpan<double> displacement, Span<double> forces)
    {
        const int side = CellMatrices.BlockSide;
        var factor = Model.Cells[cell].Stiffness;
        for (var a = 0; a < 4; a++)
        {
            var dofA = FirstDof(cell, a);
            for (var b = 0; b <= a; b++)
            {
                var dofB = FirstDof(cell, b);
                var block = matrices.Block(cell, a, b);
                for (var p = 0; p < side; p++)
                {
                    for (var q = 0; q < side; q++)
                    {
                        var k = factor * block[p * side + q];
                        forces[dofA + p] += k * displacement[dofB + q];
                        if (a != b)
                        {
                            forces[dofB + q] += k * displacement[dofA + p];
                        }
                    }
                }
            }
        }
    }

    private int FirstDof(int cell, int corner) => Shape.Corner(cell / through, corner) * DofsPerColumn + 3 * (cell % through);

    /// <summary>For a cell of a patch the positions of one corner's six unknowns among the active ones of its column.</summary>
    public ReadOnlySpan<short> Positions(int patch, int corner, int layer) =>
        position[Shape.Corner(patch, corner)].AsSpan(3 * layer, CellMatrices.BlockSide);

    private bool FollowPatch(SolidModel old, int patch)
    {
        var changed = false;
        for (var cell = patch * through; cell < (patch + 1) * through; cell++)
        {
            var (was, now) = (old.Cells[cell], Model.Cells[cell]);
            var moved = !ReferenceEquals(old.Grid, Model.Grid) && HasMoved(old.Grid, cell);
            if (moved || !Equals(was.Cut, now.Cut) || !ReferenceEquals(old.Materials[was.Material], Model.Materials[now.Material]))
            {
                matrices.Forget(cell);
                changed |= was.IsSolid || now.IsSolid;
            }

            changed |= was.IsSolid != now.IsSolid || (now.IsSolid && was.Stiffness != now.Stiffness);
        }

        return changed;
    }

    private bool HasMoved(SolidGrid old, int cell)
    {
        for (var corner = 0; corner < 8; corner++)
        {
            var node = old.CornerNode(cell, corner);
            if (old.Point(node) != Model.Grid.Point(node))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Takes springs and held displacements over; returns the columns where they are others than before.</summary>
    private HashSet<int> TakeSupports(SolidSupports supports)
    {
        var (oldDiagonal, oldHeld) = (diagonal.ToArray(), held.ToArray());
        Array.Clear(diagonal);
        Array.Clear(held);
        foreach (var spring in supports.Springs)
        {
            diagonal[3 * spring.Node + spring.Axis] += spring.Stiffness;
        }

        foreach (var node in supports.Held)
        {
            held[3 * node.Node + node.Axis] = true;
        }

        return [.. Enumerable.Range(0, held.Length).Where(dof => diagonal[dof] != oldDiagonal[dof] || held[dof] != oldHeld[dof]).Select(dof => dof / DofsPerColumn)];
    }

    /// <summary>Finds the active places of a column; true when they are others than before.</summary>
    private bool Activate(int column)
    {
        Span<bool> alive = stackalloc bool[through + 1];
        alive.Clear();
        Span<int> around = stackalloc int[4];
        foreach (var patch in around[..Shape.PatchesAt(column, around)])
        {
            for (var j = 0; j < through; j++)
            {
                var isSolid = Model.Cells[patch * through + j].IsSolid;
                alive[j] |= isSolid;
                alive[j + 1] |= isSolid;
            }
        }

        Span<short> found = stackalloc short[DofsPerColumn];
        var places = new short[DofsPerColumn];
        var count = 0;
        for (var place = 0; place < DofsPerColumn; place++)
        {
            places[place] = -1;
            if (alive[place / 3] && !held[column * DofsPerColumn + place])
            {
                places[place] = (short)count;
                found[count++] = (short)place;
            }
        }

        if (active[column] is { } old && found[..count].SequenceEqual(old))
        {
            return false;
        }

        (active[column], position[column]) = (found[..count].ToArray(), places);
        return true;
    }

    private void FindLargestDiagonal()
    {
        largestDiagonal = 0;
        for (var cell = 0; cell < Model.Cells.Count; cell++)
        {
            var fill = Model.Cells[cell];
            if (fill.IsSolid)
            {
                largestDiagonal = Math.Max(largestDiagonal, fill.Stiffness * matrices.LargestDiagonal(cell));
            }
        }
    }
}
