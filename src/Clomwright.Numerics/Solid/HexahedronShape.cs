using Clomwright.Numerics.Frames;

namespace Clomwright.Numerics.Solid;

/// <summary>
/// Geometry of the hexahedron with eight nodes. Reference coordinates (xi, eta, zeta) in -1..1 go with (s, z, t); corner n has t in bit 0, s in
/// bit 1, z in bit 2. N_n = (1 +- xi)(1 +- eta)(1 +- zeta)/8.
/// </summary>
internal static class HexahedronShape
{
    private static readonly double Gauss = 1 / Math.Sqrt(3);

    /// <summary>The eight points of the 2 x 2 x 2 Gauss rule; all weights are one.</summary>
    public static readonly Vector3[] GaussPoints = [.. Enumerable.Range(0, 8).Select(n => Gauss * Sign(n))];

    /// <summary>Shape function n at Gauss point q, at 8 q + n.</summary>
    public static readonly double[] GaussValues = [.. Enumerable.Range(0, 64).Select(i => Value(i % 8, GaussPoints[i / 8]))];

    /// <summary>Reference coordinates of a corner.</summary>
    public static Vector3 Sign(int corner) => new((corner & 2) - 1, (corner >> 1 & 2) - 1, 2 * (corner & 1) - 1);

    /// <summary>A shape function.</summary>
    public static double Value(int corner, Vector3 at)
    {
        var sign = Sign(corner);
        return (1 + sign.X * at.X) * (1 + sign.Y * at.Y) * (1 + sign.Z * at.Z) / 8;
    }

    /// <summary>Its gradient in reference coordinates.</summary>
    public static Vector3 Slope(int corner, Vector3 at)
    {
        var sign = Sign(corner);
        var (x, y, z) = (1 + sign.X * at.X, 1 + sign.Y * at.Y, 1 + sign.Z * at.Z);
        return new Vector3(sign.X * y * z / 8, x * sign.Y * z / 8, x * y * sign.Z / 8);
    }

    /// <summary>The three edges of the mapped reference cube at a point: d(x)/d(xi), d(x)/d(eta), d(x)/d(zeta).</summary>
    public static Jacobian JacobianAt(ReadOnlySpan<Vector3> corners, Vector3 at)
    {
        var (xi, eta, zeta) = (Vector3.Zero, Vector3.Zero, Vector3.Zero);
        for (var n = 0; n < 8; n++)
        {
            var slope = Slope(n, at);
            xi += slope.X * corners[n];
            eta += slope.Y * corners[n];
            zeta += slope.Z * corners[n];
        }

        return new Jacobian(xi, eta, zeta);
    }

    /// <summary>The mapped point.</summary>
    public static Vector3 PointAt(ReadOnlySpan<Vector3> corners, Vector3 at)
    {
        var point = Vector3.Zero;
        for (var n = 0; n < 8; n++)
        {
            point += Value(n, at) * corners[n];
        }

        return point;
    }

    /// <summary>The volume that each Gauss point stands for.</summary>
    public static void GaussVolumes(ReadOnlySpan<Vector3> corners, Span<double> volumes)
    {
        for (var q = 0; q < 8; q++)
        {
            volumes[q] = Math.Abs(JacobianAt(corners, GaussPoints[q]).Determinant);
        }
    }

    /// <summary>Whether the mapping keeps one orientation at all Gauss points and corners.</summary>
    public static bool IsSound(ReadOnlySpan<Vector3> corners)
    {
        var centre = JacobianAt(corners, Vector3.Zero).Determinant;
        if (centre == 0 || !double.IsFinite(centre))
        {
            return false;
        }

        for (var n = 0; n < 8; n++)
        {
            if (!(JacobianAt(corners, Sign(n)).Determinant / centre > 0))
            {
                return false;
            }
        }

        return true;
    }
}

/// <summary>The edges of the mapped reference cube at a point.</summary>
internal readonly record struct Jacobian(Vector3 Xi, Vector3 Eta, Vector3 Zeta)
{
    /// <summary>Volume of the mapped cube; negative where (s, z, t) are left-handed.</summary>
    public double Determinant => Xi.Dot(Eta.Cross(Zeta));

    /// <summary>The gradients in space of xi, eta and zeta.</summary>
    public InverseJacobian Inverse()
    {
        var scale = 1 / Determinant;
        return new InverseJacobian(scale * Eta.Cross(Zeta), scale * Zeta.Cross(Xi), scale * Xi.Cross(Eta));
    }

    /// <summary>Unit directions of s, of z square to it, and of t square to both.</summary>
    public LocalAxes Axes
    {
        get
        {
            var s = Xi.Unit();
            var z = (Eta - Eta.Dot(s) * s).Unit();
            var t = s.Cross(z);
            return new LocalAxes(s, z, t.Dot(Zeta) < 0 ? -t : t);
        }
    }
}

/// <summary>The gradients in space of xi, eta and zeta at a point.</summary>
internal readonly record struct InverseJacobian(Vector3 Xi, Vector3 Eta, Vector3 Zeta)
{
    /// <summary>The gradient in space of a function whose gradient in reference coordinates is given.</summary>
    public Vector3 Gradient(Vector3 reference) => reference.X * Xi + reference.Y * Eta + reference.Z * Zeta;
}

/// <summary>Unit directions along s, z and t at a point of the body, square to each other.</summary>
/// <param name="S">The long way.</param>
/// <param name="Z">Up.</param>
/// <param name="T">Through the thickness, towards growing t.</param>
public readonly record struct LocalAxes(Vector3 S, Vector3 Z, Vector3 T);
