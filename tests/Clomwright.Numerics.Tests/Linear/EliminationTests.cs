using Clomwright.Numerics.Linear;
using Clomwright.Testing;

namespace Clomwright.Numerics.Tests.Linear;

public sealed class EliminationTests
{
    // Rank property: the solution put back gives the right-hand side. 1e-9 of what is summed there: elimination with exchanges is backward stable.
    [Fact]
    public void Solution_PutBack_GivesTheRightHandSide() => Gen.Int[1, 30].SelectMany(n => Gen.Select(Gen.Double[-1, 1].Array[n * n], Gen.Double[-1, 1].Array[n])).ForAll((a, b) =>
    {
        var n = b.Length;
        if (Elimination.Of(a, n) is { PivotRatio: > 1e-6 } lu)
        {
            var x = lu.Solve(b);
            for (var i = 0; i < n; i++)
            {
                var size = Math.Abs(b[i]) + Enumerable.Range(0, n).Sum(j => Math.Abs(a[i * n + j] * x[j]));
                Assert.Equal(b[i], Enumerable.Range(0, n).Sum(j => a[i * n + j] * x[j]), 1e-9 * Math.Max(size, x.Max(Math.Abs) * 1e-3));
            }
        }
    });

    [Fact]
    public void SingularMatrix_HasNoFactors()
    {
        Assert.Null(Elimination.Of([1, 2, 2, 4], 2));
        Assert.Null(Elimination.Of([0, 0, 0, 0], 2));
        Assert.Null(Elimination.Of([1, double.NaN, 0, 1], 2));
    }

    // Rank analytic: rows change places when the first pivot is nothing.
    [Fact]
    public void ZeroPivot_IsExchanged() => Assert.Equal([3, 2], Elimination.Of([0, 1, 1, 0], 2)!.Solve([2, 3]));
}
