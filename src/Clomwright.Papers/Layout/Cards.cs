using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Layout;

/// <summary>Cards of one size to cut apart, two beside each other, with a broken line to cut along.</summary>
internal sealed record Cards(IReadOnlyList<Stack> Items) : Block
{
    private const double Across = 2;
    private const double Pad = 3;

    public override Block Closer(double gap) => this with { Above = Above * gap, Items = [.. Items.Select(i => (Stack)i.Closer(gap))] };

    public override double Height(double width) => Math.Ceiling(Items.Count / Across) * Each(width);

    public override void Draw(Board board, double x, double y, double width)
    {
        var (each, height) = (width / Across, Each(width));
        for (var i = 0; i < Items.Count; i++)
        {
            var box = PaperBox.At(x + i % (int)Across * each, y + i / (int)Across * height, each, height);
            board.Rectangle(box, Weight.Thin, Dash.Dashed);
            Items[i].Draw(board, box.Left + Pad, box.Top + Pad, each - 2 * Pad);
        }
    }

    public override (Block? First, Block? After) Split(double width, double room, bool whole)
    {
        var taken = (int)(Math.Floor(room / Each(width)) * Across);
        return taken <= 0 ? (null, this) : (this with { Items = [.. Items.Take(taken)] }, this with { Items = [.. Items.Skip(taken)] });
    }

    /// <summary>Height of the tallest.</summary>
    private double Each(double width) => Items.Max(i => i.Height(width / Across - 2 * Pad)) + 2 * Pad;
}
