using Clomwright.Analysis.Days;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;
using CsCheck;

namespace Clomwright.Rota.Tests;

/// <summary>Who does what: hard limits over random crews, what learners meet against a count made another way, and the same answer twice.</summary>
public sealed class FromDaysTests
{
    private static readonly DateOnly Monday = new(2027, 6, 7);
    private static readonly RotaNumbers Numbers = RotaNumbers.Of([]);

    private static Gen<CrewMember> Member { get; } =
        from knows in Gen.Enum<CrewSkill>().Array[0, 4]
        from wishes in Gen.Enum<CrewSkill>().Array[0, 2]
        from cannot in Gen.Frequency((4, Gen.Const(Array.Empty<CannotDo>())), (1, Gen.Enum<CannotDo>().Array[1, 2]))
        from away in Gen.Frequency((4, Gen.Const(Array.Empty<int>())), (1, Gen.Int[0, 6].Array[1, 2]))
        select new CrewMember("-") { Knows = [.. knows.Distinct()], Wishes = [.. wishes.Distinct()], Cannot = [.. cannot.Distinct()], Away = [.. away.Distinct().Select(d => Monday.AddDays(d))] };

    private static readonly string[] Tasks = [PlannedWork.Cob, "trench", "rubble", WorkList.Stem, WorkList.Beam, WorkList.Raise, "deck", "membrane", "soil", "floor", "plaster", "poles"];

    private static Gen<RotaQuestion> Questions(int mostPeople, int mostDays) =>
        from members in Member.Array[1, mostPeople]
        from days in Gen.Select(Gen.Select(Gen.OneOf(Tasks), Gen.Int[1, 10]).Array[0, 3], Gen.Bool, Gen.Int[1, 6]).Array[1, mostDays]
        select Asked([.. members.Select((m, i) => m with { Name = $"P{i}" })], days.Select((d, i) => (Works: d.Item1.DistinctBy(w => w.Item1).ToArray(), High: d.Item2, Pole: d.Item3)));

    private static RotaQuestion Asked(Sequence<CrewMember> members, IEnumerable<((string, int)[] Works, bool High, int Pole)> days) => Manning.Of(members, days.SelectMany((d, i) =>
    {
        var date = Monday.AddDays(i);
        var there = members.Count(m => !m.Away.Contains(date));
        var day = new PlannedDay(date, members.Count, 7, d.Works.Select(w => new PlannedWork(w.Item1, w.Item2 * 0.7 * members.Count)).ToSequence());
        var posts = RotaRoles.Of(day, there, d.Pole, d.High, Numbers);
        return new[] { new RotaShift(date, 0, posts), new RotaShift(date, 1, posts) };
    }));

    private static void Holds(RotaResult rota)
    {
        var asked = rota.Asked;
        for (var n = 0; n < asked.Shifts.Count; n++)
        {
            var (shift, places) = (asked.Shifts[n], rota.Places.Where(p => p.Shift == n).ToList());
            // Nobody twice, nobody who is away; never more than are there.
            Assert.Equal(places.Count, places.Select(p => p.Person).Distinct().Count());
            Assert.All(places, p => Assert.DoesNotContain(shift.Date, asked.Members[p.Person].Away));
            Assert.Equal(places.Count, shift.Posts.Sum(p => p.People));
            foreach (var post in shift.Posts)
            {
                var here = places.Where(p => p.Role == post.Role).ToList();
                Assert.Equal(post.People, here.Count);
                Assert.All(here, p => Assert.False(post.Lifts && asked.Members[p.Person].Cannot.Contains(CannotDo.Lift)));
                Assert.All(here, p => Assert.False(post.Climbs && asked.Members[p.Person].Cannot.Contains(CannotDo.Climb)));
                Assert.Equal(post.Leads, here.Count(p => p.IsLead));
                Assert.All(here.Where(p => p.IsLead), p => Assert.Contains(post.LeadSkill!.Value, asked.Members[p.Person].Knows));
            }
        }
    }

