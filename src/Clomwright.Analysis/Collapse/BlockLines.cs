using Clomwright.Geometry;

namespace Clomwright.Analysis.Collapse;

/// <summary>Where a wall is cut into blocks: along the edges of its holes and niches, and between them in equal parts no longer than asked.</summary>
/// <param name="Stations">Ascending, m along the inside curve; the last is the first a whole ring further.</param>
/// <param name="Heights">Ascending, m, from the stem's top to the wall top.</param>
internal sealed record BlockLines(double[] Stations, double[] Heights)
{
    /// <summary>Edges nearer to one another than this are one line, at their middle, m.</summary>
    public const double Nearest = 0.05;

    /// <summary>The lines of a placed house for blocks of about a size, m.</summary>
    public static BlockLines Of(HouseGeometry geometry, double size)
    {
        var (low, high, ring) = (geometry.Wall.Base.Metres, geometry.Wall.Top.Metres, geometry.Curve.Length);
        var jambs = Merged([.. geometry.Openings.Select(o => o.Widest).Concat(geometry.Niches.Select(n => n.Span)).SelectMany(s => new[] { geometry.Curve.Wrap(s.From), geometry.Curve.Wrap(s.To) })]);
        if (jambs.Count == 0)
        {
            jambs.Add(0);
        }

        var levels = geometry.Openings.SelectMany(o => o.Header is { } header ? [o.Sill, o.Head, header.Bottom, header.Top] : new[] { o.Sill, o.Head })
            .Concat(geometry.Niches.SelectMany(n => new[] { n.Bottom, n.Top }));
        var between = Merged([.. levels.Where(z => z > low + Nearest && z < high - Nearest)]);
        return new BlockLines(Divided([.. jambs, jambs[0] + ring], size, least: 4), Divided([low, .. between, high], size, least: 2));
    }

    private static List<double> Merged(double[] edges)
    {
        Array.Sort(edges);
        var groups = new List<List<double>>();
        foreach (var edge in edges)
        {
            if (groups.Count == 0 || edge - groups[^1][0] > Nearest)
            {
                groups.Add([]);
            }

            groups[^1].Add(edge);
        }

        return [.. groups.Select(group => group.Average())];
    }

    /// <summary>Every stretch in equal parts no longer than a size; the longest in more where there would be fewer than the least.</summary>
    private static double[] Divided(double[] ends, double size, int least)
    {
        var parts = ends.Zip(ends.Skip(1), (from, to) => Math.Max(1, (int)Math.Ceiling((to - from) / size - 1e-9))).ToArray();
        while (parts.Sum() < least)
        {
            var longest = Enumerable.Range(0, parts.Length).MaxBy(i => (ends[i + 1] - ends[i]) / parts[i]);
            parts[longest]++;
        }

        return [.. parts.SelectMany((n, i) => Enumerable.Range(0, n).Select(k => ends[i] + k * (ends[i + 1] - ends[i]) / n)), ends[^1]];
    }
}
