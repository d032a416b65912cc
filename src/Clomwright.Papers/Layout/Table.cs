using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Layout;

/// <summary>A column of a table.</summary>
/// <param name="Head">Its heading; may be empty.</param>
/// <param name="Align">How its cells stand.</param>
internal sealed record Column(string Head, Anchor Align = Anchor.Start)
{
    /// <summary>Share of the width left over when every column has what it needs.</summary>
    public double Grows { get; init; }
}

/// <summary>A cell: words, and a second, smaller line for a tag or the other unit system.</summary>
internal sealed record Cell(string Words, string Note = "")
{
    /// <summary>How the words are set; null takes the table's.</summary>
    public Lettering? Lettering { get; init; }

    /// <summary>A box to tick stands before the words.</summary>
    public bool Tick { get; init; }

    public static implicit operator Cell(string words) => new(words);
}

/// <summary>One row: as many cells as the table has columns, or one that runs across all.</summary>
internal sealed record Row(params IReadOnlyList<Cell> Cells)
{
    /// <summary>A heavier rule stands over it.</summary>
    public bool Ruled { get; init; }
}

/// <summary>Rows and columns with wrapping cells. Divided between rows, its headings are repeated on the next sheet.</summary>
internal sealed record Table(IReadOnlyList<Column> Columns, IReadOnlyList<Row> Rows) : Block
{
    private const double Gap = 3.2;
    private const double NoteGap = 0.2;

    /// <summary>Lines of type have their free room below: a rule between rows stands this much higher, mm, so that it is as far from either.</summary>
    private const double Raise = 0.35;

    private const double LeastPad = 0.45;
    private const double ClosestPad = 0.3;
    private const double WritingPad = 1;

    /// <summary>Over a taller row a heading is not said again, so that the row can be divided, mm.</summary>
    private const double TallestUnderHead = 60;

    public override Telling? Telling => Drawing.Telling.Table;

    /// <summary>Free room over and under the words of each row, mm.</summary>
    public double Pad { get; init; } = 0.75;

    /// <summary>How cells are set.</summary>
    public Lettering Lettering { get; init; } = Styles.Body;

    /// <summary>Widths of columns worked out for all rows, so that the parts of a divided table match; null to work them out.</summary>
    private double[]? Fixed { get; init; }

    /// <summary>Heights of rows worked out at those widths; null to work them out.</summary>
    private double[]? Heights { get; init; }

    public override Block At(double width)
    {
        var widths = Widths(width);
        return this with { Fixed = widths, Heights = [.. Rows.Select(r => RowHeight(r, widths))] };
    }

    /// <summary>Rows draw together too, but never those that are written in by hand.</summary>
    public override Block Closer(double gap)
    {
        var pad = Pad > WritingPad ? Pad : Math.Min(Pad, Math.Max(gap > Closest ? LeastPad : ClosestPad, Pad * (1 + gap) / 2));
        return this with { Above = Above * gap, Pad = pad, Heights = Heights is null ? null : [.. Heights.Select(h => h - 2 * (Pad - pad))] };
    }

    public override Block Free => this with { Fixed = null, Heights = null };

    private double HeadHeight(double[] widths) => Columns.All(c => c.Head.Length == 0)
        ? 0
        : Columns.Select((c, i) => Wrapping.Lines(c.Head, Styles.SmallStrong, widths[i]).Count).Max() * Styles.SmallStrong.Leading + 1.4;

    public override double Height(double width)
    {
        var widths = Widths(width);
        return HeadHeight(widths) + (Heights ?? Rows.Select(r => RowHeight(r, widths))).Sum();
    }

    public override void Draw(Board board, double x, double y, double width)
    {
        var widths = Widths(width);
        var head = HeadHeight(widths);
        if (head > 0)
        {
            board.Tell(Drawing.Telling.Row, () => DrawHeads(board, x, y + head - 1.4, widths));
            y += head;
            board.Line(x, y - 0.6, x + width, y - 0.6, Weight.Medium);
        }

        for (var r = 0; r < Rows.Count; r++)
        {
            if (Rows[r].Ruled || r > 0)
            {
                board.Line(x, y - Raise, x + width, y - Raise, Rows[r].Ruled ? Weight.Medium : Weight.Hair);
            }

            board.Tell(Drawing.Telling.Row, () => DrawRow(board, Rows[r], x, y, widths));
            y += Heights?[r] ?? RowHeight(Rows[r], widths);
        }
    }

