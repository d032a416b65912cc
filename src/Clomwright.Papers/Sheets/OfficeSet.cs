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
    public static Sequence<Sheet> Of(Scene scene)
    {
        var drafts = Drafts(scene);
        var pages = TitleSheet.Of(scene, Numbered(drafts, 1), null).Count();
        var rest = Numbered(drafts, pages);
        NumberedDraft[] All(SetRevision? set) => [.. TitleSheet.Of(scene, rest, set).Select((d, i) => new NumberedDraft(Number("G-0", Math.Min(i + 1, pages)) + (i < pages ? "" : (char)('b' + i - pages)), d.Drawn(scene.Say))), .. rest];
        var all = All(null);
        var set = RevisionBlocks.Compared(scene, "office", all.Select(s => s.Draft));
        all = set is null ? all : All(set);
        return all.Select((s, i) => s.Draft.Finish(s.Number, scene.Say.Say("frame.place-of", ("n", i + 1), ("count", all.Length)), scene.Imprint with { Set = set }, scene.Say)).ToSequence();
    }

    /// <summary>No sheet knows of another: they are drawn side by side.</summary>
    private static (string Series, Draft Draft)[] Drafts(Scene scene) => SideBySide.Drawn<(string, Draft)>(
    [
        () => In("G-0", CriteriaSheet.Of(scene), scene),
        () => In("G-0", RuleTableSheet.Of(scene), scene),
        () => In("G-0", StatementSheet.Of(scene), scene),
        () => In("G-1", WarmthSheet.Of(scene), scene),
        () => In("G-1", EnergySheet.Of(scene), scene),
        () => In("A-1", OfficePlans.Site(scene), scene),
        () => In("A-1", OfficePlans.Floor(scene), scene),
        () => In("A-2", ElevationSheet.Of(scene), scene),
        () => In("A-3", CrossSectionSheet.Of(scene), scene),
        () => In("S-1", OfficePlans.Foundation(scene), scene),
        () => In("S-1", OfficePlans.Framing(scene), scene),
        () => In("S-5", DetailSheet.Of(scene), scene),
        () => In("S-8", NoteSheet.Of(scene), scene),
        () => In("S-8", WallByHandSheet.Of(scene), scene),
        () => In("S-8", WallStressSheet.Of(scene), scene),
        () => In("S-8", WallNoteSheet.Of(scene), scene),
        () => In("S-8", WallTrialsSheet.Of(scene), scene),
        () => In("S-8", CollapseSheet.Of(scene), scene),
        () => In("S-8", CalculationSheet.Of(scene), scene),
    ]);

    private static IEnumerable<(string Series, Draft Draft)> In(string series, IEnumerable<Draft> drafts, Scene scene) => drafts.Select(d => (series, d.Drawn(scene.Say)));

    /// <summary>Numbers within each series from 01; those of the title sheet's own series begin after its pages.</summary>
    private static NumberedDraft[] Numbered(IEnumerable<(string Series, Draft Draft)> drafts, int titles)
    {
        Dictionary<string, int> last = new() { ["G-0"] = titles };
        return [.. drafts.Select(d => new NumberedDraft(Number(d.Series, last[d.Series] = last.GetValueOrDefault(d.Series) + 1), d.Draft))];
    }

    private static string Number(string series, int n) =>
        string.Create(CultureInfo.InvariantCulture, $"{series[..2]}{100 * (series[2] - '0') + n:000}");
}
