using System.Globalization;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry.Cuts;

namespace Clomwright.Geometry.Solids;

/// <summary>The placed house as closed bodies of triangles: wall, stem, bond beam, headers, leaves and glass, tees and what is built in. Poles lie above this room.</summary>
/// <remarks>
/// The wall is the cob between its trimmed faces less openings and niches; headers, tees and embeds stand in it as bodies of their own and are not cut from it. What nobody described is drawn at a
/// size that is told here: an embed without sizes 2 in wide and deep, glass and leaves as thick as <see cref="GlassThickness"/> and <see cref="LeafThickness"/>, the stem down to a little under the ground.
/// </remarks>
public static class HouseSolids
{
    /// <summary>Thickness that glass is drawn with, m.</summary>
    public const double GlassThickness = 0.02;

    /// <summary>Thickness that the leaf of a door is drawn with, m.</summary>
    public const double LeafThickness = 0.045;

    /// <summary>What is built in stands this much out of its face, so that it can be seen, m.</summary>
    public const double Proud = 0.006;

    /// <summary>The stem is drawn down to this much under the ground, m.</summary>
    public const double BelowGround = 0.15;

    /// <summary>Side of an embed without a size, and of the timber of tees nobody described, m: 2 in.</summary>
    private const double Usual = 0.0508;

    private const int Lines = 192;
    private const double Row = 0.2;
    private const int EmbedsMost = 400;

