using Clomwright.Numerics.Frames;
using Clomwright.Numerics.Solid;

namespace Clomwright.Numerics.Tests.Solid;

/// <summary>Bodies that the tests of this folder share.</summary>
internal static class Bodies
{
    public const double Modulus = 200e6;
    public const double Poisson = 0.2;
    public const double Density = 1600;

    public static readonly ElasticMaterial Earth = ElasticMaterial.Isotropic(Modulus, Poisson, Density);

    public static readonly ElasticMaterial Wood = ElasticMaterial.Orthotropic(
        new OrthotropicModuli(10e9, 0.5e9, 0.6e9, 0.35, 0.3, 0.4, 0.6e9, 0.05e9, 0.7e9), 500);

    /// <summary>A box with x along s, y along t, z up.</summary>
    public static SolidGrid Box(double length, double height, double depth, int ns, int nz, int nt) => SolidGrid.Map(
        GridLines.Even(0, length, ns), GridLines.Even(0, height, nz), GridLines.Even(0, depth, nt), false, (s, z, t) => new Vector3(s, t, z));

    /// <summary>A closed ring; s is the arc on the inner face, clockwise from the y axis, t the distance outward from it.</summary>
    public static SolidGrid Ring(double inner, double outer, double height, int ns, int nz, int nt) =>
        Ring(inner, outer, GridLines.Even(0, 2 * Math.PI * inner, ns), GridLines.Even(0, height, nz), nt);

    public static SolidGrid Ring(double inner, double outer, double[] s, double[] z, int nt) => SolidGrid.Map(
        s, z, GridLines.Even(0, outer - inner, nt), true, (arc, up, t) => OnCircle(inner + t, arc / inner, up));

    public static Vector3 OnCircle(double radius, double angle, double z) => new(radius * Math.Sin(angle), radius * Math.Cos(angle), z);

    public static SolidModel Solid(SolidGrid grid, SolidSupports supports, ElasticMaterial? material = null) =>
        new(grid, [material ?? Earth, Wood], SolidCells.Uniform(grid, new CellFill(0)), supports);

    public static SolidSupports Held(IEnumerable<HeldNode> held) => new([], held);

    public static IEnumerable<int> NodesWhere(SolidGrid grid, Func<Vector3, bool> where) =>
        Enumerable.Range(0, grid.Nodes).Where(node => where(grid.Point(node)));

    /// <summary>A ring wall with a door, three windows (one of them with edges off the grid), a niche and a wooden header over each window, on a bed.</summary>
    public static SolidModel House(
        SolidGrid grid, double firstWindow = 4.1, bool pushesOnly = false, double niche = 1, Func<SolidGrid, SolidCells, SolidSupports>? supports = null)
    {
        var height = grid.Z[^1];
        var depth = grid.T[^1];
        var cells = SolidCells.Uniform(grid, new CellFill(0));
        GridBox Through(double from, double to, double low, double high) => new(from, to, low * height, high * height, -1, depth + 1);
        foreach (var (from, width) in new[] { (firstWindow, 0.9), (8.0, 1.1), (12.3, 0.7) })
        {
            cells = cells.With(grid, Region.Of(Through(from - 0.3, from + width + 0.3, 0.75, 0.9)), new CellFill(1))
                .Without(grid, Region.Of(Through(from, from + width, 0.35, 0.75)));
        }

        cells = cells.Without(grid, Region.Of(Through(-0.45, 0.45, -0.1, 0.8)));
        if (niche > 0)
        {
            cells = cells.Without(grid, Region.Of(new GridBox(6.2, 6.7, 0.4 * height, 0.6 * height, -1, depth / 2)));
        }

        var model = Solid(grid, new SolidSupports([], []));
        return model with { Cells = cells, Supports = supports?.Invoke(grid, cells) ?? SolidSupports.Bed(grid, cells, 40e6, 20e6, pushesOnly) };
    }

    public static readonly Vector3 Gravity = new(0, 0, -9.80665);
}
