using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Rules;

namespace Clomwright.Study.Mends;

/// <summary>A change that was tried and mends a finding without breaking another rule.</summary>
/// <param name="Edit">The change.</param>
/// <param name="What">In words, with what it gains.</param>
/// <param name="After">How the findings count once it is made.</param>
public sealed record Mend(Edit Edit, Message What, Tally After);

/// <summary>What was tried for a finding.</summary>
/// <param name="Mends">Changes that mend it: three at most.</param>
/// <param name="InVain">Where none does: each change that was tried, and what keeps it from being one.</param>
public sealed record Attempts(Sequence<Mend> Mends, Sequence<Message> InVain);
