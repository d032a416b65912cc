using Clomwright.Evidence;
using Clomwright.Numerics.Solid;

namespace Clomwright.Analysis.Structure;

/// <summary>The body solved for every unit load: stresses of the sheet, forces in piers, and how the foot moves.</summary>
internal sealed class WallAnswers
{
    private WallAnswers(SolidAnswer[] answers, ModelChecks checks) => (Answers, Checks) = (answers, checks);

    public SolidAnswer[] Answers { get; }

    public ModelChecks Checks { get; }

    /// <summary>Means of the sheet for each unit load.</summary>
    public required double[][] Fields { get; init; }

    /// <summary>What the sections of all piers pass on, one after the other, <see cref="PierSections.Parts"/> numbers each, for each unit load.</summary>
    public required double[][] Forces { get; init; }

    /// <summary>How far each node of the foot moves up, for each unit load, m.</summary>
    public required double[][] Foot { get; init; }

    public static WallAnswers Of(ElasticBody elastic, BasisLoads basis, WallSheet sheet, WallBody body, PierSections[] piers, CancellationToken stop)
    {
        SolidAnswer[] answers = [.. elastic.Solve(basis.All, stop)];
        stop.ThrowIfCancellationRequested();
        // The same is asked once more where the foot lets go.
        var stresses = elastic.CellStresses(answers, again: true);
        stop.ThrowIfCancellationRequested();
        var springs = body.Model.Supports.Springs.Where(s => s.Axis == 2).Select(s => s.Node).ToArray();
        int[] probed = [basis.Cob, basis.WallTwist, .. basis.Wind.Take(1)];
        var residual = probed.EachBesideOthers(i => elastic.Balance(answers[i]).Residual).Max();
        return new WallAnswers(answers, new ModelChecks(answers.EachBesideOthers(a => ReactionError(body.Model, a)).Max(), residual, Reciprocity(answers, basis)))
        {
            Fields = stresses.EachBesideOthers(sheet.Means),
            Forces = stresses.EachBesideOthers(s => ForcesOf(piers, body, sheet, s)),
            Foot = [.. answers.Select(a => Array.ConvertAll(springs, node => a.Displacement.At(node).Z))],
        };
    }

    public static double[] ForcesOf(PierSections[] piers, WallBody body, WallSheet sheet, CellStress stress) => [.. piers.SelectMany(p => p.Actions(body, sheet, stress))];

    /// <summary>The forces of the springs and the loads together, over the sum of the loads' sizes.</summary>
    private static double ReactionError(SolidModel model, SolidAnswer answer)
    {
        Span<double> sum = stackalloc double[3];
        sum.Clear();
        var loads = answer.Load.Forces;
        var displacements = answer.Displacement.Values;
        var size = 0.0;
        for (var i = 0; i < loads.Length; i++)
        {
            sum[i % 3] += loads[i];
            size += Math.Abs(loads[i]);
        }

        foreach (var spring in model.Supports.Springs)
        {
            sum[spring.Axis] -= spring.Stiffness * displacements[3 * spring.Node + spring.Axis];
        }

        return size > 0 ? Math.Sqrt(sum[0] * sum[0] + sum[1] * sum[1] + sum[2] * sum[2]) / size : 0;
    }

    /// <summary>Betti: the work of one load on the displacements of another is the work of the other on those of the one.</summary>
    private static double Reciprocity(SolidAnswer[] answers, BasisLoads basis)
    {
        var worst = 0.0;
        (int, int)[] pairs = [(basis.WallX, basis.RoofX), (basis.WallTwist, basis.RoofTwist), .. basis.Press.Take(1).Select(p => (basis.Cob, p)), .. basis.Wind.Take(1).Select(w => (basis.WallX, w))];
        foreach (var (a, b) in pairs)
        {
            var (one, other) = (Work(answers[a], answers[b]), Work(answers[b], answers[a]));
            var size = Math.Sqrt(Work(answers[a], answers[a]) * Work(answers[b], answers[b]));
            worst = size > 0 ? Math.Max(worst, Math.Abs(one - other) / size) : worst;
        }

        return worst;

        static double Work(SolidAnswer load, SolidAnswer moved)
        {
            var f = load.Load.Forces;
            var u = moved.Displacement.Values;
            var sum = 0.0;
            for (var i = 0; i < f.Length; i++)
            {
                sum += f[i] * u[i];
            }

            return sum;
        }
    }
}
