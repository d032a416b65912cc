using Clomwright.Analysis.Days;
using Clomwright.Testing;
using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Double;

namespace Clomwright.Analysis.Tests.Days;

/// <summary>What is believed after readings, against other ways to the same answer.</summary>
public sealed class BeliefTests
{
    /// <summary>
    /// Analytic, worked by hand: level N(0, 2.25 V) where V is thought to be 0.04, worth 8 days; one reading of 0.5 below the shoulder. Of the reading: 2.25 + 1 = 3.25; the level moves by 2.25/3.25 of 0.5;
    /// its variance becomes 2.25 - 2.25^2/3.25 = 0.6923; V becomes (8 x 0.04 + 0.25/3.25)/9 = 0.044103.
    /// </summary>
    [Fact]
    public void One_reading_by_hand()
    {
        var after = new PaceBelief(0, 0, 2.25, 0, 1, 0.04, 8, 0, 0).After(0.5, 0);
        Assert.Equal((0.346154, 0.692308, 0.044103), (Math.Round(after.Level, 6), Math.Round(after.LevelVariance, 6), Math.Round(after.DayVariance, 6)));
        Assert.Equal((9.0, 1, 1.0, 0.0), (after.Worth, after.Readings, after.AboveVariance, after.Covariance));
    }

    /// <summary>
    /// Independent: readings one after the other against all at once, by the closed form of regression with a normal and inverse-gamma prior (posterior precision = prior precision + X'X; Bernardo and
    /// Smith 1994, 5.2.1, from memory), solved by MathNet. Without wandering the two are the same sum: 1e-9.
    /// </summary>
    [Fact]
    public void Readings_one_by_one_are_readings_at_once() =>
        Gen.Select(Gen.Double[-1, 1], Gen.Double[0, 1]).List[1, 30].ForAll(readings =>
        {
            var before = new PaceBelief(0, 0, 2.25, 0, 0.5625, 0.04, 8, 0, 0);
            var belief = readings.Aggregate(before, (b, r) => b.After(r.Item1, r.Item2));
            var x = DenseMatrix.OfRows(readings.Select(r => new[] { 1.0, r.Item2 }));
            var y = DenseVector.OfEnumerable(readings.Select(r => r.Item1));
            var prior = DenseMatrix.OfArray(new[,] { { 1 / 2.25, 0 }, { 0, 1 / 0.5625 } });
            Matrix<double> precision = prior + x.TransposeThisAndMultiply(x);
            var mean = precision.Solve(x.TransposeThisAndMultiply(y));
            var cover = precision.Inverse();
            var sum = 8 * 0.04 + y.DotProduct(y) - mean.DotProduct(precision * mean);
            Assert.Equal([mean[0], mean[1], cover[0, 0], cover[0, 1], cover[1, 1], sum / (8 + readings.Count)],
                new[] { belief.Level, belief.Above, belief.LevelVariance, belief.Covariance, belief.AboveVariance, belief.DayVariance }, (a, b) => Math.Abs(a - b) < 1e-9);
        }, iter: 300);

    /// <summary>Property: a pace that wanders is less sure the longer nothing is read, and a later reading counts the more.</summary>
    [Fact]
    public void Wandering_forgets()
    {
        var belief = new PaceBelief(0, 0, 2.25, 0, 1, 0.04, 8, 0.01, 0).After(0.3, 0);
        Assert.Equal(belief.LevelVariance + 0.3, belief.Later(30).LevelVariance, 1e-12);
        Assert.True(belief.Later(30).After(-0.3, 0).Level < belief.After(-0.3, 0).Level);
    }

    /// <summary>Independent: the grid against the closed form, for readings that are normal. The grid ends at 4.5 deviations and has 121 points: 1e-4 of the prior's deviation.</summary>
    [Fact]
    public void The_grid_gives_what_the_closed_form_gives() =>
        Gen.Select(Gen.Double[-0.5, 0.5], Gen.Double[0.1, 0.6]).ForAll((reading, spread) =>
        {
            var before = new FactorBelief(0, 0.25, 0);
            var closed = before.After(reading, spread * spread);
            var grid = before.After(log => -(log - reading) * (log - reading) / (2 * spread * spread), 1);
            Assert.Equal(closed.Log, grid.Log, 1e-4 * 0.25);
            Assert.Equal(closed.Spread, grid.Spread, 1e-4 * 0.25);
        }, iter: 300);
}
