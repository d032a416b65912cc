using Clomwright.Numerics.Frames;

namespace Clomwright.Numerics.Solid;

/// <summary>Turns stiffness and stress between the axes (s, z, t) and (x, y, z).</summary>
internal static class Elasticity
{
    /// <summary>The pairs of directions in the order of the six components.</summary>
    private static readonly (int I, int J)[] Pairs = [(0, 0), (1, 1), (2, 2), (0, 1), (1, 2), (2, 0)];

    /// <summary>D in (x, y, z): T^T D T, where T takes engineering strains from (x, y, z) to (s, z, t).</summary>
    public static void ToGlobal(ElasticMaterial material, LocalAxes axes, Span<double> stiffness)
    {
        if (material.IsIsotropic)
        {
            material.Stiffness.CopyTo(stiffness);
            return;
        }

        Span<double> t = stackalloc double[36];
        Span<double> dt = stackalloc double[36];
        StrainToLocal(axes, t);
        Multiply(material.Stiffness, t, dt, transposed: false);
        Multiply(t, dt, stiffness, transposed: true);
    }

    /// <summary>Stress in (s, z, t) from stress in (x, y, z): sigma' = A sigma A^T with the axes in the rows of A.</summary>
    public static void StressToLocal(LocalAxes axes, Span<double> matrix)
    {
        Span<Vector3> rows = [axes.S, axes.Z, axes.T];
        for (var p = 0; p < 6; p++)
        {
            var (a, b) = (rows[Pairs[p].I], rows[Pairs[p].J]);
            for (var q = 0; q < 6; q++)
            {
                var (i, j) = Pairs[q];
                var product = Component(a, i) * Component(b, j);
                matrix[6 * p + q] = i == j ? product : product + Component(a, j) * Component(b, i);
            }
        }
    }

    private static void StrainToLocal(LocalAxes axes, Span<double> matrix)
    {
        StressToLocal(axes, matrix);

        // Engineering shears are twice the tensor's.
        for (var p = 0; p < 3; p++)
        {
            for (var q = 3; q < 6; q++)
            {
                matrix[6 * p + q] /= 2;
                matrix[6 * q + p] *= 2;
            }
        }
    }

    /// <summary>C := A B or A^T B for 6 x 6 matrices.</summary>
    public static void Multiply(ReadOnlySpan<double> a, ReadOnlySpan<double> b, Span<double> c, bool transposed)
    {
        for (var i = 0; i < 6; i++)
        {
            for (var j = 0; j < 6; j++)
            {
                var sum = 0.0;
                for (var k = 0; k < 6; k++)
                {
                    sum += (transposed ? a[6 * k + i] : a[6 * i + k]) * b[6 * k + j];
                }

                c[6 * i + j] = sum;
            }
        }
    }

    private static double Component(Vector3 v, int axis) => axis switch { 0 => v.X, 1 => v.Y, _ => v.Z };
}
