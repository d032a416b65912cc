namespace Clomwright.Numerics.Solid;

/// <summary>What a cell is filled with.</summary>
/// <param name="Material">Number of the material in the body's list.</param>
/// <param name="Cut">What is left of the cell where a void cuts it; null for all of it.</param>
/// <param name="Stiffness">Multiplies the material's stiffness, and so its stress.</param>
/// <param name="Weight">Multiplies the material's density.</param>
public readonly record struct CellFill(int Material, CellCut? Cut = null, double Stiffness = 1, double Weight = 1)
{
    /// <summary>Share of the cell that is filled, 0 to 1.</summary>
    public double Share => Cut?.Share ?? 1;

    /// <summary>Whether there is enough in the cell to count.</summary>
    public bool IsSolid => Cut is null || Cut.Share >= SolidCells.LeastShare;
}

/// <summary>The fill of every cell of a grid; unchangeable, every change makes a new one.</summary>
public sealed class SolidCells
{
    /// <summary>A cell filled less than this counts as empty: a thinner sliver carries nothing and only makes the equations worse.</summary>
    public const double LeastShare = 0.01;

    private readonly CellFill[] fills;

    private SolidCells(CellFill[] fills) => this.fills = fills;

    /// <summary>Every cell filled alike.</summary>
    public static SolidCells Uniform(SolidGrid grid, CellFill fill)
    {
        var fills = new CellFill[grid.Cells];
        Array.Fill(fills, Checked(fill));
        return new SolidCells(fills);
    }

    /// <summary>The fill of a cell.</summary>
    public CellFill this[int cell] => fills[cell];

    /// <summary>Number of cells.</summary>
    public int Count => fills.Length;

    /// <summary>All fills, by number of cell.</summary>
    public ReadOnlySpan<CellFill> Fills => fills;

    /// <summary>The same cells with each fill put through a function of its number and itself.</summary>
    public SolidCells Select(Func<int, CellFill, CellFill> change)
    {
        var changed = new CellFill[fills.Length];
        for (var cell = 0; cell < fills.Length; cell++)
        {
            changed[cell] = Checked(change(cell, fills[cell]));
        }

        return new SolidCells(changed);
    }

    /// <summary>
    /// The same cells with regions taken out. Cells that they cut keep what is left, in its place. Of regions that overlap one another take out the
    /// common part only once yourself: here it is subtracted twice.
    /// </summary>
    public SolidCells Without(SolidGrid grid, params IEnumerable<Region> regions) =>
        Change(grid, regions, (fill, part) => fill with { Cut = CellCut.Without(fill.Cut, part) });

    /// <summary>The same cells with another fill in a region: cells of which it takes half or more are filled so, the others not at all.</summary>
    public SolidCells With(SolidGrid grid, Region region, CellFill fill) =>
        Change(grid, [region], (old, part) => Mean(part) >= 0.5 ? fill : old);

    /// <summary>The cells that a region takes something of, each with that share, 0 to 1; in the order of their numbers.</summary>
    public static IEnumerable<(int Cell, double Share)> SharesOf(SolidGrid grid, Region region)
    {
        foreach (var cell in Near(grid, region.Within))
        {
            if (ShareOf(grid, region, cell) is > 0 and var share)
            {
                yield return (cell, share);
            }
        }
    }

    /// <summary>Share, 0 to 1, of a cell that a region takes.</summary>
    private static double ShareOf(SolidGrid grid, Region region, int cell)
    {
        Span<double> part = stackalloc double[8];
        Integrate(grid, region, cell, part);
        return Mean(part);
    }

    private SolidCells Change(SolidGrid grid, IEnumerable<Region> regions, Func<CellFill, ReadOnlySpan<double>, CellFill> change)
    {
        var changed = (CellFill[])fills.Clone();
        Span<double> part = stackalloc double[8];
        foreach (var region in regions)
        {
            foreach (var cell in Near(grid, region.Within))
            {
                if (Integrate(grid, region, cell, part))
                {
                    changed[cell] = Checked(change(changed[cell], part));
                }
            }
        }

        return new SolidCells(changed);
    }

    /// <summary>Cells that a box, or the box a turn away, may reach into.</summary>
    private static IEnumerable<int> Near(SolidGrid grid, GridBox box)
    {
        var length = grid.S[^1] - grid.S[0];
        bool Reaches(int i, double shift) => box.SFrom < grid.S[i + 1] + shift && box.STo > grid.S[i] + shift;
        int[] rows = [.. Enumerable.Range(0, grid.Up).Where(k => box.ZFrom < grid.Z[k + 1] && box.ZTo > grid.Z[k])];
        int[] layers = [.. Enumerable.Range(0, grid.Through).Where(j => box.TFrom < grid.T[j + 1] && box.TTo > grid.T[j])];
        for (var i = 0; i < grid.Around; i++)
        {
            if (Reaches(i, 0) || (grid.IsClosed && (Reaches(i, length) || Reaches(i, -length))))
            {
                foreach (var k in rows)
                {
                    foreach (var j in layers)
                    {
                        yield return grid.Cell(i, k, j);
                    }
                }
            }
        }
    }

    /// <summary>The integrals over a region's part in a cell; false when there is none. In a closed grid the region may lie a turn away.</summary>
    private static bool Integrate(SolidGrid grid, Region region, int cell, Span<double> part)
    {
        part.Clear();
        var (i, k, j) = grid.Position(cell);
        var box = new GridBox(grid.S[i], grid.S[i + 1], grid.Z[k], grid.Z[k + 1], grid.T[j], grid.T[j + 1]);
        region.AddIntegrals(box, part);
        if (grid.IsClosed)
        {
            var length = grid.S[^1] - grid.S[0];
            region.AddIntegrals(box.Along(length), part);
            region.AddIntegrals(box.Along(-length), part);
        }

        return part.ContainsAnyExcept(0.0);
    }

    private static double Mean(ReadOnlySpan<double> part)
    {
        var sum = 0.0;
        foreach (var value in part)
        {
            sum += value;
        }

        return Math.Clamp(sum / 8, 0, 1);
    }

    private static CellFill Checked(CellFill fill) =>
        fill is { Material: >= 0, Stiffness: > 0 and < double.PositiveInfinity, Weight: >= 0 and < double.PositiveInfinity }
            ? fill
            : throw new ArgumentException($"No cell can be filled with {fill}.");
}
