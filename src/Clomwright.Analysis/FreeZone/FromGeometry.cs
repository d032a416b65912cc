using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.FreeZone;

/// <summary>The free zone of a placed house.</summary>
public static class FromGeometry
{
    /// <summary>Where a crew may improvise. Total.</summary>
    /// <remarks>
    /// What carries takes rectangles out of the unrolled cob, each widened by half of the least width that is worth drawing; what is left is widened by the same half again. So no strip narrower or lower than
    /// that is left, and edges stay where the rules put them.
    /// </remarks>
    public static FreeZoneResult Of(HouseGeometry geometry)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        var numbers = FreeZoneNumbers.Of(geometry.House.Assumed);
        var (ring, wall) = (geometry.Curve.Length, geometry.Wall);
        var (bottom, top) = (wall.Base.Metres + numbers["free-zone-foot"], wall.Top.Metres);
        var half = numbers["free-zone-least"] / 2;
        Sequence<WallBox> boxes = [];
        if (Math.Min(wall.ThicknessAt(wall.Base.Metres), wall.ThicknessAt(top)) >= numbers["free-zone-wall"] - Tolerance && top - bottom >= 2 * half && ring > 2 * half)
        {
            WallBox[] taken = [.. Taken(geometry, numbers)];
            var kept = Left(taken.Select(b => Widened(b, half)), ring, bottom + half, top - half).Select(b => Widened(b, half)).ToArray();
            boxes = Left(Left(kept, ring, bottom, top), ring, bottom, top).ToSequence();
        }

        return new FreeZoneResult
        {
            Boxes = boxes, Depth = numbers["free-zone-depth"], Assumptions = numbers.Assumed(FreeZoneNumbers.Keys),
            Share = top > wall.Base.Metres ? boxes.Sum(b => b.Stations.Width * (b.Top - b.Bottom)) / (ring * (top - wall.Base.Metres)) : 0,
        };
    }

    private const double Tolerance = 1e-9;

    /// <summary>What carries, and what is there already.</summary>
    private static IEnumerable<WallBox> Taken(HouseGeometry geometry, FreeZoneNumbers numbers)
    {
        var (low, high) = (geometry.Wall.Base.Metres, geometry.Wall.Top.Metres);
        double beside = numbers["free-zone-beside"], near = numbers["free-zone-built-in"], landing = numbers["free-zone-landing"];
        foreach (var opening in geometry.Openings)
        {
            yield return Around(opening.Widest, beside, opening.Sill - beside, opening.Head + beside);
            if (opening.Header is { } header)
            {
                yield return Around(header.Span, beside, header.Bottom - numbers["free-zone-under-header"], header.Top + beside);
            }
        }

        foreach (var pier in geometry.Piers.Where(p => p.Narrowest < numbers["free-zone-pier"] - Tolerance))
        {
            yield return new(pier.Span, low, high);
        }

        foreach (var pole in geometry.Landings.Where(l => !l.Secondary))
        {
            yield return Around(new Span(pole.Station, pole.Station), landing, high - numbers["free-zone-under-landing"], high);
        }

        foreach (var tee in geometry.Tees)
        {
            var bar = geometry.House.Tees!.Bar.Metres / 2;
            yield return Around(new Span(tee.Station - bar, tee.Station + bar), near, tee.BarHeight - beside, high);
        }

        foreach (var niche in geometry.Niches)
        {
            yield return Around(niche.Span, beside, niche.Bottom - beside, niche.Top + beside);
        }

        foreach (var embed in geometry.Embeds)
        {
            var (wide, tall) = (embed.Embed.Width?.Metres ?? embed.Embed.Size?.Metres ?? 0, embed.Embed.Size?.Metres ?? embed.Embed.Width?.Metres ?? 0);
            yield return Around(new Span(embed.Station - wide / 2, embed.Station + wide / 2), near, embed.Height - tall / 2 - near, embed.Height + tall / 2 + near);
        }
    }

    private static WallBox Around(Span span, double beside, double bottom, double top) => new(new Span(span.From - beside, span.To + beside), bottom, top);

    private static WallBox Widened(WallBox box, double by) => Around(box.Stations, by, box.Bottom - by, box.Top + by);

    /// <summary>What boxes leave of the ring between two heights: columns from one end of a box to the next, each with its free heights, joined where neighbours agree.</summary>
    private static IEnumerable<WallBox> Left(IEnumerable<WallBox> boxes, double ring, double bottom, double top)
    {
        WallBox[] turned = [.. boxes.SelectMany(b => new[] { -1, 0, 1 }.Select(turn => b with { Stations = new Span(b.Stations.From + turn * ring, b.Stations.To + turn * ring) })).Where(b => b.Stations.To > 0 && b.Stations.From < ring)];
        double[] ends = [.. turned.SelectMany(b => new[] { b.Stations.From, b.Stations.To }).Where(s => s > Tolerance && s < ring - Tolerance).Append(0).Append(ring).Order()];
        List<(double From, double To, (double Low, double High)[] Free)> columns = [];
        for (var i = 0; i + 1 < ends.Length; i++)
        {
            if (ends[i + 1] - ends[i] <= Tolerance)
            {
                continue;
            }

            var middle = (ends[i] + ends[i + 1]) / 2;
            var free = Free(turned.Where(b => b.Stations.From < middle && b.Stations.To > middle), bottom, top);
            if (columns.Count > 0 && columns[^1].Free.SequenceEqual(free))
            {
                columns[^1] = columns[^1] with { To = ends[i + 1] };
            }
            else
            {
                columns.Add((ends[i], ends[i + 1], free));
            }
        }

        // A column on the zero mark is one.
        if (columns.Count > 1 && columns[0].Free.SequenceEqual(columns[^1].Free))
        {
            columns[^1] = columns[^1] with { To = columns[0].To + ring };
            columns.RemoveAt(0);
        }

        return columns.SelectMany(c => c.Free.Select(f => new WallBox(new Span(c.From, c.To), f.Low, f.High)));
    }

    private static (double Low, double High)[] Free(IEnumerable<WallBox> over, double bottom, double top)
    {
        List<(double, double)> free = [];
        var reached = bottom;
        foreach (var box in over.OrderBy(b => b.Bottom))
        {
            if (Math.Min(box.Bottom, top) > reached + Tolerance)
            {
                free.Add((reached, Math.Min(box.Bottom, top)));
            }

            reached = Math.Max(reached, box.Top);
        }

        if (top > reached + Tolerance)
        {
            free.Add((reached, top));
        }

        return [.. free];
    }
}
