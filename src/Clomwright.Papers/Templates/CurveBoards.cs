using System.Globalization;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Sheets;

namespace Clomwright.Papers.Templates;

/// <summary>Boards cut to the curve of each face, to hold against the wall while it is laid and trimmed: one for a circle, one for round corners, several bays where the curve changes.</summary>
/// <remarks>Drawn as seen from above, outward up, so that clockwise runs from left to right. The curve is that of the face at the wall base.</remarks>
internal static class CurveBoards
{
    /// <summary>The longest board, m: what one person holds and one row of tiles takes. Common practice, no source.</summary>
    private const double ChordMost = 1.2;

    /// <summary>The deepest curve in one board, m: one row of tiles on the smaller paper.</summary>
    private const double RiseMost = 0.055;

    /// <summary>Flatter than this a straight edge serves, m.</summary>
    private const double StraightRise = 0.001;

    /// <summary>From the curve to the back of the board where it is narrowest, mm.</summary>
    private const double Back = 45;

    public static IEnumerable<Template> Of(Scene scene) => Enum.GetValues<Face>().SelectMany(face => Of(scene, face));

    private static IEnumerable<Template> Of(Scene scene, Face face)
    {
        var g = scene.Geometry;
        var offset = face == Face.Inside ? g.Wall.InsideOffset(g.Wall.Base.Metres) : g.Wall.OutsideOffset(g.Wall.Base.Metres);
        return scene.House.Plan switch
        {
            Plan.Round round when g.Curve.IsRoundAboutCentre || round.InsideDiameter.Metres > 0 => [Circle(scene, face, "curve", round.InsideDiameter.Metres / 2 + offset, 2 * Math.PI)],
            Plan.RoundedRectangle corner when corner.CornerRadius.Metres + offset > 0.05 => [Circle(scene, face, "corner", corner.CornerRadius.Metres + offset, Math.PI / 2)],
            Plan.Oval => Bays(scene, face, offset, Axis(g.Curve, scene.House.Plan.Bearing.Radians), Axis(g.Curve, scene.House.Plan.Bearing.Radians + Math.PI / 2), isQuarter: true),
            Plan.Path => Bays(scene, face, offset, 0, g.Curve.Length, isQuarter: false),
            _ => [],
        };
    }

    /// <summary>One board of a circle: any stretch of it fits. The arc is an even share of the angle there is.</summary>
    private static Template Circle(Scene scene, Face face, string kind, double radius, double angle)
    {
        var most = 2 * Math.Min(Math.Asin(Math.Min(1, ChordMost / (2 * radius))), Math.Acos(Math.Max(0, 1 - RiseMost / radius)));
        var parts = Math.Max(1, (int)Math.Ceiling(angle / most - 1e-9));
        var arc = new CircleChord(radius, 2 * radius * Math.Sin(angle / parts / 2));
        var (half, rise, r) = (500 * arc.Chord, 1000 * arc.Rise, 1000 * radius);
        var shape = new Shape(face, 2 * half, 0, rise);
        // The circle's middle on paper; angles grow clockwise from the x axis, so from left to right over its crown.
        var centre = shape.Put(half, -1000 * arc.FromCentre);
        var sweep = arc.HalfAngle;
        var curve = FullSize.Arc(centre, r, r, -Math.PI / 2 - sweep, -Math.PI / 2 + sweep);
        var say = scene.Say;
        return Board(scene, face, $"{kind}-{Word(face)}", say.Say((kind == "corner" ? "template.corner-" : "template.curve-") + Word(face)), shape, curve,
        [
            say.Say("template.use-circle", ("radius", Amount.Metres(radius)), ("chord", Amount.Metres(arc.Chord)), ("rise", Amount.Metres(arc.Rise))),
            .. Top(scene, face, arc.Chord, 1 / radius),
        ], []);
    }

    private static IEnumerable<Template> Bays(Scene scene, Face face, double offset, double from, double to, bool isQuarter)
    {
        var (say, curve) = (scene.Say, scene.Geometry.Curve);
        var (start, end) = (from, to < from ? to + curve.Length : to);
        var count = 1;
        while (count < 60 && Enumerable.Range(0, count).Select(i => Placed(i, count)).Any(b => b.Length > ChordMost || b.High - b.Low > RiseMost))
        {
            count++;
        }

        for (var i = 0; i < count; i++)
        {
            var bay = Placed(i, count);
            if (bay.High - bay.Low < StraightRise)
            {
                continue;
            }

            var shape = new Shape(face, 1000 * bay.Length, 1000 * bay.Low, 1000 * bay.High);
            string Station(double s) => say.One(Amount.Metres(curve.Wrap(s)));
            var stretches = isQuarter ? Quarters(curve, start, bay.From, bay.To).Select(s => $"{Station(s.From)} – {Station(s.To)}").ToArray() : [$"{Station(bay.From)} – {Station(bay.To)}"];
            var middle = curve.Curvature((bay.From + bay.To) / 2);
            yield return Board(scene, face, string.Create(CultureInfo.InvariantCulture, $"curve-{Word(face)}-{i + 1}"),
                say.Say("template.bay-" + Word(face), ("n", i + 1), ("count", count)), shape,
                FullSize.Face(curve, bay.From, bay.To, offset, p => shape.Put(1000 * bay.X(p), 1000 * bay.Y(p))),
                [
                    say.Say(isQuarter ? "template.use-quarter" : "template.use-bay", ("stretches", string.Join(", ", stretches)), ("chord", Amount.Metres(bay.Length))),
                    .. Top(scene, face, bay.Length, middle / (1 + middle * offset)),
                ],
                [Station(bay.From), Station(bay.To)]);
        }

        Bay Placed(int i, int of) => new(curve, offset, start + (end - start) * i / of, start + (end - start) * (i + 1) / of);
    }

