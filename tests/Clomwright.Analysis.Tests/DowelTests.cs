using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Tests;

/// <summary>Bolts across timbers against a printed value, the printed form of the yield equations and a row of springs.</summary>
public sealed class DowelTests
{
    private const double Psi = 6894.757293168361, Inch = 0.0254, Pound = 4.4482216152605;

    private static DowelMember Of(double inches, double gravity, double diameter, double degrees) => new(inches * Inch, Dowel.Bearing(gravity, diameter * Inch, degrees * Math.PI / 180));

    // Rank published (second-hand): a deck-ledger page quotes the NDS: 1/2 in bolt, southern pine 2x ledger, single shear across its grain, normal duration: 330 lb
    // (http://decksmadeeasy.com/certified.html). The NDS prints to 10 lb, so half of that either way.
    [Fact]
    public void LedgerBolt_IsThePublishedValue() =>
        Near.Printed(330, Dowel.Modes(0.5 * Inch, Of(1.5, 0.55, 0.5, 0), Of(1.5, 0.55, 0.5, 90), Dowel.Yield.Value, Math.PI / 2).SingleShear / Pound, 10);

    // Rank from memory: rows of NDS table 12A, 1 1/2 in on 1 1/2 in, G 0.50 and 0.43, 1/2, 5/8 and 3/4 in, both along the grain; printed to 10 lb.
    [Theory]
    [InlineData(0.50, 0.5, 480)]
    [InlineData(0.50, 0.625, 600)]
    [InlineData(0.50, 0.75, 720)]
    [InlineData(0.43, 0.5, 410)]
    public void BoltsAlongTheGrain_AreTheTableAsRecalled(double gravity, double diameter, double pounds) =>
        Near.Printed(pounds, Dowel.Modes(diameter * Inch, Of(1.5, gravity, diameter, 0), Of(1.5, gravity, diameter, 0), Dowel.Yield.Value, 0).SingleShear / Pound, 12);

    // Rank independent: the k_1, k_2, k_3 form as the NDS prints it (table 12.3.1A), in inches and pounds. 1e-9: other arithmetic of the same roots.
    [Theory]
    [InlineData(0.5, 3.5, 1.5, 0.5, 0)]
    [InlineData(0.625, 4, 2, 0.43, 90)]
    [InlineData(1, 6, 3.5, 0.55, 35)]
    [InlineData(0.375, 1.5, 5.5, 0.36, 60)]
    public void Modes_AreThePrintedEquations(double d, double lm, double ls, double gravity, double degrees)
    {
        double fem = 11_200 * gravity, across = 6_100 * Math.Pow(gravity, 1.45) / Math.Sqrt(d), angle = degrees * Math.PI / 180, fyb = 45_000;
        var fes = fem * across / (fem * Math.Pow(Math.Sin(angle), 2) + across * Math.Pow(Math.Cos(angle), 2));
        double re = fem / fes, rt = lm / ls, k = 1 + 0.25 * degrees / 90;
        var k1 = (Math.Sqrt(re + 2 * re * re * (1 + rt + rt * rt) + rt * rt * re * re * re) - re * (1 + rt)) / (1 + re);
        var k2 = -1 + Math.Sqrt(2 * (1 + re) + 2 * fyb * (1 + 2 * re) * d * d / (3 * fem * lm * lm));
        var k3 = -1 + Math.Sqrt(2 * (1 + re) / re + 2 * fyb * (2 + re) * d * d / (3 * fem * ls * ls));
        var modes = Dowel.Modes(d * Inch, Of(lm, gravity, d, 0), Of(ls, gravity, d, degrees), Dowel.Yield.Value, angle);
        double[] printed =
        [
            d * lm * fem / (4 * k), d * ls * fes / (4 * k), k1 * d * ls * fes / (3.6 * k), k2 * d * lm * fem / ((1 + 2 * re) * 3.2 * k),
            k3 * d * ls * fem / ((2 + re) * 3.2 * k), d * d / (3.2 * k) * Math.Sqrt(2 * fem * fyb / (3 * (1 + re))),
        ];
        double[] ours = [modes.MainCrushes, modes.SideCrushes, modes.Turns, modes.BendsInSide, modes.BendsInMain, modes.BendsInBoth];
        for (var i = 0; i < printed.Length; i++)
        {
            Near.Relative(printed[i], ours[i] / Pound, 1e-9);
        }

        Near.Relative(printed.Min(), modes.SingleShear / Pound, 1e-9);
        Near.Relative(new[] { printed[0], 2 * printed[1], 2 * printed[4], 2 * printed[5] }.Min(), modes.DoubleShear / Pound, 1e-9);
    }

