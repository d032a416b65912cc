using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Rules;

/// <summary>Findings as sentences.</summary>
public static class Sentences
{
    /// <summary>Below this a tape shows no difference, 1/8 in: the gap is printed exactly.</summary>
    private static readonly Length Hair = new(Length.PerInch / 8);

    private const int LongestNumber = 60;

    /// <summary>A finding as one sentence: what, how much, what is asked and by whom, what follows.</summary>
    public static Message Of(Finding finding) => finding.Verdict switch
    {
        Verdict.Met { Comparisons: [var made, ..] } => Compared("rules.sentence.met", finding, made),
        Verdict.FallsShort { Comparisons: [var made, ..] } => Compared(Key(made), finding, made, ("gap", Gap(made))),
        Verdict.Met met => Said("rules.sentence.judged-met", finding, met.Because!),
        Verdict.FallsShort shortfall => Said("rules.sentence.judged-short", finding, shortfall.Because!),
        Verdict.NotApplicable not => Said("rules.sentence.not-applicable", finding, not.Because),
        Verdict.NeedsJudgement needs => Said("rules.sentence.needs-judgement", finding, needs.Question),
        Verdict.NotChecked { Because: { } question } when question.Key.StartsWith("rules.ask.", StringComparison.Ordinal) => Said("rules.sentence.not-answered", finding, question),
        Verdict.NotChecked { Because: { } reason } when !reason.Key.StartsWith("rules.", StringComparison.Ordinal) && !reason.Key.StartsWith("evidence.", StringComparison.Ordinal) =>
            Said("rules.sentence.not-checked-because", finding, reason),
        Verdict.NotChecked not => Said("rules.sentence.not-checked", finding, not.Because),
        _ => throw new InvalidOperationException($"A verdict without a sentence: {finding.Verdict}."),
    };

    /// <summary>Why a gate does not let the house in, without naming the body.</summary>
    internal static Message Reason(Finding gate) => gate.Verdict switch
    {
        Verdict.FallsShort { Comparisons: [var made, ..] } => Message.Of("rules.reason.short",
            ("title", gate.Rule.Title), ("provided", made.Provided), ("word", Word(made)), ("limit", made.Limit)),
        Verdict.NotChecked not => Message.Of("rules.reason.not-checked", ("title", gate.Rule.Title), ("because", not.Because)),
        Verdict.FallsShort { Because: { } because } => because,
        _ => gate.Rule.Title,
    };

    /// <summary>A rival with what this house answers to it; no answer where the rival has no number.</summary>
    internal static Message Of(Rival rival, Verdict? answer) => Message.Of(
        answer switch { Verdict.Met => "rules.note.rival-met", Verdict.FallsShort => "rules.note.rival-short", _ => "rules.note.rival" },
        ("what", rival.What), ("source", Words.Of(rival.Source)));

    /// <summary>A person's answer to a question.</summary>
    internal static Message Of(Answer answer, Message question) => Message.Of(
        answer.Note is null ? (answer.Holds ? "rules.note.yes" : "rules.note.no") : (answer.Holds ? "rules.note.yes-because" : "rules.note.no-because"),
        ("question", question), ("by", answer.By), ("on", answer.On), ("note", answer.Note ?? ""));

    /// <summary>How sure we are of a limit, where that has to be said.</summary>
    internal static Message? Of(Surety surety, EnteredLimit? entered) => surety switch
    {
        Surety.Entered when entered is not null => Message.Of("rules.note.entered", ("limit", entered.Limit), ("by", entered.By), ("on", entered.On)),
        Surety.Memory => new Message("rules.note.memory"),
        Surety.SecondHand => new Message("rules.note.second-hand"),
        Surety.Practice => new Message("rules.note.practice"),
        _ => null,
    };

    private static Message Compared(string key, Finding finding, Comparison made, params ReadOnlySpan<(string, Argument)> more) => Message.Of(key,
        [("title", finding.Rule.Title), ("subject", new Argument.Subject(finding.Subject)), ("provided", made.Provided), ("word", Word(made)), ("limit", made.Limit), ("by", By(finding.Clause)), .. more]);

    private static Message Said(string key, Finding finding, Argument what) => Message.Of(key,
        ("title", finding.Rule.Title), ("subject", new Argument.Subject(finding.Subject)), ("what", what), ("by", By(finding.Clause)));

    private static string Key(Comparison made) =>
        made.Word is ComparisonWord.AtMost or ComparisonWord.LessThan ? "rules.sentence.over" : "rules.sentence.under";

    private static Message Word(Comparison made) => new($"rules.word.{Words.Of(made.Word)}");

    private static Argument Gap(Comparison made)
    {
        var gap = new Amount(Math.Abs(made.Limit.Si - made.Provided.Si), made.Limit.Dimension);
        return gap.Dimension == Dimension.Length && gap.Si < Hair.Metres ? new Argument.Exact(Length.Nearest(gap.Si)) : gap;
    }

    /// <summary>The body and, unless they are a page of them, the numbers of the clause.</summary>
    private static Message By(Clause clause) => clause.Edition.Length == 0 || clause.Number.Length > LongestNumber
        ? new Message($"rules.body.{clause.Adopted}")
        : Message.Of("rules.by", ("body", new Message($"rules.body.{clause.Adopted}")), ("number", clause.Number));
}
