using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry.Cuts;

namespace Clomwright.Geometry;

/// <summary>Cuts niches into the wall. One that cannot stand is remarked and left out; of two that overlap the later in the file is left out.</summary>
internal static class NichePlaces
{
    /// <summary>A niche in its place with what it displaces, lift by lift.</summary>
    /// <param name="Place">The place that others read.</param>
    /// <param name="Box">What is cut out.</param>
    /// <param name="Volumes">m3.</param>
    /// <param name="IsSound">Whether nothing had to be remarked of it by itself.</param>
    internal sealed record Placed(NichePlace Place, Box Box, double[] Volumes, bool IsSound);

    /// <param name="frame">The wall.</param>
    /// <param name="openings">What stands in it.</param>
    /// <param name="headers">What lies over them.</param>
    /// <param name="before">Niches that are cut into this very wall already: one that is described alike is taken over.</param>
    /// <param name="pierAt">Address of the pier at a station; null where there is none.</param>
    /// <param name="remarks">Takes what cannot be cut.</param>
    public static List<Placed> Of(WallFrame frame, List<PlacedOpening> openings, IEnumerable<HeaderPlace> headers, IReadOnlyList<Placed> before, Func<double, string?> pierAt, Remarks remarks)
    {
        var placed = new List<Placed>();
        for (var i = 0; i < frame.House.Niches.Count; i++)
        {
            var described = frame.House.Niches[i];
            var niche = before.FirstOrDefault(p => p.IsSound && p.Place.Index == i && p.Place.Niche == described) is { } same
                ? same with { Place = same.Place with { Pier = pierAt(same.Place.Station) } }
                : Stand(frame, described, i, pierAt, remarks);
            if (niche is not null && IsFree(frame, niche, openings, headers, placed, remarks))
            {
                placed.Add(niche);
            }
        }

        placed.Sort((a, b) => a.Place.Station.CompareTo(b.Place.Station));
        return placed;
    }

    private static Placed? Stand(WallFrame frame, Niche niche, int index, Func<double, string?> pierAt, Remarks remarks)
    {
        var (path, said) = ($"niches[{index}]", remarks.Count);
        var (width, height, depth, sill) = (niche.Width.Metres, niche.Height.Metres, niche.Depth.Metres, niche.Sill.Metres);
        if (width <= 0 || height <= 0 || depth <= 0)
        {
            remarks.ErrorOfParts(path, Message.Of("geometry.niche-size", ("name", niche.Name)));
            return null;
        }

        if (frame.StationOf(niche.Along, path, remarks) is not { } station)
        {
            return null;
        }

        if (sill < frame.Base - 1e-10 || sill + height > frame.Top + 1e-10)
        {
            remarks.Error(path + ".sill", Message.Of("geometry.niche-off-wall", ("name", niche.Name), ("bottom", frame.Wall.Base), ("top", frame.Wall.Top)));
            return null;
        }

        var outline = OutlineOf(niche);
        var (inside, outside) = (frame.Wall.InsideOffset(sill), frame.Wall.OutsideOffset(sill));
        var isInside = niche.Face == Face.Inside;
        var back = isInside ? inside + depth : outside - depth;
        var shaft = frame.Straight(station, width / 2);
        var box = new Box(
            shaft, outline, width / 2, isInside ? double.NegativeInfinity : back, isInside ? back : double.PositiveInfinity, [(-width / 2, width / 2)]);
        var face = isInside ? inside : outside;
        var left = LeftBehind(frame, box, isInside, back);
        if (double.IsNaN(left) || shaft.Meet(-1, face) is not { } from || shaft.Meet(1, face) is not { } to)
        {
            remarks.Error(path + ".width", Message.Of("geometry.niche-wider-than-curve", ("name", niche.Name), ("width", niche.Width)));
            return null;
        }

        if (left <= 0)
        {
            remarks.Error(path + ".depth", Message.Of("geometry.niche-through-wall", ("name", niche.Name), ("depth", niche.Depth), ("thickness", Amount.Metres(outside - inside))));
            return null;
        }

        var span = Spans.Wrapped(new Span(from.Station, to.Station), frame.Curve);
        double[] volumes = [.. frame.Lifts.Select(box.Volume)];
        return new Placed(new NichePlace(niche, index, station, span, sill, sill + height, volumes.Sum(), left, pierAt(station)), box, volumes, remarks.Count == said);
    }

    /// <summary>An arched niche is a semicircle on straight jambs; one lower than half its width is all arc.</summary>
    internal static Outline OutlineOf(Niche niche)
    {
        var (width, height, sill) = (niche.Width.Metres, niche.Height.Metres, niche.Sill.Metres);
        return niche.Head == NicheHead.Arch ? Outline.Arched(sill, height, width / 2, Math.Min(width / 2, height)) : Outline.Rectangle(sill, height);
    }

    /// <summary>The least depth of cob from the back plane to the far face, along the shaft.</summary>
    private static double LeftBehind(WallFrame frame, Box box, bool isInside, double back)
    {
        var least = double.PositiveInfinity;
        double[] heights = [box.Outline.Sill, box.Outline.Head];
        foreach (var height in heights)
        {
            var far = isInside ? frame.Wall.OutsideOffset(height) : frame.Wall.InsideOffset(height);
            for (var i = -2; i <= 2; i++)
            {
                var gap = box.FaceAt(i * box.HalfWidth / 2, far) - back;
                least = double.IsNaN(gap) ? double.NaN : Math.Min(least, isInside ? gap : -gap);
            }
        }

        return least;
    }

    private static bool IsFree(WallFrame frame, Placed niche, List<PlacedOpening> openings, IEnumerable<HeaderPlace> headers, List<Placed> others, Remarks remarks)
    {
        var place = niche.Place;
        var path = $"niches[{place.Index}]";
        if (openings.Find(o => Spans.Overlap(o.Widest, place.Span, frame.Curve.Length) && Spans.Overlap(o.Sill, o.Head, place.Bottom, place.Top)) is { } opening)
        {
            remarks.Error(path, Message.Of("geometry.niche-in-opening", ("name", place.Niche.Name), ("other", opening.Opening.Name)));
            return false;
        }

        if (headers.Any(h => Spans.Overlap(h.Span, place.Span, frame.Curve.Length) && Spans.Overlap(h.Bottom, h.Top, place.Bottom, place.Top) && Deep(niche) > (h.WallThickness - h.TotalWidth) / 2))
        {
            remarks.Error(path, Message.Of("geometry.niche-in-header", ("name", place.Niche.Name)));
            return false;
        }

        var other = others.Find(o => Spans.Overlap(o.Place.Span, place.Span, frame.Curve.Length) && Spans.Overlap(o.Place.Bottom, o.Place.Top, place.Bottom, place.Top) && Meet(niche, o));
        if (other is not null)
        {
            remarks.Error(path, Message.Of("geometry.niches-overlap", ("name", place.Niche.Name), ("other", other.Place.Niche.Name)));
        }

        return other is null;
    }

    private static double Deep(Placed niche) => niche.Place.Niche.Depth.Metres;

    private static bool Meet(Placed a, Placed b) => a.Place.Niche.Face == b.Place.Niche.Face || Deep(a) >= b.Place.LeftBehind;
}
