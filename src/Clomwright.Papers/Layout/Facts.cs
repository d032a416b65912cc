using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Layout;

/// <summary>One number that the sheet is about.</summary>
/// <param name="Label">What it is.</param>
/// <param name="Value">In the units that come first; empty leaves a line to write on.</param>
/// <param name="Note">The other unit system and the tag.</param>
internal sealed record Fact(string Label, string Value, string Note = "");

/// <summary>A few large numbers in a row, wrapping into more rows where the width asks for it.</summary>
internal sealed record Facts(IReadOnlyList<Fact> Items, Lettering Lettering) : Block
{
    private const double Gap = 4;
    private const double Pad = 1.2;

    /// <summary>The most in one row.</summary>
    public int Across { get; init; } = 4;

    public override double Height(double width) => Rows(width).Sum(r => RowHeight(r, width));

    public override void Draw(Board board, double x, double y, double width)
    {
        foreach (var row in Rows(width))
        {
            var each = Each(row.Count, width);
            for (var i = 0; i < row.Count; i++)
            {
                var left = x + i * (each + Gap);
                board.Line(left, y, left + each, y, Weight.Medium);
                var top = board.Lines(Wrapping.Lines(row[i].Label, Styles.Small, each), left, y + Pad, Styles.Small);
                if (row[i].Value.Length == 0)
                {
                    board.Line(left, top + Lettering.Ascent() + 1, left + each, top + Lettering.Ascent() + 1, Weight.Thin, Dash.Dotted);
                    top += Lettering.Leading;
                }
                else
                {
                    top = board.Lines(Wrapping.Lines(row[i].Value, Lettering, each), left, top + 0.6, Lettering) - 0.6;
                }

                board.Lines(Wrapping.Lines(row[i].Note, Styles.Small, each), left, top, Styles.Small);
            }

            y += RowHeight(row, width);
        }
    }

    private static double Each(int count, double width) => (width - Gap * (count - 1)) / count;

    private double RowHeight(IReadOnlyList<Fact> row, double width)
    {
        var each = Each(row.Count, width);
        return row.Max(f =>
            Wrapping.Lines(f.Label, Styles.Small, each).Count * Styles.Small.Leading
            + Wrapping.Lines(f.Value, Lettering, each).Count * Lettering.Leading
            + Wrapping.Lines(f.Note, Styles.Small, each).Count * Styles.Small.Leading) + 2 * Pad + 0.6;
    }

    /// <summary>As many in a row as let every value stay on one line, shared out evenly.</summary>
    private IReadOnlyList<IReadOnlyList<Fact>> Rows(double width)
    {
        var across = Math.Min(Across, Items.Count);
        while (across > 1 && Items.Any(f => Lettering.WidthOf(f.Value) > Each(across, width)))
        {
            across--;
        }

        var rows = (int)Math.Ceiling((double)Items.Count / Math.Max(across, 1));
        var per = (int)Math.Ceiling((double)Items.Count / Math.Max(rows, 1));
        return [.. Items.Chunk(Math.Max(per, 1))];
    }
}

/// <summary>What can hurt people in the task of this sheet: a strong bar beside it, so that it is seen before it is read.</summary>
internal sealed record Cautions(string Title, IReadOnlyList<string> Items) : Block
{
    private const double Bar = 1.6;
    private const double Indent = 4.2;
    private const double Bullet = 3.2;

    public override double Height(double width) => Styles.BodyStrong.Leading + Items.Sum(i => Count(i, width) * Styles.Body.Leading + 0.5) + 1;

    public override void Draw(Board board, double x, double y, double width)
    {
        board.Solid(PaperBox.At(x, y, Bar, Height(width)));
        board.Say(Title, x + Indent, y + 0.3 + Styles.BodyStrong.Ascent(), Styles.BodyStrong);
        y += Styles.BodyStrong.Leading + 0.5;
        foreach (var item in Items)
        {
            board.Say("–", x + Indent, y + Styles.Body.Ascent(), Styles.Body);
            y = board.Lines(Wrapping.Lines(item, Styles.Body, width - Indent - Bullet), x + Indent + Bullet, y, Styles.Body) + 0.5;
        }
    }

    public override (Block? First, Block? After) Split(double width, double room, bool whole)
    {
        if (!whole)
        {
            return (null, this);
        }

        var used = Styles.BodyStrong.Leading + 1;
        var taken = Items.TakeWhile(i => (used += Count(i, width) * Styles.Body.Leading + 0.5) <= room).Count();
        return taken == 0 ? (null, this) : (this with { Items = [.. Items.Take(taken)] }, this with { Items = [.. Items.Skip(taken)] });
    }

    private static int Count(string item, double width) => Wrapping.Lines(item, Styles.Body, width - Indent - Bullet).Count;
}
