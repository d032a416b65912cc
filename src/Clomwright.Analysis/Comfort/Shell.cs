using Clomwright.Analysis.Weather;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Comfort;

/// <summary>All that the balance of a house needs: parts, edges, air, people, sun.</summary>
internal sealed class Shell
{
    private const double AirHeat = 1200;
    private readonly ComfortNumbers numbers;
    private readonly Building.Comfort comfort;
    private readonly HouseGeometry geometry;
    private readonly Lazy<Sequence<HeatEdge>> edges;
    private (YearWeather Weather, (double, double, double) Swing)? swing;

    public Shell(HouseGeometry geometry, ShellParts parts, ComfortNumbers numbers, SolvedSections sections)
    {
        (this.geometry, this.numbers, comfort, Parts) = (geometry, numbers, geometry.House.Comfort, parts);
        Windows = parts.Windows();
        Elements = parts.Elements(wetRoof: true, Windows);
        Junctions = new(geometry, parts, numbers, sections);
        edges = new(Junctions.All);
        Ground = parts.GroundHeat();
        var radius = Math.Sqrt(geometry.Curve.Area / Math.PI);
        Volume = geometry.Curve.Area * (geometry.Wall.Top.Metres + (geometry.House.BondBeam?.Depth.Metres ?? 0) + radius * Math.Tan(parts.Pitch) / 3);
        var eye = Elements.FirstOrDefault(e => e is { Name: "eye" });
        EyeSun = eye is null ? 0 : eye.Area * (1 - numbers["comfort-frame-share"]) * parts.Glass(null).Sun.Value * numbers["comfort-glass-angle"];
        BottleSun = parts.BottleArea * numbers["comfort-bottle-sun"];
    }

    public ShellParts Parts { get; }

    public Sequence<WindowHeat> Windows { get; }

    public Sequence<RoomElement> Elements { get; }

    public Junctions Junctions { get; }

    public Sequence<HeatEdge> Edges => edges.Value;

    public GroundHeat Ground { get; }

    /// <summary>Of air in the room, m3: up to the roof, a cone over its walls.</summary>
    public double Volume { get; }

    /// <summary>W/K.</summary>
    public double EdgeLoss => Edges.Sum(e => e.Length * e.Loss);

    public double EyeSun { get; }

    public double BottleSun { get; }

    public double People => comfort.People ?? numbers["comfort-people"];

    public double HeatEach => numbers["comfort-heat-each"];

    public double OtherHeat => numbers["comfort-other-heat"];

    public double Airing => comfort.Airing ?? numbers["comfort-airing"];

    public double AiringOpen => numbers["comfort-airing-open"];

    public double OpenAbove => numbers["comfort-open-above"];

    public double Warm => comfort.Warm?.Celsius ?? numbers["comfort-warm"];

    public double SunFloor => numbers["comfort-sun-floor"];

    public double FurnitureMass => numbers["comfort-furniture-mass"];

    /// <summary>Changed air, W/K.</summary>
    public double AirLoss => Airing * Volume * AirHeat / 3600;

    /// <summary>All, W/K.</summary>
    public double Loss => Elements.Sum(e => e.Area * e.Transmittance) + EdgeLoss + AirLoss;

    /// <summary>Azimuth that a window faces, rad.</summary>
    public double Facing(int window)
    {
        var normal = geometry.Openings[window].Normal;
        return Math.Atan2(normal.East, normal.North);
    }

    /// <summary>Share of an upright face that the sun reaches under the eave.</summary>
    public double WallLit(in SunPlace sun, double facing, Skyline skyline)
    {
        var cos = Math.Cos(sun.Azimuth - facing);
        if (cos <= 0.01 || !skyline.IsClear(sun))
        {
            return 0;
        }

        var (low, high) = (geometry.Wall.Base.Metres, geometry.Wall.Top.Metres);
        return Parts.Eave is { } eave ? Math.Clamp((eave.Reach(geometry.Wall.OutsideOffset(high), Math.Tan(sun.Elevation) / cos) - low) / (high - low), 0, 1) : 1;
    }

    /// <summary>Mean, swing and coldest day of the year's temperatures: their first harmonic.</summary>
    public (double Mean, double Swing, double Coldest) YearSwing(YearWeather weather)
    {
        if (swing is { } known && ReferenceEquals(known.Weather, weather))
        {
            return known.Swing;
        }

        var (cos, sin, mean) = (0.0, 0.0, weather.Days.Average(d => d.Mean));
        for (var d = 0; d < weather.Days.Count; d++)
        {
            var (s, c) = Math.SinCos(2 * Math.PI * d / 365);
            (cos, sin) = (cos + 2 * c * weather.Days[d].Mean / weather.Days.Count, sin + 2 * s * weather.Days[d].Mean / weather.Days.Count);
        }

        var result = (mean, Math.Sqrt(cos * cos + sin * sin), 365 * (Math.Atan2(sin, cos) + Math.PI) / (2 * Math.PI));
        swing = (weather, result);
        return result;
    }

    /// <summary>Firewood for an amount of heat.</summary>
    public WoodNeed Wood(double heat)
    {
        var (water, stove) = (numbers["comfort-wood-water"], comfort.Stove?.OfOne ?? numbers["comfort-stove"]);
        // Of a kilogram as it lies, water is a share; what burns is the rest, less the heat that drives the water off.
        var each = (1 - water) * numbers["comfort-wood-heat"] - water * 2.44e6;
        var mass = heat / (each * stove);
        var density = (ThermalMaterial.Wood(comfort.Wood) ?? ThermalMaterial.Wood("douglas-fir")!).Value;
        return new(mass, mass * (1 - water) / density / numbers["comfort-stack"], ThermalMaterial.Wood(comfort.Wood) is null ? "douglas-fir" : comfort.Wood!, each, stove);
    }
}
