using Clomwright.Building;
using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Views;

/// <summary>The outline of an opening or niche in a box on paper.</summary>
internal static class OpeningOutline
{
    private const double Kappa = 0.5522847498307936;

    /// <summary>Flat, arched by a rise on paper, or round.</summary>
    public static Outline Of(PaperBox box, OpeningShape shape, double rise) => shape switch
    {
        OpeningShape.Round => Outline.Ellipse(box.Centre, box.Width / 2, box.Height / 2),
        OpeningShape.Arched => Arched(box, Math.Min(rise, box.Height)),
        _ => Outline.Rectangle(box),
    };

    private static Outline Arched(PaperBox b, double rise)
    {
        var (middle, spring, half) = (b.Centre.X, b.Top + rise, b.Width / 2);
        return new Outline(
        [
            new(Verb.Move, new(b.Left, b.Bottom)),
            new(Verb.Line, new(b.Left, spring)),
            new(Verb.Curve, new(middle, b.Top), new(b.Left, spring - Kappa * rise), new(middle - Kappa * half, b.Top)),
            new(Verb.Curve, new(b.Right, spring), new(middle + Kappa * half, b.Top), new(b.Right, spring - Kappa * rise)),
            new(Verb.Line, new(b.Right, b.Bottom)),
            new(Verb.Close, new(b.Left, b.Bottom)),
        ]);
    }
}
