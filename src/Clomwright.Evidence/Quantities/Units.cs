using static Clomwright.Evidence.UnitSystem;

namespace Clomwright.Evidence;

/// <summary>The units that people may write, and no others.</summary>
/// <remarks>
/// Exact factors: 1 yd = 0.9144 m and 1 lb = 0.45359237 kg (international agreement of 1959), the US gallon of 231 in3 and the
/// standard acceleration 9.80665 m/s2 (both from memory of NIST SP 811). A lb of force is a lbf; ton is left out because there are three.
/// </remarks>
public static class Units
{
    private const double InchM = 0.0254;
    private const double FootM = 0.3048;
    private const double PoundKg = 0.45359237;
    private const double PoundForceN = PoundKg * 9.80665;

    /// <summary>J: the Btu of the International Table, 4.1868 J to a calorie (from memory of NIST SP 811).</summary>
    private const double BtuJ = 4.1868 * 1000 * PoundKg / 1.8;

    /// <summary>Inch.</summary>
    public static Unit Inch { get; } = Us("in", Dimension.Length, InchM, "\"", "inch", "inches");

    /// <summary>Foot.</summary>
    public static Unit Foot { get; } = Us("ft", Dimension.Length, FootM, "'", "foot", "feet");

    /// <summary>Millimetre.</summary>
    public static Unit Millimetre { get; } = Part("mm", Dimension.Length, 1000);

    /// <summary>Centimetre.</summary>
    public static Unit Centimetre { get; } = Part("cm", Dimension.Length, 100);

    /// <summary>Metre.</summary>
    public static Unit Metre { get; } = Si("m", Dimension.Length, 1);

    /// <summary>Every unit, those of one dimension together.</summary>
    public static Sequence<Unit> All { get; } =
    [
        Part("%", Dimension.Fraction, 100, "percent", "per cent"),
        Si("of 1", Dimension.Fraction, 1),

        Inch, Foot, Millimetre, Centimetre, Metre,

        Si("m2", Dimension.Area, 1, "m²"),
        Part("cm2", Dimension.Area, 1e4, "cm²"),
        Part("mm2", Dimension.Area, 1e6, "mm²"),
        Us("ft2", Dimension.Area, FootM * FootM, "ft²", "sq ft"),
        Us("in2", Dimension.Area, InchM * InchM, "in²", "sq in"),

        Si("m3", Dimension.Volume, 1, "m³"),
        Part("L", Dimension.Volume, 1000, "l", "litre", "litres", "liter", "liters"),
        Us("ft3", Dimension.Volume, FootM * FootM * FootM, "ft³", "cu ft"),
        Us("yd3", Dimension.Volume, 27 * FootM * FootM * FootM, "yd³", "cu yd"),
        Us("in3", Dimension.Volume, InchM * InchM * InchM, "in³", "cu in"),
        Us("gal", Dimension.Volume, 231 * InchM * InchM * InchM, "gallon", "gallons"),

        Si("kg", Dimension.Mass, 1),
        Part("g", Dimension.Mass, 1000),
        Si("t", Dimension.Mass, 1000, "tonne", "tonnes"),
        Us("lb", Dimension.Mass, PoundKg, "lbs", "pound", "pounds"),
        Us("oz", Dimension.Mass, PoundKg / 16),

        Si("N", Dimension.Force, 1),
        Si("kN", Dimension.Force, 1e3),
        Us("lbf", Dimension.Force, PoundForceN, "lb", "lbs"),
        Us("kip", Dimension.Force, 1000 * PoundForceN, "kips"),

        Si("N/m", Dimension.LineLoad, 1),
        Si("kN/m", Dimension.LineLoad, 1e3),
        Us("lbf/ft", Dimension.LineLoad, PoundForceN / FootM, "lb/ft", "plf"),

        .. Pressures(Dimension.Stress),
        .. Pressures(Dimension.AreaLoad),

        Si("N m", Dimension.Moment, 1, "Nm", "N·m"),
        Si("kN m", Dimension.Moment, 1e3, "kNm", "kN·m"),
        Us("lbf ft", Dimension.Moment, PoundForceN * FootM, "lb ft", "ft lb", "ft lbf", "lbf·ft"),
        Us("lbf in", Dimension.Moment, PoundForceN * InchM, "lb in", "in lb", "in lbf", "lbf·in"),

        new("deg", Dimension.Angle, Metric, Math.PI, 180, 0, ["°", "degree", "degrees"]),
        Si("rad", Dimension.Angle, 1),

        Si("kg/m3", Dimension.Density, 1, "kg/m³"),
        Us("lb/ft3", Dimension.Density, PoundKg / (FootM * FootM * FootM), "lb/ft³", "pcf"),

        Si("m/s", Dimension.Speed, 1),
        new("km/h", Dimension.Speed, Metric, 1000, 3600, 0, ["kph"]),
        Us("mph", Dimension.Speed, 0.44704),

        Si("C", Dimension.Temperature, 1, "°C", "degC"),
        new("F", Dimension.Temperature, Imperial, 5, 9, 32, ["°F", "degF"]),

        Si("days", Dimension.Days, 1, "day", "d"),

        Si("s", Dimension.Time, 1),
        Si("min", Dimension.Time, 60),
        Si("h", Dimension.Time, 3600, "hour", "hours"),

        Si("W", Dimension.Power, 1),
        Si("kW", Dimension.Power, 1e3),
        Us("Btu/h", Dimension.Power, BtuJ / 3600),

        Si("J", Dimension.Energy, 1),
        Si("kWh", Dimension.Energy, 3.6e6),
        Us("kBtu", Dimension.Energy, 1e3 * BtuJ),

        Si("W/K", Dimension.HeatLoss, 1),
        Us("Btu/(h F)", Dimension.HeatLoss, BtuJ / 3600 * 1.8),

        Si("W/(m2 K)", Dimension.Transmittance, 1, "W/(m² K)", "W/m2K", "W/m²K"),
        Us("Btu/(h ft2 F)", Dimension.Transmittance, BtuJ / 3600 * 1.8 / (FootM * FootM), "Btu/(h ft² F)"),

        Si("m2 K/W", Dimension.Resistance, 1, "m² K/W", "m2K/W", "m²K/W"),
        Us("h ft2 F/Btu", Dimension.Resistance, FootM * FootM / (BtuJ / 3600 * 1.8), "h ft² F/Btu"),

        Si("W/(m K)", Dimension.Conductivity, 1, "W/mK"),
        Us("Btu/(h ft F)", Dimension.Conductivity, BtuJ / 3600 * 1.8 / FootM),
    ];

