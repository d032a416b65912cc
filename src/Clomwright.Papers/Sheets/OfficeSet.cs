using System.Globalization;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Revisions;

namespace Clomwright.Papers.Sheets;

/// <summary>A sheet of the office set with its number.</summary>
internal sealed record NumberedDraft(string Number, Draft Draft);

/// <summary>The office set: every sheet that goes to the office, numbered by trade and kind as offices do: a letter for the trade, then 0 general, 1 plans, 2 elevations, 3 sections, 5 details, 6 schedules, 8 calculations.</summary>
internal static class OfficeSet
{
    /// <summary>Every kind of sheet but the title sheet, with its series, in page order.</summary>
    private static readonly (string Series, Func<Scene, IEnumerable<Draft>> Of)[] Sheets =
    [
        ("G-0", CriteriaSheet.Of),
        ("G-0", RuleTableSheet.Of),
        ("G-0", StatementSheet.Of),
        ("G-1", WarmthSheet.Of),
        ("G-1", EnergySheet.Of),
        ("A-1", OfficePlans.Site),
        ("A-1", OfficePlans.Floor),
        ("A-2", ElevationSheet.Of),
        ("A-3", CrossSectionSheet.Of),
        ("S-1", OfficePlans.Foundation),
        ("S-1", OfficePlans.Framing),
        ("S-5", DetailSheet.Of),
        ("S-8", NoteSheet.Of),
        ("S-8", WallByHandSheet.Of),
        ("S-8", WallStressSheet.Of),
        ("S-8", WallNoteSheet.Of),
        ("S-8", WallTrialsSheet.Of),
        ("S-8", CollapseSheet.Of),
        ("S-8", CalculationSheet.Of),
    ];

    public static Sequence<Sheet> Of(Scene scene)
    {
        (string, Draft)[] drafts = [.. SideBySide.Drawn(scene, Sheets, s => s.Of).SelectMany(s => s.Drafts.Select(d => (s.Of.Series, d)))];
        var pages = TitleSheet.Of(scene, Numbered(drafts, 1), null).Count();
        var rest = Numbered(drafts, pages);
        NumberedDraft[] All(SetRevision? set) => [.. TitleSheet.Of(scene, rest, set).Select((d, i) => new NumberedDraft(Number("G-0", Math.Min(i + 1, pages)) + (i < pages ? "" : (char)('b' + i - pages)), d.Drawn(scene.Say))), .. rest];
        var all = All(null);
        var set = RevisionBlocks.Compared(scene, "office", all.Select(s => s.Draft));
        all = set is null ? all : All(set);
        return all.Select((s, i) => s.Draft.Finish(s.Number, scene.Say.Say("frame.place-of", ("n", i + 1), ("count", all.Length)), scene.Imprint with { Set = set }, scene.Say)).ToSequence();
    }

    /// <summary>Numbers within each series from 01; those of the title sheet's own series begin after its pages.</summary>
    private static NumberedDraft[] Numbered(IEnumerable<(string Series, Draft Draft)> drafts, int titles)
    {
        Dictionary<string, int> last = new() { ["G-0"] = titles };
        return [.. drafts.Select(d => new NumberedDraft(Number(d.Series, last[d.Series] = last.GetValueOrDefault(d.Series) + 1), d.Draft))];
    }

    private static string Number(string series, int n) =>
        string.Create(CultureInfo.InvariantCulture, $"{series[..2]}{100 * (series[2] - '0') + n:000}");
}
