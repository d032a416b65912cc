using Clomwright.Testing;
namespace Clomwright.Numerics.Tests;

public sealed class QuadratureAndRootTests
{
    public static TheoryData<int> Points => [4, 8, 12, 16, 32];

    private static GaussRule Rule(int points) => points switch { 4 => GaussRule.Four, 8 => GaussRule.Eight, 12 => GaussRule.Twelve, 16 => GaussRule.Sixteen, _ => GaussRule.ThirtyTwo };

    [Theory, MemberData(nameof(Points))]
    public void GaussRule_PolynomialOfDegreeTwiceItsPointsLessOne_IsExact(int points)
    {
        // Analytic: the defining property. Tolerance 1e-14: a few roundings.
        for (var degree = 0; degree < 2 * points; degree++)
        {
            Assert.Equal(1.0 / (degree + 1), Rule(points).Integrate(x => Math.Pow(x, degree), 0, 1), 1e-14);
        }
    }

    [Fact]
    public void GaussRule_FourPoints_HasTheTabulatedNodes()
    {
        // Published: Abramowitz and Stegun, Handbook of Mathematical Functions (1964), table 25.4, n = 4 (from memory); 15 digits printed.
        Assert.Equal(0.339981043584856, GaussRule.Four.Nodes[2], 1e-15);
        Assert.Equal(0.861136311594053, GaussRule.Four.Nodes[3], 1e-15);
        Assert.Equal(0.652145154862546, GaussRule.Four.Weights[2], 1e-15);
    }

    [Fact]
    public void GaussRule_CutAtAKink_IsExactOnBothSides()
    {
        // Analytic: the integral of |x - 0.3| over 0..1.
        Assert.Equal((0.09 + 0.49) / 2, GaussRule.Four.Integrate(x => Math.Abs(x - 0.3), 0, 1, [0.3, 5, double.NaN]), 1e-15);
        Assert.Equal(-(0.09 + 0.49) / 2, GaussRule.Four.Integrate(x => Math.Abs(x - 0.3), 1, 0, [0.3]), 1e-15);
    }

    [Fact]
    public void Roots_KnownZeros_AreFound()
    {
        // Analytic: cos x = x has the zero 0.739085133215160642 (Dottie number); pi from the sine.
        Assert.Equal(0.739085133215160642, Roots.Bracketed(x => Math.Cos(x) - x, 0, 1, 1e-15), 1e-15);
        Assert.Equal(Math.PI, Roots.Newton(x => (Math.Sin(x), Math.Cos(x)), 3, 4, 3.9, 1e-15), 1e-15);
        Assert.Equal(0, Roots.Newton(x => (Math.Cbrt(x), 1 / (3 * Math.Cbrt(x) * Math.Cbrt(x))), -1, 2, 1, 1e-14), 1e-13);
    }

    [Fact]
    public void Roots_NoChangeOfSign_IsNotANumber()
    {
        Assert.True(double.IsNaN(Roots.Bracketed(x => x * x + 1, -1, 1, 1e-12)));
        Assert.True(double.IsNaN(Roots.Newton(x => (x * x + 1, 2 * x), -1, 1, 0, 1e-12)));
        Assert.True(double.IsNaN(Roots.Newton(_ => (double.NaN, 1), -1, 1, 0, 1e-12)));
    }

    [Fact]
    public void Roots_RandomCubics_AgreeWithEachOther() =>
        // Property: two different methods, one zero of a growing cubic.
        Gen.Select(Gen.Double[0, 3], Gen.Double[0.01, 3], Gen.Double[-5, 5]).ForAll((a, b, c) =>
        {
            double f(double x) => a * x * x * x + b * x + c;
            var newton = Roots.Newton(x => (f(x), 3 * a * x * x + b), -1000, 1000, 7, 1e-13);
            Assert.Equal(newton, Roots.Bracketed(f, -1000, 1000, 1e-13), 1e-9);
        });
}
