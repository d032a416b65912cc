using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Writers.Dxf;

/// <summary>Draws flat marks into model space.</summary>
/// <param name="to">Where it is written.</param>
/// <param name="owner">Handle of model space.</param>
/// <param name="size">Units for each millimetre on paper.</param>
/// <param name="right">Added to the right.</param>
/// <param name="up">Where the corner of the paper lies.</param>
internal sealed class DxfPen(DxfText to, string owner, double size, double right, double up)
{
    public void Draw(Flat flat)
    {
        foreach (var line in flat.Lines)
        {
            Draw(line);
        }

        foreach (var (area, layer) in flat.Solids)
        {
            Fill(area, layer);
        }

        foreach (var text in flat.Texts)
        {
            Say(text);
        }
    }

    private void Draw(Line line)
    {
        Begin("LWPOLYLINE", line.Layer);
        if (line.Pen.Dash != Dash.Solid)
        {
            to.Put(6, DxfFrame.LineType(line.Pen.Dash));
        }

        to.Put(370, (int)Math.Round(line.Pen.Width * 100)).Put(100, "AcDbPolyline").Put(90, line.Points.Count).Put(70, line.Closed ? 1 : 0);
        foreach (var point in line.Points)
        {
            Point(10, point, flat: true);
        }
    }

    private void Fill(Outline area, string layer)
    {
        PaperPoint[][] pieces = [.. area.Pieces(Flat.Steps).Select(p => Open([.. p])).Where(p => p.Length > 2)];
        if (pieces.Length == 0)
        {
            return;
        }

        Begin("HATCH", layer);
        to.Put(100, "AcDbHatch").Point(10, 0.0, 0).Point(210, 0.0, 0, 1).Put(2, "SOLID").Put(70, 1).Put(71, 0).Put(91, pieces.Length);
        foreach (var piece in pieces)
        {
            to.Put(92, 2).Put(72, 0).Put(73, 1).Put(93, piece.Length);
            foreach (var point in piece)
            {
                Point(10, point, flat: true);
            }

            to.Put(97, 0);
        }

        to.Put(75, 0).Put(76, 1).Put(98, 0);
    }

    /// <summary>Text between two points, so that it is as wide as on paper whatever letters the reader has.</summary>
    public void Say(Text text)
    {
        var width = text.Width;
        var back = text.Anchor switch { Anchor.Start => 0, Anchor.Middle => width / 2, _ => width };
        var (from, till) = (text.At + new PaperPoint(-back, 0).Turned(text.Turn), text.At + new PaperPoint(width - back, 0).Turned(text.Turn));
        Begin("TEXT", "words");
        to.Put(100, "AcDbText");
        Point(10, from, flat: false);
        to.Put(40, text.Lettering.Digits * size).Put(1, DxfText.OneLine(text.Words)).Put(50, Degrees(-text.Turn)).Put(72, 5);
        Point(11, till, flat: false);
        to.Put(100, "AcDbText");
    }

    private static double Degrees(double turn) => turn < 0 ? turn + 360 : turn;

    private static PaperPoint[] Open(PaperPoint[] piece) => piece.Length > 1 && (piece[^1] - piece[0]).Norm < 1e-9 ? piece[..^1] : piece;

    private void Begin(string kind, string layer) => to.Put(0, kind).Put(5, to.Handle()).Put(330, owner).Put(100, "AcDbEntity").Put(8, layer);

    private void Point(int code, PaperPoint p, bool flat) => to.Point(code, right + p.X * size, up - p.Y * size, flat ? null : 0);
}
