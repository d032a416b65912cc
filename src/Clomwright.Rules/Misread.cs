using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Rules;

/// <summary>What a house file says about rules and nobody here understands: never passed over in silence.</summary>
internal static class Misread
{
    public static Finding Body(string name) => Found("adopted-body", string.IsNullOrWhiteSpace(name) ? "rules.adopted" : name, Message.Of(
        "rules.because.body-unknown", ("body", name), ("known", Known(RuleBook.Bodies.Select(b => b.Adopted)))));

    /// <summary>An entered number that could not be used.</summary>
    public static IEnumerable<Finding> Entered(EnteredLimit entered)
    {
        var body = RuleBook.Bodies.FirstOrDefault(b => b.Adopted == entered.Body);
        var clause = body?.Clauses.FirstOrDefault(c => c.Rule.Key == entered.Rule);
        var problem = (body, clause) switch
        {
            (null, _) => Message.Of("rules.because.body-unknown", ("body", entered.Body), ("known", Known(RuleBook.Bodies.Select(b => b.Adopted)))),
            (_, null or { Measures: null }) => Message.Of("rules.because.entered-rule-unknown",
                ("rule", entered.Rule), ("body", entered.Body), ("known", Known(body.Clauses.Where(c => c.Measures is not null).Select(c => c.Rule.Key)))),
            _ => LimitText.TryRead(entered.Limit, clause.Measures.Value, out _, out var wrong) ? null : wrong,
        };
        return problem is null ? [] : [Found("entered-limit", $"{entered.Body} {entered.Rule}".Trim() is { Length: > 0 } named ? named : "rules.entered", problem)];
    }

    private static Finding Found(string rule, string subject, Message because) => new(
        new Rule(rule, new Message($"rules.title.{rule}")),
        new Clause("house-file", "", "", ClauseStatus.Administrative, new Message("rules.measure.none"), Sources.Get("house-file")),
        subject, new Verdict.NotChecked(because), [], []);

    private static Argument.List Known(IEnumerable<string> names) => new(names.Select(n => (Argument)n).ToSequence());
}
