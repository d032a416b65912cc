namespace Clomwright.Numerics.Conduction;

/// <summary>The air of one side of a section, with the resistance between it and a surface by how the surface lies.</summary>
/// <param name="Temperature">Of the air, any unit of temperature.</param>
/// <param name="Beside">Of an upright surface, m2 K/W; 0 holds the surface at the air's temperature.</param>
/// <param name="Below">Of a surface that lies under the air, m2 K/W.</param>
/// <param name="Above">Of a surface that lies over the air, m2 K/W.</param>
public readonly record struct SectionAir(double Temperature, double Beside, double Below, double Above)
{
    /// <summary>The same resistance whichever way the surface lies.</summary>
    public static SectionAir Even(double temperature, double resistance) => new(temperature, resistance, resistance, resistance);
}

/// <summary>A piece of surface between a cell and air.</summary>
/// <param name="Air">Which air.</param>
/// <param name="X">Its middle, m.</param>
/// <param name="Y">Its middle, m.</param>
/// <param name="Length">m.</param>
/// <param name="Upright">Whether it stands upright.</param>
/// <param name="Temperature">Of the surface.</param>
/// <param name="Flow">From the air into the section, W for each metre out of the plane.</param>
public readonly record struct SectionSurface(int Air, double X, double Y, double Length, bool Upright, double Temperature, double Flow);
