using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Geometry.Joinery;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Views;

/// <summary>One opening square on, with its frame braced, its header, its gap, its deadmen and the lift lines; and under it a cut through it seen from above.</summary>
internal sealed class OpeningDrawing(HouseGeometry geometry, OpeningPlace place, double paperPerMetre, UnitSystem units, Phrasebook book)
{
    private readonly double half = place.Opening.Width.Metres / 2;

    private UnitSystem Other => units == UnitSystem.Imperial ? UnitSystem.Metric : UnitSystem.Imperial;

    private double Side => Math.Max(0.32, place.Header is { } h ? (h.Length - place.Opening.Width.Metres) / 2 + 0.1 : 0);

    private double Y(double height) => -height * paperPerMetre;

    private PaperBox Box(double left, double right, double bottom, double top) => new(left * paperPerMetre, Y(top), right * paperPerMetre, Y(bottom));

    public Sequence<Mark> Draw()
    {
        var board = new Board();
        var (bottom, top) = (Math.Max(Math.Min(place.Sill, geometry.Wall.Base.Metres), place.Sill - 0.3), Math.Min(geometry.Wall.Top.Metres, (place.Header?.Top ?? place.Head) + 0.2));
        Cob(board, bottom, top);
        Header(board);
        Hole(board);
        Deadmen(board);
        Dimensions(board, bottom, top);
        return board.Marks;
    }

    private void Cob(Board board, double bottom, double top)
    {
        var reach = half + Side;
        var around = Outline.Rectangle(Box(-reach, reach, bottom, top));
        board.Add(new Hatch(Outline.Of(around, HoleOutline()), 45, 2.2, new Pen(Weight.Hair)));
        foreach (var lift in geometry.Lifts.Where(l => l.Top.Metres > bottom && l.Top.Metres < top))
        {
            foreach (var (a, b) in ((double, double)[])[(-reach, -half), (half, reach)])
            {
                board.Line(a * paperPerMetre, Y(lift.Top.Metres), b * paperPerMetre, Y(lift.Top.Metres), Weight.Medium, Dash.Dashed);
            }
        }

        board.Line(-reach * paperPerMetre, Y(bottom), reach * paperPerMetre, Y(bottom), Weight.Thin);
    }

    private Outline HoleOutline() =>
        OpeningOutline.Of(Box(-half, half, place.Sill, place.Head), place.Opening.Shape, (place.Opening.Rise?.Metres ?? 0) * paperPerMetre);

    private void Hole(Board board)
    {
        var hole = HoleOutline();
        board.Add(new Fill(hole, Tone.Paper));
        board.Add(new Stroke(hole, new Pen(Weight.Heavy)));
        if (place.Opening.Frame is not { } frame || place.Opening.Shape != OpeningShape.Rectangular)
        {
            return;
        }

        var (w, h, s) = (frame.Width.Metres / 2, frame.Height.Metres, frame.Stock.Metres);
        var outer = Box(-w, w, place.Sill, place.Sill + h);
        var inner = outer.Inset(s * paperPerMetre);
        board.Add(new Stroke(Outline.Rectangle(outer), new Pen(Weight.Medium)));
        board.Add(new Stroke(Outline.Rectangle(inner), new Pen(Weight.Medium)));
        if (inner.Width < 6 || inner.Height < 8)
        {
            return;
        }

        // Temporary bracing: two diagonals and three spreaders, drawn as battens.
        var batten = new Pen(Weight.Thin);
        foreach (var (from, to) in ((PaperPoint, PaperPoint)[])[(new(inner.Left, inner.Bottom), new(inner.Right, inner.Top)), (new(inner.Left, inner.Top), new(inner.Right, inner.Bottom))])
        {
            var across = 0.9 / (to - from).Norm * new PaperPoint(-(to - from).Y, (to - from).X);
            board.Add(new Fill(Outline.Polygon(from + across, to + across, to - across, from - across), Tone.Paper));
            board.Add(new Stroke(Outline.Of(Outline.Line(from + across, to + across), Outline.Line(from - across, to - across)), batten));
        }

        foreach (var y in (double[])[inner.Bottom - 0.08 * inner.Height, inner.Centre.Y, inner.Top + 0.08 * inner.Height])
        {
            var bar = new PaperBox(inner.Left, y - 0.9, inner.Right, y + 0.9);
            board.Add(new Fill(Outline.Rectangle(bar), Tone.Paper));
            board.Add(new Stroke(Outline.Rectangle(bar), batten));
        }
    }

