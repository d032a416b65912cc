namespace Clomwright.Numerics.Solid;

/// <summary>A stress: components in (s, z, t), tension positive.</summary>
/// <param name="S">Normal stress along s.</param>
/// <param name="Z">Normal stress along z.</param>
/// <param name="T">Normal stress along t.</param>
/// <param name="SZ">Shear stress in the plane of s and z.</param>
/// <param name="ZT">Shear stress in the plane of z and t.</param>
/// <param name="TS">Shear stress in the plane of t and s.</param>
public readonly record struct Stress(double S, double Z, double T, double SZ, double ZT, double TS)
{
    internal static Stress From(ReadOnlySpan<double> six) => new(six[0], six[1], six[2], six[3], six[4], six[5]);

    /// <summary>Sum.</summary>
    public static Stress operator +(Stress a, Stress b) => new(a.S + b.S, a.Z + b.Z, a.T + b.T, a.SZ + b.SZ, a.ZT + b.ZT, a.TS + b.TS);

    /// <summary>A multiple.</summary>
    public static Stress operator *(double k, Stress a) => new(k * a.S, k * a.Z, k * a.T, k * a.SZ, k * a.ZT, k * a.TS);

    /// <summary>
    /// The two principal stresses in the plane of s and z, the larger first, and the angle of the larger from s towards z (Mohr's circle).
    /// </summary>
    public (double Larger, double Smaller, double Angle) InPlane()
    {
        var (middle, half) = ((S + Z) / 2, (S - Z) / 2);
        var radius = Math.Sqrt(half * half + SZ * SZ);
        return (middle + radius, middle - radius, Math.Atan2(SZ, half) / 2);
    }
}

/// <summary>The stresses on the two faces of a body, at the middle of every cell's face: of each stack of cells the innermost and the outermost solid one.</summary>
public sealed class SurfaceStress
{
    private readonly double[] components;
    private readonly int up;

    internal SurfaceStress(double[] components, int up) => (this.components, this.up) = (components, up);

    /// <summary>Stress on the inner face of the stack (i, k); null where the stack is empty.</summary>
    public Stress? Inside(int i, int k) => At(2 * (i * up + k));

    /// <summary>Stress on the outer face of the stack (i, k); null where the stack is empty.</summary>
    public Stress? Outside(int i, int k) => At(2 * (i * up + k) + 1);

    private Stress? At(int face) => double.IsNaN(components[6 * face]) ? null : Stress.From(components.AsSpan(6 * face, 6));
}

/// <summary>A stress averaged over a box.</summary>
/// <param name="Stress">Mean components.</param>
/// <param name="Volume">The solid volume that it is the mean of.</param>
public readonly record struct MeanStress(Stress Stress, double Volume);
