using Clomwright.Geometry;
using Clomwright.Numerics.Solid;

namespace Clomwright.Analysis.Structure;

/// <summary>Level sections through a pier, in every row over which both jambs stand: all cob from the middle of one opening to that of the next, so that parallel and splayed jambs count where they are.</summary>
internal sealed class PierSections
{
    private readonly List<(int Column, double Weight)> columns = [];
    private readonly Span reach;

    /// <summary>Length of the middle line over that of the inside curve, over all of the ring.</summary>
    private readonly double stretched;

    public PierSections(WallBody body, Pier pier)
    {
        Pier = pier;
        var (grid, curve) = (body.Grid, body.Geometry.Curve);
        var span = reach = Reach(body.Geometry, pier);
        for (var i = 0; i < grid.Around; i++)
        {
            var begins = curve.Wrap(grid.S[i] - span.From);
            var width = grid.S[i + 1] - grid.S[i];
            var within = Math.Max(0, Math.Min(span.Width, begins + width) - begins) + Math.Max(0, Math.Min(span.Width, begins + width - curve.Length));
            if (within > 1e-6 * width)
            {
                columns.Add((i, Math.Min(1, within / width)));
            }
        }

        Rows = [.. Enumerable.Range(0, body.CobRows).Where(k => (grid.Z[k] + grid.Z[k + 1]) / 2 is var z && z > pier.Heights.From && z < pier.Heights.To)];
        Areas = [.. Rows.Select(k => columns.Sum(c => Layers(grid).Sum(j => Area(body, grid.Cell(c.Column, k, j), c.Weight))))];
        Heights = [.. Rows.Select(k => (grid.Z[k] + grid.Z[k + 1]) / 2)];
        Deep = [.. Heights.Select(body.Geometry.Wall.ThicknessAt)];
        var middle = (body.Geometry.Wall.InsideOffset(body.Geometry.Wall.Base.Metres) + body.Geometry.Wall.OutsideOffset(body.Geometry.Wall.Base.Metres)) / 2;
        stretched = curve.OffsetLength(middle) / curve.Length;
        Middle = [.. Rows.Select((k, n) =>
        {
            double across = 0, along = 0;
            foreach (var (column, weight) in columns)
            {
                foreach (var cell in Layers(grid).Select(j => grid.Cell(column, k, j)).Where(c => body.Model.Cells[c].IsSolid))
                {
                    var place = Place(body, cell, column, weight);
                    (across, along) = (across + place.Across * place.Area, along + place.Along * place.Area);
                }
            }

            return Areas[n] > 0 ? (across / Areas[n], along / Areas[n]) : (0, 0);
        })];
    }

    public Pier Pier { get; }

    /// <summary>Rows of the grid.</summary>
    public int[] Rows { get; }

    /// <summary>Area of cob in each of them, m2.</summary>
    public double[] Areas { get; }

    /// <summary>Their heights, m.</summary>
    public double[] Heights { get; }

    /// <summary>Numbers of the stacks of a sheet that lie in the pier.</summary>
    public IEnumerable<int> Stacks(WallSheet sheet) =>
        columns.SelectMany(c => Rows.Select(k => c.Column * sheet.Rows + k)).Where(stack => sheet.Share[stack] > 0);

    /// <summary>Force up through each section, N; compression is negative.</summary>
    public double[] Forces(WallBody body, CellStress stress)
    {
        var grid = body.Grid;
        return [.. Rows.Select(k => columns.Sum(c => Layers(grid).Sum(j =>
            stress[grid.Cell(c.Column, k, j)] is { } there ? there.Z * Area(body, grid.Cell(c.Column, k, j), c.Weight) : 0)))];
    }

    /// <summary>Numbers for each section in <see cref="Actions"/>.</summary>
    public const int Parts = 4;

