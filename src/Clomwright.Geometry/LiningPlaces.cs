using Clomwright.Building;
using Clomwright.Geometry.Cuts;

namespace Clomwright.Geometry;

/// <summary>What is set against a face to keep it warm, measured.</summary>
/// <param name="Lining">As described.</param>
/// <param name="Bottom">Of it, m.</param>
/// <param name="Top">Of it, m.</param>
/// <param name="Area">Of wall or stem that it covers, net of openings, m2: upright, as a lean of a few percent adds less than a thousandth.</param>
/// <param name="Volume">As laid, net of openings, m3.</param>
public sealed record LiningPlace(Lining Lining, double Bottom, double Top, double Area, double Volume);

/// <summary>Measures linings. An opening is taken out whole where its middle is behind the lining, and straight through it at its rough width.</summary>
public static class LiningPlaces
{
    /// <summary>All of a house, in the order of the description.</summary>
    public static IEnumerable<LiningPlace> Of(HouseGeometry geometry)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        return geometry.House.Comfort.Linings.Select(lining => Of(geometry, lining));
    }

    private static LiningPlace Of(HouseGeometry geometry, Lining lining)
    {
        var (curve, wall) = (geometry.Curve, geometry.Wall);
        var (bottom, top) = (lining.Bottom?.Metres ?? wall.Base.Metres, lining.Top?.Metres ?? wall.Top.Metres);
        var span = Along(curve, lining);
        var (area, volume) = (0.0, 0.0);
        foreach (var band in Bands(geometry, lining, bottom, top))
        {
            // Area between the offsets at a height is quadratic in it: Simpson's rule is exact.
            var middle = (band.Bottom + band.Top) / 2;
            volume += band.Height / 6 * (Between(band, band.Bottom) + 4 * Between(band, middle) + Between(band, band.Top));
            area += band.Height * curve.OffsetArc(span.From, span.To, FaceAt(band, middle));
            foreach (var hole in geometry.Openings.Where(o => curve.Wrap(o.Station - span.From) <= span.Width).Select(o => Through(curve, o, band)).Where(h => h.Fits))
            {
                volume -= hole.Volume(band);
                area -= lining.Face == Face.Outside ? hole.InsideFaceArea(band) : hole.OutsideFaceArea(band);
            }
        }

        return new LiningPlace(lining, bottom, top, Math.Max(0, area), Math.Max(0, volume));

        double Between(Band band, double height)
        {
            var (inside, outside) = (band.InsideAt(height), band.OutsideAt(height));
            return (outside - inside) * curve.OffsetArc(span.From, span.To, (inside + outside) / 2);
        }

        double FaceAt(Band band, double height) => lining.Face == Face.Outside ? band.InsideAt(height) : band.OutsideAt(height);
    }

    /// <summary>Clockwise from where it begins; once round where no ends are given.</summary>
    private static Span Along(PlanCurve curve, Lining lining)
    {
        if (lining is not { From: { } from, To: { } to } || curve.StationsAt(from.Radians) is not [var begins, ..] || curve.StationsAt(to.Radians) is not [var ends, ..])
        {
            return new Span(0, curve.Length);
        }

        return new Span(begins, begins + curve.Wrap(ends - begins));
    }

    /// <summary>The lining against the stem and, above it, against the wall.</summary>
    private static IEnumerable<Band> Bands(HouseGeometry geometry, Lining lining, double bottom, double top)
    {
        var (wall, depth) = (geometry.Wall, lining.Depth.Metres);
        var foot = wall.Base.Metres;
        if (bottom < foot)
        {
            var (inside, outside) = WallBands.Stem(geometry.House.Stem, wall);
            yield return Against(new Band(bottom, Math.Min(top, foot), inside, inside, outside, outside));
        }

        if (top > foot)
        {
            yield return Against(WallBands.Trimmed(wall, Math.Max(bottom, foot), Math.Min(top, wall.Top.Metres)));
        }

        Band Against(Band of) => lining.Face == Face.Outside
            ? of with { InsideBottom = of.OutsideBottom, InsideTop = of.OutsideTop, OutsideBottom = of.OutsideBottom + depth, OutsideTop = of.OutsideTop + depth }
            : of with { OutsideBottom = of.InsideBottom, OutsideTop = of.InsideTop, InsideBottom = of.InsideBottom - depth, InsideTop = of.InsideTop - depth };
    }

    private static Hole Through(PlanCurve curve, OpeningPlace place, Band band) => new(
        new Shaft(curve, place.Station, place.Opening.Width.Metres / 2, 0, 0, 0, 0), OpeningPlaces.OutlineOf(place.Opening, "", new Remarks()),
        Math.Min(band.InsideBottom, band.InsideTop), Math.Max(band.OutsideBottom, band.OutsideTop));
}
