using Clomwright.Building;

namespace Clomwright.Analysis.Days;

/// <summary>The days of a season that are over: what somebody wrote is done as it was written, whatever this season draws.</summary>
internal sealed partial class SeasonRun
{
    /// <summary>Of a task under way at least this share of its hours is left, however long people have been at it.</summary>
    private const double LeastLeft = 0.1;

    private int today;
    private Dictionary<int, LoggedDay> written = [];

    /// <summary>Takes from what a season asks of its tasks what people have worked on them.</summary>
    private void TakeOff()
    {
        if (plan.Log is not { } log)
        {
            return;
        }

        (today, written) = (log.Today, log.Days.ToDictionary(d => d.Day));
        foreach (var (task, done, days) in TaskDays.Of(plan, log))
        {
            if (!done)
            {
                hoursLeft[task] = Math.Max(LeastLeft * hoursLeft[task], hoursLeft[task] - days.Sum(d => d.Hours));
            }
        }
    }

    private void Past(int day)
    {
        CloseEmpty(day);
        if (!written.TryGetValue(day, out var seen))
        {
            return;
        }

        if (seen.To > 0)
        {
            // Where cob lies, the stem's mortar has set.
            Did(stem, day - 1);
            restUntil[stem] = Math.Min(restUntil[stem], day);
        }

        foreach (var key in seen.Done)
        {
            for (var i = 0; i < plan.Tasks.Count; i++)
            {
                if (plan.Tasks[i].Key == key)
                {
                    Did(i, day);
                }
            }
        }

        var lift = lifts.Min();
        var laid = LayTo(seen.To, day);
        if (laid)
        {
            cobDays++;
            outcome.LiftWorked[lift]++;
        }

        if (seen.Stopped == StoppedBy.Wall && !WallDone)
        {
            outcome.LiftWaited[lifts.Min()]++;
        }

        outcome.WeatherDays += !laid && !WallDone && seen.Stopped is StoppedBy.Rain or StoppedBy.Cold ? 1 : 0;
    }

    /// <summary>A task was done, and so was what comes before it, whether somebody wrote that or not.</summary>
    private void Did(int task, int day)
    {
        if (taskDone[task] >= 0)
        {
            return;
        }

        foreach (var before in after[task])
        {
            Did(before, day);
        }

        if (plan.Tasks[task].Waits != WaitsFor.Nothing)
        {
            LayTo(Lifts, Math.Max(0, day));
        }

        // What nobody wrote of was done before the first day, or on it.
        Close(task, Math.Max(0, day));
    }

    /// <summary>Lays cob up to a height, lifts: whole lifts all round, of the next one quarter after the other. Whether there was any to lay.</summary>
    private bool LayTo(double height, int day)
    {
        var any = false;
        for (var lift = Lifts > 0 ? lifts.Min() : 0; lift < Lifts && lift < height - 1e-9; lift++)
        {
            var whole = height >= lift + 1 - JobLog.Unread;
            var unread = JobLog.Unread * plan.Amounts.Cob[lift].Sum();
            var left = whole ? double.PositiveInfinity : (height - lift) * plan.Amounts.Cob[lift].Sum() - Enumerable.Range(0, sectors.Length).Sum(s => lifts[s] > lift ? Cob(lift, s) : Cob(lift, s) - cobLeft[s]);
            for (var s = 0; s < sectors.Length && left > unread / 10; s++)
            {
                if (lifts[s] > lift)
                {
                    continue;
                }

                any = true;
                var part = Math.Min(left, cobLeft[s]);
                (left, cobLeft[s]) = (left - part, cobLeft[s] - part);
                if (cobLeft[s] <= unread)
                {
                    CloseSector(s, day);
                }
                else
                {
                    // What is set in goes up with the cob.
                    setLeft[s] = SetIn(lift, s) * cobLeft[s] / Cob(lift, s);
                }
            }
        }

        return any;
    }
}