    /// <summary>Property over random crews and works: every hard limit, by the search and by the plain plan.</summary>
    [Fact]
    public void Hard_limits_hold() => Questions(9, 5).ForAll(asked =>
    {
        Holds(PlainRota.Of(asked));
        Holds(FromDays.Of(asked));
    }, iter: Counts.Of(40, 400), threads: 1);

    /// <summary>Property: a mixing floor of more than four has two leads, and raising takes as many as a pole asks or is not done.</summary>
    [Fact]
    public void Floors_have_leads_and_poles_have_people() => Questions(12, 3).ForAll(asked =>
    {
        Assert.All(asked.Shifts.SelectMany(s => s.Posts).Where(p => p.Role == RotaRoles.Mixing), p => Assert.Equal((p.People + 3) / 4, p.Leads));
        Assert.All(asked.Shifts.SelectMany(s => s.Posts).Where(p => p.Role == WorkList.Raise), p => Assert.True(p.Leads == 1 && p.LeadSkill == CrewSkill.Raising));
    }, iter: Counts.Of(100, 1000));

    /// <summary>
    /// Independent: the most learner-and-skill meetings that any rota can have, counted by going through every manning of every half day and keeping each set of meetings once. The search reaches it, and says that it is the best.
    /// </summary>
    [Fact]
    public void Each_learner_meets_each_skill_where_that_can_be() => Questions(4, 3).ForAll(asked =>
    {
        asked = asked with { Members = asked.Members.Select(m => m with { Wishes = [] }).ToSequence() };
        var rota = FromDays.Of(asked);
        Assert.True(rota.IsSearched || asked.Shifts.Count == 0);
        Assert.Equal(MostMet(asked), rota.Meetings().Count(m => m.Shift is not null));
        Assert.True(rota.IsBest);
    }, iter: Counts.Of(25, 250), threads: 1);

    private static int MostMet(RotaQuestion asked)
    {
        var aims = asked.Aims();
        var seen = new HashSet<long> { 0 };
        for (var n = 0; n < asked.Shifts.Count; n++)
        {
            var shift = asked.Shifts[n];
            int[] there = [.. asked.There(shift.Date)];
            var ways = new HashSet<long>();
            void Place(int i, string?[] roles)
            {
                if (i == there.Length)
                {
                    var fits = shift.Posts.All(post =>
                    {
                        var here = there.Where((_, k) => roles[k] == post.Role).Select(p => asked.Members[p]).ToList();
                        return here.Count == post.People && here.Count(m => post.LeadSkill is { } s && m.Knows.Contains(s)) >= post.Leads;
                    });
                    if (fits)
                    {
                        var met = 0L;
                        for (var a = 0; a < aims.Count; a++)
                        {
                            var k = Array.IndexOf(there, aims[a].Person);
                            if (k >= 0 && roles[k] is { } role && shift.Posts.First(p => p.Role == role).Skills.Contains(aims[a].Skill))
                            {
                                met |= 1L << a;
                            }
                        }

                        ways.Add(met);
                    }

                    return;
                }

                Place(i + 1, [.. roles, null]);
                foreach (var post in shift.Posts)
                {
                    var m = asked.Members[there[i]];
                    if (!(post.Lifts && m.Cannot.Contains(CannotDo.Lift)) && !(post.Climbs && m.Cannot.Contains(CannotDo.Climb)))
                    {
                        Place(i + 1, [.. roles, post.Role]);
                    }
                }
            }

            Place(0, []);
            Assert.NotEmpty(ways);
            seen = [.. seen.SelectMany(before => ways.Select(way => before | way))];
        }

        return seen.Max(met => System.Numerics.BitOperations.PopCount((ulong)met));
    }

