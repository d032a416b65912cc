namespace Clomwright.Geometry.Cuts;

/// <summary>A round or square thing set square into a face: its outline times its depth.</summary>
/// <param name="Middle">Height of its middle, m.</param>
/// <param name="Width">Along the wall, m.</param>
/// <param name="Size">Upright, m.</param>
/// <param name="Depth">Into the wall, m.</param>
/// <param name="IsRound">An ellipse seen square on, else a rectangle.</param>
internal sealed record Plug(double Middle, double Width, double Size, double Depth, bool IsRound)
{
    /// <summary>Cob displaced within a band, m3.</summary>
    public double Volume(Band band)
    {
        if (Size <= 0 || Width <= 0 || Depth <= 0)
        {
            return 0;
        }

        var low = Math.Clamp(2 * (band.Bottom - Middle) / Size, -1, 1);
        var high = Math.Clamp(2 * (band.Top - Middle) / Size, -1, 1);
        var area = IsRound ? Width * Size / 4 * (Segment(high) - Segment(low)) : Width * Size * (high - low) / 2;
        return area * Depth;
    }

    /// <summary>Integral of 2 sqrt(1 - x^2): the area of a unit circle below x, less a constant.</summary>
    private static double Segment(double x) => Math.Asin(x) + x * Math.Sqrt(Math.Max(0, 1 - x * x));
}
