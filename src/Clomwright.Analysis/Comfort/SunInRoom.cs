using Clomwright.Analysis.Weather;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Comfort;

/// <summary>Sun that comes into the room on the middle day of a month, clear of cloud: where it falls, and how long it comes through each opening.</summary>
public sealed class SunInRoom
{
    private const double Degree = Math.PI / 180;
    private readonly HouseGeometry geometry;
    private readonly double latitude;
    private readonly Sequence<(string Name, OpeningSun Sun)> openings;

    internal SunInRoom(HouseGeometry geometry, double latitude, EaveEdge? eave)
    {
        (this.geometry, this.latitude) = (geometry, latitude);
        Skyline = Skyline.Of(geometry.House.Site);
        openings = [.. geometry.Openings.Where(o => o.Opening.Kind != OpeningKind.Door || o.Opening.Glazing is not null)
            .Select(o => (o.Opening.Name, new OpeningSun(LightShaft.Of(geometry, o), eave, Skyline)))];
    }

    /// <summary>What stands in the sun's way far off.</summary>
    public Skyline Skyline { get; }

    /// <summary>The opening of a name; null for doors of boards.</summary>
    internal OpeningSun? Find(string name) => openings.FirstOrDefault(o => o.Name == name).Sun;

    /// <summary>Place of the sun on the middle day of a month.</summary>
    /// <param name="month">1 to 12.</param>
    /// <param name="hour">Of the sun's own time, 12 when it stands highest.</param>
    public SunPlace Place(int month, double hour) =>
        Sun.AtHourAngle((hour - 12) * Math.PI / 12, ReferenceEvaporation.Declination(30.42 * month - 15), latitude * Degree);

    /// <summary>Place of the sun on a day.</summary>
    /// <param name="day">Which; the year makes no difference that could be seen.</param>
    /// <param name="hour">Of the sun's own time, 12 when it stands highest.</param>
    public SunPlace Place(DateOnly day, double hour) =>
        Sun.AtHourAngle((hour - 12) * Math.PI / 12, ReferenceEvaporation.Declination(day.DayOfYear), latitude * Degree);

    /// <summary>Every patch of one moment.</summary>
    /// <param name="month">1 to 12.</param>
    /// <param name="hour">Of the sun's own time.</param>
    public Sequence<SunPatch> At(int month, double hour) => At(Place(month, hour));

    /// <summary>Every patch of one moment.</summary>
    /// <param name="sun">Where the sun stands.</param>
    public Sequence<SunPatch> At(SunPlace sun)
    {
        return openings.Select(o => SunPatches.Of(geometry, o.Name, o.Sun, sun)).OfType<SunPatch>().ToSequence();
    }

    /// <summary>Hours of the middle day of a month in which sun comes through an opening, to a quarter of an hour.</summary>
    public double Hours(string opening, int month)
    {
        const int quarters = 4;
        var sun = Find(opening);
        return sun is null ? 0 : Enumerable.Range(0, 24 * quarters).Count(i => sun.Lit(Place(month, (i + 0.5) / quarters)) > 0.01) / (double)quarters;
    }

    /// <summary>Names of openings that let sun in.</summary>
    public Sequence<string> Openings => openings.Select(o => o.Name).ToSequence();
}
