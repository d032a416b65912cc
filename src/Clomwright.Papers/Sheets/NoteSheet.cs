using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>The calculation note. Its first page names everything that falls short and everything that is not checked; then what it leans on.</summary>
internal static class NoteSheet
{
    /// <summary>Columns in which rules that stay open are named: the fewest in which all of them stand on the first page.</summary>
    private static readonly int[] Columns = [2, 3, 4];

    /// <summary>So many rules may take a second line each where one does not hold what they are of; of more of them each keeps to one, and is cut.</summary>
    private const int OpenInFull = 40;

    public static IEnumerable<Draft> Of(Scene scene)
    {
        var say = scene.Say;
        var findings = scene.Set.Findings;
        Fact Total(string key, Func<Finding, bool> counts) => new(say.Say(key), say.One(Amount.Count(findings.Count(counts))));
        List<Block> First(int columns) =>
        [
            new Facts(
            [
                Total("findings.met", f => f.Verdict is Verdict.Met), Total("findings.short", f => f.Verdict is Verdict.FallsShort),
                Total("findings.not-checked", f => f.Verdict is Verdict.NotChecked), Total("findings.judgement", f => f.Verdict is Verdict.NeedsJudgement),
            ], Styles.Heading),
            new Paragraph(say.Say("office-note.first"), Styles.Small) { Above = 1.5 },
            .. Questions(scene),
            .. Gates(scene),
            .. Open(scene, "findings.heading-short", [.. findings.Where(f => f.Verdict is Verdict.FallsShort)], columns),
            .. Open(scene, "findings.heading-not-checked", [.. findings.Where(f => f.Verdict is Verdict.NotChecked)], columns),
        ];
        var first = First(Columns.FirstOrDefault(columns => Draft.IsOneSheet(scene.Portrait, First(columns)), Columns[^1]));
        Block[] basis = [new Heading(say.Say("office-note.basis")) { Above = 5 }, Basis(scene), .. Diagnostics(scene)];
        // Rows of what was assumed draw together where the last few would have a sheet to themselves.
        return Draft.Fewest([0.4, 0.2], pad => Draft.Flow(new SheetHead("note", say.Say("office-note.title")), scene.Portrait, [.. first, .. basis, .. Assumptions(scene, pad)], say));
    }

    /// <summary>How many findings are questions, and how many shares of the wall are over the whole: "0 fall short" says nothing of those.</summary>
    private static IEnumerable<Block> Questions(Scene scene)
    {
        var (say, asked) = (scene.Say, scene.Set.Findings.Count(f => f.Verdict is Verdict.NeedsJudgement));
        if (asked == 0)
        {
            yield break;
        }

        var (hand, model) = (WallByHandSheet.Over(scene), WallNoteSheet.Over(scene));
        yield return new Paragraph(say.Say("office-note.questions", ("n", asked)), Styles.BodyStrong) { Above = 1.5 };
        if (hand.Count + model.Count > 0)
        {
            yield return new Paragraph(
                say.Say("office-note.questions-wall", ("hand", hand.Count), ("by-hand", hand.Of), ("over", model.Count), ("count", model.Of), ("most", Amount.Fraction(Math.Round(Math.Max(hand.Most, model.Most), 2)))), Styles.Body) { Above = 1 };
        }
    }

    /// <summary>Bodies of rules that have nothing to say of this house, because it is outside their limits or nobody knows whether it is.</summary>
    private static IEnumerable<Block> Gates(Scene scene)
    {
        string[] outside = [.. scene.Set.Findings.Where(f => f.Rule.Key == "rule-limits").Select(f => scene.Say.Reason(f.Verdict))];
        if (outside.Length > 0)
        {
            yield return new Cautions(scene.Say.Say("office-note.gates"), outside) { Above = 2 };
        }
    }

