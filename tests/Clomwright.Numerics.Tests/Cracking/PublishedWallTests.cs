using System.Collections.Immutable;
using Clomwright.Numerics.Cracking;
using Clomwright.Numerics.Frames;
using Clomwright.Numerics.RigidBlocks;
using Clomwright.Numerics.Solid;
using Clomwright.Numerics.Tests.RigidBlocks;
using Clomwright.Numerics.Tests.Solid;
using Clomwright.Testing;

namespace Clomwright.Numerics.Tests.Cracking;

/// <summary>
/// What was published about walls of earth, foretold. None of them is a measured panel of cob in its plane, so none of this validates cob;
/// docs/measured/2026-11-26-published-walls.md ranks them, with what could not be foretold and why.
/// </summary>
public sealed class PublishedWallTests(ITestOutputHelper output)
{
    private const double Gravity = 9.80665;

    /// <summary>
    /// Published, from memory: Frocht 1931 for a square plate pressed along its diagonal, as RILEM LUM B6 reads it: 0.5 P/A of tension and 1.62 P/A of pressure in its
    /// middle, A one side by the thickness. That is what turns the tests of cob wallets along their diagonal (BAM, Miccoli and others 2014: shear about 0.50 MPa, from
    /// memory) into a tension of about 0.35 MPa. The load of a real shoe is spread over some eighth of a side; the readings differ by a few percent for it.
    /// </summary>
    [Fact]
    public void A_panel_pressed_along_its_diagonal_is_pulled_across_it()
    {
        const double side = 0.42, thickness = 0.115, force = 34e3;
        var half = side / Math.Sqrt(2);
        var grid = SolidGrid.Map(GridLines.Even(0, side, 32), GridLines.Even(0, side, 32), GridLines.Even(0, thickness, 1), false,
            (s, z, t) => new Vector3((s - z) / Math.Sqrt(2), t, (s + z) / Math.Sqrt(2)));
        var held = Bodies.NodesWhere(grid, p => p.Z < side / 10).SelectMany(node => new[] { 0, 1, 2 }.Select(axis => new HeldNode(node, axis)));
        var model = new SolidModel(grid, [ElasticMaterial.Isotropic(650e6, 0.15, 0)], SolidCells.Uniform(grid, new CellFill(0)), new SolidSupports([], held));
        var shoe = Bodies.NodesWhere(grid, p => p.Z > 2 * half - side / 10).ToArray();
        var load = shoe.Select(node => grid.Point(node)).Aggregate(
            Loading.None(grid), (sum, p) => sum + Loading.Point(model, Math.Min((p.Z + p.X) / Math.Sqrt(2), side), Math.Min((p.Z - p.X) / Math.Sqrt(2), side), p.Y, new Vector3(0, 0, -force / shoe.Length)));
        using var body = new ElasticBody(model);
        var (middle, near) = (side / 2, side / 32);
        var stress = body.Average(body.Solve(load), new GridBox(middle - near, middle + near, middle - near, middle + near, 0, thickness))!.Value.Stress;
        var (mean, apart) = ((stress.S + stress.Z) / 2, Math.Sqrt((stress.S - stress.Z) * (stress.S - stress.Z) / 4 + stress.SZ * stress.SZ));
        var (pull, press, unit) = (mean + apart, mean - apart, force / (side * thickness));
        output.WriteLine($"tension {pull / unit:F3} P/A, pressure {press / unit:F3} P/A; {pull / 1e6:F3} MPa at {force / 1e3:F0} kN");
        Assert.InRange(pull / unit, 0.45, 0.55);
        Assert.InRange(press / unit, -1.75, -1.50);
    }

