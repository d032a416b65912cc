using Clomwright.Evidence;

namespace Clomwright.Papers.Drawing;

/// <summary>Parallel lines over an area, cut off at its outline: how materials are told apart without colour.</summary>
/// <param name="Area">Closed; where pieces lie in one another, every second one is a hole.</param>
/// <param name="Angle">Of the lines, degrees clockwise from the horizontal as seen on paper.</param>
/// <param name="Spacing">Between lines, mm.</param>
/// <param name="Pen">Of the lines.</param>
public sealed record Hatch(Outline Area, double Angle, double Spacing, Pen Pen) : Composite
{
    /// <summary>Pieces that lie nearer to each other than this along a line are one, mm.</summary>
    private const double Joined = 1e-6;

    /// <inheritdoc/>
    public override Sequence<Mark> Parts
    {
        get
        {
            var lines = Lines();
            return lines.Count == 0 ? [] : [new Stroke(Outline.Of(lines), Pen)];
        }
    }

    /// <summary>The cut lines. They start from multiples of the spacing on paper, so neighbouring areas match.</summary>
    private List<Outline> Lines()
    {
        var pieces = Area.Pieces().Select(p => p.Select(q => q.Turned(-Angle)).ToArray()).ToArray();
        var box = PaperBox.Around(pieces.SelectMany(p => p));
        List<Outline> lines = [];
        for (var y = (Math.Floor(box.Top / Spacing) + 0.5) * Spacing; y < box.Bottom; y += Spacing)
        {
            if (y <= box.Top)
            {
                continue;
            }

            var crossings = pieces.SelectMany(p => Crossings(p, y)).Order().ToArray();
            for (var i = 0; i + 1 < crossings.Length; i += 2)
            {
                var from = crossings[i];
                while (i + 3 < crossings.Length && crossings[i + 2] - crossings[i + 1] < Joined)
                {
                    i += 2;
                }

                lines.Add(Outline.Line(new PaperPoint(from, y).Turned(Angle), new PaperPoint(crossings[i + 1], y).Turned(Angle)));
            }
        }

        return lines;
    }

    private static IEnumerable<double> Crossings(PaperPoint[] piece, double y)
    {
        for (var i = 0; i < piece.Length; i++)
        {
            var (a, b) = (piece[i], piece[(i + 1) % piece.Length]);
            if (a.Y <= y != b.Y <= y)
            {
                yield return a.X + (y - a.Y) / (b.Y - a.Y) * (b.X - a.X);
            }
        }
    }
}
