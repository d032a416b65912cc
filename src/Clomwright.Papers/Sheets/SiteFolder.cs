using System.Globalization;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Revisions;

namespace Clomwright.Papers.Sheets;

/// <summary>The site folder: every sheet that the crew carries, in page order.</summary>
internal static class SiteFolder
{
    /// <summary>The front pocket first, then in the order in which the job asks for them; what the rules leave open last.</summary>
    private static readonly Func<Scene, IEnumerable<Draft>>[] Sheets =
    [
        EmergencyCard.Of,
        s => SafetyCard.Of(s.Say, s.Set.Options.Paper),
        WeatherDaySheet.Of,
        HandoverSheet.Of,
        PocketCard.Of,
        PlanSheet.Of,
        FoundationSheet.Of,
        DrainSheet.Of,
        s => UnrolledSheet.Of(s, Face.Outside),
        s => UnrolledSheet.Of(s, Face.Inside),
        SectionSheet.Of,
        RadiusSheet.Of,
        s => s.Geometry.Lifts.SelectMany(l => LiftSheet.Of(s, l)),
        s => s.Geometry.Openings.SelectMany(o => OpeningCard.Of(s, o)),
        MixCard.Of,
        TestRegisterSheet.Of,
        EmbedRegister.Of,
        ServicesSheet.Of,
        BottleSheet.Of,
        TemplatesSheet.Of,
        BondBeamSheet.Of,
        TeeSheet.Of,
        RoofPlanSheet.Of,
        RoofSectionSheet.Of,
        PoleCards.Of,
        RaisingSheet.Of,
        RoofLoadingSheet.Of,
        DaysSheet.Of,
        LiftPlanSheet.Of,
        DayBoardSheet.Of,
        HostListSheet.Of,
        DryingSheet.Of,
        s => DailyLog.Of(s.Say, s.Set.Options.Paper),
        RingCheckSheet.Of,
        CrackSheet.Of,
        PhotoList.Of,
        OrderSheet.All,
        CostSheet.Of,
        FloorSheet.Of,
        s => PlasterCard.Of(s, Face.Inside),
        s => PlasterCard.Of(s, Face.Outside),
        YearlyCareSheet.Of,
        PassportSheet.Of,
        FindingsSheet.Of,
    ];

    public static Sequence<Sheet> Of(Scene scene)
    {
        Draft[] rest = [.. SideBySide.Drawn(scene, Sheets, of => of).SelectMany(s => s.Drafts)];
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
}
