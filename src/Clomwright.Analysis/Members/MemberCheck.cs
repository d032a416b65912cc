using Clomwright.Evidence;

namespace Clomwright.Analysis.Members;

/// <summary>One member held against what it can carry, at its hardest. A number, not a verdict.</summary>
/// <param name="Combination">The combination of loads that governs: <c>D + S</c>.</param>
/// <param name="Sense">The pattern of load that governs: <c>even</c>, <c>one-sided</c>, <c>drift</c>, <c>up</c>.</param>
/// <param name="Demand">What is asked.</param>
/// <param name="Capacity">What is there; the same dimension.</param>
/// <param name="How">How both were found.</param>
/// <param name="Needed">A size that would do, estimated: the pole's diameter, the header's depth, the length of bearing; null where none is offered.</param>
public sealed record MemberCheck(string Combination, string Sense, Amount Demand, Amount Capacity, Calculation How, Amount? Needed = null)
{
    /// <summary>Demand over capacity; 1 is exactly enough.</summary>
    public double Use => Demand.Si / Capacity.Si;
}

/// <summary>A check of one kind on one thing; or why it could not be made.</summary>
/// <param name="Key">Permanent key: <c>pole-bending-crossing</c>.</param>
/// <param name="Subject">What is checked: <c>pole 3</c>, <c>door/header</c>.</param>
/// <param name="Check">The check.</param>
public sealed record CheckedMember(string Key, string Subject, Known<MemberCheck> Check)
{
    /// <summary>How it was found, with its place; null where it could not be.</summary>
    public Calculation? How => Check.Value is { } check ? check.How with { Place = Subject } : null;
}
