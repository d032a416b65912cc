namespace Clomwright.Numerics.Cracking;

/// <summary>Principal strains, largest first, with their directions; and what is isotropic, put together again from principal values.</summary>
internal readonly ref struct PrincipalAxes
{
    private const int MostSweeps = 30;

    /// <summary>Strains nearer to each other than this share of the largest are taken for equal when the shear slopes are formed.</summary>
    private const double Equal = 1e-9;

    private readonly Frame frame;

    private PrincipalAxes(double first, double second, double third, Frame frame) => (First, Second, Third, this.frame) = (first, second, third, frame);

    /// <summary>The largest principal strain.</summary>
    public double First { get; }

    /// <summary>The middle one.</summary>
    public double Second { get; }

    /// <summary>The smallest one.</summary>
    public double Third { get; }

    /// <summary>Jacobi's rotations (Golub and Van Loan, section 8.5), sorted.</summary>
    public static PrincipalAxes Of(ReadOnlySpan<double> strain)
    {
        Span<double> a = [strain[0], strain[3] / 2, strain[5] / 2, strain[3] / 2, strain[1], strain[4] / 2, strain[5] / 2, strain[4] / 2, strain[2]];
        var v = default(Frame);
        v[0] = v[4] = v[8] = 1;
        for (var sweep = 0; sweep < MostSweeps; sweep++)
        {
            var off = a[1] * a[1] + a[2] * a[2] + a[5] * a[5];
            if (off <= 1e-30 * (a[0] * a[0] + a[4] * a[4] + a[8] * a[8]))
            {
                break;
            }

            Rotate(a, ref v, 0, 1);
            Rotate(a, ref v, 0, 2);
            Rotate(a, ref v, 1, 2);
        }

        Span<int> order = [0, 1, 2];
        if (a[4 * order[0]] < a[4 * order[1]])
        {
            (order[0], order[1]) = (order[1], order[0]);
        }

        if (a[4 * order[1]] < a[4 * order[2]])
        {
            (order[1], order[2]) = (order[2], order[1]);
        }

        if (a[4 * order[0]] < a[4 * order[1]])
        {
            (order[0], order[1]) = (order[1], order[0]);
        }

        var sorted = default(Frame);
        for (var i = 0; i < 3; i++)
        {
            for (var k = 0; k < 3; k++)
            {
                sorted[3 * i + k] = v[3 * k + order[i]];
            }
        }

        return new PrincipalAxes(a[4 * order[0]], a[4 * order[1]], a[4 * order[2]], sorted);
    }

    /// <summary>The tensor with given principal values, as six stresses.</summary>
    public void Compose(ReadOnlySpan<double> principal, Span<double> stress)
    {
        stress.Clear();
        Span<double> dyad = stackalloc double[6];
        for (var i = 0; i < 3; i++)
        {
            Dyad(i, i, dyad);
            for (var c = 0; c < 6; c++)
            {
                stress[c] += principal[i] * dyad[c] / 2;
            }
        }
    }

    /// <summary>
    /// The derivative of an isotropic stress by strain: sum of slope_ij N_i N_j' and of (s_i - s_j)/(2 (e_i - e_j)) S_ij S_ij', with N_i of n_i n_i and S_ij of n_i n_j + n_j n_i.
    /// </summary>
    public void Tangent(ReadOnlySpan<double> stress, ReadOnlySpan<double> strain, ReadOnlySpan<double> slopes, Span<double> tangent)
    {
        Span<double> n = stackalloc double[18];
        for (var i = 0; i < 3; i++)
        {
            Dyad(i, i, n.Slice(6 * i, 6));
        }

        tangent.Clear();
        for (var i = 0; i < 3; i++)
        {
            for (var j = 0; j < 3; j++)
            {
                AddProduct(slopes[3 * i + j] / 4, n.Slice(6 * i, 6), n.Slice(6 * j, 6), tangent);
            }
        }

        Span<double> shear = stackalloc double[6];
        var size = Math.Max(Math.Abs(strain[0]), Math.Abs(strain[2]));
        for (var i = 0; i < 3; i++)
        {
            for (var j = i + 1; j < 3; j++)
            {
                var apart = strain[i] - strain[j];
                var slope = apart > Equal * size ? (stress[i] - stress[j]) / (2 * apart) : (slopes[4 * i] - slopes[3 * i + j] + slopes[4 * j] - slopes[3 * j + i]) / 4;
                Dyad(i, j, shear);
                AddProduct(slope, shear, shear, tangent);
            }
        }
    }

    private static void Rotate(Span<double> a, ref Frame v, int p, int q)
    {
        var apq = a[3 * p + q];
        if (apq == 0)
        {
            return;
        }

        var theta = (a[4 * q] - a[4 * p]) / (2 * apq);
        var t = Math.CopySign(1, theta) / (Math.Abs(theta) + Math.Sqrt(theta * theta + 1));
        var c = 1 / Math.Sqrt(t * t + 1);
        var s = t * c;
        var r = 3 - p - q;
        var (arp, arq) = (a[3 * r + p], a[3 * r + q]);
        a[4 * p] -= t * apq;
        a[4 * q] += t * apq;
        a[3 * p + q] = a[3 * q + p] = 0;
        a[3 * r + p] = a[3 * p + r] = c * arp - s * arq;
        a[3 * r + q] = a[3 * q + r] = s * arp + c * arq;
        for (var k = 0; k < 3; k++)
        {
            var (vp, vq) = (v[3 * k + p], v[3 * k + q]);
            v[3 * k + p] = c * vp - s * vq;
            v[3 * k + q] = s * vp + c * vq;
        }
    }

    /// <summary>n_i n_j + n_j n_i as six components.</summary>
    private void Dyad(int i, int j, Span<double> dyad)
    {
        var (ax, ay, az) = (frame[3 * i], frame[3 * i + 1], frame[3 * i + 2]);
        var (bx, by, bz) = (frame[3 * j], frame[3 * j + 1], frame[3 * j + 2]);
        dyad[0] = 2 * ax * bx;
        dyad[1] = 2 * ay * by;
        dyad[2] = 2 * az * bz;
        dyad[3] = ax * by + ay * bx;
        dyad[4] = ay * bz + az * by;
        dyad[5] = az * bx + ax * bz;
    }

    private static void AddProduct(double factor, ReadOnlySpan<double> a, ReadOnlySpan<double> b, Span<double> tangent)
    {
        for (var r = 0; r < 6; r++)
        {
            var fa = factor * a[r];
            for (var c = 0; c < 6; c++)
            {
                tangent[6 * r + c] += fa * b[c];
            }
        }
    }

    [System.Runtime.CompilerServices.InlineArray(9)]
    private struct Frame
    {
        private double first;
    }
}
