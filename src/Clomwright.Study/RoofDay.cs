using Clomwright.Analysis.Days;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Study;

/// <summary>What a plan of days says of the day on which the first pole lands, in sentences that a terminal has room for.</summary>
public static class RoofDay
{
    /// <summary>That the day planned for it is kept, or that none is planned and the poles come as soon as the wall is likely to carry them; nothing for a house without a roof or a crew.</summary>
    /// <param name="house">The house.</param>
    public static Sequence<Message> Of(House house)
    {
        ArgumentNullException.ThrowIfNull(house);
        return house is not { Roof: not null, Crew: { } crew } ? []
            : crew.RoofOn is { } day ? [Message.Of("study.days.roof-kept", ("date", day)), new Message("study.days.roof-read")]
            : [new Message("study.days.roof-unsaid"), new Message("study.days.roof-plan")];
    }

    /// <summary>The same where poles are raised on one of these days; nothing where none is.</summary>
    /// <param name="house">The house.</param>
    /// <param name="days">Work days, as planned.</param>
    public static Sequence<Message> Of(House house, IEnumerable<PlannedDay> days) => days.Any(d => d.Works.Any(w => w.Task == WorkList.Raise)) ? Of(house) : [];
}
