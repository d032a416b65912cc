using Clomwright.Evidence;
using Clomwright.Papers.Layout;
using Clomwright.Rules;

namespace Clomwright.Papers.Sheets;

/// <summary>How findings stand in the tables of the office set.</summary>
internal static class OfficeFindings
{
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

    /// <summary>The number that a clause asks; empty where it asks none, and said where nobody could read it.</summary>
    public static string Asked(Wording say, string adopted, string rule) => RuleBook.Clauses.FirstOrDefault(c => c.Clause.Adopted == adopted && c.Rule.Key == rule) switch
    {
        { Limit: { } limit, Word: { } word } => $"{say.Say(Names.Of(word))} {say.Book.Marked(limit.Written)}",
        { NumberIsMissing: true } => say.Say("rule-table.unread"),
        _ => "",
    };

    /// <summary>A source and how sure we are of it.</summary>
    public static Cell Source(Wording say, Source source) => new("", source.Surety == Surety.Practice ? source.Title : Wording.Dotted(source.Title, say.Say(Names.Of(source.Surety))));
}
