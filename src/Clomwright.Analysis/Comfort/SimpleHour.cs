namespace Clomwright.Analysis.Comfort;

/// <summary>One hour of a house of five resistances and one capacity: ISO 13790, annex C (its symbols), from memory. A second opinion beside the house's own balance.</summary>
/// <param name="Floor">A_f, m2.</param>
/// <param name="Mass">A_m, effective area of mass, m2.</param>
/// <param name="Capacity">C_m, J/K.</param>
/// <param name="Windows">H_w, W/K.</param>
/// <param name="Opaque">H_op, W/K.</param>
/// <param name="Air">H_ve, W/K.</param>
public readonly record struct SimpleHour(double Floor, double Mass, double Capacity, double Windows, double Opaque, double Air)
{
    private const double SurfaceAir = 3.45, MassSurface = 9.1, SurfacesOfFloor = 4.5;

    private double Total => SurfacesOfFloor * Floor;

    private double His => SurfaceAir * Total;

    private double Hms => MassSurface * Mass;

    private double Hem => 1 / (1 / Opaque - 1 / Hms);

    private double H1 => 1 / (1 / Air + 1 / His);

    private double H2 => H1 + Windows;

    private double H3 => 1 / (1 / H2 + 1 / Hms);

    /// <summary>One hour.</summary>
    /// <param name="before">Of the mass at its start, C.</param>
    /// <param name="outside">C.</param>
    /// <param name="people">Heat of people and things, W.</param>
    /// <param name="sun">W.</param>
    /// <param name="heating">W.</param>
    public SimpleState Step(double before, double outside, double people, double sun, double heating)
    {
        var air = people / 2;
        var rest = people / 2 + sun;
        var mass = Mass / Total * rest;
        var surface = (1 - Mass / Total - Windows / (MassSurface * Total)) * rest;
        var supplied = outside + (air + heating) / Air;
        var all = mass + Hem * outside + H3 * (surface + Windows * outside + H1 * supplied) / H2;
        var after = (before * (Capacity / 3600 - (H3 + Hem) / 2) + all) / (Capacity / 3600 + (H3 + Hem) / 2);
        var mean = (before + after) / 2;
        var surfaces = (Hms * mean + surface + Windows * outside + H1 * supplied) / (Hms + Windows + H1);
        var airs = (His * surfaces + Air * outside + air + heating) / (His + Air);
        return new(after, mean, surfaces, airs);
    }

    /// <summary>Heating that holds the air at a temperature through an hour, W; none where it is warm enough.</summary>
    public double Needed(double before, double outside, double people, double sun, double wanted)
    {
        var (cold, probe) = (Step(before, outside, people, sun, 0).Air, Step(before, outside, people, sun, 1000).Air);
        return cold >= wanted ? 0 : 1000 * (wanted - cold) / (probe - cold);
    }
}

/// <summary>Temperatures of the simple hour, C.</summary>
/// <param name="After">Of the mass at its end.</param>
/// <param name="Mass">Of the mass, mean of the hour.</param>
/// <param name="Surface">Of the surfaces.</param>
/// <param name="Air">Of the air.</param>
public readonly record struct SimpleState(double After, double Mass, double Surface, double Air)
{
    /// <summary>What a person feels: three parts of air to seven of surfaces.</summary>
    public double Felt => 0.3 * Air + 0.7 * Surface;
}
