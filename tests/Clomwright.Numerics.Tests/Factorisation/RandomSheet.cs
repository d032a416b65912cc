using Clomwright.Numerics.Factorisation;

namespace Clomwright.Numerics.Tests.Factorisation;

/// <summary>A sheet with random symmetric positive patches, some of them empty, and random places switched off; and its matrix written out in full.</summary>
internal sealed class RandomSheet : ISheetMatrix
{
    private readonly Random random;
    private readonly double[][] patches;
    private readonly bool[] empty;
    private readonly short[][] active;
    private readonly short[][] position;
    private readonly double[] diagonal;

    public RandomSheet(SheetShape shape, int places, int seed, double holes)
    {
        (Shape, DofsPerColumn, random) = (shape, places, new Random(seed));
        patches = [.. Enumerable.Range(0, shape.Patches).Select(_ => RandomPatch())];
        empty = new bool[shape.Patches];
        active = new short[shape.Columns][];
        position = new short[shape.Columns][];
        diagonal = [.. Enumerable.Range(0, shape.Columns * places).Select(_ => random.NextDouble() < 0.1 ? 5.0 : 0.01)];
        for (var column = 0; column < shape.Columns; column++)
        {
            SetActive(column, random.NextDouble() < holes ? 0.5 : 1);
        }

        for (var patch = 0; patch < shape.Patches; patch++)
        {
            empty[patch] = random.NextDouble() < holes;
        }
    }

    public SheetShape Shape { get; }

    public int DofsPerColumn { get; }

    public double LargestDiagonal => 100;

    public ReadOnlySpan<short> Active(int column) => active[column];

    public bool IsEmpty(int patch) => empty[patch];

    public ReadOnlySpan<double> Diagonal(int column) => diagonal.AsSpan(column * DofsPerColumn, DofsPerColumn);

    public void AddPatch(int patch, in PatchTarget target)
    {
        var n = 4 * DofsPerColumn;
        var block = new double[DofsPerColumn * DofsPerColumn];
        for (var a = 0; a < 4; a++)
        {
            for (var b = 0; b <= a; b++)
            {
                for (var p = 0; p < DofsPerColumn; p++)
                {
                    for (var q = 0; q < DofsPerColumn; q++)
                    {
                        block[p * DofsPerColumn + q] = patches[patch][(a * DofsPerColumn + p) * n + b * DofsPerColumn + q];
                    }
                }

                target.Add(a, position[Shape.Corner(patch, a)], b, position[Shape.Corner(patch, b)], block, 1);
            }
        }
    }

    /// <summary>Gives one patch new numbers, or none; and one of its columns other places. Returns the patches and columns that changed.</summary>
    public (int[] Patches, int[] Columns) ChangeAround(int patch)
    {
        patches[patch] = RandomPatch();
        empty[patch] = random.NextDouble() < 0.3;
        var column = Shape.Corner(patch, random.Next(4));
        SetActive(column, random.NextDouble());
        return ([patch], [column]);
    }

    public double[] RandomVector() => [.. Enumerable.Range(0, Shape.Columns * DofsPerColumn).Select(_ => random.NextDouble() - 0.5)];

    /// <summary>The answer by elimination in the whole matrix, written out in full: independent of the library.</summary>
    public double[] SolveInFull(double[] load)
    {
        var n = load.Length;
        var k = new double[n, n];
        var isActive = new bool[n];
        for (var column = 0; column < Shape.Columns; column++)
        {
            foreach (var place in active[column])
            {
                var dof = column * DofsPerColumn + place;
                isActive[dof] = true;
                k[dof, dof] += diagonal[dof];
            }
        }

        for (var patch = 0; patch < Shape.Patches; patch++)
        {
            for (var p = 0; p < 4 * DofsPerColumn && !empty[patch]; p++)
            {
                for (var q = 0; q < 4 * DofsPerColumn; q++)
                {
                    var (row, column) = (Dof(patch, p), Dof(patch, q));
                    if (isActive[row] && isActive[column])
                    {
                        k[row, column] += patches[patch][p * 4 * DofsPerColumn + q];
                    }
                }
            }
        }

        var x = new double[n];
        for (var i = 0; i < n; i++)
        {
            (k[i, i], x[i]) = isActive[i] ? (k[i, i], load[i]) : (1, 0);
        }

        for (var j = 0; j < n; j++)
        {
            for (var i = j + 1; i < n; i++)
            {
                var f = k[i, j] / k[j, j];
                if (f != 0)
                {
                    for (var c = j; c < n; c++)
                    {
                        k[i, c] -= f * k[j, c];
                    }

                    x[i] -= f * x[j];
                }
            }
        }

        for (var i = n - 1; i >= 0; i--)
        {
            for (var c = i + 1; c < n; c++)
            {
                x[i] -= k[i, c] * x[c];
            }

            x[i] /= k[i, i];
        }

        return x;
    }

    private int Dof(int patch, int local) => Shape.Corner(patch, local / DofsPerColumn) * DofsPerColumn + local % DofsPerColumn;

    private double[] RandomPatch()
    {
        // A A^T with more rows than columns missing: positive semi-definite, as a patch of a free body is.
        var n = 4 * DofsPerColumn;
        var a = Enumerable.Range(0, n * n).Select(_ => random.NextDouble() - 0.5).ToArray();
        var k = new double[n * n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < n; j++)
            {
                for (var c = 0; c < n - 3; c++)
                {
                    k[i * n + j] += a[i * n + c] * a[j * n + c];
                }
            }
        }

        return k;
    }

    private void SetActive(int column, double share)
    {
        active[column] = [.. Enumerable.Range(0, DofsPerColumn).Where(_ => random.NextDouble() < share).Select(p => (short)p)];
        position[column] = new short[DofsPerColumn];
        Array.Fill(position[column], (short)-1);
        for (var i = 0; i < active[column].Length; i++)
        {
            position[column][active[column][i]] = (short)i;
        }
    }
}
