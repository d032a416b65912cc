using System.Globalization;
using Clomwright.Evidence;
using Clomwright.Geometry;
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
        var content = SheetFrame.Content(scene.Portrait);
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
            .. Lines(scene),
            .. Landings(scene),
        ];
        return Draft.Flow(head, scene.Portrait, blocks, say);
    }

    private static PlanView View(Scene scene, DrawingScale scale) => new(scale.PaperPerMetre) { Units = scene.Say.First, Book = scene.Say.Book, SettingOut = scene.Set.SettingOut };

    private static IEnumerable<Block> Marks(Scene scene)
    {
        var say = scene.Say;
        if (scene.Set.SettingOut is not { } setting)
        {
            yield break;
        }

        yield return new Heading(say.Say("plan.marks"));
        yield return new Paragraph(say.Say("plan.pegs", ("distance", Amount.Metres(setting.PegDistance))), Styles.Body) { Above = 1.5, Leads = true };
        foreach (var post in Posts.Place(scene))
        {
            yield return post;
        }

        yield return new Table(
            [
                new(""), new(say.Say("plan.mark")) { Grows = 1 }, new(say.Say("plan.station"), Anchor.End), new(say.Say("plan.bearing"), Anchor.End), new(say.Say("plan.from-centre"), Anchor.End),
                new(say.Say("plan.from-a"), Anchor.End), new(say.Say("plan.from-b"), Anchor.End), new(say.Say("plan.error"), Anchor.End),
            ],
            [
                .. setting.Marks.Select((m, i) => new Row(
                    new Cell((i + 1).ToString(CultureInfo.InvariantCulture)) { Lettering = Styles.BodyStrong },
                    new Cell(MarkName(scene, m.Name)),
                    scene.Metres(m.Station),
                    scene.Cell(Scene.Bearing(m.Bearing)),
                    scene.Metres(m.FromCentre) with { Lettering = Styles.Tape },
                    scene.Metres(m.FromA) with { Lettering = Styles.Tape },
                    scene.Metres(m.FromB) with { Lettering = Styles.Tape },
                    scene.Metres(Math.Sqrt(m.ErrorAlong * m.ErrorAlong + m.ErrorAcross * m.ErrorAcross)))),
            ]) { Above = 1.5 };
    }

    /// <summary>The name of a mark in words: the zero mark, a jamb, or a numbered point.</summary>
    private static string MarkName(Scene scene, string address)
    {
        var jamb = address.LastIndexOf("/jamb ", StringComparison.Ordinal);
        return address == "zero" ? scene.Say.Say("plan.zero")
            : jamb > 0 ? scene.Say.Say("plan.jamb-" + address[(jamb + 6)..], ("of", address[..jamb]))
            : scene.Say.Say("plan.point", ("n", address.Split(' ')[^1]));
    }

    private static string LandingName(Scene scene, Landing landing) =>
        scene.Say.Say(landing.Secondary ? "plan.secondary-n" : scene.Geometry.House.Roof?.SideBySide > 1 ? "plan.pair-n" : "plan.pole-n", ("n", landing.Name[(landing.Name.IndexOf(' ') + 1)..]));

    /// <summary>Lines beside the inside face, and for a round house the triangle that draws it from the wall line.</summary>
    private static IEnumerable<Block> Lines(Scene scene)
    {
        var say = scene.Say;
        if (scene.Set.SettingOut is not { Lines.Count: > 0 } setting)
        {
            yield break;
        }

        yield return new Heading(say.Say("plan.lines"));
        yield return new Table(
            [new(say.Say("plan.line")) { Grows = 1 }, new(say.Say("plan.offset"), Anchor.End), new(say.Say("plan.all-round"), Anchor.End)],
            [.. setting.Lines.Select(l => new Row(new Cell(say.Say("plan." + l.Key)), scene.Metres(l.Offset) with { Lettering = Styles.Tape }, scene.Metres(l.Length)))]) { Above = 1.5 };
        if (setting.Jig is { } jig)
        {
            yield return new Paragraph(say.Say("plan.jig", ("chord", Amount.Metres(jig.Chord)), ("rise", Amount.Metres(jig.Rise))), Styles.Body) { Above = 1.5 };
        }
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
                    new Cell(LandingName(scene, l)),
                    scene.Cell(Scene.Bearing(l.Bearing)),
                    scene.Metres(l.BeamStation),
                    scene.Metres(l.ArcToNext),
                    scene.Metres(l.ChordToNext) with { Lettering = Styles.Tape })),
            ]) { Above = 1.5 };
        yield return new Paragraph(say.Say("plan.landings-note"), Styles.Small) { Above = 1.5 };
        if (scene.Geometry.House.Roof is { SideBySide: > 1 })
        {
            yield return new Paragraph(say.Say("plan.landings-pairs"), Styles.Small) { Above = 1 };
        }
    }
}
