using Clomwright.Geometry;
using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Templates;

/// <summary>Curves of the house as curves of the paper, true to well under a hundredth of a millimetre.</summary>
internal static class FullSize
{
    /// <summary>The plan curve offset outward, between two stations, as cubic pieces no longer than this, m.</summary>
    private const double PieceLength = 0.03;

    /// <summary>The most that one piece of a circle or ellipse turns, radians.</summary>
    private const double PieceTurn = Math.PI / 24;

    /// <summary>The plan curve offset outward by a distance in m, from one station to a later one, put on paper by a turn and a shift; the first piece begins with a move or goes on with a line.</summary>
    public static IEnumerable<Segment> Face(PlanCurve curve, double from, double to, double offset, Func<PlanPoint, PaperPoint> put, Verb begin = Verb.Move)
    {
        var count = Math.Max(4, (int)Math.Ceiling(curve.OffsetArc(from, to, offset) / PieceLength));
        yield return new Segment(begin, put(curve.At(from, offset)));
        for (var i = 0; i < count; i++)
        {
            var (a, b) = (from + (to - from) * i / count, from + (to - from) * (i + 1) / count);
            var turn = curve.Turning(a, b);
            var handle = curve.OffsetArc(a, b, offset) * (Math.Abs(turn) < 1e-6 ? 1.0 / 3 : 4.0 / 3 * Math.Tan(turn / 4) / turn);
            var (start, end) = (curve.At(a, offset), curve.At(b, offset));
            yield return new Segment(Verb.Curve, put(end), put(start + handle * curve.Tangent(a)), put(end - handle * curve.Tangent(b)));
        }
    }

    /// <summary>An arc of an upright ellipse on paper; angles in radians from the x axis, growing clockwise as seen.</summary>
    public static IEnumerable<Segment> Arc(PaperPoint centre, double rx, double ry, double from, double to, Verb begin = Verb.Move)
    {
        var count = Math.Max(1, (int)Math.Ceiling(Math.Abs(to - from) / PieceTurn));
        var step = (to - from) / count;
        var k = 4.0 / 3 * Math.Tan(step / 4);
        PaperPoint At(double angle) => new(centre.X + rx * Math.Cos(angle), centre.Y + ry * Math.Sin(angle));
        PaperPoint Along(double angle) => new(-rx * Math.Sin(angle), ry * Math.Cos(angle));
        yield return new Segment(begin, At(from));
        for (var i = 0; i < count; i++)
        {
            var (a, b) = (from + i * step, from + (i + 1) * step);
            yield return new Segment(Verb.Curve, At(b), At(a) + k * Along(a), At(b) - k * Along(b));
        }
    }

    /// <summary>An outline smaller by a factor and then moved: for the small map.</summary>
    public static Outline Scaled(this Outline outline, double factor, double dx, double dy)
    {
        var by = new PaperPoint(dx, dy);
        return new Outline(Evidence.Sequence.ToSequence(outline.Segments.Select(s => new Segment(s.Verb, factor * s.To + by, factor * s.First + by, factor * s.Second + by))));
    }
}
