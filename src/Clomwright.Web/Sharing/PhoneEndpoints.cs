using System.Net;
using Clomwright.Evidence;
using Clomwright.Web.Editing;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Clomwright.Web.Sharing;

/// <summary>What this machine's own browser asks about phones: who is let in, a code for the next one, and an end to it.</summary>
internal static class PhoneEndpoints
{
    /// <param name="routes">Of the workbench's own server, which no phone reaches.</param>
    /// <param name="phones">The list.</param>
    /// <param name="door">Where they come in.</param>
    public static void MapPhones(this IEndpointRouteBuilder routes, PhoneList phones, PhoneDoorway door)
    {
        routes.MapGet("/api/phones", (string house, OpenHouses houses) => Scene(house, houses, phones, door.Addresses));
        routes.MapPost("/api/phones/door", async (string house, OpenHouses houses, CancellationToken gone) =>
        {
            await door.Open(LocalAddresses.OfThisMachine(), gone);
            return door.Addresses.Count == 0 ? Results.Conflict(new Trouble(Words.Say("web.phones.no-network"))) : Results.Ok(Scene(house, houses, phones, door.Addresses));
        });
        routes.MapDelete("/api/phones/door", async (string house, OpenHouses houses) =>
        {
            await door.Shut();
            return Scene(house, houses, phones, door.Addresses);
        });
        routes.MapPost("/api/phones/code", (CodeAsked asked, OpenHouses houses) => Invite(asked, houses, phones, door.Addresses));
        routes.MapDelete("/api/phones/{id}", (string id, string house, OpenHouses houses) => phones.Revoke(id) ? Results.Ok(Scene(house, houses, phones, door.Addresses)) : Results.NotFound(new Trouble(Words.Say("web.phones.no-such"))));
    }

    private static IResult Invite(CodeAsked asked, OpenHouses houses, PhoneList phones, IReadOnlyList<Uri> shared)
    {
        if (shared.Count == 0)
        {
            return Results.Conflict(new Trouble(Words.Say("web.phones.not-shared")));
        }

        if (houses.Find(asked.House, out var trouble) is null)
        {
            return Results.NotFound(new Trouble(trouble!));
        }

        if (phones.Phones.Count >= PhoneList.Most)
        {
            return Results.Conflict(new Trouble(Words.Say("web.phones.too-many", ("most", PhoneList.Most))));
        }

        var role = asked.Role == "logger" ? PhoneRole.Logger : PhoneRole.Reader;
        var code = phones.Invite(asked.House, role);
        var link = new Uri(shared.FirstOrDefault(a => a.Authority == asked.Address) ?? shared[0], Admission.Place).ToString() + "#" + code.Code;
        return Results.Ok(new ShownCode(link, QrSquares.Of(link), (int)PhoneList.CodeLasts.TotalMinutes, role == PhoneRole.Logger ? "logger" : "reader"));
    }

    private static PhonesScene Scene(string house, OpenHouses houses, PhoneList phones, IReadOnlyList<Uri> shared)
    {
        string Name(string key) => houses.Find(key, out _)?.Now.Study.House.Name ?? key;
        return new(
            Name(house), [.. shared.Select(a => a.Authority)], phones.IsOpen, phones.IsKept ? null : Words.Say("web.phones.not-kept"),
            [.. phones.Phones.Select(p => new PhoneLine(p.Id, p.Name, Words.Say(p.Role == PhoneRole.Logger ? "web.phones.is-logger" : "web.phones.is-reader"), Name(p.House), Seen(p.Admitted), Seen(p.Seen)))]);
    }

    private static string Seen(DateTimeOffset moment) => Words.Say("web.phones.moment", ("date", DateOnly.FromDateTime(moment.LocalDateTime)), ("time", moment.LocalDateTime.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture)));
}

/// <summary>What the page asks a code for.</summary>
/// <param name="House">Key of the house.</param>
/// <param name="Role"><c>reader</c> or <c>logger</c>.</param>
/// <param name="Address">Which of this machine's addresses the phone is to use; null takes the first.</param>
internal sealed record CodeAsked(string House, string Role, string? Address);

/// <summary>A code to show: the address in it, its squares row by row (1 dark), and how long it lets in, minutes.</summary>
internal sealed record ShownCode(string Link, IReadOnlyList<string> Squares, int Minutes, string Role);

/// <summary>The phones page.</summary>
/// <param name="Name">Of the house whose page this is.</param>
/// <param name="Addresses">Where phones reach this machine; empty where it is not shared.</param>
/// <param name="IsOpen">A code that was shown still lets a phone in.</param>
/// <param name="Trouble">What is wrong; null for nothing.</param>
/// <param name="Phones">Those let in.</param>
internal sealed record PhonesScene(string Name, IReadOnlyList<string> Addresses, bool IsOpen, string? Trouble, IReadOnlyList<PhoneLine> Phones);

/// <summary>One phone in words.</summary>
internal sealed record PhoneLine(string Id, string Name, string Role, string House, string Admitted, string Seen);