    /// <summary>
    /// Analytic, by counting: ten learners and two who know all, twenty days of cob, one of raising with six at a pole, two of plaster. One leads at the pole in each half of its only day, so that five learners stand there in each: ten places for ten
    /// learners, and who is not there plants the roof. Every one of the sixty meetings can be, and is.
    /// </summary>
    [Fact]
    public void A_whole_course_meets_every_skill_with_no_place_to_spare()
    {
        Sequence<CrewMember> crew = [.. Enumerable.Range(0, 12).Select(i => new CrewMember($"P{i}") { Knows = i < 2 ? [.. Enum.GetValues<CrewSkill>()] : [] })];
        ((string, int)[], bool, int)[] cob = [.. Enumerable.Range(0, 20).Select(i => (new[] { (PlannedWork.Cob, 10) }, i > 12, 6))];
        var asked = Asked(crew, [.. cob, ([(WorkList.Raise, 5), ("soil", 5)], false, 6), ([("plaster", 10)], false, 6), ([("plaster", 10)], false, 6)]);
        Assert.Empty(asked.Clashes);
        var rota = FromDays.Of(asked);
        Holds(rota);
        Assert.Equal(60, rota.Meetings().Count(m => m.Shift is not null));
        Assert.Equal(60, rota.Meetings().Count);
    }

    /// <summary>Property: the same question has the same answer, place by place.</summary>
    [Fact]
    public void The_same_question_has_the_same_answer() => Questions(8, 5).ForAll(asked =>
        Assert.Equal(FromDays.Of(asked).Places, FromDays.Of(asked).Places), iter: Counts.Of(10, 60), threads: 1);

    /// <summary>Analytic: of twelve on two weeks of cob one can lead a floor of five: two floors would be asked, so nothing is mixed, and the reason names who leads and who is away.</summary>
    [Fact]
    public void What_clashes_is_said_with_its_names()
    {
        Sequence<CrewMember> crew =
        [
            new CrewMember("Asta") { Knows = [CrewSkill.Mixing] },
            new CrewMember("Brin") { Knows = [CrewSkill.Mixing], Away = [Monday] },
            .. Enumerable.Range(0, 10).Select(i => new CrewMember($"L{i}")),
        ];
        var asked = Asked(crew, [([(PlannedWork.Cob, 10)], false, 4), ([(PlannedWork.Cob, 10)], false, 4)]);
        var clash = Assert.Single(asked.Clashes);
        Assert.Equal((Monday, RotaRoles.Mixing), (clash.Date, clash.Role));
        var words = Phrasebook.English.Say(clash.Why, UnitSystem.Metric);
        Assert.Contains("Asta", words, StringComparison.Ordinal);
        Assert.Contains("Brin", words, StringComparison.Ordinal);
        Assert.Empty(asked.Shifts[0].Posts);
        Assert.NotEmpty(asked.Shifts[2].Posts);
    }

    /// <summary>Analytic: six for a pole and five who may lift: nobody raises it, and who may not is named.</summary>
    [Fact]
    public void Nobody_raises_a_pole_with_too_few()
    {
        Sequence<CrewMember> crew =
        [
            new CrewMember("Cass") { Cannot = [CannotDo.Lift] },
            .. Enumerable.Range(0, 5).Select(i => new CrewMember($"L{i}") { Knows = [CrewSkill.Raising] }),
        ];
        var asked = Asked(crew, [([(WorkList.Raise, 10)], false, 6)]);
        Assert.Contains("Cass", Phrasebook.English.Say(Assert.Single(asked.Clashes).Why, UnitSystem.Metric), StringComparison.Ordinal);
        Assert.All(asked.Shifts, s => Assert.Empty(s.Posts));
    }

    /// <summary>Analytic: two learners and one who knows, all on cob every day: in three half days of one placer each, the count argument gives every learner every part, and wishes come first.</summary>
    [Fact]
    public void Wishes_come_first()
    {
        Sequence<CrewMember> crew =
        [
            new CrewMember("Dag") { Knows = [.. Enum.GetValues<CrewSkill>()] },
            new CrewMember("Elin") { Wishes = [CrewSkill.Plastering] },
            new CrewMember("Finn"),
        ];
        // One plasters and two peel poles, one half day only of each: one of the learners can meet the plaster, and it is the one who wished it.
        var shift = new RotaShift(Monday, 0, [new RotaPost("plaster", 1, 0, null, [CrewSkill.Plastering], false, false), new RotaPost("poles", 2, 0, null, [CrewSkill.Carpentry], true, false)]);
        var rota = FromDays.Of(Manning.Of(crew, [shift]));
        Assert.Equal(1, Assert.Single(rota.Places, p => p.Role == "plaster").Person);
    }
}
