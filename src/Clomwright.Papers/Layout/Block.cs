using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Layout;

/// <summary>A piece of a sheet that takes the width it is given and says how tall it then is.</summary>
internal abstract record Block
{
    /// <summary>The least that free room may be taken to.</summary>
    public const double Closest = 0.3;

    /// <summary>Free room over it, mm; none at the head of a column.</summary>
    public double Above { get; init; } = 3;

    /// <summary>What a reader that speaks takes it for; null where its parts tell themselves.</summary>
    public virtual Telling? Telling => Drawing.Telling.Paragraph;

    /// <summary>What a figure is told as.</summary>
    public virtual string Alternative => "";

    /// <summary>Never the last thing in a column when more follows.</summary>
    public virtual bool KeepsWithNext => false;

    /// <summary>The same block with what its layout needs worked out for a width, so that it is worked out once.</summary>
    public virtual Block At(double width) => this;

    /// <summary>The same with its free room taken by a factor, for a sheet that would run over by a few lines.</summary>
    public virtual Block Closer(double gap) => this with { Above = Above * gap };

    /// <summary>The same block with nothing worked out for any width.</summary>
    public virtual Block Free => this;

    /// <summary>Height at a width, mm.</summary>
    public abstract double Height(double width);

    /// <summary>Draws it with its top left corner at a place.</summary>
    public abstract void Draw(Board board, double x, double y, double width);

    /// <summary>Divides it so that the first part is no taller than the room; the first part is null when nothing useful fits. A whole room is an empty column, where something must be taken if it can be divided at all.</summary>
    public virtual (Block? First, Block? After) Split(double width, double room, bool whole) => (null, this);
}

/// <summary>Running text.</summary>
internal sealed record Paragraph(string Words, Lettering Lettering) : Block
{
    /// <summary>Moved in from the left, mm.</summary>
    public double Indent { get; init; }

    /// <summary>Belongs to what follows it.</summary>
    public bool Leads { get; init; }

    public override bool KeepsWithNext => Leads;

    public override double Height(double width) => Count(width) * Lettering.Leading;

    public override void Draw(Board board, double x, double y, double width) =>
        board.Lines(Wrapping.Lines(Words, Lettering, width - Indent), x + Indent, y, Lettering);

    public override (Block? First, Block? After) Split(double width, double room, bool whole)
    {
        var fits = (int)Math.Floor(room / Lettering.Leading);
        if (fits < (whole ? 1 : 2))
        {
            return (null, this);
        }

        var lines = Wrapping.Lines(Words, Lettering, width - Indent);
        return (this with { Words = string.Join('\n', lines.Take(fits)) }, this with { Words = string.Join('\n', lines.Skip(fits)) });
    }

    private int Count(double width) => Wrapping.Lines(Words, Lettering, width - Indent).Count;
}

/// <summary>A heading inside a sheet: strong words over a thin rule.</summary>
internal sealed record Heading(string Words) : Block
{
    public override Telling? Telling => Drawing.Telling.Heading;

    public override bool KeepsWithNext => true;

    public override double Height(double width) => Wrapping.Lines(Words, Styles.Heading, width).Count * Styles.Heading.Leading + 1.2;

    public override void Draw(Board board, double x, double y, double width)
    {
        var bottom = board.Lines(Wrapping.Lines(Words, Styles.Heading, width), x, y, Styles.Heading);
        board.Line(x, bottom + 0.2, x + width, bottom + 0.2, Weight.Medium);
    }
}

/// <summary>A strong line of text that belongs to what follows it.</summary>
internal sealed record LeadIn(string Words) : Block
{
    public override bool KeepsWithNext => true;

    public override double Height(double width) => Wrapping.Lines(Words, Styles.BodyStrong, width).Count * Styles.BodyStrong.Leading;

    public override void Draw(Board board, double x, double y, double width) =>
        board.Lines(Wrapping.Lines(Words, Styles.BodyStrong, width), x, y, Styles.BodyStrong);
}

/// <summary>A drawing of a fixed size, standing in the middle of its column.</summary>
internal sealed record Picture(IEnumerable<Mark> Marks, PaperBox View) : Block
{
    /// <summary>Stands at the left instead.</summary>
    public bool Left { get; init; }

