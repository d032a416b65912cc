using Clomwright.Testing;
namespace Clomwright.Numerics.Tests;

public sealed class PeriodicCubicSplineTests
{
    private static readonly Gen<(double Span, double Value)[]> Data = Gen.Select(Gen.Double[0.2, 3], Gen.Double[-5, 5]).Array[3, 12];

    [Fact]
    public void Spline_OfAnyValues_PassesThemWithTwoContinuousDerivatives() =>
        // Property: the definition of the spline; tolerance for a system whose rows are diagonally dominant by two.
        Data.ForAll(data =>
        {
            var spline = new PeriodicCubicSpline(data.Select(d => d.Span).ToArray(), data.Select(d => d.Value).ToArray());
            for (var i = 0; i < data.Length; i++)
            {
                var start = spline.At(i, 0);
                var end = spline.At((i + data.Length - 1) % data.Length, data[(i + data.Length - 1) % data.Length].Span);
                Assert.Equal(data[i].Value, start.Value, 1e-12);
                Assert.Equal(start.Value, end.Value, 1e-10);
                Assert.Equal(start.First, end.First, 1e-9);
                Assert.Equal(start.Second, end.Second, 1e-9);
            }
        });

    [Fact]
    public void Spline_ThroughASine_ConvergesWithTheFourthPowerOfTheSpacing()
    {
        // Analytic: halving the spacing of a C2 cubic spline divides its error by about 16 (de Boor, A Practical Guide to Splines; from memory).
        static double Worst(int n)
        {
            var h = 2 * Math.PI / n;
            var spline = new PeriodicCubicSpline(Enumerable.Repeat(h, n).ToArray(), Enumerable.Range(0, n).Select(i => Math.Sin(i * h)).ToArray());
            return Enumerable.Range(0, n).Max(i => Math.Abs(spline.At(i, h / 2).Value - Math.Sin((i + 0.5) * h)));
        }

        Assert.InRange(Worst(16) / Worst(32), 14, 18);
        Assert.InRange(Worst(32) / Worst(64), 15, 17);
    }

    [Fact]
    public void Spline_BadSpans_AreRefused()
    {
        Assert.Throws<ArgumentException>(() => new PeriodicCubicSpline([1, 1], [0, 1]));
        Assert.Throws<ArgumentException>(() => new PeriodicCubicSpline([1, 0, 1], [0, 1, 2]));
        Assert.Throws<ArgumentException>(() => new PeriodicCubicSpline([1, double.NaN, 1], [0, 1, 2]));
    }
}
