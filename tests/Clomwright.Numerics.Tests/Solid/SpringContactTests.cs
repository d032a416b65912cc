using Clomwright.Numerics.Frames;
using Clomwright.Numerics.Solid;

namespace Clomwright.Numerics.Tests.Solid;

/// <summary>Bodies on a bed that can only push.</summary>
public sealed class SpringContactTests
{
    private const double Width = 1;
    private const double Bed = 20e6;

    // Rank: analytic. A stiff block on a bed without tension: beyond the middle third pressure is a triangle over 3 (b/2 - e), its peak
    // 2 N / (3 (b/2 - e)) for each width (any text on footings). Peak read at the last spring, which stands for half a cell.
    [Theory]
    [InlineData(0.10)]
    [InlineData(0.25)]
    [InlineData(0.35)]
    public void A_stiff_block_lifts_off_beyond_the_middle_third(double eccentricity)
    {
        var model = Block();
        using var body = new ElasticBody(model);
        var answer = body.Solve(Push(model, eccentricity));
        Assert.True(answer.IsInEquilibrium);
        Assert.True(body.Balance(answer).ReactionError < 1e-9);

        var springs = model.Supports.Springs;
        var touching = Enumerable.Range(0, springs.Length).Where(i => springs[i].PushesOnly && !answer.Lifted.Contains(i)).ToList();
        var contactLength = Width - touching.Min(i => model.Grid.Point(springs[i].Node).X);
        var expected = eccentricity <= Width / 6 ? Width : 3 * (Width / 2 - eccentricity);
        var cell = Width / model.Grid.Around;
        Assert.InRange(contactLength, expected - 1.01 * cell, expected + 0.51 * cell);
        var peak = -Bed * answer.Displacement.At(model.Grid.Node(model.Grid.Around, 0, 0)).Z;
        var pressure = eccentricity <= Width / 6 ? 1000 / (Width * 0.3) * (1 + 6 * eccentricity / Width) : 2 * 1000 / (expected * 0.3);
        Assert.Equal(1, peak / pressure, 0.02);
    }

    // Rank: analytic. Beyond the edge nothing balances the load.
    [Fact]
    public void A_block_pushed_over_its_edge_is_not_in_equilibrium()
    {
        var model = Block();
        using var body = new ElasticBody(model);
        Assert.False(body.Solve(Push(model, 0.55)).IsInEquilibrium);
        Assert.True(body.Solve(Push(model, 0.2)).IsInEquilibrium);
    }

    // Rank: independent. The same body with the lifted springs left out gives the same answer, and the signs are right at every spring.
    [Fact]
    public void Springs_that_let_go_might_as_well_not_be_there()
    {
        var grid = Bodies.Ring(2.45, 2.75, 2.4, 48, 8, 2);
        var model = Bodies.House(grid, pushesOnly: true);
        using var body = new ElasticBody(model);
        var load = Loading.Weight(model, new Vector3(5.5, 1, -9.81)) + Loading.Point(model, 3.2, 2.3, 0.1, new Vector3(0, 0, 2000));
        var answer = body.Solve([load, load])[1];
        Assert.True(answer.IsInEquilibrium);
        Assert.NotEmpty(answer.Lifted);
        var springs = model.Supports.Springs;
        for (var i = 0; i < springs.Length; i++)
        {
            if (springs[i].PushesOnly)
            {
                Assert.Equal(answer.Lifted.Contains(i), answer.Displacement.At(springs[i].Node).Z > 0);
            }
        }

        var without = new SolidSupports(springs.Where((_, i) => !answer.Lifted.Contains(i)).Select(spring => spring with { PushesOnly = false }), []);
        using var other = new ElasticBody(model with { Supports = without });
        var expected = other.Solve(load).Displacement;
        for (var node = 0; node < grid.Nodes; node++)
        {
            Assert.True((expected.At(node) - answer.Displacement.At(node)).Norm < 1e-9 * expected.At(grid.Node(0, 8, 0)).Norm + 1e-15);
        }
    }

    // Rank: analytic. A bed whose feet have all sunk alike lowers the body by as much and strains nothing.
    [Fact]
    public void A_bed_that_sinks_takes_the_body_with_it()
    {
        var model = Block();
        var sunk = new SolidSupports(model.Supports.Springs.Select(spring => spring.Axis == 2 ? spring with { Settlement = -0.01 } : spring), []);
        using var body = new ElasticBody(model);
        using var lowered = new ElasticBody(model with { Supports = sunk });
        var load = Push(model, 0.3);
        var (before, after) = (body.Solve(load), lowered.Solve(load));
        for (var node = 0; node < model.Grid.Nodes; node++)
        {
            Assert.True((after.Displacement.At(node) - before.Displacement.At(node) - new Vector3(0, 0, -0.01)).Norm < 1e-11);
        }
    }

    private static SolidModel Block()
    {
        var grid = Bodies.Box(Width, 1, 0.3, 20, 6, 1);
        var cells = SolidCells.Uniform(grid, new CellFill(0));
        return Bodies.Solid(grid, SolidSupports.Bed(grid, cells, Bed, Bed, pushesOnly: true), ElasticMaterial.Isotropic(1e10, 0, 0));
    }

    /// <summary>1 kN down in the middle and a couple that moves it off the middle.</summary>
    private static NodalLoad Push(SolidModel model, double eccentricity) =>
        Loading.Point(model, 0.5, 0.99, 0.15, new Vector3(0, 0, -1000))
        + Loading.Point(model, 0.25, 0.99, 0.15, new Vector3(0, 0, 2000 * eccentricity))
        + Loading.Point(model, 0.75, 0.99, 0.15, new Vector3(0, 0, -2000 * eccentricity));
}
