namespace Clomwright.Evidence;

/// <summary>A number with what it measures, in the SI unit of its <see cref="Dimension"/> (angles in radians, days in days).</summary>
public readonly record struct Amount(double Si, Dimension Dimension)
{
    /// <summary>A plain ratio or number.</summary>
    public static Amount Number(double value) => new(value, Dimension.Number);

    /// <summary>A count.</summary>
    public static Amount Count(long value) => new(value, Dimension.Count);

    /// <summary>A share of one.</summary>
    public static Amount Fraction(double value) => new(value, Dimension.Fraction);

    /// <summary>A computed length in metres.</summary>
    public static Amount Metres(double value) => new(value, Dimension.Length);

    /// <summary>A written length.</summary>
    public static implicit operator Amount(Length value) => new(value.Metres, Dimension.Length);

    /// <summary>An angle.</summary>
    public static implicit operator Amount(Angle value) => new(value.Radians, Dimension.Angle);

    /// <summary>A slope.</summary>
    public static implicit operator Amount(Slope value) => new(value.RiseOverRun, Dimension.Slope);

    /// <summary>An area.</summary>
    public static implicit operator Amount(Area value) => new(value.SquareMetres, Dimension.Area);

    /// <summary>A volume.</summary>
    public static implicit operator Amount(Volume value) => new(value.CubicMetres, Dimension.Volume);

    /// <summary>A mass.</summary>
    public static implicit operator Amount(Mass value) => new(value.Kilograms, Dimension.Mass);

    /// <summary>A force.</summary>
    public static implicit operator Amount(Force value) => new(value.Newtons, Dimension.Force);

    /// <summary>A stress.</summary>
    public static implicit operator Amount(Stress value) => new(value.Pascals, Dimension.Stress);

    /// <summary>A speed.</summary>
    public static implicit operator Amount(Speed value) => new(value.MetresPerSecond, Dimension.Speed);

    /// <summary>A density.</summary>
    public static implicit operator Amount(Density value) => new(value.KilogramsPerCubicMetre, Dimension.Density);

    /// <summary>A temperature.</summary>
    public static implicit operator Amount(Temperature value) => new(value.Celsius, Dimension.Temperature);
}
