using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>A coming day as a weather service foretells it, typed in: it takes the place of drawn weather.</summary>
/// <param name="Date">The day.</param>
/// <param name="High">Its highest temperature.</param>
/// <param name="Low">Its lowest.</param>
/// <param name="Rain">That falls on it; none for a dry day.</param>
public sealed record SiteDay(DateOnly Date, Temperature High, Temperature Low, Length Rain)
{
    /// <summary>Mean wind, 10 m above open ground; drawn where nobody foretells it.</summary>
    public Speed? Wind { get; init; }

    /// <summary>Sun on a level square metre, MJ; drawn where nobody foretells it.</summary>
    public double? Sun { get; init; }
}
