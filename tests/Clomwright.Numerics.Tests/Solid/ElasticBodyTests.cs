using Clomwright.Numerics.Frames;
using Clomwright.Numerics.Solid;
using Clomwright.Testing;

namespace Clomwright.Numerics.Tests.Solid;

/// <summary>What must hold for any body, whatever its shape, openings, materials and loads.</summary>
public sealed class ElasticBodyTests
{
    private const double Inner = 2.45;

    private static SolidGrid Grid() => Bodies.Ring(Inner, 2.75, 2.4, 48, 8, 2);

    private static IReadOnlyList<NodalLoad> Loads(SolidModel model)
    {
        var weight = Loading.Weight(model, Bodies.Gravity);
        var shake = Loading.Weight(model, new Vector3(0.981, 0, 0));
        var wind = Loading.Pressure(model, CellSide.Outside, cell => model.Grid.Position(cell).J == model.Grid.Through - 1 ? 500 : null);
        var post = Loading.Point(model, 3.3, 2.35, 0.1, new Vector3(100, 0, -5000));
        var plate = Loading.OnTop(model, model.Grid.Up - 1, new GridBox(15.2, 15.5, 0, 0, 0.05, 0.2), new Vector3(0, 300, -4000));
        return [weight, shake, weight + wind, weight + post, 1.2 * weight + plate, weight - 0.5 * shake, wind, post + plate, plate];
    }

    // Rank: analytic. Equilibrium; the tolerance is the stated aim.
    [Fact]
    public void Reactions_equal_loads_and_nodes_are_in_balance()
    {
        foreach (var pushesOnly in new[] { false, true })
        {
            var model = Bodies.House(Grid(), pushesOnly: pushesOnly);
            using var body = new ElasticBody(model);
            foreach (var answer in body.Solve(Loads(model)).Where(answer => answer.IsInEquilibrium))
            {
                var balance = body.Balance(answer);
                Assert.True(balance.ReactionError < 1e-9, $"{balance}");
                Assert.True(balance.Residual < 1e-9, $"{balance}");
                Assert.True(balance.Work > 0);
            }
        }
    }

    // Rank: property.
    [Fact]
    public void Many_loads_together_give_what_each_gives_alone()
    {
        var model = Bodies.House(Grid());
        using var body = new ElasticBody(model);
        var loads = Loads(model);
        var together = body.Solve(loads);
        for (var i = 0; i < loads.Count; i++)
        {
            AssertClose(body.Solve(loads[i]).Displacement, together[i].Displacement, 1e-11);
        }
    }

    // Rank: property. The stated aim is 1e-10; the answers are the same bits as long as the sectors are the same.
    [Fact]
    public void An_opening_moved_about_leaves_no_trace()
    {
        var grid = Bodies.Ring(Inner, 2.75, 2.4, 36, 7, 1);
        var start = Bodies.House(grid);
        using var body = new ElasticBody(start);
        body.FocusOn(7, 14);
        var load = Loading.Weight(start, Bodies.Gravity);
        var before = body.Solve(load);
        var stressBefore = body.SurfaceStress(before);
        var random = new Random(1);
        for (var move = 0; move < Counts.Of(200, 10_000); move++)
        {
            var model = Bodies.House(grid, firstWindow: 3.4 + 1.5 * random.NextDouble(), niche: random.Next(2));
            body.Become(model);
            if (move % 50 == 0)
            {
                body.FocusOn(random.Next(36) - 12, random.Next(12) + 24, 3);
                body.FocusOn(7, 14);
            }

            body.Solve(Loading.Weight(model, Bodies.Gravity));
        }

        body.Become(start);
        var after = body.Solve(load);
        AssertClose(before.Displacement, after.Displacement, 1e-10);
        var stressAfter = body.SurfaceStress(after);
        for (var i = 0; i < grid.Around; i++)
        {
            Assert.Equal(stressBefore.Inside(i, 4) is null, stressAfter.Inside(i, 4) is null);
            Assert.Equal(stressBefore.Inside(i, 4)?.Z ?? 0, stressAfter.Inside(i, 4)?.Z ?? 0, 1e-5);
        }
    }

    // Rank: property.
    [Fact]
    public void A_body_that_followed_equals_one_made_anew()
    {
        var grid = Grid();
        using var body = new ElasticBody(Bodies.House(grid));
        body.FocusOn(9, 19);
        var model = Bodies.House(grid, 4.73);
        body.Become(model);
        var followed = body.Solve(Loading.Weight(model, Bodies.Gravity));
        using var anew = new ElasticBody(model);
        AssertClose(anew.Solve(followed.Load).Displacement, followed.Displacement, 1e-11);
    }

    // Rank: property. Grid lines that move with the opening.
    [Fact]
    public void A_body_follows_a_grid_whose_lines_move()
    {
        SolidModel At(double window)
        {
            var s = GridLines.Fitted(GridLines.Even(0, 2 * Math.PI * Inner, 48), [window, window + 0.9], 4, isClosed: true);
            return Bodies.House(Bodies.Ring(Inner, 2.75, s, GridLines.Even(0, 2.4, 8), 2), window);
        }

        using var body = new ElasticBody(At(4.1));
        body.FocusOn(9, 19);
        var moved = At(4.17);
        body.Become(moved);
        Assert.True(body.LastWork.Fronts > 0);
        var followed = body.Solve(Loading.Weight(moved, Bodies.Gravity));
        using var anew = new ElasticBody(moved);
        AssertClose(anew.Solve(followed.Load).Displacement, followed.Displacement, 1e-11);
    }

