namespace Clomwright.Geometry;

/// <summary>Angles that bring some landing too near an opening, as intervals on a circle of a period.</summary>
internal sealed class Forbidden
{
    private readonly List<(double At, int Step)> edges;
    private readonly double period;
    private readonly int atZero;

    private Forbidden(List<(double At, int Step)> edges, double period, int atZero)
    {
        this.edges = edges;
        this.period = period;
        this.atZero = atZero;
    }

    /// <summary>The angles at which landings lie over holes or nearer to them than a distance. Holes that meet count as one, so that a landing over both is over one.</summary>
    /// <param name="ring">Bearings of stations.</param>
    /// <param name="bearings">Of the landings.</param>
    /// <param name="holes">On a ring of <paramref name="length"/>.</param>
    /// <param name="apart">The distance.</param>
    /// <param name="length">Of the ring, as stations count.</param>
    /// <param name="period">Of the circle of angles.</param>
    public static Forbidden Of(BearingRing ring, double[] bearings, Span[] holes, double apart, double length, double period)
    {
        var edges = new List<(double At, int Step)>();
        var atZero = 0;
        foreach (var hole in Joined(holes, apart, length))
        {
            var (from, to) = (ring.BearingAt(hole.From), ring.BearingAt(hole.To));
            foreach (var bearing in bearings)
            {
                // Every whole period inside the interval covers the circle once; what is left over covers a part.
                var start = Within(from - bearing, period);
                var width = to - from;
                var whole = (int)Math.Floor(width / period);
                var end = start + width - whole * period;
                atZero += whole;
                if (end >= period)
                {
                    atZero++;
                    end -= period;
                }

                edges.Add((start, 1));
                edges.Add((end, -1));
            }
        }

        edges.Sort((a, b) => a.At != b.At ? a.At.CompareTo(b.At) : a.Step.CompareTo(b.Step));
        return new Forbidden(edges, period, atZero);
    }

    /// <summary>The least number of intervals over any angle, and the middle of the widest such stretch, of equal ones the nearest to 0; within half a period of 0.</summary>
    public (int Count, double Angle) Fewest()
    {
        if (edges.Count == 0)
        {
            return (0, 0);
        }

        // Begin after the first edge, so that the stretch round 0 is taken whole.
        var over = atZero;
        var best = (Count: int.MaxValue, Width: 0.0, Angle: 0.0);
        for (var i = 0; i < edges.Count; i++)
        {
            over += edges[i].Step;
            var next = i + 1 < edges.Count ? edges[i + 1].At : edges[0].At + period;
            var width = next - edges[i].At;
            if (width <= 0)
            {
                continue;
            }

            var angle = Nearest((edges[i].At + next) / 2);
            var isWider = width > best.Width + 1e-12;
            var isAsWide = width > best.Width - 1e-12;
            if (over < best.Count || over == best.Count && (isWider || isAsWide && Math.Abs(angle) < Math.Abs(best.Angle) - 1e-12))
            {
                best = (over, width, angle);
            }
        }

        return (best.Count, best.Angle);
    }

    /// <summary>The holes, longer by a distance at both ends, those that meet joined; one that goes all round is the ring once.</summary>
    private static List<Span> Joined(Span[] holes, double apart, double length)
    {
        var joined = new List<Span>();
        foreach (var hole in holes.Select(h => new Span(Within(h.From - apart, length), Within(h.From - apart, length) + h.Width + 2 * apart)).OrderBy(h => h.From))
        {
            if (joined.Count > 0 && hole.From <= joined[^1].To)
            {
                joined[^1] = joined[^1] with { To = Math.Max(joined[^1].To, hole.To) };
            }
            else
            {
                joined.Add(hole);
            }
        }

        // The last may run on over the first ones, a turn later.
        while (joined.Count > 1 && joined[^1].To >= joined[0].From + length)
        {
            joined[^1] = joined[^1] with { To = Math.Max(joined[^1].To, joined[0].To + length) };
            joined.RemoveAt(0);
        }

        return [.. joined.Select(h => h.Width >= length ? h with { To = h.From + length } : h)];
    }

    private double Nearest(double angle) => Math.IEEERemainder(angle, period);

    private static double Within(double angle, double period) => angle - period * Math.Floor(angle / period);
}
