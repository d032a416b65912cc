using System.Text;
using Clomwright.Evidence;
using Clomwright.Papers;
using Clomwright.Papers.Writers;
using Clomwright.Web.Scenes;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Clomwright.Web.Editing;

/// <summary>What the page reads: words, houses and papers. Changes go through the hub.</summary>
internal static class HouseEndpoints
{
    /// <summary>More parts than any page asks for at once.</summary>
    private const int MostParts = 40;

    public static void MapHouses(this IEndpointRouteBuilder routes)
    {
        var api = routes.MapGroup("/api");
        api.MapGet("/words", () => Words.OfPage);
        api.MapGet("/houses", (OpenHouses houses) => new HouseList(Said(houses.Folder), houses.Cards()));
        api.MapPost("/houses", (NewHouse typed, OpenHouses houses) => Begin(typed, houses));
        api.MapGet("/houses/{key}/fixes", (string key, OpenHouses houses) => houses.Find(key, out var trouble) is { } house
            ? Results.Ok(ComfortSceneOf.Fixes(house.Now.Study, Words.Book)) : Results.NotFound(new Trouble(trouble!)));
        api.MapGet("/houses/{key}/form", (string key, string[] of, OpenHouses houses) => houses.Find(key, out var trouble) is { } house
            ? Results.Ok(house.Form(of.Take(MostParts))) : Results.NotFound(new Trouble(trouble!)));
        routes.MapPapers();
    }

    /// <summary>A folder as its owner would say it: under their home folder with <c>~</c>, where that is how one says it.</summary>
    private static string Said(string folder)
    {
        var home = OperatingSystem.IsWindows() ? "" : Environment.GetFolderPath(Environment.SpecialFolder.UserProfile, Environment.SpecialFolderOption.DoNotVerify);
        return home.Length > 1 && (folder == home || folder.StartsWith(home + '/', StringComparison.Ordinal)) ? "~" + folder[home.Length..] : folder;
    }

    /// <summary>The papers, which phones may read too.</summary>
    public static RouteGroupBuilder MapPapers(this IEndpointRouteBuilder routes)
    {
        var api = routes.MapGroup("/api");
        api.MapGet("/houses/{key}/papers", (string key, string? paper, string? set, OpenHouses houses) => On(key, paper, set, houses, book => Results.Ok(book.State)));
        api.MapGet("/houses/{key}/site.pdf", (string key, string? paper, string? set, OpenHouses houses) => On(key, paper, set, houses, book =>
            Results.Bytes(PdfWriter.Write(book.Site, book.Title, book.Date), "application/pdf")));
        api.MapGet("/houses/{key}/office.pdf", (string key, string? paper, string? set, OpenHouses houses) => On(key, paper, set, houses, book =>
            Results.Bytes(PdfWriter.Write(book.Office, book.Title, book.Date), "application/pdf")));
        api.MapGet("/houses/{key}/templates.pdf", (string key, string? paper, string? set, OpenHouses houses) => On(key, paper, set, houses, book =>
            Results.Bytes(PdfWriter.Write(book.Templates, book.Title, book.Date), "application/pdf")));
        api.MapGet("/houses/{key}/changed.pdf", (string key, string? paper, string? set, OpenHouses houses) => On(key, paper, set, houses, book =>
            book.Changed.ToSequence() is { Count: > 0 } changed ? Results.Bytes(PdfWriter.Write(changed, book.Title, book.Date), "application/pdf") : NotThere("web.issue.none-changed")));
        api.MapGet("/houses/{key}/papers/{sheet}.svg", (string key, string sheet, string? paper, string? set, OpenHouses houses) => On(key, paper, set, houses, book =>
            book.Sheets.FirstOrDefault(s => s.Key == sheet) is { } found
                ? Results.Text(SvgWriter.Write(found), "image/svg+xml", Encoding.UTF8)
                : NotThere("web.papers.none")));
        return api;
    }

    /// <param name="key">Of the house.</param>
    /// <param name="paper">On which paper; null for the usual one.</param>
    /// <param name="set">The letter of a set that was handed out; null for the house as it is now.</param>
    /// <param name="houses">The houses.</param>
    /// <param name="answer">What of the papers is answered.</param>
    private static IResult On(string key, string? paper, string? set, OpenHouses houses, Func<HousePapers, IResult> answer)
    {
        if (houses.Find(key, out var trouble) is not { } house)
        {
            return Results.NotFound(new Trouble(trouble!));
        }

        if (!IsPaper(paper, out var size))
        {
            return NotThere("web.papers.no-size");
        }

        if (set is null)
        {
            return answer(house.Papers(size));
        }

        var (book, problem) = house.Handed(set, size);
        return book is null ? Results.NotFound(new Trouble(Words.Book.Say(problem!, UnitSystem.Metric))) : answer(book);
    }

    /// <summary>Whether a paper is known; none is the usual one.</summary>
    internal static bool IsPaper(string? text, out PaperSize? paper)
    {
        var known = Enum.TryParse<PaperSize>(text, ignoreCase: true, out var chosen) && Enum.IsDefined(chosen) && !char.IsDigit(text[0]);
        paper = known ? chosen : null;
        return known || text is null;
    }

    private static IResult Begin(NewHouse typed, OpenHouses houses)
    {
        var (house, blank, problem) = typed.Read(key => houses.Find(key, out _)?.Now.Study.House);
        if (house is null)
        {
            return Results.UnprocessableEntity(new TypedWrong(Words.Book.Say(problem!, UnitSystem.Metric), blank));
        }

        return houses.Create(house) is { } refused
            ? Results.UnprocessableEntity(new TypedWrong(Words.Book.Say(refused, UnitSystem.Metric), "name"))
            : Results.Ok(new NewHouseMade(house.Id));
    }

    private static IResult NotThere(string reason) => Results.NotFound(new Trouble(Words.Say(reason)));
}

/// <summary>The houses of the folder.</summary>
internal sealed record HouseList(string Folder, IReadOnlyList<HouseCard> Houses);
