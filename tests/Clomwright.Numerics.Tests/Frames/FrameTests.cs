using Clomwright.Numerics.Frames;
using Clomwright.Testing;

namespace Clomwright.Numerics.Tests.Frames;

/// <summary>The frame solver against textbook formulas. Rank analytic throughout; 1e-9 relative: a direct solution in 16 digits of well-conditioned frames.</summary>
public sealed class FrameTests
{
    private const double E = 10e9, G = 0.7e9, L = 3;
    private static readonly FrameSection Pole = FrameSection.Round(0.15);
    private static readonly Elasticity Wood = new(E, G);
    private static readonly double EI = E * Pole.SecondMomentY;

    private static Vector3 Down(double w) => new(0, 0, -w);

    private static FrameSolution Solve(FrameNode[] nodes, FrameMember[] members, params FrameLoad[] loads) =>
        Assert.IsType<FrameOutcome.Stiff>(FrameStiffness.Of(new Frame([.. nodes], [.. members]))).Stiffness.Solve(loads);

    private static void Same(double expected, double actual) =>
        Assert.True(Math.Abs(actual - expected) <= 1e-9 * Math.Max(Math.Abs(expected), 1e-9), $"expected {expected:R}, got {actual:R}");

    private static FrameMember Between(int a, int b) => new(a, b, Pole, Wood);

    // Roark's Formulas for Stress and Strain, table 8.1, case 1a: P L^3/(3 E I), turn P L^2/(2 E I).
    [Fact]
    public void Cantilever_WithTipLoad_BendsAsRoark1a()
    {
        var s = Solve([new(default, Freedom.All), new(new(L, 0, 0))], [Between(0, 1)], new FrameLoad.OnNode(1, Down(1000)));
        Same(-1000 * L * L * L / (3 * EI), s.Movements[1].Force.Z);
        Same(1000 * L * L / (2 * EI), s.Movements[1].Moment.Y);
        Same(1000, s.Reactions[0].Force.Z);
        Same(-1000 * L, s.Reactions[0].Moment.Y);
    }

    // Timoshenko, Strength of Materials I, on the deflection of beams by shear: P L/(k A G) is added.
    [Fact]
    public void Cantilever_WithShear_AddsTheShearSag()
    {
        var section = FrameSection.Round(0.15, shear: true);
        var s = Solve([new(default, Freedom.All), new(new(L, 0, 0))], [new(0, 1, section, Wood)], new FrameLoad.OnNode(1, Down(1000)));
        Same(-1000 * L * L * L / (3 * EI) - 1000 * L / (0.9 * section.Area * G), s.Movements[1].Force.Z);
    }

    // Roark table 8.1 case 2e, uniform load on simple supports: 5 w L^4/(384 E I) at the middle, w L^2/8 there.
    [Fact]
    public void SimpleBeam_UnderUniformLoad_SagsAndBendsAsRoark2e()
    {
        var s = Solve(
            [new(default, Freedom.Displacements | Freedom.AboutX), new(new(L / 2, 0, 0)), new(new(L, 0, 0), Freedom.Y | Freedom.Z)], [Between(0, 1), Between(1, 2)],
            new FrameLoad.Spread(0, Down(2000), Down(2000)), new FrameLoad.Spread(1, Down(2000), Down(2000)));
        Same(-5 * 2000 * Math.Pow(L, 4) / (384 * EI), s.Movements[1].Force.Z);
        Same(2000 * L * L / 8, Math.Abs(s.Members[0].At(1).Moment.Y));
        Same(0, s.Members[0].At(1).Force.Z);
        Same(3000, s.Reactions[2].Force.Z);
    }

    // Roark table 8.1 case 2c, fixed and simply supported: reactions 5/8 and 3/8 of w L, fixing moment w L^2/8. With shear off.
    [Fact]
    public void ProppedCantilever_UnderUniformLoad_SharesFiveToThree()
    {
        var s = Solve([new(default, Freedom.All), new(new(0, L, 0), Freedom.Z)], [Between(0, 1)], new FrameLoad.Spread(0, Down(800), Down(800)));
        Same(5.0 / 8 * 800 * L, s.Reactions[0].Force.Z);
        Same(3.0 / 8 * 800 * L, s.Reactions[1].Force.Z);
        Same(800 * L * L / 8, s.Reactions[0].Moment.X);
    }

    // Roark table 8.1 case 2d, both ends fixed, load rising from nothing: moments w L^2/30 and w L^2/20.
    [Fact]
    public void FixedBeam_UnderRisingLoad_IsHeldByOneThirtiethAndOneTwentieth()
    {
        var s = Solve(
            [new(default, Freedom.All), new(new(L / 3, 0, 0)), new(new(L, 0, 0), Freedom.All)], [Between(0, 1), Between(1, 2)],
            new FrameLoad.Spread(0, default, Down(300)), new FrameLoad.Spread(1, Down(300), Down(900)));
        Same(900 * L * L / 30, Math.Abs(s.Reactions[0].Moment.Y));
        Same(900 * L * L / 20, Math.Abs(s.Reactions[2].Moment.Y));
    }

