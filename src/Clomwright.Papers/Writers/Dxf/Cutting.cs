using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Writers.Dxf;

/// <summary>Cuts lines at the edge of an area: what lies under white paper is taken away, since other programs know no paper that covers.</summary>
internal sealed class Cutting
{
    /// <summary>Ends that lie nearer to each other than this along a piece, as a share of it, are one.</summary>
    private const double Joined = 1e-9;

    private readonly (PaperPoint From, PaperPoint To)[] edges;

    /// <summary>An area; where pieces lie in one another, every second one is a hole.</summary>
    public Cutting(Outline area)
    {
        edges = [.. area.Pieces(Flat.Steps).SelectMany(p => p.Select((q, i) => (q, p[(i + 1) % p.Count])))];
        Box = area.Bounds;
    }

    /// <summary>Round the area.</summary>
    public PaperBox Box { get; }

    /// <summary>The parts of a line that lie outside the area, or inside it; the line itself where nothing is cut.</summary>
    public IEnumerable<Line> Keep(Line line, bool inside)
    {
        if (!line.Box.Overlaps(Box.Inset(-1e-9)))
        {
            return inside ? [] : [line];
        }

        List<Line> kept = [];
        List<PaperPoint> run = [];
        var points = line.Closed ? [.. line.Points, line.Points[0]] : line.Points;
        var whole = true;
        for (var i = 0; i + 1 < points.Count; i++)
        {
            foreach (var (a, b) in Parts(points[i], points[i + 1]))
            {
                if (Holds(0.5 * (a + b)) != inside)
                {
                    whole = false;
                    Close();
                    continue;
                }

                if (run.Count == 0)
                {
                    run.Add(a);
                }

                run.Add(b);
            }
        }

        Close();
        return whole ? [line] : kept;

        void Close()
        {
            if (run.Count > 1)
            {
                kept.Add(line with { Points = [.. run], Closed = false });
            }

            run.Clear();
        }
    }

    /// <summary>Whether a point lies in the area.</summary>
    public bool Holds(PaperPoint p)
    {
        var within = false;
        foreach (var (a, b) in edges)
        {
            within ^= a.Y > p.Y != b.Y > p.Y && p.X < a.X + (p.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X);
        }

        return within;
    }

    /// <summary>A straight piece divided where it meets the edge.</summary>
    private IEnumerable<(PaperPoint, PaperPoint)> Parts(PaperPoint from, PaperPoint to)
    {
        var along = to - from;
        List<double> at = [0, 1];
        foreach (var (a, b) in edges)
        {
            var edge = b - a;
            var cross = along.X * edge.Y - along.Y * edge.X;
            if (Math.Abs(cross) < 1e-12)
            {
                continue;
            }

            var gap = a - from;
            var (t, u) = ((gap.X * edge.Y - gap.Y * edge.X) / cross, (gap.X * along.Y - gap.Y * along.X) / cross);
            if (t is > 0 and < 1 && u is >= 0 and <= 1)
            {
                at.Add(t);
            }
        }

        at.Sort();
        for (var i = 0; i + 1 < at.Count; i++)
        {
            if (at[i + 1] - at[i] > Joined)
            {
                yield return (from + at[i] * along, from + at[i + 1] * along);
            }
        }
    }
}

/// <summary>A line of straight pieces.</summary>
internal sealed record Line(IReadOnlyList<PaperPoint> Points, bool Closed, Pen Pen, string Layer)
{
    /// <summary>Round it.</summary>
    public PaperBox Box { get; } = PaperBox.Around(Points);
}
