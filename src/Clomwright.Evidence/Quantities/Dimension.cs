namespace Clomwright.Evidence;

/// <summary>What a computed number measures. Its SI unit is fixed; <see cref="Units"/> says how people write it.</summary>
public enum Dimension
{
    /// <summary>A plain number or ratio.</summary>
    Number,

    /// <summary>A count of whole things.</summary>
    Count,

    /// <summary>A share of one, shown as per cent.</summary>
    Fraction,

    /// <summary>Metres.</summary>
    Length,

    /// <summary>Square metres.</summary>
    Area,

    /// <summary>Cubic metres.</summary>
    Volume,

    /// <summary>Kilograms.</summary>
    Mass,

    /// <summary>Newtons.</summary>
    Force,

    /// <summary>Newtons per metre.</summary>
    LineLoad,

    /// <summary>Pascals, as stress in a material.</summary>
    Stress,

    /// <summary>Pascals, as a load on an area.</summary>
    AreaLoad,

    /// <summary>Newton metres.</summary>
    Moment,

    /// <summary>Radians.</summary>
    Angle,

    /// <summary>Rise over run.</summary>
    Slope,

    /// <summary>Kilograms per cubic metre.</summary>
    Density,

    /// <summary>Metres per second.</summary>
    Speed,

    /// <summary>Degrees Celsius.</summary>
    Temperature,

    /// <summary>Days.</summary>
    Days,

    /// <summary>Seconds.</summary>
    Time,

    /// <summary>Watts.</summary>
    Power,

    /// <summary>Joules, printed as kilowatt hours.</summary>
    Energy,

    /// <summary>Watts per kelvin.</summary>
    HeatLoss,

    /// <summary>Watts per square metre and kelvin.</summary>
    Transmittance,

    /// <summary>Square metres and kelvins per watt.</summary>
    Resistance,

    /// <summary>Watts per metre and kelvin: of a material, or of a metre of edge.</summary>
    Conductivity,
}
