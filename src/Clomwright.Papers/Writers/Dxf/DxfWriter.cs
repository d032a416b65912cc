using Clomwright.Evidence;
using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Writers.Dxf;

/// <summary>A drawing for other programs.</summary>
/// <param name="Title">Stands over it.</param>
/// <param name="Marks">What is drawn, in paper millimetres.</param>
/// <param name="View">The paper it takes.</param>
/// <param name="PaperPerMetre">Scale of the marks, mm on paper for each metre; it is written at true size.</param>
public sealed record TrueDrawing(string Title, Sequence<Mark> Marks, PaperBox View, double PaperPerMetre);

/// <summary>Writes drawings as DXF, release 2007 (AC1021), text in UTF-8: all in model space at true size, one under another, in inches or millimetres as the header says.</summary>
/// <remarks>
/// Lines are polylines, curves flat within a tenth of a millimetre; text keeps the width it has on paper; solid areas are hatches. What white paper covers is cut away.
/// The same drawings give the same text: no date, and handles that are counted.
/// </remarks>
public static class DxfWriter
{
    /// <summary>Free room between drawings, paper mm of the drawing above.</summary>
    private const double Gap = 30;

    private const double TitleSize = 5;

    /// <summary>Text of a file.</summary>
    /// <param name="drawings">What is written.</param>
    /// <param name="units">Inches for imperial, millimetres for metric.</param>
    public static string Write(IReadOnlyList<TrueDrawing> drawings, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(drawings);
        var body = new DxfText();
        var frame = new DxfFrame(body, units);
        frame.Tables(drawings.Count > 0 ? Size(drawings[0], units) : 1);
        frame.Blocks();
        body.Put(0, "SECTION").Put(2, "ENTITIES");
        var top = 0.0;
        var (right, bottom) = (0.0, 0.0);
        foreach (var drawing in drawings)
        {
            var size = Size(drawing, units);
            var pen = new DxfPen(body, frame.Model, size, -drawing.View.Left * size, top + drawing.View.Top * size);
            pen.Say(new Text(drawing.Title, new PaperPoint(drawing.View.Left, drawing.View.Top - TitleSize), Lettering.Strong(TitleSize)));
            pen.Draw(new Flat(drawing.Marks));
            right = Math.Max(right, drawing.View.Width * size);
            bottom = top - drawing.View.Height * size;
            top = bottom - Gap * size;
        }

        body.Put(0, "ENDSEC");
        frame.Objects();
        body.Put(0, "EOF");
        return frame.Header(right, bottom, drawings.Count > 0 ? 2 * TitleSize * Size(drawings[0], units) : 1) + body;
    }

    /// <summary>Where a point of a drawing comes to lie in the file, which measures in its units.</summary>
    /// <param name="drawings">All drawings of the file.</param>
    /// <param name="index">Which of them.</param>
    /// <param name="point">On its paper, mm.</param>
    /// <param name="units">Of the file.</param>
    public static PaperPoint Placed(IReadOnlyList<TrueDrawing> drawings, int index, PaperPoint point, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(drawings);
        var top = -drawings.Take(index).Sum(d => (d.View.Height + Gap) * Size(d, units));
        var (drawing, size) = (drawings[index], Size(drawings[index], units));
        return new PaperPoint((point.X - drawing.View.Left) * size, top - (point.Y - drawing.View.Top) * size);
    }

    /// <summary>Units of the file for each millimetre on paper.</summary>
    private static double Size(TrueDrawing drawing, UnitSystem units) => 1000 / drawing.PaperPerMetre / (units == UnitSystem.Imperial ? 25.4 : 1);
}
