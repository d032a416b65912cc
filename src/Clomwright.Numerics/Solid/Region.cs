namespace Clomwright.Numerics.Solid;

/// <summary>A part of a body, in (s, z, t). Its ends may lie outside the grid.</summary>
public abstract class Region
{
    private protected Region()
    {
    }

    /// <summary>A box.</summary>
    public static Region Of(GridBox box) => new BoxRegion(box);

    /// <summary>
    /// Between two curves z(s): an arch, a circle, any outline that a plumb line meets at most twice. Integrated along s in
    /// <paramref name="samples"/> steps for each cell, so a slanting edge is caught to about 1/samples^2.
    /// </summary>
    /// <param name="sFrom">Where it begins along s.</param>
    /// <param name="sTo">Where it ends along s.</param>
    /// <param name="lower">Its lower edge.</param>
    /// <param name="upper">Its upper edge.</param>
    /// <param name="tFrom">Where it begins through the thickness.</param>
    /// <param name="tTo">Where it ends through the thickness.</param>
    /// <param name="samples">Steps along s in each cell.</param>
    public static Region Between(
        double sFrom, double sTo, Func<double, double> lower, Func<double, double> upper, double tFrom, double tTo, int samples = 16) =>
        new OutlineRegion(sFrom, sTo, lower, upper, tFrom, tTo, samples);

    /// <summary>A box beyond which nothing of it lies.</summary>
    internal abstract GridBox Within { get; }

    /// <summary>
    /// Adds the integrals of the eight Gauss points' Lagrange polynomials over the region's part in a cell, in the cell's reference coordinates.
    /// </summary>
    internal abstract void AddIntegrals(in GridBox cell, Span<double> integrals);

    /// <summary>Adds the product of the integrals over three intervals of a cell, unless one is empty.</summary>
    private static void AddBox(in GridBox cell, in GridBox box, Span<double> integrals)
    {
        var part = cell.Overlap(box);
        if (part.Volume == 0)
        {
            return;
        }

        var s = Along(cell.SFrom, cell.STo, part.SFrom, part.STo);
        var z = Along(cell.ZFrom, cell.ZTo, part.ZFrom, part.ZTo);
        var t = Along(cell.TFrom, cell.TTo, part.TFrom, part.TTo);
        for (var q = 0; q < 8; q++)
        {
            integrals[q] += ((q & 2) == 0 ? s.Low : s.High) * ((q & 4) == 0 ? z.Low : z.High) * ((q & 1) == 0 ? t.Low : t.High);
        }
    }

    private static (double Low, double High) Along(double cellFrom, double cellTo, double from, double to)
    {
        double Reference(double at) => 2 * (at - cellFrom) / (cellTo - cellFrom) - 1;
        return CellCut.Integrals(Reference(from), Reference(to));
    }

    private sealed class BoxRegion(GridBox region) : Region
    {
        internal override GridBox Within => region;

        internal override void AddIntegrals(in GridBox cell, Span<double> integrals) => AddBox(cell, region, integrals);
    }

    private sealed class OutlineRegion(
        double sFrom, double sTo, Func<double, double> lower, Func<double, double> upper, double tFrom, double tTo, int samples) : Region
    {
        private Strips? last;

        /// <summary>The edges in the middles of the steps across one column of cells, which all its cells share.</summary>
        private sealed record Strips(double From, double To, (double Low, double High)[] Edges);

        internal override GridBox Within => new(sFrom, sTo, double.NegativeInfinity, double.PositiveInfinity, tFrom, tTo);

        internal override void AddIntegrals(in GridBox cell, Span<double> integrals)
        {
            var (from, to) = (Math.Max(sFrom, cell.SFrom), Math.Min(sTo, cell.STo));
            if (from >= to || cell.Overlap(cell with { TFrom = tFrom, TTo = tTo }).Volume == 0)
            {
                return;
            }

            var step = (to - from) / samples;
            var edges = EdgesOver(from, to);
            for (var i = 0; i < samples; i++)
            {
                var start = from + step * i;
                AddBox(cell, new GridBox(start, start + step, edges[i].Low, edges[i].High, tFrom, tTo), integrals);
            }
        }

        private (double Low, double High)[] EdgesOver(double from, double to)
        {
            if (last is { } known && known.From == from && known.To == to)
            {
                return known.Edges;
            }

            var (step, edges) = ((to - from) / samples, new (double Low, double High)[samples]);
            for (var i = 0; i < samples; i++)
            {
                var middle = from + step * (i + 0.5);
                edges[i] = (lower(middle), upper(middle));
            }

            last = new Strips(from, to, edges);
            return edges;
        }
    }
}

/// <summary>A box in (s, z, t).</summary>
public readonly record struct GridBox(double SFrom, double STo, double ZFrom, double ZTo, double TFrom, double TTo)
{
    /// <summary>Its extent in the three directions multiplied; zero when empty.</summary>
    public double Volume => Math.Max(0, STo - SFrom) * Math.Max(0, ZTo - ZFrom) * Math.Max(0, TTo - TFrom);

    /// <summary>What two boxes have in common, perhaps nothing.</summary>
    public GridBox Overlap(in GridBox other) => new(
        Math.Max(SFrom, other.SFrom), Math.Min(STo, other.STo), Math.Max(ZFrom, other.ZFrom), Math.Min(ZTo, other.ZTo),
        Math.Max(TFrom, other.TFrom), Math.Min(TTo, other.TTo));

    /// <summary>The box moved along s.</summary>
    public GridBox Along(double shift) => this with { SFrom = SFrom + shift, STo = STo + shift };
}
