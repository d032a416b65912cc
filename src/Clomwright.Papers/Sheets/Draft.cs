using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>A sheet before it has its number: what it says of itself, its paper, and what stands in it.</summary>
internal sealed record Draft(SheetHead Head, (double Width, double Height) Paper, IReadOnlyList<Block> Column)
{
    /// <summary>Blocks poured onto as many sheets as they need; further ones carry the same key with a number.</summary>
    public static IEnumerable<Draft> Flow(SheetHead head, (double Width, double Height) paper, IReadOnlyList<Block> blocks, Wording say, int first = 1)
    {
        var content = SheetFrame.Content(paper.Width, paper.Height);
        blocks = [.. blocks.Select(b => b.At(content.Width))];
        var columns = Closer(1, blocks, content);
        foreach (var gap in columns.Count > 1 ? (double[])[0.7, 0.45] : [])
        {
            // A little over: closer gaps save a sheet that would hold only the last lines.
            var closer = Closer(gap, blocks, content);
            columns = closer.Count < columns.Count ? closer : columns;
        }

        return columns.Select((column, i) => new Draft(
            i + first == 1 ? head : head with
            {
                Key = FormattableString.Invariant($"{head.Key}-{i + first}"),
                GoesOn = true,
                Title = say.Say("frame.continued", ("title", head.Title), ("n", i + first)),
            },
            paper,
            column));
    }

    private static IReadOnlyList<IReadOnlyList<Block>> Closer(double gap, IReadOnlyList<Block> blocks, PaperBox content) =>
        Layout.Flow.Columns([.. blocks.Select(b => b with { Above = b.Above * gap })], content.Width, content.Height);

    /// <summary>The finished sheet.</summary>
    public Sheet Finish(int number, int count, Imprint imprint, Wording say)
    {
        var board = new Board();
        SheetFrame.Draw(board, Paper.Width, Paper.Height, Head, number, count, imprint, say);
        var content = SheetFrame.Content(Paper.Width, Paper.Height);
        Layout.Flow.Draw(board, Column, content.Left, content.Top, content.Width);
        return new Sheet(Head.Key, Head.Title, Paper.Width, Paper.Height, board.Marks) { Language = say.Book.Language };
    }
}
