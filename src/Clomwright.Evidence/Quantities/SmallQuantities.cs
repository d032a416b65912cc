namespace Clomwright.Evidence;

/// <summary>A plane angle as written, in degrees. Bearings run clockwise from north.</summary>
public readonly record struct Angle(double Degrees) : IQuantity
{
    /// <summary>The angle in radians, for engines.</summary>
    public double Radians => Degrees * Math.PI / 180;

    /// <inheritdoc/>
    public Amount Amount => new(Radians, Dimension.Angle);

    /// <summary>The angle of a computed value in radians.</summary>
    public static Angle FromRadians(double radians) => new(radians * 180 / Math.PI);
}

/// <summary>Rise over run (or, for a taper, horizontal over vertical): 0.04 is 4 %.</summary>
public readonly record struct Slope(double RiseOverRun) : IQuantity
{
    /// <inheritdoc/>
    public Amount Amount => new(RiseOverRun, Dimension.Slope);
}

/// <summary>A share of one, written in per cent: 0.18 is 18 %.</summary>
public readonly record struct Share(double OfOne) : IQuantity
{
    /// <inheritdoc/>
    public Amount Amount => new(OfOne, Dimension.Fraction);
}

/// <summary>Area in square metres.</summary>
public readonly record struct Area(double SquareMetres) : IQuantity
{
    /// <inheritdoc/>
    public Amount Amount => new(SquareMetres, Dimension.Area);
}

/// <summary>Volume in cubic metres.</summary>
public readonly record struct Volume(double CubicMetres) : IQuantity
{
    /// <inheritdoc/>
    public Amount Amount => new(CubicMetres, Dimension.Volume);
}

/// <summary>Mass in kilograms.</summary>
public readonly record struct Mass(double Kilograms) : IQuantity
{
    /// <inheritdoc/>
    public Amount Amount => new(Kilograms, Dimension.Mass);
}

/// <summary>Force in newtons.</summary>
public readonly record struct Force(double Newtons) : IQuantity
{
    /// <inheritdoc/>
    public Amount Amount => new(Newtons, Dimension.Force);
}

/// <summary>Pressure, stress or load on an area, in pascals.</summary>
public readonly record struct Stress(double Pascals) : IQuantity
{
    /// <inheritdoc/>
    public Amount Amount => new(Pascals, Dimension.Stress);
}

/// <summary>Speed in metres per second.</summary>
public readonly record struct Speed(double MetresPerSecond) : IQuantity
{
    /// <inheritdoc/>
    public Amount Amount => new(MetresPerSecond, Dimension.Speed);
}

/// <summary>Density in kilograms per cubic metre.</summary>
public readonly record struct Density(double KilogramsPerCubicMetre) : IQuantity
{
    /// <inheritdoc/>
    public Amount Amount => new(KilogramsPerCubicMetre, Dimension.Density);
}

/// <summary>Temperature in degrees Celsius.</summary>
public readonly record struct Temperature(double Celsius) : IQuantity
{
    /// <inheritdoc/>
    public Amount Amount => new(Celsius, Dimension.Temperature);
}
