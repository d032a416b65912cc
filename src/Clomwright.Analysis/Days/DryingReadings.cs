using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Weather.Seasons;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Days;

/// <summary>
/// Reads from a log how fast the wall dries. Each quarter of each lift was firm when the next was laid on it, and not yet firm on a day on which people stopped because the wall could take no more: its
/// days until firm lie between. Beside it stands the small model, dried through the same days in the weather seen, or drawn where nobody wrote of it.
/// </summary>
internal sealed class DryingReadings
{
    /// <summary>Seasons of weather drawn for days that nobody wrote of.</summary>
    private const int Drawn = 6;

    /// <summary>Quarters share their weather and their crew's judgement: together they count as one reading.</summary>
    private readonly double share;

    private readonly JobLog log;
    private readonly Sequence<Sequence<double>> cob;
    private readonly double misfit;
    private readonly List<(double After, double Before, double Log, double Variance)> intervals = [];

    /// <param name="plan">What there is to lay.</param>
    /// <param name="log">What was laid.</param>
    /// <param name="misfit">Standard deviation of the logarithm by which the small model and the crew's eye differ.</param>
    /// <param name="stand">Quarters with nothing laid on them.</param>
    /// <param name="weather">A season of weather from the first day, and what a wall feels of it.</param>
    public DryingReadings(SeasonPlan plan, JobLog log, double misfit, Func<IDryingSector[]> stand, Func<int, Func<int, BayDay>> weather)
    {
        (this.log, this.misfit, cob) = (log, misfit, plan.Amounts.Cob);
        share = cob.Count > 0 ? 1.0 / cob[0].Count : 1;
        var seen = Seen().ToList();
        if (seen.Count == 0)
        {
            return;
        }

        var firm = Enumerable.Range(0, Drawn).Select(season => FirmDays(stand(), weather(season), seen.Max(s => s.Lift) + 1)).ToList();
        foreach (var (lift, sector, after, before) in seen)
        {
            var logs = firm.Where(f => f[lift][sector] is > 0).Select(f => Math.Log(f[lift][sector]!.Value)).ToList();
            if (logs.Count > 0)
            {
                var mean = logs.Average();
                intervals.Add((after, before, mean, logs.Average(l => (l - mean) * (l - mean))));
            }
        }

        Readings = seen.Select(s => s.Lift).Distinct().Count();
    }

    /// <summary>Lifts that told something.</summary>
    public int Readings { get; }

    /// <summary>Logarithm of how likely what was seen is, where the wall dries so many times as fast as the small model.</summary>
    /// <param name="logRate">Logarithm of that factor.</param>
    public double Likelihood(double logRate)
    {
        var sum = 0.0;
        foreach (var (after, before, log, variance) in intervals)
        {
            var spread = Math.Sqrt(misfit * misfit + variance);
            double Below(double days) => days <= 0 ? 0 : double.IsInfinity(days) ? 1 : NormalDistribution.Below((Math.Log(days) - log + logRate) / spread);
            sum += share * Math.Log(Math.Max(1e-9, Below(before) - Below(after)));
        }

        return sum;
    }

    /// <summary>Days between which each quarter of each lift became firm, counted from the day it was closed.</summary>
    private IEnumerable<(int Lift, int Sector, double After, double Before)> Seen()
    {
        for (var lift = 0; lift + 1 < cob.Count; lift++)
        {
            for (var s = 0; s < cob[lift].Count; s++)
            {
                if (Closed(lift, s) is not { } closed)
                {
                    continue;
                }

                var begun = Begun(lift + 1, s);
                var waited = log.Days.Where(d => d.Stopped == StoppedBy.Wall && d.Day > closed && (begun is null || d.Day < begun) && Lowest(d.To) == lift + 1).Select(d => d.Day - closed).DefaultIfEmpty(0).Max();
                // Laid on in the very hour it was closed, or neither laid on nor waited for: nothing to read.
                if (begun is { } day ? day > closed && day - closed > waited : waited > 0)
                {
                    yield return (lift, s, waited, begun is { } b ? b - closed : double.PositiveInfinity);
                }
            }
        }
    }

    /// <summary>The lift that is worked on at a height.</summary>
    private static int Lowest(double height) => (int)Math.Floor(height + JobLog.Unread);

    private int? Closed(int lift, int sector) => Day(d => d.To >= End(lift, sector) - JobLog.Unread);

    private int? Begun(int lift, int sector) => Day(d => d.To > End(lift, sector) - Part(lift, sector) + JobLog.Unread);

    private int? Day(Func<LoggedDay, bool> when)
    {
        foreach (var day in log.Days)
        {
            if (when(day))
            {
                return day.Day;
            }
        }

        return null;
    }

    /// <summary>Height at which a quarter of a lift is laid, lifts: quarters of a lift are laid one after the other.</summary>
    private double End(int lift, int sector) => lift + Enumerable.Range(0, sector + 1).Sum(s => Part(lift, s));

    private double Part(int lift, int sector) => cob[lift].Sum() is > 0 and var all ? cob[lift][sector] / all : 1.0 / cob[lift].Count;

    /// <summary>Days that the small model takes until firm, for each lift and quarter: laid when the log says, or once what is below is firm by the model.</summary>
    private double?[][] FirmDays(IDryingSector[] sectors, Func<int, BayDay> weather, int lifts)
    {
        const int late = 60;
        var firm = Enumerable.Range(0, lifts).Select(_ => new double?[sectors.Length]).ToArray();
        var (laid, due) = (new int[sectors.Length], Enumerable.Range(0, lifts).Select(l => Enumerable.Range(0, sectors.Length).Select(s => Closed(l, s)).ToArray()).ToArray());
        for (var day = 0; day < log.Today + late; day++)
        {
            var around = weather(day);
            var waits = false;
            for (var s = 0; s < sectors.Length; s++)
            {
                if (laid[s] > 0)
                {
                    sectors[s].Advance(around);
                    firm[laid[s] - 1][s] ??= sectors[s].FirmAfter;
                }

                if (laid[s] < lifts && due[laid[s]][s] <= day && (laid[s] == 0 || sectors[s].IsFirm))
                {
                    sectors[s].Lay();
                    laid[s]++;
                }

                waits |= laid[s] > 0 && firm[laid[s] - 1][s] is null;
            }

            if (!waits && day >= log.Today)
            {
                break;
            }
        }

        return firm;
    }
}
