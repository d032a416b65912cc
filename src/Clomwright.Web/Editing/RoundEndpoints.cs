using System.Globalization;
using Clomwright.Evidence;
using Clomwright.Web.Scenes;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Clomwright.Web.Editing;

/// <summary>The house in the round: its bodies, and the sun of a moment.</summary>
internal static class RoundEndpoints
{
    public static void MapRounds(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/houses/{key}/round", async (string key, OpenHouses houses, HttpContext context) => houses.Find(key, out var trouble) is { } house
            ? Results.Ok(await house.After(-1, context.RequestAborted) is var (study, revision) ? RoundSceneOf.Scene(study, revision, Words.Book) : null)
            : Results.NotFound(new Trouble(trouble!)));
        routes.MapGet("/api/houses/{key}/round/sun", (string key, string? day, string? hour, OpenHouses houses) => houses.Find(key, out var trouble) is not { } house
            ? Results.NotFound(new Trouble(trouble!))
            : DateOnly.TryParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)
                && double.TryParse(hour, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var at) && at is >= 0 and <= 24
                ? Results.Ok(RoundSceneOf.Sun(house.Now.Study, date, at, Words.Book))
                : Results.BadRequest(new Trouble(Words.Say("web.round.no-moment"))));
    }
}
