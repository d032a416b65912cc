using Clomwright.Evidence;

namespace Clomwright.Papers.Drawing;

/// <summary>A measured distance: a line between two ticks, its text, and lines to what is measured.</summary>
/// <param name="Of">Id of what is measured and what of it: <c>opening-door width</c>.</param>
/// <param name="From">One end of the dimension line.</param>
/// <param name="To">The other end.</param>
/// <param name="Label">Its text, already placed.</param>
public sealed record DimensionLine(string Of, PaperPoint From, PaperPoint To, Text Label) : Composite
{
    private const double TickHalf = 0.9;

    /// <summary>Where the line from <see cref="From"/> to the thing measured ends; null for none.</summary>
    public PaperPoint? FootFrom { get; init; }

    /// <summary>Where the line from <see cref="To"/> to the thing measured ends; null for none.</summary>
    public PaperPoint? FootTo { get; init; }

    /// <summary>The same distance in the other unit system, already placed; null for none.</summary>
    public Text? Second { get; init; }

    /// <summary>From the dimension line to a label that does not fit on it.</summary>
    public Outline? Leader { get; init; }

    /// <summary>What is measured goes on beyond the edge of the drawing, so the line is shorter than its text says.</summary>
    public bool Broken { get; init; }

    /// <summary>Its labels stand on the line, which is left out behind them.</summary>
    public bool Masked { get; init; }

    /// <summary>Its length on paper, mm.</summary>
    public double Length => (To - From).Norm;

    /// <inheritdoc/>
    public override Sequence<Mark> Parts
    {
        get
        {
            var thin = new Pen(Weight.Thin);
            List<Mark> parts = [new Stroke(Outline.Line(From, To), thin)];
            foreach (var end in (PaperPoint[])[From, To])
            {
                parts.Add(new Stroke(Outline.Line(end.X - TickHalf, end.Y + TickHalf, end.X + TickHalf, end.Y - TickHalf), new Pen(Weight.Medium)));
            }

            foreach (var (end, foot) in ((PaperPoint, PaperPoint?)[])[(From, FootFrom), (To, FootTo)])
            {
                if (foot is { } f)
                {
                    parts.Add(new Stroke(Outline.Line(f, end), new Pen(Weight.Hair)));
                }
            }

            if (Leader is not null)
            {
                parts.Add(new Stroke(Leader, new Pen(Weight.Hair)));
            }

            if (Masked)
            {
                parts.Add(new Fill(Outline.Rectangle(Second is null ? Label.Bounds : Label.Bounds.With(Second.Bounds)), Tone.Paper));
            }

            parts.Add(Label);
            if (Second is not null)
            {
                parts.Add(Second);
            }

            return parts.ToSequence();
        }
    }
}
