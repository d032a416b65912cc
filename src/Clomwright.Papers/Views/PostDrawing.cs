using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Study;

namespace Clomwright.Papers.Views;

/// <summary>The post under the middle of a radial roof and its footing, as every drawing shows them.</summary>
/// <param name="At">Its middle: that of the plan, in the place of the centre peg.</param>
/// <param name="Made">Its sizes; null where the house does not say them.</param>
/// <param name="Top">Height of its top under the lowest pole that rests on it, m over the finished floor; null where the poles are not known.</param>
internal sealed record PostDrawing(PlanPoint At, CentrePost? Made, double? Top)
{
    /// <summary>How far under the floor a footing is shown whose depth nobody has said, m.</summary>
    private const double Shown = 0.4;

    private double Radius => (Made?.Diameter.Metres ?? 0) / 2;

    private double Half => (Made?.Footing.Metres ?? 0) / 2;

    /// <summary>How far under the finished floor the footing is shown, m.</summary>
    public static double FootingShown => Shown;

    /// <summary>The post of a house; null where its roof stands on none.</summary>
    public static PostDrawing? Of(HouseGeometry geometry, RoofShell? shell = null) => geometry.House.Roof is Roof.Radial { CentrePost: true } roof
        ? new(geometry.Curve.Centre, roof.Post, shell?.Poles.Min(p => 2 * shell.Axis(p, p.Far) - shell.Over(p, p.Far)))
        : null;

    /// <summary>Its name with its thickness.</summary>
    public Message Name => Made is { } made ? Message.Of("papers.post.name", ("diameter", made.Diameter)) : new Message("papers.post.name-only");

    /// <summary>From above, as a group: the post, with its footing in broken lines; under poles in broken lines itself, without footing. A cross where its sizes are not known.</summary>
    public Group FromAbove(PlanPen pen, string id, bool underPoles = false)
    {
        var at = pen.At(At);
        if (Made is null)
        {
            return new Group(id, [new Stroke(Outline.Of(Outline.Line(at.X - 2, at.Y - 2, at.X + 2, at.Y + 2), Outline.Line(at.X - 2, at.Y + 2, at.X + 2, at.Y - 2)), new Pen(Weight.Heavy))]);
        }

        var round = Outline.Circle(at, Radius * pen.PaperPerMetre);
        return new Group(id, underPoles
            ? [new Stroke(round, new Pen(Weight.Medium, Dash.Dashed))]
            : [new Stroke(Outline.Rectangle(FootingBox(pen)), new Pen(Weight.Medium, Dash.Dashed)), new Stroke(round, new Pen(Weight.Heavy))]);
    }

    /// <summary>What it takes of a plan: its footing, or the cross that stands for it.</summary>
    public PaperBox FootingBox(PlanPen pen)
    {
        var (at, half) = (pen.At(At), Made is null ? 2 : Half * pen.PaperPerMetre);
        return new PaperBox(at.X - half, at.Y - half, at.X + half, at.Y + half);
    }

    /// <summary>Upright, as a group, its middle at x = 0: the post from the finished floor or a height over it, and where it stands on the floor its footing in broken lines, open below because nobody says how deep it goes.</summary>
    /// <param name="id">Of the group.</param>
    /// <param name="at">Puts a distance to the right of the middle and a height over the finished floor on paper, both m.</param>
    /// <param name="from">Where it is cut off, m over the finished floor; nothing for the whole post.</param>
    /// <param name="to">Its top, m.</param>
    public Group Upright(string id, Func<double, double, PaperPoint> at, double from, double to)
    {
        if (Made is null)
        {
            return new Group(id, [new Stroke(Outline.Line(at(0, from), at(0, to)), new Pen(Weight.Medium, Dash.Chain))]);
        }

        PaperPoint[] body = Body(at, from, to);
        List<Mark> marks = [new Fill(Outline.Polygon(body), Tone.Paper), new Hatch(Outline.Polygon(body), 90, 1.1, new Pen(Weight.Hair)), new Stroke(Outline.Polygon(body), new Pen(Weight.Heavy))];
        if (from <= 0)
        {
            marks.Add(new Stroke(Outline.Through(at(-Half, -Shown), at(-Half, 0), at(Half, 0), at(Half, -Shown)), new Pen(Weight.Medium, Dash.Dashed)));
        }

        return new Group(id, [.. marks]);
    }

    /// <summary>What it hides of what stands behind it.</summary>
    public PaperPoint[] Body(Func<double, double, PaperPoint> at, double from, double to) => [at(-Radius, from), at(-Radius, to), at(Radius, to), at(Radius, from)];
}
