namespace Clomwright.Evidence;

public sealed partial class Phrasebook
{
    private const int Finest = 8;

    /// <summary>What was compared: <c>1 ft 10 in (560 mm); at least 2 ft (610 mm) is asked</c>.</summary>
    public string Say(Comparison comparison, UnitSystem first)
    {
        var (provided, limit) = Apart(comparison, first);
        return Say(Message.Of("evidence.compared", ("provided", provided), ("word", Names.Of(comparison.Word)), ("limit", limit)), first);
    }

    /// <summary>Both sides of a comparison, two different values as finely as it takes to see that they differ.</summary>
    public (string Provided, string Limit) Apart(Comparison comparison, UnitSystem first)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        var finer = 0;
        while (finer < Finest && comparison.Provided.Si != comparison.Limit.Si
            && Enum.GetValues<UnitSystem>().Any(s => AmountText.In(comparison.Provided, s, finer) == AmountText.In(comparison.Limit, s, finer)))
        {
            finer++;
        }

        return (Marked(AmountText.Both(comparison.Provided, first, finer)), Marked(AmountText.Both(comparison.Limit, first, finer)));
    }

    /// <summary>Why a verdict is what it is: the deciding comparison, what a person said, what is missing.</summary>
    public string Reason(Verdict verdict, UnitSystem first) => verdict switch
    {
        Verdict.Met { Because: { } because } => Say(because, first),
        Verdict.Met met => Say(met.Comparisons[0], first),
        Verdict.FallsShort { Because: { } because } => Say(because, first),
        Verdict.FallsShort shortfall => Say(shortfall.Comparisons[0], first),
        Verdict.NotApplicable none => Say(none.Because, first),
        Verdict.NeedsJudgement judgement => Say(judgement.Question, first),
        Verdict.NotChecked missing => Say(missing.Because, first),
        _ => throw new ArgumentOutOfRangeException(nameof(verdict)),
    };

    /// <summary>A verdict with its reason.</summary>
    public string Say(Verdict verdict, UnitSystem first) => Say(Message.Of("evidence.verdict", ("verdict", Names.Of(verdict)), ("reason", Reason(verdict, first))), first);

    /// <summary>A source as it is printed: its title, and how sure we are where that has to be said.</summary>
    public string Say(Source source) => source.Surety is Surety.Seen or Surety.Practice
        ? Title(source)
        : Say(Message.Of("evidence.source", ("title", Title(source)), ("surety", Names.Of(source.Surety))), UnitSystem.Metric);

    /// <summary>The title of a source: a work is named as it is printed, what stands for one of our own (practice, an estimate, mechanics) has words under <c>evidence.source.</c></summary>
    /// <remarks>How we came by a work is no part of its title: what stands for that after the last comma has words under <c>evidence.read.</c></remarks>
    public string Title(Source source)
    {
        ArgumentNullException.ThrowIfNull(source);
        var comma = source.Title.LastIndexOf(", ", StringComparison.Ordinal);
        var read = comma < 0 ? "" : $"evidence.read.{source.Title[(comma + 2)..].Replace(' ', '-')}";
        return NameOf($"evidence.source.{source.Key}", Has(read) ? $"{source.Title[..comma]}, {Said(read)}" : source.Title);
    }
}
