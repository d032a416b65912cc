using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>What the adopted rules leave open, for the site: totals on top, then what falls short, what is not checked and what a person has to judge. The rest is a count, and where it stands whole: in the office set.</summary>
internal static class FindingsSheet
{
    public static IEnumerable<Draft> Of(Scene scene)
    {
        var say = scene.Say;
        var findings = scene.Set.Findings;
        var head = new SheetHead("findings", say.Say("findings.title"));
        List<Block> blocks =
        [
            new Facts(
            [
                Total(scene, "findings.met", findings.Count(f => f.Verdict is Verdict.Met)),
                Total(scene, "findings.short", findings.Count(f => f.Verdict is Verdict.FallsShort)),
                Total(scene, "findings.not-checked", findings.Count(f => f.Verdict is Verdict.NotChecked)),
                Total(scene, "findings.judgement", findings.Count(f => f.Verdict is Verdict.NeedsJudgement)),
            ], Styles.Large),
            new Paragraph(say.Say("findings.note"), Styles.Body) { Above = 3 },
            .. Diagnostics(scene),
            .. Part(scene, "findings.heading-short", [.. findings.Where(f => f.Verdict is Verdict.FallsShort)]),
            .. Part(scene, "findings.heading-not-checked", [.. findings.Where(f => f.Verdict is Verdict.NotChecked)]),
            .. Part(scene, "findings.heading-judgement", [.. findings.Where(f => f.Verdict is Verdict.NeedsJudgement)]),
            .. Rest(scene),
        ];
        return Draft.Flow(head, scene.Portrait, blocks, say);
    }

    private static Fact Total(Scene scene, string key, int count) => new(scene.Say.Say(key), scene.Say.One(Amount.Count(count)));

    private static IEnumerable<Block> Diagnostics(Scene scene)
    {
        if (scene.Set.Diagnostics.Count == 0)
        {
            yield break;
        }

        yield return new Heading(scene.Say.Say("findings.diagnostics")) { Above = 4 };
        yield return new Table(
            [new(scene.Say.Say("findings.place")), new(scene.Say.Say("findings.wrong")) { Grows = 1 }],
            [.. scene.Set.Diagnostics.Select(d => new Row(new Cell(d.Path) { Lettering = Styles.BodyStrong }, new Cell(scene.Say.Say(d.What))))]) { Above = 1.5 };
    }

    private static IEnumerable<Block> Part(Scene scene, string heading, IReadOnlyList<Finding> findings)
    {
        var say = scene.Say;
        if (findings.Count == 0)
        {
            yield break;
        }

        yield return new Heading(say.Say(heading, ("n", findings.Count))) { Above = 5 };

        // Places of which a rule says the same share a row that names every one of them.
        yield return new Table(
            [new(say.Say("findings.rule")) { Grows = 1 }, new(say.Say("findings.subject")) { Grows = 1 }, new(say.Say("findings.says")) { Grows = 3 }, new(say.Say("findings.source")) { Grows = 1 }],
            [.. findings.GroupBy(f => (f.Clause.Adopted, f.Rule.Key, f.Clause.Number, Says: Says(say, f))).Select(alike => Line(say, [.. alike], alike.Key.Says))]) { Above = 1.5 };
    }

    private static (string Reason, string Notes) Says(Wording say, Finding finding) => (say.Reason(finding.Verdict), string.Join(' ', finding.Notes.Select(say.Say)));

    private static Row Line(Wording say, IReadOnlyList<Finding> alike, (string Reason, string Notes) says) => new(
        new Cell(say.Say(alike[0].Rule.Title), Wording.Dotted(OfficeFindings.Body(say, alike[0].Clause.Adopted), alike[0].Clause.Number)) { Lettering = Styles.BodyStrong },
        new Cell(string.Join(", ", alike.Select(f => say.Subject(f.Subject)).Distinct())),
        new Cell(says.Reason, says.Notes),
        new Cell("", say.Say(alike[0].Clause.Source)));

    /// <summary>How many are met or have nothing to say here, how many values are assumed, and where each of them stands.</summary>
    private static IEnumerable<Block> Rest(Scene scene)
    {
        var (say, findings) = (scene.Say, scene.Set.Findings);
        yield return new Heading(say.Say("findings.heading-rest")) { Above = 5 };
        yield return new Paragraph(say.Say("findings.rest", ("met", findings.Count(f => f.Verdict is Verdict.Met)), ("none", findings.Count(f => f.Verdict is Verdict.NotApplicable)), ("sheet", say.Say("rule-table.title"))), Styles.Body) { Above = 1.5 };
        if (scene.Set.Assumptions.Count > 0)
        {
            yield return new Paragraph(say.Say("findings.rest-assumed", ("n", scene.Set.Assumptions.Count), ("sheet", say.Say("office-note.title"))), Styles.Body) { Above = 1.5 };
        }
    }

    /// <summary>How tight a finding is; what compares nothing last.</summary>
    public static double Margin(Finding finding) => finding.Verdict is Verdict.Met { Comparisons: [var tightest, ..] } ? tightest.Margin : double.PositiveInfinity;
}
