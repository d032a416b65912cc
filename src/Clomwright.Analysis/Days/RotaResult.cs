using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Days;

/// <summary>Somebody at a post.</summary>
/// <param name="Shift">Place among the shifts.</param>
/// <param name="Person">Place among the members.</param>
/// <param name="Role">The post's role.</param>
/// <param name="IsLead">Whether they lead there.</param>
public sealed record RotaPlace(int Shift, int Person, string Role, bool IsLead);

/// <summary>When a learner first meets a skill.</summary>
/// <param name="Aim">Who and what.</param>
/// <param name="Shift">Place among the shifts; null where it is not met in the days planned.</param>
public sealed record RotaMeeting(RotaAim Aim, int? Shift);

/// <summary>Who does what in each half day.</summary>
/// <param name="Asked">What was asked.</param>
/// <param name="Places">Who stands where; who is there and has no place is spare.</param>
/// <param name="IsSearched">Whether a search over all days at once made it; else it was made half day by half day.</param>
/// <param name="IsBest">Whether the search proved that no other does better by its own count.</param>
public sealed record RotaResult(RotaQuestion Asked, Sequence<RotaPlace> Places, bool IsSearched, bool IsBest)
{
    /// <summary>Every aim, and when it is met.</summary>
    public Sequence<RotaMeeting> Meetings() => Asked.Aims().Select(aim => new RotaMeeting(aim, Places
        .Where(place => place.Person == aim.Person && Asked.Shifts[place.Shift].Posts.First(post => post.Role == place.Role).Skills.Contains(aim.Skill))
        .Select(place => (int?)place.Shift).Min())).ToSequence();

    /// <summary>Who is there in a half day and has no place, by their places among the members.</summary>
    public Sequence<int> Spare(int shift) => Asked.There(Asked.Shifts[shift].Date).Where(p => !Places.Any(place => place.Shift == shift && place.Person == p)).ToSequence();
}
