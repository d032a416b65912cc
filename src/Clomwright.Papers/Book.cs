using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Sheets;
using Clomwright.Study;

namespace Clomwright.Papers;

/// <summary>The papers of one house, in two parts: what the crew carries, and what the office asks for.</summary>
/// <remarks>
/// Keys are permanent and stand in one part only; a sheet that goes on carries <c>-2</c> and on.
/// Site: <c>cover</c>, <c>findings</c>, <c>emergency-card</c>, <c>safety-card</c>, <c>weather-day</c>, <c>handover</c>, <c>pocket-card</c>, <c>plan</c>, <c>foundation</c>, <c>drain</c>, <c>unrolled-outside</c>, <c>unrolled-inside</c>, <c>section</c>, <c>radius-table</c>, <c>lift-1</c>, <c>opening-door</c>, <c>mix-card</c>, <c>test-register</c>, <c>embed-register</c>, <c>services</c>, <c>bottles</c>, <c>templates</c>, <c>bond-beam</c>, <c>tees</c>, <c>roof-plan</c>, <c>roof-section</c>, <c>pole-cards</c>, <c>raising</c>, <c>roof-loading</c>, <c>days</c>, <c>lift-plan</c>, <c>day-board</c>, <c>host-list</c>, <c>drying</c>, <c>daily-log</c>, <c>ring-check</c>, <c>cracks</c>, <c>photo-list</c>, <c>order-earth</c>, <c>costs</c>, <c>floor</c>, <c>plaster-inside</c>, <c>yearly-care</c>, <c>passport</c>.
/// Office: <c>title-sheet</c>, <c>criteria</c>, <c>rule-table</c>, <c>statements</c>, <c>material-tests</c>, <c>inspections</c>, <c>request</c>, <c>warmth</c>, <c>energy</c>, <c>site-plan</c>, <c>floor-plan</c>, <c>elevations</c>, <c>sections</c>, <c>foundation-plan</c>, <c>framing-plan</c>, <c>details</c>, <c>note</c>, <c>wall-by-hand</c>, <c>wall-stress</c>, <c>wall-note</c>, <c>wall-trials</c>, <c>collapse</c>, <c>calculations</c>.
/// </remarks>
public static class Book
{
    /// <summary>Both parts, one after the other.</summary>
    public static Sequence<Sheet> Of(HouseStudy study, PaperOptions options) => Of(FromStudy.Set(study, options));

    /// <summary>Both parts, one after the other.</summary>
    public static Sequence<Sheet> Of(PaperSet set) => [.. Site(set), .. Office(set)];

    /// <summary>The site folder in page order, its cover first.</summary>
    public static Sequence<Sheet> Site(PaperSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return SiteFolder.Of(new Scene(set));
    }

    /// <summary>The office set: sheets numbered by trade, its title sheet with the list of them first, room for a licence and an empty box for the seal on each.</summary>
    public static Sequence<Sheet> Office(PaperSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return OfficeSet.Of(new Scene(set) { Office = true });
    }
}