    public override (Block? First, Block? After) Split(double width, double room, bool whole)
    {
        var widths = Widths(width);
        var used = HeadHeight(widths);
        var taken = 0;
        var heights = Heights ?? [.. Rows.Select(r => RowHeight(r, widths))];
        while (taken < Rows.Count && used + heights[taken] <= room)
        {
            used += heights[taken];
            taken++;
        }

        // The last row goes on with the one before it.
        taken -= taken == Rows.Count - 1 && taken > 3 ? 1 : 0;

        // A heading row is never left alone at the foot.
        while (taken > 0 && taken < Rows.Count && IsHead(Rows[taken - 1]))
        {
            taken--;
        }

        // Nor is one row of many, where the table may begin on the next sheet.
        if (taken == 0 || (taken == 1 && Rows.Count > 2 && !whole))
        {
            return whole ? SplitRow(widths, room) : (null, this);
        }

        return (Part(Enumerable.Range(0, taken)), Part([.. Again(taken, heights), .. Enumerable.Range(taken, Rows.Count - taken)]));

        Table Part(IEnumerable<int> rows) => rows.ToArray() is var kept ? this with { Rows = [.. kept.Select(r => Rows[r])], Fixed = widths, Heights = [.. kept.Select(r => heights[r])] } : this;
    }

    private bool IsHead(Row row) => row.Cells.Count == 1 && Columns.Count > 1;

    /// <summary>The heading row of a group that goes on over the page: it is said again there.</summary>
    private IEnumerable<int> Again(int taken, double[] heights) =>
        IsHead(Rows[taken]) || heights[taken] > TallestUnderHead ? [] : Enumerable.Range(0, taken).Where(r => IsHead(Rows[r])).TakeLast(1);

    /// <summary>A row taller than a sheet goes on over the page, line by line.</summary>
    private (Block? First, Block? After) SplitRow(double[] widths, double room)
    {
        var lines = Math.Max(1, (int)((room - HeadHeight(widths) - 2 * Pad) / Lettering.Leading) - 2);
        var cells = Rows[0].Cells.Select((c, i) => (Cell: c, Lines: Lines(c, WidthOf(Rows[0], i, widths)))).ToArray();
        var first = new Row([.. cells.Select(c => c.Cell with { Words = string.Join('\n', c.Lines.Take(lines)), Note = c.Lines.Count <= lines ? c.Cell.Note : "" })]);
        if (cells.All(c => c.Lines.Count <= lines))
        {
            return (null, this);
        }

        var rest = new Row([.. cells.Select(c => c.Cell with { Words = string.Join('\n', c.Lines.Skip(lines)), Note = c.Lines.Count <= lines ? "" : c.Cell.Note, Tick = false })]);
        return (this with { Rows = [first], Fixed = widths, Heights = null }, this with { Rows = [rest, .. Rows.Skip(1)], Fixed = widths, Heights = null });
    }

    private void DrawHeads(Board board, double x, double bottom, double[] widths)
    {
        for (var i = 0; i < Columns.Count; i++)
        {
            var lines = Wrapping.Lines(Columns[i].Head, Styles.SmallStrong, widths[i]);
            board.Tell(Drawing.Telling.Head, () => board.Lines(lines, Stand(x, widths[i], Columns[i].Align), bottom - lines.Count * Styles.SmallStrong.Leading, Styles.SmallStrong, Columns[i].Align));
            x += widths[i] + Gap;
        }
    }

    private void DrawRow(Board board, Row row, double x, double y, double[] widths)
    {
        var left = x;
        var ascent = FirstAscent(row);
        for (var i = 0; i < row.Cells.Count; i++)
        {
            var (cell, width) = (row.Cells[i], WidthOf(row, i, widths));
            board.Tell(Drawing.Telling.Cell, () => DrawCell(board, cell, row.Cells.Count == 1 ? Anchor.Start : Columns[i].Align, left, y + Pad + Down(cell, ascent), width));
            left += width + Gap;
        }
    }

    private void DrawCell(Board board, Cell cell, Anchor align, double left, double top, double width)
    {
        var lettering = cell.Lettering ?? Lettering;
        var tick = TickRoom(cell, lettering);
        if (cell.Tick)
        {
            board.Add(new TickBox(new PaperPoint(left, top + lettering.Ascent() - lettering.Digits - 0.2), lettering.Digits + 0.4));
        }

        if (cell.Words.Length > 0)
        {
            top = board.Lines(Lines(cell, width), Stand(left + tick, width - tick, align), top, lettering, align) + NoteGap;
        }

        if (cell.Note.Length > 0)
        {
            board.Lines(Wrapping.Lines(cell.Note, Styles.Small, width - tick), Stand(left + tick, width - tick, align), top, Styles.Small, align);
        }
    }

    /// <summary>Height over the first baseline of the row, which all its cells share.</summary>
    private double FirstAscent(Row row) => row.Cells.Where(c => c.Words.Length > 0 || c.Tick).Select(c => (c.Lettering ?? Lettering).Ascent()).DefaultIfEmpty(0).Max();

