namespace Clomwright.Numerics.Frames;

/// <summary>Stiffness of one member in its own axes, its turn into global ones and what its loads do to its ends.</summary>
/// <remarks>
/// Przemieniecki, Theory of Matrix Structural Analysis, 5.6, with the shear parameter Phi = 12 E I/(G A_s L^2). End loads are found from the same shape functions, which solve the unloaded
/// beam exactly, so nodes move exactly as the differential equation says, whatever the load in between. Order of the twelve: u v w, then turns about x y z, first end then second.
/// </remarks>
internal sealed class MemberElement
{
    private readonly double[,] free = new double[12, 12];
    private readonly int[] released;
    private readonly double[,]? releasedInverse;

    private MemberElement(FrameMember member, Vector3 x, Vector3 y, Vector3 z, double length)
    {
        Member = member;
        (X, Y, Z, Length) = (x, y, z, length);
        FillFree();
        released = [.. Enumerable.Range(0, 12).Where(i => (i < 6 ? (int)member.StartReleased >> i : (int)member.EndReleased >> (i - 6)) % 2 == 1)];
        Condensed = (double[,])free.Clone();
        if (released.Length > 0)
        {
            releasedInverse = Inverse(released.Length, (i, j) => free[released[i], released[j]]);
            if (releasedInverse is not null)
            {
                Condense();
            }
        }
    }

    public FrameMember Member { get; }

    public Vector3 X { get; }

    public Vector3 Y { get; }

    public Vector3 Z { get; }

    public double Length { get; }

    /// <summary>Stiffness with its releases eliminated, own axes.</summary>
    public double[,] Condensed { get; }

    /// <summary>The element, or null when the member has no length, a number that is not finite, or releases that leave it loose.</summary>
    public static MemberElement? Of(FrameMember member, Vector3 start, Vector3 end)
    {
        var axis = end + member.EndArm - start - member.StartArm;
        var length = axis.Norm;
        var s = member.Section;
        if (!(length > 0) || !double.IsFinite(length) || !double.IsFinite(s.Area + s.SecondMomentY + s.SecondMomentZ + s.Torsion + member.Elasticity.Young + member.Elasticity.Shear))
        {
            return null;
        }

        var x = axis.Unit();
        var up = member.Up ?? new Vector3(0, 0, 1);
        if (up.Cross(x).Norm < 1e-6 * up.Norm)
        {
            up = new Vector3(1, 0, 0);
        }

        var y = up.Cross(x).Unit();
        var element = new MemberElement(member, x, y, x.Cross(y), length);
        return element.released.Length > 0 && element.releasedInverse is null ? null : element;
    }

    /// <summary>Rows: the twelve own-axis end movements; columns: the twelve global movements of its nodes, rigid arms included.</summary>
    public double[,] Turn()
    {
        var t = new double[12, 12];
        Vector3[] axes = [X, Y, Z];
        for (var end = 0; end < 2; end++)
        {
            var arm = end == 0 ? Member.StartArm : Member.EndArm;
            for (var i = 0; i < 3; i++)
            {
                var a = axes[i];
                var o = 6 * end;
                (t[o + i, o], t[o + i, o + 1], t[o + i, o + 2]) = (a.X, a.Y, a.Z);
                (t[o + 3 + i, o + 3], t[o + 3 + i, o + 4], t[o + 3 + i, o + 5]) = (a.X, a.Y, a.Z);
                // The end moves by turn x arm: a . (turn x arm) = turn . (arm x a).
                var c = arm.Cross(a);
                (t[o + i, o + 3], t[o + i, o + 4], t[o + i, o + 5]) = (c.X, c.Y, c.Z);
            }
        }

        return t;
    }

    /// <summary>Adds the end forces equal to a force, in own axes, at a share of the length.</summary>
    public void AddPoint(double share, Vector3 force, double[] ends)
    {
        var shape = Shape(share, Phi(Member.Section.SecondMomentZ, Member.Section.ShearAreaY));
        var f = new Vector3(force.Dot(X), force.Dot(Y), force.Dot(Z));
        ends[0] += f.X * (1 - share);
        ends[6] += f.X * share;
        ends[1] += f.Y * shape.N1;
        ends[5] += f.Y * shape.N2;
        ends[7] += f.Y * shape.N3;
        ends[11] += f.Y * shape.N4;
        shape = Shape(share, Phi(Member.Section.SecondMomentY, Member.Section.ShearAreaZ));
        ends[2] += f.Z * shape.N1;
        ends[4] -= f.Z * shape.N2;
        ends[8] += f.Z * shape.N3;
        ends[10] -= f.Z * shape.N4;
    }

