using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Weather.Seasons;

namespace Clomwright.Analysis.Days;

/// <summary>What one season came to. Days are counted from the first, 0; -1 means not within the days looked at.</summary>
internal sealed class SeasonOutcome(int lifts, int tasks)
{
    /// <summary>Day on which each lift was closed all round.</summary>
    public int[] LiftDone { get; } = Filled(lifts);

    /// <summary>Work days of each lift on which people stood ready and no sector could take more.</summary>
    public int[] LiftWaited { get; } = new int[lifts];

    /// <summary>Work days of each lift on which cob was laid.</summary>
    public int[] LiftWorked { get; } = new int[lifts];

    /// <summary>Day on which each task was done.</summary>
    public int[] TaskDone { get; } = Filled(tasks);

    /// <summary>Work days up to the wall's top without cob because of rain or cold.</summary>
    public int WeatherDays { get; set; }

    /// <summary>The first night below freezing while a lift was younger than a week, or -1.</summary>
    public int FrostDay { get; set; } = -1;

    private static int[] Filled(int count)
    {
        var days = new int[count];
        Array.Fill(days, -1);
        return days;
    }
}

/// <summary>What was worked on.</summary>
/// <param name="Day">From the first, 0.</param>
/// <param name="Task">Its key; <c>cob</c> for the wall itself.</param>
/// <param name="Hours">Of one person.</param>
/// <param name="Cob">Cob laid, m3.</param>
internal readonly record struct WorkDone(int Day, string Task, double Hours, double Cob = 0);

/// <summary>One season, day by day: weather, drying, people and tasks together.</summary>
internal sealed partial class SeasonRun
{
    private const int YoungDays = 7;
    private readonly SeasonPlan plan;
    private readonly SeasonDraw draw;
    private readonly IDryingSector[] sectors;
    private readonly int[][] after;
    private readonly int stem, raise;
    private readonly double[] hoursLeft;
    private readonly int[] lifts, taskDone, restUntil;
    private readonly double[] cobLeft, setLeft;
    private readonly SeasonOutcome outcome;
    private readonly Action<WorkDone>? note;
    private int cobDays, lastLaid = -1;

    /// <param name="plan">What every season has in common.</param>
    /// <param name="draw">What this one draws.</param>
    /// <param name="sectors">How its wall dries.</param>
    /// <param name="note">Is told what was worked on, day by day.</param>
    public SeasonRun(SeasonPlan plan, SeasonDraw draw, IDryingSector[] sectors, Action<WorkDone>? note = null)
    {
        (this.plan, this.draw, this.sectors, this.note) = (plan, draw, sectors, note);
        var tasks = plan.Tasks;
        int Place(string key) => Enumerable.Range(0, tasks.Count).First(i => tasks[i].Key == key);
        after = [.. tasks.Select(t => t.After.Select(Place).ToArray())];
        (stem, raise) = (Place(WorkList.Stem), Place(WorkList.Raise));
        hoursLeft = [.. tasks.Select((t, i) => t.Hours * draw.Tasks(i))];
        (taskDone, restUntil) = (new int[tasks.Count], new int[tasks.Count]);
        Array.Fill(taskDone, -1);
        lifts = new int[sectors.Length];
        cobLeft = [.. Enumerable.Range(0, sectors.Length).Select(s => Cob(0, s))];
        setLeft = [.. Enumerable.Range(0, sectors.Length).Select(s => SetIn(0, s))];
        outcome = new(Lifts, tasks.Count);
        TakeOff();
    }

    private int Lifts => plan.Amounts.Cob.Count;

    private bool WallDone => lastLaid >= 0 && lifts.All(l => l == Lifts);

    /// <summary>The whole season, or as far as its days go.</summary>
    /// <param name="days">How many are looked at.</param>
    /// <param name="next">The next day of weather; asked once for each day.</param>
    /// <param name="around">What a wall feels of a day, by its number.</param>
    public SeasonOutcome Run(int days, Func<SeasonDay> next, Func<int, SeasonDay, BayDay> around)
    {
        for (var day = 0; day < days && !IsOver; day++)
        {
            var weather = next();
            if (!IsBuilt)
            {
                Dry(around(day, weather));
            }

            if (day < today)
            {
                Past(day);
            }
            else
            {
                Work(day, weather);
            }

            Frost(day, weather);
        }

        return outcome;
    }

    /// <summary>What was laid yesterday has dried for a day when the crew looks at it.</summary>
    private void Dry(in BayDay day)
    {
        for (var s = 0; s < sectors.Length; s++)
        {
            if (lifts[s] > 0)
            {
                sectors[s].Advance(day);
            }
        }
    }

    private bool IsOver => WallDone && taskDone.All(d => d >= 0);

    /// <summary>Once the roof is up nobody asks the small model of drying any more.</summary>
    private bool IsBuilt => taskDone[raise] >= 0;

    private void Work(int day, in SeasonDay weather)
    {
        CloseEmpty(day);
        if (!plan.IsWorkDay(plan.Crew.Start.AddDays(day)))
        {
            return;
        }

        var (wet, cold) = (weather.Rain > plan.RainStops, weather.Mean < plan.ColdStops);
        var hours = plan.PeopleOn(day) * plan.Crew.HoursPerDay;
        // What the house waits for first, then the cob, then what waits for nothing.
        for (var i = 0; i < plan.Tasks.Count; i++)
        {
            if (!plan.Tasks[i].IsAside)
            {
                hours -= Task(i, day, hours, wet, cold);
            }
        }

        if (!WallDone && CanLay(day))
        {
            if ((wet && !plan.Tarps) || cold)
            {
                outcome.WeatherDays++;
            }
            else
            {
                hours -= Lay(day, hours);
            }
        }

        for (var i = 0; i < plan.Tasks.Count; i++)
        {
            hours -= Task(i, day, hours, wet, cold);
        }
    }

