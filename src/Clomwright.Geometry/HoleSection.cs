using Clomwright.Building;
using Clomwright.Geometry.Cuts;

namespace Clomwright.Geometry;

/// <summary>A hole or a recess, layer by layer of the wall's thickness: what it takes from a sheet of cob at some offset from the inside curve.</summary>
public sealed class HoleSection
{
    private readonly Outline outline;
    private readonly Func<double, Span?> jambs;

    private HoleSection(Outline outline, Func<double, Span?> jambs) => (this.outline, this.jambs) = (outline, jambs);

    /// <summary>Its lowest point, m from the finished floor.</summary>
    public double Sill => outline.Sill;

    /// <summary>Its highest point, m.</summary>
    public double Head => outline.Head;

    /// <summary>Whether its jambs are plumb all the way up, so that it is as wide at every height.</summary>
    public bool IsStraight => outline.IsStraight;

    /// <summary>An opening with its splays.</summary>
    public static HoleSection Of(HouseGeometry geometry, OpeningPlace opening)
    {
        var frame = new WallFrame(geometry.House, geometry.Curve, geometry.Wall, [geometry.Wall.Base, geometry.Wall.Top]);
        var outline = OpeningPlaces.OutlineOf(opening.Opening, "", new Remarks());
        var shaft = OpeningPlaces.ShaftOf(frame, opening.Opening, outline, opening.Station, "", new Remarks());
        return new HoleSection(outline, offset => Between(shaft, offset));
    }

    /// <summary>A niche; how deep it goes is for the caller.</summary>
    public static HoleSection Of(HouseGeometry geometry, NichePlace niche)
    {
        var frame = new WallFrame(geometry.House, geometry.Curve, geometry.Wall, [geometry.Wall.Base, geometry.Wall.Top]);
        var shaft = frame.Straight(niche.Station, niche.Niche.Width.Metres / 2);
        return new HoleSection(NichePlaces.OutlineOf(niche.Niche), offset => Between(shaft, offset));
    }

    /// <summary>The stations of its jambs where it is widest, on the curve offset outward by a distance, m; null where it does not reach it. May pass the zero mark.</summary>
    public Span? JambsAt(double offset) => jambs(offset);

    /// <summary>The heights between which it is open at a share of its half width, 0 at the middle to 1 at the jamb, m.</summary>
    public (double Low, double High) HeightsAt(double share) => outline.HeightsAt(share);

    private static Span? Between(Shaft shaft, double offset) =>
        shaft.Meet(-1, offset) is { } from && shaft.Meet(1, offset) is { } to ? new Span(from.Station, to.Station) : null;
}
