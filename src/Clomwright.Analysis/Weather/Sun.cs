using Clomwright.Geometry.Solids;

namespace Clomwright.Analysis.Weather;

/// <summary>Where the sun stands.</summary>
/// <param name="Elevation">Above the horizon, rad, without refraction.</param>
/// <param name="Azimuth">Clockwise from north, rad.</param>
public readonly record struct SunPlace(double Elevation, double Azimuth)
{
    /// <summary>Unit direction to it.</summary>
    public SpacePoint Toward => new(Math.Cos(Elevation) * Math.Sin(Azimuth), Math.Cos(Elevation) * Math.Cos(Azimuth), Math.Sin(Elevation));

    /// <summary>Cosine of the angle between sun and the normal of an upright face; negative behind it.</summary>
    /// <param name="normal">Azimuth of the face's outward normal, rad.</param>
    public double OnUpright(double normal) => Math.Cos(Elevation) * Math.Cos(Azimuth - normal);
}

/// <summary>The sun's place, J. Meeus, Astronomical Algorithms (2nd edition 1998), chapters 12, 13 and 25, low accuracy (0.01 degree); from memory, checked against published places.</summary>
public static class Sun
{
    private const double Degree = Math.PI / 180;

    /// <summary>Days since noon of 1 January 4713 BC for a moment of the Gregorian calendar, universal time.</summary>
    public static double JulianDay(int year, int month, int day, double hour)
    {
        var (y, m) = month <= 2 ? (year - 1, month + 12) : (year, month);
        var century = Math.Floor(y / 100.0);
        return Math.Floor(365.25 * (y + 4716)) + Math.Floor(30.6001 * (m + 1)) + day + hour / 24 + 2 - century + Math.Floor(century / 4) - 1524.5;
    }

    /// <summary>Place of the sun.</summary>
    /// <param name="julianDay">Of universal time; the minute or so to dynamical time moves the sun by less than 0.001 degree.</param>
    /// <param name="latitude">rad.</param>
    /// <param name="longitude">Positive east, rad.</param>
    public static SunPlace At(double julianDay, double latitude, double longitude)
    {
        var t = (julianDay - 2451545.0) / 36525;
        var mean = 280.46646 + t * (36000.76983 + 0.0003032 * t);
        var anomaly = (357.52911 + t * (35999.05029 - 0.0001537 * t)) * Degree;
        var centre = (1.914602 - t * (0.004817 + 0.000014 * t)) * Math.Sin(anomaly) + (0.019993 - 0.000101 * t) * Math.Sin(2 * anomaly) + 0.000289 * Math.Sin(3 * anomaly);
        var node = (125.04 - 1934.136 * t) * Degree;
        var apparent = (mean + centre - 0.00569 - 0.00478 * Math.Sin(node)) * Degree;
        var tilt = (23.0 + 26.0 / 60 + 21.448 / 3600 - t * (46.8150 + t * (0.00059 - 0.001813 * t)) / 3600 + 0.00256 * Math.Cos(node)) * Degree;
        var ascension = Math.Atan2(Math.Cos(tilt) * Math.Sin(apparent), Math.Cos(apparent));
        var declination = Math.Asin(Math.Sin(tilt) * Math.Sin(apparent));
        var sidereal = (280.46061837 + 360.98564736629 * (julianDay - 2451545.0) + t * t * (0.000387933 - t / 38710000)) * Degree;
        return AtHourAngle(sidereal + longitude - ascension, declination, latitude);
    }

    /// <summary>Place of the sun by hour angle (0 at noon, positive after it) and declination, all rad.</summary>
    public static SunPlace AtHourAngle(double hourAngle, double declination, double latitude)
    {
        var elevation = Math.Asin(Math.Sin(latitude) * Math.Sin(declination) + Math.Cos(latitude) * Math.Cos(declination) * Math.Cos(hourAngle));
        var fromSouth = Math.Atan2(Math.Sin(hourAngle), Math.Cos(hourAngle) * Math.Sin(latitude) - Math.Tan(declination) * Math.Cos(latitude));
        var azimuth = (fromSouth + Math.PI) % (2 * Math.PI);
        return new(elevation, azimuth < 0 ? azimuth + 2 * Math.PI : azimuth);
    }
}
