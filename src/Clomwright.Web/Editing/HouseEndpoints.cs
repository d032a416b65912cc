using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Clomwright.Web.Editing;

/// <summary>What the page reads: words, houses and papers. Changes go through the hub.</summary>
internal static class HouseEndpoints
{
    public static void MapHouses(this IEndpointRouteBuilder routes)
    {
        var api = routes.MapGroup("/api");
        api.MapGet("/words", () => Words.OfPage);
        api.MapGet("/houses", (OpenHouses houses) => new HouseList(houses.Folder, houses.Cards()));
    }
}

/// <summary>The houses of the folder.</summary>
internal sealed record HouseList(string Folder, IReadOnlyList<HouseCard> Houses);
