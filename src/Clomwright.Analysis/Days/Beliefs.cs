using Clomwright.Analysis.Drying;
using Clomwright.Building;

namespace Clomwright.Analysis.Days;

/// <summary>All that a forecast believes of its crew and wall on the day on which it is made, and from which it draws its seasons.</summary>
/// <param name="Pace">Of the crew at the cob.</param>
/// <param name="Drying">How many times as fast as the small model the wall dries.</param>
/// <param name="Tasks">What all other tasks share: hours they take, over those planned.</param>
internal sealed record Beliefs(PaceBelief Pace, FactorBelief Drying, FactorBelief Tasks)
{
    /// <summary>What is believed before anything is written.</summary>
    public static Beliefs Before(WorkNumbers numbers) =>
        new(PaceBelief.Before(numbers), new FactorBelief(0, numbers["work-drying-spread"], 0), new FactorBelief(0, Math.Min(numbers["work-task-shared"], numbers["work-task-spread"]), 0));

    /// <summary>Deviation by which single tasks lie from what all tasks share.</summary>
    public static double OwnTaskSpread(WorkNumbers numbers) =>
        Math.Sqrt(Math.Max(0, numbers["work-task-spread"] * numbers["work-task-spread"] - Math.Pow(Math.Min(numbers["work-task-shared"], numbers["work-task-spread"]), 2)));

    /// <summary>What is believed after a log.</summary>
    /// <param name="plan">The job.</param>
    /// <param name="numbers">How far things lie apart.</param>
    /// <param name="stand">Quarters with nothing laid on them.</param>
    /// <param name="weather">A season of weather from the first day, and what a wall feels of it.</param>
    public static Beliefs After(SeasonPlan plan, WorkNumbers numbers, Func<IDryingSector[]> stand, Func<int, Func<int, BayDay>> weather)
    {
        var before = Before(numbers);
        if (plan.Log is not { } log)
        {
            return before;
        }

        var drying = new DryingReadings(plan, log, numbers["work-drying-misfit"], stand, weather);
        return new(PaceOf(plan, log, before.Pace), before.Drying.After(drying.Likelihood, drying.Readings), TasksOf(plan, log, numbers, before.Tasks));
    }

    /// <summary>Days on which cob was laid till evening, or till a written hour of rain, say how fast the crew is; those that the wall ended, how fast at least. Left out, they would make the crew slow: it is fast crews that the wall stops.</summary>
    private static PaceBelief PaceOf(SeasonPlan plan, JobLog log, PaceBelief pace)
    {
        var (amounts, cobDays, last) = (plan.Amounts, 0, 0);
        foreach (var day in log.Days.Where(d => d.To > d.From))
        {
            double planned = 0, above = 0, set = 0;
            for (var lift = (int)Math.Floor(day.From); lift < amounts.Cob.Count && lift < day.To; lift++)
            {
                var part = Math.Min(day.To, lift + 1) - Math.Max(day.From, lift);
                var hours = part * amounts.Cob[lift].Sum() / plan.Pace(cobDays, amounts.Heights[lift]);
                (planned, above, set) = (planned + hours, above + (amounts.Heights[lift] > plan.Shoulder ? hours : 0), set + part * amounts.SetIn[lift].Sum());
            }

            cobDays++;
            var free = day.People * day.HoursEach - set;
            if (planned > 0 && free > day.HoursEach / 4 && (day.Stopped is StoppedBy.Evening or StoppedBy.Wall || (day.ToldHours && day.Stopped is StoppedBy.Rain or StoppedBy.Cold)))
            {
                var (read, share) = (Math.Log(planned / free), above / planned);
                pace = pace.Later(day.Day - last);
                pace = day.Stopped == StoppedBy.Wall ? pace.AtLeast(read, share) : pace.After(read, share);
                last = day.Day;
            }
        }

        return pace.Later(log.Today - last);
    }

    /// <summary>Tasks that were the only work of some written days say how planned hours compare with real ones. A task ends within a day: half of its last one is taken.</summary>
    private static FactorBelief TasksOf(SeasonPlan plan, JobLog log, WorkNumbers numbers, FactorBelief tasks)
    {
        var own = OwnTaskSpread(numbers);
        foreach (var (task, _, until) in TaskDays.Of(plan, log).Where(t => t.Done))
        {
            var last = until[^1].Hours;
            var hours = until.Sum(d => d.Hours) - last / 2;
            // The end lies anywhere in the last day: a twelfth of its square.
            tasks = tasks.After(Math.Log(hours / plan.Tasks[task].Hours), own * own + last * last / 12 / (hours * hours));
        }

        return tasks;
    }
}
