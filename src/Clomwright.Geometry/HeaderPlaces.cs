using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry.Cuts;

namespace Clomwright.Geometry;

/// <summary>Lays headers over openings: straight timbers square to the prism, their underside at the head of the rough opening, in the middle of the wall there.</summary>
internal static class HeaderPlaces
{
    /// <summary>A header in its place with what it displaces, lift by lift.</summary>
    /// <param name="Over">The opening that it lies over.</param>
    /// <param name="Place">The place that others read.</param>
    /// <param name="Box">What is cut out, without what other holes and earlier headers take.</param>
    /// <param name="Span">Its reach along the wall, stations not wrapped.</param>
    /// <param name="Volumes">m3.</param>
    /// <param name="IsSound">Whether nothing had to be remarked of it by itself.</param>
    internal sealed record Placed(PlacedOpening Over, HeaderPlace Place, Box Box, Span Span, double[] Volumes, bool IsSound);

    /// <summary>Headers by the index of the opening that they lie over, with what each displaces. What reaches into another hole or header is remarked and counts there only once.</summary>
    /// <param name="frame">The wall.</param>
    /// <param name="openings">What stands in it.</param>
    /// <param name="before">Headers that lie in this very wall already: one over the same opening, with as much of it clear, is taken over.</param>
    /// <param name="remarks">Takes what cannot lie.</param>
    public static Dictionary<int, Placed> Of(WallFrame frame, List<PlacedOpening> openings, IEnumerable<Placed> before, Remarks remarks)
    {
        var headers = new Dictionary<int, Placed>();
        foreach (var opening in openings.OrderBy(o => o.Index))
        {
            if (opening.Opening.Header is { } header
                && (Again(frame, before.FirstOrDefault(h => h.IsSound && ReferenceEquals(h.Over, opening)), openings, headers, remarks) ?? Stand(frame, opening, header, openings, headers, remarks)) is { } stood)
            {
                headers.Add(opening.Index, stood);
            }
        }

        return headers;
    }

    /// <summary>The header of before, where as much of it is clear as was; else null, and nothing is remarked.</summary>
    private static Placed? Again(WallFrame frame, Placed? header, List<PlacedOpening> openings, Dictionary<int, Placed> others, Remarks remarks)
    {
        if (header is null)
        {
            return null;
        }

        var found = new Remarks();
        if (!Clear(frame, header.Over, header.Box, header.Span, openings, others, found).SequenceEqual(header.Box.Stretches))
        {
            return null;
        }

        remarks.Take(found);
        return header;
    }

    private static Placed? Stand(
        WallFrame frame, PlacedOpening opening, Header header, List<PlacedOpening> openings, Dictionary<int, Placed> others, Remarks remarks)
    {
        var (path, said) = ($"openings[{opening.Index}].header", remarks.Count);
        var (bearing, depth, width) = (header.Bearing.Metres, header.Depth.Metres, header.Pieces * header.Width.Metres);
        if (header.Pieces < 1 || header.Width.Metres <= 0 || depth <= 0 || bearing < 0)
        {
            remarks.ErrorOfParts(path, Message.Of("geometry.header-size", ("name", opening.Opening.Name)));
            return null;
        }

        var half = opening.HalfWidth + bearing;
        var bottom = opening.Head;
        if (bottom + depth > frame.Top + 1e-10)
        {
            remarks.Error(path + ".depth", Message.Of("geometry.header-above-wall", ("name", opening.Opening.Name), ("top", Amount.Metres(bottom + depth)), ("wall", frame.Wall.Top)));
        }

        var (inside, outside) = (frame.Wall.InsideOffset(bottom), frame.Wall.OutsideOffset(bottom));
        var middle = (inside + outside) / 2;
        var shaft = frame.Straight(opening.Hole.Shaft.Middle.Station, half);
        var span = new Span(Foot(frame, shaft, -half, middle), Foot(frame, shaft, half, middle));
        if (double.IsNaN(span.Width) || shaft.Meet(-1, inside) is null || shaft.Meet(1, inside) is null)
        {
            remarks.Error(path + ".bearing", Message.Of("geometry.header-longer-than-curve", ("name", opening.Opening.Name), ("length", Amount.Metres(2 * half))));
            return null;
        }

        var outline = Outline.Rectangle(bottom, depth);
        var box = new Box(shaft, outline, half, middle - width / 2, middle + width / 2, [(-half, half)]);
        var isSound = remarks.Count == said;
        box = box with { Stretches = Clear(frame, opening, box, span, openings, others, remarks) };

        // Where a hollow of the plan is tighter than the wall (an error told elsewhere) a face may not be met at all: nothing is displaced there.
        double[] volumes = [.. frame.Lifts.Select(box.Volume).Select(v => double.IsFinite(v) ? v : 0)];
        var place = new HeaderPlace(2 * half, Spans.Wrapped(span, frame.Curve), bottom, bottom + depth, width, outside - inside, volumes.Sum(), Proud(box, inside, box.From, 1))
        {
            ProudOutside = Proud(box, outside, box.To, -1),
        };
        return new Placed(opening, place, box, span, volumes, isSound);
    }

