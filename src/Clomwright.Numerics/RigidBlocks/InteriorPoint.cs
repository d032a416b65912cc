using static Clomwright.Numerics.Linear.Vectors;

namespace Clomwright.Numerics.RigidBlocks;

/// <summary>
/// The largest load factor l with A x + l f = b, x >= 0, by Mehrotra's predictor and corrector (SIAM J. Optimization 2, 1992) with l kept as one free
/// unknown beside the normal equations. Its dual is a mechanism -y: every edge opens or rests (z = -A'y >= 0) and f does unit work (f'y = -1).
/// </summary>
internal sealed class InteriorPoint : IDisposable
{
    private const int MostSteps = 80;

    /// <summary>Steps without improvement after which the search ends: the gap may widen for a while before it closes.</summary>
    private const int Patience = 20;

    /// <summary>Below this share a mechanism's overlaps, and the live load's work in it, count as nothing.</summary>
    private const double Certain = 1e-6;

    /// <summary>The share of the way to the nearest bound that is gone.</summary>
    private const double Caution = 0.995;

    private readonly JointForces forces;
    private readonly NormalEquations normal;
    private readonly int threads;
    private readonly double[] b;
    private readonly double[] f;
    private readonly double[] x;
    private readonly double[] z;
    private readonly double[] weights;
    private double[] y;
    private double factor;

    /// <summary>A problem in scaled numbers.</summary>
    public InteriorPoint(BlockSheet sheet, JointForces forces, double[] b, double[] f, int threads)
    {
        (this.forces, this.b, this.f, this.threads) = (forces, b, f, threads);
        normal = new NormalEquations(sheet, forces);
        (x, z, weights) = (new double[forces.Count], new double[forces.Count], new double[forces.Count]);
        y = new double[forces.Rows];
        Best = new Iterate(double.NaN, double.NaN, double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity, [], [], 0);
    }

    /// <summary>Where the search stands: load factor from forces and from the mechanism, what equilibrium and compatibility miss, and the gap between the two factors.</summary>
    public sealed record Iterate(double Static, double Kinematic, double Unbalanced, double Incompatible, double Gap, double[] Forces, double[] Rates, int Step)
    {
        /// <summary>The largest of the three, which all go to nothing.</summary>
        public double Worst => Math.Max(Gap, Math.Max(Unbalanced, Incompatible));
    }

    /// <summary>The best place reached.</summary>
    public Iterate Best { get; private set; }

    /// <summary>
    /// Whether the rates have gone off to infinity along a mechanism in which the dead load does work and the live load none, while every joint opens or rests:
    /// by Farkas' lemma nothing balances the dead load then.
    /// </summary>
    public bool FallsByItself { get; private set; }

    /// <summary>Goes on until gap and residuals are below the tolerance, or nothing improves.</summary>
    public void Run(double tolerance, CancellationToken stop)
    {
        Start();
        var sinceBest = 0;
        for (var step = 1; step <= MostSteps && !normal.IsLoose; step++)
        {
            stop.ThrowIfCancellationRequested();
            var here = Look(step);
            if (here.Worst < Best.Worst)
            {
                (Best, sinceBest) = (here with { Forces = [.. x], Rates = [.. y] }, 0);
            }

            FallsByItself = here.Incompatible < Certain && 1 < Certain * Norm(f) * Norm(y) && Dot(b, y) > 100 * Certain * Norm(b) * Norm(y);
            if (FallsByItself || here.Worst < tolerance || ++sinceBest > Patience || !double.IsFinite(here.Worst))
            {
                return;
            }

            Step();
        }
    }

    /// <summary>Gives the factor's memory back.</summary>
    public void Dispose() => normal.Dispose();

    /// <summary>The least x that balances, the least mechanism, both moved inside (Mehrotra's start).</summary>
    private void Start()
    {
        Array.Fill(weights, 1);
        normal.Weigh(weights, threads);
        if (normal.IsLoose)
        {
            return;
        }

        forces.MultiplyTransposed(normal.Solve(b), x);
        var toward = normal.Solve(f);
        var unit = -1 / Dot(f, toward);
        y = [.. toward.Select(value => unit * value)];
        forces.MultiplyTransposed(y, z);
        for (var k = 0; k < z.Length; k++)
        {
            z[k] = -z[k];
        }

        Lift(x);
        Lift(z);
        var (product, sumX, sumZ) = (Dot(x, z), x.Sum(), z.Sum());
        var (moreX, moreZ) = (0.5 * product / sumZ, 0.5 * product / sumX);
        for (var k = 0; k < x.Length; k++)
        {
            x[k] += moreX;
            z[k] += moreZ;
        }
    }