    /// <summary>
    /// From memory (so it proves nothing alone): an I-shaped wall of adobe pushed to and fro in Lima (Blondet and others 2005, Tarque and others), web 3.06 x 1.93 x 0.30 m
    /// with a window in its middle, flanges of 2.48 m, some 16 kN of beam on top; about 38 to 40 kN at its peak. Their fitted numbers: E 230 MPa, nu 0.2,
    /// f_t 40 kPa, f_c 0.3 to 0.45 MPa. The window's size is assumed, 0.9 x 0.9 m. Our law keeps its tension however wide a crack gapes, theirs softens: with all of the tension we must
    /// come out above what was measured, with next to none below. Seen: 68 and 18 kN, with some 36 kN at the 2 mm at which cracks were seen.
    /// </summary>
    [Theory]
    [InlineData(40e3, 1.0, 2.5)]
    [InlineData(2e3, 0.2, 1.0)]
    public void An_adobe_wall_with_a_window_pushed_in_its_plane(double tension, double least, double most)
    {
        const double web = 3.06, flange = 2.48, thickness = 0.30, height = 1.93, beam = 0.2, weight = 16e3, measured = 39e3;
        var (from, to) = ((flange - thickness) / 2, (flange + thickness) / 2);
        double[] s = [0, thickness, 0.69, 1.08, 1.53, 1.98, 2.37, web - thickness, web];
        double[] t = [0, from / 2, from, flange / 2, to, (to + flange) / 2, flange];
        double[] z = [0, 0.25, 0.5, 0.8, 1.1, 1.4, 1.67, height, height + beam];
        var grid = SolidGrid.Map(s, z, t, false, (a, up, b) => new Vector3(a, b, up));
        var solid = (2 * flange + web - 2 * thickness) * thickness;
        var cells = SolidCells.Uniform(grid, new CellFill(0)).With(grid, Region.Of(new GridBox(0, web, height, height + beam, 0, flange)), new CellFill(1))
            .Without(grid, Region.Of(new GridBox(thickness, web - thickness, 0, height + beam, 0, from)))
            .Without(grid, Region.Of(new GridBox(thickness, web - thickness, 0, height + beam, to, flange)))
            .Without(grid, Region.Of(new GridBox(1.08, 1.98, 0.5, 1.4, from, to)));
        var foot = Bodies.NodesWhere(grid, p => p.Z == 0).SelectMany(node => new[] { 0, 1, 2 }.Select(axis => new HeldNode(node, axis)));
        var model = new SolidModel(
            grid, [ElasticMaterial.Isotropic(230e6, 0.2, 1700), ElasticMaterial.Isotropic(20e9, 0.2, weight / Gravity / (solid * beam))], cells, new SolidSupports([], foot));
        ImmutableArray<LowTension?> laws = [new LowTension(230e6, 0.2, tension, 0.45e6, 1e-4), null];
        var dead = Loading.Weight(model, new Vector3(0, 0, -Gravity));
        var push = new[] { 0.1, 0.3, 0.5, 0.7, 0.9 }.Aggregate(Loading.None(grid), (sum, part) =>
            sum + Loading.Point(model, thickness / 2, height + beam / 2, part * flange, new Vector3(measured / 5, 0, 0)));
        var pushed = Pushover.Of(model, laws, dead, push, 0.2, 4, stop: TestContext.Current.CancellationToken);
        foreach (var step in pushed.Steps)
        {
            output.WriteLine($"{step.Factor * measured / 1e3:F1} kN: drift {1e3 * step.Drift:F2} mm, {step.State.Cracks.Count(c => c.Cracked > 0)} cells cracked");
        }

        output.WriteLine($"none at {pushed.Beyond * measured / 1e3:F1} kN; measured {measured / 1e3:F0}");
        Assert.NotNull(pushed.Beyond);
        Assert.InRange(pushed.Limit, least, most);
    }

    /// <summary>
    /// Seen in the letters of those who built it (coblist, 2004 and 2008): a round model of cob, 6 ft wide and 5 ft high, without a stem, shaken in Vancouver by a record
    /// of magnitude 7.4 with small cracks only and then with 2 g, when it came apart at door corners and lift joints, rocked, and stood. Its thickness is not told: 6 in are
    /// assumed, as half of a house's 12. As blocks it falls, held statically, well below 2 g, and sliding joints with it; that it rocked and stood is what a static load cannot tell.
    /// </summary>
    [Theory]
    [InlineData(0.6, 5e3)]
    [InlineData(0.6, 20e3)]
    [InlineData(0.4, 20e3)]
    public void A_small_round_model_on_a_shaking_table(double friction, double tension)
    {
        const double radius = 0.915 - 0.15 / 2, height = 1.52, thickness = 0.15;
        var sheet = Stacks.Ring(radius, height, thickness, 24, 6, (i, k) => !(i is 0 or 1 && k < 4) && !(i is 12 && k is 2 or 3), _ => new JointStrength(friction, tension), new Vector3(0, 1, 0));
        var answer = LimitLoad.Of(sheet, stop: TestContext.Current.CancellationToken);
        output.WriteLine($"friction {friction}, tension {tension / 1e3} kPa: {answer.StaticFactor:F3} to {answer.KinematicFactor:F3} of its weight");
        Assert.Equal(LimitLoadEnd.Found, answer.End);
        Assert.InRange(answer.StaticFactor, thickness / height, 2);
    }
}
