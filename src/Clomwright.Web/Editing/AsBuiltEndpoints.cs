using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Record;
using Clomwright.Study;
using Clomwright.Web.Scenes;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Clomwright.Web.Editing;

/// <summary>What the site record says was found otherwise than drawn, where it lies on the unrolled wall.</summary>
internal static class AsBuiltEndpoints
{
    public static void MapAsBuilt(this IEndpointRouteBuilder routes) =>
        routes.MapGet("/api/houses/{key}/as-built", (string key, string? face, OpenHouses houses) => houses.Find(key, out var trouble) is not { } house
            ? Results.NotFound(new Trouble(trouble!)) : Results.Ok(Marks(house, face == "outside" ? Face.Outside : Face.Inside)));

    private static IReadOnlyList<FoundMark> Marks(OpenHouse house, Face face)
    {
        var study = house.Now.Study;
        var path = SqliteRecord.Beside(house.FilePath);
        // A link could lead out of the folder.
        var record = new FileInfo(path) is { Exists: true, LinkTarget: null } ? new SqliteRecord(path).Read().Record : SiteRecord.Empty;
        var pen = new Pen(Words.Book, study.House.Units);
        var view = new FaceViewOf(study.Geometry, face, pen);
        return [.. AsBuiltMarks.Of(study.Geometry, record).Select(m => new FoundMark(pen.Say("web.as-built.line", ("part", m.Part), ("what", m.Words)), view.Points(m.Station, m.Bottom)))];
    }
}

/// <summary>Something found otherwise than drawn.</summary>
/// <param name="Line">Part, size and both numbers.</param>
/// <param name="At">Where on the view; twice on the zero mark.</param>
internal sealed record FoundMark(string Line, IReadOnlyList<double[]> At);
