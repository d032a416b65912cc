using Clomwright.Analysis.Weather;
using Clomwright.Numerics.Diffusion;

namespace Clomwright.Analysis.Drying;

/// <summary>Evaporation from a surface of cob: heat and vapour in balance. SI; temperatures in C.</summary>
public static class WetSurface
{
    private const double Lewis = 0.865;
    private const double Kelvin = 273.15;

    /// <summary>Heat passed to moving air outdoors, W/(m2 K): 4 + 4 v (ISO 6946, from memory).</summary>
    /// <param name="wind">v at the wall, m/s.</param>
    public static double Convection(double wind) => 4 + 4 * wind;

    /// <summary>L, J/kg.</summary>
    public static double Latent(double celsius) => 2.501e6 - 2361 * celsius;

    /// <summary>beta, kg/(m2 s Pa): vapour passed to moving air, by the Lewis relation with Le 0.865.</summary>
    public static double VapourTransfer(double convection, double celsius)
    {
        var kelvin = celsius + Kelvin;
        var density = 101_325 / (287.05 * kelvin);
        return convection / (density * 1006 * Math.Pow(Lewis, 2.0 / 3)) / (Psychrometrics.VapourGas * kelvin);
    }

    /// <summary>Temperature of a surface that stays wet, C, and what it loses, kg/(m2 s); negative where dew falls.</summary>
    /// <param name="air">C.</param>
    /// <param name="vapour">Pa.</param>
    /// <param name="convection">h_c, W/(m2 K).</param>
    /// <param name="radiation">Net heat from sun and sky to a surface at air temperature, W/m2.</param>
    /// <param name="radiative">h_r, W/(m2 K): what the surface radiates for each degree it differs from the air.</param>
    public static (double Temperature, double Loss) Wet(double air, double vapour, double convection, double radiation, double radiative = 0)
    {
        var beta = VapourTransfer(convection, air);
        var t = air;
        for (var round = 0; round < 30; round++)
        {
            var loss = beta * (Psychrometrics.Saturation(t) - vapour);
            var rest = (convection + radiative) * (air - t) + radiation - Latent(t) * loss;
            var slope = -(convection + radiative) - Latent(t) * beta * Psychrometrics.SaturationSlope(t) + 2361 * loss;
            var next = t - rest / slope;
            if (Math.Abs(next - t) < 1e-9)
            {
                t = next;
                break;
            }

            t = next;
        }

        return (t, beta * (Psychrometrics.Saturation(t) - vapour));
    }

    /// <summary>The same surface when it may also be dry: g = (p B - q)/(1 + r B) with B the relative humidity in its pores. Exact while it is wet; when dry, vapour pressure follows its slope at the wet temperature.</summary>
    /// <param name="air">C.</param>
    /// <param name="vapour">Pa.</param>
    /// <param name="convection">W/(m2 K).</param>
    /// <param name="radiation">W/m2.</param>
    /// <param name="radiative">W/(m2 K).</param>
    /// <param name="share">Of what an open surface passes, for one under a cover.</param>
    public static Exchange Surface(double air, double vapour, double convection, double radiation, double radiative, double share = 1)
    {
        var (wet, _) = Wet(air, vapour, convection, radiation, radiative);
        var beta = VapourTransfer(convection, air);
        var heat = convection + radiative;
        var slope = Psychrometrics.SaturationSlope(wet);
        var dry = air + radiation / heat;
        return new(share * beta * (Psychrometrics.Saturation(wet) + slope * (dry - wet)), share * beta * vapour, beta * slope * Latent(wet) / heat);
    }
}
