namespace Clomwright.Geometry.Cuts;

/// <summary>The arc from jamb to jamb as a function of offset, tabulated between its kinks as polynomials through Chebyshev points.</summary>
/// <remarks>Barycentric interpolation at Chebyshev points of the second kind (Berrut and Trefethen, SIAM Review 46, 2004, 501; from memory).</remarks>
internal sealed class ArcTable
{
    private const int Degree = 10;
    private static readonly double[] Places = [.. Enumerable.Range(0, Degree + 1).Select(i => Math.Cos(Math.PI * i / Degree))];
    private readonly double[] edges;
    private readonly double[] arcs;

    public ArcTable(Func<double, double> arc, double from, double to, List<double> kinks)
    {
        edges = [.. kinks.Where(k => k > from && k < to).Append(from).Append(to).Order()];
        arcs = new double[(edges.Length - 1) * (Degree + 1)];
        for (var piece = 0; piece + 1 < edges.Length; piece++)
        {
            for (var i = 0; i <= Degree; i++)
            {
                arcs[piece * (Degree + 1) + i] = arc((edges[piece] + edges[piece + 1]) / 2 + (edges[piece + 1] - edges[piece]) / 2 * Places[i]);
            }
        }
    }

    /// <summary>Offsets between which it is smooth.</summary>
    public ReadOnlySpan<double> Edges => edges;

    /// <summary>The arc at an offset in the range tabulated.</summary>
    public double At(double offset)
    {
        var piece = 0;
        while (piece + 2 < edges.Length && offset > edges[piece + 1])
        {
            piece++;
        }

        var width = edges[piece + 1] - edges[piece];
        var x = width > 0 ? (2 * offset - edges[piece] - edges[piece + 1]) / width : 0;
        double above = 0, below = 0;
        for (var i = 0; i <= Degree; i++)
        {
            var value = arcs[piece * (Degree + 1) + i];
            var gap = x - Places[i];
            if (gap == 0)
            {
                return value;
            }

            var weight = (i % 2 == 0 ? 1 : -1) * (i is 0 or Degree ? 0.5 : 1) / gap;
            above += weight * value;
            below += weight;
        }

        return above / below;
    }
}
