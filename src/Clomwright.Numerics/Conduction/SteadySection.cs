using System.Collections.Immutable;

namespace Clomwright.Numerics.Conduction;

/// <summary>Steady heat through a section that is the same all along: finite volumes about the middles of the cells, half a cell of each in series between two, of second order in the width of cells.</summary>
public sealed record SteadySection
{
    private SteadySection(SectionGrid grid, ImmutableArray<double> temperatures, ImmutableArray<double> flows, ImmutableArray<SectionSurface> surfaces) =>
        (Grid, Temperatures, Flows, Surfaces) = (grid, temperatures, flows, surfaces);

    /// <summary>Its cells.</summary>
    public SectionGrid Grid { get; }

    /// <summary>At the middle of each cell, row by row from the bottom; of the air where it is air.</summary>
    public ImmutableArray<double> Temperatures { get; }

    /// <summary>What each air gives to the section, W for each metre out of the plane; together nothing.</summary>
    public ImmutableArray<double> Flows { get; }

    /// <summary>Every piece of surface.</summary>
    public ImmutableArray<SectionSurface> Surfaces { get; }

    /// <summary>The temperature in a cell.</summary>
    public double At(int column, int row) => Temperatures[row * Grid.Columns + column];

    /// <summary>Solves.</summary>
    /// <param name="grid">Its cells.</param>
    /// <param name="airs">Its airs.</param>
    /// <exception cref="InvalidOperationException">Some solid touches no air, so that its temperature is not told.</exception>
    public static SteadySection Of(SectionGrid grid, ReadOnlySpan<SectionAir> airs)
    {
        ArgumentNullException.ThrowIfNull(grid);
        var (columns, rows) = (grid.Columns, grid.Rows);
        var across = columns <= rows;
        int Cell(int c, int r) => across ? r * columns + c : c * rows + r;
        var band = across ? columns : rows;
        var number = new int[columns * rows];
        var count = 0;
        for (var k = 0; k < columns * rows; k++)
        {
            var (c, r) = across ? (k % columns, k / columns) : (k / rows, k % rows);
            number[k] = grid.Air(c, r) < 0 ? count++ : -1;
        }

        var factor = new BandFactor(count, band);
        var right = new double[count];
        for (var r = 0; r < rows; r++)
        {
            for (var c = 0; c < columns; c++)
            {
                Join(c, r, c + 1, r, airs);
                Join(c, r, c, r + 1, airs);
            }
        }

        if (!factor.Factorise())
        {
            throw new InvalidOperationException("Some solid of the section touches no air.");
        }

        factor.Solve(right);
        return Told(grid, airs, (c, r) => right[number[Cell(c, r)]]);

        void Join(int c, int r, int c2, int r2, ReadOnlySpan<SectionAir> sides)
        {
            if (c2 == columns || r2 == rows || Conductance(grid, sides, c, r, c2, r2) is not (> 0 and var g))
            {
                return;
            }

            var (a, b) = (number[Cell(c, r)], number[Cell(c2, r2)]);
            if (a >= 0 && b >= 0)
            {
                factor.Add(a, a, g);
                factor.Add(b, b, g);
                factor.Add(Math.Max(a, b), Math.Min(a, b), -g);
            }
            else
            {
                var solid = Math.Max(a, b);
                factor.Add(solid, solid, g);
                right[solid] += g * sides[a >= 0 ? grid.Air(c2, r2) : grid.Air(c, r)].Temperature;
            }
        }
    }

    /// <summary>Between a cell and its neighbour to the right or above, W/(m K); 0 between airs.</summary>
    private static double Conductance(SectionGrid grid, ReadOnlySpan<SectionAir> airs, int c, int r, int c2, int r2)
    {
        var (air, air2) = (grid.Air(c, r), grid.Air(c2, r2));
        if (air >= 0 && air2 >= 0)
        {
            return 0;
        }

        var beside = c2 > c;
        var face = beside ? grid.Y[r + 1] - grid.Y[r] : grid.X[c + 1] - grid.X[c];
        double Half(int column, int row, double conductivity) => (beside ? grid.X[column + 1] - grid.X[column] : grid.Y[row + 1] - grid.Y[row]) / 2 / conductivity;
        var first = air >= 0 ? beside ? airs[air].Beside : airs[air].Above : Half(c, r, grid.Conductivity(c, r));
        var second = air2 >= 0 ? beside ? airs[air2].Beside : airs[air2].Below : Half(c2, r2, grid.Conductivity(c2, r2));
        return face / (first + second);
    }

    private static SteadySection Told(SectionGrid grid, ReadOnlySpan<SectionAir> airs, Func<int, int, double> solved)
    {
        var (columns, rows) = (grid.Columns, grid.Rows);
        var all = new double[columns * rows];
        for (var r = 0; r < rows; r++)
        {
            for (var c = 0; c < columns; c++)
            {
                all[r * columns + c] = grid.Air(c, r) is >= 0 and var air ? airs[air].Temperature : solved(c, r);
            }
        }

        var flows = new double[airs.Length];
        var surfaces = ImmutableArray.CreateBuilder<SectionSurface>();
        for (var r = 0; r < rows; r++)
        {
            for (var c = 0; c < columns; c++)
            {
                Face(c, r, c + 1, r, airs);
                Face(c, r, c, r + 1, airs);
            }
        }

        return new(grid, [.. all], [.. flows], surfaces.ToImmutable());

        void Face(int c, int r, int c2, int r2, ReadOnlySpan<SectionAir> sides)
        {
            if (c2 == columns || r2 == rows || grid.Air(c, r) < 0 == grid.Air(c2, r2) < 0)
            {
                return;
            }

            var beside = c2 > c;
            var (ac, ar, sc, sr) = grid.Air(c, r) >= 0 ? (c, r, c2, r2) : (c2, r2, c, r);
            var side = sides[grid.Air(ac, ar)];
            var flow = Conductance(grid, sides, c, r, c2, r2) * (side.Temperature - all[sr * columns + sc]);
            var length = beside ? grid.Y[r + 1] - grid.Y[r] : grid.X[c + 1] - grid.X[c];
            var film = beside ? side.Beside : grid.Air(c, r) >= 0 ? side.Above : side.Below;
            flows[grid.Air(ac, ar)] += flow;
            surfaces.Add(new(
                grid.Air(ac, ar), beside ? grid.X[c2] : (grid.X[c] + grid.X[c + 1]) / 2, beside ? (grid.Y[r] + grid.Y[r + 1]) / 2 : grid.Y[r2], length, beside,
                side.Temperature - flow / length * film, flow));
        }
    }
}
