using Clomwright.Numerics;

namespace Clomwright.Geometry.Cuts;

/// <summary>A body between two planes square to a shaft: a header, or a niche whose one plane lies outside the wall. Only what lies in the wall counts.</summary>
/// <param name="Shaft">Its axes; without splays.</param>
/// <param name="Outline">Seen square on.</param>
/// <param name="HalfWidth">Along u, m.</param>
/// <param name="From">Nearer plane, w in m.</param>
/// <param name="To">Farther plane, w in m.</param>
/// <param name="Stretches">The parts of -half width..half width that count.</param>
internal sealed record Box(Shaft Shaft, Outline Outline, double HalfWidth, double From, double To, IReadOnlyList<(double From, double To)> Stretches)
{
    /// <summary>Where a face of given offset lies at a distance along u: its w; NaN where the line misses it.</summary>
    public double FaceAt(double u, double offset) =>
        Shaft.Meet(u / HalfWidth, offset) is { } frame ? Shaft.Local(frame.Offset(offset)).W : double.NaN;

    /// <summary>Cob displaced within a band, m3.</summary>
    public double Volume(Band band) =>
        band.Top <= Outline.Sill || band.Bottom >= Outline.Head || band.Height <= 0
            ? 0
            : Outline.Integrate((share, z) => Section(share, band.InsideAt(z), band.OutsideAt(z)), band.Bottom, band.Top, []);

    private double Section(double share, double inside, double outside)
    {
        var sum = 0.0;
        foreach (var stretch in Stretches)
        {
            var low = Math.Max(stretch.From, -share * HalfWidth);
            var high = Math.Min(stretch.To, share * HalfWidth);
            if (high > low)
            {
                sum += Between(low, high, inside, outside);
            }
        }

        return sum;
    }

    private double Between(double low, double high, double inside, double outside)
    {
        var cuts = new List<double>();
        if (!double.IsInfinity(From))
        {
            AddCrossings(cuts, low, high, u => FaceAt(u, inside) - From);
        }

        if (!double.IsInfinity(To))
        {
            AddCrossings(cuts, low, high, u => FaceAt(u, outside) - To);
        }

        Shaft.AddBreaks(inside, cuts);
        Shaft.AddBreaks(outside, cuts);
        return GaussRule.Eight.Integrate(Depth, low, high, cuts.ToArray());

        double Depth(double u)
        {
            var near = double.IsInfinity(From) ? FaceAt(u, inside) : Math.Max(From, FaceAt(u, inside));
            var far = double.IsInfinity(To) ? FaceAt(u, outside) : Math.Min(To, FaceAt(u, outside));
            return Math.Max(0, far - near);
        }
    }

    private static void AddCrossings(List<double> cuts, double low, double high, Func<double, double> gap)
    {
        const int Steps = 4;
        var previous = gap(low);
        for (var i = 1; i <= Steps; i++)
        {
            var (from, to) = (low + (high - low) * (i - 1) / Steps, low + (high - low) * i / Steps);
            var next = gap(to);
            if (previous < 0 != next < 0)
            {
                cuts.Add(Roots.Bracketed(gap, from, to, 1e-9 * (high - low)));
            }

            previous = next;
        }
    }
}
