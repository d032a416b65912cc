using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>What the adopted rules say: totals on top, then what falls short, what is not checked, what a person has to judge, and what is met.</summary>
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
            .. Met(scene, [.. findings.Where(f => f.Verdict is Verdict.Met)]),
            .. Part(scene, "findings.heading-none", [.. findings.Where(f => f.Verdict is Verdict.NotApplicable)]),
            .. Assumptions(scene),
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
        yield return Listed(say, findings.Select(f => Line(say, f, f.Subject)));
    }

    /// <summary>What is met is told rule by rule, by the tightest of its places.</summary>
    private static IEnumerable<Block> Met(Scene scene, IReadOnlyList<Finding> findings)
    {
        var say = scene.Say;
        if (findings.Count == 0)
        {
            yield break;
        }

        yield return new Heading(say.Say("findings.heading-met", ("n", findings.Count))) { Above = 5 };
        yield return Listed(say, findings.GroupBy(f => (f.Clause.Adopted, f.Rule.Key)).Select(places =>
        {
            // What governs it; the rest of its notes stand among the calculations.
            var tightest = places.MinBy(Margin)!;
            return Line(say, tightest with { Notes = [.. tightest.Notes.Take(1)] }, places.Count() == 1 ? tightest.Subject : say.Say("findings.tightest", ("n", places.Count()), ("subject", tightest.Subject)));
        }));
    }

    /// <summary>How tight a finding is; what compares nothing last.</summary>
    public static double Margin(Finding finding) => finding.Verdict is Verdict.Met { Comparisons: [var tightest, ..] } ? tightest.Margin : double.PositiveInfinity;

    private static Table Listed(Wording say, IEnumerable<Row> rows) => new(
        [new(say.Say("findings.rule")) { Grows = 1 }, new(say.Say("findings.subject")) { Grows = 1 }, new(say.Say("findings.says")) { Grows = 3 }, new(say.Say("findings.source")) { Grows = 1 }],
        [.. rows]) { Above = 1.5 };

    private static Row Line(Wording say, Finding finding, string subject) => new(
        new Cell(say.Say(finding.Rule.Title), Wording.Dotted(finding.Clause.Adopted, finding.Clause.Number)) { Lettering = Styles.BodyStrong },
        new Cell(subject),
        new Cell(say.Reason(finding.Verdict), string.Join(' ', finding.Notes.Select(say.Say))),
        new Cell("", say.Say(finding.Clause.Source)));

    private static IEnumerable<Block> Assumptions(Scene scene)
    {
        var say = scene.Say;
        if (scene.Set.Assumptions.Count == 0)
        {
            yield break;
        }

        yield return new Heading(say.Say("findings.assumptions")) { Above = 5 };
        yield return new Table(
            [new(say.Say("findings.assumed")) { Grows = 1 }, new(say.Say("findings.value"), Anchor.End), new(say.Say("findings.source"))],
            [.. scene.Set.Assumptions.Select(a => new Row(new Cell(say.Say(a.What)), new Cell(say.Say(a.Value)) { Lettering = Styles.BodyStrong }, new Cell("", say.Say(a.Source))))]) { Above = 1.5 };
    }
}
