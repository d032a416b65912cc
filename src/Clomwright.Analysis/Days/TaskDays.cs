using Clomwright.Building;

namespace Clomwright.Analysis.Days;

/// <summary>Which written days went to which task: days without cob, after what had to come before it, on which nothing else could be worked on. What waits for the wall may have been begun on any day: it says nothing.</summary>
internal static class TaskDays
{
    /// <summary>Tasks with days of their own, finished or under way.</summary>
    /// <param name="plan">The job.</param>
    /// <param name="log">What was done.</param>
    /// <returns>The place of the task, whether it is done, and its days with the hours of one person that it can have taken.</returns>
    public static IEnumerable<(int Task, bool Done, IReadOnlyList<(int Day, double Hours)> Days)> Of(SeasonPlan plan, JobLog log)
    {
        var done = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var day in log.Days)
        {
            foreach (var key in day.Done)
            {
                done.TryAdd(key, day.Day);
            }
        }

        for (var i = 0; i < plan.Tasks.Count; i++)
        {
            var task = plan.Tasks[i];
            if (task.IsAside || task.Hours <= 0 || task.Waits != WaitsFor.Nothing || !IsReady(plan, task, done))
            {
                continue;
            }

            var from = task.After.Select(key => done.TryGetValue(key, out var day) ? day + 1 + plan.Tasks.First(t => t.Key == key).RestDays : 0).DefaultIfEmpty(0).Max();
            var to = done.TryGetValue(task.Key, out var end) ? end : log.Today - 1;
            var alone = plan.Tasks.All(t => t.Key == task.Key || t.IsAside || t.Hours <= 0 || (done.TryGetValue(t.Key, out var day) && day < from) || !t.After.All(a => Before(plan, a, done, to)));
            var days = log.Days.Where(d => d.Day >= from && d.Day <= to && d.To <= d.From && d.Stopped is not (StoppedBy.Rain or StoppedBy.Cold) && d.People > 0)
                .Select(d => (d.Day, Math.Min(d.People, task.People) * d.HoursEach)).Where(d => d.Item2 > 0).ToList();
            if (alone && days.Count > 0)
            {
                yield return (i, done.ContainsKey(task.Key), days);
            }
        }
    }

    private static bool IsReady(SeasonPlan plan, WorkTask task, Dictionary<string, int> done) => task.After.All(a => Before(plan, a, done, int.MaxValue));

    /// <summary>Whether a task was done by a day; one with nothing to do is.</summary>
    private static bool Before(SeasonPlan plan, string key, Dictionary<string, int> done, int day) =>
        plan.Tasks.First(t => t.Key == key) is { Hours: <= 0 } || (done.TryGetValue(key, out var when) && when < day);
}
