using Clomwright.Evidence;

namespace Clomwright.Web.Scenes;

/// <summary>Which findings the page of the roof shows: what is asked of the roof and of what carries it, and whatever else falls short in the house.</summary>
internal static class RoofFindings
{
    private const int Most = 5;

    /// <summary>Length of the bar beyond the limit, as a share of the limit.</summary>
    private const double BarMost = 1.25;

    /// <summary>Rules outside the engineering checks that speak of the roof.</summary>
    private static readonly HashSet<string> OfRoof = new(StringComparer.Ordinal)
    {
        "pole-seat", "eave", "tee-fixing", "bearing-stress", "seat-centre", "roof-uplift", "roof-height", "roof-load-when-dry",
    };

    /// <summary>Engineering checks that no roof moves.</summary>
    private static readonly HashSet<string> NotOfRoof = new(StringComparer.Ordinal) { "drain-outlet" };

    /// <summary>Those findings.</summary>
    public static Sequence<Finding> Of(Sequence<Finding> findings) => findings
        .Where(f => f.Verdict is not Verdict.NotApplicable && (IsOfRoof(f) || f.Verdict is Verdict.FallsShort))
        .ToSequence();

    private static bool IsOfRoof(Finding finding) =>
        OfRoof.Contains(finding.Rule.Key) || (finding.Clause.Body == "engineering" && !NotOfRoof.Contains(finding.Rule.Key));

    /// <summary>The five rules with least to spare, each at its tightest place. A limit of nothing has no share that could be used: such a finding is listed below.</summary>
    public static IReadOnlyList<TightLine> Tightest(IReadOnlyList<(FindingLine Line, Finding Finding)> findings, Pen pen) =>
    [
        .. findings
            .Select(f => (f.Line, f.Finding, Compared: Decides(f.Finding.Verdict)))
            .Where(f => f.Compared is { } c && c.Limit.Si != 0 && double.IsFinite(c.Margin) && f.Finding.Clause.Status == ClauseStatus.Computed)
            .OrderBy(f => f.Finding.Verdict is Verdict.FallsShort ? 0 : 1).ThenBy(f => f.Compared!.Margin)
            .DistinctBy(f => f.Finding.Rule.Key)
            .Take(Most)
            .Select(f => new TightLine(f.Line.Id, f.Line.Standing, pen.Say("web.roof.tight", ("title", f.Line.Title), ("subject", f.Line.Subject)), pen.Short(Amount.Fraction(Used(f.Compared!))), Math.Round(Math.Min(Used(f.Compared!), BarMost) / BarMost, 4))),
    ];

    private static Comparison? Decides(Verdict verdict) => verdict switch
    {
        Verdict.FallsShort { Comparisons: [var first, ..] } => first,
        Verdict.Met { Comparisons: [var first, ..] } => first,
        _ => null,
    };

    /// <summary>Share of the limit that is used: 1 exactly at it, whichever way it is held.</summary>
    private static double Used(Comparison comparison) => 1 - comparison.Margin;
}
