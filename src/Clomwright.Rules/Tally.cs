using System.Diagnostics.CodeAnalysis;
using Clomwright.Evidence;

namespace Clomwright.Rules;

/// <summary>Findings counted. What is not checked is never among the met.</summary>
/// <param name="Met">Rules met.</param>
/// <param name="Short">Rules that fall short.</param>
/// <param name="NotChecked">Not checked, because an input or a number is missing.</param>
/// <param name="NeedsJudgement">Waiting for a person.</param>
/// <param name="NotApplicable">With nothing to say here.</param>
[SuppressMessage("Naming", "CA1720", Justification = "Short is the trade's word for a rule not met, and nobody reads an Int16 here.")]
public readonly record struct Tally(int Met, int Short, int NotChecked, int NeedsJudgement, int NotApplicable)
{
    /// <summary>Counts findings.</summary>
    public static Tally Of(IEnumerable<Finding> findings)
    {
        var tally = default(Tally);
        foreach (var finding in findings)
        {
            tally = finding.Verdict switch
            {
                Verdict.Met => tally with { Met = tally.Met + 1 },
                Verdict.FallsShort => tally with { Short = tally.Short + 1 },
                Verdict.NotChecked => tally with { NotChecked = tally.NotChecked + 1 },
                Verdict.NeedsJudgement => tally with { NeedsJudgement = tally.NeedsJudgement + 1 },
                _ => tally with { NotApplicable = tally.NotApplicable + 1 },
            };
        }

        return tally;
    }

    /// <summary>In words: <c>31 met, 2 short, 5 NOT CHECKED, 4 need judgement, 6 do not apply</c>.</summary>
    public Message Summary => Message.Of("rules.tally",
        ("met", Met), ("short", Short), ("notChecked", NotChecked), ("needsJudgement", NeedsJudgement), ("notApplicable", NotApplicable));
}
