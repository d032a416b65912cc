using Clomwright.Analysis.Days;
using Clomwright.Building;
using Clomwright.Evidence;
using Google.OrTools.Sat;

namespace Clomwright.Rota;

/// <summary>Who does what today: a search over all half days at once, so that every learner meets every skill that they can. One worker, a fixed seed and a bound counted in steps, not in seconds: the same question has the same answer.</summary>
public static class FromDays
{
    private const int Met = 1000, Wished = 300, Pair = 8, Uneven = 6, AllDay = 3;
    // Every limit goes into the linear programme: with it the search ends with the best rota known to be the best, several times sooner.
    private const string Steps = "num_workers:1 random_seed:1 max_deterministic_time:1 linearization_level:2 symmetry_level:0 cp_model_probing_level:0 log_search_progress:false";

    /// <summary>Who does what; the plain plan where the solver's native part is not on this machine.</summary>
    /// <param name="asked">Shifts that can be manned, as <see cref="Manning"/> leaves them.</param>
    public static RotaResult Of(RotaQuestion asked)
    {
        ArgumentNullException.ThrowIfNull(asked);
        var plain = PlainRota.Of(asked);
        if (asked.Members.Count == 0 || asked.Shifts.Count == 0)
        {
            return plain;
        }

        try
        {
            return Search(asked, plain);
        }
        catch (Exception missing) when (missing is DllNotFoundException or TypeInitializationException or BadImageFormatException or EntryPointNotFoundException)
        {
            return plain;
        }
    }

    private static RotaResult Search(RotaQuestion asked, RotaResult plain)
    {
        var model = new CpModel();
        var at = new Dictionary<(int Shift, int Person, string Role), BoolVar>();
        var pairs = new List<BoolVar>();
        for (var n = 0; n < asked.Shifts.Count; n++)
        {
            Man(asked, n, model, at, pairs);
        }

        var (goal, weights) = (new List<ILiteral>(), new List<int>());
        foreach (var aim in asked.Aims())
        {
            var met = model.NewBoolVar("");
            var chances = at.Where(x => x.Key.Person == aim.Person && PostOf(asked, x.Key).Skills.Contains(aim.Skill)).Select(x => x.Value).ToList();
            model.Add(LinearExpr.Sum(chances) >= met);
            goal.Add(met);
            weights.Add(asked.Members[aim.Person].Wishes.Contains(aim.Skill) ? Met + Wished : Met);
        }

        goal.AddRange(pairs);
        weights.AddRange(pairs.Select(_ => Pair));
        var cost = Evenness(asked, model, at);
        model.Maximize(LinearExpr.WeightedSum(goal, weights) - LinearExpr.Sum(cost));
        var placed = plain.Places.Select(p => (p.Shift, p.Person, p.Role)).ToHashSet();
        foreach (var (key, x) in at)
        {
            model.AddHint(x, placed.Contains(key));
        }

        var solver = new CpSolver { StringParameters = Steps };
        var status = solver.Solve(model);
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? new(asked, Led(asked, at.Where(x => solver.BooleanValue(x.Value)).Select(x => x.Key)), true, status == CpSolverStatus.Optimal) : plain;
    }

    /// <summary>The hard limits of one half day: who is there, may stand at a post and is at one at most; as many as it asks; its leads among them.</summary>
    private static void Man(RotaQuestion asked, int n, CpModel model, Dictionary<(int Shift, int Person, string Role), BoolVar> at, List<BoolVar> pairs)
    {
        var shift = asked.Shifts[n];
        int[] there = [.. asked.There(shift.Date)];
        foreach (var post in shift.Posts)
        {
            foreach (var p in there.Where(p => post.Takes(asked.Members[p])))
            {
                at[(n, p, post.Role)] = model.NewBoolVar("");
            }

            var here = there.Where(p => at.ContainsKey((n, p, post.Role))).ToList();
            List<BoolVar> Of(IEnumerable<int> people) => [.. people.Select(p => at[(n, p, post.Role)])];
            model.Add(LinearExpr.Sum(Of(here)) == post.People);
            if (post.Leads > 0)
            {
                model.Add(LinearExpr.Sum(Of(here.Where(p => post.IsLedBy(asked.Members[p])))) >= post.Leads);
            }

            foreach (var skill in post.Skills)
            {
                var (know, learn) = (here.Where(p => asked.Members[p].Knows.Contains(skill)).ToList(), here.Where(p => !asked.Members[p].Knows.Contains(skill)).ToList());
                if (post.People > 1 && know.Count > 0 && learn.Count > 0)
                {
                    var pair = model.NewBoolVar("");
                    model.Add(LinearExpr.Sum(Of(know)) >= pair);
                    model.Add(LinearExpr.Sum(Of(learn)) >= pair);
                    pairs.Add(pair);
                }
            }
        }

        foreach (var p in there)
        {
            var own = shift.Posts.Where(post => at.ContainsKey((n, p, post.Role))).Select(post => at[(n, p, post.Role)]).ToList();
            if (own.Count > 1)
            {
                model.AddAtMostOne(own);
            }
        }
    }

    /// <summary>What rotation costs: how often anybody is at the role they are most at, and whole days at one role.</summary>
    private static List<LinearExpr> Evenness(RotaQuestion asked, CpModel model, Dictionary<(int Shift, int Person, string Role), BoolVar> at)
    {
        var cost = new List<LinearExpr>();
        foreach (var person in at.GroupBy(x => x.Key.Person))
        {
            var most = model.NewIntVar(0, asked.Shifts.Count, "");
            foreach (var role in person.GroupBy(x => x.Key.Role))
            {
                model.Add(most >= LinearExpr.Sum(role.Select(x => x.Value)));
            }

            cost.Add(Uneven * most);
        }

        foreach (var (key, x) in at.Where(x => asked.Shifts[x.Key.Shift].Half == 1 && x.Key.Shift > 0 && asked.Shifts[x.Key.Shift - 1].Date == asked.Shifts[x.Key.Shift].Date))
        {
            if (at.TryGetValue((key.Shift - 1, key.Person, key.Role), out var before))
            {
                var both = model.NewBoolVar("");
                model.Add(x + before <= 1 + both);
                cost.Add(AllDay * both);
            }
        }

        return cost;
    }

    /// <summary>The first who know how lead, as many as a post asks.</summary>
    private static Sequence<RotaPlace> Led(RotaQuestion asked, IEnumerable<(int Shift, int Person, string Role)> chosen) => chosen
        .GroupBy(c => (c.Shift, c.Role)).SelectMany(post =>
        {
            var asks = PostOf(asked, post.First());
            var leads = post.Where(c => asks.IsLedBy(asked.Members[c.Person])).Select(c => c.Person).Order().Take(asks.Leads).ToHashSet();
            return post.Select(c => new RotaPlace(c.Shift, c.Person, c.Role, leads.Contains(c.Person)));
        }).OrderBy(p => p.Shift).ThenBy(p => p.Role, StringComparer.Ordinal).ThenBy(p => p.Person).ToSequence();

    private static RotaPost PostOf(RotaQuestion asked, (int Shift, int Person, string Role) key) => asked.Shifts[key.Shift].Posts.First(post => post.Role == key.Role);
}
