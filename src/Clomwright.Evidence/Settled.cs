namespace Clomwright.Evidence;

/// <summary>A value ready to be used, which either somebody gave or was assumed; then the assumption comes with it.</summary>
/// <remarks>Whoever uses the value passes <see cref="Assumptions"/> on in its own result, so that the list on paper is complete.</remarks>
/// <param name="Value">The value.</param>
/// <param name="Assumption">What was assumed; null for a given value.</param>
public readonly record struct Settled<T>(T Value, Assumption? Assumption)
{
    /// <summary>Given or assumed.</summary>
    public Tag Tag => Assumption is null ? Tag.Given : Tag.Assumed;

    /// <summary>The assumption, if there is one, as a sequence to join with others.</summary>
    public Sequence<Assumption> Assumptions => Assumption is null ? [] : [Assumption];
}

/// <summary>Settles a value that the author may have left out. There is no way to the fallback that leaves no <see cref="Assumption"/>.</summary>
public static class Settle
{
    /// <summary>The given quantity, or the fallback with its assumption.</summary>
    /// <param name="given">What the author wrote, or null.</param>
    /// <param name="fallback">What is assumed otherwise.</param>
    /// <param name="key">Permanent key of the assumption, kebab case.</param>
    /// <param name="what">What is assumed and why, in words.</param>
    /// <param name="source">Where the fallback comes from.</param>
    public static Settled<T> Or<T>(T? given, T fallback, string key, Message what, Source source) where T : struct, IQuantity =>
        given is { } value ? new(value, null) : new(fallback, new Assumption(key, what, fallback.Amount, source));

    /// <summary>The given bare number of a known dimension, or the fallback with its assumption.</summary>
    /// <param name="given">What the author wrote, in SI, or null.</param>
    /// <param name="fallback">What is assumed otherwise.</param>
    /// <param name="key">Permanent key of the assumption, kebab case.</param>
    /// <param name="what">What is assumed and why, in words.</param>
    /// <param name="source">Where the fallback comes from.</param>
    public static Settled<double> Or(double? given, Amount fallback, string key, Message what, Source source) =>
        given is { } value ? new(value, null) : new(fallback.Si, new Assumption(key, what, fallback, source));

    /// <summary>The given word (a timber, an exposure), or the fallback with its assumption.</summary>
    /// <param name="given">What the author wrote, or null.</param>
    /// <param name="fallback">What is assumed otherwise.</param>
    /// <param name="key">Permanent key of the assumption, kebab case.</param>
    /// <param name="what">What is assumed and why, in words.</param>
    /// <param name="source">Where the fallback comes from.</param>
    public static Settled<string> Or(string? given, string fallback, string key, Message what, Source source) =>
        given is not null ? new(given, null) : new(fallback, new Assumption(key, what, fallback, source));
}
