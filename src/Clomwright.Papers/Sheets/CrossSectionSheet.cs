using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;
using Clomwright.Study;

namespace Clomwright.Papers.Sheets;

/// <summary>Two sections through the middle of the house: along its plan and across it.</summary>
internal static class CrossSectionSheet
{
    /// <summary>The sections with the way their viewer looks from, clockwise from the bearing of the plan, radians.</summary>
    public static IReadOnlyList<(string Key, double Turn)> Cuts { get; } = [("along", Math.PI / 2), ("across", Math.PI)];

    public static IEnumerable<Draft> Of(Scene scene)
    {
        var say = scene.Say;
        var paper = scene.Set.Options.Paper.Office();
        var content = SheetFrame.Content(paper);
        var roof = RoofShell.Of(scene.Geometry, scene.Set.Roof);
        var cuts = Cuts.Select(c => At(scene, c.Turn)).ToArray();
        var note = new Paragraph(say.Say("cross-section.note") + (roof is null ? " " + say.Say("elevation.no-roof") : "") + Posts.InSection(scene) + Ring(scene, roof), Styles.Small) { Above = 2 };
        var height = content.Height - note.Height(content.Width) - 4;
        var width = (content.Width - Beside.Gutter) / 2;
        Dictionary<DrawingScale, Picture[]> drawn = [];
        Picture[] Two(DrawingScale s) => drawn.TryGetValue(s, out var kept) ? kept : drawn[s] = [.. cuts.Select((c, i) => One(scene, c, Cuts[i].Key, roof, s))];
        bool Beside2(DrawingScale s) => Two(s).All(p => p.View.Width <= width && p.View.Height <= height);
        bool Stacked(DrawingScale s) => Two(s).All(p => p.View.Width <= content.Width) && Two(s).Sum(p => p.View.Height) + 6 <= height;
        var (beside, stacked) = (DrawingScale.Fitting(say.First, Beside2), DrawingScale.Fitting(say.First, Stacked));
        var scale = beside.Denominator <= stacked.Denominator ? beside : stacked;
        var two = Two(scale);
        Block[] drawings = beside.Denominator <= stacked.Denominator ? [new Beside(new Stack([two[0]]), new Stack([two[1]]))] : [two[0], two[1] with { Above = 5 }];
        return Draft.Flow(new SheetHead("sections", say.Say("cross-section.title"), Clock.Drawing, say.Say(scale.Label)), paper, [.. drawings, note], say);
    }

    /// <summary>What closes the ring that the poles leave, of which no size is known; empty where they leave none or the boards run over it.</summary>
    private static string Ring(Scene scene, RoofShell? roof) => roof is not null && scene.House.Roof is Building.Roof.Reciprocal { Eye: var eye }
        ? " " + scene.Say.Say("cross-section.ring-" + eye.ToString().ToLowerInvariant())
        : "";

    /// <summary>The cut at a turn.</summary>
    public static CrossSection At(Scene scene, double turn) => CrossSections.Of(scene.Geometry, scene.House.Plan.Bearing.Radians + turn);

    /// <summary>One section with heights beside it, and the box of the drawing without them.</summary>
    public static (Board Board, PaperBox Drawing) Drawn(Scene scene, CrossSection cut, string key, RoofShell? roof, double paperPerMetre)
    {
        var board = new Board();
        var levels = new CrossSectionDrawing(scene.Geometry, cut, roof, paperPerMetre).Draw(board, "section-" + key);
        return (board, Levels.BesideAll(board, "section-" + key, levels, paperPerMetre, scene.Say));
    }

    private static Picture One(Scene scene, CrossSection cut, string key, RoofShell? roof, DrawingScale scale)
    {
        var (board, box) = Drawn(scene, cut, key, roof, scale.PaperPerMetre);
        return Levels.Titled(board, box.Left, scene.Say.Say("cross-section." + key), scale.PaperPerMetre, scene.Say);
    }
}