    private double Down(Cell cell, double ascent) => cell.Words.Length == 0 && !cell.Tick ? 0 : ascent - (cell.Lettering ?? Lettering).Ascent();

    private double RowHeight(Row row, double[] widths)
    {
        var ascent = FirstAscent(row);
        return 2 * Pad + row.Cells.Select((c, i) =>
        {
            var width = WidthOf(row, i, widths);
            var words = c.Words.Length == 0 && !c.Tick ? 0 : Lines(c, width).Count * (c.Lettering ?? Lettering).Leading;
            var note = c.Note.Length == 0 ? 0 : (words > 0 ? NoteGap : 0) + Wrapping.Lines(c.Note, Styles.Small, width - TickRoom(c, c.Lettering ?? Lettering)).Count * Styles.Small.Leading;
            return Down(c, ascent) + words + note;
        }).Max();
    }

    private IReadOnlyList<string> Lines(Cell cell, double width)
    {
        var lettering = cell.Lettering ?? Lettering;
        return Wrapping.Lines(cell.Words, lettering, width - TickRoom(cell, lettering));
    }

    private static double TickRoom(Cell cell, Lettering lettering) => cell.Tick ? lettering.Digits + (cell.Words.Length > 0 ? 2 : 0.4) : 0;

    private double WidthOf(Row row, int i, double[] widths) => row.Cells.Count == 1 ? widths.Sum() + Gap * (Columns.Count - 1) : widths[i];

    private static double Stand(double left, double width, Anchor align) => align switch { Anchor.Start => left, Anchor.Middle => left + width / 2, _ => left + width };

    private double[] Widths(double width)
    {
        if (Fixed is not null)
        {
            return Fixed;
        }

        var (natural, least) = Wishes();
        return ColumnWidths.Fit(natural, least, [.. Columns.Select(c => c.Grows)], width - Gap * (Columns.Count - 1));
    }

    /// <summary>Width at which no cell wraps, mm.</summary>
    public double NaturalWidth => Wishes().Natural.Sum() + Gap * (Columns.Count - 1);

    private (double[] Natural, double[] Least) Wishes()
    {
        var natural = new double[Columns.Count];
        var least = new double[Columns.Count];
        for (var i = 0; i < Columns.Count; i++)
        {
            var words = Rows.Where(r => r.Cells.Count > 1 || Columns.Count == 1).Select(r => Wanted(r.Cells[i])).Append(Wanted(new Cell(Columns[i].Head) { Lettering = Styles.SmallStrong }));
            (natural[i], least[i]) = words.Aggregate((0.0, 0.0), (most, w) => (Math.Max(most.Item1, w.Natural), Math.Max(most.Item2, w.Least)));
        }

        return (natural, least);
    }

    private (double Natural, double Least) Wanted(Cell cell)
    {
        var lettering = cell.Lettering ?? Lettering;
        var tick = TickRoom(cell, lettering);
        var natural = Math.Max(cell.Words.Split('\n').Max(line => lettering.WidthOf(line)), cell.Note.Length == 0 ? 0 : Styles.Small.WidthOf(cell.Note));
        var least = cell.Words.Split(' ', '\n').Max(word => lettering.WidthOf(word));
        return (natural + tick + 0.01, Math.Min(least, 45) + tick + 0.01);
    }
}

/// <summary>Shares a width between columns.</summary>
internal static class ColumnWidths
{
    /// <summary>What each column would like if there is room, less where there is not, but not less than its longest word while that is possible.</summary>
    public static double[] Fit(double[] natural, double[] least, double[] grows, double width)
    {
        var (wish, need) = (natural.Sum(), least.Sum());
        if (wish <= width)
        {
            var share = grows.Sum();
            var spare = width - wish;
            return share > 0 ? [.. natural.Select((n, i) => n + spare * grows[i] / share)] : natural;
        }

        if (need >= width)
        {
            return [.. least.Select(n => n * width / need)];
        }

        // Columns that are short of their wish get room in proportion to its square root, so one long text does not starve the others.
        var result = (double[])least.Clone();
        var open = Enumerable.Range(0, natural.Length).Where(i => natural[i] > least[i]).ToList();
        var left = width - need;
        while (open.Count > 0 && left > 1e-6)
        {
            var total = open.Sum(i => Math.Sqrt(natural[i] - result[i]));
            var given = 0.0;
            foreach (var i in open.ToArray())
            {
                var part = Math.Min(left * Math.Sqrt(natural[i] - result[i]) / total, natural[i] - result[i]);
                result[i] += part;
                given += part;
            }

            open.RemoveAll(i => natural[i] - result[i] < 1e-6);
            left -= given;
        }

        return result;
    }
}