    /// <summary>The units in which a dimension may be written; none for plain numbers, counts and slopes.</summary>
    public static IEnumerable<Unit> Of(Dimension dimension) => All.Where(u => u.Dimension == dimension);

    /// <summary>The unit of a dimension that a spelling means, or null.</summary>
    public static Unit? Find(Dimension dimension, string name) => All.FirstOrDefault(u => u.Dimension == dimension && u.Spells(name));

    /// <summary>The SI unit of a dimension as other programs read it; empty for plain numbers, counts, shares and slopes.</summary>
    public static string SiSymbol(Dimension dimension) => dimension is Dimension.Fraction
        ? ""
        : Of(dimension).FirstOrDefault(unit => unit is { Factor: 1, Divisor: 1, ZeroAt: 0 })?.Symbol ?? "";

    private static Unit[] Pressures(Dimension dimension) =>
    [
        Si("Pa", dimension, 1, "N/m2", "N/m²"),
        Si("kPa", dimension, 1e3, "kN/m2", "kN/m²"),
        Si("MPa", dimension, 1e6, "N/mm2", "N/mm²"),
        Us("psi", dimension, PoundForceN / (InchM * InchM), "lbf/in2", "lb/in2"),
        Us("psf", dimension, PoundForceN / (FootM * FootM), "lbf/ft2", "lb/ft2"),
    ];

    private static Unit Si(string symbol, Dimension dimension, double factor, params string[] others) =>
        new(symbol, dimension, Metric, factor, 1, 0, others.ToSequence());

    private static Unit Part(string symbol, Dimension dimension, double divisor, params string[] others) =>
        new(symbol, dimension, Metric, 1, divisor, 0, others.ToSequence());

    private static Unit Us(string symbol, Dimension dimension, double factor, params string[] others) =>
        new(symbol, dimension, Imperial, factor, 1, 0, others.ToSequence());
}
