using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Views;

/// <summary>A part of the foundation with its words, named beside the drawing.</summary>
/// <param name="At">The point of the drawing that is named.</param>
/// <param name="Words">What it is.</param>
internal sealed record PartLabel(PaperPoint At, string Words);

/// <summary>Names beside a drawing.</summary>
internal static class PartLabels
{
    /// <summary>Labels in a column beside the drawing, each with a line to what it names.</summary>
    /// <param name="board">The drawing.</param>
    /// <param name="labels">What is named.</param>
    /// <param name="x">Left edge of the column, mm.</param>
    /// <param name="width">Of the column, mm.</param>
    public static void Name(Board board, IReadOnlyList<PartLabel> labels, double x, double width)
    {
        var sorted = labels.OrderBy(l => l.At.Y).ToArray();
        var lines = sorted.Select(l => Wrapping.Lines(l.Words, Styles.Body, width)).ToArray();
        var heights = lines.Select(l => l.Count * Styles.Body.Leading + 1.2).ToArray();
        var middles = Spreading.Apart([.. sorted.Select(l => l.At.Y)], heights, double.NegativeInfinity, double.PositiveInfinity);
        for (var i = 0; i < sorted.Length; i++)
        {
            var at = sorted[i].At;
            board.Add(new Stroke(Outline.Through(at, new(x - 3, middles[i]), new(x - 0.8, middles[i])), new Pen(Weight.Thin)));
            board.Add(new Fill(Outline.Circle(at, 0.45)));
            board.Lines(lines[i], x, middles[i] - lines[i].Count * Styles.Body.Leading / 2, Styles.Body);
        }
    }
}
