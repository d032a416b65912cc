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

/// <summary>A provided value held against a limit, in the rule's own word.</summary>
/// <param name="Provided">What the house has.</param>
/// <param name="Word">How the rule compares.</param>
/// <param name="Limit">What the rule asks.</param>
public sealed record Comparison(Amount Provided, ComparisonWord Word, Amount Limit)
{
    /// <summary>Whether the rule is met. NaN never meets a rule.</summary>
    public bool Holds => Word switch
    {
        ComparisonWord.AtMost => Provided.Si <= Limit.Si,
        ComparisonWord.LessThan => Provided.Si < Limit.Si,
        ComparisonWord.AtLeast => Provided.Si >= Limit.Si,
        _ => Provided.Si > Limit.Si,
    };

    /// <summary>Room to spare as a share of the limit; negative when short. Infinite for a limit of zero.</summary>
    public double Margin
    {
        get
        {
            var spare = Word is ComparisonWord.AtMost or ComparisonWord.LessThan ? Limit.Si - Provided.Si : Provided.Si - Limit.Si;
            return spare / Math.Abs(Limit.Si);
        }
    }
}

/// <summary>What a rule says of one thing in the house.</summary>
public abstract record Verdict
{
    private Verdict()
    {
    }

    /// <summary>The rule is met. Every comparison made is kept, the deciding one first.</summary>
    public sealed record Met(Sequence<Comparison> Comparisons) : Verdict;

    /// <summary>The rule is not met. Every comparison made is kept, the deciding one first.</summary>
    public sealed record FallsShort(Sequence<Comparison> Comparisons) : Verdict;

    /// <summary>The rule has nothing to say here.</summary>
    public sealed record NotApplicable(Message Because) : Verdict;

    /// <summary>A person has to judge.</summary>
    public sealed record NeedsJudgement(Message Question) : Verdict;

    /// <summary>Something is missing: an input, or the rule's own number. Never counted as met.</summary>
    public sealed record NotChecked(Message Because) : Verdict;
}

/// <summary>Compares in the standard's own words, exactly where both sides are written lengths.</summary>
public static class Require
{
    /// <summary>Met when provided is not more than the limit.</summary>
    public static Verdict AtMost(Amount provided, Amount limit) => Of(new Comparison(provided, ComparisonWord.AtMost, limit));

    /// <summary>Met when provided is below the limit.</summary>
    public static Verdict LessThan(Amount provided, Amount limit) => Of(new Comparison(provided, ComparisonWord.LessThan, limit));

    /// <summary>Met when provided is not less than the limit.</summary>
    public static Verdict AtLeast(Amount provided, Amount limit) => Of(new Comparison(provided, ComparisonWord.AtLeast, limit));

    /// <summary>Met when provided is above the limit.</summary>
    public static Verdict MoreThan(Amount provided, Amount limit) => Of(new Comparison(provided, ComparisonWord.MoreThan, limit));

    /// <summary>Met when every comparison holds; the tightest is kept first.</summary>
    public static Verdict All(params ReadOnlySpan<Comparison> comparisons)
    {
        var sorted = comparisons.ToArray().OrderBy(c => c.Margin).ToSequence();
        return sorted.All(c => c.Holds) ? new Verdict.Met(sorted) : new Verdict.FallsShort(sorted.OrderBy(c => c.Holds).ToSequence());
    }

    private static Verdict Of(Comparison comparison)
    {
        if (comparison.Provided.Dimension != comparison.Limit.Dimension)
        {
            throw new ArgumentException($"A rule compares {comparison.Provided.Dimension} with {comparison.Limit.Dimension}.", nameof(comparison));
        }

        return comparison.Holds ? new Verdict.Met([comparison]) : new Verdict.FallsShort([comparison]);
    }
}
