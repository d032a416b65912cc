using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers;
using Clomwright.Record;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Clomwright.Web.Editing;

/// <summary>Which papers changed since they were handed out, and handing them out anew: for this machine's own browser.</summary>
internal static class IssueEndpoints
{
    public static void MapIssues(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/houses/{key}/issue", (string key, string? paper, OpenHouses houses) => On(key, paper, houses, (house, size) => Scene(house, size)));
        routes.MapPost("/api/houses/{key}/issue", (string key, TypedIssue typed, OpenHouses houses) => On(key, typed.Paper, houses, (house, size) => HandOut(house, typed, size)));
    }

    private static IResult HandOut(OpenHouse house, TypedIssue typed, PaperSize? paper)
    {
        var (book, problem) = house.HandOut(typed.Id, Environment.UserName, typed.To?.Trim() ?? "", paper, DateTimeOffset.Now);
        return problem is null
            ? Scene(house, paper, book)
            : Results.UnprocessableEntity(new TypedWrong(Words.Book.Say(Message.Of("web.issue.refused", ("problem", problem)), house.Now.Study.House.Units), "to"));
    }

    /// <param name="house">The house.</param>
    /// <param name="paper">On which paper.</param>
    /// <param name="book">Its papers as they are now, where they were just drawn.</param>
    private static IResult Scene(OpenHouse house, PaperSize? paper, HousePapers? book = null)
    {
        var now = house.Written;
        return Results.Ok(IssueSceneOf.Scene(now, () => book ?? house.Papers(paper), paper ?? PaperOptions.Usual(now.House.Units), house.Now.Saved));
    }

    private static IResult On(string key, string? paper, OpenHouses houses, Func<OpenHouse, PaperSize?, IResult> answer)
    {
        if (houses.Find(key, out var trouble) is not { } house)
        {
            return Results.NotFound(new Trouble(trouble!));
        }

        if (!HouseEndpoints.IsPaper(paper, out var size))
        {
            return Results.NotFound(new Trouble(Words.Say("web.papers.no-size")));
        }

        // A link could lead out of the folder.
        return new FileInfo(SqliteRecord.Beside(house.FilePath)).LinkTarget is null ? answer(house, size) : Results.NotFound(new Trouble(Words.Say("web.record.link")));
    }
}

/// <summary>Papers to hand out, as it was typed.</summary>
/// <param name="Id">Made by the page.</param>
/// <param name="To">To whom.</param>
/// <param name="Paper">On which paper; null takes the usual one.</param>
internal sealed record TypedIssue(string Id, string? To, string? Paper);
