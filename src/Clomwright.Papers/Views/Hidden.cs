using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Views;

/// <summary>Areas that stand before what is drawn after them: leaves out what of a line lies behind them.</summary>
internal sealed class Hidden
{
    private readonly List<(PaperBox Box, PaperPoint[] Area)> areas = [];

    /// <summary>One more area; what is no area hides nothing.</summary>
    /// <param name="area">Closed; where it crosses itself, every second part is inside.</param>
    public void Add(PaperPoint[] area)
    {
        if (area.Length > 2)
        {
            areas.Add((PaperBox.Around(area), area));
        }
    }

    /// <summary>The pieces of a line outside all of the areas.</summary>
    /// <param name="line">Straight from each point to the next.</param>
    public IEnumerable<IReadOnlyList<PaperPoint>> Outside(IReadOnlyList<PaperPoint> line)
    {
        List<PaperPoint> run = [];
        List<PaperPoint[]> near = [];
        List<double> cuts = [];
        for (var i = 0; i + 1 < line.Count; i++)
        {
            var (a, b) = (line[i], line[i + 1]);
            var box = PaperBox.Around(a, b).Inset(-1e-6);
            near.Clear();
            cuts.Clear();
            foreach (var (its, area) in areas)
            {
                if (its.Overlaps(box))
                {
                    near.Add(area);
                    AddCrossings(cuts, a, b, area);
                }
            }

            cuts.Sort();
            cuts.Insert(0, 0);
            cuts.Add(1);
            for (var k = 0; k + 1 < cuts.Count; k++)
            {
                var (from, to) = (a + cuts[k] * (b - a), a + cuts[k + 1] * (b - a));
                var middle = 0.5 * (from + to);
                if (cuts[k + 1] - cuts[k] < 1e-12 && cuts.Count > 2)
                {
                    continue;
                }

                if (near.Exists(area => Inside(middle, area)))
                {
                    if (run.Count > 1)
                    {
                        yield return run;
                    }

                    run = [];
                    continue;
                }

                if (run.Count == 0)
                {
                    run.Add(from);
                }

                run.Add(to);
            }
        }

        if (run.Count > 1)
        {
            yield return run;
        }
    }

    private static void AddCrossings(List<double> cuts, PaperPoint a, PaperPoint b, PaperPoint[] area)
    {
        var d = b - a;
        var p = area[^1];
        foreach (var q in area)
        {
            var (start, e) = (p, q - p);
            p = q;
            var cross = d.X * e.Y - d.Y * e.X;
            if (cross == 0)
            {
                continue;
            }

            var away = start - a;
            var (t, s) = ((away.X * e.Y - away.Y * e.X) / cross, (away.X * d.Y - away.Y * d.X) / cross);
            if (t is > 0 and < 1 && s is >= 0 and <= 1)
            {
                cuts.Add(t);
            }
        }
    }

    private static bool Inside(PaperPoint at, PaperPoint[] area)
    {
        var inside = false;
        var p = area[^1];
        foreach (var q in area)
        {
            if (p.Y > at.Y != q.Y > at.Y && at.X < p.X + (at.Y - p.Y) / (q.Y - p.Y) * (q.X - p.X))
            {
                inside = !inside;
            }

            p = q;
        }

        return inside;
    }
}