    private void Header(Board board)
    {
        if (place.Header is not { } header)
        {
            return;
        }

        var box = Box(-header.Length / 2, header.Length / 2, header.Bottom, header.Top);
        board.Add(new Fill(Outline.Rectangle(box), Tone.Paper));
        board.Add(new Hatch(Outline.Rectangle(box), 0, 1.1, new Pen(Weight.Hair)));
        board.Add(new Stroke(Outline.Rectangle(box), new Pen(Weight.Heavy)));
        if (place.Opening.Header is { CrossPad: true } described)
        {
            var pad = described.Bearing.Metres;
            foreach (var left in (double[])[-header.Length / 2, header.Length / 2 - pad])
            {
                var under = Box(left, left + pad, header.Bottom - 0.05, header.Bottom);
                board.Add(new Fill(Outline.Rectangle(under), Tone.Paper));
                board.Add(new Stroke(Outline.Rectangle(under), new Pen(Weight.Medium)));
            }
        }
    }

    private void Deadmen(Board board)
    {
        if (place.Opening.Frame is null || place.Opening.Shape != OpeningShape.Rectangular)
        {
            return;
        }

        foreach (var h in OpeningPieces.DeadmanHeights(place))
        {
            foreach (var side in (double[])[-1, 1])
            {
                var (near, far) = (side * (half + 0.02), side * (half + 0.24));
                var block = Box(Math.Min(near, far), Math.Max(near, far), h - 0.045, h + 0.045);
                board.Add(new Fill(Outline.Rectangle(block), Tone.Paper));
                board.Add(new Stroke(Outline.Of(Outline.Rectangle(block), Outline.Line(block.Left, block.Top, block.Right, block.Bottom), Outline.Line(block.Left, block.Bottom, block.Right, block.Top)), new Pen(Weight.Thin)));
            }
        }
    }

    private void Dimensions(Board board, double bottom, double top)
    {
        var reach = (half + Side) * paperPerMetre;
        var y = Y(bottom) + 8;
        Across(board, Ids.Opening(place.Opening.Name) + " width", -half, half, place.Opening.Width.Metres, y, Y(place.Sill) + 1);
        if (place.Header is { } header)
        {
            Across(board, Ids.Header(place.Opening.Name) + " length", -header.Length / 2, header.Length / 2, header.Length, Y(top) - 6, Y(header.Top) - 1);
        }

        var heights = new List<(double From, double To, string Of)> { (place.Sill, place.Head, Ids.Opening(place.Opening.Name) + " height") };
        if (place.Sill > 0.02 && place.Sill - bottom < 0.01)
        {
            heights.Clear();
            heights.Add((place.Sill, place.Head, Ids.Opening(place.Opening.Name) + " height"));
        }

        foreach (var (from, to, of) in heights)
        {
            var x = reach + 6;
            var middle = (Y(from) + Y(to)) / 2;
            board.Add(new DimensionLine(of, new PaperPoint(x, Y(from)), new PaperPoint(x, Y(to)), new Text(book.Tape(to - from, units), new PaperPoint(x - 1, middle), Styles.BodyStrong, Anchor.Middle, -90))
            {
                Second = new Text(book.Tape(to - from, Other), new PaperPoint(x + 1 + Styles.Small.Digits, middle), Styles.Small, Anchor.Middle, -90),
                FootFrom = new PaperPoint(half * paperPerMetre + 1, Y(from)),
                FootTo = new PaperPoint(half * paperPerMetre + 1, Y(to)),
            });
        }

        foreach (var height in (double[])[place.Sill, place.Head])
        {
            board.Line(-reach - 4, Y(height), -reach + 1, Y(height), Weight.Thin);
            board.Add(new Fill(Outline.Polygon(new(-reach - 2, Y(height)), new(-reach - 3, Y(height) - 1.6), new(-reach - 1, Y(height) - 1.6))));
            board.Say(book.Tape(height, units), -reach - 4.8, Y(height) - 0.4, Styles.BodyStrong, Anchor.End);
            board.Say(book.Tape(height, Other), -reach - 4.8, Y(height) + 0.6 + Styles.Small.Digits, Styles.Small, Anchor.End);
        }
    }

    private void Across(Board board, string of, double from, double to, double metres, double y, double foot)
    {
        var (a, b) = (from * paperPerMetre, to * paperPerMetre);
        board.Add(new DimensionLine(of, new PaperPoint(a, y), new PaperPoint(b, y), new Text(book.Tape(metres, units), new PaperPoint((a + b) / 2, y - 0.9), Styles.BodyStrong, Anchor.Middle))
        {
            Second = new Text(book.Tape(metres, Other), new PaperPoint((a + b) / 2, y + 1 + Styles.Small.Digits), Styles.Small, Anchor.Middle),
            FootFrom = new PaperPoint(a, foot),
            FootTo = new PaperPoint(b, foot),
        });
    }
}
