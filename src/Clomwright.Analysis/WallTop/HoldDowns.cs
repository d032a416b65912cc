using Clomwright.Analysis.Members;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.WallTop;

/// <summary>Gathers what holds the roof down to the cob: tees, and straps that are described with their anchors.</summary>
/// <remarks>Cob is counted once: a strap whose anchor lies along the same stretch as the bar of a tee, or as another strap's, is not counted beside it.</remarks>
internal static class HoldDowns
{
    private static readonly string[] Keys = ["strap-uplift", "strap-pull"];

    /// <summary>Those that count, by station; and for every other strap why it does not.</summary>
    public static (Sequence<HoldDown> Counted, Sequence<CheckedMember> NotChecked) Of(HouseGeometry geometry)
    {
        List<HoldDown> counted = geometry.House.Tees is { } made
            ? [.. geometry.Tees.Select(t => new HoldDown(TeeChecks.Subject(t), t.Station, made.Depth.Metres, made.Bar.Metres, t.BarHeight) { InSolidCob = t.InSolidCob })]
            : [];
        List<CheckedMember> not = [];
        foreach (var strap in geometry.House.Roof is null ? [] : geometry.Embeds.Where(e => e.Embed.Kind == EmbedKind.Strap))
        {
            if (Why(geometry, counted, strap) is { } why)
            {
                not.AddRange(Keys.Select(key => new CheckedMember(key, strap.Address, why)));
            }
            else
            {
                var anchor = strap.Embed.Anchor!;
                counted.Add(new HoldDown(strap.Address, strap.Station, anchor.Depth.Metres, anchor.Bar.Metres, geometry.Wall.Top.Metres - anchor.Depth.Metres) { Strap = strap.Embed });
            }
        }

        return (counted.OrderBy(h => h.Station).ToSequence(), not.ToSequence());
    }

    private static Message? Why(HouseGeometry geometry, List<HoldDown> counted, EmbedPlace strap)
    {
        if (strap.Embed.Anchor is not { } anchor)
        {
            return new Message("analysis.walltop.strap-not-described");
        }

        var (bar, height) = (anchor.Bar.Metres, geometry.Wall.Top.Metres - anchor.Depth.Metres);
        if (height < geometry.Wall.Base.Metres)
        {
            return new Message("analysis.walltop.strap-below-cob");
        }

        Span[] cut =
        [
            .. geometry.Openings.Where(o => o.Head > height).Select(o => o.Widest), .. geometry.Openings.Select(o => o.Header).OfType<HeaderPlace>().Where(h => h.Top > height).Select(h => h.Span),
            .. geometry.Niches.Where(n => n.Top > height).Select(n => n.Span),
        ];
        if (cut.Any(s => Apart(geometry, s.Middle, strap.Station) < (s.Width + bar) / 2))
        {
            return new Message("analysis.walltop.strap-in-opening");
        }

        return counted.Find(h => Apart(geometry, h.Station, strap.Station) < (h.Bar + bar) / 2) is { } other
            ? Message.Of("analysis.walltop.strap-same-cob", ("other", other.Subject)) : null;
    }

    /// <summary>The shorter way between two stations, m.</summary>
    public static double Apart(HouseGeometry geometry, double a, double b)
    {
        var ahead = geometry.Curve.Wrap(a - b);
        return Math.Min(ahead, geometry.Curve.Length - ahead);
    }
}
