using System.Text;
using Clomwright.Evidence;
using Clomwright.Rules.Tests.AtTheLimit;

namespace Clomwright.Rules.Tests;

/// <summary>Writes <c>docs/rules.md</c> from the register and the cases at the limit.</summary>
internal static class RulesDocument
{
    private static readonly Phrasebook English = Phrasebook.In("en");

    public static string Text()
    {
        var text = new StringBuilder();
        text.Append("# Rules\n\n");
        text.Append("Written from `data/rules` and from the tests; do not edit. Every clause is here, computed or not: what it asks, what is measured, how sure we are, who says so, and the houses that stand exactly at its limit in the tests.\n\n");
        text.Append("Nothing here replaces the code that your office adopted or a licensed engineer. Where a number is missing, type it in from that code (`rules.entered` in the house file); until then the rule is not checked.\n\n");
        text.Append("| body | ").AppendJoin(" | ", Enum.GetValues<ClauseStatus>().Select(Said)).Append(" | number missing |\n");
        text.Append("|---|").Append(string.Concat(Enum.GetValues<ClauseStatus>().Select(_ => "---:|"))).Append("---:|\n");
        foreach (var body in RuleBook.Bodies)
        {
            text.Append($"| `{body.Adopted}` | ").AppendJoin(" | ", Enum.GetValues<ClauseStatus>().Select(s => body.Clauses.Count(c => c.Clause.Status == s)))
                .Append($" | {body.Clauses.Count(c => c.NumberIsMissing)} |\n");
        }

        foreach (var body in RuleBook.Bodies)
        {
            text.Append($"\n## `{body.Adopted}`: {Said(body.Title)}\n\n");
            foreach (var clause in body.Clauses)
            {
                Append(text, clause);
            }
        }

        return text.ToString();
    }

    private static void Append(StringBuilder text, WrittenClause clause)
    {
        var number = clause.Clause.Number.Length > 0 ? $" ({clause.Clause.Number})" : "";
        text.Append($"### {Said(clause.Rule.Title)}{number}\n\n");
        text.Append($"`{clause.Rule.Key}` · {Said(clause.Clause.Status)}{(clause.Gate ? " · gate" : "")} · {Said(Names.Of(clause.Clause.Source.Surety))} · {clause.Clause.Source.Title}\n\n");
        if (clause is { Word: { } word, Measures: not null })
        {
            text.Append($"- Asks: {Said(Names.Of(word))} {(clause.Limit is { } limit ? Number(limit) : "a number that is missing")}\n");
            text.Append($"- Measured: {Said(clause.Clause.Measure)}\n");
        }

        if (clause.Says is { } says)
        {
            text.Append($"- {(clause.Clause.Status == ClauseStatus.Judgement ? "Asked" : "Why")}: {Said(says)}\n");
        }

        foreach (var rival in clause.Rivals)
        {
            text.Append($"- Rival: {Said(rival.What)} · {Said(Names.Of(rival.Source.Surety))} · {rival.Source.Title}\n");
        }

        foreach (var limit in AtTheLimitTests.Cases.Where(l => l.Body == clause.Clause.Body && l.Rule == clause.Rule.Key))
        {
            text.Append($"- At the limit: {limit.Subject}, {limit.What}\n");
        }

        text.Append('\n');
    }

    private static string Number(Limit limit) =>
        limit.Written is [>= 'A' and <= 'F'] ? limit.Written : $"{limit.Written}{Other(limit)}";

    /// <summary>The unit system that the limit is not written in.</summary>
    private static string Other(Limit limit)
    {
        var (imperial, metric) = (AmountText.In(limit.Value, UnitSystem.Imperial), AmountText.In(limit.Value, UnitSystem.Metric));
        var other = limit.Written == metric ? imperial : metric;
        return imperial == metric ? "" : $" ({other})";
    }

    private static string Said(ClauseStatus status) => Said(Names.Of(status));

    private static string Said(Message message) => English.Say(message, UnitSystem.Imperial);
}
