namespace Clomwright.Papers.Layout;

/// <summary>Columns of equal width beside each other on one sheet, read one after the other.</summary>
/// <param name="Columns">Their contents; fewer than there is room for leave the last ones empty.</param>
/// <param name="Count">How many the width is divided into.</param>
internal sealed record Across(IReadOnlyList<Stack> Columns, int Count) : Block
{
    /// <summary>Between two columns, mm.</summary>
    public const double Gutter = 7;

    public override Drawing.Telling? Telling => null;

    public override double Height(double width) => Columns.Max(c => c.Height(Each(width)));

    public override void Draw(Board board, double x, double y, double width)
    {
        var height = Height(width);
        for (var i = 0; i < Columns.Count; i++)
        {
            var left = x + i * (Each(width) + Gutter);
            if (i > 0)
            {
                board.Line(left - Gutter / 2, y, left - Gutter / 2, y + height, Drawing.Weight.Hair);
            }

            Columns[i].Draw(board, left, y, Each(width));
        }
    }

    private double Each(double width) => (width - (Count - 1) * Gutter) / Count;
}
