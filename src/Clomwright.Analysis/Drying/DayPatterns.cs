using Clomwright.Numerics.Diffusion;

namespace Clomwright.Analysis.Drying;

/// <summary>Conditions of a stretch of days, each day one of some patterns of 24 hours; means over any stretch are exact.</summary>
/// <remarks>Kept as running integrals, so a step of any length costs two look-ups.</remarks>
public sealed class DayPatterns : ISurroundings
{
    private const int Width = 14;
    private const double Hour = 3600;
    private const double Day = 86_400;
    private readonly int[] patternOf;
    private readonly double[][] within;
    private readonly double[] before;
    private readonly double full;

    /// <summary>A stretch of days.</summary>
    /// <param name="patterns">24 conditions each.</param>
    /// <param name="patternOf">The pattern of each day.</param>
    /// <param name="full">State of a full surface, for every uptake among them.</param>
    public DayPatterns(IReadOnlyList<Condition[]> patterns, int[] patternOf, double full)
    {
        ArgumentNullException.ThrowIfNull(patterns);
        ArgumentNullException.ThrowIfNull(patternOf);
        (this.patternOf, this.full) = (patternOf, full);
        within = [.. patterns.Select(Integrals)];
        before = new double[(patternOf.Length + 1) * Width];
        for (var d = 0; d < patternOf.Length; d++)
        {
            for (var k = 0; k < Width; k++)
            {
                before[(d + 1) * Width + k] = before[d * Width + k] + within[patternOf[d]][24 * Width + k];
            }
        }
    }

    /// <summary>How many days there are; the last is repeated beyond them.</summary>
    public int Count => patternOf.Length;

    /// <summary>The same days without their hours: each pattern is its own mean, for what is so slow that no hour shows.</summary>
    public DayPatterns Smoothed()
    {
        var means = within.Select(sums =>
        {
            double At(int k) => sums[24 * Width + k] / Day;
            var mean = new Condition(
                At(0), At(1), new(At(2), At(3), At(4), At(5), full), new(At(6), At(7), At(8), At(9), full), new(At(10), At(11), At(12), At(13), full));
            return Enumerable.Repeat(mean, 24).ToArray();
        }).ToArray();
        return new DayPatterns(means, patternOf, full);
    }

    /// <inheritdoc/>
    public Condition Mean(double from, double to)
    {
        Span<double> a = stackalloc double[Width];
        Span<double> b = stackalloc double[Width];
        Integral(from, a);
        Integral(to, b);
        var share = 1 / (to - from);
        for (var k = 0; k < Width; k++)
        {
            b[k] = (b[k] - a[k]) * share;
        }

        return new(b[0], b[1], new(b[2], b[3], b[4], b[5], full), new(b[6], b[7], b[8], b[9], full), new(b[10], b[11], b[12], b[13], full));
    }

    private void Integral(double time, Span<double> into)
    {
        var day = Math.Clamp((int)(time / Day), 0, patternOf.Length - 1);
        var hours = (time - day * Day) / Hour;
        var hour = Math.Clamp((int)hours, 0, 23);
        var pattern = within[patternOf[day]].AsSpan(hour * Width, 2 * Width);
        var part = hours - hour;
        var start = before.AsSpan(day * Width, Width);
        for (var k = 0; k < Width; k++)
        {
            into[k] = start[k] + pattern[k] + part * (pattern[Width + k] - pattern[k]);
        }
    }

    private static double[] Integrals(Condition[] hours)
    {
        var sums = new double[25 * Width];
        for (var h = 0; h < 24; h++)
        {
            var c = hours[h];
            Span<double> values = [c.ScaleA, c.ScaleB, c.First.P, c.First.Q, c.First.R, c.First.S, c.Last.P, c.Last.Q, c.Last.R, c.Last.S, c.Top.P, c.Top.Q, c.Top.R, c.Top.S];
            for (var k = 0; k < Width; k++)
            {
                sums[(h + 1) * Width + k] = sums[h * Width + k] + values[k] * Hour;
            }
        }

        return sums;
    }
}
