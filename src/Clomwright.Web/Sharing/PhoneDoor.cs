using System.Net;
using System.Security.Cryptography;
using System.Text;
using Clomwright.Evidence;
using Microsoft.AspNetCore.Connections.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Routing;

namespace Clomwright.Web.Sharing;

/// <summary>Stands before everything that phones can ask for: whoever has no token, asks for what is not on the phones' list, for another house or for more than the role allows is turned away.</summary>
/// <remarks>
/// Plain http: whoever listens on the same network can read along and copy a token (RFC 9110, 17.1; RFC 6265, 8.3); the pages say so. Everything else is held here: the Host header is one of our
/// own addresses and the one the request came in on (a foreign name that resolves here is refused), what changes anything carries our own Origin, and the token is a cookie that no
/// script can read and no other site can send (HttpOnly, SameSite=Strict: RFC 6265bis, 5.5).
/// </remarks>
internal sealed class PhoneDoor(PhoneList phones, IReadOnlyList<IPAddress> addresses, string folder)
{
    private static readonly object Held = new();

    /// <summary>What a phone keeps its token in: another name for another folder, since a browser keeps one jar for a machine, whatever the port.</summary>
    public string Cookie { get; } = "clom-phone-" + Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(folder)))[..8];

    /// <summary>The phone that asks; null before it was let in.</summary>
    public static Phone? Of(HttpContext context) => context.Items[typeof(Phone)] as Phone;

    /// <summary>Lets a request through or refuses it.</summary>
    public async Task Guard(HttpContext context, RequestDelegate next)
    {
        Guards.Write(context.Response.Headers);
        context.Response.Headers.CacheControl = "no-store";
        if (context.Request.ContentLength > Workbench.RequestBytesMax)
        {
            await Guards.Refuse(context, StatusCodes.Status413PayloadTooLarge, "web.refused.size");
        }
        else if (Doorkeeper.Refusal(Guards.Asked(context), OwnHosts(context)) is { } refusal)
        {
            await Guards.Refuse(context, StatusCodes.Status403Forbidden, refusal);
        }
        else if (context.GetEndpoint()?.Metadata.GetMetadata<PhoneAccess>() is { Needs: null })
        {
            await next(context);
        }
        else if (phones.Find(context.Request.Cookies[Cookie]) is not { } phone)
        {
            context.Response.Headers.WWWAuthenticate = "Phone";
            await Stranger(context);
        }
        else if (Barred(context, phone) is { } barred)
        {
            await Guards.Refuse(context, StatusCodes.Status403Forbidden, barred);
        }
        else if (!Hold(context, phone))
        {
            context.Abort();
        }
        else
        {
            context.Items[typeof(Phone)] = phone;
            await next(context);
        }
    }

    private static string? Barred(HttpContext context, Phone phone) =>
        context.GetEndpoint()?.Metadata.GetMetadata<PhoneAccess>() is not { Needs: { } needs } ? "web.refused.phone"
        : phone.Role < needs ? "web.refused.role"
        : context.GetRouteValue("key") is string key && key != phone.House ? "web.refused.house"
        : null;

    /// <summary>A person who follows a link gets a page to read, a program one sentence.</summary>
    private static Task Stranger(HttpContext context)
    {
        if (!HttpMethods.IsGet(context.Request.Method) || !context.Request.Headers.Accept.ToString().Contains("text/html", StringComparison.OrdinalIgnoreCase))
        {
            return Guards.Refuse(context, StatusCodes.Status401Unauthorized, "web.refused.token");
        }

        context.Response.StatusCode = StatusCodes.Status401Unauthorized;
        return TodayPage.Stranger(context);
    }

    /// <summary>Remembers the connection, so that it is cut when the phone is revoked; false where that has happened already.</summary>
    private bool Hold(HttpContext context, Phone phone)
    {
        if (context.Features.Get<IConnectionLifetimeFeature>() is not { } line || context.Features.Get<IConnectionItemsFeature>() is not { } items)
        {
            return phones.Holds(phone.Id, context.Connection.Id, context.Abort);
        }

        if (!items.Items.TryAdd(Held, phone.Id))
        {
            return true;
        }

        var id = context.Connection.Id;
        line.ConnectionClosed.Register(() => phones.LetsGo(phone.Id, id));
        return phones.Holds(phone.Id, id, line.Abort);
    }

    /// <summary>The address that the request came in on, where it is one of ours.</summary>
    private string[] OwnHosts(HttpContext context) =>
        context.Connection.LocalIpAddress is { } here && (here.IsIPv4MappedToIPv6 ? here.MapToIPv4() : here) is var address && addresses.Contains(address)
            ? context.Connection.LocalPort == 80 ? [$"{address}", $"{address}:80"] : [$"{address}:{context.Connection.LocalPort}"] : [];
}
