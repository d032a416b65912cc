using Clomwright.Building;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;

namespace Clomwright.Papers.Sheets;

/// <summary>Cracks and bulges: where, how wide, and whether they grow. Both faces to draw them on.</summary>
internal static class CrackSheet
{
    public static IEnumerable<Draft> Of(Scene scene)
    {
        var say = scene.Say;
        var width = SheetFrame.Content(scene.Portrait).Width - 8;
        Picture Strip(Face face)
        {
            var g = scene.Geometry;
            var length = face == Face.Inside ? g.Curve.Length : g.Curve.OffsetLength(g.Wall.OutsideOffset(g.Wall.Base.Metres));
            var drawing = UnrolledWall.Of(g, new WallView(face, width / length) { Units = say.First, Measures = false, Details = false });
            return new Picture(drawing.Marks, drawing.View) { Above = 1.5 };
        }

        return Of(say, scene.Portrait, "cracks",
        [
            new Stack([new LeadIn(say.Say("cracks.outside")), Strip(Face.Outside)]) { Above = 3 },
            new Stack([new LeadIn(say.Say("cracks.inside")), Strip(Face.Inside)]) { Above = 3 },
        ], 9);
    }

    /// <summary>Without the house to draw on.</summary>
    public static IEnumerable<Draft> Blank(Wording say, PaperSize paper) => Of(say, paper.Portrait(), "cracks-blank", [], 14);

    private static IEnumerable<Draft> Of(Wording say, Format paper, string key, IEnumerable<Block> drawings, int lines) => Draft.Flow(new SheetHead(key, say.Say("cracks.title"), Clock.Wall), paper,
    [
        new Cautions(say.Say("caution.title"), [say.Say("cracks.noise"), say.Say("cracks.judge"), say.Say("caution.soaked"), say.Say("cracks.props")]),
        new Paragraph(say.Say("cracks.how"), Styles.Body) { Above = 3 },
        .. drawings,
        new Table(
            [
                new(say.Say("cracks.no")), new(say.Say("cracks.where")) { Grows = 3 }, new(say.Say("cracks.seen")) { Grows = 1 }, new(say.Say("cracks.width")) { Grows = 1 },
                new(say.Say("cracks.again")) { Grows = 1 }, new(say.Say("cracks.width")) { Grows = 1 }, new(say.Say("cracks.again")) { Grows = 1 }, new(say.Say("cracks.width")) { Grows = 1 }, new(say.Say("cracks.shown")) { Grows = 1 },
            ],
            [.. Enumerable.Range(1, lines).Select(i => new Row($"{i}", "", "", "", "", "", "", "", ""))]) { Above = 3, Pad = 2.3 },
        new Paragraph(say.Say("cracks.ask"), Styles.BodyStrong) { Above = 2 },
    ], say);
}
