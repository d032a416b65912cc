using Clomwright.Numerics.Factorisation;
using Clomwright.Numerics.Linear;

namespace Clomwright.Numerics.Solid;

/// <summary>
/// Which push-only springs let go. With all springs acting both ways the body answers a load with w0, the displacements of the springs' nodes from
/// their feet. Letting springs A go is the same as pushing their nodes by q_A = k w_A, where (1/k - C_AA) q_A = w0_A and C is the compliance
/// between springs: a linear complementarity problem with the symmetric matrix 1/k - C, solved by block principal pivoting
/// (Judice and Pires 1994), with single steps when the blocks do not settle.
/// </summary>
internal sealed class SpringContact
{
    private const int BlockSteps = 30;

    /// <summary>A pivot of 1/k - C below this share of 1/k means that the springs left cannot hold the body.</summary>
    private const double LeastPivot = 1e-6;

    /// <summary>Displacements below this share of the largest are zero.</summary>
    private const double Tolerance = 1e-11;

    private readonly GroundSpring[] springs;
    private readonly Func<IReadOnlyList<int>, double[][]> complianceOf;
    private readonly Dictionary<int, double[]> compliance = [];

    /// <summary>Springs, and what answers unit forces on some of them (by number) with the displacements of all, one array each.</summary>
    public SpringContact(GroundSpring[] springs, Func<IReadOnlyList<int>, double[][]> complianceOf) =>
        (this.springs, this.complianceOf) = (springs, complianceOf);

    /// <summary>
    /// The forces q on the springs' nodes that cancel what the springs would pull; zero where a spring holds. Null when what still holds is
    /// not enough.
    /// </summary>
    public double[]? Release(double[] w0)
    {
        var tolerance = Tolerance * w0.Max(Math.Abs);
        if (w0.All(w => w <= tolerance))
        {
            return new double[w0.Length];
        }

        return Pivot(w0, tolerance, BlockSteps, all: true) ?? Pivot(w0, tolerance, 4 * w0.Length, all: false);
    }

    private double[]? Pivot(double[] w0, double tolerance, int steps, bool all)
    {
        var lifted = new SortedSet<int>();
        var (q, w) = (new double[w0.Length], w0);
        for (var step = 0; step < steps; step++)
        {
            var wrong = Enumerable.Range(0, w0.Length)
                .Where(i => lifted.Contains(i) ? w[i] < -tolerance : w[i] > tolerance)
                .OrderByDescending(i => Math.Abs(w[i]))
                .ToList();
            if (wrong.Count == 0)
            {
                return q;
            }

            foreach (var i in all ? wrong : wrong.Take(1))
            {
                if (!lifted.Remove(i))
                {
                    lifted.Add(i);
                }
            }

            if (Solve([.. lifted], w0) is not { } solved)
            {
                return null;
            }

            (q, w) = solved;
        }

        return null;
    }

    private (double[] Force, double[] Opening)? Solve(int[] lifted, double[] w0)
    {
        var missing = lifted.Where(i => !compliance.ContainsKey(i)).ToList();
        if (missing.Count > 0)
        {
            // What is solved together costs no more than a part of it: those that are pulled most come along and are likely to be asked for next.
            var spare = -missing.Count & (SheetResponse.MostLanes - 1);
            missing.AddRange(Enumerable.Range(0, w0.Length).Except(missing).Where(i => !compliance.ContainsKey(i)).OrderByDescending(i => w0[i]).Take(spare));
            foreach (var (i, column) in missing.Zip(complianceOf(missing)))
            {
                compliance[i] = column;
            }
        }

        var n = lifted.Length;
        var columns = Array.ConvertAll(lifted, i => compliance[i]);
        var l = new double[n][];
        var q = new double[n];
        for (var r = 0; r < n; r++)
        {
            var unit = 1 / springs[lifted[r]].Stiffness;
            var row = l[r] = new double[r + 1];
            for (var c = 0; c < r; c++)
            {
                row[c] = (-columns[c][lifted[r]] - Vectors.Dot(row.AsSpan(0, c), l[c].AsSpan(0, c))) / l[c][c];
            }

            var pivot = unit - columns[r][lifted[r]] - Vectors.Dot(row.AsSpan(0, r), row.AsSpan(0, r));
            if (!(pivot > LeastPivot * unit))
            {
                return null;
            }

            row[r] = Math.Sqrt(pivot);
            q[r] = (w0[lifted[r]] - Vectors.Dot(row.AsSpan(0, r), q.AsSpan(0, r))) / row[r];
        }

        var (force, opening) = (new double[w0.Length], (double[])w0.Clone());
        for (var r = n - 1; r >= 0; r--)
        {
            for (var k = r + 1; k < n; k++)
            {
                q[r] -= l[k][r] * q[k];
            }

            q[r] /= l[r][r];
            force[lifted[r]] = q[r];
            for (var i = 0; i < opening.Length; i++)
            {
                opening[i] += columns[r][i] * q[r];
            }
        }

        return (force, opening);
    }
}
