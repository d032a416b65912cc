using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Weather.Seasons;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Numerics;

namespace Clomwright.Analysis.Days;

/// <summary>When a house would be done.</summary>
public static class FromDrying
{
    /// <summary>Days looked at.</summary>
    public const int Looked = 900;

    private const double DayOfPace = 7;

    /// <summary>Many seasons, and what they have in common.</summary>
    /// <exception cref="OperationCanceledException">The one who waited gave up.</exception>
    public static DaysResult Of(DaysQuestion asked, Watch? watch = null)
    {
        ArgumentNullException.ThrowIfNull(asked);
        var (plan, believed, outcomes) = Drawn(asked, watch);
        return Told(asked, plan, believed, outcomes);
    }

    /// <summary>The seasons themselves.</summary>
    internal static (SeasonPlan Plan, Beliefs Believed, SeasonOutcome[] Outcomes) Drawn(DaysQuestion asked, Watch? watch = null)
    {
        var plan = PlanOf(asked);
        var weather = new SeasonWeather(DailyTable.Of(asked.Weather.Climate), asked.Latitude * Math.PI / 180, new Philox(asked.Seed));
        var known = asked.Log is { } log ? log.Weather.Concat(asked.Known).ToSequence() : asked.Known;
        var draws = new SeasonDraws(asked, Beliefs.After(plan, asked.Numbers, () => asked.Quarters((_, _) => 1), season => Around(asked, weather, known, season)));
        var outcomes = new SeasonOutcome[asked.Seasons];
        var done = 0;
        var options = new ParallelOptions { MaxDegreeOfParallelism = asked.Threads, CancellationToken = watch?.Cancelled ?? CancellationToken.None };
        Parallel.For(0, asked.Seasons, options, season =>
        {
            outcomes[season] = Season(asked, plan, draws, weather, known, season);
            var count = Interlocked.Increment(ref done);
            if (count % 20 == 0)
            {
                watch?.Tell?.Invoke((double)count / asked.Seasons);
            }
        });
        return (plan, draws.Believed, outcomes);
    }

    /// <summary>What every season has in common.</summary>
    internal static SeasonPlan PlanOf(DaysQuestion asked) => new()
    {
        Crew = asked.Crew,
        Amounts = asked.Amounts,
        Tasks = WorkList.Of(asked.Amounts, asked.Numbers, asked.Crew.Begins),
        CobAnHour = asked.Numbers["work-cob-" + asked.Crew.Skill switch { Skill.Beginner => "beginner", Skill.Skilled => "skilled", _ => "mixed" }] / DayOfPace,
        LearningStart = asked.Crew.Skill == Skill.Skilled ? 1 : asked.Crew.Skill == Skill.Mixed ? (1 + asked.Numbers["work-learning-start"]) / 2 : asked.Numbers["work-learning-start"],
        LearningDays = asked.Numbers["work-learning-days"],
        Shoulder = asked.Numbers["work-shoulder"],
        AboveShare = asked.Numbers["work-above-shoulder"],
        RainStops = 1000 * asked.Numbers["work-rain-stops"],
        ColdStops = asked.Numbers["work-cold-stops"],
        Tarps = asked.Tarps,
        Away = AwayOf(asked.Crew),
        PlasterOn = asked.PlasterOn,
        Log = asked.Log,
    };

    private static Sequence<int> AwayOf(Crew crew) => crew.Members.All(m => m.Away.Count == 0) ? []
        : Enumerable.Range(0, Looked).Select(d => crew.Members.Count(m => m.Away.Contains(crew.Start.AddDays(d)))).ToSequence();

    private static SeasonOutcome Season(DaysQuestion asked, SeasonPlan plan, SeasonDraws draws, SeasonWeather weather, Sequence<ForecastDay> known, int season)
    {
        var start = asked.Crew.Start;
        var (draw, rate) = draws.Of(season);
        return new SeasonRun(plan, draw, asked.Quarters(rate)).Run(
            Looked, weather.From(season, start, known), (d, day) => DayWeather.Of(start.AddDays(d), day, weather.Latitude, asked.Elevation));
    }

