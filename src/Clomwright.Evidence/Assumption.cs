namespace Clomwright.Evidence;

/// <summary>A value nobody gave us, on the record with its source.</summary>
/// <param name="Key">Our permanent key, in kebab case.</param>
/// <param name="What">What was assumed and why, in words.</param>
/// <param name="Value">The value used: a quantity, or a word such as a timber or an exposure.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record Assumption(string Key, Message What, Argument Value, Source Source)
{
    /// <summary>Our permanent key; never empty.</summary>
    public string Key { get; init => field = Refuse.Empty(value); } = Refuse.Empty(Key);

    /// <summary>Where it comes from; never null.</summary>
    public Source Source { get; init => field = Refuse.Null(value); } = Refuse.Null(Source);
}
