using Clomwright.Numerics.Factorisation;
using Clomwright.Numerics.Frames;

namespace Clomwright.Numerics.Solid;

/// <summary>
/// The stiffness of each cell, formed when first needed and kept until its corners, material or cut change. Stored as the ten 6 x 6 blocks between
/// the thickness columns at its corners (a >= b), each row by row: a column's two nodes follow each other.
/// </summary>
internal sealed class CellMatrices(int patches, int through, bool withModes)
{
    /// <summary>Degrees of freedom that a cell has in one column.</summary>
    public const int BlockSide = 6;

    private const int BlockArea = BlockSide * BlockSide;
    private const int Size = 10 * BlockArea;

    private readonly double[]?[] blocks = new double[patches][];
    private readonly bool[] isFormed = new bool[patches * through];
    private readonly double[] largest = new double[patches * through];

    /// <summary>The largest entry on the diagonal of a formed cell.</summary>
    public double LargestDiagonal(int cell) => largest[cell];

    /// <summary>The block between columns a >= b of a formed cell.</summary>
    public ReadOnlySpan<double> Block(int cell, int a, int b) =>
        blocks[cell / through].AsSpan(cell % through * Size + (a * (a + 1) / 2 + b) * BlockArea, BlockArea);

    /// <summary>Forgets a cell.</summary>
    public void Forget(int cell) => isFormed[cell] = false;

    /// <summary>Forms what is solid and not yet formed in the given patches.</summary>
    public void Form(SolidModel model, IReadOnlyList<int> wanted, int threads)
    {
        var missing = wanted.Where(patch => Enumerable.Range(patch * through, through).Any(cell => IsMissing(model, cell))).ToList();
        if (missing.Count == 0)
        {
            return;
        }

        using var elements = new ThreadLocal<Hexahedron>(() => new Hexahedron());
        using var work = new SharedWork(threads);
        work.ForEach(missing.Count, i =>
        {
            for (var cell = missing[i] * through; cell < (missing[i] + 1) * through; cell++)
            {
                if (IsMissing(model, cell))
                {
                    Form(model, cell, elements.Value!);
                }
            }
        });
    }

    private bool IsMissing(SolidModel model, int cell) => !isFormed[cell] && model.Cells[cell].IsSolid;

    private void Form(SolidModel model, int cell, Hexahedron element)
    {
        Span<Vector3> corners = stackalloc Vector3[8];
        model.Grid.Corners(cell, corners);
        element.Form(corners, model.Materials[model.Cells[cell].Material], model.Cells[cell].Cut, withModes);
        var target = (blocks[cell / through] ??= new double[through * Size]).AsSpan(cell % through * Size, Size);
        var (next, most) = (0, 0.0);
        for (var a = 0; a < 4; a++)
        {
            for (var b = 0; b <= a; b++)
            {
                for (var p = 0; p < BlockSide; p++)
                {
                    for (var q = 0; q < BlockSide; q++)
                    {
                        // Corner n of the cell is column n / 2, layer n % 2.
                        var value = element.Stiffness(2 * a + p / 3, p % 3, 2 * b + q / 3, q % 3);
                        target[next++] = value;
                        most = a == b && p == q ? Math.Max(most, value) : most;
                    }
                }
            }
        }

        largest[cell] = most;
        isFormed[cell] = true;
    }
}
