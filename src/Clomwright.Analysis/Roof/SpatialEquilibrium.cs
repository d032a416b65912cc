using Clomwright.Numerics.Frames;
using Clomwright.Numerics.Linear;

namespace Clomwright.Analysis.Roof;

/// <summary>The same frame in three dimensions, exactly: a ball joint at each foot, one touching point at each crossing that can pass a force in any direction.</summary>
/// <remarks>
/// Three moment equations a pole about its foot, three force components a crossing: <c>(C_far - foot) x F_i - (C_near - foot) x F_(i-1) + sum r x load = 0</c>.
/// It is statically determinate, so no stiffness enters. For equal poles under equal loads every force comes out vertical and no plate is pushed outward;
/// the forces are 0.3 to 2 % above the plan values, because the touching point does not lie on the plan crossing. Under unequal loads a ball joint cannot
/// stop a pole from rolling about its own axis, and the crossings hold it by sideways forces.
/// </remarks>
public sealed class SpatialEquilibrium
{
    private readonly ReciprocalGeometry frame;
    private readonly Elimination equations;

    private SpatialEquilibrium(ReciprocalGeometry frame, Crossing[] crossings, Elimination equations)
    {
        this.frame = frame;
        this.equations = equations;
        Crossings = [.. crossings];
    }

    /// <summary>The crossings in the order of carrying.</summary>
    public IReadOnlyList<Crossing> Crossings { get; }

    /// <summary>The equations of a frame, ready for any load; null where they have no single answer.</summary>
    public static SpatialEquilibrium? Of(ReciprocalGeometry frame)
    {
        var n = frame.Count;
        var crossings = Crossing.Of(frame);
        var matrix = new double[9 * n * n];
        for (var i = 0; i < n; i++)
        {
            var before = (i + n - 1) % n;
            var foot = frame.Poles[i].AxisAt(0);
            Add(matrix, 3 * n, i, i, crossings[i].Contact - foot, 1);
            Add(matrix, 3 * n, i, before, crossings[before].Contact - foot, -1);
        }

        return Elimination.Of(matrix, 3 * n) is { PivotRatio: > 1e-13 } equations ? new SpatialEquilibrium(frame, crossings, equations) : null;
    }

    /// <summary>Forces under vertical loads on the axes.</summary>
    /// <param name="load">W_i in the order of carrying, N, downward.</param>
    /// <param name="moment">First moment of each load about its plate, in plan, N m.</param>
    public SpatialForces Solve(ReadOnlySpan<double> load, ReadOnlySpan<double> moment)
    {
        var n = frame.Count;
        var right = new double[3 * n];
        for (var i = 0; i < n; i++)
        {
            // Of a downward load at r: r x (0, 0, -W) = W x (-along.north, along.east, 0); moved to the right-hand side.
            right[3 * i] = moment[i] * frame.Poles[i].Along.North;
            right[3 * i + 1] = -moment[i] * frame.Poles[i].Along.East;
        }

        var x = equations.Solve(right);
        var crossing = new Vector3[n];
        var plate = new Vector3[n];
        for (var i = 0; i < n; i++)
        {
            crossing[i] = new Vector3(x[3 * i], x[3 * i + 1], x[3 * i + 2]);
        }

        for (var i = 0; i < n; i++)
        {
            plate[i] = new Vector3(0, 0, load[i]) + crossing[(i + n - 1) % n] - crossing[i];
        }

        return new SpatialForces(crossing, plate);
    }

    private static void Add(double[] matrix, int size, int pole, int crossing, Vector3 arm, double sign)
    {
        var row = 3 * pole;
        var column = 3 * crossing;
        matrix[row * size + column + 1] -= sign * arm.Z;
        matrix[row * size + column + 2] += sign * arm.Y;
        matrix[(row + 1) * size + column] += sign * arm.Z;
        matrix[(row + 1) * size + column + 2] -= sign * arm.X;
        matrix[(row + 2) * size + column] -= sign * arm.Y;
        matrix[(row + 2) * size + column + 1] += sign * arm.X;
    }
}

/// <summary>Forces of the three-dimensional frame, N, in the order of carrying.</summary>
/// <param name="Crossing">On each pole at its far crossing, from the pole that carries it.</param>
/// <param name="Plate">On each pole at its foot, from the plate.</param>
public sealed record SpatialForces(IReadOnlyList<Vector3> Crossing, IReadOnlyList<Vector3> Plate);
