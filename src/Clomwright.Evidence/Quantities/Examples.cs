namespace Clomwright.Evidence;

/// <summary>What each dimension is called and how one is written, for saying what would have been right.</summary>
internal static class Examples
{
    internal static Message Noun(Dimension dimension) => dimension switch
    {
        Dimension.Number => new Message("evidence.a-number"),
        Dimension.Count => new Message("evidence.a-count"),
        Dimension.Fraction => new Message("evidence.a-share"),
        Dimension.Length => new Message("evidence.a-length"),
        Dimension.Area => new Message("evidence.an-area"),
        Dimension.Volume => new Message("evidence.a-volume"),
        Dimension.Mass => new Message("evidence.a-mass"),
        Dimension.Force => new Message("evidence.a-force"),
        Dimension.LineLoad => new Message("evidence.a-line-load"),
        Dimension.Stress => new Message("evidence.a-stress"),
        Dimension.AreaLoad => new Message("evidence.an-area-load"),
        Dimension.Moment => new Message("evidence.a-moment"),
        Dimension.Angle => new Message("evidence.an-angle"),
        Dimension.Slope => new Message("evidence.a-slope"),
        Dimension.Density => new Message("evidence.a-density"),
        Dimension.Speed => new Message("evidence.a-speed"),
        Dimension.Temperature => new Message("evidence.a-temperature"),
        Dimension.Days => new Message("evidence.a-number-of-days"),
        Dimension.Time => new Message("evidence.a-time"),
        Dimension.Power => new Message("evidence.a-power"),
        Dimension.Energy => new Message("evidence.an-energy"),
        Dimension.HeatLoss => new Message("evidence.a-heat-loss"),
        Dimension.Transmittance => new Message("evidence.a-transmittance"),
        Dimension.Resistance => new Message("evidence.a-resistance"),
        Dimension.Conductivity => new Message("evidence.a-conductivity"),
        _ => throw new ArgumentOutOfRangeException(nameof(dimension)),
    };

    internal static string Of(Dimension dimension) => dimension switch
    {
        Dimension.Number => "1.5",
        Dimension.Count => "4",
        Dimension.Fraction => "25 %",
        Dimension.Length => "7 ft 6 in",
        Dimension.Area => "12.5 m2",
        Dimension.Volume => "0.67 ft3",
        Dimension.Mass => "1.2 kg",
        Dimension.Force => "1400 lbf",
        Dimension.LineLoad => "2.5 kN/m",
        Dimension.Stress => "100 kPa",
        Dimension.AreaLoad => "1.0 kPa",
        Dimension.Moment => "1.5 kN m",
        Dimension.Angle => "135 deg",
        Dimension.Slope => "4 %",
        Dimension.Density => "1700 kg/m3",
        Dimension.Speed => "105 mph",
        Dimension.Temperature => "20 C",
        Dimension.Days => "21 days",
        Dimension.Time => "30 min",
        Dimension.Power => "4 kW",
        Dimension.Energy => "350 kWh",
        Dimension.HeatLoss => "80 W/K",
        Dimension.Transmittance => "1.2 W/(m2 K)",
        Dimension.Resistance => "0.8 m2 K/W",
        Dimension.Conductivity => "0.7 W/(m K)",
        _ => throw new ArgumentOutOfRangeException(nameof(dimension)),
    };
}
