namespace Clomwright.Evidence;

/// <summary>Compares in the standard's own words, exactly where both sides are written lengths. A side that is not a number gives not checked.</summary>
public static class Require
{
    /// <summary>Met when provided is not more than the limit.</summary>
    public static Verdict AtMost(Amount provided, Amount limit) => All(new Comparison(provided, ComparisonWord.AtMost, limit));

    /// <summary>Met when provided is below the limit.</summary>
    public static Verdict LessThan(Amount provided, Amount limit) => All(new Comparison(provided, ComparisonWord.LessThan, limit));

    /// <summary>Met when provided is not less than the limit.</summary>
    public static Verdict AtLeast(Amount provided, Amount limit) => All(new Comparison(provided, ComparisonWord.AtLeast, limit));

    /// <summary>Met when provided is above the limit.</summary>
    public static Verdict MoreThan(Amount provided, Amount limit) => All(new Comparison(provided, ComparisonWord.MoreThan, limit));

    /// <summary>Met when every comparison holds. The deciding one is kept first: one that does not hold before one that does, then the least room to spare.</summary>
    /// <param name="comparisons">At least one. One that is short decides even when another is not a number.</param>
    public static Verdict All(params ReadOnlySpan<Comparison> comparisons)
    {
        var ordered = Refuse.None(comparisons.ToArray()
            .OrderBy(c => !c.IsKnown ? 1 : c.Holds ? 2 : 0)
            .ThenBy(c => c.Margin)
            .ToSequence());
        return !ordered[0].IsKnown ? new Verdict.NotChecked(new Message("evidence.not-a-number"))
            : ordered[0].Holds ? new Verdict.Met(ordered)
            : new Verdict.FallsShort(ordered);
    }
}