    /// <summary>The stretches of a header that no other hole and no earlier header takes.</summary>
    private static List<(double From, double To)> Clear(
        WallFrame frame, PlacedOpening opening, Box box, Span span, List<PlacedOpening> openings, Dictionary<int, Placed> others, Remarks remarks)
    {
        var path = $"openings[{opening.Index}].header";
        var clear = new List<(double From, double To)> { (-box.HalfWidth, box.HalfWidth) };
        foreach (var other in openings)
        {
            if (ReferenceEquals(other, opening))
            {
                continue;
            }

            if (Spans.Overlap(other.Widest, span, frame.Curve.Length) && Spans.Overlap(other.Sill, other.Head, box.Outline.Sill, box.Outline.Head))
            {
                remarks.Error(path + ".bearing", Message.Of("geometry.header-reaches-opening", ("name", opening.Opening.Name), ("other", other.Opening.Name)));
                Remove(clear, Along(frame, box, other.Widest));
            }

            if (others.TryGetValue(other.Index, out var header) && Spans.Overlap(header.Place.Span, span, frame.Curve.Length) && Spans.Overlap(header.Place.Bottom, header.Place.Top, box.Outline.Sill, box.Outline.Head))
            {
                remarks.Error(path + ".bearing", Message.Of("geometry.headers-overlap", ("name", opening.Opening.Name), ("other", other.Opening.Name)));
                Remove(clear, Along(frame, box, header.Place.Span));
            }
        }

        return clear;
    }

    /// <summary>A stretch of wall as distances along the header.</summary>
    private static (double From, double To) Along(WallFrame frame, Box box, Span span)
    {
        var middle = (box.From + box.To) / 2;
        return (box.Shaft.Local(frame.Curve.At(span.From, middle)).U, box.Shaft.Local(frame.Curve.At(span.To, middle)).U);
    }

    private static void Remove(List<(double From, double To)> stretches, (double From, double To) taken)
    {
        for (var i = stretches.Count - 1; i >= 0; i--)
        {
            var (from, to) = stretches[i];
            if (taken.From >= to || taken.To <= from)
            {
                continue;
            }

            stretches.RemoveAt(i);
            if (taken.To < to)
            {
                stretches.Insert(i, (taken.To, to));
            }

            if (taken.From > from)
            {
                stretches.Insert(i, (from, taken.From));
            }
        }
    }

    private static double Foot(WallFrame frame, Shaft shaft, double u, double w) =>
        frame.Curve.FootOf(shaft.Plan(u, w), shaft.Middle.Station + u);

    private static double Proud(Box box, double offset, double plane, int sign)
    {
        var before = box.FaceAt(-box.HalfWidth, offset);
        var after = box.FaceAt(box.HalfWidth, offset);
        return Math.Max(sign * (before - plane), sign * (after - plane));
    }
}
