using static Clomwright.Numerics.Linear.Vectors;

namespace Clomwright.Numerics.Frames;

/// <summary>A symmetric matrix stored column by column from its first entry to the diagonal, factorised in place as L D L'.</summary>
/// <remarks>The active-column method of Bathe, Finite Element Procedures, 8.2.3. Entries outside the profile are zero and stay so.</remarks>
internal sealed class Profile
{
    private readonly int[] first;
    private readonly double[][] columns;

    /// <param name="first">Row of the first entry of each column.</param>
    public Profile(int[] first)
    {
        this.first = first;
        columns = new double[first.Length][];
        for (var j = 0; j < first.Length; j++)
        {
            columns[j] = new double[j - first[j] + 1];
        }
    }

    public void Add(int row, int column, double value)
    {
        if (row > column)
        {
            (row, column) = (column, row);
        }

        columns[column][row - first[column]] += value;
    }

    /// <summary>Factorises; the first row whose pivot vanishes against its own diagonal, or -1.</summary>
    public int Factorise(double vanishing)
    {
        for (var j = 0; j < columns.Length; j++)
        {
            var column = columns[j];
            var diagonal = column[^1];
            for (var i = first[j] + 1; i < j; i++)
            {
                var other = columns[i];
                var from = Math.Max(first[i], first[j]);
                column[i - first[j]] -= Dot(other.AsSpan(from - first[i], i - from), column.AsSpan(from - first[j], i - from));
            }

            for (var i = first[j]; i < j; i++)
            {
                var u = column[i - first[j]];
                var l = u / columns[i][^1];
                column[i - first[j]] = l;
                column[^1] -= l * u;
            }

            if (!(column[^1] > vanishing * diagonal))
            {
                return j;
            }
        }

        return -1;
    }

    /// <summary>Solves in place for one right-hand side.</summary>
    public void Solve(double[] x)
    {
        for (var j = 0; j < columns.Length; j++)
        {
            x[j] -= Dot(columns[j].AsSpan(0, j - first[j]), x.AsSpan(first[j], j - first[j]));
        }

        for (var j = 0; j < columns.Length; j++)
        {
            x[j] /= columns[j][^1];
        }

        for (var j = columns.Length - 1; j >= 0; j--)
        {
            var column = columns[j];
            for (var i = first[j]; i < j; i++)
            {
                x[i] -= column[i - first[j]] * x[j];
            }
        }
    }
}
