using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Days;

/// <summary>Half day by half day, each put where they have been least and learn most: always there, and no more than that.</summary>
public static class PlainRota
{
    private const double Learns = 100, Wishes = 60, Again = 4, TwiceRunning = 9, SpareAgain = 6, LeadElsewhere = 1;

    /// <summary>Who does what.</summary>
    public static RotaResult Of(RotaQuestion asked)
    {
        ArgumentNullException.ThrowIfNull(asked);
        var members = asked.Members;
        var met = new HashSet<RotaAim>();
        var times = new Dictionary<(int Person, string Role), int>();
        var last = new Dictionary<int, string>();
        var places = new List<RotaPlace>();
        for (var n = 0; n < asked.Shifts.Count; n++)
        {
            var spots = Manning.Spots(asked.Shifts[n].Posts);
            int[] there = [.. asked.There(asked.Shifts[n].Date)];
            double Cost(int person, int spot)
            {
                if (spot < 0)
                {
                    return SpareAgain * times.GetValueOrDefault((person, ""));
                }

                var post = spots[spot].Post;
                var fresh = post.Skills.Where(s => !members[person].Knows.Contains(s) && !met.Contains(new(person, s))).ToList();
                return Again * times.GetValueOrDefault((person, post.Role)) + (last.GetValueOrDefault(person) == post.Role ? TwiceRunning : 0)
                    + (post.LeadSkill is { } skill && !spots[spot].Lead && members[person].Knows.Contains(skill) ? LeadElsewhere : 0)
                    - Learns * fresh.Count - Wishes * fresh.Count(members[person].Wishes.Contains);
            }

            var manned = Manning.Man(members, there, spots, Cost);
            for (var s = 0; s < spots.Count; s++)
            {
                if (manned[s] is >= 0 and var person)
                {
                    places.Add(new(n, person, spots[s].Post.Role, spots[s].Lead));
                    foreach (var skill in spots[s].Post.Skills)
                    {
                        met.Add(new(person, skill));
                    }
                }
            }

            foreach (var person in there)
            {
                var role = Array.IndexOf(manned, person) is >= 0 and var at ? spots[at].Post.Role : "";
                times[(person, role)] = times.GetValueOrDefault((person, role)) + 1;
                last[person] = role;
            }
        }

        return new(asked, places.ToSequence(), false, false);
    }
}
