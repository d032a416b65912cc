using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Views;

/// <summary>Bars from one line, one under the other; what is below nothing goes to the left of it.</summary>
internal static class LossBars
{
    private const double RowTall = 5.2, Bar = 2.8, Gap = 2;

    /// <summary>A bar.</summary>
    /// <param name="Name">Before it.</param>
    /// <param name="Value">How long.</param>
    /// <param name="Note">Behind it.</param>
    public sealed record Row(string Name, double Value, string Note);

    /// <param name="rows">From the top.</param>
    /// <param name="width">Of the picture, mm.</param>
    public static (IReadOnlyList<Mark> Marks, PaperBox View) Of(IReadOnlyList<Row> rows, double width)
    {
        var board = new Board();
        var names = rows.Max(r => Styles.Body.WidthOf(r.Name)) + Gap;
        var notes = rows.Max(r => Styles.Body.WidthOf(r.Note)) + Gap;
        var (least, most) = (Math.Min(0, rows.Min(r => r.Value)), Math.Max(1e-9, rows.Max(r => r.Value)));
        var perUnit = (width - names - notes - Gap) / (most - least);
        var zero = names - least * perUnit;
        for (var i = 0; i < rows.Count; i++)
        {
            var (row, y) = (rows[i], (i + 0.5) * RowTall);
            board.Say(row.Name, 0, y + Styles.Body.Digits / 2, Styles.Body);
            var end = zero + row.Value * perUnit;
            var bar = new PaperBox(Math.Min(zero, end), y - Bar / 2, Math.Max(zero, end), y + Bar / 2);
            if (bar.Width > 0.3)
            {
                board.Add(new Hatch(Outline.Rectangle(bar), 45, 1.1, new Pen(Weight.Thin)));
                board.Rectangle(bar);
            }

            board.Say(row.Note, Math.Max(zero, end) + Gap, y + Styles.Body.Digits / 2, Styles.Body);
        }

        board.Line(zero, 0, zero, rows.Count * RowTall, Weight.Medium);
        return (board.Marks, new PaperBox(0, 0, width, rows.Count * RowTall));
    }
}
