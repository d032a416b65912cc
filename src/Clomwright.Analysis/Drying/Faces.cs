using Clomwright.Analysis.Weather;
using Clomwright.Numerics.Diffusion;

namespace Clomwright.Analysis.Drying;

/// <summary>What an hour of weather does to the two faces and the top of a bay, before there is a roof or under it.</summary>
internal sealed class Faces(DryingNumbers numbers, Earth earth, bool roofed = false)
{
    private const double Radiative = 4.9;
    private readonly double full = earth.Full * earth.DryDensity;
    private readonly double wind = numbers["drying-wind"], windInside = numbers["drying-wind-inside"], taken = numbers["drying-sun-taken"];
    private readonly double skyInside = numbers["drying-sky-inside"], top = roofed ? 0 : numbers["drying-top"], rain = roofed ? numbers["drying-rain-under-roof"] : numbers["drying-rain"];
    private readonly double tarp = roofed ? 1 : numbers["drying-tarp"];

    /// <summary>Twenty-four conditions: outside face first, inside face last.</summary>
    /// <param name="day">Hours of a day.</param>
    /// <param name="normal">Azimuth of the bay's outward normal, rad.</param>
    public Condition[] Day(ReadOnlySpan<WeatherHour> day, double normal)
    {
        var mean = 0.0;
        foreach (var hour in day)
        {
            mean += hour.Temperature / day.Length;
        }

        var conditions = new Condition[day.Length];
        for (var h = 0; h < day.Length; h++)
        {
            conditions[h] = Of(day[h], day[h].Upright(normal), mean);
        }

        return conditions;
    }

    /// <summary>One hour.</summary>
    /// <param name="hour">Its weather.</param>
    /// <param name="upright">Sun on the outside face, W/m2.</param>
    /// <param name="mean">Temperature of the wall, C.</param>
    public Condition Of(in WeatherHour hour, double upright, double mean)
    {
        // A wet day is a day under tarps, until there is a roof.
        var open = 1 - hour.WetShare * (1 - tarp);
        var outside = Open(hour, wind, taken * upright - hour.LongWaveLoss / 2, open);
        var uptake = rain * Driven(hour) / 3600 / full;
        var inside = Open(hour, windInside, skyInside * (taken * hour.DiffuseLevel / 2 - hour.LongWaveLoss / 2), open);
        var above = Open(hour, wind, 0, top);
        return new(Earth.Fluidity(mean), earth.VapourPermeability(mean) * Psychrometrics.Saturation(mean), outside with { S = uptake, Full = full }, inside, above);
    }

    private static Exchange Open(in WeatherHour hour, double windShare, double radiation, double share) =>
        WetSurface.Surface(hour.Temperature, hour.VapourPressure, WetSurface.Convection(windShare * hour.Wind), radiation, Radiative, share);

    /// <summary>Rain driven on an upright face, mm/h: (2/9) v r^(8/9) cos theta (ISO 15927-3, from memory), from any side as often as another: the mean of cos over what comes from the front is 1/pi.</summary>
    private double Driven(in WeatherHour hour) => hour.Rain > 0 ? 2.0 / 9 * wind * hour.Wind * Math.Pow(hour.Rain, 8.0 / 9) / Math.PI : 0;
}
