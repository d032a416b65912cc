using Clomwright.Evidence;
using Clomwright.Numerics.Frames;
using Clomwright.Numerics.Solid;

namespace Clomwright.Analysis.Structure;

/// <summary>What unit loads of one body are to those of the next on the same grid, where little has changed: what nodes carry of cells and faces, and what poles press with on a top that is as it was. Not for use from several threads at once.</summary>
[Mutable("keeps what is formed from one move to the next")]
internal sealed class KeptLoads(SolidGrid grid)
{
    /// <summary>So many presses at most: a roof that is turned while an opening is in hand leaves none of the old ones behind.</summary>
    private const int Most = 128;

    private readonly Dictionary<(GridBox Box, Vector3 Force), NodalLoad> onTop = [];
    private bool[] solid = [];

    /// <summary>What nodes carry.</summary>
    public NodalShares Shares { get; } = new(grid);

    /// <summary>As <see cref="Loading.OnTop"/> on the topmost cells.</summary>
    public NodalLoad OnTop(SolidModel model, GridBox box, Vector3 force)
    {
        var now = new bool[grid.Around * grid.Through];
        for (var i = 0; i < now.Length; i++)
        {
            now[i] = model.Cells[grid.Cell(i / grid.Through, grid.Up - 1, i % grid.Through)].IsSolid;
        }

        if (onTop.Count >= Most || !now.AsSpan().SequenceEqual(solid))
        {
            onTop.Clear();
            solid = now;
        }

        if (!onTop.TryGetValue((box, force), out var load))
        {
            onTop[(box, force)] = load = Loading.OnTop(model, grid.Up - 1, box, force);
        }

        return load;
    }
}
