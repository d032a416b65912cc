using Clomwright.Analysis;
using Clomwright.Analysis.Days;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Study;

/// <summary>Something that has to be on site.</summary>
/// <param name="Line">What, and how much.</param>
/// <param name="Task">What it is first needed for.</param>
/// <param name="Needed">The first day that is planned for that; null where it comes before the crew does.</param>
/// <param name="By">When it is there; before the crew comes where <paramref name="Needed"/> is null.</param>
public sealed record HostLine(OrderLine Line, string Task, DateOnly? Needed, DateOnly By);

/// <summary>What a host has ready, and by when.</summary>
/// <param name="Start">First day of work.</param>
/// <param name="SiteReady">When site, shelter, kitchen and toilets are ready.</param>
/// <param name="Lines">Materials, the first needed first.</param>
/// <param name="People">Crew, hosts and teachers.</param>
/// <param name="Meals">A day, for all of them.</param>
/// <param name="Drinking">Water to drink a day, m3.</param>
/// <param name="Washing">Water to wash and cook a day, m3.</param>
/// <param name="Toilets">How many.</param>
/// <param name="WorkDays">Days with work until the poles are raised, if nothing is lost.</param>
/// <param name="Assumptions">What nobody gave.</param>
public sealed record HostList(
    DateOnly Start, DateOnly SiteReady, Sequence<HostLine> Lines, int People, int Meals, double Drinking, double Washing, int Toilets, int WorkDays, Sequence<Assumption> Assumptions)
{
    private static readonly (string Starts, string Task)[] Uses =
    [
        ("trench", "rubble"), ("drain", "rubble"), ("filter", "rubble"), ("stem", WorkList.Stem), ("bond-beam", WorkList.Beam), ("beam", WorkList.Beam), ("tee", PlannedWork.Cob),
        ("roof-p", "poles"), ("roof-seat", "poles"), ("roof-footings", "poles"), ("roof-ring", "poles"), ("roof-loss", "poles"), ("roof-strap", "poles"), ("roof-deck", "deck"), ("roof-membrane", "membrane"), ("roof-so", "soil"), ("roof-st", "soil"), ("roof", "deck"),
        ("floor", "floor"), ("lath", "plaster"), ("plaster", "plaster"),
    ];

    /// <summary>The list of a house; or why there is none.</summary>
    internal static Known<HostList> Of(HouseStudy study)
    {
        if (study.DaysAsked.Value is not { } asked || study.DaysPlanned.Value is not { } planned)
        {
            return study.DaysAsked.NotChecked!;
        }

        var numbers = RotaNumbers.Of(study.House.Assumed);
        var ahead = (int)numbers["host-materials-days"];
        var start = asked.Crew.Start;
        HostLine Line(OrderLine order)
        {
            var task = Uses.Where(u => order.Key.StartsWith(u.Starts, StringComparison.Ordinal)).Select(u => u.Task).FirstOrDefault()
                ?? order.Supplier switch { "stone" => WorkList.Stem, "roof" => "deck", "finishes" => "plaster", _ => PlannedWork.Cob };
            var first = planned.Days.Where(d => d.Works.Any(w => w.Task == task)).Select(d => (DateOnly?)d.Date).FirstOrDefault();
            return new(order, task, first, (first ?? start).AddDays(-ahead));
        }

        var people = asked.Crew.People + (int)numbers["host-guests"];
        var raised = planned.Days.LastOrDefault(d => d.Works.Any(w => w.Task == WorkList.Raise))?.Date ?? DateOnly.MaxValue;
        // While a wall dries nobody is fed.
        var workDays = planned.Days.Count(d => d.Date <= raised && d.Works.Count > 0);
        return new HostList(
            start, start.AddDays(-(int)numbers["host-site-days"]), study.Quantities.Orders.Select(Line).OrderBy(l => l.By).ToSequence(), people, (int)numbers["host-meals"] * people,
            numbers["host-drinking"] * people, numbers["host-washing"] * people, (int)Math.Ceiling(people / numbers["host-toilet"]), workDays,
            numbers.Assumed(RotaNumbers.Keys.Where(k => k.StartsWith("host-", StringComparison.Ordinal))));
    }
}
