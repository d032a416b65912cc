using Clomwright.Papers.Drawing;
using Clomwright.Papers.Setting;

namespace Clomwright.Papers.Layout;

/// <summary>A symbol under an equation: its letter, what it stands for, its value and where that comes from.</summary>
internal sealed record WorkingSymbol(Piece Letter, string What, string Value, string From);

/// <summary>One worked step: what is computed and its value on a line, the equation under it, then every symbol of it.</summary>
internal sealed record Working(string What, string Value, Piece Equation, string Source, IReadOnlyList<WorkingSymbol> Symbols) : Block
{
    private const double Indent = 3;
    private const double Gap = 2.2;
    private const double ValueWidth = 18;

    public override double Height(double width) =>
        Heads(width).Count * Styles.BodyStrong.Leading + 0.8 + EquationHeight(width) + 0.8
        + Symbols.Sum(s => RowHeight(s, width)) + (Symbols.Count > 0 ? 0.6 : 0);

    public override void Draw(Board board, double x, double y, double width)
    {
        board.Say(Value, x + width, y + Styles.BodyStrong.Ascent(), Styles.BodyStrong, Anchor.End);
        y = board.Lines(Heads(width), x, y, Styles.BodyStrong) + 0.8;
        var (high, source) = (EquationHeight(width), SourceLines(width));
        Equation.Draw(board, x + Indent, y + Equation.Up);
        board.Lines(source, x + width, y + (Under(width) ? Equation.Height + 0.4 : (high - source.Count * Styles.Small.Leading) / 2), Styles.Small, Anchor.End);
        y += high + 0.8;
        foreach (var symbol in Symbols)
        {
            Line(board, symbol, x, y, width);
            y += RowHeight(symbol, width);
        }
    }

    private void Line(Board board, WorkingSymbol symbol, double x, double y, double width)
    {
        var baseline = y + Math.Max(Styles.Small.Ascent(), symbol.Letter.Up);
        symbol.Letter.Draw(board, x + Indent, baseline);
        board.Lines(WhatLines(symbol, width), x + Indent + LetterWidth + Gap, baseline - Styles.Small.Ascent(), Styles.Small);
        board.Say(symbol.Value, ValueRight(width) + x, baseline, Styles.Small, Anchor.End);
        board.Lines(FromLines(symbol, width), x + ValueRight(width) + Gap, baseline - Styles.Small.Ascent(), Styles.Small);
    }

    private double LetterWidth => Symbols.Max(s => s.Letter.Width);

    private double ValueRight(double width) => Indent + LetterWidth + Gap + WhatWidth(width) + Gap + Math.Max(ValueWidth, Symbols.Max(s => Styles.Small.WidthOf(s.Value)));

    private double WhatWidth(double width) => 0.4 * (width - Indent - LetterWidth);

    private double FromWidth(double width) => width - ValueRight(width) - Gap;

    /// <summary>The source stands beside the equation; under it where the equation leaves no room.</summary>
    private bool Under(double width) => width - Indent - Equation.Width - 6 < 0.3 * width;

    private IReadOnlyList<string> SourceLines(double width) =>
        Wrapping.Lines(Source, Styles.Small, Under(width) ? width - Indent : Math.Min(0.45 * width, width - Indent - Equation.Width - 6));

    private double EquationHeight(double width)
    {
        var source = SourceLines(width).Count * Styles.Small.Leading;
        return Under(width) ? Equation.Height + 0.4 + source : Math.Max(Equation.Height, source);
    }

    private IReadOnlyList<string> Heads(double width) => Wrapping.Lines(What, Styles.BodyStrong, width - Styles.BodyStrong.WidthOf(Value) - 6);

    private IReadOnlyList<string> WhatLines(WorkingSymbol symbol, double width) => Wrapping.Lines(symbol.What, Styles.Small, WhatWidth(width));

    private IReadOnlyList<string> FromLines(WorkingSymbol symbol, double width) => symbol.From.Length == 0 ? [] : Wrapping.Lines(symbol.From, Styles.Small, FromWidth(width));

    private double RowHeight(WorkingSymbol symbol, double width) => Math.Max(
        Math.Max(WhatLines(symbol, width).Count * Styles.Small.Leading, symbol.Letter.Height + 0.2),
        FromLines(symbol, width).Count * Styles.Small.Leading + 0.3) + 0.1;
}
