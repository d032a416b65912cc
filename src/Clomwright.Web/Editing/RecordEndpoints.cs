using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Record;
using Clomwright.Study;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Clomwright.Web.Editing;

/// <summary>The site record of a house: read, and one entry written at a time. Who sends makes the id of an entry, so that one sent twice is one. The house file is never touched.</summary>
internal static class RecordEndpoints
{
    /// <summary>All of it, for this machine's own browser.</summary>
    public static void MapRecords(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/houses/{key}/record", (string key, OpenHouses houses) => On(key, houses, (house, store) => Results.Ok(RecordSceneOf.Scene(house.Now.Study, store.Read(), Today))));
        routes.MapPost("/api/houses/{key}/record", (string key, TypedEntry typed, OpenHouses houses) => On(key, houses, (house, store) =>
            Write(house.Now.Study, store, typed, Environment.UserName, record => Results.Ok(RecordSceneOf.Scene(house.Now.Study, new RecordReading(record, null), Today)))));
        routes.MapWriting(_ => Environment.UserName);
    }

    /// <summary>Writing one day of work, which phones may do too: days and corrections of days, never a striking out, and nothing of the record is read by it.</summary>
    /// <param name="routes">Of either server.</param>
    /// <param name="author">Who writes.</param>
    public static RouteGroupBuilder MapWriting(this IEndpointRouteBuilder routes, Func<HttpContext, string> author)
    {
        var group = routes.MapGroup("");
        group.MapPost("/api/houses/{key}/today", (string key, TypedEntry typed, HttpContext context, OpenHouses houses) => typed is not { Struck: null, Kind: null }
            ? Results.UnprocessableEntity(new TypedWrong(Words.Say("web.record.days-only"), null))
            : On(key, houses, (house, store) => Write(house.Now.Study, store, typed, author(context), record => Results.Ok(Written(typed.Id, record, house)), keeps: true)));
        return group;
    }

    private static WrittenAnswer Written(string id, SiteRecord record, OpenHouse house) => new(id, Words.Book.Say(DayWords.Of(record.Find(id)!.What), house.Now.Study.House.Units));

    private static DateOnly Today => DateOnly.FromDateTime(DateTime.Now);

    /// <param name="study">Of the house.</param>
    /// <param name="store">Its record.</param>
    /// <param name="typed">What was typed.</param>
    /// <param name="author">Who writes.</param>
    /// <param name="answer">What is answered of the record with it.</param>
    /// <param name="keeps">Whether a correction keeps what the page that sends it has no blank for.</param>
    private static IResult Write(HouseStudy study, SqliteRecord store, TypedEntry typed, string author, Func<SiteRecord, IResult> answer, bool keeps = false)
    {
        var (what, blank, problem) = typed.Read();
        what = what is Seen.Day day && keeps && typed.Corrects is { } id && store.Read().Record.Find(id)?.What is Seen.Day before
            ? day with { Lift = before.Lift, Hours = before.Hours, Stopped = before.Stopped, Done = before.Done, Who = before.Who, Weather = before.Weather } : what;
        problem ??= DayWords.Wrong(study, what!);
        var added = problem is null ? store.Append(new SiteEntry(typed.Id, DateTimeOffset.Now, author, what!) { Corrects = typed.Corrects }) : default;
        return (problem ?? added.Problem) is { } wrong
            ? Results.UnprocessableEntity(new TypedWrong(Words.Book.Say(Message.Of("web.record.refused", ("problem", wrong)), study.House.Units), blank))
            : answer(added.Record!);
    }

    private static IResult On(string key, OpenHouses houses, Func<OpenHouse, SqliteRecord, IResult> answer)
    {
        if (houses.Find(key, out var trouble) is not { } house)
        {
            return Results.NotFound(new Trouble(trouble!));
        }

        // A link could lead out of the folder.
        var path = SqliteRecord.Beside(house.FilePath);
        return new FileInfo(path).LinkTarget is null ? answer(house, new SqliteRecord(path)) : Results.NotFound(new Trouble(Words.Say("web.record.link")));
    }
}

/// <summary>One sentence on what was typed, and the blank it is about; null where it is about the whole.</summary>
internal sealed record TypedWrong(string Trouble, string? Blank);

/// <summary>What was written.</summary>
internal sealed record WrittenAnswer(string Id, string Line);
