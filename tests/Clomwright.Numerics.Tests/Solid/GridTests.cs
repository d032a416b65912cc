using Clomwright.Numerics.Frames;
using Clomwright.Numerics.Solid;
using Clomwright.Testing;

namespace Clomwright.Numerics.Tests.Solid;

public sealed class GridTests
{
    private static readonly Gen<(bool Closed, int Cells, double[] Edges, int Reach)> Fits =
        from closed in Gen.Bool
        from cells in Gen.Int[6, 60]
        from edges in Gen.Double[-0.2, 1.2].Array[0, 8]
        from reach in Gen.Int[2, 8]
        select (closed, cells, edges, reach);

    // Rank: property.
    [Fact]
    public void Fitted_lines_ascend_and_meet_the_edges_that_can_be_met() =>
        Fits.ForAll(
            c =>
            {
                var lines = GridLines.Fitted(GridLines.Even(0, 1, c.Cells), c.Edges, c.Reach, c.Closed);
                Assert.Equal(c.Cells + 1, lines.Length);
                for (var i = 0; i < c.Cells; i++)
                {
                    Assert.True(lines[i + 1] - lines[i] >= 0.2 / c.Cells, $"cell {i} of {string.Join(' ', lines)}");
                }

                Assert.Equal(1, lines[^1] - lines[0], 1e-12);
                if (c.Edges.Length == 1 && (c.Closed || c.Edges[0] is > 0.1 and < 0.9))
                {
                    var turns = c.Closed ? new[] { -1, 0, 1 } : [0];
                    Assert.Contains(turns, turn => lines.Any(line => Math.Abs(line - c.Edges[0] - turn) < 1e-12));
                }
            },
            iter: Counts.Of(300, 5000));

    // Rank: analytic.
    [Fact]
    public void A_ring_of_many_cells_has_the_volume_of_a_ring()
    {
        var grid = Bodies.Ring(2, 2.3, 2.4, 360, 3, 2);
        var volume = Enumerable.Range(0, grid.Cells).Sum(cell => grid.Volume(cell));

        // A polygon of 360 sides is smaller than its circle by 2/3 (pi/360)^2.
        Assert.Equal(Math.PI * (2.3 * 2.3 - 4) * 2.4 * (1 - 2.0 / 3 * Math.Pow(Math.PI / 360, 2)), volume, 1e-6);
        Assert.Empty(grid.FoldedCells());
    }

    // Rank: analytic. Whatever its place, a void takes its own volume away.
    [Fact]
    public void Voids_take_their_own_volume_away() =>
        Gen.Select(Gen.Double[-3, 20], Gen.Double[0.1, 2], Gen.Double[0, 2], Gen.Double[0.1, 0.4], Gen.Bool).ForAll(
            (s, width, z, height, round) =>
            {
                var grid = Bodies.Ring(2, 2.3, 2.4, 40, 12, 3);
                var region = round
                    ? Region.Between(s, s + width, _ => z, x => z + height * Math.Sqrt(Math.Max(0, 1 - Math.Pow(2 * (x - s) / width - 1, 2))), 0, 0.15, 400)
                    : Region.Of(new GridBox(s, s + width, z, z + height, 0, 0.15));
                var cells = SolidCells.Uniform(grid, new CellFill(0)).Without(grid, region);
                var taken = Enumerable.Range(0, grid.Cells).Sum(cell => (1 - cells[cell].Share) * grid.S[1] * grid.Z[1] * grid.T[1]);
                var expected = (round ? Math.PI / 4 : 1) * width * height * 0.15;
                Assert.Equal(expected, taken, (round ? 2e-3 : 1e-9) * expected);
            },
            iter: Counts.Of(30, 300));

