using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Views;

/// <summary>A cut through trench, stem and the foot of the wall, square to the wall: outside on the left, inside on the right. Every part is drawn to size.</summary>
internal sealed class FoundationDrawing
{
    private const double FloorShown = 0.34;
    private const double GroundShown = 0.34;
    private const double CobShown = 0.34;
    private const double Below = 0.06;
    private const double Column = 9.5;

    /// <summary>Of a drain pipe, m.</summary>
    private const double Pipe = 0.1016;

    /// <summary>Stone under it, m.</summary>
    private const double Bedding = 0.1016;

    private readonly HouseGeometry geometry;
    private readonly DrainLine? drain;
    private readonly double k, outside, stemInside, stemOutside, grade;

    public FoundationDrawing(HouseGeometry geometry, double paperPerMetre)
    {
        (this.geometry, k) = (geometry, paperPerMetre);
        outside = geometry.Wall.OutsideOffset(geometry.Wall.Base.Metres);
        (stemInside, stemOutside) = geometry.Stem;
        grade = geometry.House.Site.Grade?.Metres ?? 0;
        drain = DrainLine.Of(geometry);
    }

    /// <summary>Left end of what is drawn, its dimensions included, mm.</summary>
    public double Left => X(Outer + GroundShown) - (Upright().Count() + 0.5) * Column;

    /// <summary>Right end of what is drawn, mm.</summary>
    public double Right => X(Math.Min(0, Math.Min(stemInside, TrenchInside)) - FloorShown);

    /// <summary>Top of what is drawn, mm.</summary>
    public double Top => Y(CobTop);

    /// <summary>Foot of what is drawn, its dimensions included, mm.</summary>
    public double Foot => Y(Lowest) + 7 + 9.5 * (geometry.House.Trench is null ? 2 : geometry.House.Trench.GradeBeam is null ? 3 : 4);

    private double CobTop => Math.Min(geometry.Wall.Top.Metres, geometry.Wall.Base.Metres + CobShown);

    private double Outer => Math.Max(outside, Math.Max(stemOutside, TrenchOutside));

    private double Middle => (stemInside + stemOutside) / 2;

    private double TrenchHalf => (geometry.House.Trench?.Width.Metres ?? 0) / 2;

    private double TrenchInside => Middle - TrenchHalf;

    private double TrenchOutside => Middle + TrenchHalf;

    private double Bottom => grade - (geometry.House.Trench?.Depth.Metres ?? 0);

    private double Deepest => drain is null ? Bottom : Math.Min(Bottom, drain.End);

    private double Lowest => Math.Min(Math.Min(Deepest, -geometry.House.Floor.Layers.Sum(l => l.Depth.Metres)), grade - (geometry.House.Site.FrostDepth?.Metres ?? 0)) - Below;

    public double X(double offset) => -offset * k;

    public double Y(double height) => -height * k;

    /// <summary>Draws it and gives back what is to be named beside it, from the top down.</summary>
    public IReadOnlyList<PartLabel> Draw(Board board, Sheets.Wording say)
    {
        List<PartLabel> labels = [];
        Ground(board, say, labels);
        Trench(board, say, labels);
        Floor(board, say, labels);
        Stem(board, say, labels);
        Cob(board, say, labels);
        Dimensions(board, say.First, say.Book);
        return labels;
    }

    private PaperBox Box(double fromOffset, double toOffset, double bottom, double top) => new(X(toOffset), Y(top), X(fromOffset), Y(bottom));

    private void Ground(Board board, Sheets.Wording say, List<PartLabel> labels)
    {
        var site = geometry.House.Site;
        var fall = site.GroundFall?.RiseOverRun ?? 0;
        var far = Outer + GroundShown;
        var line = Outline.Line(X(far), Y(grade - fall * (far - stemOutside)), X(stemOutside), Y(grade));
        board.Add(new Group("foundation-ground", [new Stroke(line, new Pen(Weight.Bold))]));
        Grade(board, say.First, site.GroundFall is { } given ? say.Say("foundation.grade-falls", ("fall", (Amount)given)) : say.Say("foundation.grade"), grade - fall * (Outer + GroundShown / 2 - stemOutside));
        if (site.FrostDepth is { } frost)
        {
            var y = Y(grade - frost.Metres);
            board.Line(X(far), y, X(TrenchInside), y, Weight.Medium, Dash.Chain);
            labels.Add(new(new(X(TrenchInside), y), say.Say("foundation.frost-line", ("depth", (Amount)frost))));
        }
    }

    /// <summary>The words for the ground stand over it outside, where nothing else does.</summary>
    private void Grade(Board board, UnitSystem units, string words, double height)
    {
        var (left, right) = (Left + 2, X(outside) - 3);
        var at = new PaperPoint(X(Outer + GroundShown / 2), Y(height));
        var lines = Wrapping.Lines(words, Styles.Body, right - left);
        var tall = lines.Count * Styles.Body.Leading;
        // Numbers of the upright dimensions may be longer than what they measure.
        var numbers = Upright().Select(u => (Y(u.From) + Y(u.To)) / 2 - Styles.BodyStrong.WidthOf(LengthText.Tape(u.From - u.To, units)) / 2).DefaultIfEmpty(at.Y).Min();
        var foot = board.Lines(lines, right, Math.Min(Top, Math.Min(at.Y - tall - 4, numbers - tall - 1)), Styles.Body, Anchor.End);
        board.Line(at.X, foot + 0.8, at.X, at.Y);
        board.Add(new Fill(Outline.Circle(at, 0.45)));
    }

