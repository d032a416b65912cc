using Clomwright.Geometry;
using Clomwright.Numerics.Solid;

namespace Clomwright.Analysis.Structure;

/// <summary>Level sections through a pier, in every row over which both jambs stand: all cob from the middle of one opening to that of the next, so that parallel and splayed jambs count where they are.</summary>
internal sealed class PierSections
{
    private readonly List<(int Column, double Weight)> columns = [];

    public PierSections(WallBody body, Pier pier)
    {
        Pier = pier;
        var (grid, curve) = (body.Grid, body.Geometry.Curve);
        var span = Reach(body.Geometry, pier);
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
