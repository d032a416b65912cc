namespace Clomwright.Geometry.Cuts;

/// <summary>Stretches of wall on a ring.</summary>
internal static class Spans
{
    /// <summary>Whether two stretches share more than a point on a ring of a length.</summary>
    public static bool Overlap(Span a, Span b, double ring)
    {
        var shift = Math.Round((a.Middle - b.Middle) / ring) * ring;
        return Math.Min(a.To, b.To + shift) > Math.Max(a.From, b.From + shift) + 1e-12 * ring;
    }

    /// <summary>Whether two stretches of height share more than a point.</summary>
    public static bool Overlap(double bottom, double top, double otherBottom, double otherTop) =>
        Math.Min(top, otherTop) > Math.Max(bottom, otherBottom) + 1e-9;

    /// <summary>The same stretch beginning at 0 to the ring's length.</summary>
    public static Span Wrapped(Span span, PlanCurve curve)
    {
        var from = curve.Wrap(span.From);
        return new Span(from, from + span.Width);
    }
}
