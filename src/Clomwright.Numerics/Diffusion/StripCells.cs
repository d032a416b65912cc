using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Clomwright.Numerics.Diffusion;

/// <summary>The cells of a strip and what joins them, in two orders: stacked, four rows side by side in one vector, for what goes on from face to face; and lying, four nodes of one row in one vector, for what goes on from row to row.</summary>
/// <remarks>What fills up the last vector, and rows not yet placed, have volume and no joint that counts: they are worked with the others and nobody asks for them.</remarks>
internal sealed class StripCells
{
    /// <summary>Rows in a vector.</summary>
    public const int Lanes = 4;

    private readonly int rows;

    public StripCells(StripGrid grid)
    {
        (Nodes, Width, rows) = (grid.Nodes, Fours(grid.Nodes), grid.Rows);
        (Volume, Across, Upward, FaceHeight) = (Stacked(), Stacked(), Stacked(), new Vector256<double>[Fours(rows)]);
        (LyingVolume, LyingUpward, TopWidth) = (Lying(), Lying(), Lying());
        Array.Fill(Volume, Vector256<double>.One);
        Array.Fill(LyingVolume, Vector256<double>.One);
        for (var r = 0; r < rows; r++)
        {
            var (height, thickness) = (grid.Heights[r], grid.Thicknesses[r]);
            FaceHeight.Numbers()[r] = height;
            for (var i = 0; i < Nodes; i++)
            {
                var (at, lies) = (At(r, i), r * Width * Lanes + i);
                TopWidth.Numbers()[lies] = thickness * grid.NodeShares[i];
                Volume.Numbers()[at] = LyingVolume.Numbers()[lies] = thickness * grid.NodeShares[i] * height;
                Across.Numbers()[at] = i + 1 < Nodes ? height / (thickness * (grid.Shares[i + 1] - grid.Shares[i])) : 0;
                Upward.Numbers()[at] = LyingUpward.Numbers()[lies] = r + 1 < rows
                    ? Math.Min(thickness, grid.Thicknesses[r + 1]) * grid.NodeShares[i] / ((height + grid.Heights[r + 1]) / 2)
                    : 0;
            }
        }
    }

    /// <summary>Nodes through the thickness.</summary>
    public int Nodes { get; }

    /// <summary>Vectors in a lying row.</summary>
    public int Width { get; }

    /// <summary>Of each cell, for a unit of the third dimension; stacked.</summary>
    public Vector256<double>[] Volume { get; }

    /// <summary>Face over distance to the next node; stacked.</summary>
    public Vector256<double>[] Across { get; }

    /// <summary>Face over distance to the next row; stacked.</summary>
    public Vector256<double>[] Upward { get; }

    /// <summary><see cref="Volume"/>, lying.</summary>
    public Vector256<double>[] LyingVolume { get; }

    /// <summary><see cref="Upward"/>, lying.</summary>
    public Vector256<double>[] LyingUpward { get; }

    /// <summary>Of each cell, along the thickness; lying.</summary>
    public Vector256<double>[] TopWidth { get; }

    /// <summary>Height of each row; one vector for each four rows.</summary>
    public Vector256<double>[] FaceHeight { get; }

    /// <summary>Fours, the last filled up.</summary>
    public static int Fours(int count) => (count + Lanes - 1) / Lanes;

    /// <summary>One number for each cell, stacked.</summary>
    public Vector256<double>[] Stacked() => new Vector256<double>[Fours(rows) * Nodes];

    /// <summary>One number for each cell, lying.</summary>
    public Vector256<double>[] Lying() => new Vector256<double>[rows * Width];

    /// <summary>Where a cell lies among stacked numbers; the next node is <see cref="Lanes"/> further.</summary>
    public int At(int row, int node) => (row / Lanes * Nodes + node) * Lanes + row % Lanes;

    /// <summary>Lays a stacked row down.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Lay(Vector256<double>[] stacked, int row, Span<Vector256<double>> into)
    {
        var from = stacked.Numbers();
        var to = MemoryMarshal.Cast<Vector256<double>, double>(into);
        for (var (i, at) = (0, At(row, 0)); i < Nodes; i++, at += Lanes)
        {
            to[i] = from[at];
        }
    }

    /// <summary>Lays the first rows down.</summary>
    public void LayRows(Vector256<double>[] stacked, int count, Vector256<double>[] into)
    {
        for (var r = 0; r < count; r++)
        {
            Lay(stacked, r, into.AsSpan(r * Width, Width));
        }
    }

    /// <summary>Stacks a lying row.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Stack(ReadOnlySpan<Vector256<double>> lying, int row, Vector256<double>[] into)
    {
        var from = MemoryMarshal.Cast<Vector256<double>, double>(lying);
        var to = into.Numbers();
        for (var (i, at) = (0, At(row, 0)); i < Nodes; i++, at += Lanes)
        {
            to[at] = from[i];
        }
    }
}

/// <summary>Vectors as the numbers they hold.</summary>
internal static class VectorNumbers
{
    public static Span<double> Numbers(this Vector256<double>[] vectors) => MemoryMarshal.Cast<Vector256<double>, double>(vectors.AsSpan());
}
