using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Sheets;
using Clomwright.Papers.Views;

namespace Clomwright.Papers.Templates;

/// <summary>Forms for heads of openings and niches that are not flat: half of an arch, a quarter of a round one.</summary>
internal static class Forms
{
    /// <summary>Straight jamb shown under the springing, mm.</summary>
    private const double Leg = 40;

    public static IEnumerable<Template> Of(Scene scene)
    {
        foreach (var place in scene.Geometry.Openings)
        {
            var o = place.Opening;
            var sign = scene.Letter(place);
            if (o.Shape == OpeningShape.Round)
            {
                yield return Round(scene, o.Name, sign, 500 * o.Width.Metres, 500 * o.Height.Metres);
            }
            else if (o.Shape == OpeningShape.Arched && (o.Rise?.Metres ?? Math.Min(o.Width.Metres / 2, o.Height.Metres)) is var rise && rise > 0 && rise <= o.Height.Metres)
            {
                yield return Arch(scene, o.Name, sign, 500 * o.Width.Metres, 1000 * rise, 1000 * (o.Height.Metres - rise));
            }
        }

        foreach (var place in scene.Geometry.Niches.Where(n => n.Niche.Head == NicheHead.Arch))
        {
            var n = place.Niche;
            var rise = Math.Min(n.Width.Metres / 2, n.Height.Metres);
            yield return Arch(scene, n.Name, StripHoles.Sign(scene.Geometry, place), 500 * n.Width.Metres, 1000 * rise, 1000 * (n.Height.Metres - rise));
        }
    }

    /// <summary>Half of an arch: an arc of a circle where it rises no more than half the width, else half an ellipse; straight jambs under it.</summary>
    private static Template Arch(Scene scene, string name, string sign, double half, double rise, double jamb)
    {
        var say = scene.Say;
        var leg = Math.Min(jamb, Leg);
        double left = Template.Margin, top = Template.Margin, spring = top + rise;
        var isCircle = rise <= half;
        var radius = (half * half + rise * rise) / (2 * rise);
        var (centre, rx, ry, end) = isCircle
            ? (new PaperPoint(left, top + radius), radius, radius, -Math.Asin(Math.Clamp((radius - rise) / radius, -1, 1)))
            : (new PaperPoint(left, spring), half, rise, 0.0);
        List<Segment> edge = [.. FullSize.Arc(centre, rx, ry, -Math.PI / 2, end)];
        edge.Add(new Segment(Verb.Line, new PaperPoint(left + half, spring + leg)));
        return new Template(
            "form-" + name.Replace(' ', '-'), say.Say("template.form-arch", ("sign", sign), ("name", name)),
            [
                say.Say("template.use-half", ("width", Amount.Metres(half / 500)), ("rise", Amount.Metres(rise / 1000))),
                isCircle ? say.Say("template.use-arc", ("radius", Amount.Metres(radius / 1000))) : say.Say("template.use-ellipse"),
                say.Say("template.use-form"), say.Say("template.use-form-care"),
            ],
            half + 2 * Template.Margin, rise + leg + 2 * Template.Margin, new Outline(edge.ToSequence()))
        {
            Lines =
            [
                new Stroke(Outline.Line(left, top, left, spring + leg), new Pen(Weight.Thin, Dash.Chain)),
                new Stroke(Outline.Line(left, spring, left + half, spring), new Pen(Weight.Thin, Dash.Dashed)),
                new Stroke(Outline.Line(left, spring + leg, left + half, spring + leg), new Pen(Weight.Thin)),
            ],
            Labels =
            [
                new Text(say.Say("template.centre-line"), new PaperPoint(left + 2, spring - 2), Styles.Body),
                // Under its line, where the jamb is straight; an arch that leaves the jamb slanting would run through it.
                new Text(say.Say("template.springing"), new PaperPoint(left + half - 2, leg > 8 ? spring + 2 + Styles.Body.Digits : spring - 2), Styles.Body, Anchor.End),
            ],
        };
    }

    private static Template Round(Scene scene, string name, string sign, double rx, double ry)
    {
        var say = scene.Say;
        double left = Template.Margin, top = Template.Margin;
        var centre = new PaperPoint(left, top + ry);
        return new Template(
            "form-" + name.Replace(' ', '-'), say.Say("template.form-round", ("sign", sign), ("name", name)),
            [
                say.Say("template.use-round", ("width", Amount.Metres(rx / 500)), ("height", Amount.Metres(ry / 500))),
                say.Say("template.use-form"), say.Say("template.use-form-care"),
            ],
            rx + 2 * Template.Margin, ry + 2 * Template.Margin, new Outline(FullSize.Arc(centre, rx, ry, -Math.PI / 2, 0).ToSequence()))
        {
            Lines =
            [
                new Stroke(Outline.Line(left, top, left, top + ry), new Pen(Weight.Thin, Dash.Chain)),
                new Stroke(Outline.Line(left, top + ry, left + rx, top + ry), new Pen(Weight.Thin, Dash.Chain)),
            ],
            Labels = [new Text(say.Say("template.centre-line"), new PaperPoint(left + 2, top + ry - 2), Styles.Body)],
        };
    }
}
