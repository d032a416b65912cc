using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry.Cuts;

namespace Clomwright.Geometry;

/// <summary>Stands openings in the wall. One that cannot stand is remarked and left out; of two that overlap the later in the file is left out.</summary>
internal static class OpeningPlaces
{
    private static readonly double SplayMax = Math.Tan(75 * Math.PI / 180);

    /// <param name="frame">The wall.</param>
    /// <param name="before">Openings that stand in this very wall already: one that is described alike is taken over.</param>
    /// <param name="remarks">Takes what cannot stand.</param>
    public static List<PlacedOpening> Of(WallFrame frame, IReadOnlyList<PlacedOpening> before, Remarks remarks)
    {
        var placed = new List<PlacedOpening>();
        for (var i = 0; i < frame.House.Openings.Count; i++)
        {
            var described = frame.House.Openings[i];
            if ((before.FirstOrDefault(p => p.IsSound && p.Index == i && p.Opening == described) ?? Stand(frame, described, i, remarks)) is not { } opening)
            {
                continue;
            }


            var other = placed.Find(p => Spans.Overlap(p.Widest, opening.Widest, frame.Curve.Length) && Spans.Overlap(p.Sill, p.Head, opening.Sill, opening.Head));
            if (other is null)
            {
                placed.Add(opening);
            }
            else
            {
                remarks.Error($"openings[{i}]", Message.Of("geometry.openings-overlap", ("name", opening.Opening.Name), ("other", other.Opening.Name)));
            }
        }

        placed.Sort((a, b) => a.Hole.Shaft.Middle.Station.CompareTo(b.Hole.Shaft.Middle.Station));
        return placed;
    }

    /// <summary>The place that others read.</summary>
    public static OpeningPlace Told(WallFrame frame, PlacedOpening placed, HeaderPlace? header)
    {
        var (shaft, middle) = (placed.Hole.Shaft, placed.Hole.Shaft.Middle);
        var height = placed.JambHeight(frame);
        var (inside, outside) = (frame.Wall.InsideOffset(height), frame.Wall.OutsideOffset(height));
        return new OpeningPlace
        {
            Opening = placed.Opening,
            Index = placed.Index,
            Station = middle.Station,
            Bearing = frame.Curve.BearingOf(middle.Point),
            Middle = middle.Point,
            Normal = middle.Normal,
            Sill = placed.Sill,
            Head = placed.Head,
            Inside = Spans.Wrapped(Jambs(shaft, inside), frame.Curve),
            Outside = Spans.Wrapped(Jambs(shaft, outside), frame.Curve),
            Widest = placed.Widest,
            Volume = placed.Volumes.Sum(),
            BowInside = Bow(placed.Rough, inside),
            BowOutside = Bow(placed.Rough, outside),
            Header = header,
        };
    }

    private static PlacedOpening? Stand(WallFrame frame, Opening opening, int index, Remarks remarks)
    {
        var (path, said) = ($"openings[{index}]", remarks.Count);
        var (width, height, sill) = (opening.Width.Metres, opening.Height.Metres, opening.Sill.Metres);
        if (width <= 0 || height <= 0)
        {
            remarks.Error(path + (width <= 0 ? ".width" : ".height"), Message.Of("geometry.opening-size", ("name", opening.Name)));
            return null;
        }

        if (frame.StationOf(opening.Along, path, remarks) is not { } station)
        {
            return null;
        }

        if (sill < 0)
        {
            remarks.Error(path + ".sill", Message.Of("geometry.sill-below-floor", ("name", opening.Name), ("sill", opening.Sill)));
        }

        if (sill + height > frame.Top + 1e-10)
        {
            remarks.Error(path + ".height", Message.Of("geometry.head-above-wall", ("name", opening.Name), ("head", Amount.Metres(sill + height)), ("wall", frame.Wall.Top)));
            return null;
        }

        if (sill + height <= frame.Base)
        {
            remarks.Error(path + ".height", Message.Of("geometry.head-below-cob", ("name", opening.Name), ("head", Amount.Metres(sill + height)), ("stem", frame.Wall.Base)));
            return null;
        }

        if (width >= frame.Curve.Length)
        {
            remarks.Error(path + ".width", Message.Of("geometry.opening-wider-than-wall", ("name", opening.Name), ("width", opening.Width), ("length", Amount.Metres(frame.Curve.Length))));
            return null;
        }

        var outline = OutlineOf(opening, path, remarks);
        var hole = new Hole(ShaftOf(frame, opening, outline, station, path, remarks), outline, frame.OffsetLeast, frame.OffsetMost);
        if (!hole.Fits)
        {
            remarks.Error(path + ".width", Message.Of("geometry.opening-wider-than-curve", ("name", opening.Name), ("width", opening.Width)));
            return null;
        }

        return new PlacedOpening(opening, index, hole, frame.Straight(station, width / 2), WidestOf(frame, hole), [.. frame.Lifts.Select(hole.Volume)])
        {
            AsLaid = [.. frame.FirstAsLaid.Select(hole.Volume)],
            InsideFaces = [.. frame.Lifts.Select(hole.InsideFaceArea)],
            OutsideFaces = [.. frame.Lifts.Select(hole.OutsideFaceArea)],
            IsSound = remarks.Count == said,
        };
    }

