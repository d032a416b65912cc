namespace Clomwright.Evidence;

/// <summary>How sure we are of a value taken from a source.</summary>
public enum Surety
{
    /// <summary>Read in the named source or a public copy of it.</summary>
    Seen,

    /// <summary>Read in another page that quotes the source.</summary>
    SecondHand,

    /// <summary>Recalled, not re-read. Printed "from memory, unverified".</summary>
    Memory,

    /// <summary>Common practice without a published source.</summary>
    Practice,

    /// <summary>Computed here from stated formulas.</summary>
    Derived,

    /// <summary>Typed in by the user of the house file, with who and when.</summary>
    Entered,

    /// <summary>The source has the value and we do not. Such a rule is "not checked".</summary>
    Missing,
}

/// <summary>Where a value or rule comes from.</summary>
/// <param name="Key">Our key, as in <c>data/sources.json</c>.</param>
/// <param name="Title">The work, edition and place in it, as it is printed.</param>
/// <param name="Surety">How sure we are.</param>
/// <param name="Address">A public address, if there is one.</param>
public sealed record Source(string Key, string Title, Surety Surety, string? Address = null)
{
    /// <summary>Our key; never empty.</summary>
    public string Key { get; init => field = Refuse.Empty(value); } = Refuse.Empty(Key);

    /// <summary>Of a code, a standard or a regulation; other works are published, and no code.</summary>
    public bool IsCode { get; init; }

    /// <summary>What is printed; never empty.</summary>
    public string Title { get; init => field = Refuse.Empty(value); } = Refuse.Empty(Title);
}

/// <summary>The one tag that every printed number carries.</summary>
public enum Tag
{
    /// <summary>Measured on site or in a laboratory.</summary>
    Measured,

    /// <summary>Assumed; an <see cref="Assumption"/> is on the record.</summary>
    Assumed,

    /// <summary>Common practice.</summary>
    Practice,

    /// <summary>From a code, with edition and clause, or another published work: <see cref="Names.Of(Tag, Source)"/> tells them apart.</summary>
    Code,

    /// <summary>Computed from the description.</summary>
    Computed,

    /// <summary>Written in the house file by its author.</summary>
    Given,
}

/// <summary>A value that cannot exist without its source.</summary>
/// <param name="Value">The value to use.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Tag">Measured, assumed, practice or code.</param>
public sealed record Cited<T>(T Value, Source Source, Tag Tag)
{
    /// <summary>Where it comes from; never null.</summary>
    public Source Source { get; init => field = Refuse.Null(value); } = Refuse.Null(Source);
}
