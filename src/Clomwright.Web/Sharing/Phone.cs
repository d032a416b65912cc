namespace Clomwright.Web.Sharing;

/// <summary>What a phone may do.</summary>
public enum PhoneRole
{
    /// <summary>Sees today, the lifts and the papers.</summary>
    Reader,

    /// <summary>Also writes the site record.</summary>
    Logger,
}

/// <summary>A phone that was let in to one house.</summary>
/// <param name="Id">By which it is revoked; says nothing of its token.</param>
/// <param name="Name">As whoever holds it calls it: the author of what it writes.</param>
/// <param name="Role">What it may do.</param>
/// <param name="House">Key of the one house it sees.</param>
/// <param name="Hash">SHA-256 of its token, in hexadecimal; the token itself is kept by the phone alone.</param>
/// <param name="Admitted">When it was let in.</param>
/// <param name="Seen">When it last asked for anything.</param>
internal sealed record Phone(string Id, string Name, PhoneRole Role, string House, string Hash, DateTimeOffset Admitted, DateTimeOffset Seen);

/// <summary>A code that lets one phone in, once.</summary>
/// <param name="Code">What the phone sends; kept nowhere but in what is shown.</param>
/// <param name="Until">When it expires.</param>
internal sealed record PhoneCode(string Code, DateTimeOffset Until);
