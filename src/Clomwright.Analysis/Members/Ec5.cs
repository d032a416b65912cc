using Clomwright.Analysis.Loads;

namespace Clomwright.Analysis.Members;

/// <summary>Design values of EN 1995-1-1 with recommended factors. Service class 2 unless said otherwise: under a roof, not heated.</summary>
public static class Ec5
{
    /// <summary>gamma_M of solid timber.</summary>
    public const double PartialFactor = 1.3;

    /// <summary>k_cr: share of the width that counts against shear.</summary>
    public const double ShearCracks = 0.67;

    /// <summary>k_mod of solid timber in service classes 1 and 2 by the shortest load: permanent 0.6, snow and roof live 0.9, wind and earthquake 1.1.</summary>
    /// <remarks>Snow up to 1000 m is a short-term load; roof live load of category H too.</remarks>
    public static double Duration(Combination combination)
    {
        var factor = 0.6;
        foreach (var term in combination.Terms)
        {
            factor = Math.Max(factor, term.Factor == 0 ? 0.6 : term.Kind switch
            {
                LoadKind.Snow or LoadKind.Rain or LoadKind.RoofLive => 0.9,
                LoadKind.Wind or LoadKind.Earthquake => 1.1,
                _ => 0.6,
            });
        }

        return factor;
    }

    /// <summary>X_d = k_mod X_k/gamma_M, Pa.</summary>
    public static double Design(double characteristic, double modification) => modification * characteristic / PartialFactor;

    /// <summary>k_h = min((150/h)^0.2, 1.3) for solid timber less than 150 mm deep.</summary>
    public static double Depth(double depth) => depth < 0.15 ? Math.Min(Math.Pow(0.15 / depth, 0.2), 1.3) : 1;

    /// <summary>k_def in service classes 1, 2 and 3; 1 more when put in wet and drying under load.</summary>
    public static double Creep(int serviceClass, bool green) => (serviceClass switch { 1 => 0.6, 2 => 0.8, _ => 2.0 }) + (green ? 1 : 0);

    /// <summary>f_c at an angle to the grain: f_c0/( f_c0/(k f_c90) sin2 + cos2 ).</summary>
    public static double AtAngle(double along, double across, double angle)
    {
        var (sin, cos) = Math.SinCos(angle);
        return along / (along / across * sin * sin + cos * cos);
    }
}
