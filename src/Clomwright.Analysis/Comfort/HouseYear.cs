using System.Runtime.Intrinsics;
using Clomwright.Analysis.Weather;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Comfort;

/// <summary>Follows the house through a drawn year, hour by hour; its last sixty days are run before it so that nothing is left of how it began.</summary>
internal sealed class HouseYear
{
    private const double AirHeat = 1200, Hour = 3600, RadiantShare = 0.5, ColdBy = 3;

    /// <summary>Hours run before the first, so that nothing is left of how it began: sixty days, ten times what floor and ground take to follow.</summary>
    private const int RunUp = 24 * 60;
    private readonly Shell shell;
    private readonly SunInRoom sun;

    public HouseYear(Shell shell, SunInRoom sun) => (this.shell, this.sun) = (shell, sun);

    /// <summary>The run with and without heating, and the simple hour beside it.</summary>
    public YearResult Run(YearWeather weather)
    {
        var gains = Gains(weather);
        var (heated, free) = Both(weather, gains);
        return new YearResult
        {
            Heated = heated, Free = free, Simple = Simple(weather, gains), Warm = shell.Warm,
            Wood = shell.Wood(heated.Heat), Glass = shell.Windows.Select((w, i) => new GlassGain(w.Opening, w.Glass, shell.Facing(i), gains.ByWindow[i])).ToSequence(),
        };
    }

    /// <summary>Sun through glass and on the faces, hour by hour.</summary>
    private SunGains Gains(YearWeather weather)
    {
        var (hours, elements) = (weather.Hours, shell.Elements);
        // The share of glass or wall that the sun reaches hangs on month and hour alone.
        var lit = shell.Windows.Select(w => Table(place => sun.Find(w.Opening)?.Lit(place) ?? 0)).ToArray();
        var shaded = elements.Select(e => e.Facing is { } facing && !e.IsLight ? Table(place => shell.WallLit(place, facing, sun.Skyline)) : null).ToArray();
        var skies = shell.Windows.Select(w => sun.Find(w.Opening)?.Sky ?? 1).ToArray();
        var clear = Table(place => sun.Skyline.IsClear(place) ? 1 : 0);
        var inside = new double[hours.Count];
        var faces = new float[hours.Count, elements.Count];
        var windows = new double[shell.Windows.Count];
        var looks = elements.Select(e => e.Facing is { } facing ? Upright.Of(facing) : default).ToArray();
        var looksOut = shell.Windows.Select((_, w) => Upright.Of(shell.Facing(w))).ToArray();
        for (var h = 0; h < hours.Count; h++)
        {
            ref readonly var hour = ref hours.AsSpan()[h];
            var (at, beam, diffuse) = (Place(weather, h), weather.Beams[h], hour.DiffuseLevel);
            var level = clear[at] * hour.BeamLevel + diffuse;
            // As WeatherHour.Upright, with shade: half of the sky, half of what ground of albedo 0.2 throws back.
            double On(Upright face, double share, double sky) => share * beam.On(face) + sky * diffuse / 2 + 0.1 * level;
            for (var w = 0; w < windows.Length; w++)
            {
                var window = shell.Windows[w];
                if (window.Glass > 0)
                {
                    var gain = window.Glass * window.Sun * On(looksOut[w], lit[w][at], skies[w]);
                    (inside[h], windows[w]) = (inside[h] + gain, windows[w] + gain * Hour);
                }
            }

            inside[h] += shell.EyeSun * level + shell.BottleSun * diffuse / 2;
            for (var e = 0; e < elements.Count; e++)
            {
                var element = elements[e];
                if (element.Taken > 0)
                {
                    faces[h, e] = (float)(element.Taken * (element.Facing is null ? level : On(looks[e], shaded[e]![at], 1)) - hour.LongWaveLoss * (element.Facing is null ? 1 : 0.5));
                }
            }
        }

        return new(inside, faces, windows.Select(w => w / (weather.Days.Count / 365.0)).ToArray());
    }

    private static int Place(YearWeather weather, int hour) => 24 * (weather.First.AddDays(hour / 24 % 365).Month - 1) + hour % 24;

    private double[] Table(Func<SunPlace, double> share)
    {
        var table = new double[288];
        for (var m = 0; m < 12; m++)
        {
            for (var h = 0; h < 24; h++)
            {
                var place = sun.Place(m + 1, h + 0.5);
                table[24 * m + h] = place.Elevation > 0 ? share(place) : 0;
            }
        }

        return table;
    }

