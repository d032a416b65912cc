using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Views;

/// <summary>A cut through the wall, square to it, where no opening is: outside on the left, inside on the right.</summary>
internal sealed class SectionDrawing
{
    private const double FloorShown = 0.36;
    private const double GroundShown = 0.28;

    private readonly HouseGeometry geometry;
    private readonly double k;
    private readonly double outside;
    private readonly double stemInside;
    private readonly double stemOutside;

    public SectionDrawing(HouseGeometry geometry, double paperPerMetre)
    {
        (this.geometry, k) = (geometry, paperPerMetre);
        outside = geometry.Wall.OutsideOffset(geometry.Wall.Base.Metres);
        (stemInside, stemOutside) = geometry.Stem;
    }

    /// <summary>The language of its numbers.</summary>
    public Phrasebook Book { get; init; } = Phrasebook.English;

    /// <summary>Outside grade, m from the finished floor.</summary>
    public double Grade => geometry.House.Site.Grade?.Metres ?? 0;

    /// <summary>The lowest thing drawn, m.</summary>
    public double Lowest => Math.Min(Grade, 0) - Math.Max(geometry.House.Trench?.Depth.Metres ?? 0, geometry.House.Floor.Layers.Sum(l => l.Depth.Metres)) - 0.12;

    /// <summary>The highest thing drawn, m.</summary>
    public double Highest => geometry.Wall.Top.Metres + (geometry.House.BondBeam?.Depth.Metres ?? 0);

    /// <summary>Left end of what is drawn, mm from the inside face at the base.</summary>
    public double Left => X(Math.Max(outside, Math.Max(stemOutside, TrenchMiddle + TrenchHalf)) + GroundShown);

    /// <summary>Right end of what is drawn, mm from the inside face at the base.</summary>
    public double Right => X(Math.Min(0, Math.Min(stemInside, TrenchMiddle - TrenchHalf)) - FloorShown);

    private double TrenchMiddle => (stemInside + stemOutside) / 2;

    private double TrenchHalf => (geometry.House.Trench?.Width.Metres ?? 0) / 2;

    /// <summary>Paper place of an offset outward from the inside face at the base; outward is to the left.</summary>
    public double X(double offset) => -offset * k;

    /// <summary>Paper place of a height.</summary>
    public double Y(double height) => -height * k;

    public void Draw(Board board, UnitSystem units)
    {
        Trench(board);
        Floor(board);
        Stem(board);
        Cob(board);
        Beam(board);
        var y = Y(Grade);
        board.Line(Left, y, X(stemOutside), y, Weight.Bold);
        board.Line(X(stemInside), Y(0), Right, Y(0), Weight.Bold);
        Dimensions(board, units);
    }

    private PaperBox Box(double fromOffset, double toOffset, double bottom, double top) => new(X(toOffset), Y(top), X(fromOffset), Y(bottom));

    private void Trench(Board board)
    {
        if (geometry.House.Trench is not { } trench)
        {
            return;
        }

        var box = Box(TrenchMiddle - TrenchHalf, TrenchMiddle + TrenchHalf, Grade - trench.Depth.Metres, Grade);
        board.Add(new Group("section-trench", [new Stroke(Stones.In(box, 3.4), new Pen(Weight.Hair)), new Stroke(Outline.Rectangle(box), new Pen(Weight.Medium))]));
        var pipe = new PaperPoint(box.Centre.X, box.Bottom - Math.Max(2.4, 0.075 * k));
        board.Add(new Fill(Outline.Circle(pipe, Math.Max(1.5, 0.05 * k)), Tone.Paper));
        board.Add(new Stroke(Outline.Circle(pipe, Math.Max(1.5, 0.05 * k)), new Pen(Weight.Medium)));
    }

    private void Floor(Board board)
    {
        var top = 0.0;
        foreach (var (layer, i) in geometry.House.Floor.Layers.Reverse().Select((l, i) => (l, i)))
        {
            if (layer.Depth == Length.Zero)
            {
                board.Line(X(stemInside), Y(top), Right, Y(top), Weight.Heavy);
                continue;
            }

            var box = new PaperBox(X(stemInside), Y(top), Right, Y(top - layer.Depth.Metres));
            board.Add(new Group($"section-floor-{i + 1}", [new Hatch(Outline.Rectangle(box), i % 2 == 0 ? 45 : -45, 1.2 + 0.5 * i, new Pen(Weight.Hair)), new Stroke(Outline.Rectangle(box), new Pen(Weight.Thin))]));
            top -= layer.Depth.Metres;
        }
    }

    private void Stem(Board board)
    {
        var bottom = Math.Min(Grade, geometry.Wall.Base.Metres - 0.05);
        var box = Box(stemInside, stemOutside, bottom, geometry.Wall.Base.Metres);
        board.Add(new Group("section-stem", [new Fill(Outline.Rectangle(box), Tone.Paper), new Stroke(Stones.In(box, 6), new Pen(Weight.Thin)), new Stroke(Outline.Rectangle(box), new Pen(Weight.Heavy))]));
        if (geometry.House.Stem.DampBreak is not null)
        {
            board.Line(box.Left, box.Top, box.Right, box.Top, Weight.Bold);
        }
    }