    /// <summary>A quarter of an ellipse comes four times: twice as drawn, twice turned over.</summary>
    private static IEnumerable<(double From, double To)> Quarters(PlanCurve curve, double vertex, double from, double to)
    {
        var half = curve.Length / 2;
        return [(from, to), (2 * (vertex + half / 2) - to, 2 * (vertex + half / 2) - from), (from + half, to + half), (2 * (vertex + half / 2) - to + half, 2 * (vertex + half / 2) - from + half)];
    }

    /// <summary>What the board misses by at the wall top, where a leaning face bends differently.</summary>
    private static IEnumerable<string> Top(Scene scene, Face face, double chord, double curvature)
    {
        var wall = scene.Geometry.Wall;
        var (low, high) = face == Face.Inside ? (wall.InsideOffset(wall.Base.Metres), wall.InsideOffset(wall.Top.Metres)) : (wall.OutsideOffset(wall.Base.Metres), wall.OutsideOffset(wall.Top.Metres));
        var above = curvature / (1 + curvature * (high - low));
        var miss = Math.Abs(chord * chord / 8 * (above - curvature));
        return miss < 0.0005 ? [] : [scene.Say.Say("template.use-top", ("miss", Amount.Metres(miss)))];
    }

    private static Template Board(Scene scene, Face face, string key, string title, Shape shape, IEnumerable<Segment> curve, IEnumerable<string> uses, IReadOnlyList<string> ends)
    {
        Segment[] face1 = [.. curve];
        var (left, right, back) = (shape.Put(0, 0), shape.Put(shape.Length, 0), shape.BackY);
        var rest = Outline.Through(face1[0].To, new(left.X, back), new(right.X, back), face1[^1].To);
        List<Mark> lines = [new Stroke(rest, new Pen(Weight.Medium))];
        var middle = Middle(new Outline(face1.ToSequence()), (left.X + right.X) / 2);
        lines.Add(new Stroke(Outline.Line(middle, new PaperPoint(middle.X, back)), new Pen(Weight.Thin, Dash.Chain)));
        lines.Add(new Stroke(Outline.Line(left, right), new Pen(Weight.Hair, Dash.Dashed)));
        var baseline = face == Face.Inside ? back - 3 : back + 3 + Styles.Reading.Digits;
        List<Text> labels = [new(scene.Say.Say("template.middle"), new PaperPoint(middle.X + 2, baseline), Styles.Body)];
        if (ends.Count == 2)
        {
            labels.Add(new Text(ends[0], new PaperPoint(left.X + 3, baseline), Styles.Reading));
            labels.Add(new Text(ends[1], new PaperPoint(right.X - 3, baseline), Styles.Reading, Anchor.End));
        }

        return new Template(key, title, [scene.Say.Say("template.use-board-" + Word(face)), .. uses], shape.Length + 2 * Template.Margin, shape.High - shape.Low + Back + 2 * Template.Margin, new Outline(face1.ToSequence()))
        {
            Lines = lines.ToSequence(), Labels = labels.ToSequence(),
        };
    }

    /// <summary>Where a curve passes a place along the board.</summary>
    private static PaperPoint Middle(Outline curve, double x) => curve.Pieces().SelectMany(p => p).MinBy(p => Math.Abs(p.X - x));

    /// <summary>The station at which the outward normal has a bearing, on a curve that only bends outward.</summary>
    private static double Axis(PlanCurve curve, double bearing)
    {
        var first = curve.Normal(0);
        var turn = bearing - Math.Atan2(first.East, first.North);
        turn -= 2 * Math.PI * Math.Floor(turn / (2 * Math.PI));
        var (low, high) = (0.0, curve.Length);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = curve.Turning(0, middle) < turn ? (middle, high) : (low, middle);
        }

        return low;
    }

    private static string Word(Face face) => face.ToString().ToLowerInvariant();

    /// <summary>Where a board lies on its paper: x along its chord, up outward, mm.</summary>
    private sealed record Shape(Face Face, double Length, double Low, double High)
    {
        private double Crown => Template.Margin + (Face == Face.Outside ? Back : 0) + Math.Max(High, 0);

        public double BackY => Face == Face.Outside ? Template.Margin : Template.Margin + High - Low + Back;

        public PaperPoint Put(double along, double up) => new(Template.Margin + along, Crown - up);
    }

    /// <summary>A stretch of a face, measured from the straight line between its ends.</summary>
    private sealed record Bay
    {
        private readonly PlanPoint start;
        private readonly PlanPoint along;

        public Bay(PlanCurve curve, double offset, double from, double to)
        {
            (From, To, start) = (from, to, curve.At(from, offset));
            var chord = curve.At(to, offset) - start;
            Length = chord.Norm;
            along = Length > 0 ? 1 / Length * chord : new PlanPoint(1, 0);
            var heights = Enumerable.Range(0, 33).Select(i => Y(curve.At(from + (to - from) * i / 32, offset))).ToArray();
            (Low, High) = (Math.Min(0, heights.Min()), Math.Max(0, heights.Max()));
        }

        public double From { get; }

        public double To { get; }

        public double Length { get; }

        public double Low { get; }

        public double High { get; }

        public double X(PlanPoint p) => (p - start).Dot(along);

        /// <summary>Outward of the chord: to the left of a clockwise walk.</summary>
        public double Y(PlanPoint p) => along.Cross(p - start);
    }
}
