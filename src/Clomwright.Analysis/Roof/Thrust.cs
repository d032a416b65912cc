using Clomwright.Geometry;

namespace Clomwright.Analysis.Roof;

/// <summary>Outward forces on the plate when the crossings do not do what they should. N, in the order of carrying.</summary>
public static class Thrust
{
    /// <summary>Bound for joints that can slip: the crossings press only square to both poles, and the plate alone holds the sideways part.</summary>
    /// <remarks>
    /// On each pole the plate holds <c>P_(i-1) tan(psi_(i-1)) m_(i-1) - P_i tan(psi_i) m_i</c> with m the horizontal direction in which the normal leans. Equal poles:
    /// <c>H = 2 P tan(psi) sin(pi/n) = W x tan(beta)/r_t</c> square to the pole: W x tan(beta)/R_w outward, and H L_w/R_w round the ring, which tries to unscrew.
    /// </remarks>
    public static PlateThrust[] WithoutFriction(ReciprocalGeometry frame, IReadOnlyList<Crossing> crossings, ReadOnlySpan<double> crossing)
    {
        var n = frame.Count;
        var thrust = new PlateThrust[n];
        for (var i = 0; i < n; i++)
        {
            var before = (i + n - 1) % n;
            var onPlate = Lean(crossings[i], crossing[i]) - Lean(crossings[before], crossing[before]);
            var outward = 1 / frame.Poles[i].PlateRadius * (frame.Poles[i].Foot - frame.Centre);
            thrust[i] = new PlateThrust(onPlate.Norm, onPlate.Dot(outward), -onPlate.Cross(outward));
        }

        return thrust;
    }

    /// <summary>Fallback when each pole only leans on a strapped ring: H_c = W x / z_far outward on the plate.</summary>
    public static double[] AgainstRing(ReciprocalGeometry frame, ReadOnlySpan<double> moment)
    {
        var h = new double[frame.Count];
        for (var i = 0; i < h.Length; i++)
        {
            h[i] = moment[i] / (frame.Poles[i].Slope * frame.Poles[i].Far);
        }

        return h;
    }

    /// <summary>T = H / (2 sin(angle/2)): force round a ring that holds equal radial forces H at equal angles; compression in the roof ring, tension in the bond beam.</summary>
    /// <param name="radial">H of one pole, N.</param>
    /// <param name="angle">Between neighbouring poles seen from the centre, radians: 2 pi/n for equal spacing.</param>
    public static double Hoop(double radial, double angle) => radial / (2 * Math.Sin(angle / 2));

    private static PlanPoint Lean(Crossing crossing, double force) =>
        force / crossing.Normal.Z * new PlanPoint(crossing.Normal.X, crossing.Normal.Y);
}

/// <summary>Horizontal force of one pole on the plate, N.</summary>
/// <param name="Force">Its size.</param>
/// <param name="Outward">Its part along the radius, outward positive.</param>
/// <param name="Clockwise">Its part round the plate, clockwise seen from above positive.</param>
public readonly record struct PlateThrust(double Force, double Outward, double Clockwise);
