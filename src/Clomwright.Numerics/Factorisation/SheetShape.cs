namespace Clomwright.Numerics.Factorisation;

/// <summary>A rectangular sheet of columns, each a short stack of unknowns, joined four by four in patches; it may close on itself the long way round.</summary>
/// <remarks>
/// Column (i, k) has number i Up + k with i in 0..Around-1 and k in 0..Up-1. Patch (i, k) joins columns (i, k), (i+1, k), (i, k+1) and (i+1, k+1),
/// in that order; it has number i (Up - 1) + k. In a closed sheet i + 1 wraps.
/// </remarks>
public sealed record SheetShape
{
    /// <summary>A sheet of at least 2 by 2 columns; a closed one needs at least 3 around.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The sheet is smaller than that.</exception>
    public SheetShape(int around, int up, bool closed)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(around, closed ? 3 : 2);
        ArgumentOutOfRangeException.ThrowIfLessThan(up, 2);
        (Around, Up, IsClosed) = (around, up, closed);
    }

    /// <summary>Columns the long way.</summary>
    public int Around { get; }

    /// <summary>Columns the short way.</summary>
    public int Up { get; }

    /// <summary>Whether the last column is joined to the first the long way.</summary>
    public bool IsClosed { get; }

    /// <summary>Number of columns.</summary>
    public int Columns => Around * Up;

    /// <summary>Patches the long way.</summary>
    public int PatchesAround => IsClosed ? Around : Around - 1;

    /// <summary>Patches the short way.</summary>
    public int PatchesUp => Up - 1;

    /// <summary>Number of patches.</summary>
    public int Patches => PatchesAround * PatchesUp;

    /// <summary>Number of a column.</summary>
    public int Column(int i, int k) => i * Up + k;

    /// <summary>Number of a patch.</summary>
    public int Patch(int i, int k) => i * PatchesUp + k;

    /// <summary>The column at one of the four corners (0..3) of a patch.</summary>
    public int Corner(int patch, int corner)
    {
        var (i, k) = (patch / PatchesUp, patch % PatchesUp);
        i += corner & 1;
        return Column(i == Around ? 0 : i, k + (corner >> 1));
    }

    /// <summary>Writes the patches that touch a column (one to four) and returns how many.</summary>
    internal int PatchesAt(int column, Span<int> patches)
    {
        var (i, k) = (column / Up, column % Up);
        var count = 0;
        for (var di = -1; di <= 0; di++)
        {
            var pi = i + di;
            if (IsClosed)
            {
                pi = (pi + Around) % Around;
            }
            else if (pi < 0 || pi >= PatchesAround)
            {
                continue;
            }

            for (var pk = Math.Max(0, k - 1); pk <= Math.Min(k, PatchesUp - 1); pk++)
            {
                patches[count++] = Patch(pi, pk);
            }
        }

        return count;
    }
}
