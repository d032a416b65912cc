using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Templates;

/// <summary>A template cut into sheets of paper: equal tiles that overlap, and beside or under each a square to check the printer by.</summary>
internal sealed record Tiling
{
    /// <summary>Neighbours show the same strip of this width, mm.</summary>
    public const double Overlap = 10;

    /// <summary>Side of the check square, mm.</summary>
    public const double Square = 100;

    /// <summary>Between the window and what stands beside it, mm.</summary>
    public const double Gap = 4;

    private Tiling(Template template, double width, double height, bool beside)
    {
        (Template, Beside) = (template, beside);
        (Columns, Rows) = (Count(template.Width, width), Count(template.Height, height));
        (StepX, StepY) = ((Math.Max(template.Width, Overlap + 1) - Overlap) / Columns, (Math.Max(template.Height, Overlap + 1) - Overlap) / Rows);
        (WindowWidth, WindowHeight) = (width, height);
    }

    public Template Template { get; }

    /// <summary>The panel stands beside the window, not under it.</summary>
    public bool Beside { get; }

    public int Columns { get; }

    public int Rows { get; }

    public int Tiles => Columns * Rows;

    /// <summary>From one tile to the next to the right, mm.</summary>
    public double StepX { get; }

    /// <summary>From one tile to the next below, mm.</summary>
    public double StepY { get; }

    /// <summary>Room for a tile, mm.</summary>
    public double WindowWidth { get; }

    /// <summary>Room for a tile, mm.</summary>
    public double WindowHeight { get; }

    /// <summary>With as few tiles as may be on sheets whose content has a size in mm.</summary>
    public static Tiling Of(Template template, PaperBox content)
    {
        var under = new Tiling(template, content.Width, content.Height - Square - Gap, beside: false);
        var beside = new Tiling(template, content.Width - Square - Gap, content.Height, beside: true);
        return beside.Tiles <= under.Tiles ? beside : under;
    }

    /// <summary>The part of the template that a tile shows.</summary>
    public PaperBox Part(int tile) => PaperBox.At(tile % Columns * StepX, tile / Columns * StepY, StepX + Overlap, StepY + Overlap);

    /// <summary>The part that a tile keeps when neighbours are cut or laid at the middle of their overlap.</summary>
    public PaperBox Cell(int tile) => Part(tile).Inset(Overlap / 2);

    /// <summary>Text goes on the first tile that holds all of it.</summary>
    public IEnumerable<Text> Labels(int tile)
    {
        var part = Part(tile);
        return Template.Labels.Where(l => part.Holds(l.Bounds) && !Enumerable.Range(0, tile).Any(t => Part(t).Holds(l.Bounds)));
    }

    private static int Count(double size, double room) => Math.Max(1, (int)Math.Ceiling((size - Overlap) / (room - Overlap) - 1e-9));
}

/// <summary>One tile on its sheet.</summary>
/// <param name="Tiling">Of which template.</param>
/// <param name="Tile">From 0, row by row.</param>
/// <param name="Words">What stands in the check square, and beside the map.</param>
internal sealed record TilePage(Tiling Tiling, int Tile, TileWords Words) : Block
{
    private const double Cross = 4;

    public override double Height(double width) => Tiling.Beside ? Tiling.WindowHeight : Tiling.WindowHeight + Tiling.Gap + Tiling.Square;

    public override void Draw(Board board, double x, double y, double width)
    {
        var (part, cell) = (Tiling.Part(Tile), Tiling.Cell(Tile));
        var (dx, dy) = (x - part.Left, y - part.Top);
        Mark[] lines = [.. Tiling.Template.Lines.Where(m => ((Mark[])[m]).Bounds().Inset(-1).Overlaps(part)), new Stroke(Tiling.Template.Edge, new Pen(Weight.Heavy))];
        board.Add(new Group("template", lines.Select(m => m.Moved(dx, dy)).ToSequence(), Outline.Rectangle(part.Moved(dx, dy))));
        board.Add(Tiling.Labels(Tile).Select(l => l.Moved(dx, dy)));
        board.Add(new Group("registration", [.. Registration(cell.Moved(dx, dy))]));
        Panel(board, Tiling.Beside ? x + Tiling.WindowWidth + Tiling.Gap : x, Tiling.Beside ? y : y + Tiling.WindowHeight + Tiling.Gap, width);
    }