    private void Trench(Board board, Sheets.Wording say, List<PartLabel> labels)
    {
        if (geometry.House.Trench is not { } trench)
        {
            return;
        }

        var box = Box(TrenchInside, TrenchOutside, Bottom, grade);
        var size = Math.Clamp(0.045 * k, 2.2, 7);
        List<Mark> marks = [new Stroke(Stones.In(box, size), new Pen(Weight.Hair)), new Stroke(Outline.Rectangle(box), new Pen(Weight.Heavy)), new Stroke(Outline.Rectangle(box.Inset(0.8)), new Pen(Weight.Thin, Dash.Dashed))];
        if (Deepest < Bottom - 0.001)
        {
            marks.Add(new Stroke(Outline.Through(new(box.Left, box.Bottom), new(box.Left, Y(Deepest)), new(box.Right, Y(Deepest)), new(box.Right, box.Bottom)), new Pen(Weight.Medium, Dash.Dashed)));
            labels.Add(new(new(box.Right, Y(Deepest)), say.Say("foundation.deepest", ("depth", Amount.Metres(grade - Deepest)))));
        }

        var under = Math.Min(Bedding, trench.Depth.Metres / 3);
        var pipe = new PaperPoint(box.Centre.X, Y(Bottom + under + Pipe / 2));
        marks.Add(new Fill(Outline.Circle(pipe, Pipe / 2 * k), Tone.Paper));
        marks.Add(new Stroke(Outline.Circle(pipe, Pipe / 2 * k), new Pen(Weight.Heavy)));
        board.Add(new Group("foundation-trench", [.. marks]));
        labels.Add(new(new(pipe.X + Pipe / 2 * k, pipe.Y), say.Say("foundation.pipe")));
        labels.Add(new(new(box.Right - 0.8, Y((grade + Bottom) / 2 + trench.Depth.Metres * 0.16)), say.Say("foundation.fabric")));
        labels.Add(new(new(box.Right - 0.12 * k, Y(grade - trench.Depth.Metres * 0.2 - (trench.GradeBeam?.Depth.Metres ?? 0) * 0.5)), say.Say("foundation.stone")));
        if (trench.GradeBeam is { } beam)
        {
            var made = Box(Middle - beam.Width.Metres / 2, Middle + beam.Width.Metres / 2, grade - beam.Depth.Metres, grade);
            board.Add(new Group("foundation-grade-beam", [new Fill(Outline.Rectangle(made), Tone.Paper), new Hatch(Outline.Rectangle(made), 45, 2.6, new Pen(Weight.Hair)), new Hatch(Outline.Rectangle(made), -45, 2.6, new Pen(Weight.Hair)), new Stroke(Outline.Rectangle(made), new Pen(Weight.Heavy))]));
            labels.Add(new(new(made.Right - 0.03 * k, made.Centre.Y), say.Say("foundation.grade-beam", ("width", (Amount)beam.Width), ("depth", (Amount)beam.Depth))));
        }
    }

    private void Floor(Board board, Sheets.Wording say, List<PartLabel> labels)
    {
        var top = 0.0;
        foreach (var (layer, i) in geometry.House.Floor.Layers.Reverse().Select((l, i) => (l, i)))
        {
            var box = new PaperBox(X(stemInside), Y(top), Right, Y(top - layer.Depth.Metres));
            if (box.Height > 0)
            {
                board.Add(new Group($"foundation-floor-{i + 1}", [new Hatch(Outline.Rectangle(box), i % 2 == 0 ? 45 : -45, 1.2 + 0.5 * i, new Pen(Weight.Hair)), new Stroke(Outline.Rectangle(box), new Pen(Weight.Thin))]));
            }
            else
            {
                board.Line(box.Left, box.Top, box.Right, box.Top, Weight.Heavy, Dash.Dashed);
            }

            labels.Add(new(new(Right - 2, (box.Top + box.Bottom) / 2), layer.Depth == Length.Zero ? layer.Name : $"{layer.Name} {say.Say((Amount)layer.Depth)}"));
            top -= layer.Depth.Metres;
        }

        board.Line(X(stemInside), Y(0), Right, Y(0), Weight.Bold);
        labels.Add(new(new(Right - 1, Y(0)), say.Say("foundation.floor")));
    }

    private void Stem(Board board, Sheets.Wording say, List<PartLabel> labels)
    {
        var (stem, top) = (geometry.House.Stem, geometry.Wall.Base.Metres);
        var box = Box(stemInside, stemOutside, Math.Min(grade, top - 0.05), top);
        board.Add(new Group("foundation-stem", [new Fill(Outline.Rectangle(box), Tone.Paper), new Stroke(Stones.In(box, Math.Clamp(0.16 * k, 5, 20)), new Pen(Weight.Thin)), new Stroke(Outline.Rectangle(box), new Pen(Weight.Heavy))]));
        labels.Add(new(new(box.Right, (box.Top + Y(Math.Max(0, grade))) / 2), say.Say("foundation.stem", ("material", new Argument.Material(stem.Material)))));
    }