    /// <summary>What each section passes on, <see cref="Parts"/> numbers a row: force up (compression negative), N; force along the wall, N; its moments about the middle across, N m outward, and along, N m clockwise.</summary>
    public double[] Actions(WallBody body, WallSheet sheet, CellStress stress)
    {
        var grid = body.Grid;
        var found = new double[Parts * Rows.Length];
        for (var n = 0; n < Rows.Length; n++)
        {
            var k = Rows[n];
            foreach (var (column, weight) in columns)
            {
                var slope = double.NaN;
                for (var j = 0; j < grid.Through; j++)
                {
                    var cell = grid.Cell(column, k, j);
                    if (stress[cell] is not { } there)
                    {
                        continue;
                    }

                    slope = double.IsNaN(slope) ? sheet.SlopeOf(stress, column * sheet.Rows + k) : slope;
                    var (across, along, area) = Place(body, cell, column, weight);
                    var thickness = Deep[n];
                    var share = grid.T[j + 1] - grid.T[j];
                    found[Parts * n] += there.Z * area;
                    found[Parts * n + 1] += there.SZ * area;
                    found[Parts * n + 2] += there.Z * area * (across - Middle[n].Across) + slope * share * share * thickness / 12 * area;
                    found[Parts * n + 3] += there.Z * area * (along - Middle[n].Along);
                }
            }
        }

        return found;
    }

    /// <summary>Thickness of the wall at each section, m.</summary>
    public double[] Deep { get; }

    /// <summary>Middle of each section's cob: across from the inside curve, along the middle line from the pier's reach, m.</summary>
    private (double Across, double Along)[] Middle { get; }

    /// <summary>Where what is solid in a cell has its middle, and its area.</summary>
    private (double Across, double Along, double Area) Place(WallBody body, int cell, int column, double weight)
    {
        var (grid, wall, fill) = (body.Grid, body.Geometry.Wall, body.Model.Cells[cell]);
        var (i, k, j) = grid.Position(cell);
        var height = (grid.Z[k] + grid.Z[k + 1]) / 2;
        var cut = fill.Cut?.Middle ?? default;
        var through = (grid.T[j] + grid.T[j + 1]) / 2 + cut.Z * (grid.T[j + 1] - grid.T[j]) / 2;
        var across = wall.InsideOffset(height) + through * wall.ThicknessAt(height);
        var station = body.Geometry.Curve.Wrap((grid.S[column] + grid.S[column + 1]) / 2 + cut.X * (grid.S[i + 1] - grid.S[i]) / 2 - reach.From);
        return (across, station * stretched, Area(body, cell, weight));
    }

    /// <summary>From middle to middle; from jamb to jamb where an opening does not stand over all of the pier's height.</summary>
    private static Span Reach(HouseGeometry geometry, Pier pier)
    {
        var before = geometry.Openings.First(o => o.Opening.Name == pier.Before);
        var after = geometry.Openings.First(o => o.Opening.Name == pier.After);
        if (before == after || ((OpeningPlace[])[before, after]).Any(o => o.Sill > pier.Heights.From + 1e-9 || o.Head < pier.Heights.To - 1e-9))
        {
            return pier.Span;
        }

        var from = pier.Span.From - geometry.Curve.Wrap(pier.Span.From - before.Station);
        return new Span(from, pier.Span.To + geometry.Curve.Wrap(after.Station - pier.Span.To));
    }

    private static IEnumerable<int> Layers(SolidGrid grid) => Enumerable.Range(0, grid.Through);

    /// <summary>Level area of what is solid in a cell that a jamb may cut: what the jamb leaves of it belongs to the pier.</summary>
    private static double Area(WallBody body, int cell, double weight)
    {
        var fill = body.Model.Cells[cell];
        if (!fill.IsSolid)
        {
            return 0;
        }

        var (_, k, _) = body.Grid.Position(cell);
        return body.Grid.Volume(cell) / (body.Grid.Z[k + 1] - body.Grid.Z[k]) * (fill.Cut is null ? weight : fill.Share);
    }
}
