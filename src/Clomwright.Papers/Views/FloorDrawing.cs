using Clomwright.Analysis.Finishes;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Views;

/// <summary>A cut through the floor where it meets the stem: outside on the left. Every layer is drawn to size; a sheet is a line.</summary>
internal sealed class FloorDrawing(HouseGeometry geometry, FloorResult floor, double paperPerMetre)
{
    private const double FloorShown = 0.5;
    private const double GroundShown = 0.2;
    private const double CobShown = 0.12;
    private const double Below = 0.05;

    private readonly double stem = geometry.House.Stem.Width.Metres;
    private readonly double? grade = geometry.House.Site.Grade?.Metres;

    /// <summary>Width of what is drawn, mm.</summary>
    public double Width => (GroundShown + stem + FloorShown) * paperPerMetre;

    /// <summary>Height of what is drawn, mm.</summary>
    public double Height => (Highest - Lowest) * paperPerMetre;

    private double Highest => Math.Max(0.05, geometry.Wall.Base.Metres + CobShown);

    private double Lowest => Math.Min(floor.Formation, Math.Min(grade ?? 0, 0)) - Below;

    /// <summary>Draws it and gives back what is to be named beside it, each with its level.</summary>
    public IReadOnlyList<PartLabel> Draw(Board board, Sheets.Wording say)
    {
        List<PartLabel> labels = [];
        Outside(board);
        foreach (var (layer, i) in floor.Layers.Select((l, i) => (l, i)))
        {
            Layer(board, layer, i);
            labels.Add(new(new(X(stem + FloorShown), Y((layer.Top + layer.Bottom) / 2)), Words(layer, say)));
        }

        board.Line(X(stem), Y(floor.Formation), X(stem + FloorShown), Y(floor.Formation), Weight.Heavy);
        labels.Add(new(new(X(stem + FloorShown), Y(floor.Formation - Below)), say.Say("floor.dug", ("level", Amount.Metres(floor.Formation)))));
        board.Line(X(stem), Y(0), X(stem + FloorShown), Y(0), Weight.Bold);
        labels.Add(new(new(X(stem + FloorShown), Y(0)), say.Say("floor.finished")));
        return labels;
    }

    private double X(double across) => (across + GroundShown) * paperPerMetre;

    private double Y(double height) => -height * paperPerMetre;

    /// <summary>Stem with the foot of the cob on it, and the ground before it.</summary>
    private void Outside(Board board)
    {
        var top = geometry.Wall.Base.Metres;
        var thick = Math.Min(stem, geometry.Wall.ThicknessAt(top));
        var inset = (stem - thick) / 2;
        var stone = new PaperBox(X(0), Y(top), X(stem), Y(Lowest));
        var cob = new PaperBox(X(inset), Y(top + CobShown), X(inset + thick), Y(top));
        board.Add(new Group("floor-stem", [new Stroke(Stones.In(stone, 6), new Pen(Weight.Thin)), new Stroke(Outline.Rectangle(stone), new Pen(Weight.Heavy))]));
        board.Add(new Group("floor-cob", [new Hatch(Outline.Rectangle(cob), 45, 1.6, new Pen(Weight.Hair)), new Stroke(Outline.Rectangle(cob), new Pen(Weight.Heavy))]));
        if (grade is { } ground)
        {
            board.Line(X(-GroundShown), Y(ground), X(0), Y(ground), Weight.Bold);
        }
    }

    private void Layer(Board board, FloorLayerResult layer, int index)
    {
        var box = new PaperBox(X(stem), Y(layer.Top), X(stem + FloorShown), Y(layer.Bottom));
        if (layer.Layer.Depth == Length.Zero)
        {
            // The sheet turns up the stem to the finished floor.
            board.Add(new Group($"floor-layer-{index + 1}", [new Stroke(Outline.Through(new(X(stem) + 0.5, Y(0)), new(X(stem) + 0.5, box.Top), new(box.Right, box.Top)), new Pen(Weight.Heavy, Dash.Dashed))]));
            return;
        }

        Mark fill = layer.Layer.Role switch
        {
            FloorRole.Drain => new Stroke(Stones.In(box, 2.8), new Pen(Weight.Hair)),
            FloorRole.Insulation => new Hatch(Outline.Rectangle(box), 0, 1.4, new Pen(Weight.Hair)),
            FloorRole.Base => new Hatch(Outline.Rectangle(box), 45, 2, new Pen(Weight.Hair)),
            FloorRole.Finish => new Hatch(Outline.Rectangle(box), -45, 0.9, new Pen(Weight.Hair)),
            _ => new Hatch(Outline.Rectangle(box), 90, 3, new Pen(Weight.Hair)),
        };
        board.Add(new Group($"floor-layer-{index + 1}", [fill, new Stroke(Outline.Rectangle(box), new Pen(Weight.Medium))]));
    }

    private static string Words(FloorLayerResult layer, Sheets.Wording say) => layer.Layer.Depth == Length.Zero
        ? say.Say("floor.sheet-at", ("layer", layer.Layer.Name), ("level", Amount.Metres(layer.Top)))
        : say.Say("floor.layer-at", ("layer", layer.Layer.Name), ("depth", (Amount)layer.Layer.Depth), ("top", Amount.Metres(layer.Top)));
}
