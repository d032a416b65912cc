namespace Clomwright.Analysis.Weather;

/// <summary>What a level surface at the air's temperature sends to the sky and does not get back.</summary>
internal static class Sky
{
    private const double Stefan = 5.670374e-8;
    private const double Kelvin = 273.15;

    /// <summary>Share of that loss which clouds leave, from a day's sun beside that of a clear one: FAO-56, equation 39, within 0.05 and 1.</summary>
    /// <param name="sun">MJ on a level square metre.</param>
    /// <param name="outside">The same outside the atmosphere.</param>
    /// <param name="elevation">m.</param>
    public static double Clearness(double sun, double outside, double elevation) =>
        Math.Clamp(1.35 * Math.Min(1, sun / Math.Max(1e-9, ReferenceEvaporation.ClearSky(elevation, outside))) - 0.35, 0.05, 1);

    /// <summary>The loss, W/m2: sigma T^4 (0.34 - 0.14 sqrt ea) times what clouds leave.</summary>
    /// <param name="temperature">C.</param>
    /// <param name="vapour">Pa.</param>
    /// <param name="clearness">From <see cref="Clearness"/>.</param>
    public static double Loss(double temperature, double vapour, double clearness) =>
        Stefan * Math.Pow(temperature + Kelvin, 4) * (0.34 - 0.14 * Math.Sqrt(vapour / 1000)) * clearness;

    /// <summary>Pressure of the vapour of a dew point in air of a temperature, Pa: at most 98 % of saturation.</summary>
    /// <param name="vapour">Of the dew point, Pa.</param>
    /// <param name="temperature">C.</param>
    public static double Held(double vapour, double temperature) => Math.Min(vapour, 0.98 * Psychrometrics.Saturation(temperature));
}
