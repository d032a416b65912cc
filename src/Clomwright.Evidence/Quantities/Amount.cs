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
    public static implicit operator Amount(Length value) => value.Amount;

    /// <summary>An angle.</summary>
    public static implicit operator Amount(Angle value) => value.Amount;

    /// <summary>A slope.</summary>
    public static implicit operator Amount(Slope value) => value.Amount;

    /// <summary>A share.</summary>
    public static implicit operator Amount(Share value) => value.Amount;

    /// <summary>An area.</summary>
    public static implicit operator Amount(Area value) => value.Amount;

    /// <summary>A volume.</summary>
    public static implicit operator Amount(Volume value) => value.Amount;

    /// <summary>A mass.</summary>
    public static implicit operator Amount(Mass value) => value.Amount;

    /// <summary>A force.</summary>
    public static implicit operator Amount(Force value) => value.Amount;

    /// <summary>A stress.</summary>
    public static implicit operator Amount(Stress value) => value.Amount;

    /// <summary>A speed.</summary>
    public static implicit operator Amount(Speed value) => value.Amount;

    /// <summary>A density.</summary>
    public static implicit operator Amount(Density value) => value.Amount;

    /// <summary>A temperature.</summary>
    public static implicit operator Amount(Temperature value) => value.Amount;
}
