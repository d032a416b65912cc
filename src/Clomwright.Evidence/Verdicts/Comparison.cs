namespace Clomwright.Evidence;

/// <summary>The four words that rules use to compare.</summary>
public enum ComparisonWord
{
    /// <summary>Not more than the limit; the limit itself meets it.</summary>
    AtMost,

    /// <summary>Below the limit; the limit itself falls short.</summary>
    LessThan,

    /// <summary>Not less than the limit; the limit itself meets it.</summary>
    AtLeast,

    /// <summary>Above the limit; the limit itself falls short.</summary>
    MoreThan,
}

/// <summary>A provided value held against a limit of the same dimension, in the rule's own word.</summary>
/// <remarks>
/// Written lengths compare exactly. A length that an engine computed carries rounding of about 1e-15 of itself; hold it to a limit
/// as <see cref="Length.Nearest"/>, so that a pier exactly two feet wide is two feet wide.
/// </remarks>
public sealed record Comparison
{
    /// <summary>Holds a value against a limit; both measure the same.</summary>
    /// <param name="provided">What the house has.</param>
    /// <param name="word">How the rule compares.</param>
    /// <param name="limit">What the rule asks.</param>
    public Comparison(Amount provided, ComparisonWord word, Amount limit)
    {
        if (provided.Dimension != limit.Dimension)
        {
            throw new ArgumentException($"A rule compares {provided.Dimension} with {limit.Dimension}.", nameof(limit));
        }

        (Provided, Word, Limit) = (provided, word, limit);
    }

    /// <summary>What the house has.</summary>
    public Amount Provided { get; }

    /// <summary>How the rule compares.</summary>
    public ComparisonWord Word { get; }

    /// <summary>What the rule asks.</summary>
    public Amount Limit { get; }

    /// <summary>Whether both sides are numbers; without that nothing was compared.</summary>
    public bool IsKnown => !double.IsNaN(Provided.Si) && !double.IsNaN(Limit.Si);

    /// <summary>Whether the rule is met. NaN never meets a rule.</summary>
    public bool Holds => Word switch
    {
        ComparisonWord.AtMost => Provided.Si <= Limit.Si,
        ComparisonWord.LessThan => Provided.Si < Limit.Si,
        ComparisonWord.AtLeast => Provided.Si >= Limit.Si,
        _ => Provided.Si > Limit.Si,
    };

    /// <summary>Room to spare as a share of the limit; zero exactly at it, negative beyond it, infinite for a limit of zero that is not met exactly.</summary>
    public double Margin
    {
        get
        {
            var spare = Word is ComparisonWord.AtMost or ComparisonWord.LessThan ? Limit.Si - Provided.Si : Provided.Si - Limit.Si;
            return spare == 0 ? 0 : spare / Math.Abs(Limit.Si);
        }
    }
}
