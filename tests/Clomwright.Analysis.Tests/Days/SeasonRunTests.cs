using Clomwright.Analysis.Days;
using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Weather.Seasons;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;
using CsCheck;

namespace Clomwright.Analysis.Tests.Days;

/// <summary>One season day by day.</summary>
public sealed class SeasonRunTests
{
    private static readonly SeasonDay Fair = new(0, 20, 10, 18, 8, 2);
    private static readonly SeasonDraw Certain = new(1, _ => 1, _ => 1, 30);

    /// <summary>Cob that is firm and strong so many days after it was laid.</summary>
    private sealed class Waiting(int firmAfter, int strongAfter) : IDryingSector
    {
        private int days;

        public int Lifts { get; private set; }

        public double? FirmAfter => days >= firmAfter ? firmAfter : null;

        public bool IsFirm => FirmAfter is not null;

        public bool CarriesRoof => days >= strongAfter;

        public void Lay()
        {
            Assert.True(Lifts == 0 || IsFirm, "A lift on cob that cannot take it.");
            (Lifts, days) = (Lifts + 1, 0);
        }

        public void Advance(in BayDay day) => days++;
    }

    private static SeasonPlan Small(int people = 4, double hours = 6, int week = 5) => Plan(
        new Crew(people, Skill.Skilled, new DateOnly(2027, 6, 7), week, hours) { Begins = WorkBegins.Trench },
        new JobAmounts
        {
            Cob = [[3.6], [2.4]], SetIn = [[4.0], [0.0]], Heights = [0.5, 1.5], PeopleForPole = 2, Coats = 24,
            Rest = [new("trench", 9.6), new("rubble", 6), new("stem", 2), new("beam", 3), new("poles", 2), new("deck", 12), new("membrane", 12), new("soil", 1), new("floor", 6)],
        });

    private static SeasonPlan Plan(Crew crew, JobAmounts amounts)
    {
        var numbers = WorkNumbers.Of([new AssumedNumber("work-cob-skilled", 0.7)]);
        return new()
        {
            Crew = crew, Amounts = amounts, Tasks = WorkList.Of(amounts, numbers, crew.Begins), CobAnHour = 0.1, LearningStart = 1, LearningDays = 2,
            Shoulder = 1.4, AboveShare = 0.75, RainStops = 2, ColdStops = 4,
        };
    }

    private static SeasonOutcome Run(SeasonPlan plan, Func<int, SeasonDay> weather, List<WorkDone>? journal = null, SeasonDraw? draw = null, int firm = 2, int strong = 5)
    {
        var day = 0;
        return new SeasonRun(plan, draw ?? Certain, [.. plan.Amounts.Cob[0].Select(_ => new Waiting(firm, strong))], journal is null ? null : journal.Add).Run(400, () => weather(day++), (_, _) => default);
    }

    private static int Done(SeasonPlan plan, SeasonOutcome outcome, string key) => outcome.TaskDone[plan.Tasks.ToList().FindIndex(t => t.Key == key)];