    /// <summary>Adds the end forces equal to a spread load. Three Gauss points: exact for cubic shapes under a load varying evenly.</summary>
    public void AddSpread(FrameLoad.Spread load, double[] ends)
    {
        var run = (load.To - load.From) * Length;
        for (var g = 0; g < 3; g++)
        {
            var t = 0.5 + (g - 1) * Math.Sqrt(0.15);
            var weight = (g == 1 ? 8.0 : 5.0) / 18 * run;
            AddPoint(load.From + t * (load.To - load.From), weight * (load.AtFrom + t * (load.AtTo - load.AtFrom)), ends);
        }
    }

    /// <summary>End loads with the releases eliminated, in place.</summary>
    public void Release(double[] ends)
    {
        if (releasedInverse is null)
        {
            return;
        }

        var moved = new double[released.Length];
        for (var i = 0; i < released.Length; i++)
        {
            for (var j = 0; j < released.Length; j++)
            {
                moved[i] += releasedInverse[i, j] * ends[released[j]];
            }
        }

        for (var r = 0; r < 12; r++)
        {
            for (var i = 0; i < released.Length; i++)
            {
                ends[r] -= free[r, released[i]] * moved[i];
            }
        }

        foreach (var r in released)
        {
            ends[r] = 0;
        }
    }

    private double Phi(double second, double shearArea) =>
        double.IsInfinity(shearArea) ? 0 : 12 * Member.Elasticity.Young * second / (Member.Elasticity.Shear * shearArea * Length * Length);

    private (double N1, double N2, double N3, double N4) Shape(double t, double phi)
    {
        var k = 1 / (1 + phi);
        return (
            k * (1 - 3 * t * t + 2 * t * t * t + phi * (1 - t)),
            k * Length * (t - 2 * t * t + t * t * t + phi / 2 * (t - t * t)),
            k * (3 * t * t - 2 * t * t * t + phi * t),
            k * Length * (-t * t + t * t * t + phi / 2 * (t * t - t)));
    }

    private void FillFree()
    {
        var s = Member.Section;
        Pair(0, 6, Member.Elasticity.Young * s.Area / Length);
        Pair(3, 9, Member.Elasticity.Shear * s.Torsion / Length);
        Bend(1, 5, 7, 11, 1, s.SecondMomentZ, s.ShearAreaY);
        Bend(2, 4, 8, 10, -1, s.SecondMomentY, s.ShearAreaZ);

        void Pair(int a, int b, double k)
        {
            free[a, a] = free[b, b] = k;
            free[a, b] = free[b, a] = -k;
        }

        void Bend(int v1, int r1, int v2, int r2, double sign, double second, double shearArea)
        {
            var phi = Phi(second, shearArea);
            var k = Member.Elasticity.Young * second / (Length * Length * Length * (1 + phi));
            var turn = sign * 6 * Length * k;
            free[v1, v1] = free[v2, v2] = 12 * k;
            free[v1, v2] = free[v2, v1] = -12 * k;
            free[v1, r1] = free[r1, v1] = free[v1, r2] = free[r2, v1] = turn;
            free[v2, r1] = free[r1, v2] = free[v2, r2] = free[r2, v2] = -turn;
            free[r1, r1] = free[r2, r2] = (4 + phi) * Length * Length * k;
            free[r1, r2] = free[r2, r1] = (2 - phi) * Length * Length * k;
        }
    }

    private void Condense()
    {
        for (var r = 0; r < 12; r++)
        {
            for (var c = 0; c < 12; c++)
            {
                for (var i = 0; i < released.Length; i++)
                {
                    for (var j = 0; j < released.Length; j++)
                    {
                        Condensed[r, c] -= free[r, released[i]] * releasedInverse![i, j] * free[released[j], c];
                    }
                }
            }
        }

        foreach (var r in released)
        {
            for (var c = 0; c < 12; c++)
            {
                Condensed[r, c] = Condensed[c, r] = 0;
            }
        }
    }

    private static double[,]? Inverse(int n, Func<int, int, double> entry)
    {
        var matrix = new double[n * n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < n; j++)
            {
                matrix[i * n + j] = entry(i, j);
            }
        }

        if (Linear.Elimination.Of(matrix, n) is not { PivotRatio: > 1e-13 } factor)
        {
            return null;
        }

        var inverse = new double[n, n];
        for (var j = 0; j < n; j++)
        {
            var unit = new double[n];
            unit[j] = 1;
            var column = factor.Solve(unit);
            for (var i = 0; i < n; i++)
            {
                inverse[i, j] = column[i];
            }
        }

        return inverse;
    }
}
