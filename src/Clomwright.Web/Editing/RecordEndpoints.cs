using System.Globalization;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Record;
using Clomwright.Study;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Clomwright.Web.Editing;

/// <summary>The site record of a house: read, and one day written at a time. The page makes the id of an entry, so that one sent twice is one. The house file is never touched.</summary>
internal static class RecordEndpoints
{
    public static void MapRecords(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/houses/{key}/record", (string key, OpenHouses houses) => On(key, houses, (house, store) => Results.Ok(RecordSceneOf.Scene(house.Now.Study, store.Read(), Today))));
        routes.MapPost("/api/houses/{key}/record", (string key, TypedDay typed, OpenHouses houses) => On(key, houses, (house, store) => Write(house.Now.Study, store, typed)));
    }

    private static DateOnly Today => DateOnly.FromDateTime(DateTime.Now);

    private static IResult Write(HouseStudy study, SqliteRecord store, TypedDay typed)
    {
        var (what, blank, problem) = typed.Read();
        problem ??= what is Seen.Day day ? DayWords.Wrong(study, day) : null;
        var added = problem is null ? store.Append(new SiteEntry(typed.Id, DateTimeOffset.Now, Environment.UserName, what!) { Corrects = typed.Corrects }) : default;
        return (problem ?? added.Problem) is { } wrong
            ? Results.UnprocessableEntity(new TypedWrong(Phrasebook.English.Say(Message.Of("web.record.refused", ("problem", wrong)), study.House.Units), blank))
            : Results.Ok(RecordSceneOf.Scene(study, new RecordReading(added.Record!, null), Today));
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

/// <summary>One sentence on what was typed, and the blank it is about; null where it is about the day.</summary>
internal sealed record TypedWrong(string Trouble, string? Blank);

/// <summary>A day as it was typed.</summary>
/// <param name="Id">Made by the page.</param>
/// <param name="Corrects">Id of the entry it takes the place of.</param>
/// <param name="Struck">Why the entry it corrects should not count; null for a day.</param>
/// <param name="Date">As 2027-06-08.</param>
/// <param name="Raised">Inches, or a length with its unit.</param>
/// <param name="Batches">A number.</param>
/// <param name="People">A number.</param>
/// <param name="Hours">A number.</param>
/// <param name="Lift">A number.</param>
/// <param name="Stopped">What ended the laying.</param>
/// <param name="Done">Keys of tasks finished.</param>
/// <param name="Notes">Words.</param>
internal sealed record TypedDay(
    string Id, string? Corrects, string? Struck, string? Date, string? Raised, string? Batches, string? People, string? Hours, string? Lift, string? Stopped, IReadOnlyList<string>? Done, string? Notes)
{
    /// <summary>What was typed, or the blank that is not understood and one sentence on it.</summary>
    public (Seen? What, string? Blank, Message? Problem) Read()
    {
        if (Struck is not null)
        {
            return (new Seen.Struck(Struck), null, null);
        }

        if (!DateOnly.TryParseExact(Date, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
        {
            return (null, "date", new Message("web.record.no-date"));
        }

        var length = default(Length);
        if (Text(Raised) is { } raised && !LengthText.TryParse(raised, Units.Inch, out length, out var problem))
        {
            return (null, "raised", problem);
        }

        foreach (var (blank, text) in new[] { ("batches", Batches), ("people", People), ("hours", Hours), ("lift", Lift) })
        {
            if (Text(text) is { } typed && !(blank is "people" or "lift" ? int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out _) : Number(typed) is not null))
            {
                return (null, blank, Message.Of("web.record.no-number", ("text", OneLine.Of(typed))));
            }
        }

        var stopped = Enum.GetValues<StoppedBy>().Where(s => string.Equals(s.ToString(), Stopped, StringComparison.OrdinalIgnoreCase)).FirstOrDefault();
        return (new Seen.Day(date)
        {
            Raised = Text(Raised) is null ? null : length, Batches = Number(Batches), People = (int?)Number(People), Hours = Number(Hours), Lift = (int?)Number(Lift),
            Stopped = stopped, Done = (Done ?? []).ToSequence(), Notes = Text(Notes),
        }, null, null);
    }

    private static string? Text(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();

    private static double? Number(string? text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out var value) ? value : null;
}
