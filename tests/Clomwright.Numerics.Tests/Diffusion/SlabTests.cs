using Clomwright.Numerics.Diffusion;

namespace Clomwright.Numerics.Tests.Diffusion;

/// <summary>A slab that loses through both faces, against its series; a published layer; orders in mesh and time.</summary>
public sealed class SlabTests
{
    private const double Fixed = 1e6;

    /// <summary>Half thickness 1, D 1, from 1 towards 0; time is the Fourier number.</summary>
    private static DiffusionStrip Slab(double biot, double time, int intervals = 96, double tolerance = 2e-7)
    {
        var strip = new DiffusionStrip(Medium.Linear(1), StripGrid.Slab(StripGrid.Graded(intervals, 1.2), 2)) { Tolerance = tolerance };
        strip.Place(1, 1);
        strip.Advance(0, time, new Steady(new Condition(1, 0, new Exchange(biot, 0), new Exchange(biot, 0))));
        return strip;
    }

    // Rank analytic: Crank, The Mathematics of Diffusion (1975), slab with fixed faces; series summed to five digits. 4e-4 of the start: 96 intervals, and faces held by p = 1e6.
    [Theory]
    [InlineData(.01, .88716, 1.0)]
    [InlineData(.05, .74769, .99687)]
    [InlineData(.1, .64318, .94931)]
    [InlineData(.2, .49591, .77231)]
    [InlineData(.3, .38676, .60680)]
    [InlineData(.5, .23605, .37078)]
    [InlineData(1, .06874, .10798)]
    [InlineData(2, .00583, .00916)]
    public void Slab_FacesHeld_FollowsTheSeries(double fourier, double mean, double centre)
    {
        var strip = Slab(Fixed, fourier);
        Assert.Equal(mean, strip.Mean(0), 4e-4);
        Assert.Equal(centre, strip[0, 48], 4e-4);
    }

    // Rank analytic: Crank (1975), slab with exchange at the faces. 1e-4: as above without the held faces.
    [Theory]
    [InlineData(1, .1, .91960, .99311, .72358)]
    [InlineData(1, .5, .68110, .77253, .50452)]
    [InlineData(1, 1, .47040, .53386, .34818)]
    [InlineData(1, 2, .22439, .25467, .16609)]
    [InlineData(.1, 1, .90759, .92239, .87813)]
    public void Slab_WithExchange_FollowsTheSeries(double biot, double fourier, double mean, double centre, double surface)
    {
        var strip = Slab(biot, fourier);
        Assert.Equal(mean, strip.Mean(0), 1e-4);
        Assert.Equal(centre, strip[0, 48], 1e-4);
        Assert.Equal(surface, strip[0, 0], 1e-4);
    }

    // Rank published (problem) and analytic (values): HAMSTAD WP2 benchmark 2 (Hagentoft et al. 2004), drying of a homogeneous layer 0.2 m thick from 95 % towards 45 % and 65 %, D 6e-10 m2/s;
    // series with fixed faces, kg/m3. The surface coefficient 1e-3 s/m of the benchmark stands here. 0.15 kg/m3: that coefficient is not quite a held face.
    [Theory]
    [InlineData(100, 43.644, 62.855, 83.716, 84.769, 83.893, 66.541, 50.560)]
    [InlineData(300, 33.810, 47.030, 74.012, 84.115, 75.821, 53.377, 42.380)]
    public void PublishedLayer_DriesAsGiven(double hours, params double[] expected)
    {
        const double psat = 2337;
        static double Held(double phi) => 116 / Math.Pow(1 - Math.Log(phi) / 0.118, 0.869);
        static double Phi(double w) => Math.Exp(-0.118 * (Math.Pow(116 / w, 1 / 0.869) - 1));
        static double Slope(double w) => w < 0.5 ? 0 : Phi(w) * 0.118 / 0.869 * Math.Pow(116 / w, 1 / 0.869) / w;
        // Only the liquid is given a way to go; the benchmark's vapour permeability is 1e-15.
        var strip = new DiffusionStrip(new Medium(_ => 6e-10, Slope, 0, 116, 4000), StripGrid.Slab(StripGrid.Even(200), 0.2)) { Tolerance = 1e-4 };
        Assert.Equal(84.769, Held(.95), 1e-3);
        Assert.Equal(19.536, Held(.45), 1e-3);
        Assert.Equal(30.506, Held(.65), 1e-3);
        strip.Place(1, Held(.95));
        strip.Advance(0, hours * 3600, new Steady(new Condition(1, 0, new Exchange(1e-3 * psat, 1e-3 * psat * .45), new Exchange(1e-3 * psat, 1e-3 * psat * .65))));
        int[] places = [10, 20, 50, 100, 150, 180, 190];
        for (var i = 0; i < places.Length; i++)
        {
            Assert.Equal(expected[i], strip[0, places[i]], 0.15);
        }
    }

