using Clomwright.Numerics.Frames;
using Clomwright.Numerics.Solid;

namespace Clomwright.Numerics.Tests.Solid;

/// <summary>Stresses in the middle of cells, inertia from place to place, and springs that change their kind.</summary>
public sealed class CellStressTests
{
    // Rank analytic: rho g (H - z) in a column under its own weight without sideways swelling. 1e-9: the element holds a stress that grows in a straight line exactly in its middle.
    [Fact]
    public void Column_is_pressed_by_what_stands_above()
    {
        var grid = Bodies.Box(0.4, 2.0, 0.3, 2, 10, 2);
        var bed = SolidSupports.Bed(grid, SolidCells.Uniform(grid, new CellFill(0)), 1e9, 1e9, pushesOnly: false);
        var model = Bodies.Solid(grid, bed, ElasticMaterial.Isotropic(Bodies.Modulus, 0, Bodies.Density));
        using var body = new ElasticBody(model);
        var stress = body.CellStresses([body.Solve(Loading.Weight(model, Bodies.Gravity))])[0];
        for (var cell = 0; cell < grid.Cells; cell++)
        {
            var middle = (grid.Z[grid.Position(cell).K] + grid.Z[grid.Position(cell).K + 1]) / 2;
            Assert.Equal(-Bodies.Density * 9.80665 * (2.0 - middle), stress[cell]!.Value.Z, 1e-9 * Bodies.Density * 9.80665 * 2);
        }
    }

    // Rank property: in the middle of a whole cell it is the stress there; in an empty one there is none; a cut cell is read in the middle of what is left.
    [Fact]
    public void Cells_are_read_in_the_middle_of_what_is_left()
    {
        var model = Bodies.House(Bodies.Ring(2.45, 2.75, 2.4, 48, 8, 2));
        using var body = new ElasticBody(model);
        var answer = body.Solve(Loading.Weight(model, Bodies.Gravity));
        var stress = body.CellStresses([answer])[0];
        for (var cell = 0; cell < model.Grid.Cells; cell++)
        {
            var (i, k, j) = model.Grid.Position(cell);
            var at = model.Cells[cell].Cut?.Middle ?? Vector3.Zero;
            double Along(System.Collections.Immutable.ImmutableArray<double> lines, int n, double x) => (lines[n] + lines[n + 1]) / 2 + x * (lines[n + 1] - lines[n]) / 2;
            Assert.Equal(model.Cells[cell].IsSolid, stress[cell] is not null);
            if (stress[cell] is { } there && Math.Max(Math.Abs(at.X), Math.Max(Math.Abs(at.Y), Math.Abs(at.Z))) < 1)
            {
                Assert.Equal(body.StressAt(answer, Along(model.Grid.S, i, at.X), Along(model.Grid.Z, k, at.Y), Along(model.Grid.T, j, at.Z)).Z, there.Z, 1e-6);
            }
        }
    }

    // Rank analytic: an acceleration that grows from the foot up, on a box: m a H/2 in all.
    [Fact]
    public void Inertia_follows_its_acceleration()
    {
        var grid = Bodies.Box(1, 2, 0.5, 4, 8, 2);
        var model = Bodies.Solid(grid, new SolidSupports([], []));
        var load = Loading.Inertia(model, p => new Vector3(p.Z, 0, 0));
        Assert.Equal(Bodies.Density * 1 * 2 * 0.5 * 1, load.Resultant.X, 1e-9);
    }

    // Rank property: springs that only push, put in the place of springs that hold both ways, let go as if they had been there from the start.
    [Fact]
    public void Springs_may_change_their_kind()
    {
        var grid = Bodies.Ring(2.45, 2.75, 2.4, 36, 6, 1);
        var (both, push) = (Bodies.House(grid), Bodies.House(grid, pushesOnly: true));
        using var changed = new ElasticBody(both);
        var load = Loading.Weight(both, new Vector3(4, 0, -5));
        var held = changed.Solve(load);
        changed.Become(push);
        using var fresh = new ElasticBody(push);
        var (a, b) = (changed.Solve(load), fresh.Solve(load));
        Assert.Empty(held.Lifted);
        Assert.NotEmpty(a.Lifted);
        Assert.Equal(b.Lifted, a.Lifted);
        Assert.Equal(b.Displacement.Values.ToArray(), a.Displacement.Values.ToArray());
    }
}