    private void Cob(Board board)
    {
        var wall = geometry.Wall;
        var (b, t) = (wall.Base.Metres, wall.Top.Metres);
        PaperPoint At(double offset, double height) => new(X(offset), Y(height));
        var outline = Outline.Polygon(At(wall.InsideOffset(b), b), At(wall.OutsideOffset(b), b), At(wall.OutsideOffset(t), t), At(wall.InsideOffset(t), t));
        List<Mark> marks = [new Hatch(outline, 45, 1.9, new Pen(Weight.Hair))];
        foreach (var lift in geometry.Lifts.SkipLast(1))
        {
            var h = lift.Top.Metres;
            marks.Add(new Stroke(Outline.Line(At(wall.OutsideOffset(h), h), At(wall.InsideOffset(h), h)), new Pen(Weight.Medium, Dash.Dashed)));
        }

        marks.Add(new Stroke(outline, new Pen(Weight.Heavy)));
        board.Add(new Group("section-cob", [.. marks]));
        foreach (var lift in geometry.Lifts)
        {
            var h = (lift.Bottom.Metres + lift.Top.Metres) / 2;
            var beside = At(wall.OutsideOffset(h), h);
            if ((lift.Top - lift.Bottom).Metres * k > 3)
            {
                board.Say($"{lift.Number}", beside.X - 2.6, beside.Y + Styles.BodyStrong.Digits / 2, Styles.BodyStrong, Anchor.Middle);
            }
        }

        Tee(board, At);
    }

    private void Tee(Board board, Func<double, double, PaperPoint> at)
    {
        if (geometry.Tees.Count == 0)
        {
            return;
        }

        var (wall, h) = (geometry.Wall, geometry.Tees[0].BarHeight);
        var middle = (wall.InsideOffset(wall.Top.Metres) + wall.OutsideOffset(wall.Top.Metres)) / 2 + (geometry.House.BondBeam?.Offset.Metres ?? 0);
        var bar = PaperBox.Around(at(middle - 0.045, h), at(middle + 0.045, h + 0.09));
        var leg = PaperBox.Around(at(middle - 0.02, h + 0.09), at(middle + 0.02, Highest));
        board.Add(new Group("section-tee", [.. ((PaperBox[])[leg, bar]).SelectMany(b => (Mark[])[new Fill(Outline.Rectangle(b), Tone.Paper), new Stroke(Outline.Rectangle(b), new Pen(Weight.Medium))])]));
    }

    private void Beam(Board board)
    {
        if (geometry.House.BondBeam is not { } beam)
        {
            return;
        }

        var wall = geometry.Wall;
        var t = wall.Top.Metres;
        var middle = (wall.InsideOffset(t) + wall.OutsideOffset(t)) / 2 + beam.Offset.Metres;
        var box = Box(middle - beam.Width.Metres / 2, middle + beam.Width.Metres / 2, t, t + beam.Depth.Metres);
        board.Add(new Group("section-bond-beam",
        [
            new Fill(Outline.Rectangle(box), Tone.Paper),
            new Stroke(Outline.Of(Outline.Line(box.Left, box.Top, box.Right, box.Bottom), Outline.Line(box.Left, box.Bottom, box.Right, box.Top)), new Pen(Weight.Hair)),
            new Stroke(Outline.Rectangle(box), new Pen(Weight.Heavy)),
        ]));
    }

    /// <summary>Thicknesses at top and base, and the widths of stem and trench under them.</summary>
    private void Dimensions(Board board, UnitSystem units)
    {
        var wall = geometry.Wall;
        var (t, b) = (wall.Top.Metres, wall.Base.Metres);
        Across(board, units, "wall thickness at top", wall.OutsideOffset(t), wall.InsideOffset(t), Y(Highest) - 6.5, Y(t));
        var low = Y(Lowest) + 5.5;
        Across(board, units, "wall thickness at base", wall.OutsideOffset(b), wall.InsideOffset(b), low, Y(b));
        Across(board, units, "stem width", stemOutside, stemInside, low + 9.5, Y(Grade));
        if (geometry.House.Trench is not null)
        {
            Across(board, units, "trench width", TrenchMiddle + TrenchHalf, TrenchMiddle - TrenchHalf, low + 19, Y(Lowest));
        }
    }

    private void Across(Board board, UnitSystem units, string of, double from, double to, double y, double foot)
    {
        var (a, b) = (X(from), X(to));
        var other = units == UnitSystem.Imperial ? UnitSystem.Metric : UnitSystem.Imperial;
        var middle = (a + b) / 2;
        board.Add(new DimensionLine(of, new PaperPoint(a, y), new PaperPoint(b, y), new Text(Book.Tape(from - to, units), new PaperPoint(middle, y - 0.9), Styles.BodyStrong, Anchor.Middle))
        {
            Second = new Text(Book.Tape(from - to, other), new PaperPoint(middle, y + 1 + Styles.Small.Digits), Styles.Small, Anchor.Middle),
            FootFrom = new PaperPoint(a, foot + Math.Sign(y - foot) * 1.0),
            FootTo = new PaperPoint(b, foot + Math.Sign(y - foot) * 1.0),
        });
    }
}

/// <summary>Stones in a box: the same box always gets the same ones.</summary>
internal static class Stones
{
    /// <summary>Rounded outlines of about one size in staggered courses.</summary>
    public static Outline In(PaperBox box, double size)
    {
        var rows = Math.Max(1, (int)Math.Round(box.Height / (size * 0.75)));
        var height = box.Height / rows;
        List<Outline> stones = [];
        for (var r = 0; r < rows; r++)
        {
            var columns = Math.Max(1, (int)Math.Round(box.Width / size));
            var width = box.Width / (columns + (r % 2 == 0 ? 0 : 0.5));
            for (var c = 0; c < columns; c++)
            {
                var wobble = 0.12 * Math.Sin(3.1 * c + 5.3 * r);
                var left = box.Left + (c + (r % 2 == 0 ? 0 : 0.25)) * width;
                var at = new PaperPoint(left + width * (0.5 + wobble / 3), box.Top + (r + 0.5) * height);
                stones.Add(Outline.Ellipse(at, width * (0.42 + wobble / 4), height * (0.4 + wobble / 4)));
            }
        }

        return Outline.Of(stones);
    }
}
