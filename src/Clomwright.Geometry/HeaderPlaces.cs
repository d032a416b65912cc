using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry.Cuts;

namespace Clomwright.Geometry;

/// <summary>Lays headers over openings: straight timbers square to the prism, their underside at the head of the rough opening, in the middle of the wall there.</summary>
internal static class HeaderPlaces
{
    /// <summary>A header in its place with what it displaces, lift by lift.</summary>
    internal sealed record Placed(HeaderPlace Place, Box Box, double[] Volumes);

    /// <summary>Headers by the opening that they stand over, with what each displaces. What reaches into another hole or header is remarked and counts there only once.</summary>
    public static Dictionary<PlacedOpening, Placed> Of(WallFrame frame, List<PlacedOpening> openings, Remarks remarks)
    {
        var headers = new Dictionary<PlacedOpening, Placed>();
        foreach (var opening in openings.OrderBy(o => o.Index))
        {
            if (opening.Opening.Header is { } header && Stand(frame, opening, header, openings, headers, remarks) is { } stood)
            {
                headers.Add(opening, stood);
            }
        }

        return headers;
    }

    private static Placed? Stand(
        WallFrame frame, PlacedOpening opening, Header header, List<PlacedOpening> openings, Dictionary<PlacedOpening, Placed> others, Remarks remarks)
    {
        var path = $"openings[{opening.Index}].header";
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
        box = box with { Stretches = Clear(frame, opening, box, span, openings, others, path, remarks) };

        // Where a hollow of the plan is tighter than the wall (an error told elsewhere) a face may not be met at all: nothing is displaced there.
        double[] volumes = [.. frame.Lifts.Select(box.Volume).Select(v => double.IsFinite(v) ? v : 0)];
        var place = new HeaderPlace(2 * half, Spans.Wrapped(span, frame.Curve), bottom, bottom + depth, width, outside - inside, volumes.Sum(), Proud(box, inside, box.From, 1))
        {
            ProudOutside = Proud(box, outside, box.To, -1),
        };
        return new Placed(place, box, volumes);
    }

    /// <summary>The stretches of a header that no other hole and no earlier header takes.</summary>
    private static List<(double From, double To)> Clear(
        WallFrame frame, PlacedOpening opening, Box box, Span span, List<PlacedOpening> openings, Dictionary<PlacedOpening, Placed> others, string path, Remarks remarks)
    {
        var clear = new List<(double From, double To)> { (-box.HalfWidth, box.HalfWidth) };
        foreach (var other in openings)
        {
            if (other == opening)
            {
                continue;
            }

            if (Spans.Overlap(other.Widest, span, frame.Curve.Length) && Spans.Overlap(other.Sill, other.Head, box.Outline.Sill, box.Outline.Head))
            {
                remarks.Error(path + ".bearing", Message.Of("geometry.header-reaches-opening", ("name", opening.Opening.Name), ("other", other.Opening.Name)));
                Remove(clear, Along(frame, box, other.Widest));
            }

            if (others.TryGetValue(other, out var header) && Spans.Overlap(header.Place.Span, span, frame.Curve.Length) && Spans.Overlap(header.Place.Bottom, header.Place.Top, box.Outline.Sill, box.Outline.Head))
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
