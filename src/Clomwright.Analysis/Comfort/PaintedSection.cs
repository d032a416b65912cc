using Clomwright.Numerics.Conduction;

namespace Clomwright.Analysis.Comfort;

/// <summary>A section painted box by box, later ones over earlier ones: x outward, y up, m. Air outside is 0 degrees, inside 1.</summary>
internal sealed class PaintedSection(double left, double right, double bottom, double top)
{
    public const int Outside = -1, Inside = -2;
    private const double Finest = 0.02, Widest = 0.8, Growth = 1.3, Together = 0.003;
    private readonly List<(double Left, double Right, double Bottom, double Top, double Value)> boxes = [];

    /// <summary>All of it to the last bit, for telling it from another.</summary>
    public string Written => FormattableString.Invariant($"{left:R} {right:R} {bottom:R} {top:R} ") + string.Join(' ', boxes.Select(b => FormattableString.Invariant($"{b.Left:R},{b.Right:R},{b.Bottom:R},{b.Top:R},{b.Value:R}")));

    /// <summary>A box of a conductivity, or of air.</summary>
    public void Box(double from, double to, double low, double high, double value)
    {
        if (to > from && high > low)
        {
            boxes.Add((from, to, low, high, value));
        }
    }

    /// <summary>Its cells: small beside every edge of a box.</summary>
    public SectionGrid Grid()
    {
        double At(double x, double y) => boxes.FindLast(b => x > b.Left && x < b.Right && y > b.Bottom && y < b.Top) is { Value: not 0 } box ? box.Value : Outside;
        return SectionGrid.Of(Lines(left, right, boxes.SelectMany(b => new[] { b.Left, b.Right })), Lines(bottom, top, boxes.SelectMany(b => new[] { b.Bottom, b.Top })), At);
    }

    /// <summary>Edges nearer than a few millimetres are one.</summary>
    private static double[] Lines(double from, double to, IEnumerable<double> edges)
    {
        var lines = new List<double> { from };
        foreach (var edge in edges.Where(e => e > from && e < to - Together).Order())
        {
            if (edge - lines[^1] > Together)
            {
                lines.Add(edge);
            }
        }

        lines.Add(to);
        return SectionGrid.Lines([.. lines], Finest, Widest, Growth);
    }
}
