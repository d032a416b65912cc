using Clomwright.Building;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;

namespace Clomwright.Papers.Sheets;

/// <summary>Details to a large scale: foot of the wall, heads and sills, wall top with tee, lap of the bond beam, edge of the roof.</summary>
internal static class DetailSheet
{
    private const double LabelWidth = 46;
    private const double LabelGap = 7;

    public static IEnumerable<Draft> Of(Scene scene)
    {
        var (say, g) = (scene.Say, scene.Geometry);
        var paper = scene.Set.Options.Paper.Office();
        var content = SheetFrame.Content(paper);
        const int Columns = 2;
        var width = (content.Width - (Columns - 1) * Across.Gutter) / Columns;
        List<Block> blocks = [One("foot", s => Drawn(b => new FoundationDrawing(g, s.PaperPerMetre) is var d ? d.Draw(b, say) : []))];
        if (g.Openings.Where(o => o.Header is not null).OrderByDescending(o => o.Opening.Kind != OpeningKind.Door).ThenByDescending(o => o.Opening.Frame is not null).FirstOrDefault() is { } window)
        {
            blocks.Add(One("opening", s => Drawn(b => DetailDrawings.Opening(b, g, window, s.PaperPerMetre, say.Say)), scene.Letter(window)));
        }

        if (g.Openings.FirstOrDefault(o => o is { Opening.Kind: OpeningKind.Door, Header: not null }) is { } door)
        {
            blocks.Add(One("opening", s => Drawn(b => DetailDrawings.Opening(b, g, door, s.PaperPerMetre, say.Say)), scene.Letter(door)));
        }

        blocks.Add(One("wall-top", s => Drawn(b => DetailDrawings.WallTop(b, g, s.PaperPerMetre, say.Say))));
        if (scene.House.BondBeam is { Lap: not null } beam)
        {
            blocks.Add(One("lap", s => Drawn(b => DetailDrawings.Lap(b, beam, s.PaperPerMetre, say.Say))));
        }

        if (scene.Set.Roof is { } roof && (roof.Reciprocal.Value?.Geometry.Poles ?? roof.Plain.Value?.Places) is { Count: > 0 } poles && g.Landings.Count > 0)
        {
            blocks.Add(One("edge", s =>
            {
                var section = new RoofSectionDrawing(g, roof, poles, s.PaperPerMetre);
                var inner = new Board();
                var named = section.Draw(inner, say.Say, eave: true);
                var board = new Board();
                board.Add(new Group("detail-edge", inner.Marks, Outline.Rectangle(section.Eave)));
                PartLabels.Name(board, named, section.Eave.Right + LabelGap, LabelWidth);
                var names = board.Marks.Skip(1).Bounds();
                return (board, PaperBox.Around(new(section.Eave.Left, Math.Min(section.Eave.Top, names.Top)), new(names.Right, Math.Max(section.Eave.Bottom, names.Bottom))));
            }));
        }

        return Draft.FlowAcross(Columns, new SheetHead("details", say.Say("detail.title"), Clock.Drawing, say.Say("detail.scales")), paper, blocks, say);

        Stack One(string key, Func<DrawingScale, (Board Board, PaperBox Box)> draw, string of = "")
        {
            var scale = DrawingScale.Fitting(say.First, s => s.Denominator >= 8 && draw(s).Box is var box && box.Width <= width && box.Height <= content.Height * 0.9);
            var (board, view) = draw(scale);
            Levels.Bar(board, view.Left + 2, view.Bottom + 3, scale.PaperPerMetre, say);
            return new Stack([new Heading(Wording.Dotted(say.Say("detail." + key), of, say.Say(scale.Label))), new Picture(board.Marks, view with { Bottom = view.Bottom + 9 }) { Above = 2, Left = true }]) { Above = 6 };
        }

        (Board, PaperBox) Drawn(Func<Board, IReadOnlyList<PartLabel>> draw)
        {
            var board = new Board();
            var labels = draw(board);
            PartLabels.Name(board, labels, board.Marks.Bounds().Right + LabelGap, LabelWidth);
            return (board, board.Marks.Bounds().Inset(-1));
        }
    }
}
