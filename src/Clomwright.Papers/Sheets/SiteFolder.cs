using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Sheets;

/// <summary>The site folder: every sheet that the crew carries, in page order.</summary>
internal static class SiteFolder
{
    public static Sequence<Sheet> Of(Scene scene)
    {
        Draft[] rest = [.. Drafts(scene)];
        var heads = rest.Select(d => d.Head).ToArray();
        var coverPages = CoverSheet.Of(scene, heads, 2).Count();
        Draft[] all = [.. CoverSheet.Of(scene, heads, coverPages + 1), .. rest];
        return all.Select((d, i) => d.Finish(i + 1, all.Length, scene.Imprint, scene.Say)).ToSequence();
    }

    private static IEnumerable<Draft> Drafts(Scene scene) =>
    [
        .. FindingsSheet.Of(scene),
        .. PocketCard.Of(scene),
        .. PlanSheet.Of(scene),
        .. UnrolledSheet.Of(scene, Face.Outside),
        .. UnrolledSheet.Of(scene, Face.Inside),
        .. SectionSheet.Of(scene),
        .. RadiusSheet.Of(scene),
        .. TemplatesSheet.Of(scene),
        .. FoundationSheet.Of(scene),
        .. DrainSheet.Of(scene),
        .. RoofPlanSheet.Of(scene),
        .. RoofSectionSheet.Of(scene),
        .. PoleCards.Of(scene),
        .. RaisingSheet.Of(scene),
        .. RoofLoadingSheet.Of(scene),
        .. BondBeamSheet.Of(scene),
        .. TeeSheet.Of(scene),
        .. scene.Geometry.Lifts.SelectMany(l => LiftSheet.Of(scene, l)),
        .. scene.Geometry.Openings.SelectMany(o => OpeningCard.Of(scene, o)),
        .. DaysSheet.Of(scene),
        .. LiftPlanSheet.Of(scene),
        .. DayBoardSheet.Of(scene),
        .. HostListSheet.Of(scene),
        .. DryingSheet.Of(scene),
        .. WeatherDaySheet.Of(scene),
        .. MixCard.Of(scene),
        .. TestRegisterSheet.Of(scene),
        .. PlasterCard.Of(scene, Face.Inside),
        .. PlasterCard.Of(scene, Face.Outside),
        .. FloorSheet.Of(scene),
        .. OrderSheet.All(scene),
    ];
}
