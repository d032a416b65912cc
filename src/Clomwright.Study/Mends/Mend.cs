using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Rules;

namespace Clomwright.Study.Mends;

/// <summary>A change that was tried and mends a finding without breaking another rule.</summary>
/// <param name="Edit">The change.</param>
/// <param name="What">In words, with what it gains.</param>
/// <param name="After">How the findings count once it is made.</param>
public sealed record Mend(Edit Edit, Message What, Tally After);
