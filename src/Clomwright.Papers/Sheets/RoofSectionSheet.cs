using Clomwright.Analysis.Roof;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;

namespace Clomwright.Papers.Sheets;

/// <summary>The roof cut along a pole: eave with edge board and drip, deck and layers, and the flue with the zone round it that is kept clear.</summary>
internal static class RoofSectionSheet
{
    private const double LabelWidth = 50;
    private const double LabelGap = 9;

    public static IEnumerable<Draft> Of(Scene scene)
    {
        if (scene.Set.Roof is not { } roof || (roof.Reciprocal.Value?.Geometry.Poles ?? roof.Plain.Value?.Places) is not { Count: > 0 } poles || scene.Geometry.Landings.Count == 0)
        {
            return [];
        }

        var say = scene.Say;
        var content = SheetFrame.Content(scene.Portrait);
        var scale = DrawingScale.Fitting(say.First, s => Whole(s) is var (on, _) && on.Marks.Bounds() is var view && view.Width + LabelGap + LabelWidth <= content.Width && view.Height <= content.Height * 0.38);
        var (whole, labels) = Whole(scale);
        PartLabels.Name(whole, labels, whole.Marks.Bounds().Right + LabelGap, LabelWidth);
        var near = DrawingScale.Fitting(say.First, s => Made(s).Eave is var box && box.Width + LabelGap + LabelWidth <= content.Width && box.Height <= content.Height * 0.34);
        var detail = Made(near);
        var (inner, eave) = (new Board(), new Board());
        var named = detail.Draw(inner, say.Say, eave: true);
        eave.Add(new Group("eave", inner.Marks, Outline.Rectangle(detail.Eave)));
        PartLabels.Name(eave, named, detail.Eave.Right + LabelGap, LabelWidth);
        var names = eave.Marks.Skip(1).ToSequence().Bounds();
        List<Block> blocks =
        [
            new Picture(whole.Marks, whole.Marks.Bounds().Inset(-1)),
            new Paragraph(say.Say("roof-section.note", ("pole", detail.Pole.Number)), Styles.Small) { Above = 1.5 },
            .. roof.Flue is { } flue ? (Block[])[new Paragraph(say.Say(flue.Clear is null ? "roof-section.flue-open" : "roof-section.flue-note"), Styles.Small) { Above = 1 }] : [],
            new Heading(say.Say("roof-section.eave", ("scale", say.Say(near.Label)))),
            new Picture(eave.Marks, PaperBox.Around(new(detail.Eave.Left, Math.Min(detail.Eave.Top, names.Top)), new(names.Right, Math.Max(detail.Eave.Bottom, names.Bottom))).Inset(-1)) { Above = 1.5 },
            .. scene.House.BondBeam is null ? (Block[])[] : [new Paragraph(say.Say("roof-section.open", ("height", Amount.Metres(detail.Open))), Styles.Body) { Above = 2 }, .. PoleSeats.Note(scene, RoofPoles.Of(roof)), .. PoleSeats.HighEnds(scene, roof)],
            new Cautions(say.Say("caution.title"), [.. roof.Flue is null && scene.House.Stove is null && !HotSleeves.Any(scene.Geometry.Embeds) ? (string[])[] : [say.Say("caution.flue")], say.Say("caution.falls")]) { Above = 3 },
        ];
        return Draft.Flow(new SheetHead("roof-section", say.Say("roof-section.title"), Clock.Drawing, say.Say(scale.Label)), scene.Portrait, blocks, say);

        RoofSectionDrawing Made(DrawingScale at) => new(scene.Geometry, roof, poles, at.PaperPerMetre);

        (Board Board, IReadOnlyList<PartLabel> Labels) Whole(DrawingScale at)
        {
            var on = new Board();
            return (on, Made(at).Draw(on, say.Say, eave: false));
        }
    }
}
