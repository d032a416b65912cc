using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Numerics.Conduction;
using static Clomwright.Analysis.Comfort.PaintedSection;

namespace Clomwright.Analysis.Comfort;

/// <summary>An edge where parts meet, solved as a section.</summary>
/// <param name="Key">foot, jamb, head, top.</param>
/// <param name="Length">How long it runs, m.</param>
/// <param name="Loss">What it loses beyond the parts beside it, W/(m K); below 0 where their measures count twice.</param>
/// <param name="Coupling">All that the section passes for each kelvin, W/(m K).</param>
/// <param name="Parts">What the parts beside it pass by themselves, W/(m K).</param>
/// <param name="Lowest">Lowest temperature of the inside face over the difference of airs, with the weaker film of damp.</param>
public sealed record HeatEdge(string Key, double Length, double Loss, double Coupling, double Parts, double Lowest)
{
    /// <summary>Of the inside of the wall, from its foot up: temperature of the face over the difference of airs.</summary>
    public Sequence<FaceFactor> Faces { get; init; }
}

/// <summary>How warm the inside face stands at a height between both airs: 0 as outside, 1 as inside.</summary>
/// <param name="Height">m from the finished floor.</param>
/// <param name="Plain">With the usual film.</param>
/// <param name="Corner">With the film of a corner.</param>
/// <param name="Furniture">With the film behind furniture.</param>
public readonly record struct FaceFactor(double Height, double Plain, double Corner, double Furniture);

/// <summary>Solves the sections where parts meet: ISO 10211, inside measures. Plasters are left out of sections and parts alike.</summary>
internal sealed class Junctions(HouseGeometry geometry, ShellParts shell, ComfortNumbers numbers, SolvedSections sections)
{
    private const double Reach = 1.2, FrameConductivity = 0.16, FrameWidth = 0.1, DefaultFrame = 0.1, DefaultFoundation = 0.3;
    private readonly House house = geometry.House;
    private readonly double outsideFilm = numbers["comfort-film-outside"], wallFilm = numbers["comfort-film-wall"], upFilm = numbers["comfort-film-up"], downFilm = numbers["comfort-film-down"];
    private readonly double cob = shell.Cob.Value;
    private readonly double timber = ThermalMaterial.Find("timber")!.Conductivity.Value;

    private readonly Dictionary<Sequence<Lining>, HeatEdge> feet = [];

    /// <summary>Every edge: the foot by what lines it.</summary>
    public Sequence<HeatEdge> All()
    {
        const int stations = 72;
        var alongFoot = Enumerable.Range(0, stations).Select(i => (i + 0.5) * geometry.Curve.Length / stations).GroupBy(s => shell.LinedAt(geometry.Curve.BearingOf(geometry.Curve.At(s))))
            .Select(g => Foot(g.Key) is var foot ? foot with { Length = foot.Length * g.Count() / stations } : null!).ToArray();
        var (jambs, heads) = (0.0, 0.0);
        foreach (var place in geometry.Openings.Where(o => o.Opening.Kind != OpeningKind.Glass))
        {
            var (w, h) = (place.Opening.Width.Metres, place.Opening.Height.Metres);
            jambs += 2 * h + (place.Opening.Kind == OpeningKind.Door ? 0 : w) + (place.Header is null ? w : 0);
            heads += place.Header is null ? 0 : w;
        }

        return [.. alongFoot, .. jambs > 0 ? [Reveal(jambs, null)] : Array.Empty<HeatEdge>(),
            .. heads > 0 ? [Reveal(heads, geometry.Openings.First(o => o.Header is not null).Opening.Header)] : Array.Empty<HeatEdge>(), .. Top() is { } top ? [top] : Array.Empty<HeatEdge>()];
    }

