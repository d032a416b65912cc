using System.Globalization;
using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Layout;

/// <summary>One stretch of wall and its window.</summary>
/// <param name="Sign">Which way it faces, or what it is called.</param>
/// <param name="Place">Where it is.</param>
/// <param name="Firm">Days, fast to slow, in which it becomes firm; an end that was not reached is null.</param>
/// <param name="FirmMiddle">As likely as not.</param>
/// <param name="Keys">Days in which its top stops keying.</param>
/// <param name="KeysMiddle">As likely as not.</param>
/// <param name="Words">Both in numbers.</param>
internal sealed record WindowRow(string Sign, string Place, (double? From, double? To) Firm, double? FirmMiddle, (double? From, double? To) Keys, double? KeysMiddle, string Words);

/// <summary>Windows under one another over one axis of days: two bars each, numbers beside them, and boxes to tick.</summary>
/// <param name="Rows">The windows.</param>
/// <param name="Axis">What the axis counts.</param>
/// <param name="Boxes">What each row's boxes say.</param>
/// <param name="Marked">Gives a number the language's own decimal mark.</param>
internal sealed record WindowRows(IReadOnlyList<WindowRow> Rows, string Axis, IReadOnlyList<string> Boxes, Func<string, string> Marked) : Block
{
    private const double RowHeight = 7.2;
    private const double BarHeight = 2.3;
    private const double Gap = 3;
    private const double Side = 2.6;
    private const double AxisRoom = 4.6;
    private const double LongestAxis = 120;

    private static readonly double[] Steps = [0.5, 1, 2, 5, 10, 20, 50];

    public override double Height(double width) => Rows.Count * RowHeight + AxisRoom;

    public override void Draw(Board board, double x, double y, double width)
    {
        var sign = Rows.Max(r => Styles.BodyStrong.WidthOf(r.Sign)) + 1.5;
        var place = Rows.Max(r => Styles.Small.WidthOf(r.Place));
        var words = Rows.Max(r => Styles.Body.WidthOf(r.Words));
        var boxes = Boxes.Sum(b => Side + 0.9 + Styles.Body.WidthOf(b) + 2.4);
        var left = x + sign + place + Gap;
        var right = x + width - boxes - words - 2 * Gap;
        var most = Math.Clamp(Rows.SelectMany(r => new[] { r.Firm.From, r.Firm.To, r.Keys.From, r.Keys.To, r.FirmMiddle, r.KeysMiddle }).Max() ?? 1, 0.5, LongestAxis);
        var step = Steps.First(s => most / s <= 8 || s >= 50);
        var end = Math.Ceiling(most / step - 1e-9) * step;
        double At(double day) => left + (right - left) * Math.Min(day, end) / end;
        var bottom = y + Rows.Count * RowHeight;
        for (var day = 0.0; day <= end + 1e-9; day += step)
        {
            board.Line(At(day), y, At(day), bottom + 0.8, Weight.Hair, Dash.Dotted);
            board.Say(Marked(day.ToString("0.#", CultureInfo.InvariantCulture)), At(day), bottom + 1.2 + Styles.Small.Ascent(), Styles.Small, Anchor.Middle);
        }

        board.Say(Axis, right + Gap, bottom + 1.2 + Styles.Small.Ascent(), Styles.Small);
        for (var i = 0; i < Rows.Count; i++)
        {
            var (row, top) = (Rows[i], y + i * RowHeight);
            var baseline = top + 1.4 + Styles.BodyStrong.Ascent();
            if (i > 0)
            {
                board.Line(x, top, x + width, top, Weight.Hair);
            }

            board.Say(row.Sign, x, baseline, Styles.BodyStrong);
            board.Say(row.Place, x + sign, baseline, Styles.Small);
            Bar(board, At, end, row.Firm, row.FirmMiddle, top + 1, 45);
            Bar(board, At, end, row.Keys, row.KeysMiddle, top + 1 + BarHeight + 0.6, -45);
            board.Say(row.Words, right + Gap, baseline, Styles.Body);
            var box = right + words + 2 * Gap;
            foreach (var name in Boxes)
            {
                board.Add(new TickBox(new PaperPoint(box, baseline - Side + 0.3), Side));
                board.Say(name, box + Side + 0.9, baseline, Styles.Body);
                box += Side + 0.9 + Styles.Body.WidthOf(name) + 2.4;
            }
        }
    }

    public override (Block? First, Block? After) Split(double width, double room, bool whole)
    {
        var taken = (int)Math.Floor((room - AxisRoom) / RowHeight);
        return taken <= 0 || !whole ? (null, this) : (this with { Rows = [.. Rows.Take(taken)] }, this with { Rows = [.. Rows.Skip(taken)] });
    }

    /// <summary>Open at the right where the slow end was not reached or lies beyond the axis.</summary>
    private static void Bar(Board board, Func<double, double> at, double end, (double? From, double? To) span, double? middle, double top, double angle)
    {
        if (span.From is not { } from || from > end)
        {
            return;
        }

        var open = span.To is null || span.To > end;
        var box = new PaperBox(at(from), top, Math.Max(at(span.To ?? end), at(from) + 0.5), top + BarHeight);
        board.Add(new Hatch(Outline.Rectangle(box), angle, 0.8, new Pen(Weight.Hair)));
        board.Line(box.Left, box.Top, box.Right, box.Top, Weight.Thin);
        board.Line(box.Left, box.Bottom, box.Right, box.Bottom, Weight.Thin);
        board.Line(box.Left, box.Top, box.Left, box.Bottom, Weight.Medium);
        if (!open)
        {
            board.Line(box.Right, box.Top, box.Right, box.Bottom, Weight.Medium);
        }

        if (middle is { } m && m <= end)
        {
            board.Line(at(m), box.Top - 0.3, at(m), box.Bottom + 0.3, Weight.Heavy);
        }
    }
}
