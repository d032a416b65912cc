using System.Globalization;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Revisions;

namespace Clomwright.Papers.Sheets;

/// <summary>A sheet before it has its number: what it says of itself, its paper, and what stands in it.</summary>
internal sealed record Draft(SheetHead Head, Format Paper, IReadOnlyList<Block> Column)
{
    /// <summary>Blocks poured onto as many sheets as they need; further ones carry the same key with a number.</summary>
    public static IEnumerable<Draft> Flow(SheetHead head, Format paper, IReadOnlyList<Block> blocks, Wording say, int first = 1)
    {
        var content = SheetFrame.Content(paper);
        blocks = [.. blocks.Select(b => b.At(content.Width))];
        var columns = Closer(1, blocks, content);
        foreach (var gap in columns.Count > 1 ? (double[])[0.7, 0.45, Block.Closest] : [])
        {
            // A little over: closer gaps save a sheet that would hold only the last lines.
            var closer = Closer(gap, blocks, content);
            columns = closer.Count < columns.Count ? closer : columns;
        }

        return columns.Select((column, i) => new Draft(Numbered(head, i + first, say), paper, column));
    }

    /// <summary>Whether they stand on one sheet with all their gaps, so that they do too where more follows.</summary>
    public static bool IsOneSheet(Format paper, IReadOnlyList<Block> blocks)
    {
        var content = SheetFrame.Content(paper);
        return Closer(1, [.. blocks.Select(b => b.At(content.Width))], content).Count == 1;
    }

    /// <summary>The same in columns beside each other, for long lists of short lines.</summary>
    public static IEnumerable<Draft> FlowAcross(int across, SheetHead head, Format paper, IReadOnlyList<Block> blocks, Wording say)
    {
        var content = SheetFrame.Content(paper);
        var width = (content.Width - (across - 1) * Across.Gutter) / across;
        var columns = Layout.Flow.Columns([.. blocks.Select(b => b.At(width))], width, content.Height);
        return columns.Chunk(across).Select((beside, i) => new Draft(Numbered(head, i + 1, say), paper, [new Across([.. beside.Select(c => new Stack(c))], across)]));
    }

    /// <summary>The same sheets drawn in the first of some ways that takes no more of them than any other.</summary>
    /// <param name="ways">Sizes of lettering or of a drawing, the best first; none is tried after one that takes one sheet.</param>
    /// <param name="of">The sheets in one way.</param>
    public static IEnumerable<Draft> Fewest<T>(IEnumerable<T> ways, Func<T, IEnumerable<Draft>> of)
    {
        Draft[] fewest = [];
        foreach (var way in ways)
        {
            Draft[] sheets = [.. of(way)];
            fewest = fewest.Length == 0 || sheets.Length < fewest.Length ? sheets : fewest;
            if (fewest.Length == 1)
            {
                break;
            }
        }

        return fewest;
    }

    private static SheetHead Numbered(SheetHead head, int n, Wording say) => n == 1 ? head : head with
    {
        Key = FormattableString.Invariant($"{head.Key}-{n}"),
        GoesOn = true,
        Title = say.Say("frame.continued", ("title", head.Title), ("n", n)),
    };

    private static IReadOnlyList<IReadOnlyList<Block>> Closer(double gap, IReadOnlyList<Block> blocks, PaperBox content) =>
        Layout.Flow.Columns([.. blocks.Select(b => b.Closer(gap))], content.Width, content.Height);

    /// <summary>What stands within the frame, once it is drawn; null before.</summary>
    private Sequence<Mark>? Content { get; init; }

    /// <summary>The same with what stands within the frame drawn, so that it is drawn once.</summary>
    public Draft Drawn(Wording say)
    {
        if (Content is not null)
        {
            return this;
        }

        var content = SheetFrame.Content(Paper);
        var board = new Board { Figure = marks => say.Say("frame.figure", ("title", Head.Title), ("scale", Head.Scale), ("names", FigureNames.In(marks))) };
        Layout.Flow.Draw(board, Column, content.Left, content.Top, content.Width);
        return this with { Content = board.Marks };
    }

    /// <summary>Hash of what it shows, without date, number and letter.</summary>
    public string Print(Wording say) =>
        Fingerprint.Of(string.Join('\n', Head.Key, Head.Title, Head.Clock, Head.Scale), new PaperBox(0, 0, Paper.Width, Paper.Height), Drawn(say).Content!.Value);

    /// <summary>The finished sheet of a book that counts its pages.</summary>
    public Sheet Finish(int number, int count, Imprint imprint, Wording say) =>
        Finish(number.ToString(CultureInfo.InvariantCulture), say.Say("frame.of", ("count", count)), imprint, say);

    /// <summary>The finished sheet.</summary>
    /// <param name="number">Set large in its corner: <c>7</c>, <c>A-101</c>.</param>
    /// <param name="of">Beside it, small.</param>
    /// <param name="imprint">What every sheet of the book says.</param>
    /// <param name="say">Words.</param>
    public Sheet Finish(string number, string of, Imprint imprint, Wording say)
    {
        var board = new Board();
        var revision = imprint.Set?.Sheets.FirstOrDefault(s => s.Drawn.Key == Head.Key);
        SheetFrame.Draw(board, Paper, Head, number, of, imprint with { Sheet = revision }, say);
        board.Add(Drawn(say).Content!.Value);
        return new Sheet(Head.Key, Head.Title, Paper.Width, Paper.Height, board.Marks)
        {
            Number = number, Language = say.Book.Language, Revision = revision is null ? null : revision with { Drawn = revision.Drawn with { Number = number } },
        };
    }
}
