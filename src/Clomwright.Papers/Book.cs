using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Sheets;
using Clomwright.Study;

namespace Clomwright.Papers;

/// <summary>The papers of one house.</summary>
public static class Book
{
    /// <summary>Every sheet in page order: cover, findings, pocket card, plan, unrolled wall outside and inside, section, foundation, drain, roof plan, roof section, pole cards, raising, roof loading, bond beam, tees, a sheet for each lift, a card for each opening, when it would be done and lifts by date where the study is deep, day board, host list, drying, weather day, mix card, test register, plaster cards, floor, orders, warmth, energy, wall by hand, wall stress, the note on its model, its trials and collapse where the study is deep, calculations.</summary>
    /// <remarks>Keys are permanent: <c>cover</c>, <c>findings</c>, <c>pocket-card</c>, <c>plan</c>, <c>unrolled-outside</c>, <c>unrolled-inside</c>, <c>section</c>, <c>foundation</c>, <c>drain</c>, <c>roof-plan</c>, <c>roof-section</c>, <c>pole-cards</c>, <c>raising</c>, <c>roof-loading</c>, <c>bond-beam</c>, <c>tees</c>, <c>lift-1</c>, <c>opening-door</c>, <c>days</c>, <c>lift-plan</c>, <c>day-board</c>, <c>host-list</c>, <c>drying</c>, <c>weather-day</c>, <c>mix-card</c>, <c>test-register</c>, <c>plaster-inside</c>, <c>floor</c>, <c>order-earth</c>, <c>warmth</c>, <c>energy</c>, <c>wall-by-hand</c>, <c>wall-stress</c>, <c>wall-note</c>, <c>wall-trials</c>, <c>collapse</c>, <c>calculations</c>; a sheet that goes on carries <c>-2</c> and on.</remarks>
    public static Sequence<Sheet> Of(HouseStudy study, PaperOptions options) => Of(FromStudy.Set(study, options));

    /// <summary>The same, from the parts of a study.</summary>
    public static Sequence<Sheet> Of(PaperSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        var scene = new Scene(set);
        Draft[] rest =
        [
            .. FindingsSheet.Of(scene),
            .. PocketCard.Of(scene),
            .. PlanSheet.Of(scene),
            .. UnrolledSheet.Of(scene, Face.Outside),
            .. UnrolledSheet.Of(scene, Face.Inside),
            .. SectionSheet.Of(scene),
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
            .. WarmthSheet.Of(scene),
            .. EnergySheet.Of(scene),
            .. WallByHandSheet.Of(scene),
            .. WallStressSheet.Of(scene),
            .. WallNoteSheet.Of(scene),
            .. WallTrialsSheet.Of(scene),
            .. CollapseSheet.Of(scene),
            .. CalculationSheet.Of(scene),
        ];
        var heads = rest.Select(d => d.Head).ToArray();
        var coverPages = CoverSheet.Of(scene, heads, 2).Count();
        Draft[] all = [.. CoverSheet.Of(scene, heads, coverPages + 1), .. rest];
        return all.Select((d, i) => d.Finish(i + 1, all.Length, scene.Imprint, scene.Say)).ToSequence();
    }
}