    /// <summary>What a wall feels of the days of a season, each asked for once and in order.</summary>
    private static Func<int, BayDay> Around(DaysQuestion asked, SeasonWeather weather, Sequence<ForecastDay> known, int season)
    {
        var next = weather.From(season, asked.Crew.Start, known);
        return day => DayWeather.Of(asked.Crew.Start.AddDays(day), next(), weather.Latitude, asked.Elevation);
    }

    private static DaysResult Told(DaysQuestion asked, SeasonPlan plan, Beliefs believed, SeasonOutcome[] outcomes)
    {
        var lifts = asked.Amounts.Cob.Count;
        var plastered = asked.Plaster is { Low: not null, High: not null };
        var marks = plan.Tasks.Select((task, i) => (task, i)).Where(t => t.task.Hours > 0 && !t.task.IsAside && (plastered || t.task.Waits != WaitsFor.DryWall))
            .Select(t => new Milestone(t.task.Key, Band(outcomes.Select(o => o.TaskDone[t.i]))));
        Milestone[] top = lifts > 0 ? [new(DaysResult.WallTop, Band(outcomes.Select(o => o.LiftDone[lifts - 1])))] : [];
        var before = plan.Tasks.Select(t => t.Key).TakeWhile(key => key != WorkList.Beam).ToHashSet(StringComparer.Ordinal);
        var ordered = marks.Where(m => before.Contains(m.Key)).Concat(top).Concat(marks.Where(m => !before.Contains(m.Key))).ToSequence();
        var finish = Band(Finishes(asked, plan, outcomes));
        return new()
        {
            Start = asked.Crew.Start,
            Seasons = asked.Seasons,
            Milestones = [.. ordered, new Milestone(DaysResult.Whole, finish)],
            Lifts = Enumerable.Range(0, lifts).Select(l => new LiftForecast(
                l, Band(outcomes.Select(o => o.LiftDone[l])), outcomes.Average(o => o.LiftWorked[l]), outcomes.Average(o => o.LiftWaited[l]),
                outcomes.Average(o => 2 * o.LiftWaited[l] > Math.Max(1, o.LiftWorked[l]) ? 1.0 : 0))).ToSequence(),
            Finish = finish,
            WeatherDays = outcomes.Average(o => o.WeatherDays),
            FrostRisk = outcomes.Average(o => o.FrostDay >= 0 ? 1.0 : 0),
            Tasks = plan.Tasks.Where(t => t.Hours > 0).ToSequence(),
            CobHours = asked.Amounts.Cob.Select((lift, l) => lift.Sum() / plan.Pace(int.MaxValue, asked.Amounts.Heights[l]) + asked.Amounts.SetIn[l].Sum()).Sum(),
            Assumptions = asked.Numbers.Assumptions,
            Learned = asked.Log is { } log ? LearnedFrom.Of(asked, log, believed) : null,
        };
    }

    /// <summary>Day on which each season's job is done, what waits for plaster left out where nobody knows when that may be; -1 where it is not.</summary>
    internal static IEnumerable<int> Finishes(DaysQuestion asked, SeasonPlan plan, IEnumerable<SeasonOutcome> outcomes)
    {
        var plastered = asked.Plaster is { Low: not null, High: not null };
        var last = plan.Tasks.Select((task, i) => (task, i)).Where(t => t.task.Hours > 0 && (plastered || t.task.Waits != WaitsFor.DryWall)).Select(t => t.i).ToArray();
        var lifts = asked.Amounts.Cob.Count;
        return outcomes.Select(o => last.Select(i => o.TaskDone[i]).Append(lifts > 0 ? o.LiftDone[lifts - 1] : 0) is var all && all.Any(d => d < 0) ? -1 : all.Max());
    }

    /// <summary>Days that a share of the seasons do not pass; seasons that never came to it are the longest.</summary>
    private static DayBand Band(IEnumerable<int> days)
    {
        var sorted = days.Select(d => d < 0 ? int.MaxValue : d).Order().ToArray();
        int? At(double share) => sorted[Math.Clamp((int)Math.Ceiling(share * sorted.Length) - 1, 0, sorted.Length - 1)] is var day && day < int.MaxValue ? day : null;
        return new(At(0.1), At(0.5), At(0.9));
    }
}