    /// <summary>All solids that can be made; what has no size or no place is left out.</summary>
    public static Sequence<SolidMesh> Of(HouseGeometry geometry)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        var house = geometry.House;
        var beam = BeamLine.Of(house, geometry.Wall);
        var top = geometry.Wall.Top.Metres;
        List<SolidMesh?> solids =
        [
            Wall(geometry), Stem(geometry),
            house.BondBeam is { } timber ? Ring(geometry, "bond beam", SolidPart.BondBeam, Straight(top, top + timber.Depth.Metres, beam - timber.Width.Metres / 2, beam + timber.Width.Metres / 2)) : null,
            .. geometry.Openings.SelectMany(o => new[] { Header(geometry, o), Filling(geometry, o) }),
            .. house.Tees is { } tees ? geometry.Tees.Select(t => Tee(geometry, tees, t, beam)) : [],
            .. geometry.Embeds.Take(EmbedsMost).Select(e => Embed(geometry, e)),
        ];
        var taken = new HashSet<string>(StringComparer.Ordinal);
        return solids.OfType<SolidMesh>().Select(s => s with { Name = Named(s.Name, taken) }).ToSequence();
    }

    /// <summary>Two things of one name are told apart.</summary>
    private static string Named(string name, HashSet<string> taken)
    {
        for (var n = 2; !taken.Add(name); n++)
        {
            name = string.Create(CultureInfo.InvariantCulture, $"{name.Split(" (", 2)[0]} ({n})");
        }

        return name;
    }

    private static Band Straight(double bottom, double top, double inside, double outside) => new(bottom, top, inside, inside, outside, outside);

    private static SolidMesh? Wall(HouseGeometry geometry)
    {
        var (bottom, top) = (geometry.Wall.Base.Metres, geometry.Wall.Top.Metres);
        var frame = new WallFrame(geometry.House, geometry.Curve, geometry.Wall, [geometry.Wall.Base, geometry.Wall.Top]);
        var ring = WallBands.Trimmed(geometry.Wall, bottom, top);
        if (!(top > bottom))
        {
            return null;
        }

        RingHole?[] holes = [.. Openings(geometry, frame, ring), .. geometry.Niches.Select(n => Niche(geometry, frame, ring, n))];
        var mesh = new MeshMaker();
        RingSolid.Add(mesh, geometry.Curve, ring, [.. holes.OfType<RingHole>()], Lines, Row, geometry.Lifts.Skip(1).Select(l => l.Bottom.Metres));
        return mesh.Done("wall", SolidPart.Wall, placed: true);
    }

    private static SolidMesh? Stem(HouseGeometry geometry)
    {
        var house = geometry.House;
        var (inside, outside) = geometry.Stem;
        var (bottom, top) = (Math.Min(house.Site.Grade?.Metres ?? 0, 0) - BelowGround, geometry.Wall.Base.Metres);
        if (!(outside > inside) || !(top > bottom))
        {
            return null;
        }

        var frame = new WallFrame(house, geometry.Curve, geometry.Wall, [geometry.Wall.Base, geometry.Wall.Top]);
        var ring = Straight(bottom, top, inside, outside);
        var mesh = new MeshMaker();
        RingSolid.Add(mesh, geometry.Curve, ring, [.. Openings(geometry, frame, ring).OfType<RingHole>()], Lines, 0, []);
        return mesh.Done("stem", SolidPart.Stem);
    }

    private static SolidMesh? Ring(HouseGeometry geometry, string name, SolidPart part, Band ring)
    {
        if (!(ring.Height > 0) || !(ring.OutsideBottom > ring.InsideBottom))
        {
            return null;
        }

        var mesh = new MeshMaker();
        RingSolid.Add(mesh, geometry.Curve, ring, [], Lines, 0, []);
        return mesh.Done(name, part);
    }

    private static IEnumerable<RingHole?> Openings(HouseGeometry geometry, WallFrame frame, Band ring) => geometry.Openings.Select(place =>
    {
        var outline = OpeningPlaces.OutlineOf(place.Opening, "", new Remarks());
        return RingHole.Through(geometry.Curve, OpeningPlaces.ShaftOf(frame, place.Opening, outline, place.Station, "", new Remarks()), outline, ring);
    });

    private static RingHole? Niche(HouseGeometry geometry, WallFrame frame, Band ring, NichePlace place)
    {
        var niche = place.Niche;
        var (half, fromInside) = (niche.Width.Metres / 2, niche.Face == Face.Inside);
        var back = fromInside ? geometry.Wall.InsideOffset(place.Bottom) + niche.Depth.Metres : geometry.Wall.OutsideOffset(place.Bottom) - niche.Depth.Metres;
        return RingHole.Recess(frame.Straight(place.Station, half), NichePlaces.OutlineOf(niche), ring, half, fromInside, back);
    }

    private static SolidMesh? Header(HouseGeometry geometry, OpeningPlace place)
    {
        if (place.Header is not { } header)
        {
            return null;
        }

        var middle = (geometry.Wall.InsideOffset(header.Bottom) + geometry.Wall.OutsideOffset(header.Bottom)) / 2;
        var mesh = new MeshMaker();
        Box(mesh, geometry, place.Station, header.Length / 2, middle - header.TotalWidth / 2, middle + header.TotalWidth / 2, header.Bottom, header.Top);
        return mesh.Done("header " + place.Opening.Name, SolidPart.Header);
    }

    private static SolidMesh? Filling(HouseGeometry geometry, OpeningPlace place)
    {
        var door = place.Opening.Kind == OpeningKind.Door;
        var thickness = door ? LeafThickness : GlassThickness;
        var shaft = LightShaft.Of(geometry, place);
        var outline = OpeningPlaces.OutlineOf(place.Opening, "", new Remarks());
        var heights = outline.Steps(16).Distinct().Order().ToArray();
        var from = shaft.Glass - thickness / 2;
        var half = shaft.HalfWidth(shaft.Glass);
        SpacePoint At(double z, int side) => SpacePoint.Of(shaft.Plan(side * half * outline.ShareAt(z), from), z);
        SpacePoint[] ring = [.. heights.Select(z => At(z, -1)).Concat(heights.Reverse().Select(z => At(z, 1))).Distinct()];
        if (ring.Length < 3)
        {
            return null;
        }

        // Seen from outside, where the way leads, up the first jamb and down the other turns the right way round.
        var mesh = new MeshMaker();
        mesh.Prism(ring, SpacePoint.Of(thickness * place.Normal, 0));
        return mesh.Done((door ? "leaf " : "glass ") + place.Opening.Name, door ? SolidPart.Leaf : SolidPart.Glass);
    }

    private static SolidMesh? Tee(HouseGeometry geometry, Tees tees, TeePlace tee, double beam)
    {
        var side = tees.Timber?.Metres ?? Usual;
        var top = geometry.Wall.Top.Metres + (geometry.House.BondBeam?.Depth.Metres ?? 0);
        if (!(side > 0) || !(tees.Bar.Metres > side) || !(top > tee.BarHeight + side))
        {
            return null;
        }

        var mesh = new MeshMaker();
        Box(mesh, geometry, tee.Station, tees.Bar.Metres / 2, beam - side / 2, beam + side / 2, tee.BarHeight, tee.BarHeight + side);
        Box(mesh, geometry, tee.Station, side / 2, beam - side / 2, beam + side / 2, tee.BarHeight + side, top);
        return mesh.Done(string.Create(CultureInfo.InvariantCulture, $"tee {tee.Number}"), SolidPart.Tee);
    }

    private static SolidMesh? Embed(HouseGeometry geometry, EmbedPlace place)
    {
        var embed = place.Embed;
        var height = Math.Clamp(place.Height, geometry.Wall.Base.Metres, geometry.Wall.Top.Metres);
        var (inside, outside) = place.Height < geometry.Wall.Base.Metres ? geometry.Stem : (geometry.Wall.InsideOffset(height), geometry.Wall.OutsideOffset(height));
        var width = Some(embed.Width ?? embed.Size);
        var size = embed.Size is { } upright ? Some(upright) : width;
        var depth = Math.Min(Some(embed.Depth), outside - inside);
        var (from, to) = embed.Through ? (inside - Proud, outside + Proud) : embed.Face == Face.Inside ? (inside - Proud, inside + depth) : (outside - depth, outside + Proud);
        var mesh = new MeshMaker();
        if (embed.Kind is EmbedKind.Bottle or EmbedKind.Sleeve or EmbedKind.Pipe or EmbedKind.Peg && width == size)
        {
            mesh.Round(SpacePoint.Of(geometry.Curve.At(place.Station, from), place.Height), SpacePoint.Of(geometry.Curve.At(place.Station, to), place.Height), width / 2, width / 2, 12);
        }
        else
        {
            Box(mesh, geometry, place.Station, width / 2, from, to, place.Height - size / 2, place.Height + size / 2);
        }

        return mesh.Done(place.Address, SolidPart.Embed);

        static double Some(Length? length) => length is { Metres: > 0 and var metres } ? metres : Usual;
    }

    /// <summary>A box square to the wall at a station.</summary>
    private static void Box(MeshMaker mesh, HouseGeometry geometry, double station, double half, double from, double to, double bottom, double top)
    {
        var (at, tangent, normal) = (geometry.Curve.At(station), geometry.Curve.Tangent(station), geometry.Curve.Normal(station));
        SpacePoint At(double u, double z) => SpacePoint.Of(at + u * tangent + from * normal, z);
        mesh.Prism([At(-half, bottom), At(-half, top), At(half, top), At(half, bottom)], SpacePoint.Of((to - from) * normal, 0));
    }
}
