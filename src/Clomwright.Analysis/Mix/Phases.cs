namespace Clomwright.Analysis.Mix;

/// <summary>Grains, water and air in a cubic metre of cob.</summary>
/// <param name="VoidRatio">e: voids over grains.</param>
/// <param name="Porosity">n: voids over all.</param>
/// <param name="Saturation">S: water over voids; more than 1 cannot be.</param>
/// <param name="WetDensity">kg/m3.</param>
/// <param name="Water">kg in a cubic metre.</param>
public sealed record Phases(double VoidRatio, double Porosity, double Saturation, double WetDensity, double Water)
{
    /// <summary>From water content and dry density: e = rho_s/rho_d - 1, S = w rho_s/(e rho_w) with water of 1000 kg/m3.</summary>
    /// <param name="waterContent">w, by dry mass.</param>
    /// <param name="dryDensity">rho_d, kg/m3.</param>
    /// <param name="grainDensity">rho_s, kg/m3.</param>
    public static Phases Of(double waterContent, double dryDensity, double grainDensity)
    {
        var e = grainDensity / dryDensity - 1;
        return new Phases(e, e / (1 + e), waterContent * grainDensity / 1000 / e, dryDensity * (1 + waterContent), waterContent * dryDensity);
    }
}
