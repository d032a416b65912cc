using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Sheets;

namespace Clomwright.Papers.Views;

/// <summary>Heights written beside an upright drawing, and a bar of its scale under it.</summary>
internal static class Levels
{
    /// <summary>Room that heights take beside a drawing, mm.</summary>
    public const double Width = 46;

    /// <summary>Heights with what is there, each with a line from the drawing's edge.</summary>
    /// <param name="board">The drawing.</param>
    /// <param name="levels">Heights, m, and the words of what is there.</param>
    /// <param name="paperPerMetre">Scale.</param>
    /// <param name="x">Right edge of the drawing, mm.</param>
    /// <param name="say">Words.</param>
    public static void Beside(Board board, IEnumerable<(double Height, string Words)> levels, double paperPerMetre, double x, Wording say)
    {
        (double Height, string Words)[] all = [.. levels.GroupBy(l => Math.Round(l.Height, 3)).Select(g => (g.First().Height, string.Join(", ", g.Select(l => l.Words).Distinct()))).OrderByDescending(l => l.Item1)];
        var lettering = Styles.Small;
        var middles = Spreading.Apart([.. all.Select(l => -l.Height * paperPerMetre)], [.. all.Select(_ => 2 * lettering.Leading + 0.5)], double.NegativeInfinity, double.PositiveInfinity);
        for (var i = 0; i < all.Length; i++)
        {
            var (y, at) = (-all[i].Height * paperPerMetre, middles[i]);
            board.Add(new Stroke(Outline.Through(new(x + 1, y), new(x + 4, y), new(x + 7, at), new(x + 9, at)), new Pen(Weight.Thin)));
            var first = say.Book.Tape(all[i].Height, say.First);
            board.Say(first, x + 10, at - 0.3, Styles.SmallStrong);
            board.Say(say.Book.Tape(all[i].Height, say.Second), x + 10 + Styles.SmallStrong.WidthOf(first) + 2, at - 0.3, lettering);
            board.Say(Wrapping.Shortened(all[i].Words, lettering, Width - 11), x + 10, at + lettering.Leading - 0.6, lettering);
        }
    }

    /// <summary>The same for all that stands on a board, its words by key, in a group of its own.</summary>
    /// <returns>The box of the drawing without its heights, mm.</returns>
    public static PaperBox BesideAll(Board board, string name, IEnumerable<(double Height, string Key)> levels, double paperPerMetre, Wording say)
    {
        var box = board.Marks.Bounds();
        var beside = new Board();
        Beside(beside, levels.Select(l => (l.Height, say.Say("level." + l.Key))), paperPerMetre, box.Right, say);
        board.Add(new Group($"{name}-levels", beside.Marks));
        return box;
    }

    /// <summary>A board as a picture, with its title and a bar of its scale under it.</summary>
    /// <param name="board">What is drawn.</param>
    /// <param name="left">Where the title begins, mm.</param>
    /// <param name="title">The title.</param>
    /// <param name="paperPerMetre">Scale.</param>
    /// <param name="say">Words.</param>
    public static Picture Titled(Board board, double left, string title, double paperPerMetre, Wording say)
    {
        var foot = board.Marks.Bounds().Bottom + 3;
        board.Say(title, left, foot + Styles.Heading.Ascent(), Styles.Heading);
        Bar(board, left + Styles.Heading.WidthOf(title) + 8, foot + 0.6, paperPerMetre, say);
        return new Picture(board.Marks, board.Marks.Bounds().Inset(-1));
    }

    /// <summary>A bar as long as it says, its left end at a place.</summary>
    public static void Bar(Board board, double x, double y, double paperPerMetre, Wording say)
    {
        var unit = say.First == UnitSystem.Imperial ? 0.3048 : 1.0;
        double[] steps = say.First == UnitSystem.Imperial ? [1, 2, 5, 10, 20, 50] : [0.1, 0.2, 0.5, 1, 2, 5, 10, 20];
        var step = unit * steps.FirstOrDefault(n => n * unit * paperPerMetre >= 9, 100);
        board.Add(new ScaleBar(new PaperPoint(x, y), paperPerMetre,
        [
            .. Enumerable.Range(0, 5).Select(i => (i * step, Label(i * step / unit, i == 4))),
        ], Styles.Small));

        string Label(double count, bool last) => say.Book.Marked(count.ToString("0.#", System.Globalization.CultureInfo.InvariantCulture)) + (last ? say.First == UnitSystem.Imperial ? "\u00a0ft" : "\u00a0m" : "");
    }
}
