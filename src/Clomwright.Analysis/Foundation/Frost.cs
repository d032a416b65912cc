namespace Clomwright.Analysis.Foundation;

/// <summary>How deep frost reaches. SI.</summary>
public static class Frost
{
    private const double SecondsPerDay = 86_400;

    /// <summary>Stefan: x = sqrt(2 k n FI/L), m. It leaves out the heat of the soil itself and so reaches too deep.</summary>
    /// <param name="conductivity">k of the frozen soil, W/(m K).</param>
    /// <param name="surface">n: freezing index of the surface over that of the air; bare soil 0.7, turf 0.5.</param>
    /// <param name="freezingIndex">FI of the air, K days.</param>
    /// <param name="latentHeat">L of the soil's water, J/m3.</param>
    public static double Stefan(double conductivity, double surface, double freezingIndex, double latentHeat) =>
        Math.Sqrt(2 * SecondsPerDay * conductivity * surface * freezingIndex / latentHeat);

    /// <summary>Modified Berggren: lambda times Stefan, lambda = 1/sqrt(1 + mu (alpha + 0.5)) (Aldrich 1953).</summary>
    /// <param name="fusion">mu = v_s C/L.</param>
    /// <param name="thermal">alpha = v_o/v_s.</param>
    public static double Correction(double fusion, double thermal) => 1 / Math.Sqrt(1 + fusion * (thermal + 0.5));

    /// <summary>mu = v_s C/L with v_s = n FI/days.</summary>
    /// <param name="surface">n.</param>
    /// <param name="freezingIndex">FI, K days.</param>
    /// <param name="days">Length of the freezing season.</param>
    /// <param name="heatCapacity">C, J/(m3 K).</param>
    /// <param name="latentHeat">L, J/m3.</param>
    public static double FusionParameter(double surface, double freezingIndex, double days, double heatCapacity, double latentHeat) =>
        surface * freezingIndex / days * heatCapacity / latentHeat;

    /// <summary>alpha = v_o/v_s: mean yearly temperature above freezing over v_s.</summary>
    public static double ThermalRatio(double meanAboveFreezing, double surface, double freezingIndex, double days) =>
        Math.Abs(meanAboveFreezing) / (surface * freezingIndex / days);
}
