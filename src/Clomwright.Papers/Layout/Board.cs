using Clomwright.Evidence;
using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Layout;

/// <summary>Collects the marks of a drawing while it is being made.</summary>
internal sealed class Board
{
    private readonly List<Mark> marks = [];

    /// <summary>Words for a figure that brings none of its own, from its marks.</summary>
    public Func<IReadOnlyList<Mark>, string>? Figure { get; init; }

    /// <summary>What has been drawn so far.</summary>
    public Sequence<Mark> Marks => marks.ToSequence();

    public void Add(Mark mark) => marks.Add(mark);

    public void Add(IEnumerable<Mark> more) => marks.AddRange(more);

    /// <summary>What is drawn by something, told as one thing; an empty cell too, so that rows keep their columns.</summary>
    public void Tell(Telling telling, Action draw, string words = "")
    {
        var from = marks.Count;
        draw();
        if (marks.Count > from || telling is Telling.Head or Telling.Cell)
        {
            var told = marks[from..].ToSequence();
            marks.RemoveRange(from, marks.Count - from);
            marks.Add(new Told(telling, told, telling == Telling.Figure && words.Length == 0 ? Figure?.Invoke(told) ?? "" : words));
        }
    }

    public void Line(double x1, double y1, double x2, double y2, Weight weight = Weight.Thin, Dash dash = Dash.Solid) =>
        Add(new Stroke(Outline.Line(x1, y1, x2, y2), new Pen(weight, dash)));

    public void Rectangle(PaperBox box, Weight weight = Weight.Thin, Dash dash = Dash.Solid) =>
        Add(new Stroke(Outline.Rectangle(box), new Pen(weight, dash)));

    public void Solid(PaperBox box, Tone tone = Tone.Ink) => Add(new Fill(Outline.Rectangle(box), tone));

    /// <summary>Text whose baseline is at y.</summary>
    public void Say(string words, double x, double y, Lettering lettering, Anchor anchor = Anchor.Start, double turn = 0) =>
        Add(new Text(words, new PaperPoint(x, y), lettering, anchor, turn));

    /// <summary>Lines of text under one another; returns the y below the last.</summary>
    public double Lines(IEnumerable<string> lines, double x, double top, Lettering lettering, Anchor anchor = Anchor.Start)
    {
        var y = top;
        foreach (var line in lines)
        {
            Say(line, x, y + lettering.Ascent(), lettering, anchor);
            y += lettering.Leading;
        }

        return y;
    }
}

/// <summary>Heights of a line of text, mm.</summary>
internal static class LetteringHeights
{
    public static double Ascent(this Lettering lettering) => lettering.Size * Lettering.Ascent;

    public static double Descent(this Lettering lettering) => lettering.Size * Lettering.Descent;
}
