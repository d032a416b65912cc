using Clomwright.Building;

namespace Clomwright.Geometry;

/// <summary>How far the reveals of an opening open from its frame to one face, at the height at which the hole is widest. Lengths in m.</summary>
/// <param name="Before">Of the first jamb clockwise, square to the middle line of the hole.</param>
/// <param name="After">Of the second jamb.</param>
/// <param name="Width">From jamb to jamb at the face, straight across.</param>
/// <param name="Height">At which that is, over the finished floor.</param>
public sealed record SplayedReveals(double Before, double After, double Width, double Height);

/// <summary>Measures splays.</summary>
public static class Splays
{
    /// <summary>The reveals of a placed opening toward a face; null where they have no splay, or where a jamb never meets the face.</summary>
    public static SplayedReveals? Of(HouseGeometry geometry, OpeningPlace place, Face face)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        ArgumentNullException.ThrowIfNull(place);
        var opening = place.Opening;
        if ((face == Face.Inside ? opening.Splay.Inside : opening.Splay.Outside).Radians == 0)
        {
            return null;
        }

        var (frame, nothing) = (new WallFrame(geometry.House, geometry.Curve, geometry.Wall, [geometry.Wall.Base, geometry.Wall.Top]), new Remarks());
        var outline = OpeningPlaces.OutlineOf(opening, "", nothing);
        var shaft = OpeningPlaces.ShaftOf(frame, opening, outline, place.Station, "", nothing);
        var height = Math.Max(outline.WidestAt, frame.Base);
        var offset = face == Face.Inside ? frame.Wall.InsideOffset(height) : frame.Wall.OutsideOffset(height);
        if (shaft.Meet(-1, offset) is not { } from || shaft.Meet(1, offset) is not { } to)
        {
            return null;
        }

        var (first, second, half) = (shaft.Local(from.Offset(offset)).U, shaft.Local(to.Offset(offset)).U, opening.Width.Metres / 2);
        return new SplayedReveals(-first - half, second - half, second - first, height);
    }
}
