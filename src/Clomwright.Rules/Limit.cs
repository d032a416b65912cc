using Clomwright.Evidence;

namespace Clomwright.Rules;

/// <summary>What a rule asks, as its source writes it and as a number.</summary>
/// <param name="Written">As written, with its unit: <c>24 in</c>, <c>7</c>, <c>1/3</c>, <c>C</c> for a seismic design category.</param>
/// <param name="Value">The same in SI; a category counts from A = 1.</param>
public sealed record Limit(string Written, Amount Value);

/// <summary>Another limit in circulation for the same thing. The same rule is held against it, and the answer stands beside the finding.</summary>
/// <param name="What">What it asks, in words.</param>
/// <param name="Limit">Its number; null where it is a different way of building rather than another number.</param>
/// <param name="Source">Who says so and how sure we are.</param>
public sealed record Rival(Message What, Limit? Limit, Source Source);
