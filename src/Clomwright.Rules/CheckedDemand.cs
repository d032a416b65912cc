using Clomwright.Evidence;

namespace Clomwright.Rules;

/// <summary>One demand of the engineering checks held against what is there to meet it; or why that could not be done. Results are put into this form on their way to the rules.</summary>
/// <param name="Rule">Key of the rule of <c>engineering</c>, or of the few of common practice that are computed, that it answers.</param>
/// <param name="Subject">What is checked: <c>pole 3</c>, <c>door/header</c>.</param>
/// <param name="Demand">What is asked of it, at its hardest; null when it could not be found.</param>
/// <param name="Capacity">What it can carry; the same dimension; null when it could not be found, or where the rule itself has the number.</param>
/// <param name="NotChecked">Why there are no numbers; null when there are.</param>
public sealed record CheckedDemand(string Rule, string Subject, Amount? Demand, Amount? Capacity, Message? NotChecked)
{
    /// <summary>A demand with what is there to meet it.</summary>
    public static CheckedDemand Held(string rule, string subject, Amount demand, Amount capacity) => new(rule, subject, demand, capacity, null);

    /// <summary>Something measured, to be compared with the number of the rule itself by the rule's own word.</summary>
    public static CheckedDemand Measured(string rule, string subject, Amount provided) => new(rule, subject, provided, null, null);

    /// <summary>Something measured, to be compared with a computed number, times the number of the rule, by the rule's own word.</summary>
    public static CheckedDemand Against(string rule, string subject, Amount provided, Amount computed) => new(rule, subject, provided, computed, null);

    /// <summary>A check that could not be made.</summary>
    public static CheckedDemand Unknown(string rule, string subject, Message because) => new(rule, subject, null, null, because);

    /// <summary>What belongs in the demand and is not known: it may fall short without it, but is never met. Null when nothing is missing.</summary>
    public Message? Missing { get; init; }

    /// <summary>What a person has to answer where more is asked than is there; null where that falls short and no more is to be said.</summary>
    public Message? Question { get; init; }

    /// <summary>The combination and stage that govern, and what else belongs beside the numbers.</summary>
    public Sequence<Message> Notes { get; init; }
}
