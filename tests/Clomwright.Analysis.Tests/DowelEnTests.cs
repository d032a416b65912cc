using Clomwright.Analysis.Members;

namespace Clomwright.Analysis.Tests;

/// <summary>Yield modes of EN 1995.</summary>
public sealed class DowelEnTests
{
    // Rank analytic: EN 1995, d 16 mm, rho_k 350, f_u 400: M_y 0.3*400*16^2.6 = 162.1 N m (16^2.6 = 1351.2); f_h,90 = 0.082*0.84*350/1.59 = 15.162 N/mm2; thick members: 1.15 sqrt(2 M f d) = 10.20 kN.
    [Fact]
    public void EuropeanDowel_IsAsWorkedByHand()
    {
        Near.Relative(162.1, DowelEn.YieldMoment(0.016, 400e6), 1e-3);
        Near.Relative(15.162e6, DowelEn.Bearing(350, 0.016), 1e-4);
        Near.Relative(1.15 * Math.Sqrt(2 * 162.14 * 15.162e6 * 0.016), DowelEn.SingleShear(0.016, 1, 15.162e6, 400e6), 1e-3);
    }

    // Rank analytic: thin outer timbers crush first, t_1 f d a plane; and n_ef of 4 bolts at 5 d: 4^0.9 (5/13)^0.25 = 3.4822*0.7875 = 2.7422.
    [Fact]
    public void BoltsOfARow_AndThinSides_AreAsWorkedByHand()
    {
        Near.Relative(0.005 * 15e6 * 0.016, DowelEn.DoubleShear(0.016, 0.005, 1, 15e6, 400e6), 1e-9);
        Near.Relative(0.5 * 0.005 * 15e6 * 0.016, DowelEn.DoubleShear(0.016, 1, 0.005, 15e6, 400e6), 1e-9);
        Near.Relative(2.7422, DowelEn.Effective(4, 5), 1e-3);
        Assert.Equal(1, DowelEn.Effective(1, 13));
    }
}
