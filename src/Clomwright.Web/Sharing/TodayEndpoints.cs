using Clomwright.Web.Editing;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Clomwright.Web.Sharing;

/// <summary>The page of a day and what it says.</summary>
internal static class TodayEndpoints
{
    /// <param name="routes">Of either server.</param>
    /// <param name="role">Who asks.</param>
    public static RouteGroupBuilder MapToday(this IEndpointRouteBuilder routes, Func<HttpContext, TodayRole> role)
    {
        var group = routes.MapGroup("");
        group.MapGet("/today/{key}", (string key, HttpContext context, OpenHouses houses) =>
            houses.Find(key, out var trouble) is { } house ? TodayPage.Of(context, key, house.Now.Study.House.Name, role(context)) : Results.NotFound(new Trouble(trouble!)));
        group.MapGet("/api/houses/{key}/today", async (string key, OpenHouses houses, CancellationToken gone) =>
        {
            if (houses.Find(key, out var trouble) is not { } house)
            {
                return Results.NotFound(new Trouble(trouble!));
            }

            var drying = house.Drying.Done;
            await Task.WhenAny(drying, Task.Delay(Timeout.Infinite, gone));
            gone.ThrowIfCancellationRequested();
            return await Task.Run(() => Results.Ok(house.Today(DateTime.Now)), gone);
        });
        return group;
    }
}
