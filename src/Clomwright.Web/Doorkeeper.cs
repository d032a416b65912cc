using Microsoft.AspNetCore.Http;

namespace Clomwright.Web;

/// <summary>Lets in only what this machine's own browser asks from our own page.</summary>
/// <remarks>
/// The workbench listens on the loopback address alone. A page of another site can still make a browser on this machine send requests
/// there, so the Host header must be our own (a foreign name that resolves here is refused), and what changes anything must carry our
/// own Origin. <c>Sec-Fetch-Site</c> is set by the browser and cannot be forged by a page: from another site only the page itself may
/// be followed to, never what it says. Fetch Metadata: W3C working draft; Origin: RFC 6454, 7; Host: RFC 9110, 7.2.
/// </remarks>
public static class Doorkeeper
{
    /// <summary>What is asked of the doorkeeper.</summary>
    /// <param name="Method">The HTTP method.</param>
    /// <param name="Path">The path asked for.</param>
    /// <param name="Host">The Host header.</param>
    /// <param name="Origin">The Origin header, null if there is none.</param>
    /// <param name="FetchSite">The Sec-Fetch-Site header, null if there is none.</param>
    /// <param name="LocalPort">The port that the request came in on.</param>
    public readonly record struct Request(string Method, string Path, string Host, string? Origin, string? FetchSite, int LocalPort);

    /// <summary>The key of the reason for turning a request away, or null where it may pass.</summary>
    public static string? Refusal(in Request request) => Refusal(request, OwnHosts(request.LocalPort));

    /// <summary>The same where the machine goes by other addresses.</summary>
    /// <param name="request">What is asked.</param>
    /// <param name="ownHosts">What the Host header may say.</param>
    internal static string? Refusal(in Request request, string[] ownHosts)
    {
        if (!ownHosts.Contains(request.Host, StringComparer.OrdinalIgnoreCase))
        {
            return "web.refused.host";
        }

        var own = request.Origin is not null && string.Equals(request.Origin, $"http://{request.Host}", StringComparison.OrdinalIgnoreCase);
        if (request.Origin is not null && !own)
        {
            return "web.refused.site";
        }

        var speaks = request.Path.StartsWith("/api", StringComparison.OrdinalIgnoreCase) || request.Path.StartsWith("/hub", StringComparison.OrdinalIgnoreCase);
        if (speaks && request.FetchSite is not (null or "same-origin" or "none"))
        {
            return "web.refused.site";
        }

        var changes = !HttpMethods.IsGet(request.Method) && !HttpMethods.IsHead(request.Method);
        var hub = request.Path.StartsWith("/hub", StringComparison.OrdinalIgnoreCase);
        return (changes || hub) && !own ? "web.refused.site" : null;
    }

    private static string[] OwnHosts(int port) => port == 80 ? ["127.0.0.1", "localhost", "127.0.0.1:80", "localhost:80"] : [$"127.0.0.1:{port}", $"localhost:{port}"];
}
