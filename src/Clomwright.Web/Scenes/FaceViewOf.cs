using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Web.Scenes;

/// <summary>The unrolled wall from one side, always cut open at the zero mark, so that nothing jumps while an opening is dragged across it.</summary>
internal sealed class FaceViewOf(HouseGeometry geometry, Face face, Pen pen)
{
    private const int Along = 128;

    private readonly WallStrip strip = new(geometry, face);

    /// <summary>The view, with the places that findings speak of.</summary>
    public FaceView View(IReadOnlyList<StandingOpening> openings, IEnumerable<(FindingLine Line, Finding Finding)> findings)
    {
        var house = geometry.House;
        var (bottom, top) = (geometry.Wall.Base.Metres, geometry.Wall.Top.Metres);
        return new FaceView
        {
            Length = Pen.Round(strip.FaceLength),
            Along = [.. Enumerable.Range(0, Along + 1).Select(i => Pen.Round(X(geometry.Curve.Length * i / Along)))],
            Ticks = Rulers.Along(strip.FaceLength, strip.X, pen),
            Wall = [Wide(bottom, top)],
            Stem = [Wide(Extent.Bottom(house), bottom)],
            BondBeam = house.BondBeam is { } beam ? [Wide(top, top + beam.Depth.Metres)] : [],
            LiftLines = [.. geometry.Lifts.Take(geometry.Lifts.Count - 1).Select(lift => Line(0, strip.FaceLength, lift.Top.Metres))],
            Grade = house.Site.Grade?.Metres,
            Openings = [.. openings.Select(Opening)],
            Niches = [.. geometry.Niches.Select(Niche)],
            Embeds = [.. geometry.Embeds.Select(Embed)],
            Landings = [.. geometry.Landings.Select(landing => new LandingMark(landing.Name, Pen.Round(X(landing.Station)), landing.Secondary))],
            Tees = house.Tees is { } tees ? [.. geometry.Tees.SelectMany(tee => Tee(tee, tees, top))] : [],
            Piers = [.. geometry.Piers.Select(pier => new PierOutline(pier.Address, Boxes(pier.Span, pier.Heights.From, pier.Heights.To)))],
            Marks =
            [
                .. findings.Where(f => f.Finding.Places.Count > 0).Select(f => new FindingMark(f.Line.Id,
                    [.. f.Finding.Places.SelectMany(place => Boxes(new Span(place.FromStation, place.ToStation), place.FromHeight, place.ToHeight))])),
            ],
        };
    }

    /// <summary>From the left edge, m, of a station within one turn of the ring; the end of the ring is not its beginning.</summary>
    private double X(double station) => strip.X(strip.Arc(station) is var arc && station >= geometry.Curve.Length ? strip.FaceLength : arc);

    private OpeningOutline Opening(StandingOpening standing)
    {
        var span = standing.Place is { } place ? strip.OnFace(place) : standing.Span;
        var header = standing.Place?.Header;
        return new OpeningOutline(
            standing.Opening.Name,
            Turns(span, (left, right) => Outlines.Opening(standing.Opening, left, right)),
            header is null ? [] : Turns(header.Span, (left, right) => Outlines.Box(left, right, header.Bottom, header.Top)),
            Pen.Point(strip.X(strip.Arc(geometry.Curve.Wrap(standing.Station))), standing.Opening.Sill.Metres));
    }

    private NicheOutline Niche(NichePlace niche) => new(
        niche.Niche.Name,
        pen.Say("web.drawing.niche", ("name", niche.Niche.Name), ("left", Amount.Metres(niche.LeftBehind))),
        Turns(niche.Span, (left, right) => Outlines.Niche(niche, left, right)),
        niche.Niche.Face == face);

    private EmbedMark Embed(EmbedPlace embed) => new(
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

    /// <summary>The whole outline once for every turn of the ring that brings part of it into view.</summary>
    private List<double[][]> Turns(Span stations, Func<double, double, double[][]> outline)
    {
        var (from, to) = (strip.Arc(stations.From), strip.Arc(stations.To));
        List<double[][]> seen = [];
        foreach (var turn in (double[])[-strip.FaceLength, 0, strip.FaceLength])
        {
            if (to + turn > 0 && from + turn < strip.FaceLength)
            {
                var (a, b) = (strip.X(from + turn), strip.X(to + turn));
                seen.Add(outline(Math.Min(a, b), Math.Max(a, b)));
            }
        }

        return seen;
    }

    private IReadOnlyList<double[]> Boxes(Span stations, double bottom, double top) =>
    [
        .. strip.Parts(stations).Select(part =>
        {
            var (a, b) = (strip.X(part.From), strip.X(part.To));
            return (double[])[Pen.Round(Math.Min(a, b)), Pen.Round(Math.Max(a, b)), Pen.Round(bottom), Pen.Round(top)];
        }),
    ];

    private double[][] Wide(double bottom, double top) => Outlines.Box(0, strip.FaceLength, bottom, top);

    private static double[][] Line(double from, double to, double height) => [Pen.Point(from, height), Pen.Point(to, height)];
}
