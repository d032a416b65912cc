using Clomwright.Papers.Drawing;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace Clomwright.Papers.Writers;

/// <summary>Draws finished sheets as one PDF: exact page sizes, fonts embedded as far as they are used, text selectable, a bookmark for every sheet, and tags for those who cannot see it.</summary>
/// <remarks>The same sheets, title and date give the same bytes.</remarks>
public static class PdfWriter
{
    private const double PointsPerMm = 72 / 25.4;
    private const string Family = "Source Sans 3";

    private static readonly Lock Once = new();

    /// <summary>Writes sheets in order.</summary>
    /// <param name="sheets">At least one.</param>
    /// <param name="title">Title of the document.</param>
    /// <param name="date">The date the papers carry; also the date of the file.</param>
    /// <returns>The bytes of a PDF file.</returns>
    public static byte[] Write(IReadOnlyList<Sheet> sheets, string title, DateOnly date)
    {
        ArgumentNullException.ThrowIfNull(sheets);
        ArgumentOutOfRangeException.ThrowIfZero(sheets.Count);
        UseShippedFonts();
        using var document = new PdfDocument();
        document.Info.Title = title;
        document.Info.Creator = "Clomwright";
        document.Info.CreationDate = date.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        document.Language = sheets[0].Language;
        document.ViewerPreferences.DisplayDocTitle = true;
        document.PageMode = sheets.Count > 1 ? PdfPageMode.UseOutlines : PdfPageMode.UseNone;
        var tags = new PdfTags(document);
        foreach (var sheet in sheets)
        {
            var page = document.AddPage();
            page.Width = XUnit.FromMillimeter(sheet.Width);
            page.Height = XUnit.FromMillimeter(sheet.Height);
            document.Outlines.Add(sheet.Title, page);
            using (var graphics = XGraphics.FromPdfPage(page))
            {
                Draw(sheet, tags.Begin(page, graphics, sheet.Title), graphics);
            }

            foreach (var content in page.Contents)
            {
                // PDFsharp would compress hardest and slowly.
                content.Stream.Value = WholeStreams.Compressed(content.Stream.Value);
                content.Elements.SetName("/Filter", "/FlateDecode");
            }
        }

        using var stream = new MemoryStream();
        document.Save(stream, closeStream: false);
        var file = WholeStreams.Of(stream.ToArray());
        Repeatable.Make(file);
        return file;
    }

    private static void Draw(Sheet sheet, PdfTags.Page told, XGraphics graphics)
    {
        var pass = new Pass(graphics, told);
        foreach (var mark in sheet.Marks)
        {
            pass.Draw(mark);
        }

        told.End();
    }

    private static void UseShippedFonts()
    {
        lock (Once)
        {
            GlobalFontSettings.FontResolver ??= new ShippedFonts();
        }
    }

    private sealed class ShippedFonts : IFontResolver
    {
        public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
            familyName == Family ? new FontResolverInfo(isBold ? nameof(Cut.Semibold) : nameof(Cut.Regular)) : null;

        public byte[]? GetFont(string faceName) =>
            Typeface.Of(faceName == nameof(Cut.Semibold) ? Cut.Semibold : Cut.Regular).Bytes.ToArray();
    }

    private sealed class Pass(XGraphics graphics, PdfTags.Page told)
    {
        private readonly Dictionary<Lettering, XFont> fonts = [];

        public void Draw(Mark mark)
        {
            switch (mark)
            {
                case Stroke s:
                    told.Next(text: false);
                    // PDFsharp joins open pieces of one path, so each piece is a path of its own.
                    var pen = Pen(s.Pen);
                    foreach (var piece in s.Outline.Apart())
                    {
                        graphics.DrawPath(pen, Path(piece));
                    }

                    break;
                case Fill f:
                    told.Next(text: false);
                    graphics.DrawPath(f.Tone == Tone.Ink ? XBrushes.Black : XBrushes.White, Path(f.Outline));
                    break;
                case Text t:
                    Say(t);
                    break;
                case Group g:
                    Open(g);
                    break;
                case Told t:
                    told.Enter(t.As, t.Words);
                    foreach (var part in t.Marks)
                    {
                        Draw(part);
                    }

                    told.Leave();
                    break;
                case Composite c:
                    foreach (var part in c.Parts)
                    {
                        Draw(part);
                    }

                    break;
            }
        }

        private void Open(Group g)
        {
            var state = graphics.Save();
            if (g.Clip is { } clip)
            {
                graphics.IntersectClip(Path(clip));
            }

            foreach (var mark in g.Marks)
            {
                Draw(mark);
            }

            graphics.Restore(state);
        }

        private void Say(Text t)
        {
            if (t.Words.Length == 0)
            {
                return;
            }

            told.Next(text: true);
            // A line ends with a space, so that its last word and the next line's first are two words to one who hears or copies them.
            // Where a line may part is settled here: a space that holds words together would keep readers from finding them.
            var plain = t.Words.Replace('\u00a0', ' ');
            var words = told.IsFigure ? plain : plain + " ";
            if (!fonts.TryGetValue(t.Lettering, out var font))
            {
                var style = t.Lettering.Cut == Cut.Semibold ? XFontStyleEx.Bold : XFontStyleEx.Regular;
                font = fonts[t.Lettering] = new XFont(Family, t.Lettering.Size * PointsPerMm, style, XPdfFontOptions.UnicodeDefault);
            }

            var back = t.Anchor switch { Anchor.Start => 0, Anchor.Middle => t.Width / 2, _ => t.Width };
            var at = P(t.At);
            if (t.Turn == 0)
            {
                graphics.DrawString(words, font, XBrushes.Black, at.X - back * PointsPerMm, at.Y, XStringFormats.BaseLineLeft);
                return;
            }

            var state = graphics.Save();
            graphics.RotateAtTransform(t.Turn, at);
            graphics.DrawString(words, font, XBrushes.Black, at.X - back * PointsPerMm, at.Y, XStringFormats.BaseLineLeft);
            graphics.Restore(state);
        }

        private static XPen Pen(Pen pen)
        {
            var width = pen.Width * PointsPerMm;
            var x = new XPen(XColors.Black, width) { LineJoin = XLineJoin.Miter, MiterLimit = 4 };
            if (pen.Pattern.Length > 0)
            {
                // PDFsharp takes the pattern in multiples of the width.
                x.DashPattern = [.. pen.Pattern.ToArray().Select(mm => mm * PointsPerMm / width)];
            }

            return x;
        }

        private static XPoint P(PaperPoint p) => new(p.X * PointsPerMm, p.Y * PointsPerMm);

        private static XGraphicsPath Path(Outline outline)
        {
            var path = new XGraphicsPath { FillMode = XFillMode.Alternate };
            var at = default(PaperPoint);
            foreach (var s in outline.Segments)
            {
                switch (s.Verb)
                {
                    case Verb.Move:
                        path.StartFigure();
                        break;
                    case Verb.Line:
                        path.AddLine(P(at), P(s.To));
                        break;
                    case Verb.Curve:
                        path.AddBezier(P(at), P(s.First), P(s.Second), P(s.To));
                        break;
                    default:
                        path.CloseFigure();
                        break;
                }

                at = s.To;
            }

            return path;
        }
    }
}
