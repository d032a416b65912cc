using Clomwright.Evidence;

namespace Clomwright.Papers.Drawing;

/// <summary>An empty square to tick by hand.</summary>
public sealed record TickBox(PaperPoint TopLeft, double Side) : Composite
{
    /// <inheritdoc/>
    public override Sequence<Mark> Parts => [new Stroke(Outline.Rectangle(PaperBox.At(TopLeft.X, TopLeft.Y, Side, Side)), new Pen(Weight.Medium))];
}

/// <summary>A line with a filled head at its end.</summary>
public sealed record Arrow(PaperPoint From, PaperPoint To, Pen Pen, double Head = 2.2) : Composite
{
    /// <inheritdoc/>
    public override Sequence<Mark> Parts
    {
        get
        {
            var length = (To - From).Norm;
            var along = 1 / Math.Max(length, 1e-9) * (To - From);
            var across = new PaperPoint(-along.Y, along.X);
            var neck = To - Head * along;
            return
            [
                new Stroke(Outline.Line(From, neck), Pen),
                new Fill(Outline.Polygon(To, neck + 0.3 * Head * across, neck - 0.3 * Head * across)),
            ];
        }
    }
}

/// <summary>A bar as long on paper as it says at the scale of the drawing, in alternating halves.</summary>
/// <param name="TopLeft">Of the bar.</param>
/// <param name="PaperPerMetre">Scale, mm on paper for each metre.</param>
/// <param name="Stops">Distances from its beginning, m, ascending from 0, each with its label.</param>
/// <param name="Lettering">Of the labels, which stand under the bar.</param>
public sealed record ScaleBar(PaperPoint TopLeft, double PaperPerMetre, Sequence<(double Metres, string Label)> Stops, Lettering Lettering) : Composite
{
    private const double Depth = 1.2;

    /// <inheritdoc/>
    public override Sequence<Mark> Parts
    {
        get
        {
            List<Mark> parts = [];
            for (var i = 0; i + 1 < Stops.Count; i++)
            {
                var box = new PaperBox(TopLeft.X + Stops[i].Metres * PaperPerMetre, TopLeft.Y, TopLeft.X + Stops[i + 1].Metres * PaperPerMetre, TopLeft.Y + Depth);
                parts.Add(i % 2 == 0 ? new Fill(Outline.Rectangle(box)) : new Stroke(Outline.Rectangle(box.Inset(0.09)), new Pen(Weight.Thin)));
            }

            foreach (var (metres, label) in Stops)
            {
                parts.Add(new Text(label, new PaperPoint(TopLeft.X + metres * PaperPerMetre, TopLeft.Y + Depth + 0.6 + Lettering.Digits), Lettering, Anchor.Middle));
            }

            return parts.ToSequence();
        }
    }
}
