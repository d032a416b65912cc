using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Views;

namespace Clomwright.Web.Scenes;

/// <summary>The unrolled wall from one side, cut open at the zero mark, so that nothing jumps while an opening is dragged across it.</summary>
/// <param name="geometry">Of the house.</param>
/// <param name="face">The side.</param>
/// <param name="pen">Whose words and units.</param>
/// <param name="middle">The station in the middle of a view that is only looked at; null for one cut open at the zero mark.</param>
internal sealed class FaceViewOf(HouseGeometry geometry, Face face, Pen pen, double? middle = null)
{
    private const int Along = 128;

    private readonly WallStrip strip = Whole(geometry, face, middle);

    /// <summary>The view, with the places that findings speak of.</summary>
    /// <param name="openings">Openings.</param>
    /// <param name="findings">Findings, with their lines.</param>
    /// <param name="made">Parts as they were made last; null where nothing is remembered.</param>
    public FaceView View(IReadOnlyList<StandingOpening> openings, IEnumerable<(FindingLine Line, Finding Finding)> findings, SceneMemory? made = null)
    {
        made ??= new SceneMemory();
        var (house, curve, wall) = (geometry.House, geometry.Curve, geometry.Wall);
        var zone = Analysis.FreeZone.FromGeometry.Of(geometry);
        var (bottom, top) = (wall.Base.Metres, wall.Top.Metres);
        var stem = Extent.Bottom(house);
        return new FaceView
        {
            Length = Pen.Round(strip.FaceLength),
            Along = made.Keep<IReadOnlyList<double>>(face, "along", curve, () => [.. Enumerable.Range(0, Along + 1).Select(i => Pen.Round(X(curve.Length * i / Along)))]),
            Ticks = made.Keep(face, "ticks", (curve, wall), () => Rulers.Along(strip.FaceLength, arc => strip.X(Within(arc)), pen)),
            Wall = made.Keep<IReadOnlyList<double[][]>>(face, "wall", (curve, wall), () => [Wide(bottom, top)]),
            Stem = made.Keep<IReadOnlyList<double[][]>>(face, "stem", (curve, wall, stem), () => [Wide(stem, bottom)]),
            BondBeam = made.Keep<IReadOnlyList<double[][]>>(face, "bond-beam", (curve, wall, house.BondBeam), () => house.BondBeam is { } beam ? [Wide(top, top + beam.Depth.Metres)] : []),
            LiftLines = made.Keep<IReadOnlyList<double[][]>>(face, "lift-lines", (curve, wall, house.Lifts), () => [.. geometry.Lifts.Take(geometry.Lifts.Count - 1).Select(lift => Line(0, strip.FaceLength, lift.Top.Metres))]),
            Grade = house.Site.Grade?.Metres,
            Openings = [.. openings.Select(o => made.Keep(face, "opening", (curve, wall, o), () => Opening(o), o.Opening.Name))],
            Niches = made.Keep<IReadOnlyList<NicheOutline>>(face, "niches", (curve, wall, geometry.Niches), () => [.. geometry.Niches.Select(Niche)]),
            Embeds = made.Keep<IReadOnlyList<EmbedMark>>(face, "embeds", (curve, wall, geometry.Embeds), () => [.. geometry.Embeds.Select(Embed)]),
            Landings = made.Keep<IReadOnlyList<LandingMark>>(face, "landings", (curve, wall, geometry.Landings), () => [.. geometry.Landings.Select(landing => new LandingMark(landing.Name, Pen.Round(X(landing.Station)), landing.Secondary))]),
            Tees = made.Keep<IReadOnlyList<double[][]>>(face, "tees", (curve, wall, geometry.Tees, house.Tees), () => house.Tees is { } tees ? [.. geometry.Tees.SelectMany(tee => Tee(tee, tees, top))] : []),
            Piers = [.. geometry.Piers.Select(pier => made.Keep(face, "pier", (curve, wall, pier.Span, pier.Heights), () => new PierOutline(pier.Address, Boxes(pier.Span, pier.Heights.From, pier.Heights.To)), pier.Address))],
            Free = made.Keep<IReadOnlyList<double[]>>(face, "free", (curve, wall, zone.Boxes), () => [.. zone.Boxes.SelectMany(b => Boxes(b.Stations, b.Bottom, b.Top))]),
            FreeSays = made.Keep(null, "free-says", (zone.Boxes.Count == 0, zone.Depth), () => zone.Boxes.Count == 0 ? pen.Say("web.free.none") : pen.Say("web.free.says", ("depth", Amount.Metres(zone.Depth)))),
            Marks = [.. findings.Where(f => f.Finding.Places.Count > 0).Select(f => made.Keep(face, "mark", (curve, wall, f.Finding.Places), () => Mark(f.Line.Id, f.Finding.Places), f.Line.Id))],
        };
    }