    // Roark table 8.1 case 1d, both ends fixed, point load at a: M_A = P a b^2/L^2.
    [Fact]
    public void FixedBeam_UnderPointLoad_IsHeldAsRoark1d()
    {
        var s = Solve([new(default, Freedom.All), new(new(L, 0, 0), Freedom.All), new(new(L, 1, 0))], [Between(0, 1), Between(1, 2)], new FrameLoad.Point(0, 0.25, Down(1000)));
        Same(1000 * (L / 4) * Math.Pow(3 * L / 4, 2) / (L * L), Math.Abs(s.Reactions[0].Moment.Y));
        Same(1000 * Math.Pow(L / 4, 2) * (3 * L / 4) / (L * L), Math.Abs(s.Reactions[1].Moment.Y));
    }

    // Kleinlogel, Rigid Frame Formulas, frame 1 (hinged feet), uniform load on the beam: H = w l^2/(4 h (2 k + 3)), k = (I_beam/I_post) h/l.
    [Fact]
    public void HingedPortal_UnderUniformLoad_ThrustsAsKleinlogel()
    {
        const double h = 2.4, l = 4, w = 1500;
        var beam = FrameSection.Round(0.2);
        var hinge = Freedom.Displacements | Freedom.AboutX | Freedom.AboutZ;
        var s = Solve(
            [new(default, hinge), new(new(0, 0, h), Freedom.Y), new(new(l, 0, h), Freedom.Y), new(new(l, 0, 0), hinge)],
            [new(0, 1, Inextensible(Pole), Wood), new(1, 2, Inextensible(beam), Wood), new(2, 3, Inextensible(Pole), Wood)],
            new FrameLoad.Spread(1, Down(w), Down(w)));
        var k = beam.SecondMomentY / Pole.SecondMomentY * h / l;
        // The formula has members that keep their length; an area 1e4 m2 leaves 1e-7 of the thrust.
        Assert.Equal(w * l * l / (4 * h * (2 * k + 3)), s.Reactions[0].Force.X, 1e-6 * w);

        static FrameSection Inextensible(FrameSection s) => s with { Area = 1e4 };
    }

    // Timoshenko and Young, Theory of Structures: a right-angled cantilever in plan turns its first leg: P b^3/3EI + P a^3/3EI + P b^2 a/(G J).
    [Fact]
    public void CrankedCantilever_WithTipLoad_TwistsItsFirstLeg()
    {
        const double a = 2, b = 1.2;
        var s = Solve([new(default, Freedom.All), new(new(a, 0, 0)), new(new(a, b, 0))], [Between(0, 1), Between(1, 2)], new FrameLoad.OnNode(2, Down(700)));
        Same(-700 * (a * a * a / (3 * EI) + b * b * b / (3 * EI) + b * b * a / (G * Pole.Torsion)), s.Movements[2].Force.Z);
        Same(700 * b, Math.Abs(s.Members[0].At(0.5).Moment.X));
    }

    // Statics: a three-legged stand with ball joints, load P at the apex: each leg carries P/(3 sin(slope)).
    [Fact]
    public void Tripod_UnderItsApex_CarriesInCompression()
    {
        var feet = Enumerable.Range(0, 3).Select(i => new FrameNode(new(2 * Math.Cos(2 * Math.PI * i / 3), 2 * Math.Sin(2 * Math.PI * i / 3), 0), Freedom.All));
        var bar = Pole with { SecondMomentY = 1e-12, SecondMomentZ = 1e-12, Torsion = 1e-12 };
        var s = Solve([.. feet, new(new(0, 0, 3))], [.. Enumerable.Range(0, 3).Select(i => new FrameMember(i, 3, bar, Wood))], new FrameLoad.OnNode(3, Down(9000)));
        // Bars as thin as 1e-12 m4 still bend a little: 1e-6 of the force.
        Assert.All(s.Members, m => Assert.Equal(-3000 * Math.Sqrt(13) / 3, m.At(0.5).Force.X, 1e-2));
    }

    // Timoshenko, Strength of Materials II: a ring under two opposite loads closes by P R^3/(E I) (pi/4 - 2/pi), and its moment under a load is P R/pi.
    [Fact]
    public void Ring_UnderOppositeLoads_ClosesAsTimoshenko()
    {
        const int n = 360;
        const double r = 1.5;
        var nodes = Enumerable.Range(0, n).Select(i => new FrameNode(
            new(r * Math.Cos(2 * Math.PI * i / n), 0, r * Math.Sin(2 * Math.PI * i / n)),
            Freedom.Y | Freedom.AboutX | Freedom.AboutZ | (i is n / 4 or 3 * n / 4 ? Freedom.X : 0) | (i == 3 * n / 4 ? Freedom.Z | Freedom.AboutY : 0))).ToArray();
        var thin = Pole with { Area = 1e3 };
        var members = Enumerable.Range(0, n).Select(i => new FrameMember(i, (i + 1) % n, thin, Wood) { Up = new(0, 1, 0) }).ToArray();
        var s = Solve(nodes, members, new FrameLoad.OnNode(n / 4, Down(1000)));
        // A polygon of 360 sides stands for the circle: its sides are shorter by (2 pi/360)^2/24, and that enters some four times: 1e-4.
        var closing = -s.Movements[n / 4].Force.Z;
        Assert.Equal(1000 * r * r * r / EI * (Math.PI / 4 - 2 / Math.PI), closing, 1e-4 * closing);
        Assert.Equal(1000 * r / Math.PI, s.Members[n / 4].Start.Moment.Norm, 1e-3 * 1000 * r / Math.PI);
    }