    // Rank: analytic. A pressure all round a closed ring pushes nowhere; on a box it pushes with its area.
    [Fact]
    public void Pressure_adds_up_to_area_times_pressure()
    {
        var ring = Bodies.Solid(Bodies.Ring(2, 2.3, 2.4, 36, 3, 2), new SolidSupports([], []));
        Assert.True(Loading.Pressure(ring, CellSide.Outside, cell => ring.Grid.Position(cell).J == 1 ? 1000 : null).Resultant.Norm < 1e-9);
        var box = Bodies.Solid(Bodies.Box(3, 2, 0.5, 5, 4, 2), new SolidSupports([], []));
        foreach (var (side, force) in new[]
        {
            (CellSide.Inside, new Vector3(0, 6, 0)), (CellSide.Outside, new Vector3(0, -6, 0)), (CellSide.Start, new Vector3(1, 0, 0)),
            (CellSide.End, new Vector3(-1, 0, 0)), (CellSide.Bottom, new Vector3(0, 0, 1.5)), (CellSide.Top, new Vector3(0, 0, -1.5)),
        })
        {
            var load = Loading.Pressure(box, side, cell =>
            {
                var (i, k, j) = box.Grid.Position(cell);
                return side switch
                {
                    CellSide.Inside => j == 0, CellSide.Outside => j == 1, CellSide.Start => i == 0, CellSide.End => i == 4, CellSide.Bottom => k == 0, _ => k == 3,
                } ? 1 : null;
            });
            Assert.True((load.Resultant - force).Norm < 1e-12, $"{side} {load.Resultant}");
        }
    }

    // Rank: analytic. A force acts where it is put: its moment says so.
    [Fact]
    public void Loads_act_where_they_are_put()
    {
        var model = Bodies.Solid(Bodies.Box(3, 2, 0.5, 5, 4, 2), new SolidSupports([], []));
        Vector3 Moment(NodalLoad load) => Enumerable.Range(0, model.Grid.Nodes)
            .Aggregate(Vector3.Zero, (sum, node) => sum + model.Grid.Point(node).Cross(load.At(node)));
        var (force, place) = (new Vector3(3, -4, 5), new Vector3(1.234, 0.111, 1.9));
        Assert.True((Moment(Loading.Point(model, place.X, place.Z, place.Y, force)) - place.Cross(force)).Norm < 1e-12);
        var box = new GridBox(0.35, 1.75, 0, 0, 0.1, 0.3);
        Assert.True((Moment(Loading.OnTop(model, 3, box, force)) - new Vector3(1.05, 0.2, 2).Cross(force)).Norm < 1e-12);
        Assert.True((Moment(Loading.Weight(model, new Vector3(0, 0, -1))) - new Vector3(1.5, 0.25, 1).Cross(new Vector3(0, 0, -3 * Bodies.Density))).Norm < 1e-9);
    }

    // Rank: independent. An opening with edges half a cell off the grid, against a grid twice as fine whose lines meet the edges. Of the
    // tolerance about 2 % is what a coarse grid costs anyhow; edges snapped to the nearest line are several times worse.
    [Fact]
    public void Cut_cells_stand_in_for_edges_off_the_grid()
    {
        double Sag(int refine, double shift)
        {
            var grid = Bodies.Box(3, 1.8, 0.3, 30 * refine, 18 * refine, 1);
            var cells = SolidCells.Uniform(grid, new CellFill(0)).Without(grid, Region.Of(new GridBox(1 - shift, 2 + shift, 0.5, 1.4 + shift, -1, 1)));
            var held = Bodies.NodesWhere(grid, p => p.Z < 1e-9).SelectMany(n => new[] { new HeldNode(n, 0), new HeldNode(n, 1), new HeldNode(n, 2) });
            var model = Bodies.Solid(grid, Bodies.Held(held)) with { Cells = cells };
            using var body = new ElasticBody(model);
            return body.Solve(Loading.Weight(model, Bodies.Gravity)).Displacement.At(grid, 1.5, 1.8, 0.15).Z;
        }

        var exact = Sag(2, 0.05);
        var cut = Math.Abs(Sag(1, 0.05) / exact - 1);
        Assert.InRange(cut, 0, 0.03);
        Assert.True(3 * cut < Math.Abs(Sag(1, 0) / exact - 1));
        Assert.True(3 * cut < Math.Abs(Sag(1, 0.1) / exact - 1));
    }

    [Fact]
    public void Lines_that_do_not_ascend_are_refused() =>
        Assert.Throws<ArgumentException>(() => SolidGrid.Map([0, 1, 1], [0, 1], [0, 1], false, (s, z, t) => new Vector3(s, t, z)));
}
