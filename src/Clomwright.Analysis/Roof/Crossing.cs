using Clomwright.Numerics.Frames;

namespace Clomwright.Analysis.Roof;

/// <summary>Where one pole rests on the next: the touching point and the direction in which round poles press on each other.</summary>
/// <param name="Upper">The pole that rests, in the order of carrying.</param>
/// <param name="Lower">The pole that carries.</param>
/// <param name="Contact">On the common perpendicular of the two axes, where the two (notched) surfaces meet; heights against the plate axis, m.</param>
/// <param name="Normal">Unit common perpendicular, pointing up from the lower pole into the upper one.</param>
public sealed record Crossing(int Upper, int Lower, Vector3 Contact, Vector3 Normal)
{
    /// <summary>psi: angle between the normal and the vertical, radians. Equal poles on a circle: tan(psi) = tan(beta)/cos(pi/n).</summary>
    public double Lean => Math.Atan(FrictionDemand);

    /// <summary>Friction coefficient that would be needed if nothing but friction held the joint under a vertical force: tan(psi).</summary>
    public double FrictionDemand => Math.Sqrt(Normal.X * Normal.X + Normal.Y * Normal.Y) / Normal.Z;

    /// <summary>Force along the slope on the pin when friction is not counted: P sin(psi), N.</summary>
    public double SlipForce(double crossingForce) => Math.Abs(crossingForce) * Math.Sin(Lean);

    /// <summary>All crossings of a frame, in the order of carrying.</summary>
    public static Crossing[] Of(ReciprocalGeometry frame)
    {
        var crossings = new Crossing[frame.Count];
        for (var i = 0; i < crossings.Length; i++)
        {
            crossings[i] = Between(frame, i);
        }

        return crossings;
    }

    private static Crossing Between(ReciprocalGeometry frame, int upper)
    {
        var u = frame.Poles[upper];
        var l = frame.Next(upper);
        var p = u.AxisAt(u.Far);
        var q = l.AxisAt(l.Near);
        var d1 = new Vector3(u.Along.East, u.Along.North, u.Slope).Unit();
        var d2 = new Vector3(l.Along.East, l.Along.North, l.Slope).Unit();
        var normal = d1.Cross(d2).Unit();
        if (normal.Z < 0)
        {
            normal = -normal;
        }

        // Foot of the common perpendicular on the lower axis: the point q + v d2 from which p + u d1 is seen square to both.
        var w = p - q;
        var c = d1.Dot(d2);
        var v = (d2.Dot(w) - c * d1.Dot(w)) / (1 - c * c);
        var below = l.DiameterAt(l.Near) / 2 - l.Notch;
        return new Crossing(upper, (upper + 1) % frame.Count, q + v * d2 + below * normal, normal);
    }
}
