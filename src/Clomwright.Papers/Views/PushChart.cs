using Clomwright.Analysis.Collapse;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Views;

/// <summary>How far the wall that cracks leans as it is pushed harder, with level lines for what else is known.</summary>
internal static class PushChart
{
    private const double Tall = 58;
    private const double Left = 11;
    private const double Right = 34;

    private static readonly double[] Steps = [0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5];

    /// <summary>A level line.</summary>
    /// <param name="Words">Beside it.</param>
    /// <param name="Factor">Push over weight.</param>
    /// <param name="Dash">How it is drawn.</param>
    public sealed record Level(string Words, double Factor, Dash Dash);

    /// <param name="drift">States of the wall that cracks.</param>
    /// <param name="levels">What else is known.</param>
    /// <param name="say">Writes a quantity.</param>
    /// <param name="farthest">Writes the length at the end of the axis.</param>
    /// <param name="axis">What runs up, then what runs along.</param>
    /// <param name="width">Of the picture, mm.</param>
    public static (IReadOnlyList<Mark> Marks, PaperBox View) Of(IReadOnlyList<DriftStep> drift, IReadOnlyList<Level> levels, Func<Amount, string> say, Func<Amount, string> farthest, (string Up, string Along) axis, double width)
    {
        var board = new Board();
        var most = drift.Select(d => d.Factor).Concat(levels.Select(l => l.Factor)).DefaultIfEmpty(0.1).Max();
        var step = Steps.First(s => most / s <= 6 || s == Steps[^1]);
        var top = Math.Ceiling(most / step - 1e-9) * step;
        var far = Math.Max(drift.Select(d => Math.Abs(d.Drift)).DefaultIfEmpty(0).Max(), 1e-6);
        var plot = new PaperBox(Left, 0, width - Right, Tall);
        double X(double metres) => plot.Left + Math.Max(0, metres) / far * (plot.Width - 2);
        double Y(double factor) => plot.Bottom - factor / top * plot.Height;
        for (var n = 0; n * step <= top + 1e-9; n++)
        {
            board.Line(plot.Left - 1, Y(n * step), plot.Right, Y(n * step), Weight.Hair, Dash.Dotted);
            board.Say(say(Amount.Fraction(n * step)), plot.Left - 1.6, Y(n * step) + Styles.Small.Digits / 2, Styles.Small, Anchor.End);
        }

        board.Line(plot.Left, plot.Top, plot.Left, plot.Bottom, Weight.Medium);
        board.Line(plot.Left, plot.Bottom, plot.Right, plot.Bottom, Weight.Medium);
        board.Say(axis.Up, 0, plot.Top - 2.6, Styles.SmallStrong);
        var under = plot.Bottom + 1 + Styles.Small.Ascent();
        board.Say("0", plot.Left, under, Styles.Small, Anchor.Middle);
        board.Say(farthest(Amount.Metres(far)), plot.Right, under, Styles.Small, Anchor.End);
        board.Say(axis.Along, plot.Left + 0.35 * plot.Width, under, Styles.SmallStrong, Anchor.Middle);
        var lines = levels.Select(l => Wrapping.Lines(l.Words, Styles.Small, Right - 3)).ToArray();
        var middles = Spreading.Apart([.. levels.Select(l => Y(l.Factor))], [.. lines.Select(l => l.Count * Styles.Small.Leading + 0.8)], plot.Top - 2, plot.Bottom + 2);
        for (var i = 0; i < levels.Count; i++)
        {
            var y = Y(levels[i].Factor);
            board.Line(plot.Left, y, plot.Right, y, Weight.Thin, levels[i].Dash);
            board.Add(new Stroke(Outline.Through(new(plot.Right, y), new(plot.Right + 0.6, y), new(plot.Right + 2, middles[i])), new Pen(Weight.Hair)));
            board.Lines(lines[i], plot.Right + 2.6, middles[i] - lines[i].Count * Styles.Small.Leading / 2, Styles.Small);
        }

        if (drift.Count > 1)
        {
            board.Add(new Stroke(Outline.Through([.. drift.Select(d => new PaperPoint(X(d.Drift), Y(d.Factor)))]), new Pen(Weight.Heavy)));
        }

        foreach (var state in drift)
        {
            board.Add(new Fill(Outline.Circle(new PaperPoint(X(state.Drift), Y(state.Factor)), 0.8)));
        }

        return (board.Marks, new PaperBox(0, plot.Top - 5.5, width, under + Styles.Small.Descent() + 0.5));
    }
}
