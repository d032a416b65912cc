using Clomwright.Evidence;

namespace Clomwright.Analysis.Drying;

/// <summary>A number about drying that this house's own tests, recipe or roof tell, in place of the assumption of that key.</summary>
/// <param name="Key">Of the assumption it takes the place of.</param>
/// <param name="Middle">As likely as not, SI.</param>
/// <param name="Fast">What makes the wall dry faster.</param>
/// <param name="Slow">What makes it dry slower.</param>
/// <param name="Tag">Measured, given, computed from such, or assumed.</param>
/// <param name="Assumption">What was assumed on the way; null where nothing was.</param>
public sealed record KnownNumber(string Key, double Middle, double Fast, double Slow, Tag Tag, Assumption? Assumption = null)
{
    /// <summary>The same in every case.</summary>
    public static KnownNumber Sure(string key, double value, Tag tag) => new(key, value, value, value, tag);

    /// <summary>The number in one case.</summary>
    public double In(DryingCase way) => way switch { DryingCase.Fast => Fast, DryingCase.Slow => Slow, _ => Middle };
}
