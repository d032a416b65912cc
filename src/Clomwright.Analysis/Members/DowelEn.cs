namespace Clomwright.Analysis.Members;

/// <summary>A steel dowel through two softwood members alike, in single shear: yield modes of EN 1995-1-1, 8.2.2, without rope effect. SI.</summary>
public static class DowelEn
{
    /// <summary>F_v,Rk, N.</summary>
    /// <param name="diameter">d, m.</param>
    /// <param name="length">In each member, m.</param>
    /// <param name="bearing">f_h,k, Pa.</param>
    /// <param name="ultimate">f_u of the steel, Pa.</param>
    public static double SingleShear(double diameter, double length, double bearing, double ultimate)
    {
        var moment = YieldMoment(diameter, ultimate);
        var whole = bearing * length * diameter;
        double[] modes =
        [
            whole,
            whole / 2 * (Math.Sqrt(8) - 2),
            1.05 * whole / 3 * (Math.Sqrt(4 + 12 * moment / (bearing * diameter * length * length)) - 1),
            1.15 * Math.Sqrt(2 * moment * bearing * diameter),
        ];
        return modes.Min();
    }

    /// <summary>M_y,Rk = 0.3 f_u d^2.6 with N and mm, N m.</summary>
    public static double YieldMoment(double diameter, double ultimate) => 0.3 * ultimate / 1e6 * Math.Pow(1000 * diameter, 2.6) / 1000;

    /// <summary>f_h,90,k of a softwood: 0.082 (1 - 0.01 d) rho_k/(1.35 + 0.015 d) with mm, kg/m3 and N/mm2; Pa.</summary>
    public static double Bearing(double density, double diameter)
    {
        var mm = 1000 * diameter;
        return 0.082 * (1 - 0.01 * mm) * density / (1.35 + 0.015 * mm) * 1e6;
    }
}