    private FindingMark Mark(string id, Sequence<Place> places) =>
        new(id, [.. places.SelectMany(place => Boxes(new Span(place.FromStation, place.ToStation), place.FromHeight, place.ToHeight))]);

    private static WallStrip Whole(HouseGeometry geometry, Face face, double? middle)
    {
        var any = new WallStrip(geometry, face, 1, 0, 1, default);
        var from = middle is { } station ? any.Arc(geometry.Curve.Wrap(station)) - any.FaceLength / 2 : 0;
        return new WallStrip(geometry, face, 1, from, from + any.FaceLength, default);
    }

    /// <summary>From the left edge, m, of a station within one turn of the ring; the end of the ring is not its beginning.</summary>
    private double X(double station) => strip.X(middle is null && station >= geometry.Curve.Length ? strip.FaceLength : Within(strip.Arc(station)));

    /// <summary>The same place of the ring on this view.</summary>
    private double Within(double arc) => arc > strip.To + 1e-9 ? Within(arc - strip.FaceLength) : arc < strip.From - 1e-9 ? Within(arc + strip.FaceLength) : arc;

    private OpeningOutline Opening(StandingOpening standing)
    {
        var outline = standing.Place is { } place ? Unrolled.Outline(geometry, place, face) : standing.Rough;
        var header = standing.Place?.Header;
        return new OpeningOutline(
            standing.Opening.Name,
            Turns(outline),
            header is null ? [] : Turns(Corners(header.Span, header.Bottom, header.Top)),
            Pen.Point(strip.X(Within(strip.Arc(geometry.Curve.Wrap(standing.Station)))), standing.Opening.Sill.Metres));
    }

    private NicheOutline Niche(NichePlace niche) => new(
        niche.Niche.Name,
        pen.Say("web.drawing.niche", ("name", niche.Niche.Name), ("left", Amount.Metres(niche.LeftBehind))),
        Turns(Unrolled.Outline(geometry, niche)),
        niche.Niche.Face == face);

    private EmbedMark Embed(EmbedPlace embed) => new(
        embed.Embed.Name,
        embed.Address,
        embed.Embed.Kind.ToString().ToLowerInvariant(),
        pen.Say("web.drawing.embed", ("name", embed.Address), ("height", Amount.Metres(embed.Height))),
        Pen.Point(X(embed.Station), embed.Height),
        embed.Embed.Through || embed.Embed.Face == face);

    private IEnumerable<double[][]> Tee(TeePlace tee, Tees tees, double top)
    {
        var (x, half) = (X(tee.Station), tees.Bar.Metres / 2);
        yield return [Pen.Point(x, top), Pen.Point(x, tee.BarHeight)];
        yield return [Pen.Point(Math.Max(x - half, 0), tee.BarHeight), Pen.Point(Math.Min(x + half, strip.FaceLength), tee.BarHeight)];
    }

    /// <summary>An outline in stations once for every turn of the ring that brings part of it into view.</summary>
    public List<double[][]> Turns(Sequence<WallPoint> outline)
    {
        var points = outline.Select(p => (Arc: strip.Arc(p.Along), p.Up)).ToArray();
        List<double[][]> seen = [];
        foreach (var turn in (double[])[-strip.FaceLength, 0, strip.FaceLength])
        {
            if (points.Any(p => p.Arc + turn > strip.From && p.Arc + turn < strip.To))
            {
                seen.Add([.. points.Select(p => Pen.Point(strip.X(p.Arc + turn), p.Up))]);
            }
        }

        return seen;
    }

    private static Sequence<WallPoint> Corners(Span stations, double bottom, double top) =>
        [new(stations.From, bottom), new(stations.To, bottom), new(stations.To, top), new(stations.From, top)];

    private IReadOnlyList<double[]> Boxes(Span stations, double bottom, double top) =>
    [
        .. strip.Parts(stations).Select(part =>
        {
            var (a, b) = (strip.X(part.From), strip.X(part.To));
            return (double[])[Pen.Round(Math.Min(a, b)), Pen.Round(Math.Max(a, b)), Pen.Round(bottom), Pen.Round(top)];
        }),
    ];

    /// <summary>Where a place on the wall is seen; twice at the zero mark.</summary>
    public IReadOnlyList<double[]> Points(double station, double height) => [.. strip.Arcs(geometry.Curve.Wrap(station)).Select(arc => Pen.Point(strip.X(arc), height))];

    /// <summary>Left and right of a stretch on the view, m; two where it stands across the zero mark.</summary>
    public IReadOnlyList<double[]> Across(double from, double to) => [.. Boxes(new Span(from, to), 0, 0).Select(box => (double[])[box[0], box[1]])];

    private double[][] Wide(double bottom, double top) => [Pen.Point(0, bottom), Pen.Point(strip.FaceLength, bottom), Pen.Point(strip.FaceLength, top), Pen.Point(0, top)];

    private static double[][] Line(double from, double to, double height) => [Pen.Point(from, height), Pen.Point(to, height)];
}
