using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Numerics;

namespace Clomwright.Analysis.Days;

/// <summary>Whether the people of a day can man its posts, and what is taken out where they cannot.</summary>
public static class Manning
{
    private const double Barred = 1e6;

    /// <summary>The question of a rota: every shift as far as it can be manned, and what cannot be, with the reason.</summary>
    /// <param name="members">Who they are.</param>
    /// <param name="shifts">As the days are planned.</param>
    public static RotaQuestion Of(Sequence<CrewMember> members, IEnumerable<RotaShift> shifts)
    {
        ArgumentNullException.ThrowIfNull(shifts);
        var clashes = new List<RotaClash>();
        var manned = shifts.Select(shift => shift with { Posts = Possible(members, shift, clashes) }).ToSequence();
        // What clashes before the meal clashes after it too: it is said once a day.
        return new(members, manned, clashes.Distinct().ToSequence());
    }

    /// <summary>The places to fill in a shift: for each, its post and whether a lead must stand there.</summary>
    internal static List<(RotaPost Post, bool Lead)> Spots(Sequence<RotaPost> posts) =>
        [.. posts.SelectMany(post => Enumerable.Range(0, post.People).Select(i => (post, i < post.Leads)))];

    /// <summary>The cheapest manning: for each spot somebody's place, or -1 where nobody is left who may stand there.</summary>
    /// <param name="members">Who they are.</param>
    /// <param name="there">Who is there.</param>
    /// <param name="spots">From <see cref="Spots"/>.</param>
    /// <param name="cost">Of a person at a spot, and of being spare at -1; far less than a million.</param>
    internal static int[] Man(Sequence<CrewMember> members, int[] there, List<(RotaPost Post, bool Lead)> spots, Func<int, int, double> cost)
    {
        // As many rows as people; columns are spots, then being spare. Leaving a spot empty costs most where it comes first.
        var costs = new double[there.Length, spots.Count + there.Length];
        for (var p = 0; p < there.Length; p++)
        {
            var spare = cost(there[p], -1);
            for (var s = 0; s < costs.GetLength(1); s++)
            {
                costs[p, s] = s >= spots.Count ? spare
                    : Fits(members[there[p]], spots[s]) ? cost(there[p], s) - Barred * (2 - s / (spots.Count + 1.0)) : 10 * Barred;
            }
        }

        var found = Enumerable.Repeat(-1, spots.Count).ToArray();
        var columns = Assignment.Cheapest(costs);
        for (var p = 0; p < there.Length; p++)
        {
            if (columns[p] < spots.Count && Fits(members[there[p]], spots[columns[p]]))
            {
                found[columns[p]] = there[p];
            }
        }

        return found;
    }

    private static bool Fits(CrewMember person, (RotaPost Post, bool Lead) spot) => spot.Post.Takes(person) && (!spot.Lead || spot.Post.IsLedBy(person));

    private static Sequence<RotaPost> Possible(Sequence<CrewMember> members, RotaShift shift, List<RotaClash> clashes)
    {
        var posts = shift.Posts;
        int[] there = [.. Enumerable.Range(0, members.Count).Where(p => !members[p].Away.Contains(shift.Date))];
        while (true)
        {
            var spots = Spots(posts);
            var empty = Array.FindLastIndex(Man(members, there, spots, (_, _) => 0), p => p < 0);
            if (empty < 0)
            {
                return posts;
            }

            var (post, lead) = spots[empty];
            if (!lead && post.People > Math.Max(1, post.Leads) && post.Role != WorkList.Raise)
            {
                posts = posts.Select(p => p == post ? p with { People = p.People - 1 } : p).ToSequence();
                continue;
            }

            clashes.Add(new(shift.Date, post.Role, Why(members, there, shift.Date, post, lead)));
            // Nothing is carried and laid without a floor that mixes it, nor mixed where nobody may carry or lay it.
            var gone = RotaRoles.OfCob.Contains(post.Role) && post.Role != RotaRoles.Trimming ? RotaRoles.OfCob : [post.Role];
            posts = posts.Where(p => !gone.Contains(p.Role)).ToSequence();
        }
    }

    private static Message Why(Sequence<CrewMember> members, int[] there, DateOnly date, RotaPost post, bool lead)
    {
        string Names(IEnumerable<CrewMember> of) => string.Join(", ", of.Select(m => m.Name));
        var present = there.Select(p => members[p]).ToList();
        var fit = present.Where(post.Takes).ToList();
        var away = members.Where(m => m.Away.Contains(date)).ToList();
        Message None(string names) => names.Length == 0 ? new Message("analysis.rota.nobody") : Message.Of("analysis.rota.names", ("names", names));
        return lead
            ? Message.Of("analysis.rota.clash-lead", ("role", new Message($"analysis.role.{post.Role}")), ("n", post.Leads), ("skill", new Message($"analysis.skill.{post.LeadSkill!.Value.ToString().ToLowerInvariant()}")),
                ("leads", None(Names(fit.Where(post.IsLedBy)))), ("barred", None(Names(present.Except(fit)))), ("away", None(Names(away))))
            : Message.Of("analysis.rota.clash-people", ("role", new Message($"analysis.role.{post.Role}")), ("n", post.People), ("fit", fit.Count), ("there", present.Count),
                ("barred", None(Names(present.Except(fit)))), ("away", None(Names(away))));
    }
}
