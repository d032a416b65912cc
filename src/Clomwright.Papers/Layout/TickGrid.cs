using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Layout;

/// <summary>One thing to tick: boxes, its sign, a number read at the wall, and a smaller one under it.</summary>
internal sealed record TickItem(string Sign, string Value, string Note, int Boxes = 1);

/// <summary>Many like things to tick, as many beside each other as fit, divided between rows.</summary>
internal sealed record TickGrid(IReadOnlyList<TickItem> Items) : Block
{
    private const double Gap = 6;
    private const double Side = 2.6;

    private static readonly Lettering Sign = Styles.BodyStrong;
    private static readonly Lettering Value = Styles.Reading;

    private static double RowHeight => Value.Leading + Styles.Small.Leading + 1.8;

    public override double Height(double width) => Rows(width) * RowHeight;

    public override void Draw(Board board, double x, double y, double width)
    {
        var (across, each) = (Across(width), Each(width));
        for (var i = 0; i < Items.Count; i++)
        {
            var item = Items[i];
            var (left, top) = (x + i % across * (each + Gap), y + i / across * RowHeight);
            for (var b = 0; b < item.Boxes; b++)
            {
                board.Add(new TickBox(new PaperPoint(left + b * (Side + 0.9), top + Value.Ascent() - Side), Side));
            }

            var sign = left + Boxes * (Side + 0.9) + 0.8;
            board.Say(item.Sign, sign, top + Value.Ascent(), Sign);
            board.Say(item.Value, sign + SignWidth + 1.8, top + Value.Ascent(), Value);
            board.Say(item.Note, sign + SignWidth + 1.8, top + Value.Leading + Styles.Small.Ascent(), Styles.Small);
        }
    }

    public override (Block? First, Block? After) Split(double width, double room, bool whole)
    {
        var taken = (int)Math.Floor(room / RowHeight) * Across(width);
        return taken <= 0 ? (null, this) : (this with { Items = [.. Items.Take(taken)] }, this with { Items = [.. Items.Skip(taken)] });
    }

    private int Boxes => Items.Max(i => i.Boxes);

    private double SignWidth => Items.Max(i => Sign.WidthOf(i.Sign));

    private double Natural => Boxes * (Side + 0.9) + 0.8 + SignWidth + 1.8 + Items.Max(i => Math.Max(Value.WidthOf(i.Value), Styles.Small.WidthOf(i.Note)));

    private int Across(double width) => Math.Max(1, (int)Math.Floor((width + Gap) / (Natural + Gap)));

    private double Each(double width) => (width - Gap * (Across(width) - 1)) / Across(width);

    private int Rows(double width) => (int)Math.Ceiling((double)Items.Count / Across(width));
}
