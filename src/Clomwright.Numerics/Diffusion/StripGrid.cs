namespace Clomwright.Numerics.Diffusion;

/// <summary>Nodes through a thickness and rows up a height. Nodes lie on both faces; a row is a layer of cells with one thickness.</summary>
public sealed class StripGrid
{
    private readonly double[] shares;
    private readonly double[] nodeShares;
    private readonly double[] heights;
    private readonly double[] thicknesses;

    /// <summary>A grid.</summary>
    /// <param name="shares">Places of the nodes as shares of the thickness, ascending from 0 to 1; at least two.</param>
    /// <param name="heights">Height of each row, bottom up; positive.</param>
    /// <param name="thicknesses">Thickness of each row; positive.</param>
    public StripGrid(ReadOnlySpan<double> shares, ReadOnlySpan<double> heights, ReadOnlySpan<double> thicknesses)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(shares.Length, 2);
        ArgumentOutOfRangeException.ThrowIfNotEqual(thicknesses.Length, heights.Length);
        (this.shares, this.heights, this.thicknesses) = (shares.ToArray(), heights.ToArray(), thicknesses.ToArray());
        nodeShares = new double[shares.Length];
        for (var i = 0; i + 1 < shares.Length; i++)
        {
            var half = (shares[i + 1] - shares[i]) / 2;
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(half, nameof(shares));
            nodeShares[i] += half;
            nodeShares[i + 1] += half;
        }
    }

    /// <summary>One row of unit height.</summary>
    public static StripGrid Slab(ReadOnlySpan<double> shares, double thickness) => new(shares, [1], [thickness]);

    /// <summary>How many nodes lie through the thickness.</summary>
    public int Nodes => shares.Length;

    /// <summary>How many rows lie up the height.</summary>
    public int Rows => heights.Length;

    /// <summary>Places of the nodes as shares of the thickness.</summary>
    public ReadOnlySpan<double> Shares => shares;

    /// <summary>The share of a row's volume that belongs to each node.</summary>
    public ReadOnlySpan<double> NodeShares => nodeShares;

    /// <summary>Height of each row.</summary>
    public ReadOnlySpan<double> Heights => heights;

    /// <summary>Thickness of each row.</summary>
    public ReadOnlySpan<double> Thicknesses => thicknesses;

    /// <summary>Evenly spaced places.</summary>
    public static double[] Even(int intervals) => [.. Enumerable.Range(0, intervals + 1).Select(i => i / (double)intervals)];

    /// <summary>Places closer together towards both faces: (1 + tanh(s (2i/N - 1))/tanh s)/2.</summary>
    /// <param name="intervals">N.</param>
    /// <param name="strength">s; 2 makes the outermost interval about 0.15/N.</param>
    public static double[] Graded(int intervals, double strength) =>
        [.. Enumerable.Range(0, intervals + 1).Select(i => i == 0 ? 0 : i == intervals ? 1 : (1 + Math.Tanh(strength * (2.0 * i / intervals - 1)) / Math.Tanh(strength)) / 2)];
}
