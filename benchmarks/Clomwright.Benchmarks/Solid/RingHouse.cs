using Clomwright.Numerics.Frames;
using Clomwright.Numerics.Solid;

namespace Clomwright.Benchmarks.Solid;

/// <summary>
/// A full house: 4.9 m bore, 0.30 m at the top, 4 % taper outside, 2.4 m high; a door, five windows with headers, two niches of half the depth, a
/// bond beam, ten poles on it, on a bed. The first window moves.
/// </summary>
internal sealed class RingHouse
{
    private const double Inner = 2.45;
    private const double Thickness = 0.30;
    private const double Height = 2.4;
    private const double Length = 2 * Math.PI * Inner;

    private static readonly Vector3 Gravity = new(0, 0, -9.80665);
    private static readonly ElasticMaterial Earth = ElasticMaterial.Isotropic(200e6, 0.2, 1600);
    private static readonly ElasticMaterial Wood =
        ElasticMaterial.Orthotropic(new OrthotropicModuli(5.4e9, 0.4e9, 0.5e9, 0.35, 0.3, 0.4, 0.4e9, 0.06e9, 0.5e9), 500);

    private readonly SolidGrid grid;
    private readonly SolidCells whole;

    public RingHouse(SolidSize size)
    {
        Size = size;
        grid = SolidGrid.Map(
            GridLines.Even(0, Length, size.Around),
            GridLines.Even(0, Height, size.Up),
            GridLines.Even(0, 1, size.Through),
            true,
            (s, z, t) =>
            {
                var radius = Inner + t * (Thickness + 0.04 * (Height - z));
                return new Vector3(radius * Math.Sin(s / Inner), radius * Math.Cos(s / Inner), z);
            });
        var cells = SolidCells.Uniform(grid, new CellFill(0)).With(grid, Region.Of(Box(0, Length, 2.28, 2.4)), new CellFill(1))
            .Without(grid, Region.Of(Box(-0.46, 0.46, -1, 2.0)));
        foreach (var bearing in new[] { 6.0, 8.2, 10.4, 12.6 })
        {
            cells = WithWindow(cells, bearing);
        }

        foreach (var bearing in new[] { 2.0, 14.0 })
        {
            cells = cells.Without(grid, Region.Of(new GridBox(bearing, bearing + 0.4, 1.2, 1.6, -1, 0.5)));
        }

        whole = cells;
    }

    public SolidSize Size { get; }

    /// <summary>Width of a cell along the inner face.</summary>
    public double Cell => Length / Size.Around;

    /// <summary>The cells between which the moving window stays.</summary>
    public (int From, int To) Reach(double travel) => ((int)((Start - 0.25 - travel) / Cell), (int)((Start + 1.15 + travel) / Cell) + 1);

    /// <summary>Where the moving window starts.</summary>
    public static double Start => 3.5;

    /// <summary>The house with the moving window at a place.</summary>
    public SolidModel At(double place)
    {
        var cells = WithWindow(whole, place);
        return new SolidModel(grid, [Earth, Wood], cells, SolidSupports.Bed(grid, cells, 40e6, 20e6, pushesOnly: false));
    }

    /// <summary>Its own weight and a tenth of it sideways, and the roof's ten poles.</summary>
    public static NodalLoad LoadOn(SolidModel model)
    {
        var load = Loading.Weight(model, Gravity + new Vector3(0.98, 0, 0));
        for (var pole = 0; pole < 10; pole++)
        {
            load += Loading.Point(model, pole * Length / 10, 2.39, 0.5, new Vector3(0, 0, -3000));
        }

        return load;
    }

    private static GridBox Box(double from, double to, double low, double high) => new(from, to, low, high, -1, 2);

    private SolidCells WithWindow(SolidCells cells, double from) => cells
        .With(grid, Region.Of(Box(from - 0.25, from + 1.15, 1.8, 2.0)), new CellFill(1))
        .Without(grid, Region.Of(Box(from, from + 0.9, 0.9, 1.8)));
}
