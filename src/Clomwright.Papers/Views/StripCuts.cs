using Clomwright.Building;
using Clomwright.Geometry;

namespace Clomwright.Papers.Views;

/// <summary>Where the ring is cut so that it can be laid flat.</summary>
internal static class StripCuts
{
    /// <summary>Arcs of one face, ascending: the beginning, cuts between strips, and the end one ring later. The ring begins at the zero mark unless a hole is there.</summary>
    public static IReadOnlyList<double> Of(HouseGeometry geometry, Face face, int count)
    {
        var strip = new WallStrip(geometry, face, 1, 0, 1, default);
        var ring = geometry.Curve.Length;
        var holes = geometry.Openings.Select(o => o.Header is { } h ? Around(Reach(geometry, o, face), h.Span, ring) : Reach(geometry, o, face))
            .Concat(geometry.Niches.Select(n => n.Span))
            .Select(s => new Span(strip.Arc(s.From), strip.Arc(s.To)))
            .ToArray();
        var length = strip.FaceLength;
        var start = Clear(0, holes, length);
        List<double> cuts = [start];
        for (var i = 1; i < count; i++)
        {
            var cut = Clear(start + i * length / count, holes, length);
            if (cut > cuts[^1] + 1e-6 && cut < start + length - 1e-6)
            {
                cuts.Add(cut);
            }
        }

        cuts.Add(start + length);
        return cuts;
    }

    /// <summary>As far as an opening reaches through the cob, and as it is drawn, which through a stem is wider where the faces lean.</summary>
    private static Span Reach(HouseGeometry geometry, OpeningPlace opening, Face face)
    {
        var drawn = Unrolled.Outline(geometry, opening, face);
        return Around(opening.Widest, new(drawn.Min(p => p.Along), drawn.Max(p => p.Along)), geometry.Curve.Length);
    }

    /// <summary>Both together; the second may be told on another turn of the ring.</summary>
    private static Span Around(Span a, Span b, double ring)
    {
        var turns = Math.Round((a.Middle - b.Middle) / ring) * ring;
        return new(Math.Min(a.From, b.From + turns), Math.Max(a.To, b.To + turns));
    }

    /// <summary>The place nearest to an arc that is in no hole: the arc itself, or the middle of a gap beside the holes there.</summary>
    private static double Clear(double arc, Span[] holes, double length)
    {
        if (!InHole(arc))
        {
            return arc;
        }

        const int Steps = 720;
        var step = length / Steps;
        for (var i = 1; i <= Steps / 2; i++)
        {
            foreach (var side in (double[])[-1, 1])
            {
                var at = arc + side * i * step;
                if (!InHole(at) && !InHole(at + side * step))
                {
                    return at;
                }
            }
        }

        return arc;

        bool InHole(double at) => holes.Any(h =>
        {
            var turn = Math.Ceiling((h.From - at) / length);
            return at + turn * length < h.To;
        });
    }
}
