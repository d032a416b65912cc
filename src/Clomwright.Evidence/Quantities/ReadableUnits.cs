namespace Clomwright.Evidence;

/// <summary>Which unit a quantity of some size is printed in.</summary>
internal static class ReadableUnits
{
    /// <summary>Units by dimension and system, each with the SI value from which it is used; the last that fits is taken.</summary>
    private static readonly (Unit Unit, double From)[] Rows =
    [
        Row(Dimension.Fraction, "%", 0),
        Row(Dimension.Area, "cm2", 0), Row(Dimension.Area, "m2", 0.1),
        Row(Dimension.Area, "in2", 0), Row(Dimension.Area, "ft2", 0.1),
        Row(Dimension.Volume, "L", 0), Row(Dimension.Volume, "m3", 0.1),
        Row(Dimension.Volume, "in3", 0), Row(Dimension.Volume, "ft3", 0.003), Row(Dimension.Volume, "yd3", 1),
        Row(Dimension.Mass, "g", 0), Row(Dimension.Mass, "kg", 1), Row(Dimension.Mass, "t", 10_000),
        Row(Dimension.Mass, "oz", 0), Row(Dimension.Mass, "lb", 0.5),
        Row(Dimension.Force, "N", 0), Row(Dimension.Force, "kN", 1000),
        Row(Dimension.Force, "lbf", 0),
        Row(Dimension.LineLoad, "N/m", 0), Row(Dimension.LineLoad, "kN/m", 1000),
        Row(Dimension.LineLoad, "lbf/ft", 0),
        Row(Dimension.Stress, "Pa", 0), Row(Dimension.Stress, "kPa", 100), Row(Dimension.Stress, "MPa", 1e6),
        Row(Dimension.Stress, "psi", 0),
        Row(Dimension.AreaLoad, "Pa", 0), Row(Dimension.AreaLoad, "kPa", 100),
        Row(Dimension.AreaLoad, "psf", 0),
        Row(Dimension.Moment, "N m", 0), Row(Dimension.Moment, "kN m", 1000),
        Row(Dimension.Moment, "lbf ft", 0),
        Row(Dimension.Density, "kg/m3", 0),
        Row(Dimension.Density, "lb/ft3", 0),
        Row(Dimension.Speed, "m/s", 0),
        Row(Dimension.Speed, "mph", 0),
        Row(Dimension.Power, "W", 0), Row(Dimension.Power, "kW", 1000),
        Row(Dimension.Power, "Btu/h", 0),
        Row(Dimension.Energy, "kWh", 0),
        Row(Dimension.Energy, "kBtu", 0),
        Row(Dimension.HeatLoss, "W/K", 0),
        Row(Dimension.HeatLoss, "Btu/(h F)", 0),
        Row(Dimension.Transmittance, "W/(m2 K)", 0),
        Row(Dimension.Transmittance, "Btu/(h ft2 F)", 0),
        Row(Dimension.Resistance, "m2 K/W", 0),
        Row(Dimension.Resistance, "h ft2 F/Btu", 0),
        Row(Dimension.Conductivity, "W/(m K)", 0),
        Row(Dimension.Conductivity, "Btu/(h ft F)", 0),
        Row(Dimension.Time, "s", 0), Row(Dimension.Time, "min", 120), Row(Dimension.Time, "h", 7200),
    ];

    internal static Unit For(Amount value, UnitSystem system)
    {
        var size = value.Si == 0 ? 1 : Math.Abs(value.Si);
        var both = value.Dimension is Dimension.Fraction or Dimension.Time;
        return Rows.Last(row => row.Unit.Dimension == value.Dimension && (both || row.Unit.System == system) && row.From <= size).Unit;
    }

    internal static string Printed(Unit unit) => unit.Symbol.Replace('2', '²').Replace('3', '³');

    private static (Unit Unit, double From) Row(Dimension dimension, string symbol, double from) => (Units.Find(dimension, symbol)!, from);
}
