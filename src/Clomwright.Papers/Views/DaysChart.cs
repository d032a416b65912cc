using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Views;

/// <summary>Bars over the weeks: for each mark of a job from the day one season in ten is done to the day nine in ten are, the half between.</summary>
internal static class DaysChart
{
    private const double RowTall = 5.6, Bar = 2.6, NameWide = 34, Under = 6;

    /// <summary>A bar.</summary>
    /// <param name="Name">Before it.</param>
    /// <param name="Early">Day of one season in ten.</param>
    /// <param name="Half">Of half.</param>
    /// <param name="Late">Of nine in ten; null where so many never come to it.</param>
    /// <param name="Note">Behind it.</param>
    public sealed record Row(string Name, int Early, int Half, int? Late, string Note);

    /// <param name="rows">From the top.</param>
    /// <param name="start">Day 0.</param>
    /// <param name="date">Writes a day short.</param>
    /// <param name="width">Of the picture, mm.</param>
    public static (IReadOnlyList<Mark> Marks, PaperBox View) Of(IReadOnlyList<Row> rows, DateOnly start, Func<DateOnly, string> date, double width)
    {
        var board = new Board();
        var last = Math.Max(7, rows.Max(r => r.Late ?? r.Half) + 1);
        var notes = rows.Max(r => Styles.Small.WidthOf(r.Note)) + 2;
        var (left, right) = (NameWide, width - notes);
        double X(double day) => left + day / last * (right - left);
        var bottom = rows.Count * RowTall;
        var weeks = (int)Math.Ceiling(last / 7.0);
        var every = Math.Max(1, (int)Math.Ceiling(weeks * (Styles.Small.WidthOf(date(start)) + 5) / (right - left)));
        // Lines on Mondays.
        var monday = (8 - (int)start.DayOfWeek) % 7;
        var wide = Styles.Small.WidthOf(date(start)) + 3;
        for (var (day, n) = (monday, 0); day <= last; day += 7, n++)
        {
            board.Line(X(day), 0, X(day), bottom, Weight.Hair, n % every == 0 ? Dash.Solid : Dash.Dotted);
            if (n % every == 0 && X(day) + wide / 2 < width)
            {
                board.Say(date(start.AddDays(day)), X(day), bottom + 1 + Styles.Small.Ascent(), Styles.Small, Anchor.Middle);
            }
        }

        for (var i = 0; i < rows.Count; i++)
        {
            var (row, y) = (rows[i], (i + 0.5) * RowTall);
            board.Say(row.Name, 0, y + Styles.Body.Digits / 2, Styles.Body);
            var (from, to) = (X(row.Early), X((row.Late ?? last) + 1));
            var bar = new PaperBox(from, y - Bar / 2, to, y + Bar / 2);
            board.Solid(bar, Tone.Paper);
            board.Rectangle(bar, Weight.Medium, row.Late is null ? Dash.Dashed : Dash.Solid);
            board.Line(X(row.Half + 0.5), y - Bar / 2 - 0.8, X(row.Half + 0.5), y + Bar / 2 + 0.8, Weight.Heavy);
            board.Say(row.Note, width, y + Styles.Small.Digits / 2, Styles.Small, Anchor.End);
        }

        board.Line(left, bottom, right, bottom, Weight.Medium);
        return (board.Marks, new PaperBox(0, 0, width, bottom + Under));
    }
}