    /// <summary>The house kept warm and the house that nobody heats, through the same hours.</summary>
    private (RunResult Heated, RunResult Free) Both(YearWeather weather, SunGains gains)
    {
        var elements = shell.Elements;
        var hours = weather.Hours.AsSpan();
        var volume = shell.Volume;
        var balance = new RoomBalance(elements, shell.EdgeLoss, shell.Airing * volume * AirHeat / Hour, Math.Max(shell.Airing, shell.AiringOpen) * volume * AirHeat / Hour,
            volume * AirHeat + shell.FurnitureMass * shell.Ground.Area, RadiantShare);
        var (warm, openAbove, onFloor) = (shell.Warm, shell.OpenAbove, shell.SunFloor);
        var (massive, floor) = (elements.Where(e => !e.IsLight && !e.IsGround).Sum(e => e.Area), shell.Ground.Area);
        var state = balance.Even(weather.Days.Average(d => d.Mean));
        var (faces, inner, lost) = (new double[elements.Count], new double[elements.Count], new Vector128<double>[elements.Count]);
        var (heated, free) = (new RunTally(elements.Count), new RunTally(elements.Count));
        var (feltHeated, feltFree, before) = (15.0, 15.0, Vector128<double>.Zero);
        var people = (shell.People * shell.HeatEach + shell.OtherHeat) / 2;
        var grounds = Enumerable.Range(0, 365).Select(d => GroundBelow(weather, d)).ToArray();
        for (var h = -RunUp; h < hours.Length; h++)
        {
            var at = h < 0 ? h + hours.Length : h;
            ref readonly var hour = ref hours[at];
            var (ground, sun) = (grounds[at / 24 % 365], gains.Inside[at]);
            for (var e = 0; e < faces.Length; e++)
            {
                var element = elements[e];
                faces[e] = element.IsGround ? ground : hour.Temperature + element.Part.Outside * gains.Faces[at, e];
                inner[e] = element.IsGround ? onFloor * sun / floor : element.IsLight ? 0 : (1 - onFloor) * sun / massive;
            }

            bool Open(double felt, double outside) => felt > openAbove && outside < felt;
            var (isOpenHeated, isOpenFree) = (Open(feltHeated, hour.Temperature), Open(feltFree, hour.Temperature));
            before = h == 0 ? balance.Kept(state) : before;
            var (warmed, left) = balance.Step(state, new(hour.Temperature, faces, inner, people, people), warm, (isOpenHeated, isOpenFree), lost);
            (feltHeated, feltFree) = (warmed.Felt, left.Felt);
            if (h < 0)
            {
                continue;
            }

            var kept = balance.Kept(state);
            var date = weather.First.AddDays(at / 24 % 365);
            for (var run = 0; run < 2; run++)
            {
                var (tally, step, isOpen) = run == 0 ? (heated, warmed, isOpenHeated) : (free, left, isOpenFree);
                var came = 2 * people + sun + step.Heating;
                tally.Off(kept[run] - before[run] - Hour * (came - step.Straight - step.Outside), Hour * (Math.Abs(came) + Math.Abs(step.Straight) + Math.Abs(step.Outside)));
                tally.Add(date, hour, step, sun, isOpen);
                if (hour.Temperature < warm - ColdBy)
                {
                    tally.Lost(lost, run, step.Straight);
                }
            }

            before = kept;
        }

        return (heated.Told(weather, elements, shell), free.Told(weather, elements, shell));
    }

    /// <summary>Under the floor: ISO 13370's month, whose swing stands for what the year's swing outside does through the ground, a month late.</summary>
    private double GroundBelow(YearWeather weather, int day)
    {
        var (mean, swing, coldest) = shell.YearSwing(weather);
        var steady = shell.Ground.Area * shell.Ground.Transmittance;
        return mean - swing * shell.Ground.Swing / steady * Math.Cos(2 * Math.PI * (day - coldest - 30) / 365);
    }

    private double Simple(YearWeather weather, SunGains gains)
    {
        double Loss(Func<RoomElement, bool> those) => shell.Elements.Where(those).Sum(e => e.Area * e.Transmittance);
        const double heavy = 370_000, share = 3.5;
        var (floor, windows) = (shell.Ground.Area, Loss(e => e.IsLight));
        var hour = new SimpleHour(floor, share * floor, heavy * floor, windows, Loss(e => !e.IsLight) + shell.EdgeLoss, shell.Airing * shell.Volume * AirHeat / Hour);
        var (mass, sum, people) = (shell.Warm, 0.0, shell.People * shell.HeatEach + shell.OtherHeat);
        var hours = weather.Hours.AsSpan();
        for (var h = -hours.Length; h < hours.Length; h++)
        {
            var at = h < 0 ? h + hours.Length : h;
            var heat = hour.Needed(mass, hours[at].Temperature, people, gains.Inside[at], shell.Warm);
            mass = hour.Step(mass, hours[at].Temperature, people, gains.Inside[at], heat).After;
            // The simple hour knows no open windows: it is kept from running hot.
            mass = Math.Min(mass, shell.OpenAbove);
            sum += h < 0 ? 0 : heat * Hour;
        }

        return sum / (weather.Days.Count / 365.0);
    }

    private sealed record SunGains(double[] Inside, float[,] Faces, double[] ByWindow);
}
