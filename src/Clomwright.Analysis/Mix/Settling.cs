using Clomwright.Evidence;
using Clomwright.Analysis.Steps;

namespace Clomwright.Analysis.Mix;

/// <summary>How long grains of one size take to fall through the water of a jar (Stokes). SI.</summary>
public static class Settling
{
    /// <summary>Standard gravity, m/s2.</summary>
    public const double Gravity = 9.80665;

    /// <summary>Of water about 20 C, kg/m3; it changes by less than half a per cent from 0 to 30 C.</summary>
    public const double WaterDensity = 998;

    /// <summary>Viscosity of water, Pa s, at a temperature in degrees Celsius (Kestin and others 1978).</summary>
    public static double Viscosity(double celsius)
    {
        var d = 20 - celsius;
        return 1.0016e-3 * Math.Pow(10, d / (celsius + 96) * (1.2378 - 1.303e-3 * d + 3.06e-6 * d * d + 2.55e-8 * d * d * d));
    }

    /// <summary>Seconds in which a grain falls a height: t = 18 eta h/((rho_s - rho_w) g d^2).</summary>
    /// <param name="diameter">Of the grain, m.</param>
    /// <param name="height">Of the column, m.</param>
    /// <param name="celsius">Of the water.</param>
    /// <param name="grainDensity">rho_s, kg/m3.</param>
    public static double Seconds(double diameter, double height, double celsius, double grainDensity) =>
        18 * Viscosity(celsius) * height / ((grainDensity - WaterDensity) * Gravity * diameter * diameter);

    /// <summary>The time for one size with its steps.</summary>
    internal static Calculated<double> Time(string key, double diameter, double height, Settled<double> celsius, Cited<double> grainDensity)
    {
        var sheet = new Worksheet("settling");
        var source = Sources.Get("stokes-law");
        var viscosity = Viscosity(celsius.Value);
        var eta = sheet.Step(
            "water-viscosity", "eta", "0.0010016*10^((20-T)/(T+96)*(1.2378-0.001303*(20-T)+0.00000306*(20-T)^2+0.0000000255*(20-T)^3))", viscosity, Dimension.Number,
            Sources.Get("water-kestin"), celsius.Symbol("T", "water-temperature", Dimension.Temperature));
        var seconds = Seconds(diameter, height, celsius.Value, grainDensity.Value);
        sheet.Step(
            "settling-time", "t", "18*eta*h/((rho_s-rho_w)*g*d^2)", seconds, Dimension.Time, source, eta,
            Worksheet.Given("h", "jar-column", height, Dimension.Length),
            Worksheet.Cited("rho_s", "grain-density", grainDensity, Dimension.Density),
            Worksheet.Code("rho_w", "water-density", WaterDensity, Dimension.Density, Sources.Get("soil-memory")),
            UsUnits.GravitySymbol,
            Worksheet.Code("d", $"grain-{key}", diameter, Dimension.Length, Sources.Get(key.StartsWith("usda", StringComparison.Ordinal) ? "usda-texture" : "soil-memory")));
        return new Calculated<double>(seconds, sheet.Done);
    }
}
