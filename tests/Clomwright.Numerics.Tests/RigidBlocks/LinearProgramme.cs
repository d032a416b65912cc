using Clomwright.Numerics.Frames;
using Clomwright.Numerics.RigidBlocks;
using Google.OrTools.LinearSolver;

namespace Clomwright.Numerics.Tests.RigidBlocks;

/// <summary>The limit load of a sheet of blocks as a linear programme for GLOP: written from the definition of a joint, without a line of the library's solver.</summary>
internal static class LinearProgramme
{
    /// <summary>The largest factor; NaN where nothing balances the dead load.</summary>
    public static double Largest(BlockSheet sheet)
    {
        using var solver = Solver.CreateSolver("GLOP");
        const double unit = 1000;
        var factor = solver.MakeNumVar(double.NegativeInfinity, double.PositiveInfinity, "l");
        var rows = new Dictionary<int, Constraint[]>();
        for (var i = 0; i < sheet.Blocks.Count; i++)
        {
            if (sheet.Blocks[i] is not { } block)
            {
                continue;
            }

            double[] dead = [block.Dead.Force.X, block.Dead.Force.Y, block.Dead.Force.Z, block.Dead.Moment.X, block.Dead.Moment.Y, block.Dead.Moment.Z];
            double[] live = [block.Live.Force.X, block.Live.Force.Y, block.Live.Force.Z, block.Live.Moment.X, block.Live.Moment.Y, block.Live.Moment.Z];
            rows[i] = [.. dead.Select(value => solver.MakeConstraint(-value / unit, -value / unit))];
            for (var r = 0; r < 6; r++)
            {
                rows[i][r].SetCoefficient(factor, live[r] / unit);
            }
        }

        foreach (var joint in sheet.Joints)
        {
            foreach (var point in joint.Points)
            {
                var pull = joint.Strength.TensionPa * joint.Area / joint.Points.Count / unit;
                foreach (var edge in new[] { joint.AcrossU, -joint.AcrossU, joint.AcrossV, -joint.AcrossV })
                {
                    var multiple = solver.MakeNumVar(0, double.PositiveInfinity, "");
                    Push(joint, point, joint.Normal + joint.Strength.Friction * edge, (row, value) => row.SetCoefficient(multiple, row.GetCoefficient(multiple) + value));
                }

                Push(joint, point, -pull * joint.Normal, (row, value) => row.SetBounds(row.Lb() - value, row.Ub() - value));
            }
        }

        solver.Maximize(factor);
        return solver.Solve() switch
        {
            Solver.ResultStatus.OPTIMAL => factor.SolutionValue(),
            Solver.ResultStatus.INFEASIBLE => double.NaN,
            var other => throw new InvalidOperationException($"GLOP ended {other}."),
        };

        void Push(BlockJoint joint, Vector3 point, Vector3 force, Action<Constraint, double> add)
        {
            On(rows[joint.First], point - sheet.Blocks[joint.First]!.Centre, force, add);
            if (joint.Second is { } second)
            {
                On(rows[second], point - sheet.Blocks[second]!.Centre, -force, add);
            }
        }

        static void On(Constraint[] block, Vector3 arm, Vector3 force, Action<Constraint, double> add)
        {
            double[] wrench =
            [
                force.X, force.Y, force.Z,
                arm.Y * force.Z - arm.Z * force.Y, arm.Z * force.X - arm.X * force.Z, arm.X * force.Y - arm.Y * force.X,
            ];
            for (var r = 0; r < 6; r++)
            {
                if (wrench[r] != 0)
                {
                    add(block[r], wrench[r]);
                }
            }
        }
    }
}
