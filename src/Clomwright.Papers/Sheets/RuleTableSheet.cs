using Clomwright.Evidence;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>Every clause of every adopted body of rules: what is asked, what is there, the verdict, the source and how sure we are of it.</summary>
internal static class RuleTableSheet
{
    /// <summary>Longer lists of numbers stand under the rule's name.</summary>
    private const int LongestNumber = 16;

    public static IEnumerable<Draft> Of(Scene scene)
    {
        var say = scene.Say;
        Row[] rows = [.. scene.Set.Findings.GroupBy(f => f.Clause.Adopted).SelectMany(body => Body(say, body.Key, [.. body]))];
        Block[] Blocks(double pad) =>
        [
            new Paragraph(say.Say("rule-table.note"), Styles.Small),
            new Table(
            [
                new(say.Say("rule-table.clause")), new(say.Say("rule-table.rule")) { Grows = 1 }, new(say.Say("rule-table.of")) { Grows = 1 }, new(say.Say("rule-table.required")) { Grows = 1 },
                new(say.Say("rule-table.provided")) { Grows = 2 }, new(say.Say("rule-table.verdict")), new(say.Say("rule-table.source")) { Grows = 2 },
            ],
            rows) { Above = 1.5, Pad = pad, Lettering = Styles.Small },
        ];
        return Draft.Fewest([0.55, 0.4], pad => Draft.Flow(new SheetHead("rule-table", say.Say("rule-table.title")), scene.Set.Options.Paper.OfficeList(), Blocks(pad), say));
    }

    private static IEnumerable<Row> Body(Wording say, string adopted, IReadOnlyList<Finding> findings)
    {
        yield return new Row(new Cell(say.Say(new Message($"rules.body.{adopted}"))) { Lettering = Styles.BodyStrong }) { Ruled = true };
        foreach (var alike in OfficeFindings.Alike(say, findings))
        {
            var told = alike[0];
            var (required, provided) = OfficeFindings.Numbers(say, told);
            yield return new Row(
                new Cell(told.Clause.Number.Length > LongestNumber ? "" : told.Clause.Number), new Cell(say.Say(told.Rule.Title), told.Clause.Number.Length > LongestNumber ? told.Clause.Number : "") { Lettering = Styles.SmallStrong },
                new Cell(OfficeFindings.Subject(say, alike)),
                new Cell(required), new Cell(provided),
                new Cell(OfficeFindings.Word(say, told.Verdict)) { Lettering = told.Verdict is Verdict.Met or Verdict.NotApplicable ? Styles.Small : Styles.SmallStrong },
                OfficeFindings.Source(say, told.Clause.Source));
        }
    }
}
