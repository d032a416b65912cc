namespace Clomwright.Evidence;

/// <summary>What a rule says of one thing in the house.</summary>
/// <remarks>The constructors hold the promise: met with a comparison that does not hold, or with nothing to show, cannot be made.</remarks>
public abstract record Verdict
{
    private Verdict()
    {
    }

    /// <summary>The rule is met.</summary>
    public sealed record Met : Verdict
    {
        /// <summary>Met, because every comparison holds.</summary>
        /// <param name="comparisons">Every comparison made, the deciding one first; at least one.</param>
        public Met(Sequence<Comparison> comparisons)
        {
            Comparisons = Refuse.None(comparisons);
            if (!comparisons.All(c => c.Holds))
            {
                throw new ArgumentException("A rule is met only when every comparison holds.", nameof(comparisons));
            }
        }

        /// <summary>Met, because a person said so; who and when are in the words.</summary>
        public Met(Message because) => Because = Refuse.Null(because);

        /// <summary>Every comparison made, the deciding one first; empty where a person judged.</summary>
        public Sequence<Comparison> Comparisons { get; }

        /// <summary>What a person judged; null where it was computed.</summary>
        public Message? Because { get; }
    }

    /// <summary>The rule is not met.</summary>
    public sealed record FallsShort : Verdict
    {
        /// <summary>Falls short, because some comparison does not hold.</summary>
        /// <param name="comparisons">Every comparison made, the deciding one first; that one does not hold.</param>
        public FallsShort(Sequence<Comparison> comparisons)
        {
            Comparisons = Refuse.None(comparisons);
            if (comparisons[0].Holds)
            {
                throw new ArgumentException("The comparison that decides, the first, has to be one that does not hold.", nameof(comparisons));
            }
        }

        /// <summary>Falls short for a reason that is no number: a person's answer, two things in one place.</summary>
        public FallsShort(Message because) => Because = Refuse.Null(because);

        /// <summary>Every comparison made, the deciding one first; empty where the reason is no number.</summary>
        public Sequence<Comparison> Comparisons { get; }

        /// <summary>The reason where it is no number.</summary>
        public Message? Because { get; }
    }

    /// <summary>The rule has nothing to say here.</summary>
    public sealed record NotApplicable(Message Because) : Verdict;

    /// <summary>A person has to judge.</summary>
    public sealed record NeedsJudgement(Message Question) : Verdict;

    /// <summary>Something is missing: an input, or the rule's own number. Never counted as met.</summary>
    public sealed record NotChecked(Message Because) : Verdict;
}
