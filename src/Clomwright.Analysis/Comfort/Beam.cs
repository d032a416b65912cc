using Clomwright.Analysis.Weather;

namespace Clomwright.Analysis.Comfort;

/// <summary>Sun straight from the disc in an hour, as an arrow over the plan: its part along the normal of an upright face is what falls on a square metre of it.</summary>
/// <param name="East">On a face that looks east, W/m2; negative where the sun is behind it.</param>
/// <param name="North">On a face that looks north, W/m2.</param>
internal readonly record struct Beam(double East, double North)
{
    /// <summary>Of an hour; nothing at night.</summary>
    public static Beam Of(WeatherHour hour)
    {
        if (hour.BeamLevel <= 0)
        {
            return default;
        }

        var place = hour.Place;
        var level = hour.BeamLevel / Math.Max(WeatherHour.LowestSun, Math.Sin(place.Elevation));
        return new(level * place.OnUpright(Math.PI / 2), level * place.OnUpright(0));
    }

    /// <summary>On an upright face, W/m2.</summary>
    public double On(Upright face) => Math.Max(0, East * face.East + North * face.North);
}

/// <summary>Where an upright face looks, as a unit arrow.</summary>
internal readonly record struct Upright(double East, double North)
{
    /// <summary>From the azimuth of its outward normal, rad.</summary>
    public static Upright Of(double normal) => new(Math.Sin(normal), Math.Cos(normal));
}
