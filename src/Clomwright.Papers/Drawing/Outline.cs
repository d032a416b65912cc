using Clomwright.Evidence;

namespace Clomwright.Papers.Drawing;

/// <summary>What one segment of an outline does.</summary>
public enum Verb
{
    /// <summary>Begins a piece at <see cref="Segment.To"/>.</summary>
    Move,

    /// <summary>A straight line.</summary>
    Line,

    /// <summary>A cubic curve with two control points.</summary>
    Curve,

    /// <summary>Back to where the piece began.</summary>
    Close,
}

/// <summary>One segment of an outline. <see cref="First"/> and <see cref="Second"/> matter for curves only.</summary>
public readonly record struct Segment(Verb Verb, PaperPoint To, PaperPoint First = default, PaperPoint Second = default);

/// <summary>Lines and curves on paper, in one or more pieces.</summary>
public sealed record Outline(Sequence<Segment> Segments)
{
    /// <summary>A straight line.</summary>
    public static Outline Line(PaperPoint from, PaperPoint to) => new([new(Verb.Move, from), new(Verb.Line, to)]);

    /// <summary>A straight line.</summary>
    public static Outline Line(double x1, double y1, double x2, double y2) => Line(new(x1, y1), new(x2, y2));

    /// <summary>Straight lines through points.</summary>
    public static Outline Through(params IEnumerable<PaperPoint> points) =>
        new(points.Select((p, i) => new Segment(i == 0 ? Verb.Move : Verb.Line, p)).ToSequence());

    /// <summary>A closed polygon.</summary>
    public static Outline Polygon(params IEnumerable<PaperPoint> points)
    {
        var open = Through(points);
        return new Outline(open.Segments.Plus(new Segment(Verb.Close, open.Segments[0].To)));
    }

    /// <summary>An upright rectangle.</summary>
    public static Outline Rectangle(PaperBox b) =>
        Polygon(new(b.Left, b.Top), new(b.Right, b.Top), new(b.Right, b.Bottom), new(b.Left, b.Bottom));

    /// <summary>A circle.</summary>
    public static Outline Circle(PaperPoint centre, double radius) => Ellipse(centre, radius, radius);

    /// <summary>An upright ellipse, as four cubic curves (radial error under 0.03 %).</summary>
    public static Outline Ellipse(PaperPoint c, double rx, double ry)
    {
        const double k = 0.5522847498307936; // 4/3 (sqrt 2 - 1)
        return new Outline(
        [
            new(Verb.Move, new(c.X + rx, c.Y)),
            new(Verb.Curve, new(c.X, c.Y + ry), new(c.X + rx, c.Y + k * ry), new(c.X + k * rx, c.Y + ry)),
            new(Verb.Curve, new(c.X - rx, c.Y), new(c.X - k * rx, c.Y + ry), new(c.X - rx, c.Y + k * ry)),
            new(Verb.Curve, new(c.X, c.Y - ry), new(c.X - rx, c.Y - k * ry), new(c.X - k * rx, c.Y - ry)),
            new(Verb.Curve, new(c.X + rx, c.Y), new(c.X + k * rx, c.Y - ry), new(c.X + rx, c.Y - k * ry)),
            new(Verb.Close, new(c.X + rx, c.Y)),
        ]);
    }

    /// <summary>Several outlines as one.</summary>
    public static Outline Of(params IEnumerable<Outline> outlines) => new(outlines.SelectMany(o => o.Segments).ToSequence());

    /// <summary>Its pieces, each an outline of its own.</summary>
    public IEnumerable<Outline> Apart()
    {
        List<Segment> piece = [];
        foreach (var s in Segments)
        {
            if (s.Verb == Verb.Move && piece.Count > 0)
            {
                yield return new Outline(piece.ToSequence());
                piece.Clear();
            }

            piece.Add(s);
        }

        if (piece.Count > 0)
        {
            yield return new Outline(piece.ToSequence());
        }
    }

    /// <summary>The pieces as straight lines. Curves are divided into equal steps of their parameter.</summary>
    /// <param name="steps">Lines for each curve.</param>
    public IReadOnlyList<IReadOnlyList<PaperPoint>> Pieces(int steps = 16)
    {
        List<List<PaperPoint>> pieces = [];
        foreach (var s in Segments)
        {
            if (s.Verb == Verb.Move)
            {
                pieces.Add([s.To]);
                continue;
            }

            var piece = pieces[^1];
            if (s.Verb == Verb.Curve)
            {
                var from = piece[^1];
                for (var i = 1; i < steps; i++)
                {
                    var t = (double)i / steps;
                    var u = 1 - t;
                    piece.Add(u * u * u * from + 3 * u * u * t * s.First + 3 * u * t * t * s.Second + t * t * t * s.To);
                }
            }

            piece.Add(s.To);
        }

        return pieces;
    }

    /// <summary>The smallest upright box round it, curves as drawn.</summary>
    public PaperBox Bounds => PaperBox.Around(Pieces().SelectMany(p => p));
}
