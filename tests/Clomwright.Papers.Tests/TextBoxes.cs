using Clomwright.Papers.Drawing;
using Clomwright.Papers.Writers;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Clomwright.Papers.Tests;

/// <summary>One line of text as it stands in the written PDF, mm from the top left corner.</summary>
internal sealed record TextBox(string Words, PaperBox Box);

/// <summary>Reads text back from written PDFs: the boxes of the glyphs themselves, from an independent reader.</summary>
internal static class TextBoxes
{
    private const double MmPerPoint = 25.4 / 72;

    public static IReadOnlyList<IReadOnlyList<TextBox>> Of(IReadOnlyList<Sheet> sheets)
    {
        using var document = PdfDocument.Open(PdfWriter.Write(sheets, "test", Papers.Date));
        return [.. document.GetPages().Select(Lines)];
    }

    /// <summary>Advance of one line of text as the reader of the PDF finds it from the first glyph's origin to the end of the last, mm.</summary>
    public static double Advance(string words, Lettering lettering)
    {
        var sheet = new Sheet("one", "one", 400, 100, [new Text(words, new PaperPoint(20, 50), lettering)]);
        using var document = PdfDocument.Open(PdfWriter.Write([sheet], "test", Papers.Date));
        var letters = document.GetPage(1).Letters;
        return (letters[^1].EndBaseLine.X - letters[0].StartBaseLine.X) * MmPerPoint;
    }

    /// <summary>Glyphs that the file shows in one go (one text mark) and that lie on one line.</summary>
    private static IReadOnlyList<TextBox> Lines(Page page) =>
    [
        .. page.Letters.Where(l => !string.IsNullOrWhiteSpace(l.Value)).GroupBy(l => l.TextSequence)
            .Select(g => new TextBox(string.Concat(g.Select(l => l.Value)), PaperBox.Around(g.SelectMany(Corners).Select(p => new PaperPoint(p.X * MmPerPoint, (page.Height - p.Y) * MmPerPoint))))),
    ];

    private static IEnumerable<(double X, double Y)> Corners(Letter letter)
    {
        var r = letter.BoundingBox;
        return [(r.TopLeft.X, r.TopLeft.Y), (r.TopRight.X, r.TopRight.Y), (r.BottomLeft.X, r.BottomLeft.Y), (r.BottomRight.X, r.BottomRight.Y)];
    }
}
