using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Days;

/// <summary>The half days of a crew of which everybody is named, with the work that is planned for them.</summary>
public static class CrewDays
{
    /// <summary>Work days planned for at once: what comes later will have moved.</summary>
    public const int Most = 40;

    private const int Halves = 2;

    /// <summary>What is asked of whom; or why nobody can be put to anything.</summary>
    /// <param name="asked">The house's days.</param>
    /// <param name="planned">What each is for.</param>
    /// <param name="numbers">How a crew is shared out.</param>
    public static Known<RotaQuestion> Of(DaysQuestion asked, PlannedDaysResult planned, RotaNumbers numbers)
    {
        ArgumentNullException.ThrowIfNull(asked);
        ArgumentNullException.ThrowIfNull(planned);
        var members = asked.Crew.Members;
        if (members.Count == 0)
        {
            return new Message("analysis.rota.nobody-named");
        }

        return Manning.Of(members, planned.Days.Take(Most).SelectMany(day =>
        {
            var posts = PostsOf(asked, day, members.Count(m => !m.Away.Contains(day.Date)), numbers);
            return Enumerable.Range(0, Halves).Select(half => new RotaShift(day.Date, half, posts));
        }));
    }

    /// <summary>How many people each kind of work of a day asks for.</summary>
    /// <param name="asked">The house's days.</param>
    /// <param name="day">The day.</param>
    /// <param name="there">Who is there.</param>
    /// <param name="numbers">How a crew is shared out.</param>
    public static Sequence<RotaPost> PostsOf(DaysQuestion asked, PlannedDay day, int there, RotaNumbers numbers)
    {
        ArgumentNullException.ThrowIfNull(asked);
        ArgumentNullException.ThrowIfNull(day);
        return RotaRoles.Of(day, there, asked.Amounts.PeopleForPole, day.Lift is { } lift && asked.Amounts.Heights[lift] > asked.Numbers["work-shoulder"], numbers);
    }
}
