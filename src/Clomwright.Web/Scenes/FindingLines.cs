using Clomwright.Evidence;
using Clomwright.Rules;
using Clomwright.Study;

namespace Clomwright.Web.Scenes;

/// <summary>Findings in words, in the order of attention.</summary>
internal static class FindingLines
{
    private static readonly string[] Order = ["short", "unchecked", "judgement", "met", "none"];

    /// <summary>Every finding but those with nothing to say, tightest first; what needs attention and has a place on the drawing is numbered.</summary>
    /// <param name="findings">The findings.</param>
    /// <param name="pen">Whose words and units.</param>
    /// <param name="isPlaced">Whether a finding has a place on the drawing; null where that is the unrolled wall.</param>
    /// <param name="memory">Lines as they were; null where nothing is remembered.</param>
    public static IReadOnlyList<(FindingLine Line, Finding Finding)> Of(Sequence<Finding> findings, Pen pen, Func<Finding, bool>? isPlaced = null, FindingMemory? memory = null)
    {
        isPlaced ??= finding => finding.Places.Count > 0;
        var ordered = findings
            .Where(finding => finding.Verdict is not Verdict.NotApplicable)
            .OrderBy(finding => Array.IndexOf(Order, Standing(finding.Verdict)))
            .ThenBy(finding => Margin(finding.Verdict));
        var number = 0;
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        return [.. ordered.Select(finding =>
        {
            var (id, place) = (Id(finding, seen), finding.Verdict is Verdict.Met || !isPlaced(finding) ? (int?)null : ++number);
            return (memory is null ? Line(finding, id, place, pen) : memory.LineOf(finding, id, place, () => Line(finding, id, place, pen)), finding);
        })];
    }

    /// <summary>How a verdict stands, in one word of the page's contract.</summary>
    public static string Standing(Verdict verdict) => verdict switch
    {
        Verdict.FallsShort => "short",
        Verdict.NotChecked => "unchecked",
        Verdict.NeedsJudgement => "judgement",
        Verdict.Met => "met",
        _ => "none",
    };

    /// <summary>The worst standing of some verdicts.</summary>
    public static string Worst(IEnumerable<Verdict> verdicts) =>
        verdicts.Select(Standing).OrderBy(standing => Array.IndexOf(Order, standing)).FirstOrDefault() ?? "none";

    /// <summary>Findings counted.</summary>
    public static Totals Totals(HouseStudy study, Pen pen) => Totals(study.Tally, pen);

    /// <summary>A tally, and the line that says it.</summary>
    public static Totals Totals(Tally tally, Pen pen) =>
        new(tally.Met, tally.Short, tally.NotChecked, tally.NeedsJudgement, pen.Say("web.totals", ("met", tally.Met), ("short", tally.Short), ("unchecked", tally.NotChecked), ("judgement", tally.NeedsJudgement)));

    private static FindingLine Line(Finding finding, string id, int? number, Pen pen) => new()
    {
        Id = id,
        Number = number,
        Standing = Standing(finding.Verdict),
        Title = pen.Say(finding.Rule.Title),
        Subject = pen.Subject(finding.Subject),
        Sentence = pen.Reason(finding.Verdict),
        By = By(finding.Clause, pen),
        Notes = [.. finding.Notes.Select(pen.Say)],
        Computed = RuleBook.ReadsResults(finding),
    };

    private static string By(Clause clause, Pen pen) => pen.Say(
        clause.Number.Length == 0 ? "web.finding.by-body" : "web.finding.by-clause",
        ("body", pen.NameOf($"rules.body.{clause.Adopted}", clause.Adopted)), ("clause", clause.Number), ("measure", clause.Measure), ("source", pen.Say(clause.Source)));

    private static double Margin(Verdict verdict) => verdict switch
    {
        Verdict.FallsShort { Comparisons: { Count: > 0 } comparisons } => comparisons[0].Margin,
        Verdict.Met { Comparisons: { Count: > 0 } comparisons } => comparisons[0].Margin,
        _ => double.PositiveInfinity,
    };

    private static string Id(Finding finding, Dictionary<string, int> seen)
    {
        var id = $"{finding.Clause.Adopted}/{finding.Rule.Key}/{finding.Subject}";
        var count = seen[id] = seen.GetValueOrDefault(id) + 1;
        return count == 1 ? id : $"{id}#{count}";
    }
}