    /// <summary>Floor, ground, stem and the foot of the cob, as far up as the section reaches; its length is that of the whole ring.</summary>
    public HeatEdge Foot(Sequence<Lining> linings)
    {
        if (feet.TryGetValue(linings, out var known))
        {
            return known;
        }

        var (foot, t, stem) = (geometry.Wall.Base.Metres, geometry.Wall.ThicknessAt(geometry.Wall.Base.Metres), house.Stem.Width.Metres);
        var top = foot + Math.Min(Reach, Math.Max(0.3, geometry.Wall.Top.Metres - foot));
        var grade = Math.Min(house.Site.Grade?.Metres ?? 0, foot - 0.02);
        var stemInside = geometry.Stem.Inside;
        var ground = shell.GroundHeat();
        var (half, deep) = (ground.Dimension / 2, 2.5 * ground.Dimension);
        var stemLayer = shell.Stem(null, null).Layers[0];
        var trench = Math.Min(grade, 0) - (house.Trench?.Depth.Metres ?? DefaultFoundation);

        // x = 0 is the inside face of the cob. The middle of the floor stands half its characteristic dimension from the stem.
        var drawn = new PaintedSection(stemInside - half, stemInside + stem + deep, -deep, top);
        drawn.Box(double.NegativeInfinity, double.PositiveInfinity, double.NegativeInfinity, grade, shell.Ground);
        drawn.Box(double.NegativeInfinity, stemInside, grade, 0, shell.Ground);
        drawn.Box(double.NegativeInfinity, (stemInside + stem + Math.Max(0, t)) / 2, 0, double.PositiveInfinity, Inside);
        drawn.Box((stemInside + stem + Math.Max(0, t)) / 2, double.PositiveInfinity, grade, double.PositiveInfinity, Outside);
        var down = 0.0;
        foreach (var layer in shell.Floor())
        {
            drawn.Box(double.NegativeInfinity, stemInside, down - layer.Depth, down, layer.Conductivity);
            down -= layer.Depth;
        }

        if (house.Comfort.FloorEdge is { } edge)
        {
            drawn.Box(stemInside - edge.Thickness.Metres, stemInside, -edge.Depth.Metres, 0, ThermalMaterial.Find(edge.Material)?.Conductivity.Value ?? shell.Ground);
        }

        drawn.Box(stemInside, stemInside + stem, trench, Math.Min(grade, 0), ThermalMaterial.Find("gravel")!.Wet.Value);
        drawn.Box(stemInside, stemInside + stem, Math.Min(grade, 0), foot, stemLayer.Conductivity);
        drawn.Box(0, t, foot, top, cob);
        foreach (var lining in linings)
        {
            Line(drawn, lining, lining.Face == Face.Inside ? 0 : t, lining.Face == Face.Inside ? stemInside : stemInside + stem, foot, top);
        }

        SteadySection Solved(double film) => sections.Of(drawn, SectionAir.Even(0, outsideFilm), new(1, film, downFilm, upFilm));
        var (plain, corner, furniture) = (Solved(wallFilm), Solved(numbers["comfort-film-corner"]), Solved(numbers["comfort-film-furniture"]));
        double Lined(double height) => linings.Where(l => shell.Covers(l, height)).Sum(l => shell.LayerOf(l).Resistance);
        var parts = (top - foot) / (wallFilm + t / cob + Lined((foot + top) / 2) + outsideFilm)
            + Math.Max(0, foot - Math.Max(0, grade)) / (wallFilm + stemLayer.Resistance + Lined(foot / 2) + outsideFilm)
            + half * ground.Transmittance;
        return feet[linings] = Told("foot", geometry.Curve.Length - geometry.Openings.Where(o => o.Sill < foot).Sum(o => o.Opening.Width.Metres), plain, corner, furniture, parts, low: 0);
    }

    /// <summary>A lining of cob and, where it goes down beside it, of the stem.</summary>
    private void Line(PaintedSection drawn, Lining lining, double face, double stemFace, double foot, double top)
    {
        var (k, depth, inside) = (shell.LayerOf(lining).Conductivity, lining.Depth.Metres, lining.Face == Face.Inside);
        var (low, high) = (lining.Bottom?.Metres ?? foot, lining.Top?.Metres ?? top);
        void Beside(double from, double bottom, double up) => drawn.Box(inside ? from - depth : from, inside ? from : from + depth, bottom, up, k);
        Beside(face, Math.Max(low, foot), Math.Min(top, high));
        Beside(stemFace, inside ? Math.Max(0, low) : Math.Max(low, house.Site.Grade?.Metres ?? low), Math.Min(foot, high));
    }

