using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Weather.Seasons;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Numerics;

namespace Clomwright.Analysis.Days;

/// <summary>When the first lift would be laid by a crew that has trench or stem to build first.</summary>
public static class FirstLift
{
    private const int Seasons = 200, Looked = 400;

    /// <summary>The day by which half of the first drawn seasons lay cob; the first day of work where the stem is there. Null where not half of them come to it.</summary>
    /// <param name="asked">A question; its sectors are not read.</param>
    public static DateOnly? Of(DaysQuestion asked)
    {
        ArgumentNullException.ThrowIfNull(asked);
        if (asked.Log?.Days.FirstOrDefault(d => d.To > 0) is { } written)
        {
            return asked.Crew.Start.AddDays(written.Day);
        }

        if (asked.Crew.Begins == WorkBegins.Wall)
        {
            return asked.Crew.Start;
        }

        // A handful of cob after the stem: the day it is laid on is the day that is asked for.
        var whole = FromDrying.PlanOf(asked);
        var stem = whole.Tasks.ToList().FindIndex(t => t.Key == WorkList.Stem);
        var tasks = whole.Tasks.Select((t, i) => i <= stem ? t : t with { Hours = 0, RestDays = 0, Waits = WaitsFor.Nothing, After = [] }).ToSequence();
        var plan = whole with { Tasks = tasks, Amounts = whole.Amounts with { Cob = [[1e-6]], SetIn = [[0.0]], Heights = [0.5] } };
        var weather = new SeasonWeather(DailyTable.Of(asked.Weather.Climate), asked.Latitude * Math.PI / 180, new Philox(asked.Seed));
        var draws = new SeasonDraws(asked, Beliefs.Before(asked.Numbers));
        var days = Enumerable.Range(0, Seasons)
            .Select(season => new SeasonRun(plan, draws.Of(season).Draw, [new Firm()]).Run(Looked, weather.From(season, asked.Crew.Start, asked.Known), (_, _) => default).LiftDone[0])
            .Select(day => day < 0 ? int.MaxValue : day).Order().ToArray();
        return days[Seasons / 2 - 1] is var half && half < int.MaxValue ? asked.Crew.Start.AddDays(half) : null;
    }

    /// <summary>Cob that nobody waits for.</summary>
    private sealed class Firm : IDryingSector
    {
        public double? FirmAfter => 0;

        public bool CarriesRoof => true;

        public void Lay()
        {
        }

        public void Advance(in BayDay day)
        {
        }
    }
}