    // Rank property: second order in the mesh. The error at Fo 0.3 with Bi 1 falls by 4 when intervals double; 3.6 to 4.4 leaves room for what follows the leading term.
    [Fact]
    public void Mesh_Halved_LeavesAQuarterOfTheError()
    {
        double At(int n)
        {
            var strip = new DiffusionStrip(Medium.Linear(1), StripGrid.Slab(StripGrid.Even(n), 2)) { Tolerance = 1e-8 };
            strip.Place(1, 1);
            strip.Advance(0, 0.3, new Steady(new Condition(1, 0, new Exchange(1, 0), new Exchange(1, 0))));
            return strip[0, n / 2];
        }

        var (coarse, middle, fine) = (At(8), At(16), At(32));
        Assert.InRange((coarse - middle) / (middle - fine), 3.6, 4.4);
    }

    // Rank property: second order in time, in a nonlinear medium and across both directions, where the factors are approximate. Steps of one length; the ratio of differences is 4, within 15 %.
    [Fact]
    public void Steps_Halved_LeaveAQuarterOfTheError()
    {
        double[] At(double h)
        {
            var strip = Wedge(tolerance: 1e9);
            strip.StepMax = 1e-3;
            strip.Advance(0, 0.05, new Steady(Drying));
            strip.StepMax = h;
            strip.Advance(0.05, 0.45, new Steady(Drying));
            return strip.ToArray();
        }

        static double Distance(double[] a, double[] b) => Math.Sqrt(a.Zip(b, (x, y) => (x - y) * (x - y)).Average());
        var (coarse, middle, fine) = (At(0.01), At(0.005), At(0.0025));
        Assert.InRange(Distance(coarse, middle) / Distance(middle, fine), 3.4, 4.6);
    }

    // Rank property: what went out and what is held add up to what was placed, to 1e-10 of it, whatever the steps, the medium and the surfaces.
    [Theory]
    [InlineData(1e-1)]
    [InlineData(1e-4)]
    [InlineData(1e9)]
    public void WhatIsHeldAndWhatLeft_AddUp(double tolerance)
    {
        var strip = Wedge(tolerance);
        strip.StepMax = tolerance > 1 ? 0.002 : double.PositiveInfinity;
        var placed = strip.Held;
        strip.Advance(0, 3, new Steady(Drying));
        strip.Advance(3, 4, new Steady(Drying with { First = new Exchange(2, 0.4, 0.5, 3, 1.2), Bottom = new Exchange(0.1, 0.3) }));
        Assert.Equal(placed, strip.Held + strip.Out.Total, 1e-10 * placed);
        Assert.True(strip.Out.Bottom < 0 && strip.Out.Top > 0);
    }

    // Rank property: rows placed later bring their own; the sum still holds.
    [Fact]
    public void RowsPlacedLater_AreCounted()
    {
        var strip = new DiffusionStrip(Nonlinear, new StripGrid(StripGrid.Graded(12, 2), [1, 1, 0.1, 1, 0.1], [1, .9, .8, .7, .6])) { Tolerance = 1e-4 };
        strip.Place(3, 1);
        var placed = strip.Held;
        strip.Advance(0, 1, new Steady(Drying));
        var before = strip.Held;
        strip.Place(2, 1.1);
        placed += strip.Held - before;
        strip.Advance(1, 2, new Steady(Drying));
        Assert.Equal(placed, strip.Held + strip.Out.Total, 1e-10 * placed);
    }

    // Rank property: unconditionally stable. One step a thousand times longer than the slab needs ends flat at what surrounds it: within 1e-3, for the L-stable factor of a linear system is of order 1/z.
    [Fact]
    public void OneEnormousStep_EndsAtTheSurroundings()
    {
        var strip = new DiffusionStrip(Medium.Linear(1), StripGrid.Slab(StripGrid.Even(20), 2)) { Tolerance = 1e9 };
        strip.Place(1, 1);
        strip.Advance(0, 60, new Steady(new Condition(1, 0, new Exchange(1, .3), new Exchange(1, .3))));
        strip.Advance(60, 1e6, new Steady(new Condition(1, 0, new Exchange(1, .3), new Exchange(1, .3))));
        Assert.All(strip.ToArray(), u => Assert.Equal(.3, u, 1e-3));
    }

    // Rank property: steps allocate nothing.
    [Fact]
    public void Steps_AllocateNothing()
    {
        var strip = Wedge(1e-5);
        var surroundings = new Steady(Drying);
        strip.Advance(0, 0.1, surroundings);
        var before = GC.GetAllocatedBytesForCurrentThread();
        strip.Advance(0.1, 1, surroundings);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
    }

    private static Medium Nonlinear => new(u => 0.02 * Math.Exp(3 * u), _ => 1, 0, 1.5, 300);

    private static Condition Drying => new(1, 0.05, new Exchange(2, 0.2, 0.5), new Exchange(1, 0.1), new Exchange(0.5, 0.05));

    private static DiffusionStrip Wedge(double tolerance)
    {
        var strip = new DiffusionStrip(Nonlinear, new StripGrid(StripGrid.Graded(16, 2), [.5, 1, .5, .1], [1.2, 1.1, 1, 1])) { Tolerance = tolerance };
        strip.Place(4, 1);
        return strip;
    }
}
