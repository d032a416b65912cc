using System.Collections.Immutable;

namespace Clomwright.Numerics.Conduction;

/// <summary>A section cut into rectangular cells between lines, each of one conductivity or part of an air. Its outer edges let no heat through.</summary>
public sealed class SectionGrid
{
    private readonly ImmutableArray<double> conductivity;
    private readonly ImmutableArray<int> air;

    private SectionGrid(ImmutableArray<double> x, ImmutableArray<double> y, ImmutableArray<double> conductivity, ImmutableArray<int> air) =>
        (X, Y, this.conductivity, this.air) = (x, y, conductivity, air);

    /// <summary>Lines across, ascending, m.</summary>
    public ImmutableArray<double> X { get; }

    /// <summary>Lines up, ascending, m.</summary>
    public ImmutableArray<double> Y { get; }

    /// <summary>Cells across.</summary>
    public int Columns => X.Length - 1;

    /// <summary>Cells up.</summary>
    public int Rows => Y.Length - 1;

    /// <summary>Conductivity of a cell, W/(m K); 0 for air.</summary>
    public double Conductivity(int column, int row) => conductivity[row * Columns + column];

    /// <summary>Which air a cell is part of; -1 where it is solid.</summary>
    public int Air(int column, int row) => air[row * Columns + column];

    /// <summary>Fills the cells between lines.</summary>
    /// <param name="x">Lines across, ascending, m.</param>
    /// <param name="y">Lines up, ascending, m.</param>
    /// <param name="fill">What lies at a point: a conductivity above 0, or minus one less the number of an air.</param>
    /// <exception cref="ArgumentException">Lines do not ascend, or a conductivity is not a number above 0.</exception>
    public static SectionGrid Of(ReadOnlySpan<double> x, ReadOnlySpan<double> y, Func<double, double, double> fill)
    {
        ArgumentNullException.ThrowIfNull(fill);
        var (columns, rows) = (x.Length - 1, y.Length - 1);
        Ascending(x, nameof(x));
        Ascending(y, nameof(y));
        var (solid, airs) = (ImmutableArray.CreateBuilder<double>(columns * rows), ImmutableArray.CreateBuilder<int>(columns * rows));
        for (var r = 0; r < rows; r++)
        {
            for (var c = 0; c < columns; c++)
            {
                var value = fill((x[c] + x[c + 1]) / 2, (y[r] + y[r + 1]) / 2);
                if (!double.IsFinite(value) || value == 0)
                {
                    throw new ArgumentException("A cell is neither of a conductivity nor air.", nameof(fill));
                }

                solid.Add(Math.Max(0, value));
                airs.Add(value > 0 ? -1 : (int)(-value - 1));
            }
        }

        return new([.. x], [.. y], solid.MoveToImmutable(), airs.MoveToImmutable());
    }

    /// <summary>Lines from a first to a last through all given ones, cells growing by a factor away from the given lines and no wider than a most.</summary>
    /// <param name="through">Lines that have to be there, ascending, the first and last among them.</param>
    /// <param name="finest">Width of cells beside them, m.</param>
    /// <param name="widest">Most width, m.</param>
    /// <param name="growth">From one cell to the next.</param>
    public static double[] Lines(ReadOnlySpan<double> through, double finest, double widest, double growth = 1.25)
    {
        var lines = new List<double> { through[0] };
        for (var i = 0; i + 1 < through.Length; i++)
        {
            var (from, to) = (through[i], through[i + 1]);
            var half = new List<double>();
            var (reach, step) = (0.0, finest);
            while (reach + step < (to - from) / 2)
            {
                half.Add(reach += step);
                step = Math.Min(widest, step * growth);
            }

            // Stretched so that the two halves meet in the middle.
            var cells = half.Count + 1;
            var scale = (to - from) / 2 / (reach + step);
            lines.AddRange(half.Select(h => from + h * scale));
            if (cells > 0)
            {
                lines.Add((from + to) / 2);
            }

            lines.AddRange(half.AsEnumerable().Reverse().Select(h => to - h * scale));
            lines.Add(to);
        }

        return [.. lines];
    }

    private static void Ascending(ReadOnlySpan<double> lines, string name)
    {
        for (var i = 0; i + 1 < lines.Length; i++)
        {
            if (!(lines[i + 1] > lines[i]))
            {
                throw new ArgumentException("Lines do not ascend.", name);
            }
        }
    }
}
