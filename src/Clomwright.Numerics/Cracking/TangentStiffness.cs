using Clomwright.Numerics.Factorisation;
using Clomwright.Numerics.Solid;

namespace Clomwright.Numerics.Cracking;

/// <summary>The tangent of a cracking body: the pattern of its elastic stiffness with other numbers, and springs that push only while they do.</summary>
internal sealed class TangentStiffness(SolidStiffness pattern) : ISheetMatrix
{
    private const int Side = CellMatrices.BlockSide;
    private const int Area = Side * Side;

    private readonly int through = pattern.Model.Grid.Through;
    private readonly double[]?[] blocks = new double[pattern.Model.Grid.Cells][];
    private readonly double[] diagonal = new double[pattern.Shape.Columns * pattern.DofsPerColumn];

    /// <inheritdoc/>
    public SheetShape Shape => pattern.Shape;

    /// <inheritdoc/>
    public int DofsPerColumn => pattern.DofsPerColumn;

    /// <summary>Cracked cells keep a small share of their stiffness: only a pivot far below that is a mechanism.</summary>
    public double LargestDiagonal => 1e-3 * pattern.LargestDiagonal;

    /// <summary>What springs add now.</summary>
    public Span<double> Springs => diagonal;

    /// <inheritdoc/>
    public ReadOnlySpan<short> Active(int column) => pattern.Active(column);

    /// <inheritdoc/>
    public bool IsEmpty(int patch) => pattern.IsEmpty(patch);

    /// <inheritdoc/>
    public ReadOnlySpan<double> Diagonal(int column) => diagonal.AsSpan(column * DofsPerColumn, DofsPerColumn);

    /// <summary>Takes the condensed tangent of one cell.</summary>
    public void Take(int cell, CellState state)
    {
        var target = blocks[cell] ??= new double[10 * Area];
        var next = 0;
        for (var a = 0; a < 4; a++)
        {
            for (var b = 0; b <= a; b++)
            {
                for (var p = 0; p < Side; p++)
                {
                    for (var q = 0; q < Side; q++)
                    {
                        target[next++] = state.Stiffness(2 * a + p / 3, p % 3, 2 * b + q / 3, q % 3);
                    }
                }
            }
        }
    }

    /// <inheritdoc/>
    public void AddPatch(int patch, in PatchTarget target)
    {
        for (var j = 0; j < through; j++)
        {
            var cell = patch * through + j;
            if (!pattern.Model.Cells[cell].IsSolid)
            {
                continue;
            }

            for (var a = 0; a < 4; a++)
            {
                for (var b = 0; b <= a; b++)
                {
                    target.Add(a, pattern.Positions(patch, a, j), b, pattern.Positions(patch, b, j), blocks[cell].AsSpan((a * (a + 1) / 2 + b) * Area, Area), 1);
                }
            }
        }
    }
}
