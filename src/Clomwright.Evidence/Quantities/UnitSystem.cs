namespace Clomwright.Evidence;

/// <summary>Which units come first when both systems are printed.</summary>
public enum UnitSystem
{
    /// <summary>Feet, inches, pounds first.</summary>
    Imperial,

    /// <summary>Metres, kilograms, pascals first.</summary>
    Metric,
}
