using System.Globalization;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Revisions;

namespace Clomwright.Papers.Sheets;

/// <summary>What changed since the set that was handed out last, for the first sheet of a part.</summary>
internal static class RevisionBlocks
{
    private const int Across = 2;

    /// <summary>The papers of one part beside what was handed out; null where no letters are asked for.</summary>
    /// <param name="scene">With the letter and what was handed out.</param>
    /// <param name="part">Which part.</param>
    /// <param name="drafts">Its sheets, the first ones without their list of changes.</param>
    public static SetRevision? Compared(Scene scene, string part, IEnumerable<Draft> drafts)
    {
        var options = scene.Set.Options;
        return options.Revision is null && options.Issued.Count == 0 ? null
            : SetRevision.Of([.. drafts.Select(d => new DrawnSheet(part, d.Head.Key, "", d.Head.Title, d.Print(scene.Say)))], options.Issued, options.Revision);
    }

    /// <summary>The sheets to hang up and those to take down; nothing for a first set.</summary>
    /// <param name="scene">Of the papers.</param>
    /// <param name="set">What changed; null where no letters are asked for.</param>
    /// <param name="numbers">Numbers of the sheets by their keys.</param>
    /// <param name="first">Number of the sheet that this stands on.</param>
    public static IEnumerable<Block> Of(Scene scene, SetRevision? set, IReadOnlyDictionary<string, string> numbers, string first)
    {
        if (set is not { Before: { } before })
        {
            yield break;
        }

        var say = scene.Say;
        var changes = set.Changes;
        yield return new Heading(say.Say("revision.changed", ("before", before))) { Above = 4 };
        if (changes.Count + set.TakenBack.Count == 0)
        {
            yield return new Paragraph(say.Say("revision.none", ("before", before)), Styles.Body) { Above = 1.5 };
            yield break;
        }

        yield return new Paragraph(say.Say("revision.how", ("before", before)), Styles.Small) { Above = 1.5 };
        if (changes.Count == set.Sheets.Count)
        {
            yield return new Paragraph(say.Say("revision.all", ("before", before)), Styles.BodyStrong) { Above = 1.5 };
        }
        else if (changes.Count > 0)
        {
            yield return List([.. changes.Select(s => new Row(
                new Cell(numbers.GetValueOrDefault(s.Drawn.Key, first)) { Lettering = Styles.BodyStrong }, new Cell(s.Drawn.Title), new Cell(s.State == SheetState.New ? say.Say("revision.new") : "")))]);
        }

        if (set.TakenBack.Count > 0)
        {
            yield return new LeadIn(say.Say("revision.back", ("before", before))) { Above = 2 };
            yield return List([.. set.TakenBack.Select(s => new Row(new Cell(s.Number) { Lettering = Styles.BodyStrong }, new Cell(s.Title), new Cell("")))]);
        }
    }

    /// <summary>The letter that each key's sheets carry: of sheets that go on, the latest.</summary>
    public static string Letter(SetRevision? set, IEnumerable<string> keys)
    {
        var all = keys.ToHashSet(StringComparer.Ordinal);
        return set?.Sheets.Where(s => all.Contains(s.Drawn.Key)).Select(s => s.Letter ?? "").OrderBy(l => l.Length).ThenBy(l => l, StringComparer.Ordinal).LastOrDefault() ?? "";
    }

    /// <summary>Numbers of sheets that are counted from a first one.</summary>
    public static Dictionary<string, string> Counted(IEnumerable<SheetHead> heads, int first) =>
        heads.Select((h, i) => (h.Key, Number: (i + first).ToString(CultureInfo.InvariantCulture))).ToDictionary(s => s.Key, s => s.Number, StringComparer.Ordinal);

    private static Beside List(Row[] rows)
    {
        var half = (rows.Length + Across - 1) / Across;
        Stack Part(int i) => new([new Table([new("", Anchor.End), new("") { Grows = 1 }, new("")], [.. rows.Skip(i * half).Take(half)]) { Pad = 0.65 }]);
        return new Beside(Part(0), Part(1)) { Above = 1 };
    }
}
