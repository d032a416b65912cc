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
    /// <summary>So far before its words a leader turns level, mm.</summary>
    private const double Knee = 3;

    /// <summary>Labels in a column beside the drawing, each with a line to what it names.</summary>
    /// <param name="board">The drawing.</param>
    /// <param name="labels">What is named.</param>
    /// <param name="x">Left edge of the column, mm.</param>
    /// <param name="width">Of the column, mm.</param>
    public static void Name(Board board, IReadOnlyList<PartLabel> labels, double x, double width)
    {
        var sorted = labels.OrderBy(l => l.At.Y).Select(l => new Wrapped(l.At, Wrapping.Lines(l.Words, Styles.Body, width))).ToArray();
        double[] wanted = [.. sorted.Select(l => l.At.Y)];
        var middles = Placed(sorted, wanted);
        // Two change places as long as fewer leaders cross, or as many are shorter together.
        var least = Cost(sorted, middles, x - Knee);
        for (var better = true; better;)
        {
            better = false;
            for (var a = 0; a < sorted.Length; a++)
            {
                for (var b = a + 1; b < sorted.Length; b++)
                {
                    (sorted[a], sorted[b]) = (sorted[b], sorted[a]);
                    var moved = Placed(sorted, wanted);
                    var cost = Cost(sorted, moved, x - Knee);
                    if (cost.Crossed < least.Crossed || (cost.Crossed == least.Crossed && cost.Long < least.Long - 0.01))
                    {
                        (middles, least, better) = (moved, cost, true);
                    }
                    else
                    {
                        (sorted[a], sorted[b]) = (sorted[b], sorted[a]);
                    }
                }
            }
        }

        for (var i = 0; i < sorted.Length; i++)
        {
            var (at, lines) = sorted[i];
            board.Add(new Stroke(Outline.Through(at, new(x - Knee, middles[i]), new(x - 0.8, middles[i])), new Pen(Weight.Thin)));
            board.Add(new Fill(Outline.Circle(at, 0.45)));
            board.Lines(lines, x, middles[i] - lines.Count * Styles.Body.Leading / 2, Styles.Body);
        }
    }

    /// <summary>Middles of labels one under another in the order given, near the heights wanted in that order.</summary>
    private static double[] Placed(Wrapped[] labels, double[] wanted) => Spreading.Apart(
        wanted, [.. labels.Select(l => l.Lines.Count * Styles.Body.Leading + 1.2)], double.NegativeInfinity, double.PositiveInfinity);

    /// <summary>How many pairs of leaders cross on their way to the column, and how long all are together, mm.</summary>
    private static (int Crossed, double Long) Cost(Wrapped[] labels, double[] middles, double x)
    {
        var crossed = 0;
        for (var a = 0; a < labels.Length; a++)
        {
            for (var b = a + 1; b < labels.Length; b++)
            {
                // From the point that lies nearer to the column on both run: whose line is higher there has to end higher.
                var from = Math.Max(labels[a].At.X, labels[b].At.X);
                crossed += At(a, from) > At(b, from) + 1e-6 ? 1 : 0;
            }
        }

        return (crossed, labels.Select((l, i) => (new PaperPoint(x, middles[i]) - l.At).Norm).Sum());

        double At(int i, double at) => labels[i].At.X >= x ? middles[i] : labels[i].At.Y + (middles[i] - labels[i].At.Y) * (at - labels[i].At.X) / (x - labels[i].At.X);
    }

    /// <summary>A label in the lines that it takes.</summary>
    private sealed record Wrapped(PaperPoint At, IReadOnlyList<string> Lines);
}