    /// <summary>A frame in the wall: its jamb and sill in cob, or its head under a header.</summary>
    private HeatEdge Reveal(double length, Header? header)
    {
        var t = geometry.Wall.ThicknessAt((geometry.Wall.Base.Metres + geometry.Wall.Top.Metres) / 2);
        var framed = geometry.Openings.FirstOrDefault(o => o.Opening.Frame is not null)?.Opening.Frame;
        var depth = Math.Min(t - 0.02, framed?.Depth.Metres ?? DefaultFrame);
        var setback = Math.Min(t - depth, framed?.Setback?.Metres ?? (t - depth) / 2);
        var drawn = new PaintedSection(-0.1, t + 0.1, -FrameWidth, 1);
        drawn.Box(double.NegativeInfinity, t - setback - depth / 2, double.NegativeInfinity, double.PositiveInfinity, Inside);
        drawn.Box(t - setback - depth, t - setback, double.NegativeInfinity, 0, FrameConductivity);
        drawn.Box(0, t, 0, double.PositiveInfinity, cob);
        if (header is not null)
        {
            var width = Math.Min(t, header.Pieces * header.Width.Metres);
            drawn.Box((t - width) / 2, (t + width) / 2, 0, header.Depth.Metres, timber);
        }

        SteadySection Solved(double film) => sections.Of(drawn, SectionAir.Even(0, outsideFilm), SectionAir.Even(1, film));
        var parts = 1 / (wallFilm + t / cob + outsideFilm) + FrameWidth / (wallFilm + depth / FrameConductivity + outsideFilm);
        return Told(header is null ? "jamb" : "head", length, Solved(wallFilm), Solved(numbers["comfort-film-corner"]), Solved(numbers["comfort-film-furniture"]), parts, low: 0) with { Faces = [] };
    }

    /// <summary>The top of the wall with bond beam and roof; null without a roof that is described.</summary>
    private HeatEdge? Top()
    {
        if (shell.Roof(wet: true) is not { } roof)
        {
            return null;
        }

        var (top, t) = (geometry.Wall.Top.Metres, geometry.Wall.ThicknessAt(geometry.Wall.Top.Metres));
        var deck = top + (house.BondBeam?.Depth.Metres ?? 0);
        var (under, over, edge) = (top - Reach, deck + roof.Depth, t + house.Roof!.Eave.Metres);
        var drawn = new PaintedSection(-1, edge + 0.2, under, over + 0.1);
        drawn.Box(double.NegativeInfinity, 0, under, deck, Inside);
        drawn.Box(0, t, under, deck, cob);
        if (house.BondBeam is { } beam)
        {
            var (width, middle) = (Math.Min(t, beam.Width.Metres), t / 2 + beam.Offset.Metres);
            drawn.Box(Math.Max(0, middle - width / 2), Math.Min(t, middle + width / 2), top, deck, timber);
        }

        var level = deck;
        foreach (var layer in roof.Layers)
        {
            drawn.Box(double.NegativeInfinity, edge, level, level + layer.Depth, layer.Conductivity);
            level += layer.Depth;
        }

        SteadySection Solved(double film, double up) => sections.Of(drawn, SectionAir.Even(0, outsideFilm), new(1, film, film, up));
        var parts = (deck - under) / (wallFilm + t / cob + outsideFilm) + roof.Transmittance;
        SteadySection Weak(string film) => Solved(numbers[film], numbers[film]);
        return Told("top", geometry.Curve.Length, Solved(wallFilm, upFilm), Weak("comfort-film-corner"), Weak("comfort-film-furniture"), parts, under);
    }

    private static HeatEdge Told(string key, double length, SteadySection plain, SteadySection corner, SteadySection furniture, double parts, double low)
    {
        var faces = plain.Surfaces.Select((s, i) => (Surface: s, Index: i)).Where(p => p.Surface.Air == 1 && p.Surface.Upright && p.Surface.Y > low).OrderBy(p => p.Surface.Y)
            .Select(p => new FaceFactor(p.Surface.Y, p.Surface.Temperature, corner.Surfaces[p.Index].Temperature, furniture.Surfaces[p.Index].Temperature)).ToSequence();
        return new(key, length, plain.Flows[1] - parts, plain.Flows[1], parts, corner.Surfaces.Where(s => s.Air == 1).Min(s => s.Temperature)) { Faces = faces };
    }
}
