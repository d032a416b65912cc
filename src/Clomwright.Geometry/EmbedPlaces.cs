using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry.Cuts;

namespace Clomwright.Geometry;

/// <summary>Sets embeds in the wall one by one. One that stands in an opening is remarked and left out; one in a niche or header displaces no cob of its own.</summary>
internal static class EmbedPlaces
{
    private const int CountMax = 1000;

    /// <summary>Things that come this near only touch, m.</summary>
    private const double Touching = 1e-9;

    /// <summary>An embed in its place with what it displaces, lift by lift.</summary>
    internal sealed record Placed(EmbedPlace Place, double[] Volumes);

    public static List<Placed> Of(WallFrame frame, List<PlacedOpening> openings, List<NichePlaces.Placed> niches, IReadOnlyCollection<Box> headers, Remarks remarks)
    {
        var placed = new List<Placed>();
        for (var i = 0; i < frame.House.Embeds.Count; i++)
        {
            AddRow(frame, frame.House.Embeds[i], i, openings, niches, headers, placed, remarks);
        }

        return placed;
    }

    private static void AddRow(
        WallFrame frame, Embed embed, int index, List<PlacedOpening> openings, List<NichePlaces.Placed> niches, IReadOnlyCollection<Box> headers, List<Placed> placed, Remarks remarks)
    {
        var path = $"embeds[{index}]";
        if (!IsSound(embed, path, remarks) || frame.StationOf(embed.Along, path, remarks) is not { } first)
        {
            return;
        }

        var spacing = embed.Spacing?.Metres ?? 0;
        var count = embed.Count;
        if (count > 1 && (spacing <= 0 || (count - 1) * spacing > frame.Curve.Length))
        {
            remarks.Error(path + ".spacing", spacing <= 0
                ? Message.Of("geometry.embed-spacing", ("name", embed.Name), ("count", count))
                : Message.Of("geometry.embed-row-too-long", ("name", embed.Name), ("count", count)));
            count = 1;
        }

        var height = embed.Height.Metres;
        if (height > frame.Top)
        {
            remarks.Error(path + ".height", Message.Of("geometry.embed-above-wall", ("name", embed.Name), ("wall", frame.Wall.Top)));
        }

        for (var k = 0; k < count; k++)
        {
            var station = frame.Curve.Wrap(first + k * spacing);
            var address = k == 0 ? embed.Name : $"{embed.Name}#{k + 1}";
            var plug = PlugOf(frame, embed, path, k == 0 ? remarks : null);
            var span = new Span(station - plug.Width / 2, station + plug.Width / 2);
            if (openings.Find(o => Hits(frame, span, plug, o.Widest, o.Sill, o.Head)) is { } opening)
            {
                remarks.Error(path, Message.Of("geometry.embed-in-opening", ("name", address), ("other", opening.Opening.Name)));
                continue;
            }

            var niche = niches.Find(n => Hits(frame, span, plug, n.Place.Span, n.Place.Bottom, n.Place.Top));
            if (niche is not null)
            {
                remarks.Warn(path, Message.Of("geometry.embed-in-niche", ("name", address), ("other", niche.Place.Niche.Name)));
            }

            var lift = frame.LiftAt(height);
            var free = niche is null && !headers.Any(h => InHeader(frame, station, plug, h));
            double[] volumes = free ? [.. frame.Lifts.Select(plug.Volume)] : new double[frame.Lifts.Length];
            placed.Add(new Placed(new EmbedPlace(embed, index, address, station, height, lift, volumes.Sum()), volumes));
        }
    }

    private static bool IsSound(Embed embed, string path, Remarks remarks)
    {
        if (embed.Count is >= 1 and <= CountMax && (embed.Width?.Nanometres ?? 0) >= 0 && (embed.Size?.Nanometres ?? 0) >= 0 && (embed.Depth?.Nanometres ?? 0) >= 0)
        {
            return true;
        }

        remarks.ErrorOfParts(path, Message.Of("geometry.embed-size", ("name", embed.Name), ("most", CountMax)));
        return false;
    }

    /// <summary>Bottles, sleeves, pipes and pegs are round; the rest are boxes. Without a size an embed displaces nothing.</summary>
    private static Plug PlugOf(WallFrame frame, Embed embed, string path, Remarks? remarks)
    {
        var height = embed.Height.Metres;
        var thickness = frame.Wall.ThicknessAt(Math.Clamp(height, frame.Base, frame.Top));
        var width = embed.Width?.Metres ?? embed.Size?.Metres ?? 0;
        var size = embed.Size?.Metres ?? width;
        var depth = embed.Through ? thickness : embed.Depth?.Metres ?? 0;
        if (depth > thickness)
        {
            remarks?.Error(path + ".depth", Message.Of("geometry.embed-deeper-than-wall", ("name", embed.Name), ("thickness", Amount.Metres(thickness))));
            depth = thickness;
        }

        return new Plug(height, width, size, depth, embed.Kind is EmbedKind.Bottle or EmbedKind.Sleeve or EmbedKind.Pipe or EmbedKind.Peg);
    }

    private static bool InHeader(WallFrame frame, double station, Plug plug, Box header)
    {
        var u = header.Shaft.Local(frame.Curve.At(station, (header.From + header.To) / 2));
        return Math.Abs(u.U) < header.HalfWidth + plug.Width / 2 && Math.Abs(u.W - (header.From + header.To) / 2) < header.To - header.From
            && Spans.Overlap(header.Outline.Sill, header.Outline.Head, plug.Middle - plug.Size / 2, plug.Middle + plug.Size / 2);
    }

    private static bool Hits(WallFrame frame, Span span, Plug plug, Span hole, double bottom, double top)
    {
        var shift = Math.Round((hole.Middle - span.Middle) / frame.Curve.Length) * frame.Curve.Length;
        return span.From + shift < hole.To - Touching && span.To + shift > hole.From + Touching
            && plug.Middle - plug.Size / 2 < top - Touching && plug.Middle + plug.Size / 2 > bottom + Touching;
    }
}
