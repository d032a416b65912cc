namespace Clomwright.Numerics;

/// <summary>Who is put to what, one to one, at the least cost altogether (the Hungarian method with potentials, after Kuhn 1955 and Munkres 1957).</summary>
public static class Assignment
{
    /// <summary>The column of each row.</summary>
    /// <param name="cost">Rows by columns, at least as many columns as rows; finite.</param>
    /// <exception cref="ArgumentException">More rows than columns.</exception>
    public static int[] Cheapest(double[,] cost)
    {
        ArgumentNullException.ThrowIfNull(cost);
        var (rows, columns) = (cost.GetLength(0), cost.GetLength(1));
        if (rows > columns)
        {
            throw new ArgumentException("More rows than columns.", nameof(cost));
        }

        // Potentials of rows and columns, and the row of each column; index 0 stands for none.
        var (u, v, rowOf, way) = (new double[rows + 1], new double[columns + 1], new int[columns + 1], new int[columns + 1]);
        for (var row = 1; row <= rows; row++)
        {
            Augment(row);
        }

        var found = new int[rows];
        for (var column = 1; column <= columns; column++)
        {
            if (rowOf[column] > 0)
            {
                found[rowOf[column] - 1] = column - 1;
            }
        }

        return found;

        void Augment(int row)
        {
            rowOf[0] = row;
            var column = 0;
            var (least, used) = (new double[columns + 1], new bool[columns + 1]);
            Array.Fill(least, double.PositiveInfinity);
            do
            {
                used[column] = true;
                var (at, delta, next) = (rowOf[column], double.PositiveInfinity, 0);
                for (var j = 1; j <= columns; j++)
                {
                    if (used[j])
                    {
                        continue;
                    }

                    var reduced = cost[at - 1, j - 1] - u[at] - v[j];
                    if (reduced < least[j])
                    {
                        (least[j], way[j]) = (reduced, column);
                    }

                    if (least[j] < delta)
                    {
                        (delta, next) = (least[j], j);
                    }
                }

                for (var j = 0; j <= columns; j++)
                {
                    if (used[j])
                    {
                        u[rowOf[j]] += delta;
                        v[j] -= delta;
                    }
                    else
                    {
                        least[j] -= delta;
                    }
                }

                column = next;
            }
            while (rowOf[column] != 0);

            while (column != 0)
            {
                var before = way[column];
                rowOf[column] = rowOf[before];
                column = before;
            }
        }
    }
}
