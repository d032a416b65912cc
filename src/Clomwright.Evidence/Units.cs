using static Clomwright.Evidence.UnitSystem;

namespace Clomwright.Evidence;

/// <summary>The units that people may write, and no others.</summary>
/// <remarks>
/// Exact factors: the foot and pound of the 1959 international yard and pound agreement, the US gallon of 231 in3 and the standard
/// acceleration 9.80665 m/s2, as tabulated in NIST SP 811 (2008), appendix B. A lb of force is a lbf; ton is left out because
/// there are three of them.
/// </remarks>
public static class Units
{
    private const double Foot1 = 0.3048;
    private const double Inch1 = 0.0254;
    private const double Pound1 = 0.45359237;
    private const double PoundForce1 = Pound1 * 9.80665;

    /// <summary>Inch.</summary>
    public static Unit Inch { get; } = new("in", Dimension.Length, Imperial, Inch1, ["\"", "inch", "inches"]);

    /// <summary>Foot.</summary>
    public static Unit Foot { get; } = new("ft", Dimension.Length, Imperial, Foot1, ["'", "foot", "feet"]);

    /// <summary>Millimetre.</summary>
    public static Unit Millimetre { get; } = new("mm", Dimension.Length, Metric, 0.001, []);

    /// <summary>Centimetre.</summary>
    public static Unit Centimetre { get; } = new("cm", Dimension.Length, Metric, 0.01, []);

    /// <summary>Metre.</summary>
    public static Unit Metre { get; } = new("m", Dimension.Length, Metric, 1, []);

    /// <summary>Every unit, those of one dimension together.</summary>
    public static Sequence<Unit> All { get; } =
    [
        new("%", Dimension.Fraction, Metric, 0.01, ["per cent", "percent"]),

        Inch, Foot, Millimetre, Centimetre, Metre,

        new("m2", Dimension.Area, Metric, 1, ["m²"]),
        new("cm2", Dimension.Area, Metric, 1e-4, ["cm²"]),
        new("mm2", Dimension.Area, Metric, 1e-6, ["mm²"]),
        new("ft2", Dimension.Area, Imperial, Foot1 * Foot1, ["ft²", "sq ft"]),
        new("in2", Dimension.Area, Imperial, Inch1 * Inch1, ["in²", "sq in"]),

        new("m3", Dimension.Volume, Metric, 1, ["m³"]),
        new("L", Dimension.Volume, Metric, 0.001, ["l", "litre", "litres", "liter", "liters"]),
        new("ft3", Dimension.Volume, Imperial, Foot1 * Foot1 * Foot1, ["ft³", "cu ft"]),
        new("yd3", Dimension.Volume, Imperial, 27 * Foot1 * Foot1 * Foot1, ["yd³", "cu yd"]),
        new("in3", Dimension.Volume, Imperial, Inch1 * Inch1 * Inch1, ["in³", "cu in"]),
        new("gal", Dimension.Volume, Imperial, 231 * Inch1 * Inch1 * Inch1, ["gallon", "gallons"]),

        new("kg", Dimension.Mass, Metric, 1, []),
        new("g", Dimension.Mass, Metric, 0.001, []),
        new("t", Dimension.Mass, Metric, 1000, ["tonne", "tonnes"]),
        new("lb", Dimension.Mass, Imperial, Pound1, ["lbs", "pound", "pounds"]),
        new("oz", Dimension.Mass, Imperial, Pound1 / 16, []),

        new("N", Dimension.Force, Metric, 1, []),
        new("kN", Dimension.Force, Metric, 1000, []),
        new("lbf", Dimension.Force, Imperial, PoundForce1, ["lb", "lbs"]),
        new("kip", Dimension.Force, Imperial, 1000 * PoundForce1, ["kips"]),

        new("N/m", Dimension.LineLoad, Metric, 1, []),
        new("kN/m", Dimension.LineLoad, Metric, 1000, []),
        new("lbf/ft", Dimension.LineLoad, Imperial, PoundForce1 / Foot1, ["lb/ft", "plf"]),

        .. Pressures(Dimension.Stress),
        .. Pressures(Dimension.AreaLoad),

        new("N m", Dimension.Moment, Metric, 1, ["Nm", "N.m"]),
        new("kN m", Dimension.Moment, Metric, 1000, ["kNm", "kN.m"]),
        new("lbf ft", Dimension.Moment, Imperial, PoundForce1 * Foot1, ["lb ft", "ft lb", "ft lbf", "lbf.ft"]),
        new("lbf in", Dimension.Moment, Imperial, PoundForce1 * Inch1, ["lb in", "in lb", "in lbf", "lbf.in"]),

        new("deg", Dimension.Angle, Metric, Math.PI / 180, ["°", "degree", "degrees"]),
        new("rad", Dimension.Angle, Metric, 1, []),

        new("kg/m3", Dimension.Density, Metric, 1, ["kg/m³"]),
        new("lb/ft3", Dimension.Density, Imperial, Pound1 / (Foot1 * Foot1 * Foot1), ["lb/ft³", "pcf"]),

        new("m/s", Dimension.Speed, Metric, 1, []),
        new("km/h", Dimension.Speed, Metric, 1 / 3.6, ["kph"]),
        new("mph", Dimension.Speed, Imperial, 5280 * Foot1 / 3600, []),

        new("C", Dimension.Temperature, Metric, 1, ["°C", "degC"]),
        new("F", Dimension.Temperature, Imperial, 5.0 / 9, ["°F", "degF"], -160.0 / 9),

        new("days", Dimension.Days, Metric, 1, ["day", "d"]),

        new("s", Dimension.Time, Metric, 1, []),
        new("min", Dimension.Time, Metric, 60, []),
        new("h", Dimension.Time, Metric, 3600, ["hour", "hours"]),
    ];

    /// <summary>The units in which a dimension may be written; none for plain numbers, counts and slopes.</summary>
    public static IEnumerable<Unit> Of(Dimension dimension) => All.Where(u => u.Dimension == dimension);

    /// <summary>The unit of a dimension that a spelling means, or null.</summary>
    public static Unit? Find(Dimension dimension, string name) => All.FirstOrDefault(u => u.Dimension == dimension && u.Spells(name));

    private static Unit[] Pressures(Dimension dimension) =>
    [
        new("Pa", dimension, Metric, 1, ["N/m2", "N/m²"]),
        new("kPa", dimension, Metric, 1e3, ["kN/m2", "kN/m²"]),
        new("MPa", dimension, Metric, 1e6, ["N/mm2", "N/mm²"]),
        new("psi", dimension, Imperial, PoundForce1 / (Inch1 * Inch1), ["lbf/in2", "lb/in2"]),
        new("psf", dimension, Imperial, PoundForce1 / (Foot1 * Foot1), ["lbf/ft2", "lb/ft2"]),
    ];
}
