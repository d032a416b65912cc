using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;

namespace Clomwright.Analysis.Tests;

/// <summary>Nails, screws and lag screws against printed values and the equations worked by hand.</summary>
public sealed class NailTests
{
    private const double Inch = 0.0254, Pound = 4.4482216152605;

    private static DowelMember Board(double inches, double gravity) => new(inches * Inch, Nail.Bearing(gravity));

    // Rank published (second-hand): NDS-2005 table 11N as worked in http://seaintarchive.org/mailarchive/2009c/msg00914.html: 16d common nail 0.162 in, Douglas fir-larch, 1 1/2 in side: 141 lb.
    // Rank from memory: 8d 97 lb and 10d 118 lb of the same table. Printed to the pound.
    [Theory]
    [InlineData(0.162, 141)]
    [InlineData(0.148, 118)]
    [InlineData(0.131, 97)]
    public void CommonNails_AreTheTable(double diameter, double pounds) =>
        Near.Printed(pounds, Nail.Across(diameter * Inch, 10 * diameter * Inch, 0.50, Board(1.5, 0.50)) / Pound, 1.2);

    // The same page: the nail reaches 1.25 in through 3/4 in of floor: 0.7716 x 1.6 x 141 = 174 lb. Here its own shorter length in the main timber counts too, which can only take away.
    [Fact]
    public void ShortReach_HoldsInProportion()
    {
        Near.Relative(0.7716, Nail.Reaching(0.162 * Inch, 1.25 * Inch), 1e-4);
        Assert.InRange(1.6 * Nail.Across(0.162 * Inch, 1.25 * Inch, 0.50, Board(1.5, 0.50)) / Pound, 0.9 * 174, 174.5);
        Assert.Equal(0, Nail.Reaching(0.162 * Inch, 0.9 * Inch)); // 6 D is 0.972 in
    }

    // Rank published (second-hand): https://www.engineeringtoolbox.com/nails-spikes-withdrawal-load-d_1814.html: G 0.45, 20d of 0.203 in: 38 lb for each inch.
    [Fact]
    public void SmoothNail_DrawsOutAsPrinted() => Near.Printed(38, Nail.Pull(0.203 * Inch, Inch, 0.45) / Pound, 1);

    // Rank analytic: 2850 x 0.25 x 0.25 = 178.125 lb/in of a 1/4 in screw in G 0.50; 1800 x 0.5^1.5 x 0.5^0.75 = 378.4 lb/in of a 1/2 in lag screw (NDS table 12.2A prints 378).
    // Head: 690 pi x 0.5 x 0.25 x 0.75 in = 203.2 lb.
    [Fact]
    public void ScrewsAndHeads_AreAsWorkedByHand()
    {
        Near.Relative(178.125, Nail.PullOfScrew(0.25 * Inch, Inch, 0.50) / Pound, 1e-9);
        Near.Printed(378, Nail.PullOfLag(0.5 * Inch, Inch, 0.50) / Pound, 1);
        Near.Relative(690 * Math.PI * 0.5 * 0.25 * 0.75, Nail.PullThrough(0.5 * Inch, 0.75 * Inch, 0.50) / Pound, 1e-9);
        Near.Relative(1725 * Math.PI * 0.5 * 0.5 * 0.25, Nail.PullThrough(0.5 * Inch, 3 * Inch, 0.50) / Pound, 1e-9); // the printed form past 2.5 heads
    }

    // Rank analytic: EN 1995, smooth nail 4 mm, rho_k 350: f_h = 0.082 x 350 x 4^-0.3 = 18.935 N/mm2; M_y = 0.3 x 600 x 4^2.6 = 6.617 N m; thick timbers: 1.15 sqrt(2 x 6617 x 18.935 x 4) = 1151.4 N.
    // Pull: f_ax 2.45 N/mm2, f_head 8.575 N/mm2; 4 mm, 48 mm deep: 470.4 N at the point; head 8 mm, board 20 mm: 196 + 548.8 = 744.8 N; at 40 mm (10 d) half of 392 N.
    [Fact]
    public void EuropeanNail_IsAsWorkedByHand()
    {
        Near.Relative(18.935e6, NailEn.Bearing(350, 0.004), 1e-4);
        Near.Relative(6.617, NailEn.Moment(0.004), 1e-3);
        Near.Relative(1151.4, NailEn.Across(0.004, 1, 1, NailEn.Bearing(350, 0.004), NailEn.Moment(0.004)), 1e-3);
        Near.Relative(470.4, NailEn.Pull(0.004, 0.048, 1, 0.008, 350), 1e-9);
        Near.Relative(744.8, NailEn.Pull(0.004, 1, 0.020, 0.008, 350), 1e-9);
        Near.Relative(196, NailEn.Pull(0.004, 0.040, 1, 0.008, 350), 1e-9);
        Assert.Equal(0, NailEn.Pull(0.004, 0.031, 1, 0.008, 350));
    }

    // Rank independent: equal lengths are the modes of a bolt between equal timbers; unequal ones the six printed equations of (8.6) with beta 1, written out here.
    [Theory]
    [InlineData(0.016, 0.1, 0.1)]
    [InlineData(0.016, 0.175, 0.1)]
    [InlineData(0.02, 0.05, 0.2)]
    public void UnequalTimbers_AreTheSixEquations(double d, double t1, double t2)
    {
        double f = DowelEn.Bearing(350, d), m = DowelEn.YieldMoment(d, 400e6), r = t2 / t1, q = f * d;
        double[] printed =
        [
            q * t1, q * t2, q * t1 / 2 * (Math.Sqrt(1 + 2 * (1 + r + r * r) + r * r) - (1 + r)),
            1.05 * q * t1 / 3 * (Math.Sqrt(2 * 2 + 4 * 3 * m / (q * t1 * t1)) - 1), 1.05 * q * t2 / 3 * (Math.Sqrt(2 * 2 + 4 * 3 * m / (q * t2 * t2)) - 1), 1.15 * Math.Sqrt(2 * m * q),
        ];
        Near.Relative(printed.Min(), NailEn.Across(d, t1, t2, f, m), 1e-12);
        if (t1 == t2)
        {
            Near.Relative(DowelEn.SingleShear(d, t1, f, 400e6), NailEn.Across(d, t1, t2, f, m), 1e-12);
        }
    }

    // Rank published (second-hand): a steel maker's table for class 4.6 prints 24.3 kN for an M12 with 84.3 mm2 (https://scribd.com/document/444430650): 0.9 f_ub A_s/1.25 gives f_ub 400 N/mm2 to the last digit.
    [Fact]
    public void EuropeanBolt_IsOfClassFourSix()
    {
        var bolt = Metal.Find("steel-bolt")!;
        Near.Printed(24.3, 0.9 * bolt.Breaks(TimberSystem.En).Value * 84.3e-6 / 1.25 / 1000, 0.1);
        Near.Relative(60_000 * UsUnits.Psi, bolt.Breaks(TimberSystem.Nds).Value, 1e-12);
        Assert.Equal(DowelEn.Ultimate, bolt.Breaks(TimberSystem.En).Value);
    }
}