    // Rank independent: bolts as springs between two bars, solved as a row of equations; the mean share over the greatest. 1e-9: elimination against a closed form.
    [Theory]
    [InlineData(2, 0.5, 4, 1)]
    [InlineData(3, 0.75, 6, 1)]
    [InlineData(5, 1, 4, 0.5)]
    public void GroupFactor_IsTheRowOfSprings(int count, double d, double spacing, double share)
    {
        double main = 1.4e6 * Psi * 5 * Inch * Inch, side = main * share, s = spacing * Inch, slip = Dowel.SlipModulus(d * Inch);
        var shares = Springs(count, main / s, side / s, slip);
        Near.Relative(1.0 / count / shares.Max(), Dowel.Group(count, d * Inch, s, main, side), 1e-9);
    }

    /// <summary>Forces of the bolts under a pull of one: main bar held beyond the last bolt, side bar pulled before the first.</summary>
    private static double[] Springs(int n, double main, double side, double slip)
    {
        // Slips u_i - v_i of neighbours differ by the stretch of both bars between them; forces sum to one.
        var rows = new double[n, n + 1];
        for (var i = 0; i < n - 1; i++)
        {
            rows[i, i] += 1 / slip;
            rows[i, i + 1] -= 1 / slip;
            for (var j = 0; j < n; j++)
            {
                rows[i, j] += j <= i ? 1 / main : 0;
                rows[i, j] -= j > i ? 1 / side : 0;
            }
        }

        for (var j = 0; j <= n; j++)
        {
            rows[n - 1, j] = 1;
        }

        for (var p = 0; p < n; p++)
        {
            var best = Enumerable.Range(p, n - p).MaxBy(r => Math.Abs(rows[r, p]));
            for (var j = 0; j <= n; j++)
            {
                (rows[p, j], rows[best, j]) = (rows[best, j], rows[p, j]);
            }

            for (var r = 0; r < n; r++)
            {
                var by = r == p ? 0 : rows[r, p] / rows[p, p];
                for (var j = 0; j <= n; j++)
                {
                    rows[r, j] -= by * rows[p, j];
                }
            }
        }

        return [.. Enumerable.Range(0, n).Select(i => rows[i, n] / rows[i, i])];
    }

    // Rank property: one bolt is no group; a thinner fastener than the equations cover is refused.
    [Fact]
    public void OneBoltIsNoGroup_AndNailsAreRefused()
    {
        Assert.Equal(1, Dowel.Group(1, 0.0127, 0.05, 1, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Dowel.Modes(0.005, Of(1.5, 0.5, 0.5, 0), Of(1.5, 0.5, 0.5, 0), Dowel.Yield.Value, 0));
    }

    // Rank property: what is printed gives what is computed.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Steps_GiveTheirNumbers(int planes)
    {
        var sheet = new Worksheet("header-shear");
        var z = Dowel.Steps(sheet, 0.0127, Of(3.5, 0.5, 0.5, 0), Of(1.5, 0.5, 0.5, 90), Math.PI / 2, planes);
        Printed.Holds([sheet.Done]);
        var modes = Dowel.Modes(0.0127, Of(3.5, 0.5, 0.5, 0), Of(1.5, 0.5, 0.5, 90), Dowel.Yield.Value, Math.PI / 2);
        Assert.Equal(planes == 1 ? modes.SingleShear : modes.DoubleShear, z.Value.Si);
    }
}
