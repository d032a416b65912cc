using Clomwright.Evidence;
using Clomwright.Papers.Layout;
using Clomwright.Rules;

namespace Clomwright.Papers.Sheets;

/// <summary>How findings stand in the tables of the office set.</summary>
internal static class OfficeFindings
{
    /// <summary>The bodies of rules that the house adopts, by their names.</summary>
    public static string Bodies(Scene scene) => string.Join(", ", scene.House.Rules.Adopted.Select(b => Body(scene.Say, b)));

    /// <summary>A body of rules by its name.</summary>
    public static string Body(Wording say, string key) => say.NameOf($"rules.body.{key}", key);

    /// <summary>The verdict in a word.</summary>
    public static string Word(Wording say, Verdict verdict) => say.Say(Names.Of(verdict));

    /// <summary>What is asked and what is there; for a clause without numbers the question or the reason runs in the second.</summary>
    public static (string Required, string Provided) Numbers(Wording say, Finding finding)
    {
        Comparison? compared = finding.Verdict switch
        {
            Verdict.Met { Comparisons: [var first, ..] } => first,
            Verdict.FallsShort { Comparisons: [var first, ..] } => first,
            _ => null,
        };
        if (compared is not null)
        {
            var (provided, limit) = say.Book.Apart(compared, say.First);
            return ($"{say.Say(Names.Of(compared.Word))} {limit}", provided);
        }

        return (Asked(say, finding.Clause.Adopted, finding.Rule.Key), say.Reason(finding.Verdict));
    }

    /// <summary>Findings of one rule that one row tells: every place that is short or unknown has its own; places that are met, or have nothing to say, share one by the tightest.</summary>
    public static IEnumerable<IReadOnlyList<Finding>> Alike(Wording say, IEnumerable<Finding> findings) =>
        findings.GroupBy(f => (f.Rule.Key, f.Clause.Number)).SelectMany(rule =>
            rule.GroupBy(f => (f.Verdict.GetType(), f.Verdict is Verdict.FallsShort ? f.Subject : "", f.Verdict is Verdict.NotChecked or Verdict.NeedsJudgement ? say.Reason(f.Verdict) : "")).Select(alike => alike.OrderBy(FindingsSheet.Margin).ToArray()));

    /// <summary>Of what a row is told: of one thing, or of so many places by the tightest.</summary>
    public static string Subject(Wording say, IReadOnlyList<Finding> alike) =>
        alike.Count == 1 ? say.Subject(alike[0].Subject) : say.Say("findings.tightest", ("n", alike.Count), ("subject", say.Subject(alike[0].Subject)));

    /// <summary>The number that a clause asks; empty where it asks none, and said where nobody could read it.</summary>
    public static string Asked(Wording say, string adopted, string rule) => RuleBook.Clauses.FirstOrDefault(c => c.Clause.Adopted == adopted && c.Rule.Key == rule) switch
    {
        { Limit: { } limit, Word: { } word } => $"{say.Say(Names.Of(word))} {say.Book.Marked(limit.Written)}",
        { NumberIsMissing: true } => say.Say("rule-table.unread"),
        _ => "",
    };

    /// <summary>A source and how sure we are of it.</summary>
    public static Cell Source(Wording say, Source source) => new("", source.Surety == Surety.Practice ? say.Book.Title(source) : Wording.Dotted(say.Book.Title(source), say.Say(Names.Of(source.Surety))));
}