    private static void Lift(double[] values)
    {
        var by = Math.Max(0, -1.5 * values.Min()) + 1e-6 * (1 + values.Max(Math.Abs));
        for (var k = 0; k < values.Length; k++)
        {
            values[k] += by;
        }
    }

    private Iterate Look(int step)
    {
        var (unbalanced, incompatible, work) = (Unbalanced(), Incompatible(), 1 + Dot(f, y));
        var (primal, dual) = (factor, -Dot(b, y));
        return new Iterate(
            primal, dual, Norm(unbalanced) / (1 + Norm(b)), Math.Max(Norm(incompatible) / (1 + Norm(y)), Math.Abs(work)),
            Math.Abs(Dot(x, z)) / (1 + Math.Abs(primal)), [], [], step);
    }

    /// <summary>b - A x - l f.</summary>
    private double[] Unbalanced()
    {
        var r = new double[forces.Rows];
        forces.Multiply(x, r);
        for (var i = 0; i < r.Length; i++)
        {
            r[i] = b[i] - r[i] - factor * f[i];
        }

        return r;
    }

    /// <summary>-A'y - z.</summary>
    private double[] Incompatible()
    {
        var r = new double[z.Length];
        forces.MultiplyTransposed(y, r);
        for (var k = 0; k < r.Length; k++)
        {
            r[k] = -r[k] - z[k];
        }

        return r;
    }

    private void Step()
    {
        var (rp, rd, rf) = (Unbalanced(), Incompatible(), -1 - Dot(f, y));
        for (var k = 0; k < x.Length; k++)
        {
            weights[k] = x[k] / z[k];
        }

        normal.Weigh(weights, threads);
        if (normal.IsLoose)
        {
            return;
        }

        var alongF = normal.Solve(f);
        var target = new double[x.Length];
        for (var k = 0; k < x.Length; k++)
        {
            target[k] = -x[k] * z[k];
        }

        var guess = Direction(rp, rd, rf, alongF, target);
        var mean = Dot(x, z) / x.Length;
        var (reachX, reachZ) = (Reach(x, guess.X, 1), Reach(z, guess.Z, 1));
        var after = 0.0;
        for (var k = 0; k < x.Length; k++)
        {
            after += (x[k] + reachX * guess.X[k]) * (z[k] + reachZ * guess.Z[k]);
        }

        var centre = Math.Pow(after / x.Length / mean, 3) * mean;
        for (var k = 0; k < x.Length; k++)
        {
            target[k] = centre - x[k] * z[k] - guess.X[k] * guess.Z[k];
        }

        var step = Direction(rp, rd, rf, alongF, target);
        (reachX, reachZ) = (Reach(x, step.X, Caution), Reach(z, step.Z, Caution));
        for (var k = 0; k < x.Length; k++)
        {
            x[k] += reachX * step.X[k];
            z[k] += reachZ * step.Z[k];
        }

        for (var i = 0; i < y.Length; i++)
        {
            y[i] += reachZ * step.Y[i];
        }

        factor += reachX * step.Factor;
    }

    /// <summary>Newton's direction for A dx + dl f = rp, A'dy + dz = rd, f'dy = rf, z dx + x dz = target.</summary>
    private (double[] X, double[] Y, double[] Z, double Factor) Direction(double[] rp, double[] rd, double rf, double[] alongF, double[] target)
    {
        var (dx, dz, right) = (new double[x.Length], new double[x.Length], new double[forces.Rows]);
        for (var k = 0; k < x.Length; k++)
        {
            dx[k] = target[k] / z[k] - weights[k] * rd[k];
        }

        forces.Multiply(dx, right);
        for (var i = 0; i < right.Length; i++)
        {
            right[i] = rp[i] - right[i];
        }

        var dy = normal.Solve(right);
        var change = (Dot(f, dy) - rf) / Dot(f, alongF);
        for (var i = 0; i < dy.Length; i++)
        {
            dy[i] -= change * alongF[i];
        }

        forces.MultiplyTransposed(dy, dz);
        for (var k = 0; k < x.Length; k++)
        {
            dz[k] = rd[k] - dz[k];
            dx[k] = (target[k] - x[k] * dz[k]) / z[k];
        }

        return (dx, dy, dz, change);
    }

    private static double Reach(double[] from, double[] step, double share)
    {
        var reach = 1.0;
        for (var k = 0; k < from.Length; k++)
        {
            if (step[k] < 0)
            {
                reach = Math.Min(reach, -share * from[k] / step[k]);
            }
        }

        return reach;
    }
}
