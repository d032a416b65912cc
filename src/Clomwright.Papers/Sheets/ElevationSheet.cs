using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;
using Clomwright.Study;

namespace Clomwright.Papers.Sheets;

/// <summary>The four elevations: true projections of the curved wall, what is hidden left out.</summary>
internal static class ElevationSheet
{
    /// <summary>The sides a house is looked at from, with the bearing of the viewer, radians clockwise from north.</summary>
    public static IReadOnlyList<(string Key, double Bearing)> Sides { get; } = [("north", 0), ("east", Math.PI / 2), ("south", Math.PI), ("west", 3 * Math.PI / 2)];

    public static IEnumerable<Draft> Of(Scene scene)
    {
        var say = scene.Say;
        var paper = scene.Set.Options.Paper.Office();
        var content = SheetFrame.Content(paper);
        var roof = RoofShell.Of(scene.Geometry, scene.Set.Roof);
        var seen = Sides.Select(s => Elevations.Of(scene.Geometry, s.Bearing)).ToArray();
        var note = new Paragraph(Note(scene, roof), Styles.Small) { Above = 2 };
        var (width, height) = ((content.Width - Beside.Gutter) / 2, (content.Height - note.Height(content.Width) - 8) / 2);
        // Hidden lines take long: what was drawn to see whether it fits is what is printed.
        var (scale, drawn) = DrawingScale.Fitting(say.First, s => seen.Select((e, i) => One(scene, e, Sides[i].Key, roof, s)), p => p.View.Width <= width && p.View.Height <= height);
        Stack[] four = [.. drawn.Select(p => new Stack([p]))];
        var head = new SheetHead("elevations", say.Say("elevation.title"), Clock.Drawing, say.Say(scale.Label));
        return Draft.Flow(head, paper, [new Beside(four[2], four[1]), new Beside(four[0], four[3]) { Above = 5 }, note], say);
    }

    private static string Note(Scene scene, RoofShell? roof) => string.Join(" ", new[]
    {
        scene.Say.Say("elevation.note"),
        roof is null ? scene.Say.Say("elevation.no-roof") : "",
        scene.House.Site.Grade is null ? scene.Say.Say("elevation.no-grade") : "",
    }.Where(w => w.Length > 0));

    /// <summary>One side with heights beside it, and the box of the drawing without them.</summary>
    public static (Board Board, PaperBox Drawing) Drawn(Scene scene, Elevation seen, string key, RoofShell? roof, double paperPerMetre)
    {
        var board = new Board();
        var levels = new ElevationDrawing(scene.Geometry, seen, roof, paperPerMetre).Draw(board, "elevation-" + key, scene.Letter);
        return (board, Levels.BesideAll(board, "elevation-" + key, levels, paperPerMetre, scene.Say));
    }

    private static Picture One(Scene scene, Elevation seen, string key, RoofShell? roof, DrawingScale scale)
    {
        var (board, box) = Drawn(scene, seen, key, roof, scale.PaperPerMetre);
        return Levels.Titled(board, box.Left, scene.Say.Say("elevation." + key), scale.PaperPerMetre, scene.Say);
    }
}
