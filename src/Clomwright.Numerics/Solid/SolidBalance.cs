using Clomwright.Numerics.Frames;

namespace Clomwright.Numerics.Solid;

/// <summary>Checks of one answer against what it must fulfil whatever the model.</summary>
/// <param name="Load">Sum of all loads on solid nodes.</param>
/// <param name="Reaction">Sum of the forces of springs and held nodes on the body.</param>
/// <param name="Residual">Largest force out of balance at any node, over the largest force of any cell, load or spring on a node.</param>
/// <param name="Work">Work of the loads, half of load times displacement.</param>
public sealed record SolidBalance(Vector3 Load, Vector3 Reaction, double Residual, double Work)
{
    /// <summary>The sum of loads and reactions over the sum of the loads' sizes: zero but for rounding.</summary>
    public required double ReactionError { get; init; }

    internal static SolidBalance Of(SolidStiffness stiffness, SolidAnswer answer)
    {
        var u = answer.Displacement.Values;
        var load = answer.Load.Forces;
        var supports = stiffness.Model.Supports;
        var cells = new double[u.Length];
        stiffness.AddInternalForces(u, cells);
        var reactions = new double[u.Length];
        var lifted = answer.Lifted.ToHashSet();
        for (var i = 0; i < supports.Springs.Length; i++)
        {
            var spring = supports.Springs[i];
            var dof = 3 * spring.Node + spring.Axis;
            if (stiffness.IsActive(dof) && !lifted.Contains(i))
            {
                reactions[dof] += spring.Stiffness * (spring.Settlement - u[dof]);
            }
        }

        var held = supports.Held.Select(node => 3 * node.Node + node.Axis).ToHashSet();
        Span<double> sums = stackalloc double[6];
        sums.Clear();
        var (worst, largest, work, total) = (0.0, double.Epsilon, 0.0, 0.0);
        for (var dof = 0; dof < u.Length; dof++)
        {
            if (held.Contains(dof))
            {
                reactions[dof] += cells[dof] - load[dof];
            }
            else if (!stiffness.IsActive(dof))
            {
                continue;
            }

            worst = Math.Max(worst, Math.Abs(load[dof] + reactions[dof] - cells[dof]));
            largest = Math.Max(largest, Math.Max(Math.Abs(load[dof]), Math.Max(Math.Abs(reactions[dof]), Math.Abs(cells[dof]))));
            sums[dof % 3] += load[dof];
            sums[3 + dof % 3] += reactions[dof];
            total += Math.Abs(load[dof]);
            work += load[dof] * u[dof] / 2;
        }

        var (f, r) = (new Vector3(sums[0], sums[1], sums[2]), new Vector3(sums[3], sums[4], sums[5]));
        return new SolidBalance(f, r, worst / largest, work) { ReactionError = total > 0 ? (f + r).Norm / total : (f + r).Norm };
    }
}

/// <summary>What one part of a body passes on to another across a level.</summary>
/// <param name="Force">Force of the part below on the part above.</param>
/// <param name="Moment">Its moment about the point asked for.</param>
public readonly record struct SectionForce(Vector3 Force, Vector3 Moment)
{
    /// <summary>
    /// Half the sum of what the cells above take from the nodes of the level and what the cells below give them: exact equilibrium of nodal forces,
    /// in which a load on the level itself counts half. At the lowest and highest level there is only one side.
    /// </summary>
    internal static SectionForce Of(SolidStiffness stiffness, SolidAnswer answer, int from, int to, int level, Vector3 about)
    {
        var grid = stiffness.Model.Grid;
        ArgumentOutOfRangeException.ThrowIfNegative(level);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(level, grid.Up);
        var (force, moment, sides) = (Vector3.Zero, Vector3.Zero, 0);
        foreach (var (row, sign) in new[] { (level, 1.0), (level - 1, -1.0) })
        {
            if (row < 0 || row >= grid.Up)
            {
                continue;
            }

            sides++;
            var forces = new double[3 * grid.Nodes];
            var cells = Enumerable.Range(from, to - from).SelectMany(i => Enumerable.Range(0, grid.Through).Select(j => grid.Cell(i, row, j))).ToHashSet();
            stiffness.AddInternalForces(answer.Displacement.Values, forces, cells.Contains);
            foreach (var node in Enumerable.Range(from, to - from + 1).SelectMany(i => Enumerable.Range(0, grid.Through + 1).Select(j => grid.Node(i, level, j))).Distinct())
            {
                var f = sign * new Vector3(forces[3 * node], forces[3 * node + 1], forces[3 * node + 2]);
                force += f;
                moment += (grid.Point(node) - about).Cross(f);
            }
        }

        return new SectionForce(1.0 / sides * force, 1.0 / sides * moment);
    }
}
