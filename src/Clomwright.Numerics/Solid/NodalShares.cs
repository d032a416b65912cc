using Clomwright.Numerics.Frames;

namespace Clomwright.Numerics.Solid;

/// <summary>
/// What of the volume of each cell, and of its faces on the two sides of a wall, each of its nodes carries. Formed when first asked for, and kept as long as the grid and the cut of the cell stay: whoever loads a body
/// many times, or follows one that changes cell by cell, forms it once. Not for use from several threads at once.
/// </summary>
[Mutable("keeps what is formed from one model to the next: under the hand, forming it again took longer than renewing the factor")]
public sealed class NodalShares(SolidGrid grid)
{
    private readonly Kept<double[]>[] volumes = new Kept<double[]>[grid.Cells];
    private readonly Kept<FaceShare[]>[] inside = new Kept<FaceShare[]>[grid.Cells];
    private readonly Kept<FaceShare[]>[] outside = new Kept<FaceShare[]>[grid.Cells];

    /// <summary>What belongs to a cell while its cut is this one.</summary>
    private readonly record struct Kept<T>(CellCut? Cut, T? What)
        where T : class;

    /// <summary>The grid that it is of.</summary>
    public SolidGrid Grid => grid;

    /// <summary>The integrals of the eight shape functions over what is left of a cell, m3.</summary>
    internal double[] VolumesOf(int cell, CellCut? cut)
    {
        ref var kept = ref volumes[cell];
        if (kept.What is not { } known || !Equals(kept.Cut, cut))
        {
            known = new double[8];
            Loading.NodalVolumes(grid.GaussVolumes(cell), cut, known);
            kept = new(cut, known);
        }

        return known;
    }

    /// <summary>What the four nodes of a face carry.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="cut">What is left of it.</param>
    /// <param name="side"><see cref="CellSide.Inside"/> or <see cref="CellSide.Outside"/>.</param>
    internal FaceShare[] FacesOf(int cell, CellCut? cut, CellSide side)
    {
        ref var kept = ref (side == CellSide.Inside ? inside : outside)[cell];
        if (kept.What is not { } known || !Equals(kept.Cut, cut))
        {
            known = new CellFace(grid, cell, side).NodalShares(cut);
            kept = new(cut, known);
        }

        return known;
    }
}

/// <summary>What a node carries of a face.</summary>
/// <param name="Node">Number of the node.</param>
/// <param name="Area">The integral of its shape function over what has something solid behind it, m2.</param>
/// <param name="Outward">The same of the shape function times the unit normal out of the cell, m2.</param>
internal readonly record struct FaceShare(int Node, double Area, Vector3 Outward);
