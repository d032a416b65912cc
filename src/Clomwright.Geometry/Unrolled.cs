using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry.Cuts;

namespace Clomwright.Geometry;

/// <summary>The wall laid flat: outlines of what is in it, where they meet a face, as lines on the unrolled wall.</summary>
/// <remarks>
/// Every outline is in stations (along the inside face at the wall base), for either face: a point of the outside face stands at the foot of
/// its normal. An outside view is drawn to the outside arc: <see cref="AlongOutside"/> turns a station into it. Outlines run from their
/// first station on and may pass the ring's length where they cross the zero mark.
/// </remarks>
public static class Unrolled
{
    private const int ArcSteps = 24;

    /// <summary>Distance along the outside face at the wall base from the zero mark, clockwise, m.</summary>
    public static double AlongOutside(HouseGeometry geometry, double station)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        return geometry.Curve.OffsetArc(0, station, geometry.Wall.OutsideOffset(geometry.Wall.Base.Metres));
    }

    /// <summary>The station of a distance along the outside face at the wall base, m.</summary>
    public static double StationOfOutside(HouseGeometry geometry, double along)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        var offset = geometry.Wall.OutsideOffset(geometry.Wall.Base.Metres);
        var ring = geometry.Curve.OffsetLength(offset);
        var laps = Math.Floor(along / ring);
        return laps * geometry.Curve.Length + TeePlaces.StationAlong(geometry.Curve, offset, along - laps * ring);
    }

    /// <summary>The closed outline of an opening where it meets a face, splays included: up its first jamb, over the head, down the other; the last point joins the first.</summary>
    public static Sequence<WallPoint> Outline(HouseGeometry geometry, OpeningPlace place, Face face)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        ArgumentNullException.ThrowIfNull(place);
        var remarks = new Remarks();
        var shape = OpeningPlaces.OutlineOf(place.Opening, "", remarks);
        var frame = new WallFrame(geometry.House, geometry.Curve, geometry.Wall, [geometry.Wall.Base]);
        var shaft = OpeningPlaces.ShaftOf(frame, place.Opening, shape, place.Station, "", remarks);
        return On(geometry, shaft, shape, face);
    }

    /// <summary>The closed outline of a niche where it meets its face.</summary>
    public static Sequence<WallPoint> Outline(HouseGeometry geometry, NichePlace place)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        ArgumentNullException.ThrowIfNull(place);
        var shaft = new Shaft(geometry.Curve, place.Station, place.Niche.Width.Metres / 2, 0, 0, 0, 0);
        return On(geometry, shaft, NichePlaces.OutlineOf(place.Niche), place.Niche.Face);
    }

    private static Sequence<WallPoint> On(HouseGeometry geometry, Shaft shaft, Outline shape, Face face)
    {
        var heights = shape.Steps(ArcSteps);
        var first = new List<WallPoint>();
        var second = new List<WallPoint>();
        foreach (var height in heights)
        {
            var offset = face == Face.Inside ? geometry.Wall.InsideOffset(height) : geometry.Wall.OutsideOffset(height);
            var share = shape.ShareAt(height);
            if (shaft.Meet(-share, offset) is { } from && shaft.Meet(share, offset) is { } to)
            {
                first.Add(new WallPoint(from.Station, height));
                second.Add(new WallPoint(to.Station, height));
            }
        }

        second.Reverse();
        var all = first.Concat(second).ToArray();
        var least = all.Length == 0 ? 0 : all.Min(p => p.Along);
        var shift = geometry.Curve.Wrap(least) - least;
        return all.Select(p => p with { Along = p.Along + shift }).Distinct().ToSequence();
    }
}
