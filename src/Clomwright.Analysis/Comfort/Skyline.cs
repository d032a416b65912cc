using Clomwright.Analysis.Weather;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Comfort;

/// <summary>What stands in the sun's way far off: the horizon as sighted.</summary>
/// <param name="Points">Bearing and height, rad, by bearing from 0.</param>
public sealed record Skyline(Sequence<(double Bearing, double Angle)> Points)
{
    /// <summary>The skyline of a site.</summary>
    public static Skyline Of(Site site)
    {
        ArgumentNullException.ThrowIfNull(site);
        return new(site.Horizon.Select(p => (Turned(p.Bearing.Radians), p.Angle.Radians)).OrderBy(p => p.Item1).ToSequence());
    }

    /// <summary>Height of the skyline at a bearing, rad: straight between the points round the circle; 0 without points.</summary>
    public double At(double bearing)
    {
        if (Points.Count == 0)
        {
            return 0;
        }

        var b = Turned(bearing);
        var after = 0;
        while (after < Points.Count && Points[after].Bearing < b)
        {
            after++;
        }

        var (low, high) = (Points[(after + Points.Count - 1) % Points.Count], Points[after % Points.Count]);
        var width = Turned(high.Bearing - low.Bearing);
        return width == 0 ? low.Angle : low.Angle + Turned(b - low.Bearing) / width * (high.Angle - low.Angle);
    }

    /// <summary>Whether the sun stands over it.</summary>
    public bool IsClear(in SunPlace sun) => sun.Elevation > 0 && sun.Elevation > At(sun.Azimuth);

    private static double Turned(double angle)
    {
        var a = angle % (2 * Math.PI);
        return a < 0 ? a + 2 * Math.PI : a;
    }
}

/// <summary>The edge of the roof over the wall: everything above it is in shade of the roof.</summary>
/// <param name="Height">Of the lowest point of the eave, m from the finished floor.</param>
/// <param name="Offset">How far out it stands, m from the inside curve.</param>
public readonly record struct EaveEdge(double Height, double Offset)
{
    /// <summary>Highest point at a depth of the wall that the sun reaches under the eave, m; the wall is taken as straight.</summary>
    /// <param name="w">Depth, outward from the inside curve, m.</param>
    /// <param name="rise">Rise of the ray for each metre outward.</param>
    public double Reach(double w, double rise) => Height - Math.Max(0, Offset - w) * rise;
}

/// <summary>Sun through one opening: its real depth, splays and shape, the eave and the horizon.</summary>
public sealed class OpeningSun
{
    private const int Columns = 24;
    private readonly LightShaft shaft;
    private readonly EaveEdge? eave;
    private readonly Skyline skyline;

    /// <summary>An opening.</summary>
    /// <param name="shaft">How it goes through the wall.</param>
    /// <param name="eave">Over it; null without a roof.</param>
    /// <param name="skyline">Before it.</param>
    public OpeningSun(LightShaft shaft, EaveEdge? eave, Skyline skyline)
    {
        (this.shaft, this.eave, this.skyline) = (shaft, eave, skyline);
        Sky = SkySeen();
    }

    /// <summary>How it goes through the wall.</summary>
    public LightShaft Shaft => shaft;

    /// <summary>Of the light of an even sky that an open upright pane would have, the share that reaches the glass.</summary>
    public double Sky { get; }

    /// <summary>Share of the glass that the sun itself reaches, 0 to 1.</summary>
    public double Lit(in SunPlace sun) => skyline.IsClear(sun) ? Reached(sun) : 0;

    /// <summary>The stripes of glass that the sun reaches and that also clear the reveal inside, from one jamb to the other.</summary>
    internal IEnumerable<(double U, double Width, double Low, double High)> Stripes(SunPlace sun)
    {
        if (!skyline.IsClear(sun) || Ray(sun) is not { } ray)
        {
            yield break;
        }

        var half = shaft.HalfWidth(shaft.Glass);
        for (var i = 0; i < Columns; i++)
        {
            var u = half * (2 * (i + 0.5) / Columns - 1);
            var (low, high) = Column(u, ray);
            var inward = shaft.Glass - shaft.Inside;
            var (roomLow, roomHigh) = shaft.HeightsAt((u - inward * ray.Turn) / shaft.HalfWidth(shaft.Inside));
            (low, high) = (Math.Max(low, roomLow + inward * ray.Rise), Math.Min(high, roomHigh + inward * ray.Rise));
            if (high > low)
            {
                yield return (u, 2 * half / Columns, low, high);
            }
        }
    }

    private double Reached(in SunPlace sun)
    {
        if (Ray(sun) is not { } ray)
        {
            return 0;
        }

        var half = shaft.HalfWidth(shaft.Glass);
        var (lit, whole) = (0.0, 0.0);
        for (var i = 0; i < Columns; i++)
        {
            var u = half * (2 * (i + 0.5) / Columns - 1);
            var (low, high) = Column(u, ray);
            lit += Math.Max(0, high - low);
            var (from, to) = shaft.HeightsAt(u / half);
            whole += to - from;
        }

        return whole > 0 ? lit / whole : 0;
    }

    private (double Low, double High) Column(double u, (double Turn, double Rise) ray)
    {
        var out_ = shaft.Outside - shaft.Glass;
        var (low, high) = shaft.HeightsAt(u / shaft.HalfWidth(shaft.Glass));
        var (faceLow, faceHigh) = shaft.HeightsAt((u + out_ * ray.Turn) / shaft.HalfWidth(shaft.Outside));
        (low, high) = (Math.Max(low, faceLow - out_ * ray.Rise), Math.Min(high, faceHigh - out_ * ray.Rise));
        return eave is { } edge ? (low, Math.Min(high, edge.Reach(shaft.Glass, ray.Rise))) : (low, high);
    }

    /// <summary>Towards the sun, for each metre outward: along the wall and up; null behind the wall.</summary>
    private (double Turn, double Rise)? Ray(in SunPlace sun)
    {
        var beside = sun.Azimuth - shaft.Facing;
        var cos = Math.Cos(beside);
        return cos > 0.01 && sun.Elevation > 0 ? (Math.Tan(beside), Math.Tan(sun.Elevation) / cos) : null;
    }

    private double SkySeen()
    {
        const int around = 18, up = 9;
        var (seen, whole) = (0.0, 0.0);
        for (var i = 0; i < around; i++)
        {
            for (var j = 0; j < up; j++)
            {
                var (beside, height) = (((i + 0.5) / around - 0.5) * Math.PI, (j + 0.5) / up * Math.PI / 2);
                var weight = Math.Cos(height) * Math.Cos(height) * Math.Cos(beside);
                whole += weight;
                seen += weight * Lit(new SunPlace(height, shaft.Facing + beside));
            }
        }

        return seen / whole;
    }
}
