using Clomwright.Evidence;

namespace Clomwright.Papers.Drawing;

/// <summary>Which point of a line of text is placed.</summary>
public enum Anchor
{
    /// <summary>Its beginning.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its end.</summary>
    End,
}

/// <summary>One thing on paper. A display list is a sequence of marks, drawn in order.</summary>
public abstract record Mark
{
    private protected Mark()
    {
    }
}

/// <summary>A line.</summary>
public sealed record Stroke(Outline Outline, Pen Pen) : Mark;

/// <summary>A filled area; where pieces lie in one another, every second one is a hole.</summary>
public sealed record Fill(Outline Outline, Tone Tone = Tone.Ink) : Mark;

/// <summary>One line of text.</summary>
/// <param name="Words">What it says.</param>
/// <param name="At">The anchor on its baseline.</param>
/// <param name="Lettering">How it is set.</param>
/// <param name="Anchor">Which point of it is placed.</param>
/// <param name="Turn">Degrees, clockwise as seen on paper; -90 reads upward.</param>
public sealed record Text(string Words, PaperPoint At, Lettering Lettering, Anchor Anchor = Anchor.Start, double Turn = 0) : Mark
{
    /// <summary>What it says, with a question mark for each character that the typeface has no sign for.</summary>
    public string Words { get; init => field = Typeface.Printable(value); } = Typeface.Printable(Words);

    /// <summary>Width, mm.</summary>
    public double Width => Lettering.WidthOf(Words);

    /// <summary>The upright box that is kept free for it.</summary>
    public PaperBox Bounds
    {
        get
        {
            var width = Width;
            var left = Anchor switch { Anchor.Start => 0, Anchor.Middle => -width / 2, _ => -width };
            var (top, bottom) = (-Lettering.Ascent * Lettering.Size, Lettering.Descent * Lettering.Size);
            var (at, turn) = (At, Turn);
            return PaperBox.Around(new PaperPoint[] { new(left, top), new(left + width, top), new(left + width, bottom), new(left, bottom) }
                .Select(p => at + p.Turned(turn)));
        }
    }
}

/// <summary>Marks that belong to one thing of the house.</summary>
/// <param name="Id">From the author's names: <c>opening-door</c>, <c>pier-door|south-window</c>.</param>
/// <param name="Marks">What is drawn.</param>
/// <param name="Clip">What is seen of it; null for all.</param>
public sealed record Group(string Id, Sequence<Mark> Marks, Outline? Clip = null) : Mark;

/// <summary>A mark drawn as several simpler ones.</summary>
public abstract record Composite : Mark
{
    private protected Composite()
    {
    }

    /// <summary>Strokes, fills and text that draw it.</summary>
    public abstract Sequence<Mark> Parts { get; }
}

/// <summary>Walks display lists.</summary>
public static class Marks
{
    /// <summary>Every mark, groups and composites opened and themselves included, in drawing order.</summary>
    public static IEnumerable<Mark> All(this IEnumerable<Mark> marks)
    {
        ArgumentNullException.ThrowIfNull(marks);
        foreach (var mark in marks)
        {
            yield return mark;
            var inner = mark switch { Group g => g.Marks, Composite c => c.Parts, _ => [] };
            foreach (var part in inner.All())
            {
                yield return part;
            }
        }
    }

    /// <summary>The smallest box round everything drawn; text with the room kept free for it.</summary>
    public static PaperBox Bounds(this IEnumerable<Mark> marks)
    {
        ArgumentNullException.ThrowIfNull(marks);
        PaperBox? box = null;
        foreach (var own in marks.Select(Bounds).OfType<PaperBox>())
        {
            box = box?.With(own) ?? own;
        }

        return box ?? default;
    }

    private static PaperBox? Bounds(Mark mark) => mark switch
    {
        Stroke s => s.Outline.Bounds,
        Fill f => f.Outline.Bounds,
        Text t => t.Bounds,
        Hatch h => h.Area.Bounds,
        Group { Marks.Count: > 0 } g => g.Marks.Bounds(),
        Composite c => c.Parts.Bounds(),
        _ => null,
    };
}
