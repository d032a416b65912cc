namespace Clomwright.Numerics.Factorisation;

/// <summary>
/// One step of the elimination: the columns eliminated in it (pivots), those still to come that it touches (boundary), and its numbers. See README.md.
/// </summary>
/// <remarks>
/// Rows 0..PivotRows-1 are the pivots' degrees of freedom, filled up to whole strips; the boundary's follow. All is kept in strips of 8 rows up to
/// the diagonal: of the panel, first those of the pivots, 8 (J + 1) columns for strip J, then those of the boundary, PivotRows columns each; of the
/// update matrix 8 (R + 1) columns for boundary strip R.
/// </remarks>
internal sealed unsafe class Front(int[] pivots, Front[] children) : IDisposable
{
    private readonly NativeBlock numbers = new();

    /// <summary>Columns eliminated here.</summary>
    public int[] Pivots { get; } = pivots;

    /// <summary>Fronts that hand their update to this one.</summary>
    public Front[] Children { get; } = children;

    /// <summary>The front that takes this one's update; null for the root.</summary>
    public Front? Parent { get; set; }

    /// <summary>Patches assembled here.</summary>
    public List<int> Patches { get; } = [];

    /// <summary>First row of each pivot column.</summary>
    public int[] PivotStart { get; } = new int[pivots.Length];

    /// <summary>Columns touched and not yet eliminated, by rank.</summary>
    public int[] Boundary { get; set; } = [];

    /// <summary>First row of each boundary column.</summary>
    public int[] BoundaryStart { get; set; } = [];

    /// <summary>First row of each boundary column in the parent.</summary>
    public int[] ParentStart { get; set; } = [];

    /// <summary>Place in the list of all fronts.</summary>
    public int Index { get; set; }

    /// <summary>Active degrees of freedom of the pivots.</summary>
    public int PivotDofs { get; set; }

    /// <summary>Rows of the pivots, a multiple of 8.</summary>
    public int PivotRows => Tiles.RoundUp(PivotDofs);

    /// <summary>Active degrees of freedom of the boundary.</summary>
    public int BoundaryDofs { get; set; }

    /// <summary>Rows of the boundary, a multiple of 8.</summary>
    public int BoundaryRows => Tiles.RoundUp(BoundaryDofs);

    /// <summary>Strips of the pivots.</summary>
    public int PivotStrips => PivotRows / Tiles.Side;

    /// <summary>Strips of pivots and boundary.</summary>
    public int Strips => PivotStrips + BoundaryRows / Tiles.Side;

    /// <summary>Whether its numbers are out of date; then all its ancestors' are.</summary>
    public bool IsStale { get; set; } = true;

    /// <summary>Changes whenever its numbers do.</summary>
    public long Version { get; set; }

    /// <summary>A pivot column in which the elimination met a mechanism, or -1.</summary>
    public int WeakColumn { get; set; } = -1;

    /// <summary>First number of the panel.</summary>
    public double* Panel => numbers.Start;

    /// <summary>First number of the update matrix.</summary>
    public double* Update => numbers.Start + PanelCount;

    /// <summary>Numbers in the panel.</summary>
    public long PanelCount => StripsOffset(PivotStrips) + (long)BoundaryRows * PivotRows;

    /// <summary>Numbers in the update matrix.</summary>
    public long UpdateCount => StripsOffset(BoundaryRows / Tiles.Side);

    /// <summary>Bytes held.</summary>
    public long Bytes => numbers.Capacity * sizeof(double);

    /// <summary>Multiplications and additions of the elimination, each counted.</summary>
    public double Operations
    {
        get
        {
            double p = PivotRows, b = BoundaryRows;
            return p * p * p / 3 + p * p * b + p * b * b;
        }
    }

    /// <summary>A strip of the panel.</summary>
    public double* Strip(int strip) => strip < PivotStrips
        ? Panel + StripsOffset(strip)
        : Panel + StripsOffset(PivotStrips) + (long)(strip - PivotStrips) * Tiles.Side * PivotRows;

    /// <summary>A tile of the panel.</summary>
    public double* Tile(int strip, int tileColumn) => Strip(strip) + tileColumn * Tiles.Area;

    /// <summary>A strip of the update matrix.</summary>
    public double* UpdateStrip(int strip) => Update + StripsOffset(strip);

    /// <summary>Makes room for the numbers of the present structure.</summary>
    public void Reserve() => numbers.Require(PanelCount + UpdateCount);

    /// <summary>Sets all numbers to zero, but to one on the diagonal of the pivot rows that only fill up the last strip.</summary>
    public void Clear()
    {
        numbers.Clear(PanelCount + UpdateCount);
        for (var row = PivotDofs; row < PivotRows; row++)
        {
            Strip(row / Tiles.Side)[row * Tiles.Side + row % Tiles.Side] = 1;
        }
    }

    /// <summary>Gives the memory back.</summary>
    public void Dispose() => numbers.Dispose();

    /// <summary>Numbers in the first strips of a triangle.</summary>
    private static long StripsOffset(int strips) => (long)strips * (strips + 1) / 2 * Tiles.Area;
}