    // Rank: analytic. Turning a body and its loads turns its answer; mirroring mirrors it.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Turned_and_mirrored_bodies_have_the_same_stresses(bool mirrored)
    {
        var (c, s) = (Math.Cos(1.1), Math.Sin(1.1));
        Vector3 Moved(Vector3 p)
        {
            var x = mirrored ? -p.X : p.X;
            return new Vector3(c * x - s * p.Y, s * x + c * p.Y, p.Z);
        }

        var model = Bodies.House(Grid());
        var other = Bodies.House(Grid().Moved(Moved));
        using var body = new ElasticBody(model);
        using var otherBody = new ElasticBody(other);
        var shake = new Vector3(0.7, -0.3, -9.81);
        var stress = body.SurfaceStress(body.Solve(Loading.Weight(model, shake)));
        var otherStress = otherBody.SurfaceStress(otherBody.Solve(Loading.Weight(other, Moved(shake))));
        for (var i = 0; i < model.Grid.Around; i++)
        {
            for (var k = 0; k < model.Grid.Up; k++)
            {
                Assert.Equal(stress.Outside(i, k)?.Z ?? 0, otherStress.Outside(i, k)?.Z ?? 0, 1e-4);
                Assert.Equal(stress.Inside(i, k)?.S ?? 0, otherStress.Inside(i, k)?.S ?? 0, 1e-4);
                Assert.Equal(stress.Inside(i, k)?.SZ ?? 0, otherStress.Inside(i, k)?.SZ ?? 0, 1e-4);
            }
        }
    }

    // Rank: property. The memory that a long session holds is what a fresh body holds, a little slack apart.
    [Fact]
    public void Memory_does_not_grow_with_use()
    {
        var grid = Grid();
        var start = Bodies.House(grid);
        using var body = new ElasticBody(start);
        var atFirst = body.Bytes;
        for (var move = 0; move < 20; move++)
        {
            body.FocusOn(2 * move, 2 * move + 9);
            body.Become(Bodies.House(grid, 3.4 + 0.05 * move));
        }

        Assert.InRange(body.Bytes, 1, 1.5 * atFirst);
    }

    [Fact]
    public void A_part_that_floats_is_found_out()
    {
        var grid = Bodies.Box(6, 1, 0.3, 12, 4, 1);
        var cells = SolidCells.Uniform(grid, new CellFill(0));
        var model = Bodies.Solid(grid, SolidSupports.Bed(grid, cells, 1e7, 1e7, false));
        using var body = new ElasticBody(model);
        Assert.Null(body.LooseColumn);
        body.Become(model with { Cells = cells.Without(grid, Region.Of(new GridBox(-1, 7, 0.5, 0.75, -1, 1))) });
        Assert.NotNull(body.LooseColumn);
        Assert.Throws<InvalidOperationException>(() => body.Solve(Loading.None(grid)));
        body.Become(model);
        Assert.Null(body.LooseColumn);
    }

    [Fact]
    public void What_does_not_fit_is_refused()
    {
        var grid = Bodies.Box(6, 1, 0.3, 12, 4, 1);
        var model = Bodies.Solid(grid, new SolidSupports([], [new HeldNode(0, 0)]));
        Assert.Throws<ArgumentException>(() => new ElasticBody(model with { Supports = new SolidSupports([], [new HeldNode(grid.Nodes, 0)]) }));
        Assert.Throws<ArgumentException>(() => new ElasticBody(model with { Cells = SolidCells.Uniform(grid, new CellFill(2)) }));
        Assert.Throws<ArgumentException>(() => new ElasticBody(model with { Grid = grid.Moved(p => new Vector3(p.X, p.Y * (p.X - 3), p.Z)) }));
        Assert.Throws<ArgumentException>(() => Loading.Point(model with { Cells = model.Cells.Without(grid, Region.Of(new GridBox(0, 1, 0, 1, 0, 1))) }, 0.5, 0.5, 0.1, Bodies.Gravity));
        Assert.Throws<ArgumentException>(() => ElasticMaterial.Isotropic(1, 0.5, 1));
        Assert.Throws<ArgumentException>(() => SolidCells.Uniform(grid, new CellFill(0, Stiffness: 0)));
    }

    private static void AssertClose(Displacement expected, Displacement actual, double tolerance)
    {
        var scale = 0.0;
        foreach (var value in expected.Values)
        {
            scale = Math.Max(scale, Math.Abs(value));
        }

        for (var i = 0; i < expected.Values.Length; i++)
        {
            Assert.True(Math.Abs(expected.Values[i] - actual.Values[i]) <= tolerance * scale, $"{i}: {expected.Values[i]} {actual.Values[i]}");
        }
    }
}