    /// <summary>The line to cut or lay along, and a cross in a ring at each corner, which the neighbour has too.</summary>
    private static IEnumerable<Mark> Registration(PaperBox cell)
    {
        yield return new Stroke(Outline.Rectangle(cell), new Pen(Weight.Hair, Dash.Dotted));
        foreach (var (cx, cy) in ((double, double)[])[(cell.Left, cell.Top), (cell.Right, cell.Top), (cell.Left, cell.Bottom), (cell.Right, cell.Bottom)])
        {
            yield return new Stroke(Outline.Of(Outline.Line(cx - Cross, cy, cx + Cross, cy), Outline.Line(cx, cy - Cross, cx, cy + Cross)), new Pen(Weight.Thin));
            yield return new Stroke(Outline.Circle(new PaperPoint(cx, cy), 2), new Pen(Weight.Thin));
        }
    }

    private void Panel(Board board, double x, double y, double width)
    {
        const double square = Tiling.Square;
        board.Add(new Group("check-square", [new Stroke(Outline.Rectangle(PaperBox.At(x, y, square, square)), new Pen(Weight.Medium))]));
        var below = board.Lines([Words.Size], x + square / 2, y + 4, Styles.Reading, Anchor.Middle);
        foreach (var words in Words.Check)
        {
            below = board.Lines(Wrapping.Lines(words, Styles.Body, square - 8), x + 4, below + 2, Styles.Body);
        }

        var (left, top, room) = Tiling.Beside ? (x, y + square + 5, square) : (x + square + Tiling.Gap, y, width - square - Tiling.Gap);
        below = board.Lines([Words.Tile], left, top, Styles.Heading) + 1.5;
        below = Map(board, left, below, room, Tiling.Beside ? 60 : 45) + 2;
        foreach (var words in Tiling.Template.Uses)
        {
            below = board.Lines(Wrapping.Lines(words, Styles.Body, room), left, below, Styles.Body) + 0.8;
        }
    }

    /// <summary>How the tiles lie together, this one strong; returns the y below it.</summary>
    private double Map(Board board, double left, double top, double width, double height)
    {
        var (whole, high) = (Tiling.Columns * Tiling.StepX, Tiling.Rows * Tiling.StepY);
        var scale = Math.Min(Math.Min(width / whole, height / high), 0.2);
        const double shift = Tiling.Overlap / 2;
        var numbers = scale * Math.Min(Tiling.StepX, Tiling.StepY) > 5;
        board.Add(new Group("map", [new Stroke(Tiling.Template.Edge.Scaled(scale, left - shift * scale, top - shift * scale), new Pen(Weight.Thin))]));
        for (var i = 0; i < Tiling.Tiles; i++)
        {
            var cell = Tiling.Cell(i);
            var box = new PaperBox(left + (cell.Left - shift) * scale, top + (cell.Top - shift) * scale, left + (cell.Right - shift) * scale, top + (cell.Bottom - shift) * scale);
            board.Rectangle(box, i == Tile ? Weight.Bold : Weight.Hair);
            if (numbers)
            {
                board.Say((i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture), box.Left + 1.2, box.Top + 1 + Styles.Small.Digits, i == Tile ? Styles.SmallStrong : Styles.Small);
            }
        }

        return top + high * scale;
    }
}

/// <summary>The words of one tile.</summary>
/// <param name="Size">Over the check square: how long its sides are.</param>
/// <param name="Check">In it: what to do when they are not.</param>
/// <param name="Tile">Which tile it is.</param>
internal sealed record TileWords(string Size, IReadOnlyList<string> Check, string Tile);