    private void Cob(Board board, Sheets.Wording say, List<PartLabel> labels)
    {
        var (wall, stem) = (geometry.Wall, geometry.House.Stem);
        var (b, t) = (wall.Base.Metres, CobTop);
        PaperPoint At(double offset, double height) => new(X(offset), Y(height));
        var (left, right) = (At(wall.OutsideOffset(t), t), At(wall.InsideOffset(t), t));
        var third = 1.0 / 3 * (right - left);
        var outline = Outline.Polygon(At(wall.InsideOffset(b), b), At(wall.OutsideOffset(b), b), left, left + third + new PaperPoint(0, -1.6), left + third + third + new PaperPoint(0, 1.6), right);
        List<Mark> marks = [new Hatch(outline, 45, 1.9, new Pen(Weight.Hair)), new Stroke(outline, new Pen(Weight.Heavy))];
        if (stem.Keys is { } keys && keys.Height.Metres < t - b)
        {
            var half = stem.Width.Metres / 8;
            var key = Box(Middle - half, Middle + half, b, b + keys.Height.Metres);
            marks.AddRange([new Fill(Outline.Rectangle(key), Tone.Paper), new Stroke(Stones.In(key, Math.Max(2, key.Width)), new Pen(Weight.Hair)), new Stroke(Outline.Rectangle(key), new Pen(Weight.Medium))]);
            labels.Add(new(new(key.Right, key.Centre.Y), say.Say("foundation.keys", ("height", (Amount)keys.Height), ("width", (Amount)keys.Width), ("spacing", (Amount)keys.Spacing))));
        }

        board.Add(new Group("foundation-cob", [.. marks]));
        var over = Math.Min(b + CobShown * 0.8, t);
        labels.Add(new(At(wall.InsideOffset(over), over), say.Say("foundation.cob")));
        if (stem.DampBreak is { } material)
        {
            board.Line(X(stemOutside), Y(b), X(stemInside), Y(b), Weight.Bold);
            labels.Add(new(new(X(stemInside) - 0.6, Y(b)), say.Say("foundation.damp-break", ("material", material))));
        }
    }

    /// <summary>Heights dimensioned at the left, each in a column of its own.</summary>
    private IEnumerable<(string Of, double From, double To)> Upright()
    {
        if (geometry.House.Site.Grade is null)
        {
            yield break;
        }

        yield return ("stem over grade", geometry.Wall.Base.Metres, grade);
        if (geometry.House.Trench is not null)
        {
            yield return ("trench depth", grade, Bottom);
        }

        if (geometry.House.Site.FrostDepth is { } frost && frost > Length.Zero)
        {
            yield return ("frost depth", grade, grade - frost.Metres);
        }
    }

    private void Dimensions(Board board, UnitSystem units, Phrasebook book)
    {
        var other = units == UnitSystem.Imperial ? UnitSystem.Metric : UnitSystem.Imperial;
        var x = X(Outer + GroundShown) - Column;
        foreach (var (of, from, to) in Upright())
        {
            var (a, b) = (Y(from), Y(to));
            board.Add(new DimensionLine(of, new(x, a), new(x, b), new Text(book.Tape(from - to, units), new(x - 0.9, (a + b) / 2), Styles.BodyStrong, Anchor.Middle, -90))
            {
                Second = new Text(book.Tape(from - to, other), new(x + 1 + Styles.Small.Digits, (a + b) / 2), Styles.Small, Anchor.Middle, -90),
            });
            x -= Column;
        }

        var y = Y(Lowest) + 7;
        Across("wall thickness at base", outside, 0, Y(geometry.Wall.Base.Metres));
        Across("stem width", stemOutside, stemInside, Y(grade));
        if (geometry.House.Trench is { } trench)
        {
            if (trench.GradeBeam is { } beam)
            {
                Across("grade beam width", Middle + beam.Width.Metres / 2, Middle - beam.Width.Metres / 2, Y(grade - beam.Depth.Metres));
            }

            Across("trench width", TrenchOutside, TrenchInside, Y(Deepest));
        }

        void Across(string of, double from, double to, double foot)
        {
            var (a, b) = (X(from), X(to));
            board.Add(new DimensionLine(of, new(a, y), new(b, y), new Text(book.Tape(from - to, units), new((a + b) / 2, y - 0.9), Styles.BodyStrong, Anchor.Middle))
            {
                Second = new Text(book.Tape(from - to, other), new((a + b) / 2, y + 1 + Styles.Small.Digits), Styles.Small, Anchor.Middle),
                FootFrom = new PaperPoint(a, Math.Max(foot, Y(Lowest)) + 1),
                FootTo = new PaperPoint(b, Math.Max(foot, Y(Lowest)) + 1),
            });
            y += 9.5;
        }
    }
}
