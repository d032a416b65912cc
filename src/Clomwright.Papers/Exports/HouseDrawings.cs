using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Sheets;
using Clomwright.Papers.Views;
using Clomwright.Papers.Writers.Dxf;

namespace Clomwright.Papers.Exports;

/// <summary>The drawings of a house for other programs: the same marks as on paper.</summary>
public static class HouseDrawings
{
    /// <summary>Text and symbols are as large as on paper at 1:48 or 1:50.</summary>
    private static double PaperPerMetre(UnitSystem units) => units == UnitSystem.Imperial ? 1000.0 / 48 : 20;

    /// <summary>Plan, both faces unrolled, section and, where there is a roof, its poles.</summary>
    public static Sequence<TrueDrawing> Of(PaperSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        var (scene, geometry, units) = (new Scene(set), set.Geometry, set.Units);
        var k = PaperPerMetre(units);
        List<TrueDrawing> drawings = [];
        void Add(string key, (Sequence<Drawing.Mark> Marks, Drawing.PaperBox View) drawn) => drawings.Add(new(scene.Say.Say("export.drawing-" + key), drawn.Marks, drawn.View, k));

        Add("plan", PlanDrawing.Of(geometry, new PlanView(k) { Units = units, SettingOut = set.SettingOut }));
        foreach (var face in new[] { Face.Outside, Face.Inside })
        {
            var wall = UnrolledWall.Of(geometry, new WallView(face, k) { Units = units });
            Add("unrolled-" + face.ToString().ToLowerInvariant(), (wall.Marks, wall.View));
        }

        var board = new Board();
        new SectionDrawing(geometry, k).Draw(board, units);
        Add("section", (board.Marks, Drawing.Marks.Bounds(board.Marks).Inset(-2)));
        if (set.Roof is { } roof && geometry.House.Roof is not null)
        {
            Add("roof", RoofPlan.Of(geometry, roof, k));
        }

        return drawings.ToSequence();
    }
}
