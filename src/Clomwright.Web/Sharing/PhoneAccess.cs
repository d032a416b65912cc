namespace Clomwright.Web.Sharing;

/// <summary>Stands on every place that a phone may ask for; what has none is refused.</summary>
/// <param name="Needs">What a phone must be allowed; null lets in whoever has no token yet.</param>
internal sealed record PhoneAccess(PhoneRole? Needs);
