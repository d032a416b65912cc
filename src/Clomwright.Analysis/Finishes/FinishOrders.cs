using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Finishes;

/// <summary>Order lines for plasters and floor. Volumes of mixed parts already carry the waste of their coat or layer.</summary>
internal static class FinishOrders
{
    private static readonly string[] Parts = ["clay", "sand", "lime", "straw", "manure", "paste"];

    public static Sequence<OrderLine> Of(HouseGeometry geometry, Sequence<FacePlaster> faces, Sequence<LathPlace> lath, Sequence<LiningPlace> linings, FloorResult? floor)
    {
        var coats = faces.SelectMany(f => f.Coats).Where(c => c.Depth > 0).ToList();
        return
        [
            .. Parts.Select(part => Mixed("plaster", part, coats.SelectMany(c => c.Ingredients), PlasterMaterial.Number("waste-plaster").Value)).OfType<OrderLine>(),
            .. coats.Where(c => c.Ingredients.Count == 0).DistinctBy(c => (c.Material, c.Role)).Select(c => OrderLine.Unknown($"plaster-{c.Material}", Message.Of("analysis.order.plaster-coat", ("material", new Argument.Material(c.Material))), "finishes", new Message("analysis.finishes.no-mix"))),
            .. faces.SelectMany(Brushed),
            .. floor is null ? [] : Floor(floor),
            .. LiningOrders.Of(geometry, linings),
            .. Lath(geometry.House, lath),
        ];
    }

    private static OrderLine? Mixed(string of, string part, IEnumerable<Ingredient> ingredients, double waste)
    {
        var all = ingredients.Where(i => i.Key == part).ToList();
        if (all.Count == 0)
        {
            return null;
        }

        var brought = all.Sum(i => i.Volume);
        return new OrderLine(
            $"{of}-{part}", new Message($"analysis.order.{of}-{part}"), part switch { "straw" => "straw", "lime" or "manure" or "paste" => "finishes", _ => "earth" },
            new Volume(brought / (1 + waste)), waste, new Volume(brought), Tag.Computed, new Message($"analysis.order.{of}-basis"));
    }

    /// <summary>Slips and washes of a face: how much is covered follows from the house, how far it goes does not.</summary>
    private static IEnumerable<OrderLine> Brushed(FacePlaster face) => face.Coats.Where(c => c.Depth <= 0).Select(c =>
        OrderLine.Unknown(
            c.Role == CoatRole.Slip ? "plaster-slip" : $"plaster-{c.Material}",
            Message.Of(c.Role == CoatRole.Slip ? "analysis.order.plaster-slip" : "analysis.order.plaster-wash", ("material", new Argument.Material(c.Material)), ("face", FaceName(face.Face))), "finishes",
            Message.Of("analysis.order.plaster-wash-basis", ("passes", c.Passes), ("area", (Amount)new Area(face.Area)))) with { Net = new Area(c.Passes * face.Area) });

    /// <summary>The words of a face.</summary>
    internal static Message FaceName(Face face) => new(face == Face.Inside ? "analysis.face.inside" : "analysis.face.outside");

    private static IEnumerable<OrderLine> Floor(FloorResult floor)
    {
        var (stone, earth) = (PlasterMaterial.Number("waste-floor-stone").Value, PlasterMaterial.Number("waste-floor-earth").Value);
        var sheet = PlasterMaterial.Number("waste-floor-sheet").Value;
        foreach (var layer in floor.Layers.Where(l => l.Layer.Role is not (FloorRole.Base or FloorRole.Finish)))
        {
            var what = Message.Of("analysis.order.floor-layer", ("layer", layer.Layer.Name));
            yield return layer.Layer.Depth > Length.Zero
                ? new OrderLine("floor-layer", what, layer.Layer.Role == FloorRole.Insulation ? "finishes" : "stone", new Volume(layer.Volume), stone, new Volume(layer.Brought), Tag.Computed, Message.Of("analysis.order.floor-layer-basis", ("depth", (Amount)layer.Layer.Depth)))
                : new OrderLine("floor-sheet", what, "finishes", new Area(layer.Sheet!.Value / (1 + sheet)), sheet, new Area(layer.Sheet.Value), Tag.Computed, new Message("analysis.order.floor-sheet-basis"));
        }

        foreach (var part in Parts)
        {
            if (Mixed("floor", part, floor.Layers.SelectMany(l => l.Ingredients), earth) is { } line)
            {
                yield return line;
            }
        }

        if (floor.Oil is { } oil)
        {
            yield return new OrderLine("floor-oil", new Message("analysis.order.floor-oil"), "finishes", new Volume(oil), 0, new Volume(oil), Tag.Computed, new Message("analysis.order.floor-oil-basis"));
        }
    }

    private static IEnumerable<OrderLine> Lath(House house, Sequence<LathPlace> lath)
    {
        var waste = PlasterMaterial.Number("waste-lath").Value;
        foreach (var face in lath.GroupBy(l => l.Face))
        {
            var what = house.Finishes.FirstOrDefault(f => f.Face == face.Key && f.Lath is not null)?.Lath is { } known
                ? Message.Of("analysis.order.lath", ("material", known.Material), ("face", FaceName(face.Key)))
                : Message.Of("analysis.order.lath-any", ("face", FaceName(face.Key)));
            var area = face.Sum(l => l.Area);
            var unsized = face.Count(l => l.Length is null);
            yield return OrderLine.Of("lath", what, "finishes", new Area(area), waste,
                unsized == 0 ? Message.Of("analysis.order.lath-basis", ("places", face.Count())) : Message.Of("analysis.order.lath-basis-unsized", ("places", face.Count()), ("unsized", unsized)));
        }
    }
}
