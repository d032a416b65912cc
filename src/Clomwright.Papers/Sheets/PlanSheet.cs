using System.Globalization;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;

namespace Clomwright.Papers.Sheets;

/// <summary>The plan with pegs and marks, and the tables that set it out on the ground.</summary>
internal static class PlanSheet
{
    public static IEnumerable<Draft> Of(Scene scene)
    {
        var (say, g) = (scene.Say, scene.Geometry);
        var content = SheetFrame.Content(scene.Portrait.Width, scene.Portrait.Height);
        var scale = DrawingScale.Fitting(say.First, s =>
        {
            var view = PlanDrawing.Of(g, View(scene, s)).View;
            return view.Width <= content.Width && view.Height <= content.Height - 42;
        });
        var (marks, box) = PlanDrawing.Of(g, View(scene, scale));
        var head = new SheetHead("plan", say.Say("plan.title"), Clock.Drawing, say.Say(scale.Label));
        List<Block> blocks =
        [
            new Picture(marks, box),
            new Facts(
            [
                scene.Fact("plan.inside-area", new Area(g.Measures.InsideArea), Tag.Computed),
                scene.Fact("plan.outside-area", new Area(g.Measures.OutsideArea), Tag.Computed),
                scene.Fact("plan.inside-ring", Amount.Metres(g.Curve.Length), Tag.Computed),
                scene.Fact("plan.thickness", Amount.Metres(g.Wall.ThicknessAt(g.Wall.Base.Metres)), Tag.Computed),
            ], Styles.Heading),
            new Paragraph(say.Say("plan.note"), Styles.Small) { Above = 2 },
            new Cautions(say.Say("caution.title"), [say.Say("caution.services"), say.Say("caution.digging")]) { Above = 3 },
            .. Marks(scene),
            .. Landings(scene),
        ];
        return Draft.Flow(head, scene.Portrait, blocks, say);
    }

    private static PlanView View(Scene scene, DrawingScale scale) => new(scale.PaperPerMetre) { Units = scene.Say.First, SettingOut = scene.Set.SettingOut };

    private static IEnumerable<Block> Marks(Scene scene)
    {
        var say = scene.Say;
        if (scene.Set.SettingOut is not { } setting)
        {
            yield break;
        }

        yield return new Heading(say.Say("plan.marks"));
        yield return new Paragraph(say.Say("plan.pegs", ("distance", Amount.Metres(setting.PegDistance))), Styles.Body) { Above = 1.5 };
        yield return new Table(
            [
                new(""), new(say.Say("plan.mark")) { Grows = 1 }, new(say.Say("plan.station"), Anchor.End), new(say.Say("plan.bearing"), Anchor.End), new(say.Say("plan.from-centre"), Anchor.End),
                new(say.Say("plan.from-a"), Anchor.End), new(say.Say("plan.from-b"), Anchor.End), new(say.Say("plan.error"), Anchor.End),
            ],
            [
                .. setting.Marks.Select((m, i) => new Row(
                    new Cell((i + 1).ToString(CultureInfo.InvariantCulture)) { Lettering = Styles.BodyStrong },
                    new Cell(m.Name),
                    scene.Metres(m.Station),
                    scene.Cell(new Amount(m.Bearing, Dimension.Angle)),
                    scene.Metres(m.FromCentre) with { Lettering = Styles.BodyStrong },
                    scene.Metres(m.FromA) with { Lettering = Styles.BodyStrong },
                    scene.Metres(m.FromB) with { Lettering = Styles.BodyStrong },
                    scene.Metres(Math.Sqrt(m.ErrorAlong * m.ErrorAlong + m.ErrorAcross * m.ErrorAcross)))),
            ]) { Above = 1.5 };
    }

    private static IEnumerable<Block> Landings(Scene scene)
    {
        var say = scene.Say;
        if (scene.Geometry.Landings.Count == 0)
        {
            yield break;
        }

        yield return new Heading(say.Say("plan.landings"));
        yield return new Table(
            [
                new(say.Say("plan.pole")) { Grows = 1 }, new(say.Say("plan.bearing"), Anchor.End), new(say.Say("plan.beam-station"), Anchor.End),
                new(say.Say("plan.arc-next"), Anchor.End), new(say.Say("plan.chord-next"), Anchor.End),
            ],
            [
                .. scene.Geometry.Landings.Select(l => new Row(
                    new Cell(l.Name),
                    scene.Cell(new Amount(l.Bearing, Dimension.Angle)),
                    scene.Metres(l.BeamStation),
                    scene.Metres(l.ArcToNext),
                    scene.Metres(l.ChordToNext) with { Lettering = Styles.BodyStrong })),
            ]) { Above = 1.5 };
        yield return new Paragraph(say.Say("plan.landings-note"), Styles.Small) { Above = 1.5 };
    }
}
