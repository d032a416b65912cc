using System.Globalization;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Sheets;

namespace Clomwright.Papers.Templates;

/// <summary>The mitre between two pieces of the bond beam, one template for each angle that comes.</summary>
internal static class Mitres
{
    /// <summary>Shown to either side of the mitre, mm.</summary>
    private const double Shown = 60;

    /// <summary>The least of it that lets the paper lie along an edge, where more would take another tile beside it, mm.</summary>
    private const double LeastShown = 35;

    public static IEnumerable<Template> Of(Scene scene)
    {
        if (scene.House.BondBeam is not { } beam || scene.Set.WallTop is not { BeamPieces.Count: > 0 } top)
        {
            yield break;
        }

        var say = scene.Say;
        var kinds = top.BeamPieces.GroupBy(p => say.Say(new Amount(p.Mitre, Dimension.Angle))).OrderBy(k => k.First().Number).ToArray();
        for (var i = 0; i < kinds.Length; i++)
        {
            var mitre = kinds[i].Average(p => p.Mitre);
            var (width, half) = (1000 * beam.Width.Metres, 500 * beam.Width.Metres);
            var lean = half * Math.Tan(mitre);
            // One tile wide where the paper lets it: three sheets less to join.
            var shown = Math.Clamp(SheetFrame.Content(scene.Portrait).Width / 2 - Template.Margin - Math.Abs(lean), LeastShown, Shown);
            double left = Template.Margin, outer = Template.Margin, inner = outer + width, middle = left + shown + Math.Abs(lean), right = middle + Math.Abs(lean) + shown;
            yield return new Template(
                string.Create(CultureInfo.InvariantCulture, $"mitre-{i + 1}"), say.Say("template.mitre", ("angle", new Amount(mitre, Dimension.Angle))),
                [
                    say.Say("template.use-mitre", ("joints", string.Join(", ", kinds[i].Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Number}–{p.Number % top.BeamPieces.Count + 1}"))))),
                    say.Say("template.use-mitre-lap"), say.Say("template.use-mitre-over"),
                ],
                right + Template.Margin, inner + Template.Margin, Outline.Line(middle + lean, outer, middle - lean, inner))
            {
                Pieces = kinds[i].Count(),
                Lines =
                [
                    new Stroke(Outline.Line(left, outer, right, outer), new Pen(Weight.Medium)),
                    new Stroke(Outline.Line(left, inner, right, inner), new Pen(Weight.Medium)),
                    new Stroke(Outline.Line(left, (outer + inner) / 2, right, (outer + inner) / 2), new Pen(Weight.Thin, Dash.Chain)),
                    new Stroke(Outline.Line(middle, outer, middle, inner), new Pen(Weight.Thin, Dash.Dashed)),
                ],
                Labels =
                [
                    new Text(say.Say("template.outer-edge"), new PaperPoint(left + 2, outer + 2 + Styles.Body.Digits), Styles.Body),
                    new Text(say.Say("template.inner-edge"), new PaperPoint(left + 2, inner - 2), Styles.Body),
                    // On the side of the square line that the mitre leaves free.
                    new Text(say.Say("template.square-line"), new PaperPoint(middle - Math.CopySign(2, lean), (outer + inner) / 2 - 3), Styles.Body, lean < 0 ? Anchor.Start : Anchor.End),
                ],
            };
        }
    }
}
