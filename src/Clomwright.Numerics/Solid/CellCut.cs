using Clomwright.Numerics.Frames;

namespace Clomwright.Numerics.Solid;

/// <summary>
/// How much of a cell is left where a void cuts it: for each of its eight Gauss points q the integral of that point's Lagrange polynomial l_q over
/// what is left, so that sums over the points integrate every trilinear function over the solid part exactly.
/// </summary>
/// <remarks>
/// A sliver far from the points would give some of them a negative weight; weights stay above <see cref="Floor"/>, which also keeps the nodes
/// beyond the cut attached. Null stands for a whole cell.
/// </remarks>
public sealed class CellCut : IEquatable<CellCut>
{
    /// <summary>The least weight of a point.</summary>
    public const double Floor = 0.01;

    private static readonly double Gauss = 1 / Math.Sqrt(3);

    private readonly double[] remaining;
    private readonly double[] weights;

    private CellCut(double[] remaining)
    {
        this.remaining = remaining;
        weights = Array.ConvertAll(remaining, w => Math.Clamp(w, Floor, 1));
        Share = Math.Clamp(remaining.Average(), 0, 1);
    }

    /// <summary>Share of the cell's extent that is left, 0 to 1.</summary>
    public double Share { get; }

    /// <summary>The middle of what is left, in the cell's reference coordinates (-1..1): the Lagrange polynomials reproduce a coordinate exactly.</summary>
    public Vector3 Middle
    {
        get
        {
            var (sum, x, y, z) = (0.0, 0.0, 0.0, 0.0);
            for (var q = 0; q < 8; q++)
            {
                sum += remaining[q];
                x += remaining[q] * ((q & 2) == 0 ? -Gauss : Gauss);
                y += remaining[q] * ((q & 4) == 0 ? -Gauss : Gauss);
                z += remaining[q] * ((q & 1) == 0 ? -Gauss : Gauss);
            }

            return sum > 0 ? new Vector3(Math.Clamp(x / sum, -1, 1), Math.Clamp(y / sum, -1, 1), Math.Clamp(z / sum, -1, 1)) : Vector3.Zero;
        }
    }

    /// <summary>The weights of the Gauss points; 1 where nothing is missing.</summary>
    internal ReadOnlySpan<double> Weights => weights;

    /// <summary>A cell or what is left of it without a part of which the integrals are given.</summary>
    internal static CellCut Without(CellCut? cut, ReadOnlySpan<double> part)
    {
        var left = new double[8];
        for (var q = 0; q < 8; q++)
        {
            left[q] = (cut?.remaining[q] ?? 1) - part[q];
        }

        return new CellCut(left);
    }

    /// <summary>The integrals of the two Lagrange polynomials of one direction over from..to, in -1..1.</summary>
    internal static (double Low, double High) Integrals(double from, double to)
    {
        var (length, moment) = (to - from, (to * to - from * from) / 2);
        return ((length - moment / Gauss) / 2, (length + moment / Gauss) / 2);
    }

    /// <inheritdoc/>
    public bool Equals(CellCut? other) => other is not null && (ReferenceEquals(this, other) || remaining.AsSpan().SequenceEqual(other.remaining));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as CellCut);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(remaining[0], remaining[3], remaining[5], remaining[6]);
}
