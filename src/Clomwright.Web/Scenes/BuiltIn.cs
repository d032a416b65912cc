using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Web.Scenes;

/// <summary>Niches and what is built in, in words, and how far they may be dragged.</summary>
internal static class BuiltIn
{
    public static IReadOnlyList<BuiltInCard> Of(HouseGeometry geometry, Pen pen)
    {
        var house = geometry.House;
        var (bottom, top) = (house.Stem.Top.Metres, house.Wall.Top.Metres);
        return
        [
            .. house.Niches.Select((niche, i) => new BuiltInCard(
                niche.Name, $"niches[{i}]", "niche", pen.Say("web.wall.niche-said", ("name", niche.Name), ("sill", niche.Sill), ("width", niche.Width), ("height", niche.Height)),
                Place(geometry.Niches.FirstOrDefault(place => place.Index == i)?.Station), niche.Sill.Metres, Math.Min(bottom, niche.Sill.Metres), Math.Max((house.Wall.Top - niche.Height).Metres, niche.Sill.Metres))),
            .. house.Embeds.Select((embed, i) => new BuiltInCard(
                embed.Name, $"embeds[{i}]", embed.Kind.ToString().ToLowerInvariant(), pen.Say("web.wall.embed-said", ("name", embed.Name), ("kind", pen.NameOf($"web.word.embed-kind-{embed.Kind.ToString().ToLowerInvariant()}", embed.Kind.ToString())), ("height", embed.Height)),
                Place(geometry.Embeds.FirstOrDefault(place => place.Index == i)?.Station), embed.Height.Metres, Math.Min(0, embed.Height.Metres), Math.Max(top, embed.Height.Metres))),
        ];
    }

    private static double? Place(double? station) => station is { } at ? Pen.Round(at) : null;
}
