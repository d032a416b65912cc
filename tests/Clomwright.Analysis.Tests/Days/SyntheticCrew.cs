using Clomwright.Analysis.Days;
using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Weather;
using Clomwright.Analysis.Weather.Seasons;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Numerics;

namespace Clomwright.Analysis.Tests.Days;

/// <summary>Firm once the weather of some days has dried it, for the tests of the forecast: warm dry days count most. A small part of what the small model costs.</summary>
/// <param name="rate">How many times as fast as this it dries, by the lift.</param>
internal sealed class WarmDays(Func<int, double> rate) : IDryingSector
{
    private const double Firm = 1, Strong = 5;
    private double dried;
    private int days, lifts;

    public double? FirmAfter { get; private set; }

    public bool CarriesRoof => dried >= Strong;

    public void Lay() => (dried, days, lifts, FirmAfter) = (0, 0, lifts + 1, null);

    public void Advance(in BayDay day)
    {
        var today = rate(lifts - 1) * 0.4 * Math.Clamp((day.Temperature - 2) / 16, 0.1, 1.5) * (day.Wet ? 0.35 : 1);
        if (FirmAfter is null && dried + today >= Firm)
        {
            FirmAfter = days + (Firm - dried) / today;
        }

        (dried, days) = (dried + today, days + 1);
    }
}

/// <summary>
/// Crews as they might really be, drawn from a wider family than the forecast assumes: nine in ten with paces as far apart as it thinks, one in ten twice as far; days that lie apart by 0.1 to 0.35 (it
/// thinks 0.2) and hang together from one to the next by 0 to 0.4 (it thinks not at all); paces that wander by 0 to 0.04 from day to day
/// (0.02); learning in 1 to 4 days from 0.55 to 0.95 (it knows 2 and 0.75); 0.55 to 0.95 of the pace above the shoulder (0.75, spread by 0.15);
/// walls that dry by a deviation of 0.3 apart (0.25), and single quarters of a lift by 0.2 from their wall (0.15); tasks by 0.35 each (0.3), with nothing in common (it thinks 0.2). They write every day how far the ring rose to a quarter of an inch, and whether
/// the wall or the evening stopped them; no weather.
/// </summary>
internal sealed class SyntheticCrew
{
    private static readonly Crew Four = new(4, Skill.Mixed, new DateOnly(2027, 5, 17), 5, 7) { Begins = WorkBegins.Stem };

    private static readonly WeatherResult Weather = FromSite.Of(new Site { Climate = "portland-or" }).Value!;

    /// <summary>Eight lifts of a foot; less cob where the windows are.</summary>
    private static readonly JobAmounts Amounts = new()
    {
        Cob = [.. Enumerable.Range(0, 8).Select(l => Enumerable.Range(0, 4).Select(s => (l is >= 3 and <= 6 && s % 2 == 0 ? 0.75 : 1) * 0.7).ToSequence())],
        SetIn = [.. Enumerable.Range(0, 8).Select(l => Enumerable.Range(0, 4).Select(s => l is 3 or 7 ? 3.0 : 1.0).ToSequence())],
        Heights = [.. Enumerable.Range(0, 8).Select(l => 0.35 + 0.3048 * l)], Rises = [.. Enumerable.Repeat(0.3048, 8)],
        Rest = [new("stem", 4), new("beam", 12), new("poles", 8), new("deck", 30), new("membrane", 36), new("soil", 3), new("floor", 14)], PeopleForPole = 4,
    };

    /// <summary>Four people on this wall wait for it as often as not; two seldom do.</summary>
    public static DaysQuestion Question(int people) => new()
    {
        Crew = Four with { People = people }, Amounts = Amounts, Numbers = WorkNumbers.Of([]), Weather = Weather, Latitude = 45.5, Elevation = 60, Sectors = [], Plaster = new Band(1, 2),
        Stand = rate => [.. Enumerable.Range(0, 4).Select(quarter => new WarmDays(lift => rate(quarter, lift)))], Threads = 1,
    };

    private readonly List<WorkDone> journal = [];
    private readonly SeasonPlan plan;
    private readonly SeasonOutcome outcome;
    private readonly SeasonWeather weather;
    private readonly int number;
    private readonly DaysQuestion asked;

