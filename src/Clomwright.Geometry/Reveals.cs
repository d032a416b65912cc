using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry.Cuts;

namespace Clomwright.Geometry;

/// <summary>Surfaces in the thickness of the wall, above the stem.</summary>
/// <param name="Openings">Two for each opening that could be placed: to the inside face and to the outside face.</param>
/// <param name="Niches">One for each niche that could be placed.</param>
public sealed record RevealAreas(Sequence<RevealArea> Openings, Sequence<NicheArea> Niches);

/// <summary>The reveal of one opening from its frame to one face, m2. Without a frame it begins at the middle of the wall.</summary>
/// <param name="Opening">The author's name.</param>
/// <param name="Face">The face that it runs to.</param>
/// <param name="Jambs">Both straight jambs.</param>
/// <param name="Head">Soffit or arch; the whole of a round reveal.</param>
/// <param name="Sill">The level sill; none of a door.</param>
public sealed record RevealArea(string Opening, Face Face, double Jambs, double Head, double Sill);

/// <summary>The surface of one niche, m2.</summary>
/// <param name="Niche">The author's name.</param>
/// <param name="Face">The face that it is let into.</param>
/// <param name="Mouth">What it takes from the face.</param>
/// <param name="Back">Its back.</param>
/// <param name="Sides">Jambs, sill and head.</param>
public sealed record NicheArea(string Niche, Face Face, double Mouth, double Back, double Sides);

/// <summary>Measures reveals and niches for plaster.</summary>
public static class Reveals
{
    /// <summary>The reveals of a placed house.</summary>
    public static RevealAreas Of(HouseGeometry geometry)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        var frame = new WallFrame(geometry.House, geometry.Curve, geometry.Wall, [geometry.Wall.Base, geometry.Wall.Top]);
        return new RevealAreas(
            [.. geometry.Openings.SelectMany(place => new[] { Of(frame, place, Face.Inside), Of(frame, place, Face.Outside) })],
            [.. geometry.Niches.Select(niche => Of(frame, niche))]);
    }

    private static RevealArea Of(WallFrame frame, OpeningPlace place, Face face)
    {
        var (opening, nothing) = (place.Opening, new Remarks());
        var outline = OpeningPlaces.OutlineOf(opening, "", nothing);
        var shaft = OpeningPlaces.ShaftOf(frame, opening, outline, place.Station, "", nothing);
        var (splay, plane) = face == Face.Inside ? (opening.Splay.Inside, shaft.FrameInside) : (opening.Splay.Outside, shaft.FrameOutside);
        var surface = new RevealSurface(frame.Wall, frame.Curve, shaft, outline, opening.Width.Metres / 2, OpeningPlaces.SplayOf(splay, "", nothing), plane, face);
        return new RevealArea(opening.Name, face, surface.Jambs(), surface.Head(), opening.Kind == OpeningKind.Door ? 0 : surface.Sill());
    }

    private static NicheArea Of(WallFrame frame, NichePlace place)
    {
        var niche = place.Niche;
        var (outline, half, sill) = (NichePlaces.OutlineOf(niche), niche.Width.Metres / 2, niche.Sill.Metres);
        var back = niche.Face == Face.Inside ? frame.Wall.InsideOffset(sill) + niche.Depth.Metres : frame.Wall.OutsideOffset(sill) - niche.Depth.Metres;
        var surface = new RevealSurface(frame.Wall, frame.Curve, frame.Straight(place.Station, half), outline, half, 0, back, niche.Face);
        return new NicheArea(niche.Name, niche.Face, surface.Mouth(), surface.Back(), surface.Jambs() + surface.Head() + surface.Sill());
    }
}
