using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Views;

/// <summary>A box of a hatching with the words of what it stands for under it.</summary>
internal static class LegendBox
{
    /// <summary>Draws it.</summary>
    /// <param name="board">Where.</param>
    /// <param name="box">The box.</param>
    /// <param name="hatching">What fills it.</param>
    /// <param name="words">Under its left corner.</param>
    public static void Draw(Board board, PaperBox box, IEnumerable<Mark> hatching, string words)
    {
        board.Add(hatching);
        board.Rectangle(box);
        board.Say(words, box.Left, box.Bottom + 0.6 + Styles.Small.Ascent(), Styles.Small);
    }
}
