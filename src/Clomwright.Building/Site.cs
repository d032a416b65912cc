using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>The place. Anything not given stays null and is "not checked" where it is needed.</summary>
public sealed record Site
{
    /// <summary>Degrees north.</summary>
    public double? Latitude { get; init; }

    /// <summary>Degrees east.</summary>
    public double? Longitude { get; init; }

    /// <summary>Above sea level.</summary>
    public Length? Elevation { get; init; }

    /// <summary>Key of a climate in the data files.</summary>
    public string? Climate { get; init; }

    /// <summary>Twelve months of the author's own, January first, in place of a climate; empty otherwise.</summary>
    public Sequence<SiteMonth> Months { get; init; }

    /// <summary>Coming days that somebody has a forecast of, each once; in any order.</summary>
    public Sequence<SiteDay> Forecast { get; init; }

    /// <summary>The skyline round the house, clockwise, straight between the points sighted; empty where nothing stands in the sun's way.</summary>
    public Sequence<HorizonPoint> Horizon { get; init; }

    /// <summary>Outside grade against the finished floor, negative below it; the highest grade around the wall.</summary>
    public Length? Grade { get; init; }

    /// <summary>Edition of the loading code: <c>asce7-16</c>, <c>asce7-22</c>, <c>en1990</c>.</summary>
    public string? Loads { get; init; }

    /// <summary>Ground snow load of that edition.</summary>
    public Stress? GroundSnow { get; init; }

    /// <summary>Basic wind speed of that edition.</summary>
    public Speed? WindSpeed { get; init; }

    /// <summary>Wind exposure category or terrain category.</summary>
    public string? Exposure { get; init; }

    /// <summary>Design spectral acceleration at short periods, as a share of g.</summary>
    public double? SeismicSds { get; init; }

    /// <summary>Design spectral acceleration at one second, as a share of g.</summary>
    public double? SeismicSd1 { get; init; }

    /// <summary>Mapped spectral acceleration at one second, as a share of g.</summary>
    public double? SeismicS1 { get; init; }

    /// <summary>Site class, <c>D</c>.</summary>
    public string? SiteClass { get; init; }

    /// <summary>Risk category, <c>II</c>.</summary>
    public string? RiskCategory { get; init; }

    /// <summary>Flood zone as the office states it, <c>X</c>.</summary>
    public string? FloodZone { get; init; }

    /// <summary>Probability of termites as the office states it.</summary>
    public string? Termites { get; init; }

    /// <summary>Weathering of concrete and masonry as the office states it.</summary>
    public string? Weathering { get; init; }

    /// <summary>Climate zone of the energy code, <c>5B</c>.</summary>
    public string? EnergyZone { get; init; }

    /// <summary>Whether the office asks for an ice barrier under the roofing, in its words.</summary>
    public string? IceBarrier { get; init; }

    /// <summary>Depth that frost reaches.</summary>
    public Length? FrostDepth { get; init; }

    /// <summary>Allowable bearing pressure of the ground.</summary>
    public Stress? SoilBearing { get; init; }

    /// <summary>What the ground under the trench is.</summary>
    public Soil? Soil { get; init; }

    /// <summary>How cold the winters are: an estimate of the depth of frost is offered from it.</summary>
    public Freezing? Freezing { get; init; }

    /// <summary>Fall of the finished ground away from the wall.</summary>
    public Slope? GroundFall { get; init; }

    /// <summary>Whom to call and how to be found; null where nobody wrote it down.</summary>
    public Emergency? Emergency { get; init; }

    /// <summary>Boundaries and what else lies on the plot; null where nobody has measured it.</summary>
    public Plot? Plot { get; init; }
}

/// <summary>The mean of one month, as a weather service prints it.</summary>
/// <param name="High">Mean of the days' highest temperature.</param>
/// <param name="Low">Mean of the days' lowest temperature.</param>
/// <param name="DewPoint">Mean dew point.</param>
/// <param name="Wind">Mean wind 10 m above open ground.</param>
/// <param name="Sun">Mean of a day's sun on a level square metre, MJ; a kWh is 3.6 MJ.</param>
/// <param name="Rain">Of the whole month.</param>
/// <param name="WetDays">Days with rain.</param>
public sealed record SiteMonth(Temperature High, Temperature Low, Temperature DewPoint, Speed Wind, double Sun, Length Rain, double WetDays);

/// <summary>The ground under the trench.</summary>
public sealed record Soil
{
    /// <summary>Class of presumptive tables: <c>bedrock</c>, <c>foliated-rock</c>, <c>gravel</c>, <c>sand</c>, <c>clay</c>.</summary>
    public string? Class { get; init; }

    /// <summary>Angle of friction, from a test.</summary>
    public Angle? Friction { get; init; }

    /// <summary>Cohesion, from a test.</summary>
    public Stress? Cohesion { get; init; }

    /// <summary>Density as it lies, moist.</summary>
    public Density? Density { get; init; }
}

/// <summary>The winters of the place. An index of a cold winter, one in thirty, not of a mean one.</summary>
/// <param name="DegreeDays">Freezing index of the air, K days.</param>
/// <param name="Days">Length of the freezing season, days.</param>
/// <param name="MeanTemperature">Mean of the year.</param>
/// <param name="Ground">Typical ground that it goes into: <c>gravel</c> or <c>silt</c>.</param>
/// <param name="Surface"><c>turf</c>, <c>bare</c> or <c>snow</c>.</param>
public sealed record Freezing(double DegreeDays, double Days, Temperature MeanTemperature, string Ground = "silt", string Surface = "bare");