    /// <summary>
    /// Analytic, worked by hand: four people, six hours, Monday to Friday, from Monday 7 June (day 0): 24 hours a day. No rain, nothing uncertain; cob firm after two days and fit for the roof after five.
    /// </summary>
    [Fact]
    public void A_small_house_is_built_as_worked_by_hand()
    {
        var plan = Small();
        var outcome = Run(plan, _ => Fair);
        // Trench: 9.6 m3 x 2.5 h = 24 h: all of day 0.
        Assert.Equal(0, Done(plan, outcome, "trench"));
        // Rubble: 6 m3 x 2 h = 12 h, the next day; the other 12 h peel two poles, 8 h.
        Assert.Equal(1, Done(plan, outcome, "rubble"));
        Assert.Equal(1, Done(plan, outcome, "poles"));
        // Stem: 2 m3 x 12 h = 24 h: day 2. Its mortar sets on days 3, 4, 5; day 6 is a Sunday.
        Assert.Equal(2, Done(plan, outcome, "stem"));
        // Lift 1: 3.6 m3 at 0.1 m3/h is 36 h, and 4 h of a frame: 24 h on day 7, 16 h on day 8.
        Assert.Equal(8, outcome.LiftDone[0]);
        // Firm on the second day after, day 10. Lift 2 above the shoulder: 2.4/(0.1 x 0.75) = 32 h: 24 on day 10, 8 on day 11. Day 9 was waited.
        Assert.Equal(11, outcome.LiftDone[1]);
        Assert.Equal([0, 1], outcome.LiftWaited);
        Assert.Equal([2, 2], outcome.LiftWorked);
        // Beam: top firm on day 13, a Sunday; 3 m x 2.5 h = 7.5 h on day 14.
        Assert.Equal(14, Done(plan, outcome, "beam"));
        // Poles: the wall is strong five days after day 11; 2 x 5 h = 10 h on day 16. Deck: 12 m2 x 1 h on day 17. Skin: 12 m2 x 20 min on day 18, a Friday.
        Assert.Equal(16, Done(plan, outcome, "raise"));
        Assert.Equal(17, Done(plan, outcome, "deck"));
        Assert.Equal(18, Done(plan, outcome, "membrane"));
        // Leak test over days 19 and 20; soil 4 h and floor 6 m2 x 2 h = 12 h on Monday, day 21.
        Assert.Equal(21, Done(plan, outcome, "soil"));
        Assert.Equal(21, Done(plan, outcome, "floor"));
        // Plaster: dry 30 days after day 11, day 41, a Sunday; 24 m2 x 40 min = 16 h on day 42.
        Assert.Equal(42, Done(plan, outcome, "plaster"));
    }

    /// <summary>Analytic: the house worked by hand with a day planned for the roof, Wednesday 30 June (day 23), and one for plaster, Monday 2 August (day 56): neither begins before, and deck and skin follow as they did. A day that comes before the wall is ready is not kept.</summary>
    [Fact]
    public void A_day_planned_for_roof_and_plaster_is_kept()
    {
        var plan = Small() with { PlasterOn = new DateOnly(2027, 8, 2) };
        plan = plan with { Crew = plan.Crew with { RoofOn = new DateOnly(2027, 6, 30) } };
        var outcome = Run(plan, _ => Fair);
        Assert.Equal([14, 23, 24, 25, 56], new[] { "beam", "raise", "deck", "membrane", "plaster" }.Select(key => Done(plan, outcome, key)));
        Assert.Equal(16, Done(plan, Run(plan with { Crew = plan.Crew with { RoofOn = new DateOnly(2027, 6, 10) } }, _ => Fair), "raise"));
    }

    /// <summary>
    /// Analytic: the first days of the house worked by hand, written down as they were to happen, change nothing of what follows; 24 of 40 hours of the first lift on day 7, 4 of them for the frame: 2.0 of 3.6 m3.
    /// </summary>
    [Fact]
    public void A_log_of_what_was_planned_changes_nothing()
    {
        LoggedDay Day(int day, double from, double to, params string[] done) => new(day, from, to, 4, 6, false, StoppedBy.Evening, [.. done]);
        var plan = Small() with
        {
            Log = new JobLog { Days = [Day(0, 0, 0, "trench"), Day(1, 0, 0, "rubble", "poles"), Day(2, 0, 0, "stem"), Day(7, 0, 2.0 / 3.6), Day(8, 2.0 / 3.6, 1)], Today = 9 },
        };
        var (planned, logged) = (Run(Small(), _ => Fair), Run(plan, _ => Fair));
        Assert.Equal(planned.TaskDone, logged.TaskDone);
        Assert.Equal(planned.LiftDone, logged.LiftDone);
        Assert.Equal(planned.LiftWorked, logged.LiftWorked);
    }

