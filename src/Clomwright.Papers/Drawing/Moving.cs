using Clomwright.Evidence;

namespace Clomwright.Papers.Drawing;

/// <summary>Moves marks on paper without turning or scaling them.</summary>
public static class Moving
{
    /// <summary>An outline moved.</summary>
    public static Outline Moved(this Outline outline, double dx, double dy)
    {
        ArgumentNullException.ThrowIfNull(outline);
        var by = new PaperPoint(dx, dy);
        return new Outline(outline.Segments.Select(s => new Segment(s.Verb, s.To + by, s.First + by, s.Second + by)).ToSequence());
    }

    /// <summary>A mark moved.</summary>
    public static Mark Moved(this Mark mark, double dx, double dy)
    {
        var by = new PaperPoint(dx, dy);
        return mark switch
        {
            Stroke s => s with { Outline = s.Outline.Moved(dx, dy) },
            Fill f => f with { Outline = f.Outline.Moved(dx, dy) },
            Text t => t with { At = t.At + by },
            Group g => g with { Marks = g.Marks.Select(m => m.Moved(dx, dy)).ToSequence(), Clip = g.Clip?.Moved(dx, dy) },
            Told t => t with { Marks = t.Marks.Select(m => m.Moved(dx, dy)).ToSequence() },
            Hatch h => h with { Area = h.Area.Moved(dx, dy) },
            TickBox b => b with { TopLeft = b.TopLeft + by },
            Arrow a => a with { From = a.From + by, To = a.To + by },
            ScaleBar s => s with { TopLeft = s.TopLeft + by },
            DimensionLine d => d with
            {
                From = d.From + by,
                To = d.To + by,
                Label = (Text)d.Label.Moved(dx, dy),
                Second = (Text?)d.Second?.Moved(dx, dy),
                FootFrom = d.FootFrom + by,
                FootTo = d.FootTo + by,
                Leader = d.Leader?.Moved(dx, dy),
            },
            _ => throw new ArgumentOutOfRangeException(nameof(mark)),
        };
    }
}
