using Clomwright.Analysis.Roof;
using Clomwright.Testing;

namespace Clomwright.Analysis.Tests.Roof;

/// <summary>Moments, shear, drop, contact and thrust of the frame worked by hand, and the three-dimensional equilibrium.</summary>
public sealed class ReciprocalStaticsTests
{
    private static double[] Of(int n, double value) => [.. Enumerable.Repeat(value, n)];

    // Rank analytic: twelve 0.20 m poles under 4 kN/m2, worked by hand; half of the last printed digit.
    [Fact]
    public void Statics_OfTwelveNotchedPoles_AreAsWorkedByHand()
    {
        var frame = WorkedFrame.Geometry;
        var pole = frame.Poles[0];
        var load = WorkedFrame.Load();
        Near.Printed(13.018, load.Total / 1000, 1e-3);
        Near.Printed(0.56001, load.PlateMoment / load.Total, 1e-5);
        Near.Printed(7.2903, load.PlateMoment / 1000, 1e-4);
        Near.Relative(UniformReciprocal.PlateMoment(12, 3, 3.6, frame.RingRadius, frame.RingRadius, WorkedFrame.Pressure), load.PlateMoment, 1e-12);

        var p = CyclicEquilibrium.Forces(frame.NearDistances, frame.FarDistances, Of(12, load.PlateMoment))[0];
        Near.Printed(18.7095, p / 1000, 1e-4);
        Near.Printed(2.3476, load.PlateMoment / pole.Far / 1000, 1e-4);
        var diagram = PoleDiagram.Of(pole, load, load.Total, p, p);
        Near.Printed(-1.316, diagram.MomentAtPlate / 1000, 1e-3);
        Near.Printed(7.288, diagram.MomentAtNear / 1000, 1e-3);
        Near.Printed(-18.67, diagram.ShearOnStub / 1000, 1e-2);
        Near.Printed(9.28, diagram.MomentAtNear / (Math.PI * Math.Pow(0.2, 3) / 32) / 1e6, 1e-2);
        Near.Printed(0.754, 4 * -diagram.ShearOnStub * pole.PitchCosine / (3 * Math.PI * 0.01) / 1e6, 1e-3);
        Assert.Equal(0, diagram.Moment[^1], 1e-9 * load.PlateMoment);
        Assert.Equal(0, diagram.ShearAfter[^1], 1e-9 * p);

        var crossings = Crossing.Of(frame);
        Near.Printed(0.3364, crossings[0].FrictionDemand, 1e-4);
        var thrust = Thrust.WithoutFriction(frame, crossings, Of(12, p));
        Near.Printed(3.258, thrust[0].Force / 1000, 1e-3);
        Near.Relative(load.PlateMoment * pole.Slope / frame.RingRadius, thrust[0].Force, 1e-9);
        Near.Relative(load.PlateMoment * pole.Slope / 3, thrust[0].Outward, 1e-9);
        Near.Relative(thrust[0].Force * pole.TangentDistance / 3, Math.Abs(thrust[0].Clockwise), 1e-9);
        var fallback = Thrust.AgainstRing(frame, Of(12, load.PlateMoment))[0];
        Near.Printed(7.225, fallback / 1000, 1e-3);
        Near.Printed(13.96, Thrust.Hoop(fallback, 2 * Math.PI / 12) / 1000, 1e-2);
    }

    // Rank analytic: w 1 over 0..b, no overhang, b 3, a 2.5, level poles: M_near = w a (b - a/2), 3.88889 of w b^2/8; EI v = w a b (b^2 + 5 a b - a^2)/24.
    [Fact]
    public void LineLoad_OnLevelPoles_BendsAndDropsAsTheClosedForm()
    {
        var pole = WorkedFrame.Geometry.Poles[0] with { Near = 2.5, Far = 3, TangentDistance = 2.75, EaveReach = 0, Slope = 0 };
        var load = PoleLoad.Line([0, 1, 2.5, 2.75, 3], _ => 1);
        var diagram = PoleDiagram.Of(pole, load, 3, 9, 9);
        Near.Relative(4.375, diagram.MomentAtNear, 1e-12);
        Near.Relative(3.88888888888889, diagram.MomentAtNear / (9.0 / 8), 1e-12);
        var drop = RingDrop.Of(Of(7, 2.5), Of(7, 3), Of(7, diagram.SinkAtNear(_ => 1)));
        Assert.All(drop, v => Near.Relative(12.578125, v, 1e-12));
    }

    // Rank analytic: 3-D moment equilibrium of one pole of n equal ones about its ball joint, solved by hand for n 12, R_w 3, delta 0.15, 20 degrees, W 2.1794, x 0.9617.
    // The forces to 2.5e-4: x was given to four digits, and half of its last is that much of the force.
    [Fact]
    public void SpatialEquilibrium_OfEqualPoles_PushesNoPlateOutward()
    {
        var ring = UniformReciprocal.RingRadius(12, 0.15, Math.PI / 9)!.Value;
        var frame = ((ReciprocalShape.Frame)ReciprocalFrame.Of(ReciprocalPlan.Uniform(12, 3, 3, ring, 0.15))).Geometry;
        var moment = Of(12, 2.1794 * 0.9617);
        var plan = CyclicEquilibrium.Forces(frame.NearDistances, frame.FarDistances, moment);
        Near.Printed(4.7592, plan[0], 5e-4);
        var solved = SpatialEquilibrium.Of(frame)!;
        var space = solved.Solve(Of(12, 2.1794), moment);
        Assert.All(space.Plate, a => Assert.Equal(0, Math.Sqrt(a.X * a.X + a.Y * a.Y), 1e-9));
        Assert.All(space.Crossing, f => Near.Printed(4.7992, f.Z, 5e-4));
        Near.Printed(20.6469, solved.Crossings[0].Lean * 180 / Math.PI, 1e-4);
        Near.Printed(0.37681, solved.Crossings[0].FrictionDemand, 1e-5);
        Near.Printed(0.92830, Thrust.WithoutFriction(frame, solved.Crossings, plan)[0].Force, 1e-4);
    }

    // Rank analytic: tan(psi) = tan(beta)/cos(pi/n), 0.377 at 20 degrees and 0.598 at 30 for twelve poles.
    [Theory]
    [InlineData(12, 20)]
    [InlineData(12, 30)]
    [InlineData(3, 10)]
    [InlineData(40, 35)]
    public void FrictionDemand_OfEqualPoles_IsTheClosedForm(int n, double degrees)
    {
        var beta = degrees * Math.PI / 180;
        var ring = UniformReciprocal.RingRadius(n, 0.15, beta)!.Value;
        var plate = 3 * ring / Math.Cos(Math.PI / n);
        var frame = ((ReciprocalShape.Frame)ReciprocalFrame.Of(ReciprocalPlan.Uniform(n, plate, plate, ring, 0.15))).Geometry;
        Near.Relative(Math.Tan(beta) / Math.Cos(Math.PI / n), Crossing.Of(frame)[0].FrictionDemand, 1e-9);
    }
}
