using Clomwright.Evidence;
using Clomwright.Papers.Layout;
using Clomwright.Rules;

namespace Clomwright.Papers.Sheets;

/// <summary>How findings stand in the tables of the office set.</summary>
internal static class OfficeFindings
{
    private const int Finest = 6;

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
            var finer = 0;
            while (finer < Finest && compared.Provided.Si != compared.Limit.Si
                && Enum.GetValues<UnitSystem>().Any(s => AmountText.In(compared.Provided, s, finer) == AmountText.In(compared.Limit, s, finer)))
            {
                finer++;
            }

            return ($"{say.Say(Names.Of(compared.Word))} {say.Book.Marked(AmountText.Both(compared.Limit, say.First, finer))}", say.Book.Marked(AmountText.Both(compared.Provided, say.First, finer)));
        }

        return (Asked(say, finding.Clause.Adopted, finding.Rule.Key), Reason(say, finding.Verdict));
    }

    /// <summary>The number that a clause asks; empty where it asks none, and said where nobody could read it.</summary>
    public static string Asked(Wording say, string adopted, string rule) => RuleBook.Clauses.FirstOrDefault(c => c.Clause.Adopted == adopted && c.Rule.Key == rule) switch
    {
        { Limit: { } limit, Word: { } word } => $"{say.Say(Names.Of(word))} {say.Book.Marked(limit.Written)}",
        { NumberIsMissing: true } => say.Say("rule-table.unread"),
        _ => "",
    };

    /// <summary>Why, in words.</summary>
    public static string Reason(Wording say, Verdict verdict) => verdict switch
    {
        Verdict.Met { Because: { } because } => say.Say(because),
        Verdict.Met met => say.Say(met.Comparisons[0]),
        Verdict.FallsShort { Because: { } because } => say.Say(because),
        Verdict.FallsShort shortfall => say.Say(shortfall.Comparisons[0]),
        Verdict.NotApplicable none => say.Say(none.Because),
        Verdict.NeedsJudgement judgement => say.Say(judgement.Question),
        Verdict.NotChecked missing => say.Say(missing.Because),
        _ => throw new ArgumentOutOfRangeException(nameof(verdict)),
    };

    /// <summary>A source and how sure we are of it.</summary>
    public static Cell Source(Wording say, Source source) => new("", source.Surety == Surety.Practice ? source.Title : Wording.Dotted(source.Title, say.Say(Names.Of(source.Surety))));

    /// <summary>How tight a finding is; what compares nothing last.</summary>
    public static double Margin(Finding finding) => finding.Verdict is Verdict.Met { Comparisons: [var tightest, ..] } ? tightest.Margin : double.PositiveInfinity;
}
