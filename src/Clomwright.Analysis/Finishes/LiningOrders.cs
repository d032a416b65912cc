using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Finishes;

/// <summary>Order lines for what keeps wall, stem and floor's edge warm. What is mixed on site is ordered as laid: its mix is not said.</summary>
internal static class LiningOrders
{
    private static readonly string[] Mixed = ["light-earth", "straw-rich-cob"];

    public static IEnumerable<OrderLine> Of(HouseGeometry geometry, Sequence<LiningPlace> linings)
    {
        var waste = PlasterMaterial.Number("waste-lining").Value;
        foreach (var place in linings)
        {
            var lining = place.Lining;
            yield return OrderLine.Of(
                "lining", Message.Of("analysis.order.lining", ("name", lining.Name), ("material", new Argument.Material(lining.Material)), ("depth", lining.Depth)), "finishes",
                new Volume(place.Volume), waste,
                Message.Of(Mixed.Contains(lining.Material) ? "analysis.order.lining-mixed" : "analysis.order.lining-basis", ("area", (Amount)new Area(place.Area)), ("face", FinishOrders.FaceName(lining.Face))));
        }

        if (geometry.House.Comfort.FloorEdge is { } edge)
        {
            var length = geometry.Curve.OffsetLength(geometry.Stem.Inside);
            var area = length * edge.Depth.Metres;
            yield return OrderLine.Of(
                "floor-edge", Message.Of("analysis.order.floor-edge", ("material", new Argument.Material(edge.Material)), ("thickness", edge.Thickness)), "finishes",
                new Area(area), waste, Message.Of("analysis.order.floor-edge-basis", ("length", Amount.Metres(length)), ("depth", edge.Depth)));
        }
    }
}