    /// <summary>One line for each rule, in columns: its name, and of what.</summary>
    private static IEnumerable<Block> Open(Scene scene, string heading, IReadOnlyList<Finding> findings, int columns)
    {
        var say = scene.Say;
        yield return new Heading(say.Say(heading, ("n", findings.Count))) { Above = 3 };
        if (findings.Count == 0)
        {
            yield break;
        }

        var content = SheetFrame.Content(scene.Portrait).Width;
        Stack Part(IEnumerable<string> part) => new([.. part.Select(l => new Paragraph(l, Styles.Small) { Above = 0 })]);
        var open = ByRule(scene.Set.Findings.Where(f => f.Verdict is Verdict.FallsShort or Verdict.NotChecked)).Count();
        string[] Lines(double width) => [.. ByRule(findings).Select(g => Line(say, [.. g], width, open <= OpenInFull ? 2 : 1))];
        var lines = Lines((content - (columns - 1) * Across.Gutter) / columns);
        yield return new Across([.. lines.Chunk((lines.Length + columns - 1) / columns).Select(Part)], columns) { Above = 1 };
    }

    private static IEnumerable<IGrouping<(string Adopted, string Rule), Finding>> ByRule(IEnumerable<Finding> findings) => findings.GroupBy(f => (f.Clause.Adopted, f.Rule.Key));

    private static string Line(Wording say, IReadOnlyList<Finding> alike, double width, int most)
    {
        var title = say.Say(alike[0].Rule.Title);
        var subjects = string.Join(", ", alike.Select(f => say.Subject(f.Subject)).Distinct());
        var head = $"– {title} ({Wording.Dotted(OfficeFindings.Body(say, alike[0].Clause.Adopted), alike[0].Clause.Number.Split(", ") is [var one, _, ..] all ? say.Say("office-note.clauses", ("first", one), ("n", all.Length - 1)) : alike[0].Clause.Number)}): ";
        var whole = head + (alike.Count == 1 ? subjects : $"{alike.Count}: {subjects}");

        // Where many places would take more lines than there are, how many they are.
        bool Fits(string words) => Wrapping.Lines(words, Styles.Small, width).Count <= most;
        var counted = alike.Count == 1 ? whole : head + say.Say("office-note.places", ("n", alike.Count), ("first", say.Subject(alike[0].Subject)));
        return Fits(whole) ? whole : Fits(counted) ? counted : Wrapping.Shortened(whole, Styles.Small, width);
    }

    /// <summary>What was reckoned and how, each with the sheets it stands on.</summary>
    private static Table Basis(Scene scene)
    {
        var say = scene.Say;
        string[] parts = ["loads", "roof", "top", "hand", "model", "foundation", "strength"];
        return new Table([new(say.Say("office-note.part")), new(say.Say("office-note.how")) { Grows = 1 }],
            [.. parts.Select(p => new Row(new Cell(say.Say("office-note.part-" + p)) { Lettering = Styles.BodyStrong }, new Cell(say.Say("office-note.how-" + p))))]) { Above = 1.5, Pad = 0.5 };
    }

    private static IEnumerable<Block> Diagnostics(Scene scene)
    {
        if (scene.Set.Diagnostics.Count > 0)
        {
            yield return new Heading(scene.Say.Say("findings.diagnostics")) { Above = 4 };
            yield return new Table(
                [new(scene.Say.Say("findings.place")), new(scene.Say.Say("findings.wrong")) { Grows = 1 }],
                [.. scene.Set.Diagnostics.Select(d => new Row(new Cell(d.Path) { Lettering = Styles.BodyStrong }, new Cell(scene.Say.Say(d.What))))]) { Above = 1.5 };
        }
    }

    private static IEnumerable<Block> Assumptions(Scene scene, double pad)
    {
        var say = scene.Say;
        if (scene.Set.Assumptions.Count > 0)
        {
            yield return new Heading(say.Say("findings.assumptions")) { Above = 5 };
            yield return new Table(
                [new(say.Say("findings.assumed")) { Grows = 1 }, new(say.Say("findings.value"), Anchor.End), new(say.Say("findings.source")) { Grows = 1 }],
                [.. scene.Set.Assumptions.Select(a => new Row(new Cell(say.Say(a.What)), new Cell(say.Say(a.Value)) { Lettering = Styles.BodyStrong }, OfficeFindings.Source(say, a.Source)))]) { Above = 1.5, Pad = pad };
        }
    }
}
