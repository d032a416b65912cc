using System.Collections.Immutable;
using Clomwright.Numerics.Cracking;
using Clomwright.Numerics.Frames;
using Clomwright.Numerics.Solid;
using Clomwright.Numerics.Tests.Solid;

namespace Clomwright.Numerics.Tests.Cracking;

/// <summary>Bodies that crack.</summary>
public sealed class LowTensionBodyTests(ITestOutputHelper output)
{
    private const double Density = 1750;
    private const double Gravity = 9.80665;

    /// <summary>A strip of free wall, held at its foot.</summary>
    private static SolidModel Wall(double height, double thickness, int up, int through, double modulus)
    {
        var grid = SolidGrid.Map(GridLines.Even(0, 0.2, 1), GridLines.Even(0, height, up), GridLines.Even(0, thickness, through), false, (s, z, t) => new Vector3(s, t, z));
        var foot = Enumerable.Range(0, 2).SelectMany(i => Enumerable.Range(0, through + 1).SelectMany(j => Enumerable.Range(0, 3).Select(axis => new HeldNode(grid.Node(i, 0, j), axis))));
        return new SolidModel(grid, [ElasticMaterial.Isotropic(modulus, 0.15, Density)], SolidCells.Uniform(grid, new CellFill(0)), new SolidSupports([], foot));
    }

    /// <summary>Independent: with strengths far out of reach a house moves as the elastic body does, modes, cut cells and wood included.</summary>
    [Fact]
    public void A_strong_body_is_elastic()
    {
        var grid = SolidGrid.Map(GridLines.Fitted(GridLines.Even(0, 2 * Math.PI * 2.45, 40), [4.1, 5.0], 4, isClosed: true), GridLines.Even(0, 2.4, 8), GridLines.Even(0, 0.3, 2), true, (s, z, t) =>
            Bodies.OnCircle(2.45 + t, s / 2.45, z));
        var model = Bodies.House(grid);
        var strong = model.Materials.Select(m => m.IsIsotropic ? new LowTension(Young(m), Poisson(m), 1e12, 1e12, 1e-4) : null).ToImmutableArray();
        var load = Loading.Weight(model, new Vector3(1, 0.4, -9.8));
        using var elastic = new ElasticBody(model);
        using var cracking = new LowTensionBody(model, strong);
        var (expected, actual) = (elastic.Solve(load).Displacement.Values.ToArray(), cracking.Solve(load));
        Assert.True(actual.IsInEquilibrium);
        Assert.InRange(actual.Steps, 1, 2);
        for (var i = 0; i < expected.Length; i++)
        {
            Assert.Equal(expected[i], actual.Displacement.Values[i], 1e-9 * expected.Max(Math.Abs));
        }
    }

    /// <summary>
    /// Analytic: the push at which the foot of a free wall is plastic through and through, f_t over one part of its thickness and f_c over the other,
    /// c = (W/b + f_t t)/(f_c + f_t), M = f_c c (t - c)/2 + f_t (t - c) c/2, and l = 2M/(W h). The model falls short of it, as its foot must still stand: by 1 to 6 % with six cells.
    /// </summary>
    [Theory]
    [InlineData(2e3)]
    [InlineData(10e3)]
    public void A_free_wall_falls_at_its_plastic_moment(double tension)
    {
        const double height = 2.4, thickness = 0.3, pressure = 1e6;
        var model = Wall(height, thickness, 24, 6, 2e8);
        ImmutableArray<LowTension?> laws = [new LowTension(2e8, 0.15, tension, pressure, 1e-4)];
        var (dead, live) = (Loading.Weight(model, new Vector3(0, 0, -Gravity)), Loading.Weight(model, new Vector3(0, Gravity, 0)));
        var pushed = Pushover.Of(model, laws, dead, live, 0.02, 0.3, stop: TestContext.Current.CancellationToken);
        var weight = Density * Gravity * thickness * height;
        var zone = (weight + tension * thickness) / (pressure + tension);
        var moment = (pressure + tension) * zone * (thickness - zone) / 2;
        var expected = 2 * moment / (weight * height);
        foreach (var step in pushed.Steps)
        {
            output.WriteLine($"{step.Factor:F4}: drift {1000 * step.Drift:F3} mm, halved {1000 * step.DriftHalved:F3}, {step.Steps} steps, {step.State.Cracks.Count(c => c.Cracked > 0)} cells cracked");
        }

        output.WriteLine($"limit {pushed.Limit:F4}, none at {pushed.Beyond:F4}, plastic {expected:F4}");
        Assert.NotNull(pushed.Beyond);
        Assert.InRange(pushed.Limit, 0.92 * expected, 1.02 * expected);
        Assert.All(pushed.Steps.Zip(pushed.Steps.Skip(1)), pair => Assert.True(pair.First.Drift < pair.Second.Drift));
    }

    /// <summary>Property: the stresses of a cracked state balance its load: pulled a little either way the energy rises.</summary>
    [Fact]
    public void A_cracked_state_is_the_one_of_least_energy()
    {
        var model = Wall(2.4, 0.3, 16, 4, 2e8);
        ImmutableArray<LowTension?> laws = [new LowTension(2e8, 0.15, 2e3, 1e6, 1e-4)];
        var load = Loading.Weight(model, new Vector3(0, 0.1 * Gravity, -Gravity));
        using var once = new LowTensionBody(model, laws);
        using var byWay = new LowTensionBody(model, laws, threads: 1);
        var straight = once.Solve(load);
        byWay.Solve(Loading.Weight(model, new Vector3(0, -0.05 * Gravity, -Gravity)));
        var around = byWay.Solve(load);
        output.WriteLine($"{straight.Steps} and {around.Steps} steps, left {straight.Unbalanced:E1}, {around.Unbalanced:E1}");
        Assert.True(straight.IsInEquilibrium && around.IsInEquilibrium);
        Assert.Contains(straight.Cracks, c => c.Cracked > 0);

        // No memory: whichever way it was come to, the state is the same but for what is left over.
        var size = straight.Displacement.Values.ToArray().Max(Math.Abs);
        for (var i = 0; i < straight.Displacement.Values.Length; i++)
        {
            Assert.Equal(straight.Displacement.Values[i], around.Displacement.Values[i], 1e-3 * size);
        }
    }

    /// <summary>C_11 = E (1 - nu)/((1 + nu)(1 - 2 nu)), C_12 = E nu/((1 + nu)(1 - 2 nu)).</summary>
    private static double Poisson(ElasticMaterial m) => m.Stiffness[1] / (m.Stiffness[0] + m.Stiffness[1]);

    private static double Young(ElasticMaterial m) => 2 * m.Stiffness[21] * (1 + Poisson(m));
}
