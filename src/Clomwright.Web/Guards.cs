using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Primitives;

namespace Clomwright.Web;

/// <summary>What both servers do with every request.</summary>
internal static class Guards
{
    /// <summary>What a browser is told about what it gets here.</summary>
    public static void Write(IHeaderDictionary headers)
    {
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers.ContentSecurityPolicy = "default-src 'self'; style-src 'self' 'unsafe-inline'; font-src 'self' data:; img-src 'self' data:; object-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
    }

    /// <summary>What the doorkeeper is asked.</summary>
    public static Doorkeeper.Request Asked(HttpContext context) => new(
        context.Request.Method, context.Request.Path, context.Request.Host.Value ?? "", One(context.Request.Headers.Origin), One(context.Request.Headers["Sec-Fetch-Site"]), context.Connection.LocalPort);

    /// <summary>Turns a request away with one sentence.</summary>
    public static Task Refuse(HttpContext context, int status, string reason)
    {
        context.Response.StatusCode = status;
        return context.Response.WriteAsJsonAsync(new Trouble(Words.Say(reason)), context.RequestAborted);
    }

    private static string? One(StringValues header) => header.Count == 0 ? null : string.Join(", ", header.ToArray());
}
