using System.Globalization;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Revisions;

namespace Clomwright.Papers.Sheets;

/// <summary>The site folder: every sheet that the crew carries, in page order.</summary>
internal static class SiteFolder
{
    public static Sequence<Sheet> Of(Scene scene)
    {
        var rest = Drafts(scene);
        var heads = rest.Select(d => d.Head).ToArray();
        var pages = CoverSheet.Of(scene, heads, 2, null).Count();
        Draft[] Cover(SetRevision? set) => [.. CoverSheet.Of(scene, heads, pages + 1, set).Select(d => d.Drawn(scene.Say))];
        var cover = Cover(null);
        var set = RevisionBlocks.Compared(scene, "site", cover.Concat(rest));
        cover = set is null ? cover : Cover(set);
        // A long list of changes takes no numbers: copies on the wall keep theirs.
        var numbers = Enumerable.Range(1, pages).Select(i => Page(i)).Concat(Enumerable.Range(1, Math.Max(0, cover.Length - pages)).Select(i => Page(pages) + (char)('a' + i)))
            .Take(cover.Length).Concat(Enumerable.Range(pages + 1, rest.Length).Select(i => Page(i)));
        var of = scene.Say.Say("frame.of", ("count", pages + rest.Length));
        return cover.Concat(rest).Zip(numbers, (d, number) => d.Finish(number, of, scene.Imprint with { Set = set }, scene.Say)).ToSequence();
    }

    private static string Page(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>The front pocket first, then in the order in which the job asks for them; what the rules leave open last. No sheet knows of another: they are drawn side by side.</summary>
    private static Draft[] Drafts(Scene scene) => SideBySide.Drawn(((Func<IEnumerable<Draft>>[])
    [
        () => EmergencyCard.Of(scene),
        () => SafetyCard.Of(scene.Say, scene.Set.Options.Paper),
        () => WeatherDaySheet.Of(scene),
        () => HandoverSheet.Of(scene),
        () => PocketCard.Of(scene),
        () => PlanSheet.Of(scene),
        () => FoundationSheet.Of(scene),
        () => DrainSheet.Of(scene),
        () => UnrolledSheet.Of(scene, Face.Outside),
        () => UnrolledSheet.Of(scene, Face.Inside),
        () => SectionSheet.Of(scene),
        () => RadiusSheet.Of(scene),
        () => scene.Geometry.Lifts.SelectMany(l => LiftSheet.Of(scene, l)),
        () => scene.Geometry.Openings.SelectMany(o => OpeningCard.Of(scene, o)),
        () => MixCard.Of(scene),
        () => TestRegisterSheet.Of(scene),
        () => EmbedRegister.Of(scene),
        () => ServicesSheet.Of(scene),
        () => BottleSheet.Of(scene),
        () => TemplatesSheet.Of(scene),
        () => BondBeamSheet.Of(scene),
        () => TeeSheet.Of(scene),
        () => RoofPlanSheet.Of(scene),
        () => RoofSectionSheet.Of(scene),
        () => PoleCards.Of(scene),
        () => RaisingSheet.Of(scene),
        () => RoofLoadingSheet.Of(scene),
        () => DaysSheet.Of(scene),
        () => LiftPlanSheet.Of(scene),
        () => DayBoardSheet.Of(scene),
        () => HostListSheet.Of(scene),
        () => DryingSheet.Of(scene),
        () => DailyLog.Of(scene.Say, scene.Set.Options.Paper),
        () => RingCheckSheet.Of(scene),
        () => CrackSheet.Of(scene),
        () => PhotoList.Of(scene),
        () => OrderSheet.All(scene),
        () => CostSheet.Of(scene),
        () => FloorSheet.Of(scene),
        () => PlasterCard.Of(scene, Face.Inside),
        () => PlasterCard.Of(scene, Face.Outside),
        () => YearlyCareSheet.Of(scene),
        () => PassportSheet.Of(scene),
        () => FindingsSheet.Of(scene),
    ]).Select(sheets => (Func<IEnumerable<Draft>>)(() => sheets().Select(d => d.Drawn(scene.Say)))));
}
