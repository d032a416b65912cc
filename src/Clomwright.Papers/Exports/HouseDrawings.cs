using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Sheets;
using Clomwright.Papers.Views;
using Clomwright.Papers.Writers.Dxf;
using Clomwright.Study;

namespace Clomwright.Papers.Exports;

/// <summary>The drawings of a house for other programs: the same marks as on paper.</summary>
public static class HouseDrawings
{
    /// <summary>Text and symbols are as large as on paper at 1:48 or 1:50.</summary>
    private static double PaperPerMetre(UnitSystem units) => units == UnitSystem.Imperial ? 1000.0 / 48 : 20;

    /// <summary>Plan, both faces unrolled, the wall's section, where there is a roof its poles; then the four elevations and the two sections of the whole house, each with its heights.</summary>
    public static Sequence<TrueDrawing> Of(PaperSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        var (scene, geometry, units) = (new Scene(set), set.Geometry, set.Units);
        var k = PaperPerMetre(units);
        List<TrueDrawing> drawings = [];
        void Titled(string title, Sequence<Mark> marks, PaperBox view) => drawings.Add(new(scene.Say.Say(title), marks, view, k));
        void Add(string key, (Sequence<Mark> Marks, PaperBox View) drawn) => Titled("export.drawing-" + key, drawn.Marks, drawn.View);

        Add("plan", PlanDrawing.Of(geometry, new PlanView(k) { Units = units, SettingOut = set.SettingOut }));
        foreach (var face in new[] { Face.Outside, Face.Inside })
        {
            var wall = UnrolledWall.Of(geometry, new WallView(face, k) { Units = units });
            Add("unrolled-" + face.ToString().ToLowerInvariant(), (wall.Marks, wall.View));
        }

        var board = new Board();
        new SectionDrawing(geometry, k).Draw(board, units);
        Add("section", (board.Marks, board.Marks.Bounds().Inset(-2)));
        if (set.Roof is { } roof && geometry.House.Roof is not null)
        {
            Add("roof", RoofPlan.Of(geometry, roof, k, scene.Say.Say));
        }

        var shell = RoofShell.Of(geometry, set.Roof);
        foreach (var (side, bearing) in ElevationSheet.Sides)
        {
            var marks = ElevationSheet.Drawn(scene, Elevations.Of(geometry, bearing), side, shell, k).Board.Marks;
            Titled("elevation." + side, marks, marks.Bounds().Inset(-2));
        }

        foreach (var (way, turn) in CrossSectionSheet.Cuts)
        {
            var marks = CrossSectionSheet.Drawn(scene, CrossSectionSheet.At(scene, turn), way, shell, k).Board.Marks;
            Titled("cross-section." + way, marks, marks.Bounds().Inset(-2));
        }

        return drawings.ToSequence();
    }
}