    internal static Outline OutlineOf(Opening opening, string path, Remarks remarks)
    {
        var (half, height, sill) = (opening.Width.Metres / 2, opening.Height.Metres, opening.Sill.Metres);
        switch (opening.Shape)
        {
            case OpeningShape.Round:
                return Outline.Ellipse(sill, height);
            case OpeningShape.Arched:
                var rise = opening.Rise?.Metres ?? Math.Min(half, height);
                if (rise > 0 && rise <= height)
                {
                    return Outline.Arched(sill, height, half, rise);
                }

                remarks.Error(path + ".rise", Message.Of("geometry.rise-out-of-range", ("name", opening.Name), ("height", opening.Height)));
                return Outline.Rectangle(sill, height);
            default:
                return Outline.Rectangle(sill, height);
        }
    }

    /// <summary>The frame stands at its setback from the outside face at the jamb height, else in the middle of the wall; without a frame the splays begin at the middle of the wall.</summary>
    internal static Shaft ShaftOf(WallFrame frame, Opening opening, Outline outline, double station, string path, Remarks remarks)
    {
        var height = Math.Max(outline.WidestAt, frame.Base);
        var (inside, outside) = (frame.Wall.InsideOffset(height), frame.Wall.OutsideOffset(height));
        var depth = Math.Clamp(opening.Frame?.Depth.Metres ?? 0, 0, outside - inside);
        var frameOutside = opening.Frame?.Setback is { } setback ? outside - setback.Metres : (inside + outside + depth) / 2;
        if (frameOutside > outside || frameOutside - depth < inside - 1e-9)
        {
            remarks.Error(path + ".frame.setback", Message.Of("geometry.frame-out-of-wall", ("name", opening.Name), ("thickness", Amount.Metres(outside - inside))));
            frameOutside = (inside + outside + depth) / 2;
        }

        return new Shaft(
            frame.Curve, station, opening.Width.Metres / 2,
            SplayOf(opening.Splay.Inside, path + ".splay.inside", remarks), SplayOf(opening.Splay.Outside, path + ".splay.outside", remarks),
            frameOutside - depth, frameOutside);
    }

    internal static double SplayOf(Angle splay, string path, Remarks remarks)
    {
        var slope = Math.Tan(splay.Radians);
        if (splay.Degrees >= 0 && splay.Degrees <= 75 && slope <= SplayMax)
        {
            return slope;
        }

        remarks.Error(path, new Message("geometry.splay-out-of-range"));
        return 0;
    }

    private static Span Jambs(Shaft shaft, double offset) =>
        shaft.Meet(-1, offset) is { } from && shaft.Meet(1, offset) is { } to ? new Span(from.Station, to.Station) : new Span(shaft.Middle.Station, shaft.Middle.Station);

    private static Span WidestOf(WallFrame frame, Hole hole)
    {
        var (low, high) = (Math.Max(hole.Outline.Sill, frame.Base), Math.Min(hole.Outline.Head, frame.Top));
        var offsets = new List<double> { frame.Wall.InsideOffset(low), frame.Wall.InsideOffset(high), frame.Wall.OutsideOffset(low), frame.Wall.OutsideOffset(high) };
        var (least, most) = (offsets.Min(), offsets.Max());
        hole.Shaft.AddKinks(1, offsets);
        double from = double.PositiveInfinity, to = double.NegativeInfinity;
        foreach (var offset in offsets)
        {
            if (offset >= least && offset <= most)
            {
                var jambs = Jambs(hole.Shaft, offset);
                (from, to) = (Math.Min(from, jambs.From), Math.Max(to, jambs.To));
            }
        }

        return Spans.Wrapped(new Span(from, to), frame.Curve);
    }

    private static double Bow(Shaft rough, double offset)
    {
        if (rough.Meet(-1, offset) is not { } from || rough.Meet(1, offset) is not { } to)
        {
            return 0;
        }

        return offset - (rough.Local(from.Offset(offset)).W + rough.Local(to.Offset(offset)).W) / 2;
    }
}
