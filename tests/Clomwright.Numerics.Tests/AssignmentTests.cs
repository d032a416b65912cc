using Clomwright.Testing;

namespace Clomwright.Numerics.Tests;

/// <summary>Who to what at least cost.</summary>
public sealed class AssignmentTests
{
    /// <summary>Independent: the least over every way to choose columns for up to five rows and six columns. Whole numbers, so equal exactly.</summary>
    [Fact]
    public void Cheapest_is_the_least_of_all_ways() =>
        Gen.Select(Gen.Int[1, 5], Gen.Int[0, 1], Gen.Int[-20, 20].Array[30]).ForAll(drawn =>
        {
            var (rows, more, numbers) = drawn;
            var cost = new double[rows, rows + more];
            for (var i = 0; i < rows; i++)
            {
                for (var j = 0; j < rows + more; j++)
                {
                    cost[i, j] = numbers[6 * i + j];
                }
            }

            var found = Assignment.Cheapest(cost);
            Assert.Equal(rows, found.Distinct().Count());
            Assert.Equal(Least(cost, 0, []), found.Select((j, i) => cost[i, j]).Sum());
        }, iter: Counts.Of(2_000, 20_000));

    /// <summary>Analytic, by hand: of {{4,1,3},{2,0,5},{3,2,2}} the least is 1 + 2 + 2 = 5; the diagonal comes to 6, every other way to more.</summary>
    [Fact]
    public void A_table_solved_by_hand() => Assert.Equal([1, 0, 2], Assignment.Cheapest(new double[,] { { 4, 1, 3 }, { 2, 0, 5 }, { 3, 2, 2 } }));

    [Fact]
    public void More_rows_than_columns_are_refused() => Assert.Throws<ArgumentException>(() => Assignment.Cheapest(new double[2, 1]));

    private static double Least(double[,] cost, int row, HashSet<int> taken) => row == cost.GetLength(0) ? 0
        : Enumerable.Range(0, cost.GetLength(1)).Where(j => !taken.Contains(j)).Min(j => cost[row, j] + Least(cost, row + 1, [.. taken, j]));
}
