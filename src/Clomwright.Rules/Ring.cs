using Clomwright.Geometry;

namespace Clomwright.Rules;

/// <summary>Distances along the inside face, which closes on itself. All in m.</summary>
internal static class Ring
{
    /// <summary>Whether a station lies in a stretch, ends included.</summary>
    public static bool Holds(Span span, double station, double ring) => Ahead(span.From, station, ring) <= span.Width;

    /// <summary>How far a station stands outside a stretch, from its nearer end; negative inside.</summary>
    public static double Outside(Span span, double station, double ring)
    {
        var past = Ahead(span.From, station, ring);
        return past <= span.Width ? -Math.Min(past, span.Width - past) : Math.Min(past - span.Width, ring - past);
    }

    /// <summary>The gap between two stretches; negative by how far they overlap.</summary>
    public static double Gap(Span a, Span b, double ring)
    {
        var apart = Math.Abs(Ahead(a.Middle, b.Middle, ring));
        return Math.Min(apart, ring - apart) - (a.Width + b.Width) / 2;
    }

    /// <summary>Distance clockwise from one station to another, 0 to the ring's length.</summary>
    public static double Ahead(double from, double to, double ring)
    {
        var d = (to - from) % ring;
        return d < 0 ? d + ring : d;
    }
}