    /// <summary>Tasks with nothing to do are done as soon as what is before them is.</summary>
    private void CloseEmpty(int day)
    {
        for (var i = 0; i < plan.Tasks.Count; i++)
        {
            if (taskDone[i] < 0 && hoursLeft[i] <= 0 && MayBegin(i, day))
            {
                Close(i, day);
            }
        }
    }

    private bool MayBegin(int task, int day)
    {
        foreach (var before in after[task])
        {
            if (taskDone[before] < 0 || day < restUntil[before])
            {
                return false;
            }
        }

        if (plan.IsKept(plan.Tasks[task].Key, plan.Crew.Start.AddDays(day)))
        {
            return false;
        }

        return plan.Tasks[task].Waits switch
        {
            WaitsFor.WallTop => WallDone,
            WaitsFor.FirmTop => WallDone && Array.TrueForAll(sectors, s => s.IsFirm),
            WaitsFor.StrongWall => WallDone && Array.TrueForAll(sectors, s => s.CarriesRoof),
            WaitsFor.DryWall => WallDone && draw.PlasterAfter is { } days && day >= lastLaid + days,
            _ => true,
        };
    }

    /// <summary>Works on a task for a day; the hours that it took.</summary>
    private double Task(int i, int day, double hours, bool wet, bool cold)
    {
        var task = plan.Tasks[i];
        if (taskDone[i] >= 0 || hoursLeft[i] <= 0 || (wet && task.Needs.HasFlag(DayNeeds.Dry)) || (cold && task.Needs.HasFlag(DayNeeds.Mild)) || !MayBegin(i, day))
        {
            return 0;
        }

        var most = Math.Min(hours, task.People * plan.Crew.HoursPerDay);
        if (most < Math.Min(task.Least, plan.Crew.People) * plan.Crew.HoursPerDay - 1e-9 && most < hoursLeft[i])
        {
            return 0;
        }

        var done = Math.Min(most, hoursLeft[i]);
        hoursLeft[i] -= done;
        note?.Invoke(new WorkDone(day, task.Key, done));
        if (hoursLeft[i] <= 1e-9)
        {
            Close(i, day);
        }

        return done;
    }

    private void Close(int i, int day)
    {
        (taskDone[i], hoursLeft[i]) = (day, 0);
        // What follows begins on the next day at the earliest.
        restUntil[i] = plan.Tasks[i].Hours > 0 ? day + 1 + plan.Tasks[i].RestDays : day;
        outcome.TaskDone[i] = day;
    }

    private bool CanLay(int day) => taskDone[stem] >= 0 && day >= restUntil[stem];

    /// <summary>Lays cob for a day, the lowest sectors first; the hours that it took.</summary>
    private double Lay(int day, double hours)
    {
        var (taken, laid, lift) = (0.0, 0.0, lifts.Min());
        var pace = draw.Cob * draw.OfDay(day);
        Span<bool> closed = stackalloc bool[sectors.Length];
        while (taken < hours - 1e-9 && Next(closed) is >= 0 and var s)
        {
            var at = lifts[s];
            var sets = Math.Min(hours - taken, setLeft[s]);
            (setLeft[s], taken) = (setLeft[s] - sets, taken + sets);
            var each = plan.Pace(cobDays, plan.Amounts.Heights[at]) * pace * (plan.Amounts.Heights[at] > plan.Shoulder ? draw.Above : 1);
            var cob = Math.Min(cobLeft[s], (hours - taken) * each);
            (cobLeft[s], taken, laid) = (cobLeft[s] - cob, taken + cob / each, laid + cob);
            if (cobLeft[s] <= 1e-9 && setLeft[s] <= 1e-9)
            {
                closed[s] = true;
                CloseSector(s, day);
            }
        }

        if (taken > 0)
        {
            cobDays++;
            outcome.LiftWorked[lift]++;
            note?.Invoke(new WorkDone(day, "cob", taken, laid));
        }

        if (taken < hours / 2 && !WallDone)
        {
            outcome.LiftWaited[lifts.Min()]++;
        }

        return taken;
    }

    /// <summary>A lift is laid on a sector.</summary>
    private void CloseSector(int s, int day)
    {
        var at = lifts[s];
        sectors[s].Lay();
        lifts[s]++;
        lastLaid = day;
        (cobLeft[s], setLeft[s]) = at + 1 < Lifts ? (Cob(at + 1, s), SetIn(at + 1, s)) : (0, 0);
        if (lifts.Min() > at)
        {
            outcome.LiftDone[at] = day;
        }
    }

    /// <summary>The lowest sector that may be worked on, none that was closed today and none a lift above another; -1 where there is none.</summary>
    private int Next(ReadOnlySpan<bool> closed)
    {
        var (best, lowest) = (-1, lifts.Min());
        for (var s = 0; s < sectors.Length; s++)
        {
            if (!closed[s] && lifts[s] < Lifts && lifts[s] <= lowest && (lifts[s] == 0 || sectors[s].IsFirm) && (best < 0 || lifts[s] < lifts[best]))
            {
                best = s;
            }
        }

        return best;
    }

    private void Frost(int day, in SeasonDay weather)
    {
        if (weather.Low < 0 && outcome.FrostDay < 0 && lastLaid >= 0 && day - lastLaid <= YoungDays)
        {
            outcome.FrostDay = day;
        }
    }

    private double Cob(int lift, int sector) => Lifts > 0 ? plan.Amounts.Cob[lift][sector] : 0;

    private double SetIn(int lift, int sector) => Lifts > 0 ? plan.Amounts.SetIn[lift][sector] : 0;
}