    // Statics: a hinge in the span of a fixed beam passes no moment; the outer part hangs as a simple span on the tip of a cantilever.
    [Fact]
    public void HingedBeam_PassesShearAndNoMoment()
    {
        var s = Solve(
            [new(default, Freedom.All), new(new(1, 0, 0)), new(new(3, 0, 0), Freedom.Y | Freedom.Z | Freedom.AboutX)],
            [Between(0, 1), Between(1, 2) with { StartReleased = Freedom.AboutY | Freedom.AboutZ }], new FrameLoad.Spread(1, Down(600), Down(600)));
        Same(0, s.Members[1].At(0).Moment.Y);
        Same(600, s.Reactions[2].Force.Z);
        Same(-600, s.Reactions[0].Moment.Y);
        Same(-600 / (3 * EI), s.Movements[1].Force.Z);
    }

    // Statics: a rigid arm e off the axis turns an upward force F into a moment F e.
    [Fact]
    public void RigidArm_OffTheAxis_TurnsForceIntoMoment()
    {
        var s = Solve(
            [new(default, Freedom.All), new(new(L, 0, 0))], [Between(0, 1) with { EndArm = new(0, 0.2, 0) , StartArm = new(0, 0.2, 0) }], new FrameLoad.OnNode(1, new(0, 0, 500)));
        Same(500 * 0.2, Math.Abs(s.Members[0].At(0.3).Moment.X));
        Same(500 * L * L * L / (3 * EI) + 500 * 0.2 * 0.2 * L / (G * Pole.Torsion), s.Movements[1].Force.Z);
        Same(-500, s.Reactions[0].Force.Z);
    }

    [Fact]
    public void LooseFrame_NamesWhereItMoves()
    {
        var loose = Assert.IsType<FrameOutcome.Mechanism>(FrameStiffness.Of(new Frame([new(default, Freedom.Displacements), new(new(L, 0, 0), Freedom.Z)], [Between(0, 1)])));
        Assert.InRange(loose.Node, 0, 1);
        Assert.Equal(new FrameOutcome.BadMember(0), FrameStiffness.Of(new Frame([new(default, Freedom.All), new(default)], [Between(0, 1)])));
    }

    // Rank property: forces and moments of the supports balance every load, on a random space frame.
    [Fact]
    public void Reactions_OfRandomFrames_BalanceTheLoads() => Gen.Select(
        Gen.Select(Gen.Double[0, 0.8], Gen.Double[-3, 3], Gen.Double[-3, 3]).Array[6], Gen.Double[-1, 1].Array[18]).ForAll((points, force) =>
    {
        var nodes = points.Select((p, i) => new FrameNode(new(i + p.Item1, p.Item2, p.Item3), i < 2 ? Freedom.All : Freedom.None)).ToArray();
        var members = Enumerable.Range(0, 5).Select(i => Between(i, i + 1)).Append(Between(0, 3)).Append(Between(1, 5)).ToArray();
        FrameLoad[] loads = [
            .. Enumerable.Range(0, 6).Select(i => new FrameLoad.OnNode(i, new(force[3 * i], force[3 * i + 1], force[3 * i + 2]))),
            new FrameLoad.Spread(2, new(force[0], 0, 1), new(0, force[1], 0), 0.2, 0.7), new FrameLoad.Point(5, 0.3, new(1, 1, force[2]))];
        var s = Solve(nodes, members, loads);
        Vector3 sum = default, turn = default;
        for (var i = 0; i < nodes.Length; i++)
        {
            var at = nodes[i].Position;
            Add(at, s.Reactions[i].Force, s.Reactions[i].Moment);
            Add(at, new(force[3 * i], force[3 * i + 1], force[3 * i + 2]), default);
        }

        var part = nodes[3].Position - nodes[2].Position;
        var length = part.Norm * 0.5;
        Add(nodes[2].Position + 0.2 * part + 1.0 / 3 * 0.5 * part, length / 2 * new Vector3(force[0], 0, 1), default);
        Add(nodes[2].Position + 0.2 * part + 2.0 / 3 * 0.5 * part, length / 2 * new Vector3(0, force[1], 0), default);
        Add(nodes[0].Position + 0.3 * (nodes[3].Position - nodes[0].Position), new(1, 1, force[2]), default);
        Assert.True(sum.Norm < 1e-8 && turn.Norm < 1e-7, $"{sum} {turn}");

        void Add(Vector3 at, Vector3 f, Vector3 m)
        {
            sum += f;
            turn += m + at.Cross(f);
        }
    }, iter: 200);
}
