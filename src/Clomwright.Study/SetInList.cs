using System.Globalization;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Study;

/// <summary>Something that is set in while a lift is laid.</summary>
/// <param name="Key">Its name for a machine: the same as long as the house is.</param>
/// <param name="What">What it is.</param>
/// <param name="Height">Of its middle (of what lies or stands: its underside) above the finished floor, m.</param>
/// <param name="Station">Along the inside face from the zero mark, m.</param>
public sealed record SetIn(string Key, Message What, double Height, double Station);

/// <summary>What is set in with each lift: embeds, niches that begin, frames and headers, tees and deadmen.</summary>
public static class SetInList
{
    /// <summary>The list of one lift, from the bottom up, then along the wall.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="lift">The lift. What stands on the wall goes with the last; what lies in the stem is in <see cref="OfStem"/>.</param>
    public static Sequence<SetIn> Of(HouseGeometry geometry, LiftSlice lift)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        ArgumentNullException.ThrowIfNull(lift);
        var here = LiftContents.Of(geometry, lift);
        return Frames(geometry).Where(item => lift.Takes(item.Height))
            .Concat(here.Deadmen.Select(Deadmen))
            .Concat(here.Niches.Select(n => new SetIn($"niche-{n.Niche.Name}", Message.Of("study.set-in.niche", ("name", n.Niche.Name), ("depth", n.Niche.Depth)), n.Bottom, n.Station)))
            .Concat(here.Embeds.Select(Embed))
            .Concat(here.Tees.Select(t => new SetIn($"tee-{t.Number}", Message.Of("study.set-in.tee", ("n", t.Number)), t.BarHeight, t.Station)))
            .OrderBy(item => Math.Round(item.Height, 3)).ThenBy(item => item.Station).ToSequence();
    }

    /// <summary>What goes into the stem, from the bottom up, then along the wall.</summary>
    /// <param name="geometry">The placed house.</param>
    public static Sequence<SetIn> OfStem(HouseGeometry geometry)
    {
        var here = StemContents.Of(geometry);
        return here.Embeds.Select(Embed).Concat(here.Deadmen.Select(Deadmen)).OrderBy(item => Math.Round(item.Height, 3)).ThenBy(item => item.Station).ToSequence();
    }

    private static SetIn Deadmen((OpeningPlace Opening, double Height) pair) => new(
        string.Create(CultureInfo.InvariantCulture, $"deadmen-{pair.Opening.Opening.Name}-{pair.Height * 1000:0}"), Message.Of("study.set-in.deadmen", ("name", pair.Opening.Opening.Name)), pair.Height, pair.Opening.Station);

    private static SetIn Embed(EmbedPlace e) => new(
        $"embed-{e.Address}", Message.Of("study.set-in.embed", ("name", e.Address), ("kind", new Message($"papers.embed.{e.Embed.Kind.ToString().ToLowerInvariant()}")), ("face", new Message($"papers.face.{(e.Embed.Through ? "through" : e.Embed.Face.ToString().ToLowerInvariant())}"))),
        e.Height, e.Station);

    private static IEnumerable<SetIn> Frames(HouseGeometry geometry)
    {
        foreach (var o in geometry.Openings)
        {
            var name = o.Opening.Name;
            yield return new($"sill-{name}", Message.Of("study.set-in.opening", ("name", name)), o.Sill, o.Station);
            if (o.Header is { } header)
            {
                yield return new($"header-{name}", Message.Of("study.set-in.header", ("name", name)), header.Bottom, o.Station);
            }
        }
    }
}
