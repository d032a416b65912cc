using Clomwright.Building;
using Clomwright.Geometry;

namespace Clomwright.Analysis.WallByHand;

/// <summary>Cob that is not there: a niche, or a thing that goes through.</summary>
/// <param name="From">Lowest height, m.</param>
/// <param name="To">Highest, m.</param>
/// <param name="Width">Along the wall, m.</param>
/// <param name="Depth">Into the wall, m; null for all of it.</param>
/// <param name="Thickness">Of the wall there, m.</param>
/// <param name="Outward">Its middle lies outward (1), inward (-1) or in the middle (0).</param>
internal readonly record struct Void(double From, double To, double Width, double? Depth, int Outward, double Thickness)
{
    public double Area => Width * Math.Min(Depth ?? Thickness, Thickness);

    /// <summary>From the middle of the wall to its own middle, outward positive, m.</summary>
    public double OffCentre => Outward * (Thickness - Math.Min(Depth ?? Thickness, Thickness)) / 2;
}

/// <summary>Niches and bottles, sleeves and boxes that go through.</summary>
internal static class Voids
{
    public static IEnumerable<Void> In(HouseGeometry geometry, Pier? pier, Span clear) =>
    [
        .. geometry.Niches.Where(n => pier is null || n.Pier == pier.Address).Select(n => new Void(
            n.Bottom, n.Top, n.Niche.Width.Metres, n.Niche.Depth.Metres, n.Niche.Face == Face.Inside ? -1 : 1, geometry.Wall.ThicknessAt((n.Bottom + n.Top) / 2))),
        .. geometry.Embeds.Where(e => e.Embed.Through && e.Embed.Width is not null && geometry.Curve.Wrap(e.Station - clear.From) <= clear.Width).Select(e => new Void(
            e.Height - (e.Embed.Size ?? e.Embed.Width!.Value).Metres / 2, e.Height + (e.Embed.Size ?? e.Embed.Width!.Value).Metres / 2, e.Embed.Width!.Value.Metres, null, 0, geometry.Wall.ThicknessAt(e.Height))),
    ];

    /// <summary>What is missing at a height: area, m2, and how far its middle lies from that of the wall, m.</summary>
    public static (double Area, double OffCentre) At(Void[] voids, double height)
    {
        var here = voids.Where(v => v.From <= height && height <= v.To).ToArray();
        var area = here.Sum(v => v.Area);
        return (area, area > 0 ? here.Sum(v => v.Area * v.OffCentre) / area : 0);
    }

    /// <summary>The same where most is missing between two heights.</summary>
    public static (double Area, double OffCentre) Most(Void[] voids, double low, double high) => voids.SelectMany(v => new[] { v.From, v.To })
        .Select(z => Math.Clamp(z, low, Math.Max(low, high))).Append(low).Select(z => At(voids, z)).MaxBy(v => v.Area);
}
