using Clomwright.Numerics.Factorisation;
using static Clomwright.Numerics.Linear.Vectors;

namespace Clomwright.Numerics.RigidBlocks;

/// <summary>Solves A D A' y = r by the factor of the scaled matrix, mended by conjugate gradients where the factor has lost digits.</summary>
internal sealed class NormalEquations : IDisposable
{
    private const int MostMendings = 12;
    private const double Enough = 1e-11;

    private readonly JointForces forces;
    private readonly JointMatrix matrix;
    private readonly int[] patches;
    private readonly double[] weights;
    private readonly double[] edgeRoom;
    private readonly double[] residual;
    private readonly double[] direction;
    private readonly double[] image;
    private readonly double[] scaled;
    private SheetFactor? factor;
    private SheetResponse? response;

    /// <summary>The equations of a sheet, without weights yet.</summary>
    public NormalEquations(BlockSheet sheet, JointForces forces)
    {
        this.forces = forces;
        matrix = new JointMatrix(sheet, forces);
        patches = [.. Enumerable.Range(0, sheet.Shape.Patches)];
        weights = new double[forces.Count];
        edgeRoom = new double[forces.Count];
        (residual, direction, image, scaled) = (new double[forces.Rows], new double[forces.Rows], new double[forces.Rows], new double[forces.Rows]);
    }

    /// <summary>Whether a pivot is lost in the ridge: the equations cannot be solved with these weights.</summary>
    public bool IsLoose => factor?.LooseColumn is not null;

    /// <summary>Takes other weights D.</summary>
    public void Weigh(ReadOnlySpan<double> newWeights, int threads)
    {
        newWeights.CopyTo(weights);
        matrix.Weigh(weights);
        if (factor is null)
        {
            factor = new SheetFactor(matrix, SheetDissection.Even(matrix.Shape), threads);
            response = new SheetResponse(factor);
        }
        else
        {
            factor.Change(patches, []);
        }
    }

    /// <summary>y with A D A' y = right side, to a relative residual near 1e-11 or as near as rounding lets it come.</summary>
    public double[] Solve(ReadOnlySpan<double> rightSide)
    {
        var answer = new double[forces.Rows];
        rightSide.CopyTo(residual);
        var size = Norm(residual);
        if (size == 0)
        {
            return answer;
        }

        var (rho, best, kept) = (0.0, double.PositiveInfinity, answer);
        for (var step = 0; step < MostMendings; step++)
        {
            var guess = Precondition(residual);
            var next = Dot(residual, guess);
            for (var i = 0; i < guess.Length; i++)
            {
                direction[i] = guess[i] + (step == 0 ? 0 : next / rho * direction[i]);
            }

            rho = next;
            Apply(direction, image);
            var length = rho / Dot(direction, image);
            if (!double.IsFinite(length))
            {
                break;
            }

            for (var i = 0; i < answer.Length; i++)
            {
                answer[i] += length * direction[i];
                residual[i] -= length * image[i];
            }

            var left = Norm(residual) / size;
            if (left < best)
            {
                (best, kept) = (left, (double[])answer.Clone());
            }

            if (left < Enough)
            {
                break;
            }
        }

        return kept;
    }

    /// <summary>Gives the factor's memory back.</summary>
    public void Dispose()
    {
        response?.Dispose();
        factor?.Dispose();
    }

    private double[] Precondition(double[] r)
    {
        var scale = matrix.Scale;
        for (var i = 0; i < r.Length; i++)
        {
            scaled[i] = scale[i] * r[i];
        }

        var solved = response!.Solve(scaled);
        var result = new double[r.Length];
        for (var i = 0; i < r.Length; i++)
        {
            result[i] = scale[i] * solved[i];
        }

        return result;
    }

    private void Apply(double[] y, double[] result)
    {
        forces.MultiplyTransposed(y, edgeRoom);
        for (var k = 0; k < edgeRoom.Length; k++)
        {
            edgeRoom[k] *= weights[k];
        }

        forces.Multiply(edgeRoom, result);
    }
}
