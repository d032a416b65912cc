using Clomwright.Numerics.Diffusion;

namespace Clomwright.Analysis.Drying;

/// <summary>What decides how cob dries. SI; water contents as shares of the dry mass.</summary>
public sealed record Earth
{
    private const double WaterDensity = 1000;
    private const int TableIntervals = 400;

    /// <summary>rho_d, kg/m3.</summary>
    public required double DryDensity { get; init; }

    /// <summary>Gs.</summary>
    public double Grains { get; init; } = 2.65;

    /// <summary>Liquid diffusivity when saturated and drying, at 20 C, m2/s.</summary>
    public required double DiffusivityFull { get; init; }

    /// <summary>By how much liquid diffusivity falls from saturated to dry; 1000 in the common form.</summary>
    public double DiffusivityFall { get; init; } = 1000;

    /// <summary>mu: resistance to vapour against that of air.</summary>
    public required double VapourResistance { get; init; }

    /// <summary>Water content above which pores are as good as saturated with vapour.</summary>
    public double Hygroscopic { get; init; } = 0.060;

    /// <summary>Shape b of the sorption curve phi = exp(-b (a/w - 1)), a being <see cref="Hygroscopic"/>.</summary>
    public double SorptionShape { get; init; } = 0.247;

    /// <summary>e = Gs rho_w/rho_d - 1.</summary>
    public double VoidRatio => Grains * WaterDensity / DryDensity - 1;

    /// <summary>n = e/(1 + e).</summary>
    public double Porosity => VoidRatio / (1 + VoidRatio);

    /// <summary>S = w Gs/e.</summary>
    public double Saturation(double water) => water * Grains / VoidRatio;

    /// <summary>rho_d (1 + w), kg/m3.</summary>
    public double WetDensity(double water) => DryDensity * (1 + water);

    /// <summary>Water content when every pore is full.</summary>
    public double Full => VoidRatio / Grains;

    /// <summary>Relative humidity in the pores.</summary>
    public double Humidity(double water) => water >= Hygroscopic ? 1 : water <= 0 ? 0 : Math.Exp(-SorptionShape * (Hygroscopic / water - 1));

    /// <summary>Water content at rest with air of a relative humidity.</summary>
    public double AtRest(double humidity) => humidity >= 1 ? Hygroscopic : Hygroscopic / (1 - Math.Log(humidity) / SorptionShape);

    /// <summary>Liquid diffusivity at 20 C, m2/s (the form of Kuenzel 1995): D_full 1000^(w/w_full - 1).</summary>
    public double Diffusivity(double water) => DiffusivityFull * Math.Pow(DiffusivityFall, Math.Clamp(water / Full, 0, 1) - 1);

    /// <summary>Viscosity of water at 20 C over that at another temperature (Vogel's form, from memory).</summary>
    public static double Fluidity(double celsius) => Math.Pow(10, 247.8 * (1 / (293.15 - 140) - 1 / (celsius + 273.15 - 140)));

    /// <summary>Permeability to vapour, kg/(m s Pa): 2e-7 T^0.81/P of air, over mu.</summary>
    public double VapourPermeability(double celsius) => 2e-7 * Math.Pow(celsius + 273.15, 0.81) / 101_325 / VapourResistance;

    /// <summary>The medium over u = w rho_d, kg/m3: A is liquid at 20 C, B the relative humidity of the pores.</summary>
    public Medium Medium()
    {
        // The table integrates slopes by straight pieces; scaled, so that full pores are exactly saturated.
        var (top, sum) = (Full * DryDensity, 0.0);
        for (var i = 0; i < TableIntervals; i++)
        {
            sum += (SlopeOfHumidity(i * Full / TableIntervals) + SlopeOfHumidity((i + 1) * Full / TableIntervals)) / 2 * Full / TableIntervals;
        }

        return new(u => Diffusivity(u / DryDensity), u => SlopeOfHumidity(u / DryDensity) / DryDensity / sum, 0, top, TableIntervals);
    }

    private double SlopeOfHumidity(double water) =>
        water <= 1e-4 || water >= Hygroscopic ? 0 : SorptionShape * Hygroscopic / (water * water) * Humidity(water);
}
