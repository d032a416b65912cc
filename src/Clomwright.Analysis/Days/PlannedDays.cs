using Clomwright.Analysis.Weather.Seasons;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Days;

/// <summary>The job day by day if nothing is lost: every pace as likely as not, mean weather without rain but for the days of which somebody has a forecast. Earlier than the middle of the forecast; it says what a day is for, not when it comes.</summary>
public static class PlannedDays
{
    /// <summary>Every work day still to come until the job is done, or as far as it is looked at.</summary>
    public static PlannedDaysResult Of(DaysQuestion asked)
    {
        ArgumentNullException.ThrowIfNull(asked);
        var plan = FromDrying.PlanOf(asked);
        var (notes, weather, start) = (new List<WorkDone>(), new List<SeasonDay>(), asked.Crew.Start);
        SeasonDay Next()
        {
            var date = start.AddDays(weather.Count);
            var mean = asked.Weather.Climate.Months[date.Month - 1];
            var day = new SeasonDay(0, mean.High, mean.Low, mean.Sun, mean.DewPoint, mean.Wind);
            weather.Add(asked.Known.FirstOrDefault(k => k.Date == date) is { } said ? said.Over(day) : day);
            return weather[^1];
        }

        int? plaster = asked.Plaster is { Low: { } low, High: { } high } ? (int)Math.Ceiling(Math.Sqrt(low * high)) : null;
        var latitude = asked.Latitude * Math.PI / 180;
        var outcome = new SeasonRun(plan, new SeasonDraw(1, _ => 1, _ => 1, plaster), asked.Quarters((_, _) => 1), notes.Add).Run(
            FromDrying.Looked, Next, (d, day) => DayWeather.Of(start.AddDays(d), day, latitude, asked.Elevation));
        var last = notes.Count == 0 ? -1 : notes[^1].Day;
        return new(Enumerable.Range(0, last + 1).Where(d => d >= (plan.Log?.Today ?? 0) && plan.IsWorkDay(start.AddDays(d))).Select(Day).ToSequence());

        PlannedDay Day(int d)
        {
            var works = notes.Where(n => n.Day == d).GroupBy(n => n.Task, StringComparer.Ordinal).Select(g => new PlannedWork(g.Key, g.Sum(n => n.Hours))).ToSequence();
            var lift = works.Any(w => w.Task == PlannedWork.Cob) ? Array.FindIndex(outcome.LiftDone, done => done < 0 || done >= d) : -1;
            return new(start.AddDays(d), plan.PeopleOn(d), plan.Crew.HoursPerDay, works)
            {
                Lift = lift >= 0 ? lift : null, Closes = lift >= 0 && outcome.LiftDone[lift] == d,
                IsStopped = (weather[d].Rain > plan.RainStops && !plan.Tarps) || weather[d].Mean < plan.ColdStops,
            };
        }
    }
}
