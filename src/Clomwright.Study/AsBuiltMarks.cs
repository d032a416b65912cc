using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Study;

/// <summary>Something that was found otherwise than drawn. The drawing stays; both numbers are told.</summary>
/// <param name="Part">The author's name.</param>
/// <param name="What">What was measured.</param>
/// <param name="Found">As measured.</param>
/// <param name="Drawn">As drawn.</param>
/// <param name="Station">Where it stands as drawn, m.</param>
/// <param name="Bottom">Its lowest point as drawn, m.</param>
/// <param name="Top">Its highest, m.</param>
/// <param name="On">Day of the measuring.</param>
public sealed record AsBuiltMark(string Part, Measured What, Length Found, Length Drawn, double Station, double Bottom, double Top, DateOnly On)
{
    /// <summary>Both numbers in one line.</summary>
    public Message Words => Message.Of("study.as-built", ("what", new Message($"study.record.measured-{What.ToString().ToLowerInvariant()}")), ("found", Found), ("drawn", Drawn));
}

/// <summary>Finds what the site record says of parts of the drawn wall.</summary>
public static class AsBuiltMarks
{
    /// <summary>The last measuring of each size of each part that is drawn, where it differs from the drawing; in the order of the wall.</summary>
    /// <param name="geometry">The drawn house.</param>
    /// <param name="record">What was seen.</param>
    public static Sequence<AsBuiltMark> Of(HouseGeometry geometry, SiteRecord record)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        ArgumentNullException.ThrowIfNull(record);
        var last = record.Standing.Select(e => e.What).OfType<Seen.AsBuilt>().GroupBy(b => (b.Part, b.What)).Select(g => g.Last());
        return last.Select(b => Mark(geometry, b)).OfType<AsBuiltMark>().Where(m => m.Found != m.Drawn).OrderBy(m => m.Station).ThenBy(m => m.Part, StringComparer.Ordinal).ThenBy(m => m.What).ToSequence();
    }

    private static AsBuiltMark? Mark(HouseGeometry geometry, Seen.AsBuilt seen)
    {
        if (geometry.Openings.FirstOrDefault(o => o.Opening.Name == seen.Part) is { } opening)
        {
            var o = opening.Opening;
            return Told(opening.Station, opening.Sill, opening.Head, o.Width, o.Height, o.Sill, o.Along.Station, null);
        }

        if (geometry.Niches.FirstOrDefault(n => n.Niche.Name == seen.Part) is { } niche)
        {
            var n = niche.Niche;
            return Told(niche.Station, niche.Bottom, niche.Top, n.Width, n.Height, n.Sill, n.Along.Station, n.Depth);
        }

        if (geometry.Embeds.FirstOrDefault(e => e.Address == seen.Part) is { } embed)
        {
            var e = embed.Embed;
            var half = (e.Size ?? e.Width)?.Metres / 2 ?? 0;
            return Told(embed.Station, embed.Height - half, embed.Height + half, e.Width, e.Size, e.Height, e.Along.Station, e.Depth);
        }

        return null;

        AsBuiltMark? Told(double station, double bottom, double top, Length? width, Length? height, Length? sill, Length? along, Length? depth)
        {
            // What is drawn at a bearing has a station that is computed: to the millimetre, as fine as a tape reads.
            var drawn = seen.What switch
            {
                Measured.Width => width,
                Measured.Height => height,
                Measured.Sill => sill,
                Measured.Station => along ?? Length.FromMillimetres((long)Math.Round(station * 1000)),
                _ => depth,
            };
            return drawn is { } known ? new AsBuiltMark(seen.Part, seen.What, seen.Found, known, station, bottom, top, seen.Date) : null;
        }
    }
}
