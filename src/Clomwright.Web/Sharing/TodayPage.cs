using System.Net;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Clomwright.Web.Editing;
using Clomwright.Web.Scenes;
using Microsoft.AspNetCore.Http;

namespace Clomwright.Web.Sharing;

/// <summary>The page for one hand on site: one document that holds its own styles, program and words, so that it goes on without signal and can be saved as one file.</summary>
internal static class TodayPage
{
    private static readonly JsonSerializerOptions Json = Options();
    private static readonly string Program = Inline("today/today.js", "</script"), Style = Inline("today/today.css", "</style");

    /// <summary>Nothing runs in it but its own program, and it speaks to nobody but us (Content Security Policy 3, hashes).</summary>
    private static readonly string Policy =
        $"default-src 'none'; script-src '{Digest(Program)}'; style-src '{Digest(Style)}'; connect-src 'self'; img-src 'self' data:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    /// <summary>Today at a house.</summary>
    public static IResult Of(HttpContext context, string key, string name, TodayRole role) => Page(context, Words.Say("web.today.title", ("name", name)), new("today", key, name, RoleText(role)));

    /// <summary>The page that a shown code leads to: whose phone is this?</summary>
    public static IResult Admission(HttpContext context) => Page(context, Words.Say("web.today.in-title"), new("in", "", "", ""));

    /// <summary>What is read by somebody whose phone is not let in.</summary>
    public static Task Stranger(HttpContext context) => Page(context, Words.Say("web.today.in-title"), new("stranger", "", "", "")).ExecuteAsync(context);

    private static string RoleText(TodayRole role) => role.ToString().ToLowerInvariant();

    private static IResult Page(HttpContext context, string title, TodayGiven given)
    {
        context.Response.Headers.ContentSecurityPolicy = Policy;
        context.Response.Headers.CacheControl = "no-store";
        var words = Words.OfPage.Where(word => word.Key.StartsWith("web.today.", StringComparison.Ordinal)).ToDictionary();
        return Results.Text(
            $$"""
            <!doctype html>
            <html lang="{{Words.Book.Language}}">
            <head>
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta name="color-scheme" content="light dark">
            <title>{{WebUtility.HtmlEncode(title)}}</title>
            <link rel="icon" href="data:,">
            <style>{{Style}}</style>
            </head>
            <body>
            <div id="today"></div>
            <script type="application/json" id="given">{{JsonSerializer.Serialize(given with { Words = words }, Json)}}</script>
            <script id="program">{{Program}}</script>
            </body>
            </html>
            """,
            "text/html", Encoding.UTF8, context.Response.StatusCode);
    }

    /// <summary>A built file, with nothing in it that would end the element it stands in.</summary>
    private static string Inline(string file, string end) =>
        Encoding.UTF8.GetString(ClientFiles.Bytes(file)).TrimEnd().ReplaceLineEndings("\n").Replace(end, end.Replace("/", "\\/", StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase);

    private static string Digest(string text) => "sha256-" + Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    private static JsonSerializerOptions Options()
    {
        var json = new JsonSerializerOptions();
        WebJson.Apply(json);
        return json;
    }
}

/// <summary>Who looks at the page of a day.</summary>
internal enum TodayRole
{
    /// <summary>This machine's own browser.</summary>
    Own,

    /// <summary>A phone that reads.</summary>
    Reader,

    /// <summary>A phone that also writes.</summary>
    Logger,
}

/// <summary>What the page is given in its document.</summary>
/// <param name="Mode"><c>today</c>, <c>in</c> before a phone is let in, <c>stranger</c> for one that is not.</param>
/// <param name="Key">Of the house.</param>
/// <param name="Name">Of the house.</param>
/// <param name="Role"><c>own</c>, <c>reader</c> or <c>logger</c>.</param>
internal sealed record TodayGiven(string Mode, string Key, string Name, string Role)
{
    /// <summary>The page's words.</summary>
    public IReadOnlyDictionary<string, string> Words { get; init; } = new Dictionary<string, string>();

    /// <summary>What is shown, in a saved file.</summary>
    public TodayScene? Scene { get; init; }
}
