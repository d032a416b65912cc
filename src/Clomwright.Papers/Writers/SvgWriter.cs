using System.Globalization;
using System.Text;
using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Writers;

/// <summary>Draws a display list as SVG: the same marks always give the same text.</summary>
/// <remarks>
/// Numbers are rounded to 0.01 mm, order is drawing order, ids come from the author's names; there is no date and no version. Text carries its own
/// length, so a reader without the typeface still keeps the layout. Lines take <c>currentColor</c>, so a page may restyle them; classes name the line weight.
/// </remarks>
public static class SvgWriter
{
    /// <summary>The typeface first; what follows serves where it is missing.</summary>
    private const string Family = "'Source Sans','Source Sans 3','Source Sans Pro',sans-serif";

    /// <summary>A finished sheet, at true size.</summary>
    public static string Write(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return Write(sheet.Marks, new PaperBox(0, 0, sheet.Width, sheet.Height), sheet.Title, sheet.Language);
    }

    /// <summary>Any display list, seen through a box of paper.</summary>
    /// <param name="marks">What is drawn.</param>
    /// <param name="view">The part of the paper that is seen; the picture is as large as this, in mm.</param>
    /// <param name="title">What a reader that cannot see it is told.</param>
    /// <param name="language">Of the words, as in BCP 47.</param>
    public static string Write(IEnumerable<Mark> marks, PaperBox view, string title, string language = "en")
    {
        ArgumentNullException.ThrowIfNull(marks);
        ArgumentNullException.ThrowIfNull(title);
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" lang=\"{Escape(language)}\" width=\"{N(view.Width)}mm\" height=\"{N(view.Height)}mm\" ");
        text.Append(CultureInfo.InvariantCulture, $"viewBox=\"{N(view.Left)} {N(view.Top)} {N(view.Width)} {N(view.Height)}\" role=\"img\" ");
        text.Append(CultureInfo.InvariantCulture, $"fill=\"none\" stroke=\"currentColor\" font-family=\"{Family}\" style=\"font-kerning:none;font-variant-ligatures:none\">\n");
        text.Append(CultureInfo.InvariantCulture, $"<title>{Escape(title)}</title>\n");
        var pass = new Pass(text);
        foreach (var mark in marks)
        {
            pass.Draw(mark);
        }

        return text.Append("</svg>\n").ToString();
    }

    private static string N(double value)
    {
        var rounded = Math.Round(value, 2, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("0.##", CultureInfo.InvariantCulture);
    }

    private static string Escape(string words)
    {
        var text = new StringBuilder(words.Length);
        foreach (var c in words)
        {
            text.Append(c switch
            {
                '&' => "&amp;",
                '<' => "&lt;",
                '>' => "&gt;",
                '"' => "&quot;",
                < ' ' => " ",
                _ => c.ToString(),
            });
        }

        return text.ToString();
    }

    private sealed class Pass(StringBuilder text)
    {
        private readonly Dictionary<string, int> ids = [];
        private int clips;

        public void Draw(Mark mark)
        {
            switch (mark)
            {
                case Stroke s:
                    Line(s);
                    break;
                case Fill f:
                    var (tone, colour) = f.Tone == Tone.Ink ? ("ink", "currentColor") : ("paper", "#fff");
                    text.Append(CultureInfo.InvariantCulture, $"<path class=\"{tone}\" fill=\"{colour}\" stroke=\"none\" fill-rule=\"evenodd\" d=\"{Path(f.Outline)}\"/>\n");
                    break;
                case Text t:
                    Say(t);
                    break;
                case Group g:
                    Open(g);
                    break;
                case Composite c:
                    foreach (var part in c.Parts)
                    {
                        Draw(part);
                    }

                    break;
            }
        }

        private void Line(Stroke s)
        {
            var pattern = string.Join(' ', s.Pen.Pattern.ToArray().Select(N));
            var dash = pattern.Length == 0 ? "" : $" stroke-dasharray=\"{pattern}\"";
            var weight = s.Pen.Weight switch { Weight.Hair => "hair", Weight.Thin => "thin", Weight.Medium => "medium", Weight.Heavy => "heavy", _ => "bold" };
            text.Append(CultureInfo.InvariantCulture, $"<path class=\"{weight}\" stroke-width=\"{N(s.Pen.Width)}\"{dash} d=\"{Path(s.Outline)}\"/>\n");
        }

        private void Say(Text t)
        {
            if (t.Words.Length == 0)
            {
                return;
            }

            var weight = t.Lettering.Cut == Cut.Semibold ? " font-weight=\"600\"" : "";
            var anchor = t.Anchor switch { Anchor.Start => "", Anchor.Middle => " text-anchor=\"middle\"", _ => " text-anchor=\"end\"" };
            var turn = t.Turn == 0 ? "" : $" transform=\"rotate({N(t.Turn)} {N(t.At.X)} {N(t.At.Y)})\"";
            text.Append(CultureInfo.InvariantCulture, $"<text fill=\"currentColor\" stroke=\"none\" x=\"{N(t.At.X)}\" y=\"{N(t.At.Y)}\" font-size=\"{N(t.Lettering.Size)}\"{weight}{anchor}");
            text.Append(CultureInfo.InvariantCulture, $" textLength=\"{N(t.Width)}\" lengthAdjust=\"spacingAndGlyphs\"{turn}>{Escape(t.Words)}</text>\n");
        }

        private void Open(Group g)
        {
            var clip = "";
            if (g.Clip is { } outline)
            {
                clips++;
                text.Append(CultureInfo.InvariantCulture, $"<clipPath id=\"clip-{clips}\"><path clip-rule=\"evenodd\" d=\"{Path(outline)}\"/></clipPath>\n");
                clip = $" clip-path=\"url(#clip-{clips})\"";
            }

            text.Append(CultureInfo.InvariantCulture, $"<g id=\"{Escape(Unique(g.Id))}\"{clip}>\n");
            foreach (var mark in g.Marks)
            {
                Draw(mark);
            }

            text.Append("</g>\n");
        }

        /// <summary>A thing drawn twice (where the ring is cut) gets its id first and then its id with a number.</summary>
        private string Unique(string id)
        {
            ids[id] = ids.GetValueOrDefault(id) + 1;
            return ids[id] == 1 ? id : FormattableString.Invariant($"{id}~{ids[id]}");
        }

        private static string Path(Outline outline)
        {
            var d = new StringBuilder();
            foreach (var s in outline.Segments)
            {
                _ = s.Verb switch
                {
                    Verb.Move => d.Append(CultureInfo.InvariantCulture, $"M{N(s.To.X)} {N(s.To.Y)}"),
                    Verb.Line => d.Append(CultureInfo.InvariantCulture, $"L{N(s.To.X)} {N(s.To.Y)}"),
                    Verb.Curve => d.Append(CultureInfo.InvariantCulture, $"C{N(s.First.X)} {N(s.First.Y)} {N(s.Second.X)} {N(s.Second.Y)} {N(s.To.X)} {N(s.To.Y)}"),
                    _ => d.Append('Z'),
                };
            }

            return d.ToString();
        }
    }
}
