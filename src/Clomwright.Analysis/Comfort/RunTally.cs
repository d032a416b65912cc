using System.Runtime.Intrinsics;
using Clomwright.Analysis.Weather;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Comfort;

/// <summary>Counts a run while it goes.</summary>
internal sealed class RunTally(int elements)
{
    private readonly double[] lost = new double[elements];
    private readonly MonthSums[] months = [.. Enumerable.Range(0, 12).Select(_ => new MonthSums())];
    private readonly List<DayFelt> days = [];
    private double straight, heat, peak, worst, low, high, sum;
    private int cold, hot, count, inDay;

    /// <summary>How far the hour's heat does not come out, J, against what moved.</summary>
    public void Off(double residual, double moved) => worst = Math.Max(worst, Math.Abs(residual) / Math.Max(1, moved));

    public void Add(DateOnly date, in WeatherHour hour, in RoomStep step, double sun, bool isOpen)
    {
        var month = months[date.Month - 1];
        month.Hours++;
        month.Felt += step.Felt;
        month.Air += step.Air;
        month.Outside += hour.Temperature;
        month.Vapour += hour.VapourPressure;
        month.Heat += step.Heating * 3600;
        month.Sun += sun * 3600;
        month.Open += isOpen ? 1 : 0;
        heat += step.Heating * 3600;
        peak = Math.Max(peak, step.Heating);
        cold += step.Felt < RunResult.Cold ? 1 : 0;
        hot += step.Felt > RunResult.Hot ? 1 : 0;
        count++;
        (low, high) = inDay == 0 ? (step.Felt, step.Felt) : (Math.Min(low, step.Felt), Math.Max(high, step.Felt));
        sum += step.Felt;
        if (++inDay == 24)
        {
            days.Add(new(date, low, sum / 24, high));
            (inDay, sum) = (0, 0);
        }
    }

    /// <summary>What each part lets out, W, of the first room or the second.</summary>
    public void Lost(ReadOnlySpan<Vector128<double>> parts, int one, double byAir)
    {
        for (var e = 0; e < lost.Length; e++)
        {
            lost[e] += 3600 * parts[e][one];
        }

        straight += 3600 * byAir;
    }

    public RunResult Told(YearWeather weather, Sequence<RoomElement> parts, Shell shell)
    {
        var years = weather.Days.Count / 365.0;
        var ofAir = shell.AirLoss / (shell.AirLoss + shell.EdgeLoss);
        Dictionary<PartKind, double> by = parts.Select((p, i) => (p.Key, Lost: lost[i] / years)).GroupBy(p => p.Key).ToDictionary(g => g.Key, g => g.Sum(p => p.Lost));
        by[PartKind.Air] = straight * ofAir / years;
        by[PartKind.Edges] = straight * (1 - ofAir) / years;
        return new RunResult
        {
            Months = months.Select((m, i) => m.Told(i + 1, years)).ToSequence(), Days = [.. days], Heat = heat / years, Peak = peak, ColdHours = cold / years, HotHours = hot / years, WorstBalance = worst,
            LostBy = Enum.GetValues<PartKind>().Select(k => new PartLoss(k, by.GetValueOrDefault(k))).ToSequence(), Hours = count,
        };
    }

    private sealed class MonthSums
    {
        public double Felt, Air, Outside, Vapour, Heat, Sun;
        public int Hours, Open;

        public MonthComfort Told(int number, double years) => new(number, Felt / Hours, Air / Hours, Outside / Hours, Vapour / Hours, Heat / years, Sun / years, Open / years);
    }
}
