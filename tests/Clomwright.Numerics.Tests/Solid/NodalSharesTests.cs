using Clomwright.Numerics.Frames;
using Clomwright.Numerics.Solid;

namespace Clomwright.Numerics.Tests.Solid;

/// <summary>Loads from shares that are kept against loads that are integrated anew: the general way over any side of any cell.</summary>
public class NodalSharesTests
{
    private static readonly Vector3 Plaster = new(3, -2, -500);

    // Rank: independent. The same forces by Gauss points of each face, one by one.
    [Fact]
    public void Kept_shares_load_a_body_as_its_faces_and_volumes_do_and_follow_what_is_cut_out_of_it()
    {
        var grid = Bodies.Ring(2, 2.4, 2.4, 60, 12, 2);
        var shares = new NodalShares(grid);
        foreach (var window in new[] { 4.1, 4.13, 4.3, 4.1 })
        {
            var model = Bodies.House(grid, window);
            foreach (var (side, layer) in new[] { (CellSide.Inside, 0), (CellSide.Outside, 1) })
            {
                int[] cells = [.. Enumerable.Range(0, grid.Cells).Where(cell => grid.Position(cell).J == layer && cell % 3 != 0)];
                var taken = cells.ToHashSet();
                double Pressure(int cell) => 100 + cell;
                Same(Loading.Pressure(model, side, cell => taken.Contains(cell) ? Pressure(cell) : null), Loading.Pressure(model, shares, side, cells, Pressure));
                Same(Loading.Traction(model, side, cell => taken.Contains(cell) ? (_, _) => Plaster : null), Loading.Traction(model, shares, side, cells, Plaster));
            }

            var weight = Loading.Inertia(grid, Loading.Masses(model, shares), _ => Bodies.Gravity);
            Same(Loading.Weight(model, Bodies.Gravity), weight);
            var volumes = Enumerable.Range(0, grid.Cells).Where(cell => model.Cells[cell].IsSolid)
                .Sum(cell => model.Materials[model.Cells[cell].Material].Density * grid.Volume(cell, model.Cells[cell].Cut));
            Assert.Equal(volumes * Bodies.Gravity.Z, weight.Resultant.Z, 1e-9 * volumes);
        }
    }

    [Fact]
    public void Shares_of_another_grid_are_refused() =>
        Assert.Throws<ArgumentException>(() => Loading.Masses(Bodies.House(Bodies.Ring(2, 2.4, 2.4, 60, 12, 2)), new NodalShares(Bodies.Ring(2, 2.4, 2.4, 60, 12, 2))));

    private static void Same(NodalLoad expected, NodalLoad found)
    {
        var size = expected.Forces.ToArray().Max(Math.Abs);
        Assert.True(size > 0);
        for (var i = 0; i < expected.Forces.Length; i++)
        {
            Assert.Equal(expected.Forces[i], found.Forces[i], 1e-12 * size);
        }
    }
}
