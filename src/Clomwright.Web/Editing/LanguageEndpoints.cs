using Clomwright.Evidence;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Clomwright.Web.Editing;

/// <summary>The languages that there are, and the choice of one.</summary>
internal static class LanguageEndpoints
{
    public static void MapLanguages(this IEndpointRouteBuilder routes, LanguageFile kept)
    {
        routes.MapGet("/api/languages", () => All());
        routes.MapPost("/api/languages", (LanguageAsked asked, OpenHouses houses) =>
        {
            if (!Phrasebook.Languages.Contains(asked.Language))
            {
                return Results.NotFound(new Trouble(Words.Say("web.language.none", ("languages", new Argument.List([.. Phrasebook.Languages.Select(l => new Argument.Text(l))])))));
            }

            Words.Speak(Phrasebook.In(asked.Language));
            houses.Reword();
            kept.Write(asked.Language);
            return Results.Ok(All());
        });
    }

    /// <summary>Each by its own name.</summary>
    private static LanguageChoice All() => new(Words.Book.Language, [.. Phrasebook.Languages.Select(l => new OneLanguage(l, Phrasebook.In(l).Say(new Message("web.language.own-name"), UnitSystem.Metric)))]);
}

/// <summary>What the page asks for.</summary>
internal sealed record LanguageAsked(string Language);

/// <summary>The language spoken, and those there are.</summary>
internal sealed record LanguageChoice(string Now, IReadOnlyList<OneLanguage> Languages);

/// <summary>A language: its code as in <c>--language</c>, and its own name for itself.</summary>
internal sealed record OneLanguage(string Code, string Name);
