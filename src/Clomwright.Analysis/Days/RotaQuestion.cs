using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Days;

/// <summary>What people are asked for in one half of a day.</summary>
/// <param name="Date">The day.</param>
/// <param name="Half">0 before the midday meal, 1 after it.</param>
/// <param name="Posts">What is asked; who has no post is spare.</param>
public sealed record RotaShift(DateOnly Date, int Half, Sequence<RotaPost> Posts);

/// <summary>People at one kind of work.</summary>
/// <param name="Role">Its key: a task, or a part of laying cob (<see cref="RotaRoles"/>).</param>
/// <param name="People">How many.</param>
/// <param name="Leads">How many of them must know <paramref name="LeadSkill"/>.</param>
/// <param name="LeadSkill">What a lead knows; null where nobody need lead.</param>
/// <param name="Skills">What is met at it.</param>
/// <param name="Lifts">Whether it asks people to lift or carry.</param>
/// <param name="Climbs">Whether it is above the shoulder, on platform or roof.</param>
public sealed record RotaPost(string Role, int People, int Leads, CrewSkill? LeadSkill, Sequence<CrewSkill> Skills, bool Lifts, bool Climbs)
{
    /// <summary>Whether somebody may stand at it.</summary>
    public bool Takes(CrewMember person) => !(Lifts && person.Cannot.Contains(CannotDo.Lift)) && !(Climbs && person.Cannot.Contains(CannotDo.Climb));

    /// <summary>Whether somebody may lead at it.</summary>
    public bool IsLedBy(CrewMember person) => LeadSkill is not { } skill || person.Knows.Contains(skill);
}

/// <summary>People and the work of their days.</summary>
/// <param name="Members">Who they are.</param>
/// <param name="Shifts">Half days in order.</param>
/// <param name="Clashes">What cannot be manned as the plan of the days asks; taken out of the shifts.</param>
public sealed record RotaQuestion(Sequence<CrewMember> Members, Sequence<RotaShift> Shifts, Sequence<RotaClash> Clashes)
{
    /// <summary>Who is there on a day, by their places.</summary>
    public IEnumerable<int> There(DateOnly day) => Enumerable.Range(0, Members.Count).Where(p => !Members[p].Away.Contains(day));

    /// <summary>Learners and what they could meet: a skill that they do not know, at a post that takes them on a day they are there.</summary>
    public Sequence<RotaAim> Aims() => Enumerable.Range(0, Members.Count)
        .SelectMany(p => Enum.GetValues<CrewSkill>().Where(s => !Members[p].Knows.Contains(s) && Shifts.Any(shift => !Members[p].Away.Contains(shift.Date)
            && shift.Posts.Any(post => post.Skills.Contains(s) && post.Takes(Members[p])))).Select(s => new RotaAim(p, s))).ToSequence();
}

/// <summary>A skill that a learner could meet.</summary>
/// <param name="Person">Place among the members.</param>
/// <param name="Skill">What.</param>
public readonly record struct RotaAim(int Person, CrewSkill Skill);

/// <summary>A wish or a limit that does not go together with the work.</summary>
/// <param name="Date">The day.</param>
/// <param name="Role">What was to be manned.</param>
/// <param name="Why">In words: who is missing, and because of what.</param>
public sealed record RotaClash(DateOnly Date, string Role, Message Why);
