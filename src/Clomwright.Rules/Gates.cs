using Clomwright.Evidence;

namespace Clomwright.Rules;

/// <summary>Gates come before rules: outside the limits of a body of rules it says only that the house needs an engineered design.</summary>
internal static class Gates
{
    /// <summary>The one finding of a body that does not apply, or whose application is not known; null where the house is inside.</summary>
    /// <remarks>
    /// A gate whose own number is missing does not stop the body: nobody here knows whether the code has it. It stands among the findings
    /// as not checked.
    /// </remarks>
    public static Finding? Stop(IReadOnlyList<Finding> gates, BodyOfRules body)
    {
        var outside = gates.Where(g => g.Verdict is Verdict.FallsShort).ToList();
        if (outside.Count > 0)
        {
            return One(outside, new Verdict.NeedsJudgement(Message.Of("rules.outside", ("body", body.Title), ("reasons", Reasons(outside)))));
        }

        var unknown = gates.Where(g => g.Verdict is Verdict.NotChecked { Because.Key: not Findings.NumberMissing }).ToList();
        return unknown.Count > 0
            ? One(unknown, new Verdict.NotChecked(Message.Of("rules.inside-unknown", ("body", body.Title), ("reasons", Reasons(unknown)))))
            : null;
    }

    private static readonly Rule Limits = new("rule-limits", new Message("rules.title.rule-limits"));

    private static Finding One(List<Finding> gates, Verdict verdict) =>
        gates[0] with { Rule = Limits, Subject = "house", Verdict = verdict, Places = [], Notes = gates.SelectMany(g => g.Notes).ToSequence() };

    private static Argument.List Reasons(List<Finding> gates) =>
        new(gates.Select(g => (Argument)Sentences.Reason(g)).ToSequence());
}