    /// <summary>What it is told as to somebody who cannot see it; empty takes what its sheet says.</summary>
    public string Words { get; init; } = "";

    public override Telling? Telling => Drawing.Telling.Figure;

    public override string Alternative => Words;

    public override double Height(double width) => View.Height;

    public override void Draw(Board board, double x, double y, double width)
    {
        var dx = x - View.Left + (Left ? 0 : (width - View.Width) / 2);
        board.Add(Marks.Select(m => m.Moved(dx, y - View.Top)));
    }
}

/// <summary>Blocks under one another that stay together.</summary>
internal sealed record Stack(IReadOnlyList<Block> Blocks) : Block
{
    public override Telling? Telling => null;

    public override Block At(double width) => this with { Blocks = [.. Blocks.Select(b => b.At(width))] };

    public override Block Closer(double gap) => this with { Above = Above * gap, Blocks = [.. Blocks.Select(b => b.Closer(gap))] };

    public override Block Free => this with { Blocks = [.. Blocks.Select(b => b.Free)] };

    public override double Height(double width) => Blocks.Select((b, i) => b.Height(width) + (i == 0 ? 0 : b.Above)).Sum();

    public override void Draw(Board board, double x, double y, double width)
    {
        for (var i = 0; i < Blocks.Count; i++)
        {
            y += i == 0 ? 0 : Blocks[i].Above;
            Tell(board, Blocks[i], x, y, width);
            y += Blocks[i].Height(width);
        }
    }

    private static void Tell(Board board, Block block, double x, double y, double width)
    {
        if (block.Telling is { } telling)
        {
            board.Tell(telling, () => block.Draw(board, x, y, width), block.Alternative);
        }
        else
        {
            block.Draw(board, x, y, width);
        }
    }

    public override (Block? First, Block? After) Split(double width, double room, bool whole)
    {
        if (!whole)
        {
            return (null, this);
        }

        var (pages, left) = Flow.Fill(Blocks, width, room, whole: true);
        return (pages.Count == 0 ? null : new Stack(pages), left.Count == 0 ? null : new Stack(left) { Above = Above });
    }
}

/// <summary>Two stacks beside each other; the left one takes a share of the width.</summary>
internal sealed record Beside(Stack Left, Stack Right, double Share = 0.5) : Block
{
    /// <summary>Between the two, mm.</summary>
    public const double Gutter = 6;

    public override Telling? Telling => null;

    public override Block At(double width) => this with { Left = (Stack)Left.At(LeftWidth(width)), Right = (Stack)Right.At(RightWidth(width)) };

    public override Block Closer(double gap) => this with { Above = Above * gap, Left = (Stack)Left.Closer(gap), Right = (Stack)Right.Closer(gap) };

    public override Block Free => this with { Left = (Stack)Left.Free, Right = (Stack)Right.Free };

    public override double Height(double width) => Math.Max(Left.Height(LeftWidth(width)), Right.Height(RightWidth(width)));

    public override void Draw(Board board, double x, double y, double width)
    {
        Left.Draw(board, x, y, LeftWidth(width));
        Right.Draw(board, x + LeftWidth(width) + Gutter, y, RightWidth(width));
    }

    /// <summary>Each side is filled by itself; what goes on of one side alone has the whole width.</summary>
    public override (Block? First, Block? After) Split(double width, double room, bool whole)
    {
        if (!whole)
        {
            return (null, this);
        }

        var (left, leftAfter) = Flow.Fill(Left.Blocks, LeftWidth(width), room, whole: true);
        var (right, rightAfter) = Flow.Fill(Right.Blocks, RightWidth(width), room, whole: true);
        Block? after = (leftAfter.Count, rightAfter.Count) switch
        {
            (0, 0) => null,
            (0, _) => new Stack(rightAfter).Free.At(width),
            (_, 0) => new Stack(leftAfter).Free.At(width),
            _ => this with { Left = new Stack(leftAfter), Right = new Stack(rightAfter) },
        };
        return left.Count == 0 && right.Count == 0 ? (null, this) : (this with { Left = new Stack(left), Right = new Stack(right) }, after);
    }

    private double LeftWidth(double width) => (width - Gutter) * Share;

    private double RightWidth(double width) => (width - Gutter) * (1 - Share);
}
