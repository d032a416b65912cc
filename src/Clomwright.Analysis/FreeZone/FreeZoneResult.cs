using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.FreeZone;

/// <summary>A rectangle on the unrolled wall.</summary>
/// <param name="Stations">May pass the ring's length.</param>
/// <param name="Bottom">m from the finished floor.</param>
/// <param name="Top">m.</param>
public readonly record struct WallBox(Span Stations, double Bottom, double Top);

/// <summary>Where a crew may improvise: shallow niches, shells, small glass.</summary>
public sealed record FreeZoneResult
{
    /// <summary>Rectangles that lie side by side and do not overlap; together the free zone of both faces. Empty where there is none.</summary>
    public required Sequence<WallBox> Boxes { get; init; }

    /// <summary>Deepest niche, m.</summary>
    public required double Depth { get; init; }

    /// <summary>Share of the face of the cob that is free.</summary>
    public required double Share { get; init; }

    /// <summary>What nobody gave.</summary>
    public required Sequence<Assumption> Assumptions { get; init; }

    /// <summary>Whether a place lies in it, its edges too.</summary>
    /// <param name="station">m along the inside face from the zero mark.</param>
    /// <param name="height">m from the finished floor.</param>
    /// <param name="ring">Length of the ring, m.</param>
    public bool Holds(double station, double height, double ring) => Boxes.Any(b =>
        height >= b.Bottom && height <= b.Top && (Within(b.Stations, station) || Within(b.Stations, station + ring) || Within(b.Stations, station - ring)));

    private static bool Within(Span span, double station) => station >= span.From && station <= span.To;
}
