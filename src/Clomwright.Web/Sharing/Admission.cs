using System.Globalization;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Clomwright.Web.Sharing;

/// <summary>How a phone is let in: it opens the page of the code it was shown, says whose it is and sends the code, which stands behind a <c>#</c> and so in no log and no preview.</summary>
internal static class Admission
{
    /// <summary>The page that a code leads to.</summary>
    public const string Place = "/in";

    /// <summary>How long a token stays with a phone.</summary>
    private static readonly TimeSpan TokenLasts = TimeSpan.FromDays(120);

    public static void MapAdmission(this IEndpointRouteBuilder routes, PhoneDoor door)
    {
        routes.MapGet(Place, (HttpContext context) => TodayPage.Admission(context)).WithMetadata(new PhoneAccess(null));
        routes.MapPost(Place, (AdmissionAsked asked, HttpContext context, PhoneList phones) => Admit(asked, context, phones, door)).WithMetadata(new PhoneAccess(null));
    }

    private static IResult Admit(AdmissionAsked asked, HttpContext context, PhoneList phones, PhoneDoor door)
    {
        var name = (asked.Name ?? "").Trim();
        if (name.Length is 0 or > PhoneList.NameMost || name.Any(char.IsControl))
        {
            return Results.UnprocessableEntity(new Trouble(Words.Say("web.today.in-name-bad", ("most", PhoneList.NameMost.ToString(CultureInfo.InvariantCulture)))));
        }

        if (phones.Admit(asked.Code ?? "", name) is not var (phone, token))
        {
            return Results.Json(new Trouble(Words.Say("web.refused.code")), statusCode: StatusCodes.Status403Forbidden);
        }

        context.Response.Cookies.Append(door.Cookie, token, new CookieOptions { HttpOnly = true, SameSite = SameSiteMode.Strict, Path = "/", MaxAge = TokenLasts, IsEssential = true });
        return Results.Ok(new AdmissionAnswer($"/today/{Uri.EscapeDataString(phone.House)}"));
    }
}

/// <summary>What a phone sends.</summary>
internal sealed record AdmissionAsked(string? Code, string? Name);

/// <summary>Where it goes then.</summary>
internal sealed record AdmissionAnswer(string Place);