    public SyntheticCrew(DaysQuestion asked, int number, ulong seed)
    {
        (this.asked, this.number) = (asked, number);
        var draws = new Philox(seed);
        double Uniform(ulong place, double from, double to) => from + (to - from) * draws.Uniform((ulong)number, place);
        double Normal(ulong place) => draws.Normal((ulong)number, 100 + place);
        var planned = FromDrying.PlanOf(asked);
        plan = planned with { LearningStart = Uniform(0, 0.55, 0.95), LearningDays = Uniform(1, 1, 4), AboveShare = Uniform(2, 0.55, 0.95) };
        var pace = Math.Exp((Uniform(3, 0, 1) < 0.1 ? 0.6 : 0.3) * Normal(0));
        var (days, kept) = (Uniform(4, 0.1, 0.35), Uniform(5, 0, 0.4));
        var (last, upTo, wander, at) = (Normal(10_000), 0, Uniform(6, 0, 0.04), 0.0);
        double OfDay(int day)
        {
            for (; upTo < day; upTo++)
            {
                at += wander * Normal(20_000 + (ulong)upTo);
                last = kept * last + Math.Sqrt(1 - kept * kept) * Normal(10_001 + (ulong)upTo);
            }

            return Math.Exp(at + days * last);
        }

        var tasks = Enumerable.Range(0, plan.Tasks.Count).Select(i => Math.Exp(0.35 * Normal(10 + (ulong)i))).ToArray();
        var rate = Math.Exp(0.3 * Normal(1));
        weather = new SeasonWeather(DailyTable.Of(Weather.Climate), asked.Latitude * Math.PI / 180, new Philox(seed + 1));
        outcome = new SeasonRun(plan, new SeasonDraw(pace, i => tasks[i], OfDay, 1), [.. Enumerable.Range(0, 4).Select(s => new WarmDays(lift => rate * Math.Exp(0.2 * Normal(5000 + (ulong)(10 * lift + s)))))], journal.Add)
            .Run(FromDrying.Looked, weather.From(number, asked.Crew.Start), (d, day) => DayWeather.Of(asked.Crew.Start.AddDays(d), day, weather.Latitude, asked.Elevation));
    }

    /// <summary>Day on which the last lift was laid; on which all was done.</summary>
    public int Top => outcome.LiftDone[^1];

    public int Finish => FromDrying.Finishes(asked, plan, [outcome]).Single();

    /// <summary>The first day on whose evening a share of the cob is laid.</summary>
    public int DayOf(double share)
    {
        var (laid, all) = (0.0, Amounts.Cob.Sum(l => l.Sum()));
        return journal.Where(w => w.Task == "cob").First(w => (laid += w.Cob) >= share * all - 1e-9).Day;
    }

    /// <summary>What they wrote up to a day.</summary>
    public SiteRecord Log(int until)
    {
        var (record, laid, height) = (SiteRecord.Empty, 0.0, 0.0);
        var next = weather.From(number, asked.Crew.Start);
        for (var day = 0; day <= until; day++)
        {
            var rain = next().Rain;
            if (!plan.IsWorkDay(asked.Crew.Start.AddDays(day)))
            {
                continue;
            }

            var work = journal.Where(w => w.Day == day).ToList();
            laid += work.Sum(w => w.Cob);
            var rise = HeightOf(laid) - height;
            height += rise;
            var wallIsOpen = outcome.TaskDone[plan.Tasks.ToList().FindIndex(t => t.Key == WorkList.Stem)] is >= 0 and var stem && day > stem + 3 && !(Top <= day);
            var idle = work.Where(w => w.Task == "cob" || !plan.Tasks.First(t => t.Key == w.Task).IsAside).Sum(w => w.Hours) < asked.Crew.People * asked.Crew.HoursPerDay - 1e-6;
            var seen = new Seen.Day(asked.Crew.Start.AddDays(day))
            {
                Raised = Length.Nearest(Math.Round(rise / 0.00635) * 0.00635), People = asked.Crew.People,
                Stopped = rain > plan.RainStops ? StoppedBy.Rain : wallIsOpen && idle ? StoppedBy.Wall : StoppedBy.Evening,
                Done = Enumerable.Range(0, plan.Tasks.Count).Where(i => plan.Tasks[i].Hours > 0 && outcome.TaskDone[i] == day).Select(i => plan.Tasks[i].Key).ToSequence(),
            };
            var (with, problem) = record.With(new SiteEntry($"day-{day}", new DateTimeOffset(seen.Date.ToDateTime(new TimeOnly(19, 0)), TimeSpan.Zero), "one of them", seen));
            Assert.True(with is not null, problem?.Key);
            record = with;
        }

        return record;
    }

    private static double HeightOf(double laid)
    {
        var height = 0.0;
        for (var l = 0; l < Amounts.Cob.Count && laid > 0; l++)
        {
            var all = Amounts.Cob[l].Sum();
            height += Amounts.Rises[l] * Math.Min(1, laid / all);
            laid -= all;
        }

        return height;
    }
}