    /// <summary>Analytic: what nobody wrote is implied: cob on day 3 says that stem, rubble and trench were done; poles raised say that the wall, the beam and the peeled poles were. From then on deck and skin as worked by hand.</summary>
    [Fact]
    public void What_was_not_written_is_implied()
    {
        var plan = Small() with { Log = new JobLog { Days = [new(3, 0, 0.5, 4, 6, false, StoppedBy.Wall, []), new(16, 0.5, 0.5, 4, 6, false, StoppedBy.Evening, ["raise"])], Today = 17 } };
        // Whoever built it laid on cob that this sector would have refused: firm at once.
        var outcome = Run(plan, _ => Fair, firm: 0);
        Assert.Equal([2, 2, 2], new[] { "trench", "rubble", "stem" }.Select(key => Done(plan, outcome, key)));
        Assert.Equal([16, 16, 16], new[] { "beam", "poles", "raise" }.Select(key => Done(plan, outcome, key)));
        Assert.Equal([16, 16], outcome.LiftDone);
        Assert.Equal((17, 18), (Done(plan, outcome, "deck"), Done(plan, outcome, "membrane")));
    }

    /// <summary>Analytic: inches of ring become lifts, across a lift's end, back to it where a lift is named, and no further than the wall; the two numbers of a day are apart from its state.</summary>
    [Fact]
    public void Inches_of_ring_become_lifts()
    {
        var amounts = Small().Amounts with { Rises = [0.3, 0.6] };
        var crew = Small().Crew;
        SiteRecord With(params Seen.Day[] days) => days.Aggregate(SiteRecord.Empty, (r, d) => r.With(new SiteEntry($"day-{d.Date.DayNumber}", default(DateTimeOffset).AddYears(2030), "x", d)).Record!);
        Seen.Day Day(int day, int millimetres, int? lift = null) => new(crew.Start.AddDays(day)) { Raised = Length.FromMillimetres(millimetres), Lift = lift };
        var log = JobLog.Of(With(Day(7, 150), Day(8, 300), Day(9, 60, 2), Day(10, 1800)), crew, amounts, crew.Start)!;
        // 150 of 300; 150 more and 150 of 600; 60 more; then the wall's top.
        Assert.Equal([0.5, 1.25, 1.35, 2], log.Days.Select(d => Math.Round(d.To, 9)));
        Assert.Equal(11, log.Today);
        var named = JobLog.Of(With(Day(7, 60, 2)), crew, amounts, crew.Start.AddDays(20))!;
        Assert.Equal((1.0, 20), (named.Days[0].To, named.Today));
        Assert.Equal(0.8, named.Days[0].From, 9);
        Assert.Null(JobLog.Of(SiteRecord.Empty, crew, amounts, crew.Start));
        Assert.Equal(crew.Start.AddDays(-3), JobLog.StartOf(With(Day(-3, 60)), crew));
    }

    /// <summary>Analytic: rain on day 7 moves the cob by a day and is counted; under tarps on frames it does not. Cold moves it too, tarps or not.</summary>
    [Fact]
    public void Rain_and_cold_move_the_cob()
    {
        var plan = Small();
        var wet = Run(plan, day => day == 7 ? Fair with { Rain = 5 } : Fair);
        Assert.Equal((9, 1), (wet.LiftDone[0], wet.WeatherDays));
        var covered = Run(plan with { Tarps = true }, day => day == 7 ? Fair with { Rain = 5 } : Fair);
        Assert.Equal((8, 0), (covered.LiftDone[0], covered.WeatherDays));
        var cold = Run(plan with { Tarps = true }, day => day == 7 ? Fair with { High = 4, Low = -2 } : Fair);
        Assert.Equal((9, 1), (cold.LiftDone[0], cold.WeatherDays));
    }

    /// <summary>Analytic: a night of frost within a week of fresh cob is seen, one later is not.</summary>
    [Theory]
    [InlineData(12, 12)]
    [InlineData(18, 18)]
    [InlineData(19, -1)]
    public void Frost_is_seen_on_young_cob(int day, int expected) =>
        Assert.Equal(expected, Run(Small(), d => d == day ? Fair with { Low = -1 } : Fair).FrostDay);

