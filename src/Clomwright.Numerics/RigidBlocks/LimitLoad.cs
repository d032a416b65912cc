using Clomwright.Numerics.Frames;

namespace Clomwright.Numerics.RigidBlocks;

/// <summary>Limit analysis of rigid blocks with friction and little tension in the joints.</summary>
public static class LimitLoad
{
    /// <summary>The gap between the two factors, and the residuals, at which the search is content.</summary>
    public const double Aim = 1e-6;

    /// <summary>The largest gap, or residual, with which an answer still counts as found.</summary>
    public const double LeastGood = 1e-4;

    /// <summary>The largest factor by which the live load may be multiplied.</summary>
    /// <param name="sheet">The blocks, their loads and joints.</param>
    /// <param name="threads">Threads for the factor; the answer does not depend on them.</param>
    /// <param name="stop">Ends the search.</param>
    /// <exception cref="ArgumentException">No block bears a live load.</exception>
    public static LimitLoadAnswer Of(BlockSheet sheet, int threads = 2, CancellationToken stop = default)
    {
        var blocks = sheet.Blocks.OfType<RigidBlock>().ToList();
        var (force, length) = Scales(sheet, blocks);
        var forces = new JointForces(sheet, length);
        var (dead, live) = (Rows(sheet, forces, length, block => block.Dead), Rows(sheet, forces, length, block => block.Live));
        AddTension(sheet, forces, dead);
        if (!live.Any(value => value != 0))
        {
            throw new ArgumentException("No block bears a live load: there is nothing to multiply.");
        }

        var b = dead.Select(value => -value / force).ToArray();
        var f = live.Select(value => value / force).ToArray();
        using var search = new InteriorPoint(sheet, forces, b, f, threads);
        search.Run(Aim, stop);
        var best = search.Best;
        return new LimitLoadAnswer(
            End(search), best.Static, best.Kinematic, best.Unbalanced, best.Incompatible, best.Step,
            [.. best.Rates.Select((rate, i) => -rate / (i % 6 < 3 ? force : force * length))],
            [.. PointForces(sheet, forces, best.Forces, force)]);
    }

    private static LimitLoadEnd End(InteriorPoint search) => search.Best switch
    {
        { Worst: < LeastGood } => LimitLoadEnd.Found,
        { Static: > 1e6, Unbalanced: < LeastGood } => LimitLoadEnd.NoLimit,
        _ when search.FallsByItself => LimitLoadEnd.NoEquilibrium,
        _ => LimitLoadEnd.NotConverged,
    };

    /// <summary>One block's mean dead load, and the reach of its joints: what makes all numbers near one.</summary>
    private static (double Force, double Length) Scales(BlockSheet sheet, List<RigidBlock> blocks)
    {
        var force = blocks.Count == 0 ? 0 : blocks.Average(block => block.Dead.Force.Norm);
        var reach = sheet.Joints.SelectMany(joint => joint.Points.Select(point => (point - sheet.Blocks[joint.First]!.Centre).Norm)).DefaultIfEmpty(1).Average();
        return (force > 0 ? force : 1, reach > 0 ? reach : 1);
    }

    private static double[] Rows(BlockSheet sheet, JointForces forces, double length, Func<RigidBlock, Wrench> load)
    {
        var rows = new double[forces.Rows];
        for (var i = 0; i < sheet.Blocks.Count; i++)
        {
            if (sheet.Blocks[i] is { } block)
            {
                var (force, moment) = load(block);
                moment = 1 / length * moment;
                new[] { force.X, force.Y, force.Z, moment.X, moment.Y, moment.Z }.CopyTo(rows, 6 * i);
            }
        }

        return rows;
    }

    /// <summary>The tension that joints bear pulls like a dead load: the apex of each pyramid lies that far below nothing.</summary>
    private static void AddTension(BlockSheet sheet, JointForces forces, double[] dead)
    {
        for (var j = 0; j < sheet.Joints.Count; j++)
        {
            var joint = sheet.Joints[j];
            for (var p = forces.FirstPoint[j]; p < forces.FirstPoint[j + 1]; p++)
            {
                forces.AddAt(p, -joint.Strength.TensionPa * joint.Area / joint.Points.Count * joint.Normal, dead);
            }
        }
    }

    private static IEnumerable<Vector3> PointForces(BlockSheet sheet, JointForces forces, double[] x, double force)
    {
        for (var j = 0; x.Length > 0 && j < sheet.Joints.Count; j++)
        {
            var joint = sheet.Joints[j];
            for (var p = forces.FirstPoint[j]; p < forces.FirstPoint[j + 1]; p++)
            {
                var sum = -joint.Strength.TensionPa * joint.Area / joint.Points.Count * joint.Normal;
                for (var k = p * RigidBlocks.JointForces.Edges; k < (p + 1) * RigidBlocks.JointForces.Edges; k++)
                {
                    sum += force * x[k] * forces.Edge(k);
                }

                yield return sum;
            }
        }
    }
}
