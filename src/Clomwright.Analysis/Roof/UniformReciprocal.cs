namespace Clomwright.Analysis.Roof;

/// <summary>Closed forms for equal round poles landing on a circle. Angles in radians, lengths in m.</summary>
/// <remarks>Derived from the least distance between two skew lines; symbols as in the README of this folder.</remarks>
public static class UniformReciprocal
{
    /// <summary>s = 2 r_t tan(pi/n): side of the polygon of plan crossings.</summary>
    public static double Side(int count, double ringRadius) => 2 * ringRadius * Math.Tan(Math.PI / count);

    /// <summary>r_c = r_t / cos(pi/n): from the centre to a plan crossing.</summary>
    public static double CornerRadius(int count, double ringRadius) => ringRadius / Math.Cos(Math.PI / count);

    /// <summary>beta with sin(beta) = delta / (tan(pi/n) sqrt(4 r_t^2 - delta^2)); null when the poles cannot pass each other, that is when delta is not less than 2 r_t sin(pi/n).</summary>
    public static double? Pitch(int count, double ringRadius, double separation)
    {
        if (count < 3 || !(separation > 0) || !(2 * ringRadius > separation))
        {
            return null;
        }

        var sine = separation / (Math.Tan(Math.PI / count) * Math.Sqrt(4 * ringRadius * ringRadius - separation * separation));
        return sine < 1 ? Math.Asin(sine) : null;
    }

    /// <summary>The inverse: r_t = (delta/2) sqrt(1 + (cot(pi/n)/sin(beta))^2). Null for a pitch that is not between level and upright.</summary>
    public static double? RingRadius(int count, double separation, double pitch)
    {
        if (count < 3 || !(separation > 0) || !(pitch > 0 && pitch < Math.PI / 2))
        {
            return null;
        }

        var x = 1 / (Math.Tan(Math.PI / count) * Math.Sin(pitch));
        return separation / 2 * Math.Sqrt(1 + x * x);
    }

    /// <summary>e = delta sqrt(1 - cos2(beta) sin2(pi/n)) / (cos(beta) cos(pi/n)): vertical gap of the axes at a crossing.</summary>
    public static double Rise(int count, double separation, double pitch)
    {
        var x = Math.Cos(pitch) * Math.Sin(Math.PI / count);
        return separation * Math.Sqrt(1 - x * x) / (Math.Cos(pitch) * Math.Cos(Math.PI / count));
    }

    /// <summary>M_o: first moment about the plate of one pole's share of a pressure q on plan between r_in and R_e, N m for q in Pa.</summary>
    /// <remarks>M_o = (2 pi q/n) [L_w (R_e^2 - r_in^2)/2 - ((R_e^2 - r_t^2)^1.5 - (r_in^2 - r_t^2)^1.5)/3], exact for a load shared equally at every radius.</remarks>
    public static double PlateMoment(int count, double plateRadius, double eaveRadius, double ringRadius, double innerRadius, double pressure)
    {
        var r2 = ringRadius * ringRadius;
        var distance = Math.Sqrt(plateRadius * plateRadius - r2);
        var outer = eaveRadius * eaveRadius;
        var inner = innerRadius * innerRadius;
        return 2 * Math.PI * pressure / count * (distance * (outer - inner) / 2 - (Math.Pow(outer - r2, 1.5) - Math.Pow(inner - r2, 1.5)) / 3);
    }
}