    /// <summary>
    /// Property over random jobs, crews, weather and draws: nothing before what must come before it, no lift on cob that cannot take it (the sector itself refuses), nothing on a day off, never more
    /// hours than the crew has, nothing dry in the rain; and a job that is done took the hours that it asked for.
    /// </summary>
    [Fact]
    public void Nothing_is_done_that_cannot_be()
    {
        var amounts = Gen.Select(Gen.Double[0, 30], Gen.Double[0, 6].Array[2, 4].Array[1, 6], Gen.Double[0, 3], Gen.Int[2, 6]).Select((rest, cob, set, people) =>
        {
            var sectors = cob[0].Length;
            var lifts = cob.Select(l => Enumerable.Range(0, sectors).Select(i => l[i % l.Length]).ToSequence()).ToSequence();
            return new JobAmounts
            {
                Cob = lifts, SetIn = lifts.Select(l => l.Select(c => c * set).ToSequence()).ToSequence(), Heights = lifts.Select((_, i) => 0.4 * i).ToSequence(), PeopleForPole = people, Coats = rest,
                Rest = new[] { "trench", "rubble", "stem", "beam", "poles", "deck", "membrane", "soil", "floor" }.Select((key, i) => new JobAmount(key, (i * 7 + (int)rest) % 4 == 0 ? 0 : rest)).ToSequence(),
            };
        });
        var crews = Gen.Select(Gen.Int[1, 20], Gen.Int[1, 7], Gen.Double[1, 10], Gen.Int[0, 2]).Select((people, week, hours, begins) =>
            new Crew(people, Skill.Skilled, new DateOnly(2027, 4, 1), week, hours) { Begins = (WorkBegins)begins });
        Gen.Select(amounts, crews, Gen.UInt, Gen.Int[1, 9]).ForAll((job, crew, seed, firm) =>
        {
            var plan = Plan(crew, job);
            SeasonDay Weather(int day) => (seed * 2654435761u + (uint)day * 40503u >> 7) % 10 is var n && n < 3 ? Fair with { Rain = 4 } : n == 3 ? Fair with { High = 5, Low = -3 } : Fair;
            var draw = new SeasonDraw(0.5 + seed % 100 / 60.0, i => 0.6 + (seed >> i) % 8 / 8.0, d => 0.7 + (seed ^ (uint)d) % 7 / 10.0, 20);
            var journal = new List<WorkDone>();
            var outcome = Run(plan, Weather, journal, draw, firm, firm + 3);
            foreach (var day in journal.GroupBy(w => w.Day))
            {
                Assert.True(plan.IsWorkDay(crew.Start.AddDays(day.Key)), "Work on a day off.");
                Assert.True(day.Sum(w => w.Hours) <= crew.People * crew.HoursPerDay + 1e-6, "More hours than there are.");
                Assert.True(Weather(day.Key).Rain <= plan.RainStops || day.All(w => w.Task is not ("cob" or "trench" or "deck" or "raise" or "membrane" or "beam")), "Dry work in the rain.");
            }

            foreach (var work in journal.Where(w => w.Task != "cob"))
            {
                var task = plan.Tasks.First(t => t.Key == work.Task);
                Assert.All(task.After, before => Assert.InRange(Done(plan, outcome, before), 0, work.Day));
                Assert.True(work.Hours <= task.People * crew.HoursPerDay + 1e-9);
            }

            Assert.All(journal.Where(w => w.Task == "cob"), w => Assert.InRange(Done(plan, outcome, "stem"), 0, w.Day));
            for (var i = 0; i < plan.Tasks.Count; i++)
            {
                if (outcome.TaskDone[i] >= 0)
                {
                    Assert.Equal(plan.Tasks[i].Hours * draw.Tasks(i), journal.Where(w => w.Task == plan.Tasks[i].Key).Sum(w => w.Hours), 1e-6);
                }
            }
        }, iter: Clomwright.Testing.Counts.Of(300, 20_000));
    }
}
