namespace Clomwright.Evidence;

/// <summary>A plane angle as written, in degrees. Bearings run clockwise from north.</summary>
public readonly record struct Angle(double Degrees)
{
    /// <summary>The angle in radians, for engines.</summary>
    public double Radians => Degrees * Math.PI / 180;

    /// <summary>The angle of a computed value in radians.</summary>
    public static Angle FromRadians(double radians) => new(radians * 180 / Math.PI);
}

/// <summary>Rise over run (or, for a taper, horizontal over vertical): 0.04 is 4 %.</summary>
public readonly record struct Slope(double RiseOverRun);

/// <summary>Area in square metres.</summary>
public readonly record struct Area(double SquareMetres);

/// <summary>Volume in cubic metres.</summary>
public readonly record struct Volume(double CubicMetres);

/// <summary>Mass in kilograms.</summary>
public readonly record struct Mass(double Kilograms);

/// <summary>Force in newtons.</summary>
public readonly record struct Force(double Newtons);

/// <summary>Pressure, stress or load on an area, in pascals.</summary>
public readonly record struct Stress(double Pascals);

/// <summary>Speed in metres per second.</summary>
public readonly record struct Speed(double MetresPerSecond);

/// <summary>Density in kilograms per cubic metre.</summary>
public readonly record struct Density(double KilogramsPerCubicMetre);

/// <summary>Temperature in degrees Celsius.</summary>
public readonly record struct Temperature(double Celsius);
